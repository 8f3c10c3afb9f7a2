package swardcase.chance;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.SplittableRandom;
import org.apache.commons.math3.stat.regression.SimpleRegression;
import org.junit.jupiter.api.Test;

class StraightLineTest {

  private static final double[] X = {1, 2, 3, 4};
  private static final double[] Y = {1, 3, 2, 4};

  @Test
  void line_ofFourDraws_matchesArithmetic() {
    StraightLine line = StraightLine.of(X, Y);
    assertThat(line.slope()).isCloseTo(0.8, within(1e-12));
    assertThat(line.at(4)).isCloseTo(3.7, within(1e-12));
    assertThat(line.varianceShare()).isCloseTo(0.64, within(1e-12));
    assertThat(line.crossesZero(-1, 4).getAsDouble()).isCloseTo(-0.625, within(1e-12));
    assertThat(line.crossesZero(-0.6, 4)).isEmpty();
    assertThat(line.crossesZero(-4, -0.7)).isEmpty();
    assertThat(line.differsFromNothing(1)).isFalse();
  }

  /** Independent: the regression of commons-math3, which gives the slope's standard error. */
  @Test
  void line_ofRandomDraws_agreesWithAnotherRegression() {
    SplittableRandom random = new SplittableRandom(11);
    int different = 0;
    for (int i = 0; i < 300; i++) {
      int draws = random.nextInt(200, 400);
      double[] x = new double[draws];
      double[] y = new double[draws];
      SimpleRegression other = new SimpleRegression();
      double slope = random.nextDouble(-0.4, 0.4);
      for (int d = 0; d < draws; d++) {
        x[d] = 50 + 7 * random.nextGaussian();
        y[d] = 300 + slope * x[d] + 7 * random.nextGaussian();
        other.addData(x[d], y[d]);
      }
      StraightLine line = StraightLine.of(x, y);
      assertThat(line.slope()).isCloseTo(other.getSlope(), within(1e-9));
      assertThat(line.at(60)).isCloseTo(other.predict(60), within(1e-8));
      assertThat(line.varianceShare()).isCloseTo(other.getRSquare(), within(1e-9));
      int tried = random.nextInt(1, 100);
      double t = Math.abs(other.getSlope() / other.getSlopeStdErr());
      assertThat(line.differsFromNothing(tried)).isEqualTo(t > ManyTried.quantile(2 * tried));
      different += line.differsFromNothing(tried) ? 1 : 0;
      line.crossesZero(-1e9, 1e9)
          .ifPresent(at -> assertThat(line.at(at)).isCloseTo(0, within(1e-6)));
    }
    assertThat(different).isBetween(50, 250);
  }

  @Test
  void line_ofAnInputThatNeverVaries_isLevel() {
    double[] x = new double[10_000];
    double[] y = new double[x.length];
    Arrays.fill(x, 0.1);
    Arrays.setAll(y, d -> Math.sin(d));
    assertThat(Sample.mean(x)).isNotEqualTo(0.1);
    StraightLine line = StraightLine.of(x, y);
    assertThat(line.slope()).isZero();
    assertThat(line.varianceShare()).isZero();
    assertThat(line.at(7)).isEqualTo(Sample.mean(y));
    assertThat(line.crossesZero(-1e9, 1e9)).isEmpty();
    assertThat(line.differsFromNothing(1)).isFalse();
  }

  @Test
  void line_ofAResultThatNeverVaries_isLevel() {
    StraightLine line = StraightLine.of(X, new double[4]);
    assertThat(line.slope()).isZero();
    assertThat(line.crossesZero(-10, 10)).isEmpty();
    assertThat(line.differsFromNothing(1)).isFalse();
  }

  @Test
  void line_throughEveryDraw_differsFromNothingHoweverManyWereTried() {
    StraightLine line = StraightLine.of(X, new double[] {-2, -4, -6, -8});
    assertThat(line.slope()).isCloseTo(-2, within(1e-12));
    assertThat(line.varianceShare()).isEqualTo(1);
    assertThat(line.differsFromNothing(100_000)).isTrue();
  }

  @Test
  void line_badArguments_areRefused() {
    assertThatThrownBy(() -> StraightLine.of(X, new double[3]))
        .hasMessage("samples must be equally long");
    assertThatThrownBy(() -> StraightLine.of(new double[2], new double[2]))
        .hasMessage("a straight line needs at least three draws, but had 2");
    assertThatThrownBy(() -> StraightLine.of(X, new double[] {1, 2, Double.NaN, 4}))
        .hasMessageStartingWith("means and slope must be numbers");
    assertThatThrownBy(() -> StraightLine.of(X, Y).crossesZero(2, 1))
        .hasMessage("limits of a crossing must be in rising order");
    assertThatThrownBy(() -> StraightLine.of(X, Y).differsFromNothing(0))
        .hasMessage("number tried must be one or more, but was 0");
  }
}
