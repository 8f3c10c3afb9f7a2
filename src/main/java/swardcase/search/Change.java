package swardcase.search;

import java.util.List;
import java.util.stream.IntStream;

/**
 * One choice, or two of different paddocks, in place of what a pick has there.
 *
 * @param one place of a choice
 * @param two place of another; {@link #NONE} if only one paddock is changed
 */
record Change(int one, int two) {

  static final int NONE = -1;

  static Change of(int choice) {
    return new Change(choice, NONE);
  }

  /** Each choice of a table alone, at the place of the choice. */
  static List<Change> each(PlanTable of) {
    return IntStream.range(0, of.choices()).mapToObj(Change::of).toList();
  }

  boolean isPair() {
    return two != NONE;
  }
}
