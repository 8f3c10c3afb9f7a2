package swardcase.outcome;

import java.util.List;
import swardcase.evidence.SetBy;
import swardcase.evidence.UncertainNumbers;
import swardcase.farm.Action;
import swardcase.farm.Farm;
import swardcase.farm.Paddock;
import swardcase.sward.StandDensity;
import swardcase.sward.StandingClover;
import swardcase.tables.Tables;

/**
 * How thin the clover of each paddock is, as it stands and in the years of an action.
 *
 * <p>Seedlings per m2 are those the farm counted, else what germinates from the seed bank of a
 * stand in balance, which is what it sets times emergence: 270 kg/ha x 0.63 / 7.5 mg = 2,270. A
 * count says how the paddock's seed comes up against that; all its later seed is taken to come up
 * alike, but a stand of another cultivar goes some of the way to a full bank. Where the growth
 * index is the farm's own it holds today's density, and only changes of it count.
 */
final class ThinStands {

  private static final String K = "density.half-growth";
  private static final String REFERENCE = "density.reference";
  private static final String REST_FILLS = "density.rest-fills";
  private static final String SEED_WEIGHT = "density.seed-weight";
  private static final String NEWCOMER = "density.newcomer";

  private final StandingClover stands;
  private final SeedPaths seed;
  private final double early;
  private final boolean[] holdsDensity;
  private final int[] counted;
  private final int k;
  private final int reference;
  private final int restFills;
  private final int seedWeight;
  private final int newcomer;
  private double[] x;
  private double standing;
  private double comesUp;
  private double standingFactor;

  /** Enters the uncertain numbers beside the counts, which stand with the other clover. */
  static void enter(UncertainNumbers.Builder numbers, Farm farm, Tables tables) {
    for (String key : List.of(K, REFERENCE, REST_FILLS, SEED_WEIGHT)) {
      numbers.add(key, tables.parameter(key));
    }
    boolean isCounted = farm.paddocks().stream().anyMatch(p -> p.seedlingsPerM2().isPresent());
    if (isCounted && farm.actions().stream().anyMatch(Action::sows)) {
      numbers.add(NEWCOMER, tables.parameter(NEWCOMER));
    }
  }

  /**
   * The stands of a farm.
   *
   * @param early share of winter's growth that density bears on
   */
  ThinStands(
      Farm farm, UncertainNumbers numbers, StandingClover stands, SeedPaths seed, double early) {
    this.stands = stands;
    this.seed = seed;
    this.early = early;
    k = numbers.place(K);
    reference = numbers.place(REFERENCE);
    restFills = numbers.place(REST_FILLS);
    seedWeight = numbers.place(SEED_WEIGHT);
    newcomer = numbers.find(NEWCOMER).orElse(-1);
    List<Paddock> paddocks = farm.paddocks();
    holdsDensity = new boolean[paddocks.size()];
    counted = new int[paddocks.size()];
    for (int i = 0; i < counted.length; i++) {
      holdsDensity[i] = paddocks.get(i).growthIndex().setBy() == SetBy.USER;
      counted[i] = numbers.find(StandingClover.keyOfSeedlings(paddocks.get(i))).orElse(-1);
    }
  }

  /** Takes a paddock, whose seed bank must have been set before. */
  void set(double[] x, int i) {
    this.x = x;
    double ofBank = StandDensity.perM2(seed.steadySeedlingsKgPerHa(i), x[seedWeight]);
    standing = counted[i] < 0 ? ofBank : x[counted[i]];
    comesUp = counted[i] < 0 || ofBank == 0 ? 1 : standing / ofBank;
    standingFactor = ofDensity(stands.cloverShare(x, i), standing);
  }

  /** Winter growth of the stand as it is for its density, in the unit of the growth index. */
  double now(int i) {
    return holdsDensity[i] ? 1 : standingFactor;
  }

  /** The same of another clover share and density. */
  double factor(int i, double cloverShare, double plantsPerM2) {
    double factor = ofDensity(cloverShare, plantsPerM2);
    return holdsDensity[i] ? factor / standingFactor : factor;
  }

  private double ofDensity(double cloverShare, double plantsPerM2) {
    double relative = StandDensity.relative(plantsPerM2, x[reference], x[k]);
    return StandDensity.factor(cloverShare, relative, x[restFills], early);
  }

  /**
   * Plants per m2 in a year after the seed bank was run.
   *
   * @param newShare how much of the clover is another cultivar than stood there
   */
  double plantsPerM2(int i, int year, double newShare) {
    double sown = seed.sownSeedlingsKgPerHa(i, year);
    double ofBank = seed.seedlingsKgPerHa(i, year) - sown;
    double thinner = Math.max(0, 1 - comesUp);
    double up = newcomer < 0 ? comesUp : comesUp + thinner * x[newcomer] * newShare;
    return StandDensity.perM2(ofBank * up + sown, x[seedWeight]);
  }
}
