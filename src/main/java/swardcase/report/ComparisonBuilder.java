package swardcase.report;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.IntStream;
import swardcase.decision.Decision;
import swardcase.decision.HowSure;
import swardcase.decision.Verdict;
import swardcase.farm.Farm;
import swardcase.outcome.FarmModel;
import swardcase.outcome.Outcome;
import swardcase.report.ComparisonReport.Other;
import swardcase.report.ComparisonReport.PaddockPair;
import swardcase.report.ComparisonReport.PaddockSide;
import swardcase.report.ComparisonReport.Side;
import swardcase.report.ComparisonReport.Step;
import swardcase.report.ComparisonReport.Verdicts;
import swardcase.search.PlanSearch;
import swardcase.tables.Tables;

/** Sets decided farms side by side and finds what makes the difference. */
public final class ComparisonBuilder {

  /** Version of the layout of the comparison document. */
  public static final String SCHEMA_VERSION = "2.0";

  /**
   * A farm that was decided about.
   *
   * @param folder where its files are, as it was given
   * @param scenario name of the scenario laid over them, if one is
   * @param decision the answer as numbers
   * @param howSure how sure it is
   * @param report the same as it is printed
   */
  public record Decided(
      String folder,
      Optional<String> scenario,
      Decision decision,
      HowSure howSure,
      Report report) {}

  private ComparisonBuilder() {}

  /** The comparison; all farms must have been decided with the same tables and currency. */
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
        paddocks(first.report(), other.report()),
        steps(first.decision(), other.decision()));
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
        verdicts(decided),
        report.plan().hectaresSown(),
        report.plan().cost(),
        report.plan().npv(),
        decided.decision().outcome().npv());
  }

  private static Verdicts verdicts(Decided decided) {
    return new Verdicts(
        count(decided, Verdict.ACT),
        count(decided, Verdict.HOLD_OFF),
        count(decided, Verdict.KEEP),
        count(decided, Verdict.TOO_CLOSE));
  }

  private static int count(Decided decided, Verdict verdict) {
    return (int)
        IntStream.range(0, decided.report().paddocks().size())
            .filter(i -> decided.howSure().paddock(i).verdict() == verdict)
            .count();
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
          new PaddockSide(paddock.areaHa(), paddock.call(), paddock.actionName(), paddock.npv()));
    }
    return paddocks;
  }

  /** What is to be done: the action where there is one to do, else the call. */
  private static String answer(PaddockSide side) {
    boolean acts = side.call() == Call.ACT || side.call() == Call.KEEP_OFF;
    return acts ? side.actionName() : side.call().name();
  }

  /** The last step arrives at the second farm, whose plan is known, so that all steps add up. */
  private static List<Step> steps(Decision first, Decision second) {
    Farm from = first.model().farm();
    Farm to = second.model().farm();
    List<Set<FarmPart>> groups = FarmPart.steps(from, to);
    Set<FarmPart> taken = EnumSet.noneOf(FarmPart.class);
    List<Step> steps = new ArrayList<>();
    double before = first.outcome().npv();
    for (Set<FarmPart> group : groups) {
      taken.addAll(group);
      double after =
          steps.size() == groups.size() - 1
              ? second.outcome().npv()
              : likelyNpv(FarmPart.mix(from, to, taken), first.model().tables());
      steps.add(new Step(List.copyOf(group), after - before, after));
      before = after;
    }
    return steps;
  }

  /** Likely net present value of the best plan found, which is that of a decision. */
  private static double likelyNpv(Farm farm, Tables tables) {
    FarmModel model = new FarmModel(farm, tables);
    Outcome outcome = model.newOutcome();
    model.newRun().evaluate(new PlanSearch(model).best(), outcome);
    return outcome.npv();
  }
}
