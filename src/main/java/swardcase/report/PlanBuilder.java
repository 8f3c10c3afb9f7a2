package swardcase.report;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import swardcase.decision.Decision;
import swardcase.decision.HowSure;
import swardcase.farm.Action;
import swardcase.farm.Farm;
import swardcase.outcome.Outcome;
import swardcase.outcome.Plan;
import swardcase.report.PlanResult.Calls;
import swardcase.report.PlanResult.PlanYear;
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
    firstYear = firstYear(date);
  }

  /** The calendar year that is called the coming one: the one after the sheet's date. */
  static int firstYear(LocalDate date) {
    return date.getYear() + 1;
  }

  /** The record, from what is done with each paddock. */
  PlanResult result(List<PaddockResult> paddocks) {
    double rate = farm.finance().discountRate().likely();
    Outcome outcome = decision.outcome();
    List<PlanYear> years = years();
    return new PlanResult(
        calls(paddocks),
        IntStream.range(0, farm.paddocks().size())
            .allMatch(i -> decision.plan().action(i) == decision.model().keep()),
        order(paddocks),
        sownHa(),
        decision.planCost(),
        howSure.npv().range(),
        outcome.npv(),
        howSure.annuity().range(),
        Returns.of(outcome, rate),
        years,
        lowest(years),
        new HowFoundBuilder(decision, howSure, firstYear).result(),
        farm.finance().loan().map(loan -> LoanAccount.of(outcome, loan, rate, firstYear)));
  }

  private Calls calls(List<PaddockResult> paddocks) {
    int[] count = new int[Call.values().length];
    paddocks.forEach(paddock -> count[paddock.call().ordinal()]++);
    return new Calls(
        count[Call.ACT.ordinal()],
        count[Call.KEEP_OFF.ordinal()],
        count[Call.KEEP.ordinal()],
        count[Call.UNDECIDED.ordinal()]);
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
    boolean unsure = paddock.call() == Call.UNDECIDED;
    return (paddock.start().isPresent() ? 0 : 2) + (unsure == paddock.start().isPresent() ? 1 : 0);
  }

  private double sownHa() {
    double sum = 0;
    for (int i = 0; i < farm.paddocks().size(); i++) {
      if (decision.model().actions().get(decision.plan().action(i)).sows()) {
        sum += farm.paddocks().get(i).areaHa();
      }
    }
    return sum;
  }

  private List<PlanYear> years() {
    Outcome outcome = decision.outcome();
    List<PlanYear> years = new ArrayList<>();
    double cumulative = 0;
    for (int t = 0; t < outcome.years(); t++) {
      double net = outcome.net(t) + outcome.endValue(t);
      cumulative += net;
      years.add(
          new PlanYear(
              firstYear + t,
              work(t),
              outcome.actionCost(t),
              outcome.supplementSaved(t),
              outcome.lambsSaved(t),
              outcome.cropMargin(t) + outcome.spareFeed(t) + outcome.endValue(t),
              net,
              cumulative,
              outcome.oldShare(t)));
    }
    return years;
  }

  private static int lowest(List<PlanYear> years) {
    PlanYear lowest = years.get(0);
    for (PlanYear year : years) {
      lowest = year.cumulative() < lowest.cumulative() ? year : lowest;
    }
    return lowest.year();
  }

  private List<Work> work(int t) {
    Plan plan = decision.plan();
    List<Work> work = new ArrayList<>();
    for (int i = 0; i < plan.paddocks(); i++) {
      Action action = decision.model().actions().get(plan.action(i));
      String name = farm.paddocks().get(i).name();
      if (plan.action(i) != decision.model().keep()) {
        kind(action, t - plan.start(i))
            .ifPresent(kind -> work.add(new Work(kind, name, action.key(), action.name())));
      }
    }
    return work;
  }

  /** What is done in a year of an action, counted from its start. */
  private static Optional<Work.Kind> kind(Action action, int year) {
    if (year < 0 || year > (action.sows() ? action.runDownYears() : 0)) {
      return Optional.empty();
    }
    if (!action.sows()) {
      return Optional.of(Work.Kind.BEGIN);
    }
    if (year == action.runDownYears()) {
      return Optional.of(Work.Kind.SOW);
    }
    return Optional.of(action.cropped() ? Work.Kind.CROP : Work.Kind.STOP_SEED_SET);
  }
}
