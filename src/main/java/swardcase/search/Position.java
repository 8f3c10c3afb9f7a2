package swardcase.search;

import java.util.Set;

/**
 * A pick with its sums, and what they would be with one or two of its paddocks changed: whether it
 * keeps within the limits of the farm. A change is an addition to the sums, so that it costs the
 * same on any farm.
 */
final class Position {

  private final PlanTable table;
  private final double[] sums;
  private final double[] tried;
  private final int[] pick;
  private double excess;

  Position(PlanTable table) {
    this.table = table;
    sums = new double[table.years() * table.sums()];
    tried = new double[sums.length];
    pick = new int[table.places()];
  }

  /** Goes to a pick, and adds it up. */
  void set(int[] to) {
    System.arraycopy(to, 0, pick, 0, pick.length);
    table.sum(pick, sums);
    excess = table.excess(sums);
  }

  void copyPick(int[] into) {
    System.arraycopy(pick, 0, into, 0, pick.length);
  }

  /** The choice of a paddock. */
  int choice(int paddock) {
    return pick[paddock];
  }

  double[] sums() {
    return sums;
  }

  /** How far the pick lies outside the limits. */
  double excess() {
    return excess;
  }

  /** What a choice would add to a sum in place of its paddock's own. */
  double change(int choice, int at) {
    return table.added(choice, at) - table.added(pick[table.paddock(choice)], at);
  }

  /** Whether a change is none. */
  boolean has(Change change) {
    return choice(table.paddock(change.one())) == change.one()
        && (!change.isPair() || choice(table.paddock(change.two())) == change.two());
  }

  /** Tries a choice. */
  void attempt(int choice) {
    table.exchange(pick[table.paddock(choice)], choice, sums, tried);
  }

  /** Tries two choices of two paddocks. */
  private void attempt(int one, int two) {
    attempt(one);
    table.exchange(pick[table.paddock(two)], two, tried, tried);
  }

  /** Whether a change keeps within the limits. */
  boolean fits(Change change) {
    if (change.isPair()) {
      attempt(change.one(), change.two());
    } else {
      attempt(change.one());
    }
    return triedExcess() == 0;
  }

  /** The limits that a choice passes. */
  Set<PlanLimit> passed(int choice) {
    attempt(choice);
    return table.passed(tried);
  }

  /** How far what was tried lies outside the limits. */
  double triedExcess() {
    return table.excess(tried);
  }

  /** How much of the excess a change of one paddock takes away. */
  double reduction(Change change) {
    attempt(change.one());
    return excess - triedExcess();
  }

  /** Takes a choice. */
  private void take(int choice) {
    int i = table.paddock(choice);
    table.exchange(pick[i], choice, sums, sums);
    pick[i] = choice;
    excess = table.excess(sums);
  }

  /** Takes a change. */
  void take(Change change) {
    take(change.one());
    if (change.isPair()) {
      take(change.two());
    }
  }
}
