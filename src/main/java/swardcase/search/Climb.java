package swardcase.search;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import swardcase.outcome.Plan;
import swardcase.search.Aim.Gain;
import swardcase.search.DrawnSample.Trial;

/**
 * Improves a pick by an {@link Aim} on one sample of draws, change by change, until none gains.
 * Deterministic.
 *
 * <p>All changes are valued in one sweep. Of those that gain, the best one is taken, or as many of
 * the best as gain most together: what one change gains hangs on the others. The limits of the farm
 * are those of {@link PlanTable}.
 */
final class Climb {

  static final Comparator<Gain> BEST_FIRST =
      Comparator.comparingDouble((Gain gain) -> -gain.gain())
          .thenComparingInt(gain -> gain.change().one())
          .thenComparingInt(gain -> gain.change().two());

  private final PlanTable table;
  private final Aim aim;
  private final DrawnSample sample;
  private final Position at;
  private final int[] pick;
  private final double least;
  private final Map<Plan, List<Gain>> ended = new HashMap<>();

  /**
   * Climbs on one sample, all with the same changes if its farms are kept.
   *
   * @param least gain that is worth another step
   */
  Climb(Aim aim, DrawnSample sample, double least) {
    this.aim = aim;
    this.sample = sample;
    this.least = least;
    table = aim.table();
    at = new Position(table);
    pick = new int[table.places()];
  }

  /**
   * What a climb came to.
   *
   * @param gained what the aim rose by on the sample, in money
   * @param left what the changes that keep within the limits would gain at the end, none more than
   *     nothing
   */
  record Climbed(double gained, List<Gain> left) {}

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
    return climb(from, tried, sweep(tried));
  }

  /** The same where what they gain at first is known; those that pass a limit are left out. */
  Climbed improve(int[] from, List<Change> tried, List<Gain> known) {
    at.set(from);
    return climb(from, tried, known.stream().filter(gain -> at.fits(gain.change())).toList());
  }

  /** The same with none but these changes. */
  Climbed improveFrom(int[] from, List<Gain> known) {
    return improve(from, known.stream().map(Gain::change).toList(), known);
  }

  /**
   * On kept farms, only what may gain is valued after a change that gained, until nothing does;
   * then all, unless a climb before ended there. Where farms are set anew, that would cost more
   * than it saves.
   */
  private Climbed climb(int[] into, List<Change> tried, List<Gain> first) {
    List<Gain> gains = first;
    double gained = 0;
    double more = takeBest(gains);
    boolean isFull = true;
    while (more > 0 || !isFull) {
      gained += more;
      List<Change> likely = mayGain(gains);
      if (more == 0 && ended.containsKey(plan())) {
        gains = ended.get(plan());
        break;
      }
      isFull = more == 0 || !sample.isKept() || likely.size() > tried.size() / 2;
      gains = sweep(isFull ? tried : likely);
      more = takeBest(gains);
    }
    at.copyPick(into);
    ended.put(plan(), gains);
    return new Climbed(gained, gains);
  }

  private Plan plan() {
    at.copyPick(pick);
    return table.plan(pick);
  }

  private List<Gain> sweep(List<Change> tried) {
    at.copyPick(pick);
    return aim.gains(
        sample, pick, tried.stream().filter(change -> !at.has(change)).filter(at::fits).toList());
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
      double[] together = aim.gains(trials, sample.values(trials));
      for (int k = 1; k < picks.size(); k++) {
        if (together[k] > gained) {
          gained = together[k];
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
