package swardcase.wording;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ChancesTest {

  @ParameterizedTest
  @CsvSource({
    "0, none of the",
    "0.0001, fewer than 1 of 20",
    "0.05, 1 of 10",
    "0.79, 8 of 10",
    "0.95, 9 of 10",
    "0.9501, more than 19 of 20",
    "0.9999, more than 19 of 20",
    "1, all"
  })
  void outOfTen_ofAChance_saysItsEndsAsTheyAre(double chance, String words) {
    assertThat(Chances.outOfTen(chance)).isEqualTo(words);
  }
}
