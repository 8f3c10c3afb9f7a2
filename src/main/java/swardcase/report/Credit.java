package swardcase.report;

import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import swardcase.outcome.Cause;

/**
 * What one cause brings to a gain. There are always all causes, in their order, and they add up to
 * the mean of the gain.
 *
 * @param what which cause
 * @param mean present value, mean over the draws; 0 if it plays no part
 */
public record Credit(Cause what, double mean) {

  /** Nothing from any cause. */
  static final List<Credit> NOTHING = of(new double[Cause.values().length]);

  /** The causes with their means, which stand in the order of {@link Cause}. */
  static List<Credit> of(double[] means) {
    return Arrays.stream(Cause.values())
        .map(cause -> new Credit(cause, means[cause.ordinal()]))
        .toList();
  }

  /**
   * The cause of at least half of all that is gained by any; empty if there is none, or if none
   * plays a part beside it but costs.
   */
  public static Optional<Cause> most(List<Credit> credit) {
    long play =
        credit.stream().filter(each -> each.mean() != 0 && each.what() != Cause.COSTS).count();
    double gained = credit.stream().mapToDouble(each -> Math.max(0, each.mean())).sum();
    return credit.stream()
        .max(Comparator.comparingDouble(Credit::mean))
        .filter(each -> play > 1 && gained > 0 && each.mean() >= gained / 2)
        .map(Credit::what);
  }
}
