package swardcase.plan;

import java.util.Arrays;
import java.util.Optional;
import java.util.function.IntPredicate;

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

  /** The choices that stay; empty if a paddock would have none. */
  Optional<Open> where(IntPredicate stays) {
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
        return Optional.empty();
      }
    }
    firstLeft[paddocks()] = count;
    return Optional.of(new Open(firstLeft, Arrays.copyOf(left, count)));
  }

  /** The pick of the first open choice of each paddock, which is the only one if no more stand. */
  int[] only() {
    int[] pick = new int[paddocks()];
    Arrays.setAll(pick, i -> choice[first[i]]);
    return pick;
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
