package swardcase.search;

import java.util.Comparator;
import java.util.PriorityQueue;

/**
 * Improves a pick by changes of one paddock and then of two together, until none gains. A pick that
 * passes limits is first brought inside them. Deterministic.
 *
 * <p>All changes of one paddock are tried in one sweep. Those that gain are then taken, the one of
 * highest gain first; what a change gains is worked out again when its turn comes, and it waits
 * longer if another is ahead of it by then. So one sweep serves many changes, and the sweeps needed
 * do not grow with the farm.
 */
class LocalSearch {

  private static final double GAIN = 1e-3;
  private static final double LEAST_REDUCTION = 1e-9;
  private static final int SWEEPS = 60;

  /** A change with its rank, which was worked out after so many others had been taken. */
  private record Move(int choice, double rank, int taken) {}

  private final PlanTable table;
  private final Position at;
  private final PairSearch pairs;
  private final double[] gain;
  private final PriorityQueue<Move> queue =
      new PriorityQueue<>(
          Comparator.comparingDouble((Move move) -> -move.rank()).thenComparingInt(Move::choice));
  private int taken;

  LocalSearch(PlanTable table) {
    this.table = table;
    at = new Position(table);
    pairs = new PairSearch(table, at, GAIN);
    gain = new double[table.choices()];
  }

  /** Improves {@code pick} in place and gives its value; minus infinity if it passes limits. */
  double improve(int[] pick) {
    return improve(pick, true);
  }

  /** The same with changes of one paddock only. */
  double improveSingly(int[] pick) {
    return improve(pick, false);
  }

  private double improve(int[] pick, boolean inPairs) {
    at.set(pick);
    while (at.excess() > 0) {
      if (!reduceExcess()) {
        return Double.NEGATIVE_INFINITY;
      }
      at.settle();
    }
    for (int sweep = 0; sweep < SWEEPS; sweep++) {
      if (!improveOne() && !(inPairs && pairs.improve(gain))) {
        break;
      }
      at.settle();
    }
    at.copyPick(pick);
    return at.value();
  }

  private boolean isTried(int choice) {
    return at.choice(table.paddock(choice)) != choice;
  }

  /** Takes what loses least for the excess that it takes away; false if nothing takes any away. */
  private boolean reduceExcess() {
    queue.clear();
    taken = 0;
    for (int c = 0; c < gain.length; c++) {
      if (isTried(c)) {
        queueReduction(c);
      }
    }
    while (!queue.isEmpty() && at.excess() > 0) {
      Move move = queue.poll();
      if (move.taken() < taken) {
        queueReduction(move.choice());
      } else {
        take(move);
      }
    }
    return taken > 0;
  }

  private void queueReduction(int choice) {
    at.attempt(choice);
    double reduced = at.excess() - at.triedExcess();
    if (reduced > LEAST_REDUCTION) {
      queue.add(new Move(choice, at.triedGain(choice) / reduced, taken));
    }
  }

  private void take(Move move) {
    at.take(move.choice());
    taken++;
  }

  /** One sweep; false if no change gains. */
  private boolean improveOne() {
    queue.clear();
    taken = 0;
    for (int c = 0; c < gain.length; c++) {
      gain[c] = 0;
      if (isTried(c)) {
        gain[c] = queueGain(c);
      }
    }
    while (!queue.isEmpty()) {
      Move move = queue.poll();
      if (move.taken() < taken) {
        queueGain(move.choice());
      } else {
        take(move);
      }
    }
    return taken > 0;
  }

  private double queueGain(int choice) {
    at.attempt(choice);
    double gained = at.triedGain(choice);
    if (gained > GAIN && at.triedExcess() == 0) {
      queue.add(new Move(choice, gained, taken));
    }
    return gained;
  }
}
