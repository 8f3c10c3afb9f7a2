package swardcase.wording;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Locale;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import swardcase.chance.Drawn;
import swardcase.chance.Range;

class WordsTest {

  @Test
  void range_ofMoney_hasTwoSignificantFiguresOfItsLargestEnd() {
    assertThat(Words.money("A$", Drawn.of(12345, 4321, 21234)))
        .isEqualTo("A$ 12,000 (4,000 to 21,000)");
    assertThat(Words.money("A$", Drawn.of(-2345, -4321, 987)))
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
    assertThat(Words.range(Range.of(73.9996, 74.0002, 74.0004))).isEqualTo("74");
    assertThat(Words.range(Range.of(61.795, 61.803, 61.809))).isEqualTo("61.8");
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
          Double.parseDouble(Words.mean(drawn(range)).replace(",", "").replace('\u2212', '-'));
      assertThat(printed)
          .as("%s", range)
          .isCloseTo(
              range.likely(),
              org.assertj.core.data.Offset.offset(Words.step(drawn(range)) / 2 + 1e-9));
    }
  }

  private static Drawn drawn(Range range) {
    return Drawn.of(range.likely(), range.low(), range.high());
  }

  @Test
  void drawn_ofMoney_readsAsItsMeanWithItsEnds() {
    Drawn gain = Drawn.of(24_312, 8456, 41_234);
    assertThat(Words.money("A$", gain)).isEqualTo("A$ 24,000 (8,000 to 41,000)");
    assertThat(Words.ends(gain)).isEqualTo("8,000 to 41,000");
    assertThat(Words.step(gain)).isEqualTo(1000);
    assertThat(Words.range(Drawn.of(1.13, 0.8, 1.449), "t")).isEqualTo("1.1 (0.8 to 1.4) t");
  }

  @Test
  void drawn_thatIsTheSameInEveryDraw_readsAsOneNumber() {
    Drawn exact = Drawn.exactly(1234.5);
    assertThat(Words.money("A$", exact)).isEqualTo("A$ 1,235");
    assertThat(Words.ends(exact)).isEqualTo("1,235");
    assertThat(Words.percent(Range.exactly(0.5))).isEqualTo("50 %");
    assertThat(Words.count(Drawn.exactly(0))).isEqualTo("0");
  }

  @Test
  void drawn_whoseEndsPrintAlike_readsAsOneNumber() {
    assertThat(Words.range(Drawn.of(74.0002, 73.9996, 74.0004))).isEqualTo("74");
    assertThat(Words.ends(Drawn.of(74.0002, 73.9996, 74.0004))).isEqualTo("74");
    assertThat(Words.percent(Range.of(0.739996, 0.740002, 0.740004))).isEqualTo("74 %");
  }

  @Test
  void drawn_whoseMeanLiesOutsideItsEnds_hidesNeither() {
    assertThat(Words.range(Drawn.of(700, 10, 520))).isEqualTo("700 (10 to 520)");
    // Nothing in 96 draws of 100, much in the others.
    Drawn rare = Drawn.of(12_345, 0, 0);
    assertThat(Words.range(rare)).isEqualTo("12,000 (0)");
    assertThat(Words.mean(rare)).isEqualTo("12,000");
    assertThat(Words.ends(rare)).isEqualTo("0");
    assertThat(Words.range(Drawn.of(12_345, 0, 10))).isEqualTo("12,350 (0 to 10)");
  }

  @Test
  void drawn_numberOfAnimals_isNotToldInDigitsBelowOne() {
    assertThat(Words.count(Drawn.of(0.3, 0, 0.9))).isEqualTo("under 1");
    assertThat(Words.count(Drawn.of(1.4, 0, 0.9))).isEqualTo("1.4 (0.0 to 0.9)");
  }

  @Test
  void drawn_byAGivenStep_isRoundedToItInAllThreeNumbers() {
    Drawn gain = Drawn.of(24_312, 8456, 41_234);
    assertThat(Words.money("A$", gain, 100)).isEqualTo("A$ 24,300 (8,500 to 41,200)");
    assertThat(Words.range(gain, 10_000)).isEqualTo("20,000 (10,000 to 40,000)");
    assertThat(Words.range(gain, 100_000)).isEqualTo("0");
    assertThat(Words.ends(gain, 100_000)).isEqualTo("0");
    assertThat(Words.money("A$", Drawn.exactly(1234.5), 100)).isEqualTo("A$ 1,200");
    assertThat(Words.range(Drawn.of(24_312, 80, 90), 1000)).isEqualTo("24,000 (0)");
  }

  /** Law: a mean between its ends reads as a likely value between them does. */
  @Test
  void drawn_withItsMeanInside_readsAsTheRangeOfTheSameNumbers() {
    SplittableRandom random = new SplittableRandom(8);
    for (int i = 0; i < 2000; i++) {
      double low = random.nextDouble(-1, 1) * Math.pow(10, random.nextInt(-2, 6));
      double width = random.nextDouble() * Math.pow(10, random.nextInt(-4, 6));
      double middle = low + width * random.nextDouble();
      Range range = Range.of(low, middle, low + width);
      Drawn drawn = Drawn.of(middle, low, low + width);
      assertThat(Words.range(drawn)).isEqualTo(Words.range(range));
      assertThat(Words.ends(drawn)).isEqualTo(Words.ends(range));
    }
  }
}
