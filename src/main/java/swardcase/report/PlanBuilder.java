package swardcase.report;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import swardcase.chance.Range;
import swardcase.chance.Spread;
import swardcase.decision.CourseFindings;
import swardcase.decision.Decision;
import swardcase.decision.FarmMeasures.OfFarm;
import swardcase.decision.HowSure;
import swardcase.farm.Action;
import swardcase.farm.ActionKind;
import swardcase.farm.Farm;
import swardcase.money.NetPresentValue;
import swardcase.outcome.Outcome;
import swardcase.outcome.Plan;
import swardcase.report.PlanResult.Calls;
import swardcase.report.PlanResult.Careful;
import swardcase.report.PlanResult.FarmRule;
import swardcase.report.PlanResult.PlanYear;
import swardcase.report.PlanResult.RateEnds;
import swardcase.report.PlanResult.Shared;
import swardcase.report.PlanResult.Work;

/** Makes the record of the whole farm's answer. */
final class PlanBuilder {

  private final Decision decision;
  private final HowSure howSure;
  private final Farm farm;
  private final int firstYear;

  PlanBuilder(Decision decision, HowSure howSure, LocalDate date) {
    this.decision = decision;
    this.howSure = howSure;
    farm = decision.model().farm();
    firstYear = ReportBuilder.firstYear(date);
  }

  /** The record, from what is done with each paddock. */
  PlanResult result(List<PaddockResult> paddocks) {
    Range rate = farm.finance().discountRate().range();
    Outcome outcome = decision.outcome();
    List<PlanYear> years = years();
    Spread gain = howSure.gain();
    List<FarmRule> farmWide = rules(true);
    return new PlanResult(
        calls(paddocks, farmWide),
        decision.plan().equals(decision.model().keepAll()),
        order(paddocks),
        sownHa(),
        decision.of(OfFarm.PLAN_COST),
        gain,
        howSure.gain().standardError(),
        decision.found().plan().certaintyEquivalent(),
        decision.tolerance(),
        GainPart.of(outcome, decision.model().newOutcome(), decision.likely()),
        years,
        farmWide,
        rules(false),
        new Shared(
            gain.mean()
                - paddocks.stream().mapToDouble(paddock -> paddock.gain().mean()).sum()
                - farmWide.stream().mapToDouble(rule -> rule.gain().mean()).sum()),
        howSure.sureGain(),
        careful(),
        new RateEnds(
            100 * rate.low(),
            NetPresentValue.of(rate.low(), outcome.cashFlow()),
            100 * rate.high(),
            NetPresentValue.of(rate.high(), outcome.cashFlow())),
        howSure.annuity(),
        Returns.of(outcome, rate.likely()),
        decision.peakDebt(),
        years.stream().min(Comparator.comparingDouble(PlanYear::cumulative)).orElseThrow().year(),
        HowFound.of(decision, firstYear),
        farm.finance().loan().map(loan -> LoanAccount.of(outcome, loan, rate.likely(), firstYear)));
  }

  private Optional<Careful> careful() {
    return decision
        .found()
        .careful()
        .map(
            worth ->
                new Careful(
                    decision.tolerance() / 2,
                    HowFound.changes(decision, worth.plan(), firstYear),
                    howSure.carefulGain().orElseThrow(),
                    worth.certaintyEquivalent(),
                    -worth.behind()));
  }

  /** The rules for the whole farm that the plan makes, or the best choice of those it does not. */
  private List<FarmRule> rules(boolean planned) {
    return howSure.rules().stream()
        .filter(rule -> rule.isPlanned() == planned)
        .flatMap(rule -> rule.told().map(course -> rule(rule.rule(), course)).stream())
        .toList();
  }

  private FarmRule rule(swardcase.outcome.FarmRule rule, CourseFindings course) {
    return new FarmRule(
        PlanResult.Rule.of(rule, course.choice().action()),
        course.costPerHa().times(farm.areaHa()),
        course.gain(),
        course.isSure());
  }

