package swardcase.intake;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import swardcase.farm.Action;
import swardcase.farm.Climate;
import swardcase.farm.ExtraFeedUse;
import swardcase.farm.Farm;
import swardcase.farm.Finance;
import swardcase.farm.Management;
import swardcase.farm.Mob;
import swardcase.farm.OtherStock;
import swardcase.farm.Paddock;
import swardcase.farm.PastureYear;
import swardcase.farm.Prices;
import swardcase.farm.Supplement;
import swardcase.tables.Tables;

/**
 * What {@code farm.yaml} says, each part empty if it was at fault. Everything but the name and the
 * growth may be left out.
 */
record FarmYaml(
    String name,
    String currency,
    Climate climate,
    Optional<PastureYear> feedYear,
    List<Mob> mobs,
    List<OtherStock> otherStock,
    Optional<Supplement> supplement,
    Optional<LocalDate> priceDate,
    Prices prices,
    Optional<Finance> finance,
    ExtraFeedUse extraFeedUse,
    Optional<Management> management,
    List<Action> actions,
    String sownCultivar) {

  /** The row of the cultivar table for a current cultivar that was not chosen. */
  static final String USUAL_SOWN = "current cultivar";

  /** The currency sign where the farm names none. */
  static final String USUAL_CURRENCY = "$";

  /** Reads every key, so that all faults of the file come together. */
  static FarmYaml read(Fields farm, Tables tables, Defaults defaults) {
    String currency = farm.findText("currency").orElse(USUAL_CURRENCY);
    MoneyReader money = new MoneyReader(defaults, currency);
    FarmYaml read =
        new FarmYaml(
            farm.text("name"),
            currency,
            farm.findChoice("climate", Climate.values(), Climate::label)
                .orElse(Climate.HOT_DRY_SUMMER),
            new GrowthReader(tables, defaults).find(farm),
            new MobReader(defaults).list(farm),
            new StockReader(tables).list(farm),
            new SupplementReader(tables, defaults, currency).find(farm),
            MoneyReader.priceDate(farm),
            money.prices(farm.section("prices")),
            money.finance(farm.section("finance")),
            farm.findChoice("extra_feed_use", ExtraFeedUse.values(), ExtraFeedUse::label)
                .orElse(ExtraFeedUse.HOLD_NUMBERS),
            money.management(farm.section("management")),
            new ActionsReader(tables, currency).list(farm),
            farm.findName("sow", "a cultivar of the tables", tables.cultivars().keySet())
                .orElse(USUAL_SOWN));
    farm.finish();
    return read;
  }

  /** The farm; to be asked only if there was no fault. */
  Farm farm(List<Paddock> paddocks) {
    Farm farm =
        new Farm(
            name,
            currency,
            climate,
            feedYear.orElseThrow(),
            paddocks,
            mobs,
            otherStock,
            supplement.orElseThrow(),
            prices,
            finance.orElseThrow(),
            extraFeedUse,
            management.orElseThrow(),
            actions,
            sownCultivar,
            List.of());
    return farm.withFinance(MoneyReader.ofWholeFarm(farm.finance(), farm.areaHa()));
  }
}
