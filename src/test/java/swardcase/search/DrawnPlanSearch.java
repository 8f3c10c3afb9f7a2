package swardcase.search;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import swardcase.chance.CertaintyGain;
import swardcase.chance.CountedRandom;
import swardcase.check.Check;
import swardcase.draws.Draws;
import swardcase.outcome.FarmModel;
import swardcase.outcome.Plan;
import swardcase.search.DrawnClimb.Climbed;
import swardcase.search.DrawnClimb.Gain;
import swardcase.search.DrawnSample.Trial;

/**
 * Finds the plan of highest certainty equivalent of the gain over keeping everything, over common
 * draws of the farm's uncertain numbers: net present value less the effort of each change. The
 * limits of the farm are judged at likely inputs.
 *
 * <p>Three starts are improved on 64 draws: keeping everything, the plan at likely inputs, and what
 * that becomes if only the mean counts. Each goes on to 256 draws of another seed with the changes
 * that may yet gain there, and the best to 1,000 of a third. Then pairs of changes are tried. What
 * the plan is worth is told from draws that the search never saw.
 */
public final class DrawnPlanSearch {

  /** Tolerance of the careful plan, as a part of the tolerance given. */
  private static final double CAREFUL = 0.5;

  /** The least gain that is worth a change, as a part of a mean paddock's part of the tolerance. */
  private static final double LEAST = 1e-4;

  /** The same on the first samples, which are too small for gains that are nearly nothing. */
  private static final double LEAST_AT_FIRST = 1e-3;

  private static final int MOST_PAIRS = 300;

  /** Draws by which all choices there are are judged beside the plan. */
  private static final int BESIDE = 128;

  /** A pick with the changes that may yet gain there. */
  private record End(int[] pick, List<Change> open) {}

  private final PlanSearch likely;
  private final PlanTable table;
  private final PlanTable every;
  private final double tolerance;
  private final Draws unseen;
  private final List<Change> singles;
  private final DrawnSample few;
  private final DrawnSample some;
  private final DrawnSample many;

  /**
   * A search among the plans in which these choices are made beforehand.
   *
   * @param tolerance tolerance of risk, in money, more than zero
   * @param unseen draws from which the worth of the plan is told; those that the search looks at
   *     come from other seeds, which follow from theirs
   */
  public DrawnPlanSearch(FarmModel model, List<FixedChoice> fixed, double tolerance, Draws unseen) {
    Check.that(tolerance > 0, "risk tolerance must be more than zero, but was %s", tolerance);
    this.tolerance = tolerance;
    this.unseen = unseen;
    likely = new PlanSearch(model, fixed);
    table = likely.table();
    every = fixed.isEmpty() ? table : new PlanTable(model, model.newRun(), List.of());
    singles = Change.each(table);
    few = DrawnSample.kept(table, anew(1, 8, 8));
    some = DrawnSample.setAnew(table, anew(2, 16, 16));
    many = DrawnSample.setAnew(table, anew(3, 20, 50));
  }

  private Draws anew(int stage, int blocks, int perBlock) {
    CountedRandom random = new CountedRandom(unseen.seed());
    random.restart(unseen.seed(), stage, 0);
    return unseen.anew(random.nextLong(), blocks, perBlock);
  }

  /** The best plan found; empty if no plan keeps within the limits. */
  public Optional<DrawnFound> find() {
    return likely.find().map(found -> find(table.pick(found.plan())));
  }

  private DrawnFound find(int[] atLikely) {
    List<End> ends = climbed(some, climbed(few, starts(atLikely)));
    int[] pick = improvedOnMany(ends);
    List<Change> pairs = improveInPairs(pick);

    List<int[]> others =
        ends.stream().map(End::pick).filter(end -> !Arrays.equals(end, pick)).toList();
    return new DrawnPlanStudy(table, every, tolerance, least(LEAST), unseen)
        .of(pick, others, careful(pick, others), CAREFUL * tolerance, some.part(0, BESIDE), pairs);
  }

  private double least(double part) {
    return part * tolerance / table.paddocks();
  }

  private DrawnClimb climb(DrawnSample sample, double atTolerance) {
    return new DrawnClimb(table, sample, atTolerance, least(LEAST_AT_FIRST));
  }

