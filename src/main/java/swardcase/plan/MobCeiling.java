package swardcase.plan;

import java.util.Arrays;

/** The part of {@link YearCeiling} that is one mob's. */
final class MobCeiling {

  private final FlockEffect effect;
  private final int t;
  private final int g;
  private final int years;
  private final double[] nodes;
  private final int dose;
  private final int grazed;
  private final int doseHeld;
  private final int grazedHeld;
  private final double perShare;
  private final double[] grazedEnd = new double[2];
  private final double[] heldEnd = new double[2];
  private double[] strength = {};
  private double[] strengthHeld = {};
  private double[] fertile = {};
  private double[] season = {};
  private double[] alongStrength = {};
  private double[] alongHeld = {};
  private double[] level = {};
  private double fertileLow;
  private double fertileHigh;
  private double seasonLow;
  private double seasonHigh;
  private double fertileInHand;
  private double seasonInHand;
  private double ofFertile;
  private double ofFertileSquared;
  private double ofSeason;
  private double ofSeasonSquared;
  private double constant;

  MobCeiling(PlanTable table, int t, int g) {
    this.t = t;
    this.g = g;
    years = table.years();
    effect = table.run().flock(g);
    int from = t * table.sums();
    dose = from + YearSums.at(g, YearSums.DOSE);
    grazed = from + YearSums.at(g, YearSums.GRAZED);
    doseHeld = from + YearSums.at(g, YearSums.DOSE_HELD);
    grazedHeld = from + YearSums.at(g, YearSums.GRAZED_HELD);
    perShare = table.discount(t) * table.run().valueOfShare(g);
    nodes = new double[StrengthGrid.NODES];
    Arrays.setAll(nodes, k -> k * effect.spacing());
  }

  void setRanges(Span span) {
    grazedEnd[0] = span.low()[grazed];
    grazedEnd[1] = span.high()[grazed];
    heldEnd[0] = span.low()[grazedHeld];
    heldEnd[1] = span.high()[grazedHeld];
    int at = g * years + t;
    double lowStrength = grazedEnd[0] <= 0 ? 0 : span.least()[at];
    double highStrength = span.most()[at];
    double lowHeld = span.leastHeld()[at];
    double highHeld = span.mostHeld()[at];
    if (heldEnd[0] <= 0) {
      lowHeld = Math.min(lowStrength, lowHeld);
      highHeld = Math.max(highStrength, highHeld);
    }
    strength = YearCeiling.points(nodes, lowStrength, highStrength);
    strengthHeld = YearCeiling.points(nodes, lowHeld, highHeld);
    alongStrength = new double[strength.length];
    alongHeld = new double[strengthHeld.length];
  }

  /** Reads the mob's own numbers at the strengths of the first mob on the same paddocks. */
  void readOn(MobCeiling first) {
    strength = first.strength;
    strengthHeld = first.strengthHeld;
    fertile = new double[strength.length * strengthHeld.length];
    season = new double[fertile.length];
    level = new double[fertile.length];
    fertileLow = Double.POSITIVE_INFINITY;
    fertileHigh = Double.NEGATIVE_INFINITY;
    seasonLow = Double.POSITIVE_INFINITY;
    seasonHigh = Double.NEGATIVE_INFINITY;
    for (int a = 0; a < strength.length; a++) {
      for (int b = 0; b < strengthHeld.length; b++) {
        int k = a * strengthHeld.length + b;
        fertile[k] = effect.fertile(strength[a], strengthHeld[b]);
        season[k] = effect.decay(strength[a], strengthHeld[b]);
        fertileLow = Math.min(fertileLow, fertile[k]);
        fertileHigh = Math.max(fertileHigh, fertile[k]);
        seasonLow = Math.min(seasonLow, season[k]);
        seasonHigh = Math.max(seasonHigh, season[k]);
      }
    }
  }

  /** Starts the weights of the year's own numbers anew, about these sums. */
  void clearWeights(double[] about) {
    double atStrength = strengthOf(about);
    double atHeld = heldOf(about);
    fertileInHand = within(effect.fertile(atStrength, atHeld), fertileLow, fertileHigh);
    double season = effect.decay(atStrength, atHeld);
    seasonInHand = within(season, seasonLow, seasonHigh);
    ofFertile = 0;
    ofFertileSquared = 0;
    ofSeason = 0;
    ofSeasonSquared = 0;
    constant = -perShare * effect.shareNow();
  }

