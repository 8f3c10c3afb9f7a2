package swardcase.check;

import java.util.Arrays;
import java.util.Collection;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Predicate;

/** Finds the valid name a mistyped one was probably meant to be. */
public final class NearestName {

  /** Letters of the longest name that is compared: what is longer was not typed by hand. */
  private static final int LONGEST = 50;

  private NearestName() {}

  /**
   * The name of the fewest changes of letters, swaps of neighbours among them, from {@code typed},
   * case aside: {@code Yarlop} finds {@code Yarloop}. If even that one differs in more than a third
   * of its letters, the one name that begins with what was typed ({@code Y} finds {@code yes}), or
   * else the one that holds it as a word ({@code Barker} finds {@code Mount Barker}); empty if none
   * does, or several do.
   */
  public static Optional<String> find(String typed, Collection<String> names) {
    String wanted = typed.strip().toLowerCase(Locale.ROOT);
    if (wanted.length() > LONGEST) {
      return Optional.empty();
    }
    String nearest = null;
    int fewest = Integer.MAX_VALUE;
    for (String name : names) {
      String other = name.toLowerCase(Locale.ROOT);
      int most = Math.max(1, Math.max(other.length(), wanted.length()) / 3);
      int changes = changes(wanted, other, Math.min(most, fewest));
      if (changes < fewest || changes == fewest && nearest != null && name.compareTo(nearest) < 0) {
        nearest = name;
        fewest = changes;
      }
    }
    return Optional.ofNullable(nearest)
        .or(() -> theOne(names, name -> !wanted.isEmpty() && name.startsWith(wanted)))
        .or(() -> theOne(names, name -> Arrays.asList(name.split(" ")).contains(wanted)));
  }

  /** The name that fits, if no other does; the test is given it in small letters. */
  private static Optional<String> theOne(Collection<String> names, Predicate<String> fits) {
    List<String> fitting =
        names.stream()
            .distinct()
            .filter(name -> fits.test(name.toLowerCase(Locale.ROOT)))
            .limit(2)
            .toList();
    return fitting.size() == 1 ? Optional.of(fitting.get(0)) : Optional.empty();
  }

  /**
   * Insertions, deletions, substitutions and swaps of neighbours: the least number that makes one
   * of the other (optimal string alignment), row by row; {@link Integer#MAX_VALUE} if it is more
   * than {@code most}. Letters further apart than {@code most} places cannot stand for each other,
   * so that only a band beside the diagonal is worked out.
   */
  private static int changes(String from, String to, int most) {
    if (Math.abs(from.length() - to.length()) > most || to.length() > LONGEST) {
      return Integer.MAX_VALUE;
    }
    int[] before = new int[to.length() + 1];
    int[] last = new int[to.length() + 1];
    int[] least = new int[to.length() + 1];
    for (int j = 0; j <= to.length(); j++) {
      least[j] = j;
    }
    for (int i = 1; i <= from.length(); i++) {
      int[] free = before;
      before = last;
      last = least;
      least = free;
      Arrays.fill(least, most + 1);
      least[0] = i;
      int leastOfRow = i;
      for (int j = Math.max(1, i - most); j <= Math.min(to.length(), i + most); j++) {
        int same = from.charAt(i - 1) == to.charAt(j - 1) ? 0 : 1;
        least[j] = Math.min(last[j - 1] + same, Math.min(last[j], least[j - 1]) + 1);
        if (i > 1
            && j > 1
            && from.charAt(i - 1) == to.charAt(j - 2)
            && from.charAt(i - 2) == to.charAt(j - 1)) {
          least[j] = Math.min(least[j], before[j - 2] + 1);
        }
        leastOfRow = Math.min(leastOfRow, least[j]);
      }
      if (leastOfRow > most) {
        return Integer.MAX_VALUE;
      }
    }
    return least[to.length()] <= most ? least[to.length()] : Integer.MAX_VALUE;
  }
}
