package swardcase.reproduction;

import java.util.List;
import swardcase.evidence.UncertainNumbers;
import swardcase.farm.Farm;
import swardcase.farm.Mob;
import swardcase.tables.Tables;

/**
 * One mob whose ewes are scanned each year and sold if dry, so that ewes barren for good leave it
 * sooner. A ewe that is sold is replaced: the mob keeps its size and its ages, and the ewe that
 * comes in is sound when bought and goes through the next season like the others of her age.
 *
 * <p>Of the ewes of one age, shares of those joined, in a year: sound w, of them y scanned dry the
 * year before; barren v scanned dry then and u not. f of the sound ewes are in lamb. A scan calls a
 * dry ewe dry with chance d and a ewe in lamb in lamb with chance p, so that it calls a sound ewe
 * dry with chance x = (1 - f) d + f (1 - p). What is sold, and what stays with its scan:
 *
 * <pre>
 *   after one dry year    d (u + v) + x w      u' = (1 - d) (u + v)   v' = 0     y' = 0
 *   after two running     d v + x y            u' = (1 - d) (u + v)   v' = d u   y' = x (w - y)
 * </pre>
 *
 * <p>The next season leaves a share g of the sound ewes sound. So of barren ewes 1 - d stay in a
 * year by the first rule, and only sound ewes that are dry by chance, or called so, are sold beside
 * them: a ewe dry for a time is no likelier to be dry again (in ordinary flocks the repeatability
 * of lambs born is 0.05, s.e. 0.02). Before the coming year nothing was sold for being dry. Worked
 * number: u + v 0.10, f 0.9, d 0.96, p 0.98: x = 0.054, and 0.096 + 0.0486 = 14.5 of 100 ewes are
 * sold after one dry year, 4.9 of them sound, 1.6 in lamb.
 *
 * <p>After {@link #set} years must be asked for in rising order from 0. Allocates nothing then. The
 * feed of a ewe sold is not counted, nor that a replacement lives longer than the ewe she follows.
 * Sources are those of the rows.
 */
public final class DryEweSale {

  /** When a ewe is sold. */
  public enum Rule {
    /** She was scanned dry this year. */
    AFTER_ONE,
    /** She was scanned dry this year and the year before. */
    AFTER_TWO
  }

  private static final String IN_LAMB_RIGHT = "flock.scan-in-lamb-right";
  private static final String DRY_RIGHT = "flock.scan-dry-right";
  private static final String SCAN_COST = "management.scan-per-ewe";
  private static final String SALE = "flock.dry-ewe-sale";
  private static final String REPLACEMENT = "price.ewe";

  private static final int STATES = 3;
  private static final int BARREN = 0;
  private static final int BARREN_DRY = 1;
  private static final int SOUND_DRY = 2;

  private final double[] ageShare;
  private final double[] left;
  private final double[] leftKept;
  private final int inLambRight;
  private final int dryRight;
  private final int scanCost;
  private final int sale;
  private final int replacement;

  private double[] x;
  private double sparedNow;
  private double sold;
  private double soldInLamb;
  private double replaced;

  /** Enters the uncertain numbers of scanning and selling. */
  public static void enter(UncertainNumbers.Builder numbers, Farm farm, Tables tables) {
    numbers.add(SCAN_COST, farm.management().scanPerEwe());
    for (String key : List.of(IN_LAMB_RIGHT, DRY_RIGHT, SALE)) {
      numbers.add(key, tables.parameter(key));
    }
  }

  /** A mob of a farm, on which the numbers of {@link #enter} and the price of a ewe stand. */
  public DryEweSale(Farm farm, Mob mob, UncertainNumbers numbers) {
    ageShare = mob.ageShares().stream().mapToDouble(Double::doubleValue).toArray();
    left = new double[farm.finance().horizonYears() * ageShare.length * STATES];
    leftKept = new double[left.length];
    inLambRight = numbers.place(IN_LAMB_RIGHT);
    dryRight = numbers.place(DRY_RIGHT);
    scanCost = numbers.place(SCAN_COST);
    sale = numbers.place(SALE);
    replacement = numbers.place(REPLACEMENT);
  }

