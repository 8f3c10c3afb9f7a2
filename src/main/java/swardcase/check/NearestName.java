package swardcase.check;

import java.util.Collection;
import java.util.Comparator;
import java.util.Locale;
import java.util.Optional;

/** Finds the valid name a mistyped one was probably meant to be. */
public final class NearestName {

  private NearestName() {}

  /**
   * The name of the fewest changes of letters, swaps of neighbours among them, from {@code typed},
   * case aside; empty if even that one differs in more than a third of its letters. {@code Yarlop}
   * finds {@code Yarloop}.
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
                    <= Math.max(1, Math.max(name.length(), wanted.length()) / 3));
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
