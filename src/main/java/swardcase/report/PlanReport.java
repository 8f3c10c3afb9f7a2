package swardcase.report;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import swardcase.decision.Decision;
import swardcase.decision.HowSure;
import swardcase.farm.Action;
import swardcase.farm.Farm;
import swardcase.outcome.Outcome;
import swardcase.outcome.Plan;
import swardcase.wording.Texts;

/** The record of the whole farm's answer. */
final class PlanReport {

  private final Decision decision;
  private final HowSure howSure;
  private final Farm farm;
  private final int firstYear;

  PlanReport(Decision decision, HowSure howSure, LocalDate date) {
    this.decision = decision;
    this.howSure = howSure;
    farm = decision.model().farm();
    firstYear = firstYear(date);
  }

  /** The calendar year that is called the coming one: the one after the sheet's date. */
  static int firstYear(LocalDate date) {
    return date.getYear() + 1;
  }

  PlanResult result() {
    double rate = farm.finance().discountRate().likely();
    Outcome outcome = decision.outcome();
    Returns returns = Returns.of(outcome, rate);
    Optional<LoanAccount> account =
        farm.finance().loan().map(loan -> LoanAccount.of(outcome, loan, rate, firstYear));
    return new PlanResult(
        headline(),
        sownHa(),
        decision.planCost(),
        howSure.npv().range(),
        outcome.npv(),
        howSure.annuity().range(),
        returns.irrPercent(),
        returns.mirrPercent(),
        returns.paybackYears(),
        returns.peakDebt(),
        returns.benefitCost(),
        years(),
        notes(account),
        account);
  }

  private List<String> notes(Optional<LoanAccount> account) {
    List<String> notes = new ArrayList<>(new PlanNotes(decision, howSure, firstYear).all());
    account
        .filter(loan -> loan.borrowed() > 0)
        .ifPresent(loan -> notes.add(loan.sentence(farm.currency())));
    return notes;
  }

  private String headline() {
    int sow = 0;
    int hold = 0;
    int close = 0;
    for (int i = 0; i < farm.paddocks().size(); i++) {
      switch (howSure.paddock(i).verdict()) {
        case ACT -> sow++;
        case HOLD_OFF -> hold++;
        case TOO_CLOSE -> close++;
        case KEEP -> {}
      }
    }
    int keep = farm.paddocks().size() - sow - hold - close;
    if (sow + hold + close == 0) {
      return Texts.get("headline.keepAll");
    }
    List<String> parts = new ArrayList<>();
    add(parts, "headline.resow", sow);
    add(parts, "headline.holdOff", hold);
    add(parts, "headline.keep", keep);
    add(parts, "headline.findOut", close);
    return ReasonWords.capital(String.join(", ", parts)) + ".";
  }

  private static void add(List<String> parts, String key, int count) {
    if (count > 0) {
      String paddocks = count == 1 ? "headline.paddock" : "headline.paddocks";
      parts.add(Texts.get(key, parts.isEmpty() ? Texts.get(paddocks, count) : count));
    }
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

  private List<PlanResult.PlanYear> years() {
    Outcome outcome = decision.outcome();
    List<PlanResult.PlanYear> years = new ArrayList<>();
    double cumulative = 0;
    for (int t = 0; t < outcome.years(); t++) {
      double net = outcome.net(t) + outcome.endValue(t);
      cumulative += net;
      years.add(
          new PlanResult.PlanYear(
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

  private String work(int t) {
    Plan plan = decision.plan();
    List<String> work = new ArrayList<>();
    for (int i = 0; i < plan.paddocks(); i++) {
      Action action = decision.model().actions().get(plan.action(i));
      int k = t - plan.start(i);
      String name = farm.paddocks().get(i).name();
      if (plan.action(i) == decision.model().keep() || k < 0) {
        continue;
      }
      if (action.sows() && k < action.runDownYears()) {
        work.add(Texts.get(action.cropped() ? "work.crop" : "work.runDown", name));
      } else if (action.sows() && k == action.runDownYears()) {
        work.add(Texts.get("work.sow", name));
      } else if (!action.sows() && k == 0) {
        work.add(Texts.get("work.other", action.name(), name));
      }
    }
    return String.join("; ", work);
  }
}
