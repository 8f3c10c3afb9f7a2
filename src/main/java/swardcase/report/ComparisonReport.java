package swardcase.report;

import java.util.List;
import java.util.Optional;
import swardcase.chance.Drawn;
import swardcase.draws.Spread;

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

  /** Copies the lists. */
  public ComparisonReport {
    others = List.copyOf(others);
    cautions = List.copyOf(cautions);
  }

  /**
   * A farm or scenario that is compared with the first farm.
   *
   * @param side its main numbers
   * @param difference what it brings more than the first farm
   * @param paddocks paddocks by name, those of the first farm first
   */
  public record Other(Side side, Difference difference, List<PaddockPair> paddocks) {

    /** Copies the list. */
    public Other {
      paddocks = List.copyOf(paddocks);
    }
  }

  /**
   * What a farm brings more than the first with its plan, as present values: each over the years
   * and at the discount rate of its own farm; below nothing where it brings less. Means add up.
   *
   * @param byItself with the plan of the first farm held on it
   * @param planAdds the gain of its own plan less that of the plan held
   * @param together both
   * @param notHeld paddocks of the first farm on which its plan cannot be held here
   * @param heldWithinLimits whether the plan held keeps within the limits of this farm
   */
  public record Difference(
      Part byItself, Part planAdds, Part together, List<String> notHeld, boolean heldWithinLimits) {

    /** Copies the list. */
    public Difference {
      notHeld = List.copyOf(notHeld);
    }
  }

  /**
   * A part of the difference, over the draws.
   *
   * @param mean over the draws
   * @param low passed downwards in 5 draws of 100
   * @param high passed upwards in 5 draws of 100
   * @param standardError of the mean
   */
  public record Part(double mean, double low, double high, double standardError) {

    static Part of(Spread spread) {
      return new Part(spread.mean(), spread.low(), spread.high(), spread.standardError());
    }

    /** Its mean and its ends. */
    public Drawn drawn() {
      return Drawn.of(mean, low, high);
    }
  }

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
      Gain gain,
      Gain sureGain) {

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
      Optional<PaddockSide> first,
      Optional<PaddockSide> second,
      boolean answerChanges) {}

  /**
   * A paddock in one farm.
   *
   * @param number its place in that farm's file, from 1
   * @param areaHa hectares
   * @param call what to do
   * @param sure whether the plan's change is sure; empty where the plan changes nothing
   * @param actionName name of the chosen action
   * @param gain what the plan would lose without its choice here
   */
  public record PaddockSide(
      int number, double areaHa, Call call, Optional<Boolean> sure, String actionName, Gain gain) {}
}
