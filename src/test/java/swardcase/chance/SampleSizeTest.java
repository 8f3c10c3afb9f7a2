package swardcase.chance;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

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

  @ParameterizedTest
  @CsvSource({"0.10, 29", "0.05, 59", "0.02, 149", "0.01, 299"})
  void toSeeOne_atNinetyFivePerCent_matchesArithmetic(double share, int plants) {
    assertThat(SampleSize.toSeeOne(share, 0.95)).isEqualTo(plants);
    assertThat(1 - Math.pow(1 - share, plants)).isGreaterThanOrEqualTo(0.95);
    assertThat(1 - Math.pow(1 - share, plants - 1)).isLessThan(0.95);
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
  }
}
