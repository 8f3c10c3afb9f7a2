package swardcase.outcome;

import java.util.Arrays;

/**
 * What a plan brings against keeping everything, year by year, in the farm's currency, real and
 * before tax. A workspace that is filled again and again.
 *
 * <p>Year 0 is the coming one. Costs are positive numbers, gains positive, losses negative.
 */
public final class Outcome {

  final double[] actionCost;
  final double[] labourCost;
  final double[] supplementSaved;
  final double[] lambsSaved;
  final double[] lambs;
  final double[] ewesInLamb;
  final double[] cropMargin;
  final double[] spareFeed;
  final double[] oldShare;
  final double[] cloverShare;
  private final double[][] lines;
  double endValue;
  double npv;

  /** A workspace for so many years, filled by {@link OutcomeFunction#evaluate}. */
  public Outcome(int years) {
    actionCost = new double[years];
    labourCost = new double[years];
    supplementSaved = new double[years];
    lambsSaved = new double[years];
    lambs = new double[years];
    ewesInLamb = new double[years];
    cropMargin = new double[years];
    spareFeed = new double[years];
    oldShare = new double[years];
    cloverShare = new double[years];
    lines =
        new double[][] {
          actionCost,
          labourCost,
          supplementSaved,
          lambsSaved,
          lambs,
          ewesInLamb,
          cropMargin,
          spareFeed,
          oldShare,
          cloverShare
        };
  }

  /** Takes the first years of another outcome, its end value and its present value. */
  void copy(Outcome of, int first) {
    double[][] from = of.lines;
    double[][] to = lines;
    for (int k = 0; k < to.length; k++) {
      System.arraycopy(from[k], 0, to[k], 0, first);
    }
    setEnd(of.endValue, of.npv);
  }

  void clearShares() {
    Arrays.fill(oldShare, 0);
    Arrays.fill(cloverShare, 0);
  }

  void setEnd(double newEndValue, double newNpv) {
    endValue = newEndValue;
    npv = newNpv;
  }

  /** Adds so many times another outcome to this one, line by line. */
  public void add(Outcome other, double times) {
    double[][] from = other.lines;
    double[][] to = lines;
    for (int k = 0; k < to.length; k++) {
      for (int t = 0; t < years(); t++) {
        to[k][t] += times * from[k][t];
      }
    }
    endValue += times * other.endValue;
    npv += times * other.npv;
  }

  /** Years counted. */
  public int years() {
    return actionCost.length;
  }

  /** Paid for actions in a year, own labour aside. */
  public double actionCost(int year) {
    return actionCost[year];
  }

  /** What own labour for actions is worth in a year. */
  public double labourCost(int year) {
    return labourCost[year];
  }

  /** What actions cost in a year: paid, and own labour. */
  public double cost(int year) {
    return actionCost[year] + labourCost[year];
  }

  /** Supplement that need not be bought; negative where shut paddocks cause more to be bought. */
  public double supplementSaved(int year) {
    return supplementSaved[year];
  }

  /** Value of lambs not lost, and of dry ewes that are not. */
  public double lambsSaved(int year) {
    return lambsSaved[year];
  }

  /** Lambs marked beyond those marked if everything is kept. */
  public double lambs(int year) {
    return lambs[year];
  }

  /** Ewes in lamb beyond those in lamb if everything is kept. */
  public double ewesInLamb(int year) {
    return ewesInLamb[year];
  }

  /** Margin of crops grown while the seed bank runs down. */
  public double cropMargin(int year) {
    return cropMargin[year];
  }

  /** Gain beyond what replaces supplement: more ewes, agistment, and nitrogen that is fixed. */
  public double spareFeed(int year) {
    return spareFeed[year];
  }

  /** Share of old cultivars in the farm's clover, by area. */
  public double oldShare(int year) {
    return oldShare[year];
  }

  /** Clover as a share of the farm's green feed, by area. */
  public double cloverShare(int year) {
    return cloverShare[year];
  }

  /** One kind of money in a year, costs below nothing; all kinds add up to what the year brings. */
  public double money(MoneyKind kind, int year) {
    return switch (kind) {
      case LAMBS -> lambsSaved[year];
      case FEED -> supplementSaved[year] + spareFeed[year];
      case CROPS -> cropMargin[year];
      case COSTS -> -actionCost[year];
      case LABOUR -> -labourCost[year];
      case END_VALUE -> endValue(year);
    };
  }

  /** All gains of a year less what its actions cost, own labour among it. */
  public double net(int year) {
    return net(
        supplementSaved[year], lambsSaved[year], cropMargin[year], spareFeed[year], cost(year));
  }

  static double net(double supplement, double lambs, double margin, double spare, double cost) {
    return supplement + lambs + margin + spare - cost;
  }

  /** Value of resown hectares beyond the years counted, due in the last year; 0 unless given. */
  public double endValue(int year) {
    return year == years() - 1 ? endValue : 0;
  }

  /** The yearly sums, first year first, the end value in the last: their present value is npv. */
  public double[] cashFlow() {
    double[] flows = new double[years()];
    Arrays.setAll(flows, year -> net(year) + endValue(year));
    return flows;
  }

  /** Net present value; the coming year is not discounted. */
  public double npv() {
    return npv;
  }
}
