package swardcase.plan;

/** The part of {@link YearCeiling} that is one mob's. */
final class MobCeiling {

  private static final int HALVINGS = 30;

  private final PlanTable table;
  private final FlockEffect effect;
  private final int t;
  private final int g;
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
  private double fertileLow;
  private double fertileHigh;
  private double seasonLow;
  private double seasonHigh;
  private double ofFertile;
  private double ofSeason;
  private double constant;

  MobCeiling(PlanTable table, int t, int g) {
    this.table = table;
    this.t = t;
    this.g = g;
    effect = table.run().flock(g);
    int from = t * table.sums();
    dose = from + YearSums.at(g, YearSums.DOSE);
    grazed = from + YearSums.at(g, YearSums.GRAZED);
    doseHeld = from + YearSums.at(g, YearSums.DOSE_HELD);
    grazedHeld = from + YearSums.at(g, YearSums.GRAZED_HELD);
    perShare = table.discount(t) * table.run().valueOfShare(g);
  }

  void setRanges(boolean[] open, double[] low, double[] high) {
    grazedEnd[0] = low[grazed];
    grazedEnd[1] = high[grazed];
    heldEnd[0] = low[grazedHeld];
    heldEnd[1] = high[grazedHeld];
    double least = ratio(open, dose, grazed, true);
    double most = ratio(open, dose, grazed, false);
    double leastHeld = ratio(open, doseHeld, grazedHeld, true);
    double mostHeld = ratio(open, doseHeld, grazedHeld, false);
    if (grazedEnd[0] <= 0) {
      least = 0;
    }
    if (heldEnd[0] <= 0) {
      leastHeld = Math.min(least, leastHeld);
      mostHeld = Math.max(most, mostHeld);
    }
    double[] nodes = new double[FlockEffect.NODES];
    for (int k = 0; k < nodes.length; k++) {
      nodes[k] = k * effect.spacing();
    }
    strength = YearCeiling.points(nodes, least, most);
    strengthHeld = YearCeiling.points(nodes, leastHeld, mostHeld);
    fertile = new double[strength.length * strengthHeld.length];
    season = new double[fertile.length];
    alongStrength = new double[strength.length];
    alongHeld = new double[strengthHeld.length];
    fertileLow = Double.POSITIVE_INFINITY;
    fertileHigh = Double.NEGATIVE_INFINITY;
    seasonLow = Double.POSITIVE_INFINITY;
    seasonHigh = Double.NEGATIVE_INFINITY;
    for (int a = 0; a < strength.length; a++) {
      for (int b = 0; b < strengthHeld.length; b++) {
        int k = a * strengthHeld.length + b;
        fertile[k] = effect.fertile(strength[a], strengthHeld[b]);
        season[k] = -Math.log(effect.spared(effect.season(strength[a], strengthHeld[b])));
        fertileLow = Math.min(fertileLow, fertile[k]);
        fertileHigh = Math.max(fertileHigh, fertile[k]);
        seasonLow = Math.min(seasonLow, season[k]);
        seasonHigh = Math.max(seasonHigh, season[k]);
      }
    }
  }

  /**
   * The least or most of sum d / sum q that open choices can reach, a little beyond it: the r at
   * which the best sum of d - r q is zero, found by halving.
   */
  private double ratio(boolean[] open, int d, int q, boolean least) {
    double low = 0;
    double high = effect.spacing() * (FlockEffect.NODES - 1);
    for (int step = 0; step < HALVINGS; step++) {
      double middle = (low + high) / 2;
      double sum = 0;
      for (int i = 0; i < table.paddocks(); i++) {
        double best = Double.POSITIVE_INFINITY;
        for (int c = table.first(i); c < table.first(i + 1); c++) {
          if (open[c]) {
            double value = table.added(c, d) - middle * table.added(c, q);
            best = Math.min(best, least ? value : -value);
          }
        }
        sum += best;
      }
      boolean reachesBeyond = sum < 0;
      if (least == reachesBeyond) {
        high = middle;
      } else {
        low = middle;
      }
    }
    return least ? low : high;
  }

  void clearWeights() {
    ofFertile = 0;
    ofSeason = 0;
    constant = 0;
  }

  void shareOut(YearCeiling[] years, double[] sumsInHand) {
    double[] ages = effect.ageShares();
    double now = -Math.log(effect.sparedNow());
    double wholeLow = 0;
    double wholeHigh = 0;
    double[] chord = new double[ages.length];
    double[] atLow = new double[ages.length];
    double[] lowSum = new double[ages.length];
    double low = 0;
    double high = 0;
    double inHand = 0;
    double wholeInHand = 0;
    for (int age = 0; age < ages.length; age++) {
      int before = t - 1 - age;
      MobCeiling past = before >= 0 ? years[before].mob(g) : null;
      low += past == null ? now : past.seasonLow;
      high += past == null ? now : past.seasonHigh;
      inHand += past == null ? now : past.seasonAt(sumsInHand);
      atLow[age] = Math.exp(-low);
      lowSum[age] = low;
      chord[age] = high > low ? (Math.exp(-low) - Math.exp(-high)) / (high - low) : 0;
      wholeLow += ages[age] * Math.exp(-high);
      wholeHigh += ages[age] * Math.exp(-low);
      wholeInHand += ages[age] * Math.exp(-inHand);
    }
    double fertileInHand = effect.fertile(strengthOf(sumsInHand), heldOf(sumsInHand));
    double first = wholeHigh * fertileInHand + fertileLow * (wholeInHand - wholeHigh);
    double second = wholeLow * fertileInHand + fertileHigh * (wholeInHand - wholeLow);
    double f = first <= second ? fertileLow : fertileHigh;
    double u = first <= second ? wholeHigh : wholeLow;
    ofFertile += perShare * u;
    constant -= perShare * (f * u + effect.shareNow());
    for (int age = 0; age < ages.length; age++) {
      double weight = perShare * f * ages[age];
      constant += weight * (atLow[age] + chord[age] * lowSum[age]);
      for (int back = 0; back <= age; back++) {
        int before = t - 1 - back;
        if (before >= 0) {
          years[before].mob(g).ofSeason += weight * chord[age];
        } else {
          constant -= weight * chord[age] * now;
        }
      }
    }
  }

  private double strengthOf(double[] sums) {
    return sums[grazed] > 0 ? sums[dose] / sums[grazed] : 0;
  }

  private double heldOf(double[] sums) {
    return sums[grazedHeld] > 0 ? sums[doseHeld] / sums[grazedHeld] : strengthOf(sums);
  }

  private double seasonAt(double[] sums) {
    return -Math.log(effect.spared(effect.season(strengthOf(sums), heldOf(sums))));
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
        double value =
            ofFertile * fertile[k] - ofSeason * season[k] + alongStrength[a] + alongHeld[b];
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
    return most + constant;
  }

  private static double end(double[] ends, double per) {
    return per * ends[0] <= per * ends[1] ? ends[0] : ends[1];
  }
}
