package swardcase.search;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import swardcase.chance.CertaintyGain;
import swardcase.search.DrawnSample.Trial;

/**
 * Improves a pick by the certainty equivalent on one sample of draws, change by change, until none
 * gains. Deterministic.
 *
 * <p>All changes are valued in one sweep. Of those that gain, the best one is taken, or as many of
 * the best as gain most together: what one change gains hangs on the others. The limits of the farm
 * are those of {@link PlanTable}.
 */
final class DrawnClimb {

  /** Errors within which a change may yet gain on other draws. */
  private static final double ERRORS = 3;

  /** A change with what it gains, by the draws of a sample. */
  record Gain(Change change, double gain, double plainError) {

    /** Whether other draws may find that it gains. */
    boolean mayGain() {
      return mayGain(0);
    }

    /** Whether other draws may find that it costs no more than this. */
    boolean mayGain(double cost) {
      return gain + ERRORS * plainError > -cost;
    }
  }

  static final Comparator<Gain> BEST_FIRST =
      Comparator.comparingDouble((Gain gain) -> -gain.gain())
          .thenComparingInt(gain -> gain.change().one())
          .thenComparingInt(gain -> gain.change().two());

  private final PlanTable table;
  private final DrawnSample sample;
  private final double tolerance;
  private final Position at;
  private final int[] pick;
  private final double least;

  /**
   * A climb on one sample.
   *
   * @param tolerance tolerance of risk, in money; without limit for the mean
   * @param least gain that is worth a change
   */
  DrawnClimb(PlanTable table, DrawnSample sample, double tolerance, double least) {
    this.least = least;
    this.table = table;
    this.sample = sample;
    this.tolerance = tolerance;
    at = new Position(table);
    pick = new int[table.paddocks()];
  }

  /** What each change of a pick gains, whether or not it keeps within the limits. */
  static List<Gain> gains(DrawnSample sample, double tolerance, int[] pick, List<Change> changes) {
    if (changes.isEmpty()) {
      return List.of();
    }
    return gains(sample.values(List.of(new Trial(pick, changes)))[0], tolerance, changes);
  }

  /** The same from values that are there: first those of the pick, then of each change. */
  static List<Gain> gains(double[][] values, double tolerance, List<Change> changes) {
    CertaintyGain gain = new CertaintyGain(values[0], tolerance);
    List<Gain> gains = new ArrayList<>();
    for (int k = 0; k < changes.size(); k++) {
      double[] changed = values[k + 1];
      gains.add(new Gain(changes.get(k), gain.of(changed), gain.plainError(changed)));
    }
    return gains;
  }

  /**
   * What a climb came to.
   *
   * @param gained what the certainty equivalent rose by on the sample, in money
   * @param left what the changes that keep within the limits would gain at the end, none more than
   *     nothing
   */
  record Climbed(double gained, List<Gain> left) {

    /** Changes that other draws may find to gain. */
    List<Change> mayGain() {
      return DrawnClimb.mayGain(left);
    }
  }

  static List<Change> mayGain(List<Gain> gains) {
    return gains.stream().filter(Gain::mayGain).map(Gain::change).toList();
  }

  /**
   * Improves a pick within the limits, in place.
   *
   * @param tried the changes that may be made
   */
  Climbed improve(int[] from, List<Change> tried) {
    at.set(from);
    return improve(from, tried, sweep(tried));
  }

  /** The same where the first sweep is there; changes that pass a limit are left out. */
  Climbed improveFrom(int[] from, List<Gain> known) {
    at.set(from);
    List<Gain> fitting = known.stream().filter(gain -> at.fits(gain.change())).toList();
    return improve(from, known.stream().map(Gain::change).toList(), fitting);
  }

  /** The same with none but those changes that may gain at the start. */
  Climbed improveRoughly(int[] from, List<Change> tried) {
    at.set(from);
    return improveFrom(from, sweep(tried).stream().filter(Gain::mayGain).toList());
  }

  /**
   * On kept farms, only what may gain is valued after a change that gained, until nothing does;
   * then all. Where farms are set anew, that would cost more than it saves.
   */
  private Climbed improve(int[] into, List<Change> tried, List<Gain> first) {
    List<Gain> gains = first;
    double gained = 0;
    double more = takeBest(gains);
    boolean isFull = true;
    while (more > 0 || !isFull) {
      gained += more;
      List<Change> likely = mayGain(gains);
      isFull = more == 0 || !sample.isKept() || likely.size() > tried.size() / 2;
      gains = sweep(isFull ? tried : likely);
      more = takeBest(gains);
    }
    at.copyPick(into);
    return new Climbed(gained, gains);
  }

  private List<Gain> sweep(List<Change> tried) {
    at.copyPick(pick);
    return gains(sample, tolerance, pick, tried.stream().filter(at::fits).toList());
  }

  /** Takes the best change, or the best few together; gives what is gained, 0 if nothing gains. */
  private double takeBest(List<Gain> gains) {
    List<Gain> best = gains.stream().filter(this::isGain).sorted(BEST_FIRST).toList();
    if (best.isEmpty()) {
      return 0;
    }
    at.copyPick(pick);
    List<int[]> picks = takenTogether(best);
    int[] taken = picks.get(0);
    double gained = best.get(0).gain();
    if (picks.size() > 1) {
      List<Trial> trials = new ArrayList<>(List.of(new Trial(pick)));
      picks.subList(1, picks.size()).forEach(of -> trials.add(new Trial(of)));
      double[][][] values = sample.values(trials);
      CertaintyGain gain = new CertaintyGain(values[0][0], tolerance);
      for (int k = 1; k < picks.size(); k++) {
        double together = gain.of(values[k][0]);
        if (together > gained) {
          gained = together;
          taken = picks.get(k);
        }
      }
    }
    at.set(taken);
    return gained;
  }

  /** Picks with the best change, the best 2, 3, 5, 8, 12 … that fit, of paddocks of their own. */
  private List<int[]> takenTogether(List<Gain> best) {
    List<int[]> picks = new ArrayList<>();
    Set<Integer> changed = new HashSet<>();
    int taken = 0;
    int next = 1;
    for (Gain gain : best) {
      if (isOfOthers(gain.change(), changed) && at.fits(gain.change())) {
        at.take(gain.change());
        taken++;
        if (taken == next) {
          next += (next + 1) / 2;
          int[] together = pick.clone();
          at.copyPick(together);
          picks.add(together);
        }
      }
    }
    return picks;
  }

  private boolean isOfOthers(Change change, Set<Integer> changed) {
    return changed.add(table.paddock(change.one()))
        && (!change.isPair() || changed.add(table.paddock(change.two())));
  }

  private boolean isGain(Gain gain) {
    return gain.gain() > least;
  }
}
