package swardcase.chance;

import java.util.OptionalDouble;
import swardcase.check.Check;

/**
 * The least-squares straight line of a result over one input, both known in each draw.
 *
 * <p>b = Σ(x − x̄)(y − ȳ) / Σ(x − x̄)², and the line at v is ȳ + b (v − x̄). Inputs 1, 2, 3, 4 with
 * results 1, 3, 2, 4 have b = 4/5 and 3.7 at 4; the line explains 0.64 of the variance and crosses
 * zero at −0.625. It tells how a result moves with an input on average over all else that is drawn,
 * and no more of a bent relation than a straight line can.
 *
 * @param meanX x̄, in the unit of the input
 * @param meanY ȳ, in the unit of the result
 * @param slope b, results per input; 0 for an input that never varies
 * @param varianceShare of the result's variance, 0 to 1
 * @param draws how many
 */
public record StraightLine(
    double meanX, double meanY, double slope, double varianceShare, int draws) {

  /** Checks that there are enough draws to tell a slope from nothing. */
  public StraightLine {
    Check.that(
        Double.isFinite(meanX) && Double.isFinite(meanY) && Double.isFinite(slope),
        "means and slope must be numbers, but were %s, %s, %s",
        meanX,
        meanY,
        slope);
    Check.inRange(varianceShare, 0, 1, "share of variance");
    Check.that(draws >= 3, "a straight line needs at least three draws, but had %d", draws);
  }

  /** The line of results {@code y} over inputs {@code x}, draw by draw. */
  public static StraightLine of(double[] x, double[] y) {
    Check.that(x.length == y.length, "samples must be equally long");
    double meanX = Sample.mean(x);
    double meanY = Sample.mean(y);
    double xx = 0;
    double yy = 0;
    double xy = 0;
    boolean varies = false;
    for (int i = 0; i < x.length; i++) {
      double dx = x[i] - meanX;
      double dy = y[i] - meanY;
      varies |= x[i] != x[0];
      xx += dx * dx;
      yy += dy * dy;
      xy += dx * dy;
    }
    // The mean of equal values may miss them by a rounding, so xx alone does not show them equal.
    double share = varies && yy > 0 ? Math.min(1, xy * xy / (xx * yy)) : 0;
    return new StraightLine(meanX, meanY, varies ? xy / xx : 0, share, x.length);
  }

  /** The result that the line gives at an input of {@code value}. */
  public double at(double value) {
    return meanY + slope * (value - meanX);
  }

  /** The input at which the line crosses zero; empty without slope or outside the limits. */
  public OptionalDouble crossesZero(double low, double high) {
    Check.that(low <= high, "limits of a crossing must be in rising order");
    double crossing = meanX - meanY / slope;
    return slope != 0 && crossing >= low && crossing <= high
        ? OptionalDouble.of(crossing)
        : OptionalDouble.empty();
  }

  /**
   * Whether the slope differs from nothing, given that {@code tried} inputs were tried: |t| is
   * above the 1 − 0.05/2m normal quantile (two-sided, since a slope may go either way), where t² =
   * r²(n − 2)/(1 − r²), r² is the share of variance and n the draws. In the example t = 1.89 is not
   * above 1.96.
   *
   * @param tried m, one or more
   */
  public boolean differsFromNothing(int tried) {
    double bar = ManyTried.quantile(2 * tried);
    return varianceShare * (draws - 2) > bar * bar * (1 - varianceShare);
  }
}
