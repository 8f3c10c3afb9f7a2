package swardcase.reproduction;

/**
 * Extra deaths of lambs and ewes at birth in flocks damaged by oestrogenic clover. A scenario, not
 * a finding: used only where the user asks for it, since no trial gives these losses against a
 * dose.
 *
 * <p>Both grow with the share of ewes barren for good: loss = (loss at the worst outbreak) x s /
 * 0.7. In Western Australian outbreaks 70 % of the ewes were barren; in one flock lamb marking was
 * 29 % down with no ewe barren, and 140 of 900 ewes died (cases of the 1940s retold by Hindmarsh
 * 1947). The proportion is inferred. With 0.05 at the worst, 35 % barren costs 2.5 % of the lambs.
 */
public final class BirthLosses {

  private static final double OUTBREAK_STERILE_SHARE = 0.7;

  private BirthLosses() {}

  /**
   * Extra share of lambs or ewes lost, at most 1; {@code lossAtOutbreak} is the loss at s = 0.7.
   */
  public static double extraShare(double sterileShare, double lossAtOutbreak) {
    return Math.min(1, lossAtOutbreak * sterileShare / OUTBREAK_STERILE_SHARE);
  }
}
