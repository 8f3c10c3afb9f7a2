package swardcase.wording;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import swardcase.chance.Drawn;

class MoneyUnitTest {

  private static final List<Drawn> OPTIONS =
      List.of(Drawn.of(987, 0, 99_000), Drawn.of(-3456, -9000, 10), Drawn.exactly(0));

  @Test
  void unit_ofAGain_isTwoFiguresOfItsFarthestEnd() {
    assertThat(MoneyUnit.of(Drawn.of(24_312, 8456, 41_234), OPTIONS)).isEqualTo(1000);
    assertThat(MoneyUnit.of(Drawn.of(4000, -120_000, 41_234), OPTIONS)).isEqualTo(10_000);
    assertThat(MoneyUnit.of(Drawn.exactly(5432), OPTIONS)).isEqualTo(100);
  }

  @Test
  void unit_ofANarrowGain_isTheLeadingDigitOfHalfItsWidth() {
    assertThat(MoneyUnit.of(Drawn.of(102_345, 101_900, 102_800), OPTIONS)).isEqualTo(100);
  }

  @Test
  void unit_ofAPlanThatKeepsEverything_isOfTheLargestMeanOfTheOptions() {
    assertThat(MoneyUnit.of(Drawn.exactly(0), OPTIONS)).isEqualTo(100);
    assertThat(MoneyUnit.of(Drawn.exactly(0), List.of())).isEqualTo(1);
    assertThat(MoneyUnit.of(Drawn.of(0, -20, 20), OPTIONS)).isEqualTo(1);
  }

  @Test
  void unit_ofSmallMoney_isNeverBelowOne() {
    assertThat(MoneyUnit.of(Drawn.of(3, 1, 4), OPTIONS)).isEqualTo(1);
    assertThat(MoneyUnit.of(Drawn.exactly(0), List.of(Drawn.exactly(0.2)))).isEqualTo(1);
  }
}
