package swardcase.feed;

import java.util.List;
import swardcase.check.Check;
import swardcase.farm.Farm;
import swardcase.farm.HalfMonths;
import swardcase.farm.Paddock;
import swardcase.farm.PastureQuality;
import swardcase.tables.Tables;

/**
 * The half-monthly feed budget of a whole farm, per hectare, with a green and a dry pool.
 *
 * <pre>
 *   each half-month, in this order
 *   growth = district x index x multiplier x (1 - penalty (1 - green / bound))    below the bound
 *   eaten green = appetite x RA(green) x RQ(green)        at most the green there is
 *   eaten dry   = appetite x (1 - RA(green)) x RA(dry) x RQ(dry)      at most the dry there is
 *   died        = (green + growth - eaten green) x dying share
 *   decayed     = (dry - eaten dry) x loss share;   dry then gains what died
 *   bought      = need x multiplier x (1 - deficit) - energy eaten, if above 0
 * </pre>
 *
 * <p>RA and RQ are availability and quality of {@link PastureIntake}; green available is the mean
 * of before and after growth. A share m a month is 1 - (1 - m)^(1/2) a half-month. Stock eat what
 * they can, above their need too, and nothing is banked on their backs beyond the deficit. A
 * supplement does not lower what they graze: substitution is left out, so supplement is if anything
 * understated.
 *
 * <p>The year is run from 1 January, from the same start (no green, 2,000 kg dry) or from where
 * another year ended, until both pools end it within a tolerance of where they began it, or 100
 * years; {@link YearPool} says where the next year starts. A year that is printed is run to 1e-6 kg
 * DM/ha, one of many to 0.001 kg. An object may be used by several threads, each with its own
 * {@link FeedRates}, {@link FeedYear} and {@link FeedResult}.
 */
public final class FeedBudget {

  private static final int P = HalfMonths.COUNT;
  private static final double START_DRY_KG = 2000;
  private static final double CLOSE_KG = 1e-6;
  private static final double NEAR_KG = 1e-3;

  private final PastureIntake intake;
  private final double[][] growth = new double[3][P];
  private final double[] eweMj = new double[P];
  private final double[] otherMj = new double[P];
  private final double[] eweKg = new double[P];
  private final double[] otherKg = new double[P];
  private final double[] greenQuality = new double[P];
  private final double[] dryQuality = new double[P];
  private final double[] greenMjPerKg = new double[P];
  private final double[] dryMjPerKg = new double[P];
  private final double[] dyingShare = new double[P];
  private final double[] dryLostPerMonth = new double[P];

  /** Works out everything that no run changes. */
  public FeedBudget(Farm farm, StockDemand demand, Tables tables) {
    intake = new PastureIntake(tables);
    double areaHa = farm.areaHa();
    double index = 0;
    double clover = 0;
    for (Paddock paddock : farm.paddocks()) {
      index += paddock.areaHa() / areaHa * paddock.growthIndex().likely();
      clover += paddock.areaHa() / areaHa * paddock.cloverShare().likely();
    }
    clover = Math.min(1, clover);
    for (int p = 0; p < P; p++) {
      int month = p / 2;
      double days = HalfMonths.days(p);
      for (int season = 0; season < growth.length; season++) {
        List<Double> perDay = farm.feedYear().seasons().get(season).growthKgDmPerHaPerDay();
        growth[season][p] = perDay.get(month) * days * index;
      }
      eweMj[p] = demand.eweMjPerDay(p) * days / areaHa;
      otherMj[p] = demand.otherMjPerDay(p) * days / areaHa;
      eweKg[p] = demand.eweAppetiteKgDmPerDay(p) * days / areaHa;
      otherKg[p] = demand.otherAppetiteKgDmPerDay(p) * days / areaHa;
      PastureQuality quality = farm.feedYear().quality().get(month);
      greenQuality[p] = intake.quality(quality.greenDigestibility(), clover);
      dryQuality[p] = intake.quality(quality.dryDigestibility(), clover);
      greenMjPerKg[p] = intake.energyMjPerKgDm(quality.greenDigestibility());
      dryMjPerKg[p] = intake.energyMjPerKgDm(quality.dryDigestibility());
      dyingShare[p] = perHalfMonth(quality.greenDyingPerMonth());
      dryLostPerMonth[p] = quality.dryLostPerMonth();
    }
  }

