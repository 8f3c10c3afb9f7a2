package swardcase.decision;

import java.util.Optional;
import java.util.Set;
import swardcase.chance.Drawn;
import swardcase.chance.Spread;
import swardcase.outcome.Course;
import swardcase.search.PlanLimit;

/**
 * One choice for a paddock, the rest of the plan being done.
 *
 * @param choice action and start
 * @param place of the plan that has it among the alternatives
 * @param passes limits of the farm that it passes beside the rest of the plan; none if it fits
 * @param gain net present value against keeping
 * @param certaintyGain what it adds to the certainty equivalent over keeping
 * @param costPerHa all its costs, not discounted, per ha
 * @param costNow mean present value of its costs, for the paddock
 * @param over place in the paddock's list of the best cheaper choice, keeping if no other is better
 * @param step gain over that
 * @param judgement of that step; of keeping, of no step at all
 * @param held whether it sows a stand that something known to be poor holds back, so that it is not
 *     sure whatever the draws say
 * @param overKeeping of the gain over keeping
 * @param betterForAll whether it beats keeping whatever one thinks of risk: first-degree dominance
 * @param betterForCautious whether it beats keeping for everybody who dislikes risk: second degree,
 *     which the first implies
 */
public record CourseFindings(
    Course choice,
    int place,
    Set<PlanLimit> passes,
    Spread gain,
    double certaintyGain,
    Drawn costPerHa,
    double costNow,
    int over,
    Spread step,
    Judgement judgement,
    boolean held,
    Judgement overKeeping,
    boolean betterForAll,
    boolean betterForCautious) {

  /** Copies the limits. */
  public CourseFindings {
    passes = Set.copyOf(passes);
  }

  /** Whether it is right beyond the error of the draws, and nothing known to be poor holds it. */
  public boolean isSure() {
    return judgement.isSure() && !held;
  }

  /** Why it is not; empty where it is. */
  Optional<NotSure> notSure() {
    NotSure draws = held ? NotSure.BOTH : NotSure.REGRET;
    return isSure()
        ? Optional.empty()
        : Optional.of(judgement.isSure() ? NotSure.POOR_STAND : draws);
  }

  /** Whether it keeps within the limits of the farm beside the rest of the plan. */
  public boolean fits() {
    return passes.isEmpty();
  }
}
