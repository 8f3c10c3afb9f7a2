package swardcase.chance;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

class BreakEvenTest {

  /**
   * Over-drilling clover, New Zealand: 189, 320 and 1,000 kg dry matter more a hectare gain -43.7,
   * 22.8 and 369 (table 6.1 of a thesis held at 1library.co, y4w87xrq). A straight line through the
   * outer two crosses zero at 275 kg.
   */
  @Test
  void find_overDrillingClover_crossesAt275Kg() {
    double perKg = (369 + 43.8) / (1000 - 189);
    assertThat(BreakEven.find(kg -> perKg * (kg - 189) - 43.8, 0, 1000, 320).orElseThrow())
        .isCloseTo(275.05, within(0.05));
  }

  @Test
  void find_severalCrossings_takesTheNearest() {
    assertThat(BreakEven.find(x -> (x - 1) * (x - 5) * (x - 9), 0, 10, 6).orElseThrow())
        .isCloseTo(5, within(1e-4));
    assertThat(BreakEven.find(x -> (x - 1) * (x - 5) * (x - 9), 0, 10, 8).orElseThrow())
        .isCloseTo(9, within(1e-4));
  }

  @Test
  void find_noCrossing_isEmpty() {
    assertThat(BreakEven.find(x -> x * x + 1, -5, 5, 0)).isEmpty();
    assertThat(BreakEven.find(x -> 0, 0, 1, 0)).isEmpty();
  }

  @Test
  void find_crossingOnAStep_isFound() {
    assertThat(BreakEven.find(x -> x - 6, 0, 12, 3).orElseThrow()).isCloseTo(6, within(1e-4));
    assertThat(BreakEven.find(x -> x - 12, 0, 12, 3).orElseThrow()).isCloseTo(12, within(1e-4));
  }

  @Test
  void find_limitsTheWrongWayRound_areRefused() {
    assertThatThrownBy(() -> BreakEven.find(x -> x, 1, 0, 0))
        .hasMessage("limits of a break-even must be in rising order");
  }
}
