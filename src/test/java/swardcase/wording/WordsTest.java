package swardcase.wording;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Locale;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import swardcase.chance.Range;

class WordsTest {

  @Test
  void range_ofMoney_hasTwoSignificantFiguresOfItsLargestEnd() {
    assertThat(Words.money("A$", Range.of(4321, 12345, 21234)))
        .isEqualTo("A$ 12,000 (4,000 to 21,000)");
    assertThat(Words.money("A$", Range.of(-4321, -2345, 987)))
        .isEqualTo("A$ \u22122,300 (\u22124,300 to 1,000)");
  }

  @Test
  void range_ofSmallNumbers_keepsDecimals() {
    assertThat(Words.range(Range.of(0.0312, 0.117, 0.3456))).isEqualTo("0.12 (0.03 to 0.35)");
    assertThat(Words.range(Range.of(0.8, 1.13, 1.449), "t")).isEqualTo("1.1 (0.8 to 1.4) t");
  }

  @Test
  void range_thatIsNarrow_doesNotCollapse() {
    assertThat(Words.range(Range.of(101_900, 102_345, 102_800)))
        .isEqualTo("102,300 (101,900 to 102,800)");
    assertThat(Words.ends(Range.of(88.2, 89, 89.6))).isEqualTo("88.2 to 89.6");
  }

  @Test
  void range_tooNarrowForFourFigures_readsAsOneValue() {
    assertThat(Words.range(Range.of(73.9996, 74.0002, 74.0004))).isEqualTo("74.00");
    assertThat(Words.range(Range.of(61.795, 61.803, 61.809))).isEqualTo("61.80");
    assertThat(Words.range(Range.of(88.2, 89, 89.6))).isEqualTo("89.0 (88.2 to 89.6)");
  }

  @Test
  void range_aroundZero_hasNoMinusZero() {
    assertThat(Words.range(Range.of(-12, -0.2, 30))).isEqualTo("0 (\u221212 to 30)");
    assertThat(Words.range(Range.exactly(-0.0))).isEqualTo("0");
  }

  @Test
  void exact_ofUsersNumber_isPrintedAsItIs() {
    assertThat(Words.exact(1234.5)).isEqualTo("1,234.5");
    assertThat(Words.exact(0.35)).isEqualTo("0.35");
    assertThat(Words.exact(0.1 + 0.2)).isEqualTo("0.3");
    assertThat(Words.exact(1_250_000)).isEqualTo("1,250,000");
    assertThat(Words.exact(-7)).isEqualTo("\u22127");
  }

  @Test
  void percent_ofFraction_isTimesHundred() {
    assertThat(Words.percent(Range.of(0.2, 0.351, 0.5))).isEqualTo("35 % (20 to 50 %)");
    assertThat(Words.percent(0.354)).isEqualTo("35 %");
  }

  @Test
  void rounded_byStep_endsOnTheStep() {
    assertThat(Words.rounded(1250, 100)).isEqualTo("1,300");
    assertThat(Words.rounded(-0.04, 0.1)).isEqualTo("0.0");
    assertThat(Words.about(0.0000456)).isEqualTo("0.000046");
    assertThat(Words.about(98_765)).isEqualTo("99,000");
  }

  @Test
  void words_underAnotherDefaultLocale_areTheSame() {
    Locale before = Locale.getDefault();
    try {
      Locale.setDefault(Locale.forLanguageTag("ar-EG"));
      assertThat(Words.range(Range.of(4321, 12345, 21234))).isEqualTo("12,000 (4,000 to 21,000)");
    } finally {
      Locale.setDefault(before);
    }
  }

  @Test
  void rounding_ofAnyRange_movesNoEndByMoreThanHalfAStep() {
    SplittableRandom random = new SplittableRandom(7);
    for (int i = 0; i < 2000; i++) {
      double low = random.nextDouble(-1e5, 1e5);
      Range range = Range.of(low, low + random.nextDouble(1), low + 1 + random.nextDouble(1e4));
      double printed =
          Double.parseDouble(Words.likely(range).replace(",", "").replace('\u2212', '-'));
      assertThat(printed)
          .as("%s", range)
          .isCloseTo(
              range.likely(), org.assertj.core.data.Offset.offset(Words.step(range) / 2 + 1e-9));
    }
  }
}
