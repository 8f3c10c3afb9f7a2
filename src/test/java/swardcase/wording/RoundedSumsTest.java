package swardcase.wording;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

class RoundedSumsTest {

  private static final int CASES = 20_000;

  private final SplittableRandom random = new SplittableRandom(5);

  @Test
  void parts_thatRoundTooLow_theLargestRemainderGoesUpFirstOfEqualsFirst() {
    assertThat(RoundedSums.parts(4000, new double[] {1400, 1400, 1300}, 1000))
        .containsExactly(2000, 1000, 1000);
    assertThat(RoundedSums.parts(4000, new double[] {1300, 1300, 1400}, 1000))
        .containsExactly(1000, 1000, 2000);
  }

  @Test
  void parts_thatRoundTooHigh_theOneRoundedUpMostGoesDown() {
    assertThat(RoundedSums.parts(5000, new double[] {1700, 1600, 1600}, 1000))
        .containsExactly(2000, 1000, 2000);
  }

  @Test
  void parts_ofEitherSign_addUp() {
    assertThat(RoundedSums.parts(1000, new double[] {-2400, 3400, 0}, 1000))
        .containsExactly(-2000, 3000, 0);
    assertThat(RoundedSums.parts(-1000, new double[] {-400, -300, 0, -300}, 1000))
        .containsExactly(-1000, 0, 0, 0);
  }

  @Test
  void parts_ofNothing_moveOnlyIfThereIsNoOtherWay() {
    assertThat(RoundedSums.parts(3, new double[] {0, 2}, 1)).containsExactly(0, 3);
    assertThat(RoundedSums.parts(1, new double[] {0, 0}, 1)).containsExactly(1, 0);
    assertThat(RoundedSums.parts(0, new double[0], 1)).isEmpty();
  }

  @Test
  void total_halves_areRoundedAsWordsRoundsThem() {
    for (double value : new double[] {-2500, -1500, -500, 500, 1500, 2500, 1499, -0.0}) {
      assertThat(Words.whole(RoundedSums.total(value, 1000))).isEqualTo(Words.rounded(value, 1000));
    }
  }

  /** Laws of a total rounded from the sum. */
  @Test
  void parts_ofAnyTotal_addUpExactlyAndStayWithinAUnit() {
    for (int i = 0; i < CASES; i++) {
      double unit = Math.pow(10, random.nextInt(0, 5));
      double[] parts = randomParts(unit);
      double total = RoundedSums.total(Arrays.stream(parts).sum(), unit);
      double[] rounded = RoundedSums.parts(total, parts, unit);
      check(total, parts, rounded, unit);
    }
  }

  /** Laws from the top down: a part that moved is the total of parts of its own. */
  @Test
  void parts_ofAPart_addUpExactlyAndStayWithinAUnit() {
    for (int i = 0; i < CASES; i++) {
      double unit = Math.pow(10, random.nextInt(0, 5));
      double[][] below = new double[random.nextInt(1, 6)][];
      Arrays.setAll(below, part -> randomParts(unit));
      double[] parts =
          Arrays.stream(below).mapToDouble(each -> Arrays.stream(each).sum()).toArray();
      double total = RoundedSums.total(Arrays.stream(parts).sum(), unit);
      double[] rounded = RoundedSums.parts(total, parts, unit);
      check(total, parts, rounded, unit);
      for (int part = 0; part < below.length; part++) {
        check(
            rounded[part], below[part], RoundedSums.parts(rounded[part], below[part], unit), unit);
      }
    }
  }

  @Test
  void parts_inAnotherOrder_areRoundedAlike() {
    for (int i = 0; i < CASES; i++) {
      double[] parts = randomParts(100);
      double total = RoundedSums.total(Arrays.stream(parts).sum(), 100);
      double[] backwards = backwards(parts);
      // A sum depends on the order by its last bits only; the drawn parts have no ties.
      assertThat(backwards(RoundedSums.parts(total, backwards, 100)))
          .containsExactly(RoundedSums.parts(total, parts, 100));
    }
  }

  @Test
  void parts_badArguments_areRefused() {
    assertThatThrownBy(() -> RoundedSums.parts(1500, new double[] {1500}, 1000))
        .hasMessage("a rounded total must be a multiple of 1000.0, but was 1500.0");
    assertThatThrownBy(() -> RoundedSums.parts(3000, new double[] {900, 900}, 1000))
        .hasMessage(
            "a rounded total must be at most 1000.0 from the sum of its parts, but they were 3000.0"
                + " and 1800.0");
    assertThatThrownBy(() -> RoundedSums.parts(1, new double[0], 1))
        .hasMessageStartingWith("a rounded total must be at most 1.0 from the sum");
    assertThatThrownBy(() -> RoundedSums.parts(1, new double[] {1}, 0))
        .hasMessage("unit must be more than zero, but was 0");
    assertThatThrownBy(() -> RoundedSums.parts(1, new double[] {Double.NaN}, 1))
        .hasMessage("a number to round must be finite, but was NaN");
  }

  private static void check(double total, double[] parts, double[] rounded, double unit) {
    assertThat(Arrays.stream(rounded).sum()).isEqualTo(total);
    for (int p = 0; p < parts.length; p++) {
      assertThat(Math.abs(rounded[p] - parts[p])).isLessThan(unit);
      assertThat(rounded[p] % unit).isCloseTo(0, within(0.0));
      assertThat(rounded[p] * parts[p] + 0d).as("keeps its sign").isNotNegative();
      if (parts[p] == 0) {
        assertThat(rounded[p]).isZero();
      }
    }
  }

  /** Up to a dozen parts of either sign, some of them nothing. */
  private double[] randomParts(double unit) {
    double[] parts = new double[random.nextInt(1, 13)];
    Arrays.setAll(
        parts,
        p -> random.nextInt(5) == 0 ? 0 : unit * random.nextDouble(-1, 1) * random.nextInt(1, 80));
    return parts;
  }

  private static double[] backwards(double[] values) {
    double[] backwards = new double[values.length];
    Arrays.setAll(backwards, i -> values[values.length - 1 - i]);
    return backwards;
  }
}
