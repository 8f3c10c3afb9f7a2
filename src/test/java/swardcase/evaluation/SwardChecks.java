package swardcase.evaluation;

import static swardcase.evaluation.PublishedRows.number;
import static swardcase.evaluation.PublishedRows.published;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import swardcase.evaluation.PublishedCheck.Part;
import swardcase.farm.Climate;
import swardcase.sward.Dose;
import swardcase.sward.SeedBank;
import swardcase.sward.SeedBankSettings;
import swardcase.sward.SeedKeys;
import swardcase.tables.Cultivar.HardSeed;
import swardcase.tables.Tables;

/** Published rows on seed and formononetin beside the calculators of the sward. */
public final class SwardChecks {

  private static final int LONG_YEARS = 100;

  private final Tables tables;

  /** Reads the rows of these tables. */
  public SwardChecks(Tables tables) {
    this.tables = tables;
  }

  /** Seed left of a crop; the source gives a range, whose middle stands as the value. */
  public List<PublishedCheck> hardSeed() {
    return published("seed-decay.csv").stream()
        .map(
            row -> {
              double low = number(row, "low_percent");
              double high = number(row, "high_percent");
              return new PublishedCheck(
                  "%s, %s seed, %% left after %s summers"
                      .formatted(row.get("climate"), row.get("hard_seed"), row.get("summers")),
                  row.get("source"),
                  middle(low, high),
                  percentLeft(row),
                  (high - low) / 2,
                  "from %s to %s, %s"
                      .formatted(row.get("low_percent"), row.get("high_percent"), row.get("ends")),
                  Part.FIT);
            })
        .toList();
  }

  private static String middle(double low, double high) {
    return Double.toString(Math.round(50 * (low + high)) / 100.0);
  }

  /** Seed in the ground under a stand left alone for long, or left of a crop. */
  public List<PublishedCheck> seedBanks() {
    return published("seed-banks.csv").stream()
        .map(
            row ->
                PublishedCheck.ofRow(row.get("what"), row, seedBank(row), Part.of(row))
                    .orEffect(row.get("calculation").equals("left") ? "seed-left" : "seed-bank"))
        .toList();
  }

  private double seedBank(Map<String, String> row) {
    return switch (row.get("calculation")) {
      case "steady" -> standing(row).bankKgPerHa(LONG_YEARS - 1, 0);
      case "left" -> percentLeft(row);
      default -> throw new IllegalArgumentException(row.toString());
    };
  }

  /** A stand left alone for long. */
  private SeedBank standing(Map<String, String> row) {
    SeedBankSettings settings = settings(row);
    settings.initialShare[0] = 1;
    settings.initialBankKgPerHa = SeedBank.balanceKgPerHa(settings);
    return run(settings, LONG_YEARS);
  }

  /**
   * What summers leave of a crop of seed. A stand without old seed sets the same in each year, so
   * its bank grows in a year by what is left of its first crop.
   */
  private double percentLeft(Map<String, String> row) {
    int summers = Integer.parseInt(row.get("summers"));
    SeedBankSettings settings = settings(row);
    settings.sownKgPerHa = 10;
    SeedBank bank = run(settings, summers + 2);
    double left = bank.bankKgPerHa(summers + 1, 0) - bank.bankKgPerHa(summers, 0);
    return 100 * left / bank.bankKgPerHa(1, 0);
  }

  private SeedBankSettings settings(Map<String, String> row) {
    Climate climate = row.get("climate").equals("hot") ? Climate.HOT_DRY_SUMMER : Climate.COOL;
    HardSeed seed = HardSeed.valueOf(row.get("hard_seed").toUpperCase(Locale.ROOT));
    SeedBankSettings settings = new SeedBankSettings(1);
    for (int summer = 1; summer <= SeedBank.AGES; summer++) {
      settings.retention[summer - 1] = likely(SeedKeys.retention(climate, seed, summer));
    }
    settings.seedYieldKgPerHa = likely(SeedKeys.yield(climate));
    return settings;
  }

  private double likely(String key) {
    return tables.parameter(key).likely();
  }

  private static SeedBank run(SeedBankSettings settings, int years) {
    SeedBank bank = new SeedBank(1, years);
    bank.run(settings, new double[years]);
    return bank;
  }

  /** Formononetin on waterlogged ground from that on drained ground, by the likely factor. */
  public List<PublishedCheck> formononetin() {
    double factor = likely("dose.waterlogged-factor");
    return published("formononetin-wet.csv").stream()
        .map(
            row ->
                new PublishedCheck(
                    "waterlogged, %% of leaf, from %s on drained ground"
                        .formatted(row.get("drained")),
                    row.get("source"),
                    row.get("waterlogged"),
                    Dose.percentOfIntake(factor, 1, 1, 1, number(row, "drained")),
                    number(row, "tolerance"),
                    "half of the last digit",
                    Part.FIT,
                    "nothing: one factor cannot meet both of its two pairs"))
        .toList();
  }
}
