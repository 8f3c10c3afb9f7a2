package swardcase.chance;

import org.apache.commons.math3.special.Erf;

/**
 * Ties two uniform numbers to each other by a Gaussian copula: with z their normal scores, the
 * second becomes Φ(ρ z₁ + √(1 − ρ²) z₂). Each stays uniform; their normal scores have correlation
 * ρ, and their rank correlation is (6/π) asin(ρ/2) (Kruskal 1958, "Ordinal measures of
 * association", Journal of the American Statistical Association 53, 814-861, cited from memory):
 * 0.287 for ρ = 0.3.
 */
public final class PairedUniforms {

  private static final double SQRT2 = Math.sqrt(2);
  private static final double EDGE = 1e-12;

  private PairedUniforms() {}

  /** The second uniform number, tied to the first. Allocates nothing. */
  public static double second(double first, double second, double correlation) {
    if (correlation == 0) {
      return second;
    }
    double z =
        correlation * score(first) + Math.sqrt(1 - correlation * correlation) * score(second);
    return Erf.erfc(-z / SQRT2) / 2;
  }

  private static double score(double uniform) {
    double inside = Math.max(EDGE, Math.min(1 - EDGE, uniform));
    return SQRT2 * Erf.erfInv(2 * inside - 1);
  }
}
