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
 * <p>The year is run from 1 January, from the same start (no green, 2,000 kg dry) or from one that
 * is given, until both pools end it within 1e-6 kg DM/ha of where they began it, or 100 years. What
 * a year leaves of an error at its start is nearly the same share q each time, so from the second
 * year on the next starts where the changes would end, change x q / (1 - q) further, pool by pool
 * (Aitken 1926, cited from memory). That saves years and does not alter where they end. An object
 * may be used by several threads, each with its own {@link FeedResult}; a run allocates nothing.
 */
public final class FeedBudget {

  private static final int P = HalfMonths.COUNT;
  private static final double START_DRY_KG = 2000;
  private static final double TOLERANCE_KG = 1e-6;
  private static final double MOST_LEFT = 0.3;
  private static final int MOST_YEARS = 100;

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

  /**
   * Runs the year until both pools end it within 1e-6 kg DM/ha of where they began it.
   *
   * @param seasonIndex 0 poor, 1 average, 2 good
   * @param growthMultiplier 24 factors on growth; all 1 is the farm with current cultivars
   * @param eweMultiplier ewes relative to the farm's own: 1.1 is a tenth more
   * @param parameters the uncertain numbers
   * @param out filled with the last year
   */
  public void run(
      int seasonIndex,
      double[] growthMultiplier,
      double eweMultiplier,
      FeedParameters parameters,
      FeedResult out) {
    check(seasonIndex, growthMultiplier, eweMultiplier);
    repeat(growth[seasonIndex], growthMultiplier, eweMultiplier, parameters, 0, START_DRY_KG, out);
  }

  /**
   * The same from a start that is probably close.
   *
   * @param green green feed on 1 January, kg DM/ha
   * @param dry dry feed then
   */
  public void runFrom(
      double green,
      double dry,
      int seasonIndex,
      double[] growthMultiplier,
      double eweMultiplier,
      FeedParameters parameters,
      FeedResult out) {
    check(seasonIndex, growthMultiplier, eweMultiplier);
    repeat(growth[seasonIndex], growthMultiplier, eweMultiplier, parameters, green, dry, out);
  }

  private void repeat(
      double[] fullGrowth,
      double[] growthMultiplier,
      double eweMultiplier,
      FeedParameters parameters,
      double greenAtStart,
      double dryAtStart,
      FeedResult out) {
    double green = greenAtStart;
    double dry = dryAtStart;
    double greenBefore = 0;
    double dryBefore = 0;
    double greenLeft = 0;
    double dryLeft = 0;
    out.repeats = false;
    out.yearsToRepeat = 0;
    while (!out.repeats && out.yearsToRepeat < MOST_YEARS) {
      out.carriedInKgDmPerHa = green + dry;
      year(fullGrowth, growthMultiplier, eweMultiplier, parameters, green, dry, out);
      double greenChange = out.greenKgDmPerHa[P - 1] - green;
      double dryChange = out.dryKgDmPerHa[P - 1] - dry;
      out.repeats = Math.abs(greenChange) <= TOLERANCE_KG && Math.abs(dryChange) <= TOLERANCE_KG;
      out.yearsToRepeat++;
      if (out.yearsToRepeat == 2) {
        greenLeft = left(greenChange, greenBefore);
        dryLeft = left(dryChange, dryBefore);
      }
      greenBefore = greenChange;
      dryBefore = dryChange;
      green += greenChange / (1 - greenLeft);
      dry += dryChange / (1 - dryLeft);
      green = Math.max(0, green);
      dry = Math.max(0, dry);
    }
  }

  /** The share of an error that a year leaves, as far as it can be trusted. */
  private static double left(double change, double before) {
    double left = before == 0 ? 0 : change / before;
    return left > 0 && left < MOST_LEFT ? left : 0;
  }

  /** Looks first and builds words only for a refusal, because it stands in front of every run. */
  private static void check(int seasonIndex, double[] growthMultiplier, double eweMultiplier) {
    boolean accepted = seasonIndex >= 0 && seasonIndex < 3 && growthMultiplier.length == P;
    for (int p = 0; accepted && p < P; p++) {
      accepted = growthMultiplier[p] >= 0 && growthMultiplier[p] < Double.POSITIVE_INFINITY;
    }
    if (accepted && eweMultiplier >= 0 && eweMultiplier < Double.POSITIVE_INFINITY) {
      return;
    }
    Check.inRange(seasonIndex, 0, 2, "season");
    Check.inRange(growthMultiplier.length, P, P, "number of growth multipliers");
    for (double multiplier : growthMultiplier) {
      Check.notNegative(multiplier, "multiplier of growth");
    }
    Check.notNegative(eweMultiplier, "multiplier of ewes");
  }

  private void year(
      double[] fullGrowth,
      double[] growthMultiplier,
      double eweMultiplier,
      FeedParameters parameters,
      double greenAtStart,
      double dryAtStart,
      FeedResult out) {
    double bound = parameters.leafAreaBoundKgDmPerHa();
    double penalty = parameters.leafAreaPenalty();
    double lossMultiplier = parameters.dryLossMultiplier();
    double perBound = 1 / bound;
    double met = parameters.demandMultiplier() * (1 - parameters.conditionDeficit());
    double green = greenAtStart;
    double dry = dryAtStart;
    for (int p = 0; p < P; p++) {
      double grown = fullGrowth[p] * growthMultiplier[p];
      if (green < bound) {
        grown *= 1 - penalty * (1 - green * perBound);
      }
      double appetite = eweMultiplier * eweKg[p] + otherKg[p];
      double greenThere = green + grown;
      double greenFilled = greenThere > 0 ? intake.availabilityFromTable(green + grown / 2) : 0;
      double eatenGreen = Math.min(greenThere, appetite * greenFilled * greenQuality[p]);
      double dryFilled =
          dry > 0 ? Math.max(0, 1 - greenFilled) * intake.availabilityFromTable(dry) : 0;
      double eatenDry = Math.min(dry, appetite * dryFilled * dryQuality[p]);
      double died = (greenThere - eatenGreen) * dyingShare[p];
      double decayed =
          (dry - eatenDry) * perHalfMonth(Math.min(1, dryLostPerMonth[p] * lossMultiplier));
      green = greenThere - eatenGreen - died;
      dry = dry - eatenDry - decayed + died;
      double need = eweMultiplier * eweMj[p] + otherMj[p];
      double eatenMj = eatenGreen * greenMjPerKg[p] + eatenDry * dryMjPerKg[p];
      out.growthKgDmPerHa[p] = grown;
      out.greenKgDmPerHa[p] = green;
      out.dryKgDmPerHa[p] = dry;
      out.eatenGreenKgDmPerHa[p] = eatenGreen;
      out.eatenDryKgDmPerHa[p] = eatenDry;
      out.diedKgDmPerHa[p] = died;
      out.decayedKgDmPerHa[p] = decayed;
      out.demandMjPerHa[p] = need * parameters.demandMultiplier();
      out.eatenMjPerHa[p] = eatenMj;
      out.boughtMjPerHa[p] = Math.max(0, need * met - eatenMj);
    }
  }

  /** A share lost in a month, as the share lost in each of its halves: 0.75 becomes 0.5. */
  private static double perHalfMonth(double perMonth) {
    return 1 - Math.sqrt(1 - perMonth);
  }
}