  private Calls calls(List<PaddockResult> paddocks, List<FarmRule> farmWide) {
    int[] count = new int[Call.values().length];
    paddocks.forEach(paddock -> count[paddock.call().ordinal()]++);
    return new Calls(
        count[Call.ACT.ordinal()],
        count[Call.KEEP_OFF.ordinal()],
        count[Call.KEEP.ordinal()],
        count[Call.UNDECIDED.ordinal()],
        (int) paddocks.stream().filter(paddock -> !paddock.sure().orElse(true)).count()
            + (int) farmWide.stream().filter(rule -> !rule.sure()).count(),
        farmWide.size());
  }

  /** Sure work first, then what to find out more about, then what to keep; each by year. */
  private static List<Integer> order(List<PaddockResult> paddocks) {
    return IntStream.range(0, paddocks.size())
        .boxed()
        .sorted(
            Comparator.comparingInt((Integer i) -> rank(paddocks.get(i)))
                .thenComparing(i -> paddocks.get(i).start().orElse(Integer.MAX_VALUE)))
        .map(i -> i + 1)
        .toList();
  }

  /** Sure work, unsure work, undecided, keep. */
  private static int rank(PaddockResult paddock) {
    return paddock
        .sure()
        .map(sure -> sure ? 0 : 1)
        .orElse(paddock.call() == Call.UNDECIDED ? 2 : 3);
  }

  private double sownHa() {
    return IntStream.range(0, farm.paddocks().size())
        .filter(i -> decision.model().actions().get(decision.plan().action(i)).sows())
        .mapToDouble(i -> farm.paddocks().get(i).areaHa())
        .sum();
  }

  private List<PlanYear> years() {
    Outcome outcome = decision.outcome();
    double without = decision.of(OfFarm.STANDING_RESULT).mean();
    List<PlanYear> years = new ArrayList<>();
    double cumulative = 0;
    for (int t = 0; t < outcome.years(); t++) {
      double net = outcome.net(t) + outcome.endValue(t);
      cumulative += net;
      years.add(
          new PlanYear(
              firstYear + t,
              decision.likely().discount(t) * net,
              work(t),
              outcome.actionCost(t),
              outcome.labourCost(t),
              outcome.supplementSaved(t),
              outcome.lambsSaved(t),
              outcome.cropMargin(t),
              outcome.spareFeed(t),
              outcome.endValue(t),
              outcome.cropMargin(t) + outcome.spareFeed(t) + outcome.endValue(t),
              net,
              cumulative,
              without,
              without + net,
              outcome.lambs(t),
              outcome.ewesInLamb(t),
              outcome.oldShare(t)));
    }
    return years;
  }

  private List<Work> work(int t) {
    Plan plan = decision.plan();
    return IntStream.range(0, plan.paddocks())
        .filter(decision::isActedOn)
        .mapToObj(i -> work(i, t - plan.start(i)))
        .flatMap(Optional::stream)
        .toList();
  }

  private Optional<Work> work(int i, int year) {
    Action action = decision.model().actions().get(decision.plan().action(i));
    String paddock = farm.paddocks().get(i).name();
    return kind(action, year).map(of -> new Work(of, paddock, action.key(), action.name()));
  }

  /** What is done in a year of an action, counted from its start. */
  private static Optional<Work.Kind> kind(Action action, int year) {
    boolean begins = !action.changesStand() || action.kind() == ActionKind.THIN;
    int last = begins ? 0 : action.runDownYears() - (action.sows() ? 0 : 1);
    if (year < 0 || year > last) {
      return Optional.empty();
    }
    if (begins) {
      return Optional.of(Work.Kind.BEGIN);
    }
    if (year == action.runDownYears()) {
      return Optional.of(Work.Kind.SOW);
    }
    return Optional.of(action.cropped() ? Work.Kind.CROP : Work.Kind.STOP_SEED_SET);
  }
}