  /** Shares this year's ewes in lamb out to the weights of this year and of those before it. */
  void shareOut(YearCeiling[] ceilings) {
    double[] ages = effect.ageShares();
    double now = -Math.log(effect.sparedNow());
    double whole = 0;
    double wholeRange = 0;
    double inHand = 0;
    double down = 0;
    double up = 0;
    double[] atHand = new double[ages.length];
    double[] steepest = new double[ages.length];
    double[] bend = new double[ages.length];
    for (int age = 0; age < ages.length; age++) {
      int before = t - 1 - age;
      if (before >= 0) {
        MobCeiling past = ceilings[before].mob(g);
        inHand += past.seasonInHand;
        down += past.seasonInHand - past.seasonLow;
        up += past.seasonHigh - past.seasonInHand;
      } else {
        inHand += now;
      }
      atHand[age] = Math.exp(-inHand);
      steepest[age] = Math.exp(-inHand + down);
      bend[age] = bend(down);
      whole += ages[age] * atHand[age];
      wholeRange += ages[age] * steepest[age] * (down + up);
    }
    ofFertile += perShare * whole;
    constant += perShare * whole * fertileInHand;
    double fertileRange = fertileHigh - fertileLow;
    boolean both = fertileRange > 0 && wholeRange > 0;
    double rho = both ? wholeRange / fertileRange : 0;
    ofFertileSquared += perShare * rho / 2;
    for (int age = 0; age < ages.length; age++) {
      int counted = Math.min(t, age + 1);
      double slope = perShare * fertileInHand * ages[age] * atHand[age];
      double square = slope * bend[age] / 2;
      if (both) {
        square += perShare * ages[age] * steepest[age] * steepest[age] / (2 * rho);
      }
      for (int back = 0; back < counted; back++) {
        MobCeiling past = ceilings[t - 1 - back].mob(g);
        past.ofSeason += slope;
        past.ofSeasonSquared += counted * square;
      }
    }
  }

  /** The most of (exp(-d) - 1 + d) / (d^2 / 2) for d from -down up: 1 at 0, more below. */
  private static double bend(double down) {
    return down < 1e-4 ? 1 + down : (Math.exp(down) - 1 - down) / (down * down / 2);
  }

  /** Works out the year's ceiling over strengths from the weights. */
  void setLevel() {
    for (int k = 0; k < level.length; k++) {
      double f = fertile[k] - fertileInHand;
      double e = season[k] - seasonInHand;
      level[k] =
          constant
              + ofFertile * f
              + ofFertileSquared * f * f
              - ofSeason * e
              + ofSeasonSquared * e * e;
    }
  }

  void addLevel(MobCeiling alike) {
    for (int k = 0; k < level.length; k++) {
      level[k] += alike.level[k];
    }
  }

  private static double within(double value, double low, double high) {
    return Math.max(low, Math.min(high, value));
  }

  private double strengthOf(double[] sums) {
    return sums[grazed] > 0 ? sums[dose] / sums[grazed] : 0;
  }

  private double heldOf(double[] sums) {
    return sums[grazedHeld] > 0 ? sums[doseHeld] / sums[grazedHeld] : strengthOf(sums);
  }

  double most(double[] price, double[] state) {
    for (int a = 0; a < strength.length; a++) {
      double per = price[dose] * strength[a] + price[grazed];
      alongStrength[a] = -Math.min(per * grazedEnd[0], per * grazedEnd[1]);
    }
    for (int b = 0; b < strengthHeld.length; b++) {
      double per = price[doseHeld] * strengthHeld[b] + price[grazedHeld];
      alongHeld[b] = -Math.min(per * heldEnd[0], per * heldEnd[1]);
    }
    double most = Double.NEGATIVE_INFINITY;
    int bestA = 0;
    int bestB = 0;
    for (int a = 0; a < strength.length; a++) {
      for (int b = 0; b < strengthHeld.length; b++) {
        int k = a * strengthHeld.length + b;
        double value = level[k] + alongStrength[a] + alongHeld[b];
        if (value > most) {
          most = value;
          bestA = a;
          bestB = b;
        }
      }
    }
    double taken = end(grazedEnd, price[dose] * strength[bestA] + price[grazed]);
    double open = end(heldEnd, price[doseHeld] * strengthHeld[bestB] + price[grazedHeld]);
    state[grazed] = taken;
    state[dose] = taken * strength[bestA];
    state[grazedHeld] = open;
    state[doseHeld] = open * strengthHeld[bestB];
    return most;
  }

  private static double end(double[] ends, double per) {
    return per * ends[0] <= per * ends[1] ? ends[0] : ends[1];
  }
}
