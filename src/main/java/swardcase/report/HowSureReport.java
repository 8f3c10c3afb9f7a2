package swardcase.report;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import swardcase.chance.Certainty;
import swardcase.chance.Drawn;

/**
 * How sure the answer is, and what should be found out before money is spent.
 *
 * @param seed where the draws start
 * @param draws how many there were
 * @param npv gain of the plan: net present value against keeping everything
 * @param npvMean its mean once more
 * @param npvStandardError of that mean
 * @param npvQuantiles 21 values below which 0, 5, 10 and so on to 100 of 100 draws lie
 * @param annuity the plan as an equal yearly sum
 * @param chanceItPays 0 to 1
 * @param lossLimit loss the user would not bear
 * @param chanceOfUnbearableLoss 0 to 1
 * @param expectedRegret what the plan misses on average against the best plan of each draw
 * @param expectedRegretOfKeeping the same for keeping everything
 * @param certainty what the plan is worth for certain, by rising tolerance of risk
 * @param movers the inputs that explain most of the spread, most first; none whose part may be luck
 * @param breakEvens where the gain turns into a loss
 * @param perfect what it would be worth to know everything before choosing
 * @param stories what each story of the ewes' response would mean for the plan; none without ewes
 * @param otherChances of which paddocks something else is said with other chances of the stories
 * @param thrownAway draws that were thrown away and drawn anew, because an observed figure of a mob
 *     could not have come about with them
 * @param unexplained draws for which none was found with which it could; in them ewes do not
 *     respond
 * @param paddocks one entry a paddock
 */
public record HowSureReport(
    long seed,
    int draws,
    Drawn npv,
    double npvMean,
    double npvStandardError,
    List<Double> npvQuantiles,
    Drawn annuity,
    double chanceItPays,
    double lossLimit,
    double chanceOfUnbearableLoss,
    double expectedRegret,
    double expectedRegretOfKeeping,
    List<Certainty> certainty,
    List<Mover> movers,
    List<BreakEvenLine> breakEvens,
    double perfect,
    List<StoryLine> stories,
    List<OtherChancesLine> otherChances,
    int thrownAway,
    int unexplained,
    List<PaddockSure> paddocks) {

  /**
   * What a story of the ewes' response would mean for the plan.
   *
   * @param story which
   * @param chance that a draw takes it, 0 to 1, before any is thrown away; by the farm's records if
   *     it has any
   * @param draws that took it and were not
   * @param gain of the plan in these
   * @param gainStandardError of its mean
   * @param chanceItPays in these, 0 to 1
   */
  public record StoryLine(
      Story story,
      double chance,
      int draws,
      Drawn gain,
      double gainStandardError,
      double chanceItPays) {

    /** How ewes respond to doses at pasture. */
    public enum Story {
      /** Not at all. */
      NONE,
      /** As in the dosed trial. */
      TRIAL,
      /** As in the outbreaks. */
      OUTBREAKS
    }
  }

  /**
   * Other chances of the stories, and what is then said of paddocks.
   *
   * @param chanceOfNone that doses at pasture do nothing, 0 to 1
   * @param chanceOfTrial that ewes respond as in the dosed trial
   * @param chanceOfOutbreaks that they respond as in the outbreaks
   * @param changed paddocks of which something else is said
   */
  public record OtherChancesLine(
      double chanceOfNone,
      double chanceOfTrial,
      double chanceOfOutbreaks,
      List<ChangedCall> changed) {}

  /**
   * Something else that is said of a paddock.
   *
   * @param paddock its name
   * @param verdict what to do
   * @param sure whether the plan's change is sure; empty where it changes nothing
   */
  public record ChangedCall(String paddock, Call verdict, Optional<Boolean> sure) {}

  /**
   * An input that moves the answer.
   *
   * @param input its name
   * @param varianceShare share of the variance of the gain it explains, 0 to 1
   */
  public record Mover(String input, double varianceShare) {}

  /**
   * Where a gain turns into a loss.
   *
   * @param input name of the input
   * @param paddock whose gain is meant; empty for the whole plan
   * @param unit of the input
   * @param likely its likely value
   * @param low lowest that was drawn
   * @param high highest that was drawn
   * @param value where the straight line through the draws crosses nothing; empty if it does not
   * @param found where it lies
   */
  public record BreakEvenLine(
      String input,
      Optional<String> paddock,
      String unit,
      double likely,
      double low,
      double high,
      OptionalDouble value,
      Place found) {

    /** Where a break-even lies. */
    public enum Place {
      /** Nowhere in what was drawn. */
      NOWHERE,
      /** Within the input's own range: it may well happen. */
      WITHIN_RANGE,
      /** Beyond it. */
      BEYOND_RANGE
    }
  }

  /**
   * A paddock.
   *
   * @param name its name
   * @param verdict what to do
   * @param option key of the option that was weighed against keeping; empty if nothing can be done
   * @param gain of that against keeping, the rest of the plan being done
   * @param chanceItPays 0 to 1
   * @param over key of the best cheaper choice, with which it is judged; keeping if none is better
   * @param regretOfActing lost on average by acting where that is better
   * @param regretOfKeeping missed on average by that where acting is better
   * @param regretShare share of acting in both, 0 to 1: sure up to a third, keeping from two thirds
   * @param betterThanKeeping who prefers it outright
   */
  public record PaddockSure(
      String name,
      Call verdict,
      Optional<String> option,
      Drawn gain,
      double chanceItPays,
      String over,
      double regretOfActing,
      double regretOfKeeping,
      double regretShare,
      Better betterThanKeeping) {

    /** Who prefers an option to keeping, whatever else they think. */
    public enum Better {
      /** Everybody: first-degree dominance. */
      FOR_EVERYBODY,
      /** All who dislike risk: second-degree dominance. */
      FOR_THE_CAUTIOUS,
      /** It depends. */
      FOR_SOME
    }
  }
}
