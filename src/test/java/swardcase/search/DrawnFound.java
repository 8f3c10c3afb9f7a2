package swardcase.search;

import java.util.List;
import java.util.Optional;
import swardcase.outcome.Course;
import swardcase.outcome.Plan;

/**
 * What a search over the draws found. Sums are in money, values now over the years counted, less
 * the effort of each change; errors are standard errors, from blocks of draws.
 *
 * @param plan the plan
 * @param others where the other starts of the search ended, those that ended in another plan
 * @param stillToFind what the search could still find
 * @param nearEqual changes of one paddock after which the plan is as good within that, the one that
 *     loses least first
 * @param careful the plan of somebody who bears half the risk, if it is another one: its worth and
 *     what it is ahead by are at half the tolerance
 * @param bestStarts for each paddock, every action that can be done there in its best year
 */
public record DrawnFound(
    Worth plan,
    List<Worth> others,
    StillToFind stillToFind,
    List<NearEqual> nearEqual,
    Optional<Worth> careful,
    List<List<BestStart>> bestStarts) {

  /** Copies the lists. */
  public DrawnFound {
    others = List.copyOf(others);
    nearEqual = List.copyOf(nearEqual);
    bestStarts = bestStarts.stream().map(List::copyOf).toList();
  }

  /**
   * What a plan is worth against keeping everything, by draws that the search never saw.
   *
   * @param mean mean gain
   * @param certaintyEquivalent the certain sum that is worth as much as the gain
   * @param behind what the plan found has more in certainty equivalent, on the same draws
   */
  public record Worth(
      Plan plan,
      double mean,
      double meanError,
      double certaintyEquivalent,
      double certaintyEquivalentError,
      double behind,
      double behindError) {}

  /**
   * What the best plans of small samples gain over the plan, each on its own sample. Since such a
   * plan fits the luck of its sample, this is more than is there to be found, as a rule; it is no
   * bound.
   *
   * @param mean mean over the samples, certainty equivalent
   * @param error its standard error
   * @param samples how many there were
   * @param draws draws in each
   */
  public record StillToFind(double mean, double error, int samples, int draws) {}

  /**
   * A change of one paddock, within the limits of the farm, that costs next to nothing.
   *
   * @param course what is done there in place of what the plan does
   * @param behind what the plan has more in certainty equivalent; negative if it has less
   */
  public record NearEqual(int paddock, Course course, double behind, double behindError) {}

  /**
   * An action in the year in which it is worth most beside the rest of the plan, or in the coming
   * year if it is worth less than keeping in every year.
   *
   * @param gain what it adds to the certainty equivalent over keeping the paddock, by the 256 draws
   *     that chose the year: for choosing, not for print
   * @param fits whether it keeps within the limits of the farm beside the rest of the plan
   */
  public record BestStart(Course course, double gain, boolean fits) {}
}
