package swardcase.chance;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ManyTriedTest {

  /** Quantiles of the normal distribution as Python's statistics.NormalDist gives them. */
  @ParameterizedTest
  @CsvSource({"1, 1.644854", "2, 1.959964", "10, 2.575829", "100, 3.290527", "1000, 3.890592"})
  void quantile_ofTried_isThatOfTheNormalDistribution(int tried, double quantile) {
    assertThat(ManyTried.quantile(tried)).isCloseTo(quantile, within(5e-7));
  }

  @Test
  void quantile_ofNoneTried_isRefused() {
    assertThatThrownBy(() -> ManyTried.quantile(0))
        .hasMessage("number tried must be one or more, but was 0");
  }

  @Test
  void countsAmong_moreTried_asksForMore() {
    DrawnInformation worth = new DrawnInformation(2500, 1000);
    assertThat(worth.countsAmong(1)).isTrue();
    assertThat(worth.countsAmong(8)).isTrue(); // 2,498
    assertThat(worth.countsAmong(9)).isFalse(); // 2,539
    assertThat(worth.countsAmong(10)).isFalse();
  }

  @Test
  void countsAmong_ofWorthWithoutError_asksOnlyThatItIsWorthSomething() {
    assertThat(new DrawnInformation(1, 0).countsAmong(1000)).isTrue();
    assertThat(new DrawnInformation(0, 0).countsAmong(1)).isFalse();
  }

  /** Law: of forty that are noise one or more pass in about 5 of 100 cases; 2,000 cases. */
  @Test
  void countsAmong_nothingButNoise_passesInFiveOfHundred() {
    SplittableRandom random = new SplittableRandom(3);
    int passed = 0;
    for (int i = 0; i < 2000; i++) {
      boolean any = false;
      for (int m = 0; m < 40; m++) {
        any |= new DrawnInformation(Math.max(0, random.nextGaussian()), 1).countsAmong(40);
      }
      passed += any ? 1 : 0;
    }
    // Four standard errors of 2,000 cases.
    assertThat(passed / 2000.0).isCloseTo(0.0488, within(4 * Math.sqrt(0.05 * 0.95 / 2000)));
  }
}