  /** The farm's rates at these numbers; {@link #set} gives them others. */
  public FeedRates rates(FeedParameters parameters, double eweMultiplier) {
    FeedRates rates = new FeedRates();
    set(rates, parameters, eweMultiplier);
    return rates;
  }

  /**
   * Works out what the half-months do at these numbers. Allocates nothing.
   *
   * @param eweMultiplier ewes relative to the farm's own: 1.1 is a tenth more
   */
  public void set(FeedRates rates, FeedParameters parameters, double eweMultiplier) {
    if (!(eweMultiplier >= 0 && eweMultiplier < Double.POSITIVE_INFINITY)) {
      Check.notNegative(eweMultiplier, "multiplier of ewes");
    }
    rates.leafAreaPenalty = parameters.leafAreaPenalty();
    rates.leafAreaBoundKg = parameters.leafAreaBoundKgDmPerHa();
    rates.perLeafAreaBound = 1 / rates.leafAreaBoundKg;
    double met = 1 - parameters.conditionDeficit();
    for (int p = 0; p < P; p++) {
      int at = p * FeedRates.NUMBERS;
      double appetiteKg = eweMultiplier * eweKg[p] + otherKg[p];
      double needMj = (eweMultiplier * eweMj[p] + otherMj[p]) * parameters.demandMultiplier();
      double lostPerMonth = Math.min(1, dryLostPerMonth[p] * parameters.dryLossMultiplier());
      rates.of[at + FeedRates.EATEN_GREEN_KG] = appetiteKg * greenQuality[p];
      rates.of[at + FeedRates.EATEN_DRY_KG] = appetiteKg * dryQuality[p];
      rates.of[at + FeedRates.DYING_SHARE] = dyingShare[p];
      rates.of[at + FeedRates.DECAYING_SHARE] = perHalfMonth(lostPerMonth);
      rates.of[at + FeedRates.NEED_MJ] = needMj;
      rates.of[at + FeedRates.NEED_MET_MJ] = needMj * met;
      rates.of[at + FeedRates.GREEN_MJ_PER_KG] = greenMjPerKg[p];
      rates.of[at + FeedRates.DRY_MJ_PER_KG] = dryMjPerKg[p];
    }
  }

  /**
   * Runs the year until it repeats, from no green and 2,000 kg of dry feed.
   *
   * @param seasonIndex 0 poor, 1 average, 2 good
   * @param growthMultiplier 24 factors on growth; all 1 is the farm with current cultivars
   * @param rates the farm's at the uncertain numbers
   * @param out filled with the last year
   */
  public void run(int seasonIndex, double[] growthMultiplier, FeedRates rates, FeedResult out) {
    Check.inRange(seasonIndex, 0, growth.length - 1, "season");
    check(growthMultiplier);
    out.year.begin(0, START_DRY_KG, CLOSE_KG);
    repeat(seasonIndex, growthMultiplier, rates, out);
  }

  /** The same from where another year ended, which is probably close. */
  public void runFrom(
      FeedResult from,
      int seasonIndex,
      double[] growthMultiplier,
      FeedRates rates,
      FeedResult out) {
    Check.inRange(seasonIndex, 0, growth.length - 1, "season");
    check(growthMultiplier);
    out.year.beginFrom(from.year, CLOSE_KG);
    repeat(seasonIndex, growthMultiplier, rates, out);
  }

