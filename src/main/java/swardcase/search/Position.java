package swardcase.search;

import java.util.Set;

/**
 * A pick with its sums and its value, and what both would be with one or two of its paddocks
 * changed. A change is an addition to the sums, so that it costs the same on any farm.
 */
final class Position {

  private final PlanTable table;
  private final double[] sums;
  private final double[] tried;
  private final int[] pick;
  private double own;
  private double value;
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
    own = table.own(pick);
    value = table.value(sums) + own;
    excess = table.excess(sums);
  }

  /** Adds the pick up anew, so that no rounding is carried along. */
  void settle() {
    set(pick);
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

  double value() {
    return value;
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
  void attempt(int one, int two) {
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

  /** What would be gained by the choice that was tried. */
  double triedGain(int choice) {
    return table.value(tried) + own + ownChange(choice) - value;
  }

  /** What would be gained by the two choices that were tried. */
  double triedGain(int one, int two) {
    return table.value(tried) + own + ownChange(one) + ownChange(two) - value;
  }

  private double ownChange(int choice) {
    return table.own(choice) - table.own(pick[table.paddock(choice)]);
  }

  /** Takes a choice. */
  void take(int choice) {
    int i = table.paddock(choice);
    table.exchange(pick[i], choice, sums, sums);
    own += ownChange(choice);
    pick[i] = choice;
    value = table.value(sums) + own;
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
