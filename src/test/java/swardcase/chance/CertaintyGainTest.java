package swardcase.chance;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

/** What an exchange adds to a certainty equivalent, and how far off a sample may tell it. */
class CertaintyGainTest {

  private static double[] normals(
      SplittableRandom random, int draws, double mean, double deviation) {
    double[] values = new double[draws];
    Arrays.setAll(values, d -> mean + deviation * random.nextGaussian());
    return values;
  }

  @Test
  void gain_ofAnySums_isTheDifferenceOfTheirEquivalents() {
    SplittableRandom random = new SplittableRandom(3);
    double[] base = normals(random, 500, 1000, 700);
    double[] other = normals(random, 500, 1400, 2000);
    for (double tolerance : new double[] {200, 1000, 5000, 1e9, Double.POSITIVE_INFINITY}) {
      double difference =
          CertaintyEquivalent.ofSample(other, tolerance)
              - CertaintyEquivalent.ofSample(base, tolerance);
      assertThat(new CertaintyGain(base, tolerance).of(other)).isCloseTo(difference, within(1e-4));
    }
  }

  @Test
  void gain_ofTheWorkedExample_isWhatTheDocumentationSays() {
    CertaintyGain gain = new CertaintyGain(new double[] {0, 1000}, 1000);
    // -1000 ln((1 + e^-1) / 2) = 379.885
    assertThat(gain.of(new double[] {300, 300})).isCloseTo(300 - 379.885, within(0.001));
  }

  @Test
  void gain_ofASumAddedEverywhere_isThatSum() {
    double[] base = normals(new SplittableRandom(4), 100, 0, 300);
    double[] other = Arrays.stream(base).map(value -> value + 25).toArray();
    CertaintyGain gain = new CertaintyGain(base, 150);
    assertThat(gain.of(other)).isCloseTo(25, within(1e-9));
    assertThat(gain.gained(other).plainError()).isCloseTo(0, within(1e-9));
  }

  @Test
  void gain_ofTheSameSum_isNothingToTheLastBit() {
    double[] base = normals(new SplittableRandom(8), 333, 1e5, 3e5);
    for (double tolerance : new double[] {4e4, 1e6, Double.POSITIVE_INFINITY}) {
      CertaintyGain gain = new CertaintyGain(base, tolerance);
      assertThat(gain.of(base.clone())).isZero();
      assertThat(gain.gained(base.clone()).plainError()).isZero();
    }
  }

  @Test
  void gain_ofSumsFarBeyondTheTolerance_staysFinite() {
    double[] base = {-1e7, 0, 1e7};
    CertaintyGain gain = new CertaintyGain(base, 1);
    assertThat(gain.of(new double[] {-3e7, 0, 1e7})).isFinite().isNegative();
    assertThat(gain.of(new double[] {3e7, 0, 1e7})).isFinite().isPositive();
  }

  @Test
  void influence_ofAnyExchange_hasMeanZero() {
    SplittableRandom random = new SplittableRandom(5);
    double[] base = normals(random, 200, 0, 500);
    double[] other = normals(random, 200, 100, 900);
    for (double tolerance : new double[] {400, Double.POSITIVE_INFINITY}) {
      double[] influence = new CertaintyGain(base, tolerance).influence(other);
      assertThat(Sample.mean(influence)).isCloseTo(0, within(1e-9));
    }
  }

  @Test
  void plainError_ofManySamples_isTheirSpread() {
    SplittableRandom random = new SplittableRandom(6);
    int samples = 2000;
    double[] gains = new double[samples];
    double errors = 0;
    for (int k = 0; k < samples; k++) {
      double[] base = normals(random, 400, 0, 500);
      double[] other = base.clone();
      for (int d = 0; d < other.length; d++) {
        other[d] += 40 + 0.3 * base[d] + 100 * random.nextGaussian();
      }
      CertaintyGain gain = new CertaintyGain(base, 800);
      gains[k] = gain.of(other);
      errors += gain.gained(other).plainError() / samples;
    }
    // A spread of 2,000 samples is known to 1.6 %; four times that, and the first order of the
    // rest.
    assertThat(errors / Sample.standardDeviation(gains)).isCloseTo(1, within(0.08));
  }

  @Test
  void tolerance_notAboveZero_isRefused() {
    for (double tolerance : new double[] {0, -1, Double.NaN}) {
      assertThatIllegalArgumentException()
          .isThrownBy(() -> new CertaintyGain(new double[] {1}, tolerance));
    }
  }
}
