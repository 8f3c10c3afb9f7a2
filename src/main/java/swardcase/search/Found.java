package swardcase.search;

import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import swardcase.outcome.Course;
import swardcase.outcome.Plan;

/**
 * What a search over the draws found. Sums are in money, values now over the years counted; errors
 * are standard errors, from blocks of draws.
 *
 * @param plan the plan
 * @param others where the other starts of the search ended, those that ended in another plan
 * @param stillToFind what the search could still find
 * @param nearEqual changes of one paddock after which the plan is as good within that, the one that
 *     loses least first
 * @param careful the plan of somebody who bears half the risk, if it is another one: its worth and
 *     what it is ahead by are at half the tolerance
 * @param bestStarts for each paddock, every action that can be done there in its best year
 * @param worthOfLifting what the certainty equivalent would rise by, at least, without a limit of
 *     the farm, for each limit that stops an action which would pay; judged as the plan is
 */
public record Found(
    Worth plan,
    List<Worth> others,
    StillToFind stillToFind,
    List<NearEqual> nearEqual,
    Optional<Worth> careful,
    List<List<BestStart>> bestStarts,
    Map<PlanLimit, Double> worthOfLifting) {

  /** Copies what it is given. */
  public Found {
    others = List.copyOf(others);
    nearEqual = List.copyOf(nearEqual);
    bestStarts = bestStarts.stream().map(List::copyOf).toList();
    worthOfLifting = Collections.unmodifiableMap(new TreeMap<>(worthOfLifting));
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
   * @param gain what it adds to the certainty equivalent over keeping the paddock, by the 64 draws
   *     that chose the year: for choosing, not for print
   * @param passes limits of the farm that it would pass beside the rest of the plan; empty if it
   *     fits
   */
  public record BestStart(Course course, double gain, Set<PlanLimit> passes) {

    /** Copies the set, in the order of the limits. */
    public BestStart {
      passes = Collections.unmodifiableSet(new TreeSet<>(passes));
    }
  }
}
