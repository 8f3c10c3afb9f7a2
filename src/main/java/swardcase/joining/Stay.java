package swardcase.joining;

import java.util.List;

/**
 * A mob in paddocks for some time.
 *
 * @param from first half-month
 * @param to last half-month
 * @param where what kind of stay
 * @param paddocks places of the paddocks; none where any that is open will do
 * @param boughtMj feed that the paddocks left to it do not give, MJ
 */
public record Stay(int from, int to, Where where, List<Integer> paddocks, double boughtMj) {

  /** Kinds of stay. */
  public enum Where {
    /** In its own paddocks, none of which is shut to it. */
    AS_NOW,
    /** In those of its own paddocks that are not shut to it. */
    OWN,
    /** In those, and when they are eaten down in any other that is not shut to it. */
    OWN_THEN_ANY,
    /** In any paddock that is not shut to it. */
    ANY_OPEN,
    /** In the paddocks named, in turn. */
    NAMED
  }

  /** Copies the list. */
  public Stay {
    paddocks = List.copyOf(paddocks);
  }

  boolean isLike(Stay other) {
    return where == other.where && paddocks.equals(other.paddocks);
  }

  Stay until(Stay next) {
    return new Stay(from, next.to, where, paddocks, boughtMj + next.boughtMj);
  }
}
