package swardcase.decision;

import java.util.List;
import swardcase.draws.Spread;
import swardcase.outcome.Course;

/**
 * One choice for a paddock against keeping it, the rest of the plan being done.
 *
 * @param choice action and start
 * @param gain net present value against keeping
 * @param annuity the same as an equal yearly sum
 * @param chanceOfUnbearableLoss chance of losing more than the user would bear, 0 to 1
 * @param judgement chance and regret against keeping
 * @param expectedRegret what is missed on average against the best choice of each draw
 * @param betterForAll choices (places in the paddock's list) that this one beats whatever one
 *     thinks of risk: first-degree dominance
 * @param betterForCautious choices it beats for everybody who dislikes risk: second degree, those
 *     of the first degree among them
 */
public record CourseFindings(
    Course choice,
    Spread gain,
    Spread annuity,
    double chanceOfUnbearableLoss,
    Judgement judgement,
    double expectedRegret,
    List<Integer> betterForAll,
    List<Integer> betterForCautious) {

  /** Copies the lists. */
  public CourseFindings {
    betterForAll = List.copyOf(betterForAll);
    betterForCautious = List.copyOf(betterForCautious);
  }
}