  /**
   * Takes the assumptions of a run.
   *
   * @param assumptions the flat array
   * @param sparedNow share of sound ewes that a season as paddocks are grazed now leaves sound
   */
  public void set(double[] assumptions, double sparedNow) {
    x = assumptions;
    this.sparedNow = sparedNow;
  }

  /**
   * Ewes in lamb as a share of those joined in a year, before any is sold; the ewes sold after that
   * joining can be asked for until the next year is.
   *
   * @param sparedBefore share of sound ewes that the season before left sound
   * @param fertile share of sound ewes in lamb this year
   */
  public double share(int year, Rule rule, double sparedBefore, double fertile) {
    double dryCalledDry = x[dryRight];
    double inLambCalledDry = fertile * (1 - x[inLambRight]);
    double soundCalledDry = (1 - fertile) * dryCalledDry + inLambCalledDry;
    double whole = 0;
    double asNow = 1;
    sold = 0;
    soldInLamb = 0;
    replaced = 0;
    for (int age = 0; age < ageShare.length; age++) {
      int before = at(year - 1, age - 1);
      asNow *= sparedNow;
      boolean fresh = year == 0 || age == 0;
      double kept = year == 0 ? asNow : sparedBefore;
      double drySound = fresh ? 0 : left[before + SOUND_DRY];
      double barrenDry = fresh ? 0 : left[before + BARREN_DRY];
      double barren = fresh ? 0 : left[before + BARREN];
      double sound = 1 - barren - barrenDry;
      barren += (sound - drySound) * (1 - kept);
      barrenDry += drySound * (1 - kept);
      drySound *= kept;
      sound *= kept;
      boolean one = rule == Rule.AFTER_ONE;
      double again = one ? sound : drySound;
      double goes = dryCalledDry * (one ? barren + barrenDry : barrenDry) + soundCalledDry * again;
      int after = at(year, age);
      left[after + BARREN] = (1 - dryCalledDry) * (barren + barrenDry);
      left[after + BARREN_DRY] = one ? 0 : dryCalledDry * barren;
      left[after + SOUND_DRY] = one ? 0 : soundCalledDry * (sound - drySound);
      whole += ageShare[age] * sound;
      sold += ageShare[age] * goes;
      soldInLamb += ageShare[age] * inLambCalledDry * again;
      replaced += staying(age) * goes;
    }
    return whole * fertile;
  }

  /** Ewes of an age that would be joined again, share of all: the others leave by age anyway. */
  private double staying(int age) {
    return age + 1 < ageShare.length ? Math.min(ageShare[age], ageShare[age + 1]) : 0;
  }

  private int at(int year, int age) {
    return (year * ageShare.length + age) * STATES;
  }

  /** Ewes sold as dry after the joining asked for last, share of those joined. */
  public double sold() {
    return sold;
  }

  /** Of them those in lamb, whose lambs go with them. */
  public double soldInLamb() {
    return soldInLamb;
  }

  /** Of those sold the ones that would have been joined again, each of which is replaced. */
  public double replaced() {
    return replaced;
  }

  /** Money for scanning a ewe. */
  public double scanCost() {
    return x[scanCost];
  }

  /**
   * Money that selling costs in the year asked for last, for each ewe joined, beside the scan and
   * what more ewes in lamb bring: replacement less sale for each ewe replaced; the lambs of ewes
   * sold in lamb; less what a dry ewe costs, which one that is sold does not.
   *
   * @param lambsWorth money for the lambs of a ewe in lamb
   * @param dryEweCost what a dry ewe costs beside them
   */
  public double costPerEwe(double lambsWorth, double dryEweCost) {
    return replaced * x[replacement] * (1 - x[sale])
        + soldInLamb * lambsWorth
        - (sold - soldInLamb) * dryEweCost;
  }

  /** Keeps the years asked for last, to go on from them. */
  public void keepYears() {
    System.arraycopy(left, 0, leftKept, 0, left.length);
  }

  /** Puts the years kept in place before {@code year}, which is asked for next. */
  public void resumeFrom(int year) {
    System.arraycopy(leftKept, 0, left, 0, at(year, 0));
  }
}
