package swardcase.check;

import java.util.Collection;
import java.util.Comparator;
import java.util.Locale;
import java.util.Optional;

/** Finds the valid name a mistyped one was probably meant to be. */
public final class NearestName {

  private NearestName() {}

  /**
   * The name of the fewest single-letter changes from {@code typed}, case aside; empty if even that
   * one differs in more than a third of its letters. {@code Yarlop} finds {@code Yarloop}.
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

  /** Levenshtein distance: insertions, deletions and substitutions. */
  private static int changes(String from, String to) {
    int[] row = new int[to.length() + 1];
    for (int j = 0; j <= to.length(); j++) {
      row[j] = j;
    }
    for (int i = 1; i <= from.length(); i++) {
      int diagonal = row[0];
      row[0] = i;
      for (int j = 1; j <= to.length(); j++) {
        int above = row[j];
        int substituted = diagonal + (from.charAt(i - 1) == to.charAt(j - 1) ? 0 : 1);
        row[j] = Math.min(substituted, Math.min(above, row[j - 1]) + 1);
        diagonal = above;
      }
    }
    return row[to.length()];
  }
}
