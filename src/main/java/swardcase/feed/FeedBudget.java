package swardcase.feed;

import java.util.List;
import swardcase.check.Check;
import swardcase.farm.AutumnBreak;
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
 *   growth = district x index x level x multiplier x (1 - penalty (1 - green / bound))   below it
 *   eaten green = appetite x RA(green) x RQ(green)        at most the green there is
 *   eaten dry   = appetite x (1 - RA(green)) x RA(dry) x RQ(dry)      at most the dry there is
 *   died        = (green + growth - eaten green) x dying share
 *   decayed     = (dry - eaten dry) x loss share;   dry then gains what died
 *   bought      = need x multiplier x (1 - deficit) - energy eaten, if above 0
 * </pre>
 *
 * <p>Where the break of a season moves, all that follows from it moves: growth, quality and energy
 * of feed, what dies and what decays ({@link AutumnBreak}); need does not, nor do the months of
 * winter.
 *
 * <p>RA and RQ are availability and quality of {@link PastureIntake}; green available is the mean
 * of before and after growth. RQ and energy are those of what is eaten: of dry feed sheep pick
 * better than the mean of what stands ({@link FeedNumber#DRY_SELECTION}). A share m a month is 1 -
 * (1 - m)^(1/2) a half-month. Stock eat what they can, above their need too, and nothing is banked
 * on their backs beyond the deficit. A supplement does not lower what they graze: substitution is
 * left out, so supplement is if anything understated.
 *
 * <p>The year is run from 1 January, from the same start (no green, 2,000 kg dry) or from where
 * another year ended, until it repeats itself, or 100 years; {@link RepeatingYear} says when it
 * does and where the next year starts. For that, what one more kg of dry feed on 1 January does is
 * worked out beside the year, half-month by half-month:
 *
 * <pre>
 *   eaten more   = appetite x (1 - RA(green)) x RA'(dry) x RQ(dry) x dry more     RA' the slope of RA
 *   decayed more = (dry more - eaten more) x loss share;   dry more loses both
 *   bought less  = energy of what is eaten more, where anything is bought
 * </pre>
 *
 * <p>An object may be used by several threads, each with its own {@link FeedRates}, {@link
 * RepeatingYear} and {@link FeedResult}.
 */
public final class FeedBudget {

  private static final int P = HalfMonths.COUNT;
  private static final double START_DRY_KG = 2000;

  private final PastureIntake intake;
  private final AutumnBreak usualBreak;
  private final double[][] growthPerDay = new double[3][P];
  private final double farmIndex;
  private final double[] emptyEweMj = new double[P];
  private final double[][] inLambMj;
  private final double[] otherMj = new double[P];
  private final double[] emptyEweKg = new double[P];
  private final double[][] inLambKg;
  private final double[] otherKg = new double[P];
  private final double[] greenDigestibility = new double[P];
  private final double[] dryDigestibility = new double[P];
  private final double[] dyingPerMonth = new double[P];
  private final double[] dryLostPerMonth = new double[P];

  /** Works out everything that no run changes. */
  public FeedBudget(Farm farm, StockDemand demand, Tables tables) {
    intake = new PastureIntake(tables);
    double areaHa = farm.areaHa();
    double index = 0;
    for (Paddock paddock : farm.paddocks()) {
      index += paddock.areaHa() / areaHa * paddock.growthIndex().likely();
    }
    farmIndex = index;
    usualBreak = farm.feedYear().usualBreak();
    inLambMj = new double[demand.mobs()][P];
    inLambKg = new double[demand.mobs()][P];
    for (int p = 0; p < P; p++) {
      int month = p / 2;
      double days = HalfMonths.days(p);
      for (int season = 0; season < growthPerDay.length; season++) {
        List<Double> perDay = farm.feedYear().seasons().get(season).growthKgDmPerHaPerDay();
        growthPerDay[season][p] = perDay.get(month);
      }
      emptyEweMj[p] = demand.emptyEweMjPerDay() * days / areaHa;
      emptyEweKg[p] = demand.emptyEweAppetiteKgDmPerDay() * days / areaHa;
      for (int mob = 0; mob < demand.mobs(); mob++) {
        inLambMj[mob][p] = demand.inLambMjPerDay(mob, p) * days / areaHa;
        inLambKg[mob][p] = demand.inLambAppetiteKgDmPerDay(mob, p) * days / areaHa;
      }
      otherMj[p] = demand.otherMjPerDay(p) * days / areaHa;
      otherKg[p] = demand.otherAppetiteKgDmPerDay(p) * days / areaHa;
      PastureQuality quality = farm.feedYear().quality().get(month);
      greenDigestibility[p] = quality.greenDigestibility();
      dryDigestibility[p] = quality.dryDigestibility();
      dyingPerMonth[p] = quality.greenDyingPerMonth();
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
    Check.notNegative(eweMultiplier, "multiplier of ewes");
    double growthLevel = parameters.get(FeedNumber.GROWTH) * farmIndex;
    double penalty = parameters.get(FeedNumber.LEAF_AREA_PENALTY);
    double greenBetter = parameters.get(FeedNumber.GREEN_DIGESTIBILITY);
    double dryBetter = parameters.get(FeedNumber.DRY_SELECTION);
    double dies = parameters.get(FeedNumber.GREEN_DYING) / 2;
    rates.leafAreaBoundKg = parameters.get(FeedNumber.LEAF_AREA_BOUND);
    rates.growthOnBareGround = 1 - penalty;
    rates.growthPerKg = penalty / rates.leafAreaBoundKg;
    for (int season = 0; season < growthPerDay.length; season++) {
      double later = parameters.breakLater(season);
      double[] growth = rates.growthKg[season];
      usualBreak.move(growthPerDay[season], later, growth);
      usualBreak.move(greenDigestibility, later, rates.greenDigestibility);
      usualBreak.move(dryDigestibility, later, rates.dryDigestibility);
      usualBreak.move(dyingPerMonth, later, rates.dyingPerMonth);
      usualBreak.move(dryLostPerMonth, later, rates.dryLostPerMonth);
      double[] of = rates.of[season];
      for (int p = 0; p < P; p++) {
        int at = p * FeedRates.NUMBERS;
        double lost = rates.dryLostPerMonth[p] * parameters.get(FeedNumber.DRY_LOSS);
        double green = eaten(rates.greenDigestibility[p] + greenBetter);
        double dry = eaten(rates.dryDigestibility[p] + dryBetter);
        rates.greenQuality[season][p] = intake.qualityOfGrass(green);
        rates.dryQuality[season][p] = intake.qualityOfGrass(dry);
        growth[p] = growth[p] * HalfMonths.days(p) * growthLevel;
        of[at + FeedRates.DYING_SHARE] = 1 - Math.pow(1 - rates.dyingPerMonth[p], dies);
        of[at + FeedRates.DECAYING_SHARE] = perHalfMonth(Math.min(1, lost));
        of[at + FeedRates.GREEN_MJ_PER_KG] = intake.energyMjPerKgDm(green);
        of[at + FeedRates.DRY_MJ_PER_KG] = intake.energyMjPerKgDm(dry);
      }
    }
    setEaters(rates, parameters, eweMultiplier);
  }

  /**
   * Works out anew what depends on how many ewes there are, how many of them are in lamb, and on
   * the clover in what they eat. All other parameters must be as they were set.
   */
  void setEaters(FeedRates rates, FeedParameters parameters, double eweMultiplier) {
    double clover = parameters.legumeShare();
    double intakeLevel = parameters.get(FeedNumber.INTAKE);
    double demand = parameters.get(FeedNumber.DEMAND);
    double met = 1 - parameters.get(FeedNumber.CONDITION_DEFICIT);
    for (int p = 0; p < P; p++) {
      int at = p * FeedRates.NUMBERS;
      double eweKg = emptyEweKg[p];
      double eweMj = emptyEweMj[p];
      for (int mob = 0; mob < inLambMj.length; mob++) {
        eweKg += parameters.inLamb(mob) * inLambKg[mob][p];
        eweMj += parameters.inLamb(mob) * inLambMj[mob][p];
      }
      double appetiteKg = (eweMultiplier * eweKg + otherKg[p]) * intakeLevel;
      double needMj = (eweMultiplier * eweMj + otherMj[p]) * demand;
      for (int season = 0; season < growthPerDay.length; season++) {
        double[] of = rates.of[season];
        double green = intake.withLegume(rates.greenQuality[season][p], clover);
        double dry = intake.withLegume(rates.dryQuality[season][p], clover);
        of[at + FeedRates.EATEN_GREEN_KG] = appetiteKg * green;
        of[at + FeedRates.EATEN_DRY_KG] = appetiteKg * dry;
        of[at + FeedRates.NEED_MJ] = needMj;
        of[at + FeedRates.NEED_MET_MJ] = needMj * met;
      }
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
    out.year.begin(0, START_DRY_KG);
    repeat(seasonIndex, growthMultiplier, rates, out.year, out);
  }

  /** The same from where another year ended, which is probably close. */
  public void runFrom(
      FeedResult from,
      int seasonIndex,
      double[] growthMultiplier,
      FeedRates rates,
      FeedResult out) {
    out.year.beginFrom(from.year);
    repeat(seasonIndex, growthMultiplier, rates, out.year, out);
  }

  private void repeat(
      int season, double[] growthMultiplier, FeedRates rates, RepeatingYear year, FeedResult kept) {
    Check.inRange(season, 0, growthPerDay.length - 1, "season");
    Check.inRange(growthMultiplier.length, P, P, "number of growth multipliers");
    for (double multiplier : growthMultiplier) {
      Check.notNegative(multiplier, "multiplier of growth");
    }
    while (year.goesOn()) {
      runYear(rates.growthKg[season], growthMultiplier, rates, rates.of[season], year, kept);
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
      FeedResult from,
      int seasonIndex,
      double[] growthMultiplier,
      FeedRates rates,
      RepeatingYear out) {
    out.beginNear(from.year);
    repeat(seasonIndex, growthMultiplier, rates, out, null);
  }

  /**
   * One year, from the pools of {@code year}; {@code kept} takes its half-months if there is one.
   */
  private void runYear(
      double[] fullGrowth,
      double[] multiplier,
      FeedRates rates,
      double[] of,
      RepeatingYear year,
      FeedResult kept) {
    double green = year.greenKg();
    double dry = year.dryKg();
    double boughtInYear = 0;
    double uneaten = 0;
    // For each kg of dry feed more on 1 January:
    double dryMore = 1;
    double boughtMore = 0;
    double uneatenMore = 0;
    for (int p = 0; p < P; p++) {
      int at = p * FeedRates.NUMBERS;
      double grown =
          fullGrowth[p]
              * multiplier[p]
              * (green < rates.leafAreaBoundKg
                  ? rates.growthOnBareGround + green * rates.growthPerKg
                  : 1);
      double greenThere = green + grown;
      double greenFilled = greenThere > 0 ? intake.availability(green + grown / 2) : 0;
      double eatenGreen = of[at + FeedRates.EATEN_GREEN_KG] * greenFilled;
      if (eatenGreen > greenThere) {
        eatenGreen = greenThere;
      }
      double eatenDry = 0;
      double eatenMore = 0;
      if (dry > 0 && greenFilled < 1) {
        double hungryFor = of[at + FeedRates.EATEN_DRY_KG] * (1 - greenFilled);
        eatenDry = hungryFor * intake.availability(dry);
        eatenMore = hungryFor * intake.availabilitySlope(dry) * dryMore;
        if (eatenDry > dry) {
          eatenDry = dry;
          eatenMore = dryMore;
        }
      }
      double died = (greenThere - eatenGreen) * of[at + FeedRates.DYING_SHARE];
      double decayed = (dry - eatenDry) * of[at + FeedRates.DECAYING_SHARE];
      double eatenMj =
          eatenGreen * of[at + FeedRates.GREEN_MJ_PER_KG]
              + eatenDry * of[at + FeedRates.DRY_MJ_PER_KG];
      double missing = of[at + FeedRates.NEED_MET_MJ] - eatenMj;
      double bought = 0;
      if (missing > 0) {
        bought = missing;
        boughtMore -= eatenMore * of[at + FeedRates.DRY_MJ_PER_KG];
      }
      double decayedMore = (dryMore - eatenMore) * of[at + FeedRates.DECAYING_SHARE];
      green = greenThere - eatenGreen - died;
      dry = dry - eatenDry - decayed + died;
      dryMore = dryMore - eatenMore - decayedMore;
      boughtInYear += bought;
      uneaten += decayed;
      uneatenMore += decayedMore;
      if (kept != null) {
        kept.growthKgDmPerHa[p] = grown;
        kept.greenKgDmPerHa[p] = green;
        kept.dryKgDmPerHa[p] = dry;
        kept.eatenGreenKgDmPerHa[p] = eatenGreen;
        kept.eatenDryKgDmPerHa[p] = eatenDry;
        kept.diedKgDmPerHa[p] = died;
        kept.decayedKgDmPerHa[p] = decayed;
        kept.demandMjPerHa[p] = of[at + FeedRates.NEED_MJ];
        kept.eatenMjPerHa[p] = eatenMj;
        kept.boughtMjPerHa[p] = bought;
      }
    }
    year.end(green, dry, dryMore, boughtInYear, boughtMore, uneaten, uneatenMore);
  }

  /** Digestibility of what is eaten stays a share. */
  private static double eaten(double digestibility) {
    return Math.max(0, Math.min(1, digestibility));
  }

  /** A share lost in a month, as the share lost in each of its halves: 0.75 becomes 0.5. */
  private static double perHalfMonth(double perMonth) {
    return 1 - Math.sqrt(1 - perMonth);
  }
}
