package swardcase.chance;

/**
 * Numbers of several years that err in two ways: by an error that is the same in every year, and by
 * one of each year alone. Both are normal, with standard deviations τ and σ.
 *
 * <p>With residuals r, W = Σ1/σ² and S = Σr/σ², the logarithm of their joint density is −½(Σr²/σ² −
 * τ²S²/(1 + τ²W) + Σ ln σ² + ln(1 + τ²W)) but for a constant: the inverse and the determinant of a
 * diagonal plus a constant matrix (Sherman and Morrison 1950, Annals of Mathematical Statistics 21,
 * 124–127). However many years there are, the shared error stays in doubt by no less than τ.
 */
public final class SharedError {

  private final double shared;
  private double weights;
  private double residuals;
  private double squares;
  private double logVariances;

  /**
   * No years yet.
   *
   * @param shared τ
   */
  public SharedError(double shared) {
    this.shared = shared;
  }

  /** Forgets all years. */
  public void clear() {
    weights = 0;
    residuals = 0;
    squares = 0;
    logVariances = 0;
  }

  /**
   * Adds a year.
   *
   * @param variance σ² of the year
   */
  public void add(double residual, double variance) {
    weights += 1 / variance;
    residuals += residual / variance;
    squares += residual * residual / variance;
    logVariances += Math.log(variance);
  }

  /** The logarithm of the joint density of the years added, but for a constant. */
  public double logDensity() {
    double ratio = 1 + shared * shared * weights;
    return -0.5
        * (squares
            - shared * shared * residuals * residuals / ratio
            + logVariances
            + Math.log(ratio));
  }
}
