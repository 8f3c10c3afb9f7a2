package swardcase.report;

import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import swardcase.chance.Drawn;
import swardcase.chance.Spread;
import swardcase.decision.Decision;
import swardcase.decision.FarmDifference;
import swardcase.decision.FarmMeasures.OfFarm;
import swardcase.farm.ScanningBasis;

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

  /** Version of the layout of the document. */
  public static final String SCHEMA_VERSION = "2.0";

  /** The comparison; all must have been decided in the same draws, tables and currency. */
  public static ComparisonReport of(Decided first, List<Decided> others) {
    return new ComparisonReport(
        SCHEMA_VERSION,
        first.report().program(),
        Side.of(first),
        others.stream().map(other -> Other.of(first, other)).toList(),
        first.report().cautions());
  }

  /**
   * A farm that was decided about.
   *
   * @param folder where its files are, as it was given
   * @param scenario name of the scenario laid over them, if one is
   * @param decision the answer as numbers
   * @param report the same as it is printed
   */
  public record Decided(
      String folder, Optional<String> scenario, Decision decision, Report report) {}

  /**
   * A farm or scenario that is compared with the first farm.
   *
   * @param side its main numbers
   * @param difference what it brings more than the first farm
   * @param paddocks paddocks by name, those of the first farm first
   */
  public record Other(Side side, FarmDifference difference, List<PaddockPair> paddocks) {

    private static Other of(Decided first, Decided other) {
      return new Other(
          Side.of(other),
          FarmDifference.of(first.decision(), other.decision()),
          paddocks(first.report(), other.report()));
    }

    private static List<PaddockPair> paddocks(Report first, Report second) {
      Map<String, PaddockSide> ofFirst = byName(first);
      Map<String, PaddockSide> ofSecond = byName(second);
      Set<String> names = new LinkedHashSet<>(ofFirst.keySet());
      names.addAll(ofSecond.keySet());
      return names.stream().map(name -> pair(name, ofFirst.get(name), ofSecond.get(name))).toList();
    }

    private static PaddockPair pair(String name, PaddockSide first, PaddockSide second) {
      boolean same = first != null && second != null && first.isLike(second);
      return new PaddockPair(name, Optional.ofNullable(first), Optional.ofNullable(second), !same);
    }

    private static Map<String, PaddockSide> byName(Report report) {
      Map<String, PaddockSide> paddocks = new LinkedHashMap<>();
      for (PaddockResult of : report.paddocks()) {
        paddocks.put(
            of.name(),
            new PaddockSide(
                paddocks.size() + 1,
                of.areaHa(),
                of.call(),
                of.sure(),
                of.actionName(),
                of.gain()));
      }
      return paddocks;
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
      Spread gain,
      Spread sureGain) {

    static Side of(Decided decided) {
      Report report = decided.report();
      return new Side(
          decided.folder(),
          decided.scenario(),
          report.farm(),
          report.winterFeed().supplementTonnes(),
          report.winterFeed().supplementCost(),
          report.reproduction().lambsLostPerYear(),
          report.reproduction().costPerYear(),
          decided.decision().of(OfFarm.STANDING_RESULT),
          decided.decision().model().farm().mobs().stream()
              .anyMatch(mob -> mob.scanningBasis() == ScanningBasis.OBSERVED),
          report.plan().calls(),
          report.plan().hectaresSown(),
          report.plan().cost(),
          report.plan().gain(),
          report.plan().sureGain());
    }

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
      int number,
      double areaHa,
      Call call,
      Optional<Boolean> sure,
      String actionName,
      Spread gain) {

    /** Whether the same is to be done, as surely: the action where there is one to do. */
    private boolean isLike(PaddockSide other) {
      boolean acts = call == Call.ACT || call == Call.KEEP_OFF;
      return call == other.call
          && sure.equals(other.sure)
          && (!acts || actionName.equals(other.actionName));
    }
  }
}
