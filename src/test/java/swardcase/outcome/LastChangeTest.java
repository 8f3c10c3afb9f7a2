package swardcase.outcome;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import swardcase.RandomFarms;
import swardcase.farm.Action;

/** Years by hand from the likely values of the tables: growth, chance and years of each action. */
class LastChangeTest {

  private static Action action(String key) {
    return RandomFarms.TABLES.actions().stream()
        .filter(each -> each.key().equals(key))
        .findFirst()
        .orElseThrow();
  }

  /**
   * The year after oversowing bears 0.4 of the cost again and grows 0.6 x 1 + 0.4 x 0.9 = 0.96.
   * That after resowing grows 0.8 x 0.9 + 0.2 x 0.62 = 0.84, the next one 0.8 + 0.2 x 0.9 = 0.98.
   */
  @ParameterizedTest
  @CsvSource({
    "keep, 0",
    "crop-only, 3",
    "thin, 6",
    "broadcast, 1",
    "oversow, 1",
    "spray-fallow, 2",
    "crop-1, 2",
    "crop-2, 3",
    "crop-3, 4"
  })
  void lastChange_ofTheTablesActions_isTheYearAfterSowing(String key, int expected) {
    assertThat(LastChange.of(action(key), RandomFarms.TABLES)).isEqualTo(expected);
  }
}
