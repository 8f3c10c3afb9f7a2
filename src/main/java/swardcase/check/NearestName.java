package swardcase.check;

import java.util.Arrays;
import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Predicate;

/** Finds the valid name a mistyped one was probably meant to be. */
public final class NearestName {

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
    return names.stream()
        .min(
            Comparator.<String>comparingInt(name -> changes(wanted, name.toLowerCase(Locale.ROOT)))
                .thenComparing(Comparator.naturalOrder()))
        .filter(
            name ->
                changes(wanted, name.toLowerCase(Locale.ROOT))
                    <= Math.max(1, Math.max(name.length(), wanted.length()) / 3))
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

  /** Insertions, deletions, substitutions and swaps of neighbours. */
  private static int changes(String from, String to) {
    int[][] least = new int[from.length() + 1][to.length() + 1];
    for (int i = 0; i <= from.length(); i++) {
      for (int j = 0; j <= to.length(); j++) {
        if (i == 0 || j == 0) {
          least[i][j] = i + j;
          continue;
        }
        int same = from.charAt(i - 1) == to.charAt(j - 1) ? 0 : 1;
        least[i][j] =
            Math.min(least[i - 1][j - 1] + same, Math.min(least[i - 1][j], least[i][j - 1]) + 1);
        if (i > 1
            && j > 1
            && from.charAt(i - 1) == to.charAt(j - 2)
            && from.charAt(i - 2) == to.charAt(j - 1)) {
          least[i][j] = Math.min(least[i][j], least[i - 2][j - 2] + 1);
        }
      }
    }
    return least[from.length()][to.length()];
  }
}
