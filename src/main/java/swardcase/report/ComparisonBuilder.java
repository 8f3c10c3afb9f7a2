package swardcase.report;

import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import swardcase.decision.Decision;
import swardcase.decision.FarmDifference;
import swardcase.decision.FarmMeasures.OfFarm;
import swardcase.farm.ScanningBasis;
import swardcase.report.ComparisonReport.Difference;
import swardcase.report.ComparisonReport.Other;
import swardcase.report.ComparisonReport.PaddockPair;
import swardcase.report.ComparisonReport.PaddockSide;
import swardcase.report.ComparisonReport.Part;
import swardcase.report.ComparisonReport.Side;

/** Sets decided farms side by side, and takes the difference from the first. */
public final class ComparisonBuilder {

  /** Version of the layout of the comparison document. */
  public static final String SCHEMA_VERSION = "2.0";

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

  private ComparisonBuilder() {}

  /** The comparison; all must have been decided in the same draws, tables and currency. */
  public static ComparisonReport build(Decided first, List<Decided> others) {
    return new ComparisonReport(
        SCHEMA_VERSION,
        first.report().program(),
        side(first),
        others.stream().map(other -> other(first, other)).toList(),
        first.report().cautions());
  }

  private static Other other(Decided first, Decided other) {
    return new Other(
        side(other),
        difference(FarmDifference.of(first.decision(), other.decision())),
        paddocks(first.report(), other.report()));
  }

  private static Difference difference(FarmDifference of) {
    return new Difference(
        Part.of(of.byItself()),
        Part.of(of.planAdds()),
        Part.of(of.together()),
        of.notHeld(),
        of.heldWithinLimits());
  }

  /** The main numbers of a farm. */
  public static Side side(Decided decided) {
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

  private static List<PaddockPair> paddocks(Report first, Report second) {
    Map<String, PaddockSide> ofFirst = byName(first);
    Map<String, PaddockSide> ofSecond = byName(second);
    Set<String> names = new LinkedHashSet<>(ofFirst.keySet());
    names.addAll(ofSecond.keySet());
    return names.stream()
        .map(
            name ->
                pair(
                    name,
                    Optional.ofNullable(ofFirst.get(name)),
                    Optional.ofNullable(ofSecond.get(name))))
        .toList();
  }

  private static PaddockPair pair(
      String name, Optional<PaddockSide> first, Optional<PaddockSide> second) {
    boolean same =
        first.map(ComparisonBuilder::answer).equals(second.map(ComparisonBuilder::answer));
    return new PaddockPair(name, first, second, !same);
  }

  private static Map<String, PaddockSide> byName(Report report) {
    Map<String, PaddockSide> paddocks = new LinkedHashMap<>();
    for (PaddockResult paddock : report.paddocks()) {
      paddocks.put(
          paddock.name(),
          new PaddockSide(
              paddocks.size() + 1,
              paddock.areaHa(),
              paddock.call(),
              paddock.sure(),
              paddock.actionName(),
              paddock.gain()));
    }
    return paddocks;
  }

  /** What is to be done, and whether that is sure: the action where there is one to do. */
  private static List<Object> answer(PaddockSide side) {
    boolean acts = side.call() == Call.ACT || side.call() == Call.KEEP_OFF;
    return List.of(side.call(), side.sure(), acts ? side.actionName() : "");
  }
}
