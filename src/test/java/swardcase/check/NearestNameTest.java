package swardcase.check;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

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
}