  private DrawnClimb climbOnMany() {
    return new DrawnClimb(table, many, tolerance, least(LEAST));
  }

  private List<End> starts(int[] atLikely) {
    List<End> starts = new ArrayList<>();
    Position keeping = new Position(table);
    keeping.set(likely.first());
    if (keeping.excess() == 0) {
      starts.add(new End(likely.first(), singles));
    }
    starts.add(new End(atLikely, singles));
    int[] ofMean = atLikely.clone();
    climb(few, Double.POSITIVE_INFINITY).improveRoughly(ofMean, singles);
    if (!Arrays.equals(ofMean, atLikely)) {
      starts.add(new End(ofMean, singles));
    }
    return starts;
  }

  /** Where picks end on a sample, each with the changes that are open; those that meet are one. */
  private List<End> climbed(DrawnSample sample, List<End> from) {
    Map<Plan, End> ends = new LinkedHashMap<>();
    for (End start : from) {
      int[] pick = start.pick().clone();
      Climbed climbed = climb(sample, tolerance).improve(pick, start.open());
      ends.putIfAbsent(table.plan(pick), new End(pick, climbed.mayGain()));
    }
    return List.copyOf(ends.values());
  }

  /** The end of highest certainty equivalent on many draws, improved there. */
  private int[] improvedOnMany(List<End> ends) {
    double[][][] values =
        many.values(ends.stream().map(end -> new Trial(end.pick(), end.open())).toList());
    int best = best(values, tolerance);
    End end = ends.get(best);
    int[] pick = end.pick().clone();
    climbOnMany().improveFrom(pick, DrawnClimb.gains(values[best], tolerance, end.open()));
    return pick;
  }

  /** Place of the pick of highest certainty equivalent. */
  private static int best(double[][][] values, double atTolerance) {
    CertaintyGain gain = new CertaintyGain(values[0][0], atTolerance);
    int best = 0;
    double most = 0;
    for (int k = 1; k < values.length; k++) {
      double more = gain.of(values[k][0]);
      if (more > most) {
        most = more;
        best = k;
      }
    }
    return best;
  }

  /**
   * Improves a pick in place by pairs, which are looked for on few draws, looked at again on some,
   * and taken on many, together with the single changes that may gain. Gives the pairs that may.
   */
  private List<Change> improveInPairs(int[] pick) {
    List<Gain> alone = DrawnClimb.gains(few, tolerance, pick, singles);
    List<Change> found = mayGain(some, mayGain(few, pairs(pick, alone), pick), pick);
    List<Gain> gaining =
        DrawnClimb.gains(many, tolerance, pick, found).stream()
            .filter(gain -> gain.gain() > least(LEAST))
            .toList();
    if (!gaining.isEmpty()) {
      climbOnMany().improveFrom(pick, gaining);
    }
    return found;
  }

  private List<Change> pairs(int[] pick, List<Gain> alone) {
    double[] gain = alone.stream().mapToDouble(Gain::gain).toArray();
    Position at = new Position(table);
    at.set(pick);
    return new PairSearch(table, at, 0).withinLimits(gain);
  }

  private List<Change> mayGain(DrawnSample sample, List<Change> changes, int[] pick) {
    return DrawnClimb.gains(sample, tolerance, pick, changes).stream()
        .filter(Gain::mayGain)
        .sorted(DrawnClimb.BEST_FIRST)
        .limit(MOST_PAIRS)
        .map(Gain::change)
        .toList();
  }

  /** The plan of less tolerance that is reached from the best of these at that tolerance. */
  private int[] careful(int[] pick, List<int[]> others) {
    List<int[]> starts = new ArrayList<>(List.of(pick));
    starts.addAll(others);
    int best = 0;
    if (!others.isEmpty()) {
      best = best(some.values(starts.stream().map(Trial::new).toList()), CAREFUL * tolerance);
    }
    int[] careful = starts.get(best).clone();
    Climbed climbed = climb(few, CAREFUL * tolerance).improve(careful, singles);
    climb(some, CAREFUL * tolerance).improve(careful, climbed.mayGain());
    return careful;
  }
}
