package swardcase.intake;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import swardcase.farm.Farm;
import swardcase.farm.Mob;
import swardcase.farm.OtherStock;
import swardcase.farm.Paddock;
import swardcase.farm.SeasonGrowth;
import swardcase.tables.Cultivar;
import swardcase.tables.Tables;

/**
 * Looks for what is allowed but odd in a farm, and says what follows from it. The limits are our
 * own judgement (inferred): they decide what is said, never what is computed.
 */
final class Doubts {

  /** Clover is seldom more of a sward than this. */
  private static final double MUCH_CLOVER = 0.9;

  /** A share below this is probably a fraction written where per cent is meant. */
  private static final double HARDLY_CLOVER = 0.01;

  /** Fewer plants than this say little about a paddock. */
  private static final int FEW_PLANTS = 30;

  /** With fewer plants than this for each hectare, a patch is easily walked past. */
  private static final double FEW_PLANTS_PER_HA = 0.5;

  /** Joinings are seldom longer. */
  private static final int LONG_JOINING_WEEKS = 12;

  private static final double DAYS_PER_MONTH = 365 / 12.0;
  private static final double MONTHS = 12;

  private final Farm farm;
  private final Tables tables;
  private final List<Doubt> doubts = new ArrayList<>();

  private Doubts(Farm farm, Tables tables) {
    this.farm = farm;
    this.tables = tables;
  }

  /** The doubts in a fixed order: paddocks, stock, sowing. */
  static List<Doubt> of(Farm farm, Tables tables) {
    Doubts all = new Doubts(farm, tables);
    farm.paddocks().forEach(all::paddock);
    all.stock();
    farm.mobs().forEach(all::joining);
    all.stocking();
    all.sowing();
    return List.copyOf(all.doubts);
  }

  private void paddock(Paddock paddock) {
    double plants = paddock.plantsLookedAt();
    if (plants > 0 && plants < FEW_PLANTS) {
      doubt(
          said("Only %s plants were looked at in %s.", Math.round(plants), paddock.name()),
          said(
              "Fewer than %s say little: the shares of its clover, and all that rests on them, have"
                  + " wide ranges.",
              FEW_PLANTS));
    } else if (plants > 0 && plants <= FEW_PLANTS_PER_HA * paddock.areaHa()) {
      doubt(
          said(
              "%s plants were looked at on the %s ha of %s.",
              Math.round(plants), NumberText.plain(paddock.areaHa()), paddock.name()),
          "A patch of another cultivar is easily walked past, and the ranges count only chance, not"
              + " patches nobody saw.");
    }
    double clover = paddock.cloverShare().likely();
    if (clover > MUCH_CLOVER) {
      doubt(
          said(
              "Clover is given as %s %% of the green feed in %s.", percent(clover), paddock.name()),
          "Growth lost and oestrogen rise with it: if there is half as much, both are about half.");
    } else if (clover > 0 && clover < HARDLY_CLOVER) {
      doubt(
          said(
              "Clover is given as %s %% of the green feed in %s.", percent(clover), paddock.name()),
          said(
              "The column is in per cent: if %s %% is meant, all that rests on the clover is a"
                  + " hundred times too small.",
              percent(100 * clover)));
    }
  }

  private void stock() {
    if (farm.mobs().isEmpty() && farm.otherStock().isEmpty()) {
      doubt("The farm has no stock at all.", "Extra feed is worth nothing to it.");
    } else if (farm.mobs().isEmpty()) {
      doubt("The farm has no ewes.", "Nothing is said about fertility.");
    }
  }

  private void joining(Mob mob) {
    if (mob.joiningWeeks().range().high() > LONG_JOINING_WEEKS) {
      doubt(
          said(
              "%s are joined for up to %s weeks.",
              mob.name(), NumberText.plain(mob.joiningWeeks().range().high())),
          said(
              "More than %s weeks gives ewes many chances to conceive, so that less is seen of the"
                  + " effect of oestrogen, and their lambs come over as many weeks.",
              LONG_JOINING_WEEKS));
    }
  }

  /** A ewe counts as one dry sheep, which is less than she needs: the need is at least this. */
  private void stocking() {
    double dse = farm.ewesJoined();
    for (OtherStock stock : farm.otherStock()) {
      dse += stock.head() * stock.dsePerHead().likely() * stock.months().size() / MONTHS;
    }
    double needMjPerHa = dse * tables.parameter("feed.dse-energy").likely() * 365 / farm.areaHa();
    double grownMjPerHa = grownMjPerHa();
    if (needMjPerHa > grownMjPerHa) {
      doubt(
          said(
              "The stock are at least %s dry sheep equivalents a hectare, and all the pasture that"
                  + " grows holds the energy for %s.",
              rounded(dse / farm.areaHa()),
              rounded(dse / farm.areaHa() * grownMjPerHa / needMjPerHa)),
          "The rest must be bought every year, so that supplement decides the whole answer: check the"
              + " numbers of stock, the areas and the growth.");
    }
  }

  /** Energy that grows on a mean hectare in a year, as if all of it were eaten green. */
  private double grownMjPerHa() {
    double index = 0;
    for (Paddock paddock : farm.paddocks()) {
      index += paddock.areaHa() * paddock.growthIndex().likely() / farm.areaHa();
    }
    double slope = 100 * tables.parameter("feed.forage-energy-slope").likely();
    double intercept = tables.parameter("feed.forage-energy-intercept").likely();
    double sum = 0;
    for (SeasonGrowth season : farm.feedYear().seasons()) {
      for (int month = 0; month < MONTHS; month++) {
        double digestibility = farm.feedYear().quality().get(month).greenDigestibility();
        sum +=
            season.chance().likely()
                * season.growthKgDmPerHaPerDay().get(month)
                * DAYS_PER_MONTH
                * (slope * digestibility + intercept);
      }
    }
    return index * sum;
  }

  private void sowing() {
    Cultivar sown = tables.cultivar(farm.sownCultivar());
    if (sown.era() != Cultivar.Era.CURRENT || sown.highOestrogen()) {
      doubt(
          said("%s is to be sown, and it is not a current cultivar of the table.", sown.name()),
          "A resown paddock may then give as little winter growth, or as much oestrogen, as before.");
    }
  }

  private void doubt(String what, String consequence) {
    doubts.add(new Doubt(what, consequence));
  }

  private static String percent(double fraction) {
    return NumberText.plain(Math.rint(fraction * 1e4) / 100);
  }

  private static String rounded(double value) {
    return String.format(Locale.ROOT, "%.1f", value);
  }

  private static String said(String sentence, Object... arguments) {
    return String.format(Locale.ROOT, sentence, arguments);
  }
}
