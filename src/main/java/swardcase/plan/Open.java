package swardcase.plan;

import java.util.Arrays;

/** The choices still in the game: those of a paddock stand together, every paddock has one. */
final class Open {

  private final int[] first;
  private final int[] choice;

  private Open(int[] first, int[] choice) {
    this.first = first;
    this.choice = choice;
  }

  /** All choices of a table. */
  static Open all(PlanTable table) {
    int[] first = new int[table.paddocks() + 1];
    Arrays.setAll(first, table::first);
    int[] choice = new int[table.choices()];
    Arrays.setAll(choice, c -> c);
    return new Open(first, choice);
  }

  /** Whether a choice stays. */
  interface Test {
    boolean test(int choice);
  }

  /** The choices that stay; null if a paddock would have none. */
  Open where(Test stays) {
    int[] firstLeft = new int[first.length];
    int[] left = new int[choice.length];
    int count = 0;
    for (int i = 0; i < paddocks(); i++) {
      firstLeft[i] = count;
      for (int k = first[i]; k < first[i + 1]; k++) {
        if (stays.test(choice[k])) {
          left[count++] = choice[k];
        }
      }
      if (count == firstLeft[i]) {
        return null;
      }
    }
    firstLeft[paddocks()] = count;
    return new Open(firstLeft, Arrays.copyOf(left, count));
  }

  int paddocks() {
    return first.length - 1;
  }

  int size() {
    return choice.length;
  }

  /** Place of a paddock's first open choice. */
  int first(int paddock) {
    return first[paddock];
  }

  /** The choice at a place. */
  int choice(int place) {
    return choice[place];
  }
}
