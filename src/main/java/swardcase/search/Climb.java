package swardcase.search;

import java.util.Comparator;
import java.util.List;
import java.util.PriorityQueue;
import swardcase.search.Aim.Gain;

/**
 * Improves a pick by an {@link Aim} on one sample of draws, change by change, until none gains.
 * Deterministic.
 *
 * <p>All changes are valued in one sweep. Those that gain are then taken, the best one first; since
 * what one change gains hangs on the others, it is valued again when its turn comes, and waits
 * longer if another is ahead of it by then. So one sweep serves many changes. The limits of the
 * farm are those of {@link PlanTable}.
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

  /** A change with what it gained when so many others had been taken. */
  private record Move(Gain gain, int taken) implements Comparable<Move> {

    @Override
    public int compareTo(Move other) {
      return BEST_FIRST.compare(gain, other.gain);
    }
  }

  /**
   * Climbs on one sample.
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

  private Climbed climb(int[] into, List<Change> tried, List<Gain> first) {
    List<Gain> gains = first;
    double gained = 0;
    double more = takeThoseThatGain(gains);
    while (more > 0) {
      gained += more;
      gains = sweep(tried);
      more = takeThoseThatGain(gains);
    }
    at.copyPick(into);
    return new Climbed(gained, gains);
  }

  private List<Gain> sweep(List<Change> tried) {
    at.copyPick(pick);
    return aim.gains(
        sample, pick, tried.stream().filter(change -> !at.has(change)).filter(at::fits).toList());
  }

  /**
   * Takes changes, the best one first, as long as one gains; gives what is gained by all. Where
   * farms are set anew, valuing one change again costs as much as all, so only the best is taken.
   */
  private double takeThoseThatGain(List<Gain> gains) {
    PriorityQueue<Move> queue = new PriorityQueue<>();
    gains.stream().filter(this::isGain).forEach(gain -> queue.add(new Move(gain, 0)));
    int taken = 0;
    double gained = 0;
    while (!queue.isEmpty() && (taken == 0 || sample.isKept())) {
      Move move = queue.poll();
      if (move.taken() == taken) {
        at.take(move.gain().change());
        taken++;
        gained += move.gain().gain();
      } else {
        int now = taken;
        sweep(List.of(move.gain().change())).stream()
            .filter(this::isGain)
            .forEach(gain -> queue.add(new Move(gain, now)));
      }
    }
    return gained;
  }

  private boolean isGain(Gain gain) {
    return gain.gain() > least;
  }
}
