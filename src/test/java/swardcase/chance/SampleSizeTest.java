package swardcase.chance;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Check values are our arithmetic for simple random sampling, made before this code was. */
class SampleSizeTest {

  @ParameterizedTest
  @CsvSource({
    "0.2, 0.10, 62",
    "0.2, 0.05, 246",
    "0.2, 0.03, 683",
    "0.5, 0.1, 97",
    "0.5, 0.05, 385"
  })
  void forOneShare_atNinetyFivePerCent_matchesArithmetic(double share, double half, int plants) {
    assertThat(SampleSize.forOneShare(share, half, 0.95)).isEqualTo(plants);
  }

  /** 510 for five points at 95 % is also the value tabled by Thompson (1987), from memory. */
  @ParameterizedTest
  @CsvSource({"0.15, 57", "0.10, 128", "0.05, 510"})
  void forAllShares_atNinetyFivePerCent_matchesThompson(double half, int plants) {
    assertThat(SampleSize.forAllShares(half, 0.95)).isEqualTo(plants);
  }

  @ParameterizedTest
  @CsvSource({"0.10, 29", "0.05, 59", "0.02, 149", "0.01, 299"})
  void toSeeOne_atNinetyFivePerCent_matchesArithmetic(double share, int plants) {
    assertThat(SampleSize.toSeeOne(share, 0.95)).isEqualTo(plants);
    assertThat(1 - Math.pow(1 - share, plants)).isGreaterThanOrEqualTo(0.95);
    assertThat(1 - Math.pow(1 - share, plants - 1)).isLessThan(0.95);
  }

  /** In whole per cent, 0.1 to one decimal. */
  @ParameterizedTest
  @CsvSource({
    "0.10, 0.001, 0.0005",
    "0.15, 0.07, 0.005",
    "0.20, 0.44, 0.005",
    "0.25, 0.85, 0.005",
    "0.30, 0.98, 0.005"
  })
  void chanceOfMoreThan_twentyOfAHundred_matchesTheBinomial(
      double share, double chance, double half) {
    assertThat(SampleSize.chanceOfMoreThan(20, 100, share)).isCloseTo(chance, within(half));
  }

  @Test
  void sizes_badArguments_areRefused() {
    assertThatThrownBy(() -> SampleSize.toSeeOne(0, 0.95))
        .hasMessage("share must be between 0 and 1, but was 0.0");
    assertThatThrownBy(() -> SampleSize.forOneShare(0.2, 0, 0.95))
        .hasMessage("half width must be more than zero, but was 0");
    assertThatThrownBy(() -> SampleSize.toSeeOne(1, 0.95))
        .hasMessage("share must be between 0 and 1, but was 1.0");
    assertThatThrownBy(() -> SampleSize.toSeeOne(0.1, 1))
        .hasMessage("chance must be between 0 and 1, but was 1.0");
    assertThatThrownBy(() -> SampleSize.toSeeOne(0.1, 0))
        .hasMessage("chance must be between 0 and 1, but was 0.0");
    assertThatThrownBy(() -> Proportion.zOf(0))
        .hasMessage("confidence must be between 0 and 1, but was 0.0");
    assertThat(SampleSize.chanceOfMoreThan(0, 1, 0.3)).isEqualTo(0.3);
    assertThatThrownBy(() -> SampleSize.chanceOfMoreThan(10, 10, 0.5))
        .hasMessage("hits must be from 0 to 10, but was 10");
  }
}
