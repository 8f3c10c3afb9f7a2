package swardcase.check;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.SplittableRandom;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * The nearest name, found in a band, against the whole table of changes worked out cell by cell.
 */
class NearestNameTest {

  private static final List<String> NAMES =
      List.of("Mount Barker", "Narrikup", "Yarloop", "York", "unidentified", "unidentified old");

  @ParameterizedTest
  @CsvSource({
    "Yarlop, Yarloop",
    "yarlopo, Yarloop",
    "Narr, Narrikup",
    "mount, Mount Barker",
    "BARKER, Mount Barker",
    "old, unidentified old",
    "Yor, York",
  })
  void find_slipOrPart_givesTheOneName(String typed, String name) {
    assertThat(NearestName.find(typed, NAMES)).hasValue(name);
  }

  @ParameterizedTest
  @CsvSource({"Y", "un", "zzz", "arker", "''", "' '"})
  void find_partOfSeveralOrOfNone_givesNothing(String typed) {
    assertThat(NearestName.find(typed, NAMES)).isEmpty();
  }

  @Test
  void find_theSameNameTwice_isOneName() {
    assertThat(NearestName.find("Y", List.of("yes", "no", "yes"))).hasValue("yes");
    assertThat(NearestName.find("Y", List.of())).isEmpty();
  }

  @Test
  void find_slipOfTheHand_givesTheNameThatWasMeant() {
    List<String> names = List.of("Yarloop", "Dinninup", "Dwalganup", "Geraldton");

    assertThat(NearestName.find("Yarlop", names)).contains("Yarloop");
    assertThat(NearestName.find("DINNIUNP", names)).contains("Dinninup");
    assertThat(NearestName.find("Trikkala", names)).isEmpty();
    assertThat(NearestName.find("", names)).isEmpty();
    assertThat(NearestName.find("Yarloop".repeat(20_000), names)).isEmpty();
  }

  @Test
  void find_randomNames_isTheNearestOfThoseThatDifferInAtMostAThird() {
    SplittableRandom random = new SplittableRandom(20261128);
    int found = 0;
    for (int i = 0; i < 3000; i++) {
      String typed = word(random);
      List<String> names = Stream.generate(() -> word(random)).limit(6).distinct().toList();
      Optional<String> expected =
          names.stream()
              .filter(name -> changes(typed, name) <= Math.max(1, longer(typed, name) / 3))
              .min(
                  Comparator.<String>comparingInt(name -> changes(typed, name))
                      .thenComparing(Comparator.naturalOrder()));
      Optional<String> nearest = NearestName.find(typed, names);
      if (expected.isPresent()) {
        assertThat(nearest).as(typed + " of " + names).isEqualTo(expected);
      } else {
        nearest.ifPresent(name -> assertThat(name).startsWith(typed));
      }
      found += expected.isPresent() ? 1 : 0;
    }
    assertThat(found).isBetween(300, 2700);
  }

  private static int longer(String one, String other) {
    return Math.max(one.length(), other.length());
  }

  private static String word(SplittableRandom random) {
    return random
        .ints(1 + random.nextInt(9), 'a', 'd')
        .collect(StringBuilder::new, StringBuilder::appendCodePoint, StringBuilder::append)
        .toString();
  }

  /** Changes by the definition: the last letters are the same, or one change brings them about. */
  private static int changes(String from, String to) {
    int[][] least = new int[from.length() + 1][to.length() + 1];
    for (int i = 0; i <= from.length(); i++) {
      for (int j = 0; j <= to.length(); j++) {
        if (i == 0 || j == 0) {
          least[i][j] = i + j;
          continue;
        }
        boolean same = from.charAt(i - 1) == to.charAt(j - 1);
        boolean swapped =
            i > 1
                && j > 1
                && from.charAt(i - 1) == to.charAt(j - 2)
                && from.charAt(i - 2) == to.charAt(j - 1);
        least[i][j] =
            IntStream.of(
                    least[i - 1][j] + 1,
                    least[i][j - 1] + 1,
                    least[i - 1][j - 1] + (same ? 0 : 1),
                    swapped ? least[i - 2][j - 2] + 1 : Integer.MAX_VALUE)
                .min()
                .orElseThrow();
      }
    }
    return least[from.length()][to.length()];
  }
}
