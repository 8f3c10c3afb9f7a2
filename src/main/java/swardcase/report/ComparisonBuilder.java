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
import swardcase.report.ComparisonReport.Other;
import swardcase.report.ComparisonReport.PaddockPair;
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
        FarmDifference.of(first.decision(), other.decision()),
        paddocks(first.report(), other.report()));
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
    Map<String, PaddockAnswer> ofFirst = byName(first);
    Map<String, PaddockAnswer> ofSecond = byName(second);
    Set<String> names = new LinkedHashSet<>(ofFirst.keySet());
    names.addAll(ofSecond.keySet());
    return names.stream().map(name -> pair(name, ofFirst.get(name), ofSecond.get(name))).toList();
  }

  private static PaddockPair pair(String name, PaddockAnswer first, PaddockAnswer second) {
    boolean same = first != null && second != null && first.isLike(second);
    return new PaddockPair(name, Optional.ofNullable(first), Optional.ofNullable(second), !same);
  }

  private static Map<String, PaddockAnswer> byName(Report report) {
    Map<String, PaddockAnswer> paddocks = new LinkedHashMap<>();
    PaddockAnswer.of(report).forEach(paddock -> paddocks.put(paddock.name(), paddock));
    return paddocks;
  }
}
