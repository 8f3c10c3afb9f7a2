package swardcase.report;

import java.util.List;
import java.util.Optional;
import swardcase.chance.Range;

/**
 * A farm side by side with other farms, or with scenarios of it, and what makes the difference.
 * Money is in the currency of all.
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
   * @param paddocks paddocks by name, those of the first farm first
   * @param steps the way from the first farm to this one, one group of inputs at a time; groups
   *     that are alike are left out
   */
  public record Other(Side side, List<PaddockPair> paddocks, List<Step> steps) {

    /** Copies the lists. */
    public Other {
      paddocks = List.copyOf(paddocks);
      steps = List.copyOf(steps);
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
   * @param verdicts what to do, counted
   * @param hectaresSown hectares the plan sows
   * @param planCost all costs of the plan, undiscounted
   * @param planNpv net present value of the plan, from the draws
   * @param likelyNpv the same with every number at its likely value
   */
  public record Side(
      String folder,
      Optional<String> scenario,
      Report.FarmHead farm,
      Range winterFeedTonnes,
      Range winterFeedCost,
      Range lambsLost,
      Range lambCost,
      Verdicts verdicts,
      double hectaresSown,
      Range planCost,
      Range planNpv,
      double likelyNpv) {

    /** What it is called: the scenario, or the folder. */
    public String called() {
      return scenario.orElse(folder);
    }
  }

  /**
   * How many paddocks have which verdict.
   *
   * @param act to be resown, or changed otherwise
   * @param holdOff to be kept, joining ewes held off
   * @param keep to be kept as they are
   * @param tooClose not settled by what is known
   */
  public record Verdicts(int act, int holdOff, int keep, int tooClose) {}

  /**
   * A paddock in both farms.
   *
   * @param name its name, the same in both
   * @param first what it is in the first farm; empty if it is not there
   * @param second what it is in the other
   * @param answerChanges whether another thing is to be done there, or the paddock is in one only
   */
  public record PaddockPair(
      String name,
      Optional<PaddockSide> first,
      Optional<PaddockSide> second,
      boolean answerChanges) {}

  /**
   * A paddock in one farm.
   *
   * @param areaHa hectares
   * @param call what to do
   * @param actionName name of the chosen action
   * @param npv net present value of doing it, the rest of the plan being done; 0 for keeping
   */
  public record PaddockSide(double areaHa, Call call, String actionName, Range npv) {}

  /**
   * A group of inputs taken from the other farm, after those before it.
   *
   * @param parts the group; flock and paddocks go together where one would not fit without the
   *     other
   * @param change what it changes the plan's likely net present value by, a new plan being searched
   * @param npv the likely net present value with this group and all before it
   */
  public record Step(List<FarmPart> parts, double change, double npv) {

    /** Copies the list. */
    public Step {
      parts = List.copyOf(parts);
    }
  }
}
