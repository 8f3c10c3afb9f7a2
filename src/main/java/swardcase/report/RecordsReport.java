package swardcase.report;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import swardcase.chance.Drawn;
import swardcase.decision.RecordsStudy;
import swardcase.farm.SeasonType;
import swardcase.report.HowFound.Choice;
import swardcase.report.HowSureReport.StoryLine.Story;

/**
 * What the farm's own records say.
 *
 * @param effectiveDraws draws that count alike and would tell as much as the weighed ones
 * @param drawsMade draws that were made and weighed
 * @param effectiveShare effective draws per draw made: the lower, the less the draws fit the
 *     records
 * @param growthStopped whether draws stopped at their limit before enough of them fitted
 * @param unexplainedMobs mobs whose ewes in lamb no draw explains: something else is at work
 * @param stories chance of each story of the ewes' response, before and after
 * @param moved the numbers that the records move, mob by mob, then the farm's
 * @param gainOf whose gain the parts are told of
 * @param gainPartsRest what of the change of that gain comes from none of these alone
 * @param gainOfPlan gain of the plan over keeping everything
 * @param withoutRecords the plan that would be found without records
 * @param years what was recorded and what was to be expected, a row a mob and year
 */
public record RecordsReport(
    double effectiveDraws,
    int drawsMade,
    double effectiveShare,
    boolean growthStopped,
    List<String> unexplainedMobs,
    List<StoryChance> stories,
    List<MovedLine> moved,
    GainOf gainOf,
    double gainPartsRest,
    GainMoved gainOfPlan,
    WithoutRecords withoutRecords,
    List<RecordedYear> years) {

  /** Whose gain the parts are told of. */
  public enum GainOf {
    /** Of the plan. */
    PLAN,
    /** Of the plan that would be found without records. */
    PLAN_WITHOUT_RECORDS
  }

  /**
   * Chance of a story.
   *
   * @param story which
   * @param before the records, 0 to 1
   * @param after 0 to 1
   */
  public record StoryChance(Story story, double before, double after) {}

  /**
   * A number that the records move.
   *
   * @param what which
   * @param mob of which mob; empty for the whole farm
   * @param before the records
   * @param after them
   * @param gainPart what of the change of the gain comes from it
   */
  public record MovedLine(
      RecordsStudy.Number what, Optional<String> mob, Drawn before, Drawn after, double gainPart) {}

  /**
   * A gain in the draws before the records weighed them, and after.
   *
   * @param before the records
   * @param after them
   */
  public record GainMoved(Drawn before, Drawn after) {}

  /**
   * The plan that the same search finds without records.
   *
   * @param isThePlan whether it is the same plan
   * @param keepsAll whether it keeps everything
   * @param changes paddocks with which it does something else
   * @param rulesMore rules for the whole farm that it makes and the plan does not
   * @param rulesFewer those that the plan makes and it does not
   * @param gain of it over keeping everything
   */
  public record WithoutRecords(
      boolean isThePlan,
      boolean keepsAll,
      List<Choice> changes,
      List<PlanResult.Rule> rulesMore,
      List<PlanResult.Rule> rulesFewer,
      GainMoved gain) {}

  /**
   * A recorded year of a mob.
   *
   * @param year calendar year
   * @param mob its name
   * @param ewesJoined ewes joined
   * @param inLambPercent recorded ewes in lamb per 100 joined; empty if they were not counted
   * @param markedPercent recorded lambs marked per 100 joined, where ewes in lamb were not counted
   * @param expectedBefore the same as could be expected without records, chance of the year with it
   * @param expectedAfter the same by the weighed draws
   * @param supplementTonnes supplement fed on the farm; empty if not known
   * @param season how the season was; empty if not known
   */
  public record RecordedYear(
      int year,
      String mob,
      int ewesJoined,
      OptionalDouble inLambPercent,
      OptionalDouble markedPercent,
      Drawn expectedBefore,
      Drawn expectedAfter,
      OptionalDouble supplementTonnes,
      Optional<SeasonType> season) {}
}