  private void repeat(int season, double[] growthMultiplier, FeedRates rates, FeedResult out) {
    while (out.year.goesOn()) {
      out.carriedInKgDmPerHa = out.year.green.kg + out.year.dry.kg;
      for (int p = 0; p < P; p++) {
        step(p, growth[season][p] * growthMultiplier[p], rates, out.year);
        out.demandMjPerHa[p] = rates.of[p * FeedRates.NUMBERS + FeedRates.NEED_MJ];
        out.keep(p);
      }
      out.year.endYear();
    }
  }

  /**
   * Runs one of very many years, from where another year of the same season type ended, and gives
   * its sums alone. Allocates nothing.
   *
   * @param from a year of the season type
   * @param out filled with the last year
   */
  public void runNear(
      FeedResult from, int seasonIndex, double[] growthMultiplier, FeedRates rates, FeedYear out) {
    check(growthMultiplier);
    double[] full = growth[seasonIndex];
    out.beginFrom(from.year, NEAR_KG);
    while (out.goesOn()) {
      for (int p = 0; p < P; p++) {
        step(p, full[p] * growthMultiplier[p], rates, out);
      }
      out.endYear();
    }
  }

  /** Looks first and builds words only for a refusal, because it stands in front of every run. */
  private static void check(double[] growthMultiplier) {
    boolean accepted = growthMultiplier.length == P;
    for (int p = 0; accepted && p < P; p++) {
      accepted = growthMultiplier[p] >= 0 && growthMultiplier[p] < Double.POSITIVE_INFINITY;
    }
    if (accepted) {
      return;
    }
    Check.inRange(growthMultiplier.length, P, P, "number of growth multipliers");
    for (double multiplier : growthMultiplier) {
      Check.notNegative(multiplier, "multiplier of growth");
    }
  }

  /** One half-month, from the pools of a year to those it leaves there. */
  private void step(int p, double fullGrowthKg, FeedRates rates, FeedYear year) {
    double[] of = rates.of;
    int at = p * FeedRates.NUMBERS;
    double green = year.green.kg;
    double dry = year.dry.kg;
    double grown = fullGrowthKg;
    if (green < rates.leafAreaBoundKg) {
      grown *= 1 - rates.leafAreaPenalty * (1 - green * rates.perLeafAreaBound);
    }
    double greenThere = green + grown;
    double greenFilled = greenThere > 0 ? intake.availabilityFromTable(green + grown / 2) : 0;
    double eatenGreen = of[at + FeedRates.EATEN_GREEN_KG] * greenFilled;
    if (eatenGreen > greenThere) {
      eatenGreen = greenThere;
    }
    double eatenDry = 0;
    if (dry > 0 && greenFilled < 1) {
      double dryFilled = (1 - greenFilled) * intake.availabilityFromTable(dry);
      eatenDry = of[at + FeedRates.EATEN_DRY_KG] * dryFilled;
      if (eatenDry > dry) {
        eatenDry = dry;
      }
    }
    double died = (greenThere - eatenGreen) * of[at + FeedRates.DYING_SHARE];
    double decayed = (dry - eatenDry) * of[at + FeedRates.DECAYING_SHARE];
    double eatenMj =
        eatenGreen * of[at + FeedRates.GREEN_MJ_PER_KG]
            + eatenDry * of[at + FeedRates.DRY_MJ_PER_KG];
    year.grownKg = grown;
    year.eatenGreenKg = eatenGreen;
    year.eatenDryKg = eatenDry;
    year.diedKg = died;
    year.decayedKg = decayed;
    year.eatenMj = eatenMj;
    double missing = of[at + FeedRates.NEED_MET_MJ] - eatenMj;
    year.boughtMj = missing > 0 ? missing : 0;
    year.green.kg = greenThere - eatenGreen - died;
    year.dry.kg = dry - eatenDry - decayed + died;
    year.endHalfMonth();
  }

  /** A share lost in a month, as the share lost in each of its halves: 0.75 becomes 0.5. */
  private static double perHalfMonth(double perMonth) {
    return 1 - Math.sqrt(1 - perMonth);
  }
}
