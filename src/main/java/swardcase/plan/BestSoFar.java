package swardcase.plan;

import java.nio.IntBuffer;
import java.util.HashSet;
import java.util.Set;

/** The best pick found, and the search near picks that are put forward. */
final class BestSoFar {

  private static final double CLOSE = 0.5;
  private static final double WORTH_A_LONG_LOOK = 0.02;

  private final LocalSearch local;
  private final Set<IntBuffer> improved = new HashSet<>();
  private final Set<IntBuffer> repaired = new HashSet<>();
  private int[] pick = {};
  private double value = Double.NEGATIVE_INFINITY;

  BestSoFar(LocalSearch local) {
    this.local = local;
  }

  /** Improves a pick as far as changes of one and of two paddocks go. */
  void improveFrom(int[] from) {
    if (!improved.add(key(from))) {
      return;
    }
    int[] tried = from.clone();
    double worth = local.improve(tried);
    if (worth > value + 1e-6) {
      value = worth;
      pick = tried;
    }
  }

  /** Tries a pick that may pass limits; changes of two paddocks only if it comes near the best. */
  void repairFrom(int[] from) {
    if (!repaired.add(key(from))) {
      return;
    }
    int[] tried = from.clone();
    double worth = local.improveSingly(tried);
    if (worth > value - WORTH_A_LONG_LOOK * Math.abs(value)) {
      improveFrom(tried);
    }
  }

  /** A pick that was tried once would bring nothing new: the best value only rises. */
  private static IntBuffer key(int[] pick) {
    return IntBuffer.wrap(pick.clone());
  }

  boolean isEmpty() {
    return pick.length == 0;
  }

  int[] pick() {
    return pick.clone();
  }

  double value() {
    return value;
  }

  /** What a pick must pass to count as better. */
  double toPass() {
    return value + close(value);
  }

  /** Values so near one another are taken for the same. */
  static double close(double value) {
    return Math.max(CLOSE, 1e-4 * value);
  }
}
