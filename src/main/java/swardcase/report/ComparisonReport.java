package swardcase.report;

import java.util.List;
import java.util.Optional;
import swardcase.chance.Drawn;
import swardcase.chance.Spread;
import swardcase.decision.FarmDifference;

/**
 * A farm side by side with other farms, or with scenarios of it, in the same draws, and the
 * difference from it. Money is in the currency of all.
 *
 * @param schemaVersion version of this layout
 * @param program name and version of the program
 * @param first the farm compared from
 * @param others what is compared with it, in the order it was asked for
 * @param cautions what is printed whatever the farm
 */
public record ComparisonReport(
    String schemaVersion, String program, Side first, List<Other> others, List<String> cautions) {

  /**
   * A farm or scenario that is compared with the first farm.
   *
   * @param side its main numbers
   * @param difference what it brings more than the first farm
   * @param paddocks paddocks by name, those of the first farm first
   */
  public record Other(Side side, FarmDifference difference, List<PaddockPair> paddocks) {}

  /**
   * The main numbers of one farm.
   *
   * @param folder where its files are, as it was given
   * @param scenario name of the scenario laid over it; empty for the farm as its files have it
   * @param farm the farm's facts
   * @param winterFeedTonnes supplement a year for winter growth lost to outdated cultivars, t
   * @param winterFeedCost the same as money
   * @param lambsLost lambs not marked in a year because of oestrogen
   * @param lambCost the same as money
   * @param standingResult worth of the lambs marked, less what dry ewes and supplement cost, a
   *     year, if everything is kept
   * @param figuresObserved whether a mob's share in lamb was observed on these paddocks, so that it
   *     is the same whatever grows there
   * @param calls what to do, counted
   * @param hectaresSown hectares the plan sows
   * @param planCost all costs of the plan, own labour with them, not discounted
   * @param gain of the plan over keeping everything
   * @param sureGain gain of the plan's sure changes alone
   */
  public record Side(
      String folder,
      Optional<String> scenario,
      Report.FarmHead farm,
      Drawn winterFeedTonnes,
      Drawn winterFeedCost,
      Drawn lambsLost,
      Drawn lambCost,
      Drawn standingResult,
      boolean figuresObserved,
      PlanResult.Calls calls,
      double hectaresSown,
      Drawn planCost,
      Spread gain,
      Spread sureGain) {

    /** What it is called: the scenario, or the folder. */
    public String called() {
      return scenario.orElse(folder);
    }
  }

  /**
   * A paddock in both farms.
   *
   * @param name its name, the same in both
   * @param first what it is in the first farm; empty if it is not there
   * @param second what it is in the other
   * @param answerChanges whether another thing is to be done there, or the same but sure in one
   *     only, or the paddock is in one only
   */
  public record PaddockPair(
      String name,
      Optional<PaddockAnswer> first,
      Optional<PaddockAnswer> second,
      boolean answerChanges) {}
}
