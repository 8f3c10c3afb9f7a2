package swardcase.chance;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

class OddsTest {

  /** Zero lies 2/3 x 1.645 = 1.097 standard deviations down; the normal table has 0.8636 there. */
  @Test
  void above_zeroTwoThirdsOfTheWayDown_isTheNormalTable() {
    assertThat(Odds.above(Range.of(-1, 2, 9), 0)).isCloseTo(0.8636, within(5e-5));
  }

  @Test
  void above_anEnd_isOneInTwenty() {
    assertThat(Odds.above(Range.of(-1, 2, 9), -1)).isCloseTo(0.95, within(1e-9));
    assertThat(Odds.above(Range.of(-1, 2, 9), 9)).isCloseTo(0.05, within(1e-9));
  }

  @Test
  void above_theLikelyValue_isEven() {
    assertThat(Odds.above(Range.of(-1, 2, 9), 2)).isEqualTo(0.5);
  }

  @Test
  void above_aNumberKnownExactly_isYesOrNo() {
    assertThat(Odds.above(Range.exactly(2), 1)).isEqualTo(1);
    assertThat(Odds.above(Range.exactly(2), 2)).isZero();
    assertThat(Odds.above(Range.exactly(2), 3)).isZero();
    assertThat(Odds.above(Range.of(2, 2, 5), 1)).isEqualTo(1);
    assertThat(Odds.above(Range.of(0, 2, 2), 3)).isZero();
  }
}
