package swardcase.wording;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import swardcase.report.HowFound;
import swardcase.report.HowFound.Choice;
import swardcase.report.LoanAccount;
import swardcase.report.PlanResult;
import swardcase.report.PlanResult.Calls;
import swardcase.report.PlanResult.Work;
import swardcase.report.Report;

/** The whole farm's answer in sentences, the work of its years, and how it was found. */
public final class PlanWords {

  private PlanWords() {}

  /** The answer in a sentence. */
  public static String headline(PlanResult plan) {
    Calls calls = plan.calls();
    if (calls.act() == 0 && calls.keepOff() == 0 && calls.undecided() == 0) {
      return Texts.get("headline.keepAll");
    }
    List<String> parts = new ArrayList<>();
    add(parts, "headline.resow", calls.act());
    add(parts, "headline.holdOff", calls.keepOff());
    add(parts, "headline.keep", calls.keep());
    add(parts, "headline.findOut", calls.undecided());
    return Texts.capital(String.join(", ", parts)) + ".";
  }

  /** What was looked at: area, flock, feed, years and rate. */
  public static String facts(Report.FarmHead farm) {
    return Texts.get(
        "decision.facts",
        Words.exact(farm.areaHa()),
        Words.exact(farm.ewesJoined()),
        farm.growthProfile(),
        farm.supplement(),
        Words.months(farm.winterMonths()),
        farm.horizonYears(),
        Words.exact(farm.discountRatePercent()),
        farm.extraFeedUse().label());
  }

  private static void add(List<String> parts, String key, int count) {
    if (count > 0) {
      String paddocks = count == 1 ? "headline.paddock" : "headline.paddocks";
      parts.add(Texts.get(key, parts.isEmpty() ? Texts.get(paddocks, count) : count));
    }
  }

  /** Work of a year; blank if there is none. */
  public static String work(List<Work> work) {
    return work.stream()
        .map(each -> Texts.of("work", each.kind(), each.paddock(), each.actionName()))
        .collect(Collectors.joining("; "));
  }

  /** How the plan was found: how good it is, what hems it in, what comes next; then its loan. */
  public static List<String> notes(Report report) {
    String currency = report.farm().currency();
    HowFound found = report.plan().howFound();
    List<String> notes = new ArrayList<>();
    notes.add(Texts.get("plan.effort", money(currency, found.effortPerHaAndYear())));
    notes.add(howGood(found, currency));
    if (!found.notSure().isEmpty()) {
      notes.add(Texts.get("plan.notSure", String.join(", ", found.notSure())));
    }
    found
        .better()
        .ifPresent(
            better ->
                notes.add(
                    Texts.get(
                        "plan.better",
                        better.choice().paddock(),
                        action(better.choice()),
                        money(currency, better.gain()))));
    if (!found.tooLarge().isEmpty()) {
      String most = Words.exact(Math.rint(found.mostOutOfGrazingHa()));
      notes.add(Texts.get("plan.tooLarge", most, String.join(", ", found.tooLarge())));
    }
    found
        .limits()
        .forEach(
            limit ->
                notes.add(
                    Texts.get(
                        "plan.limit",
                        Texts.of("plan.limit", limit.limit()),
                        money(currency, limit.worth()))));
    found
        .nextBest()
        .ifPresent(
            next ->
                notes.add(
                    Texts.get(
                        "plan.nextBest",
                        choices("plan.other", next.changes()),
                        money(currency, next.behind()))));
    if (!found.fixed().isEmpty()) {
      notes.add(
          Texts.get(
              "plan.fixing",
              choices("plan.fixedTo", found.fixed()),
              money(currency, found.costOfFixing())));
    }
    report
        .plan()
        .loan()
        .filter(loan -> loan.borrowed() > 0)
        .ifPresent(loan -> notes.add(account(loan, currency)));
    return notes;
  }

  private static String howGood(HowFound found, String currency) {
    if (found.value() <= 0 && found.fixed().isEmpty()) {
      return Texts.get("plan.searchedKeep", found.starts());
    }
    return Texts.get(
        found.mostBehind() < 1 ? "plan.searchedAlike" : "plan.searched",
        found.starts(),
        money(currency, found.value()),
        money(currency, found.mostBehind()));
  }

  private static String choices(String key, List<Choice> choices) {
    return choices.stream()
        .map(choice -> Texts.get(key, choice.paddock(), action(choice)))
        .collect(Collectors.joining("; "));
  }

  private static String action(Choice choice) {
    return choice.start().isPresent()
        ? Texts.get("plan.from", choice.actionName(), choice.start().getAsInt())
        : choice.actionName();
  }

  private static String account(LoanAccount loan, String currency) {
    return Texts.get(
        loan.yearPositive().isPresent() ? "loan.repaid" : "loan.open",
        money(currency, loan.borrowed()),
        loan.years(),
        Words.exact(loan.ratePercent()),
        money(currency, loan.peakDebt()),
        loan.yearPositive().orElse(0));
  }

  private static String money(String currency, double value) {
    return Words.aboutMoney(currency, value);
  }
}
