package swardcase.wording;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import swardcase.report.Call;
import swardcase.report.HowFound;
import swardcase.report.HowFound.Choice;
import swardcase.report.LoanAccount;
import swardcase.report.PaddockResult;
import swardcase.report.PaddockResult.OptionResult;
import swardcase.report.PlanResult;
import swardcase.report.PlanResult.Calls;
import swardcase.report.PlanResult.RateEnds;
import swardcase.report.PlanResult.Work;
import swardcase.report.Report;

/** The whole farm's answer in sentences, the work of its years, and how it was found. */
public final class PlanWords {

  /** Paddocks of a year's work that are named, at most. */
  private static final int NAMED = 3;

  private PlanWords() {}

  private static int chosen(Report report, Predicate<OptionResult> which) {
    return (int)
        report.paddocks().stream()
            .filter(paddock -> paddock.call() == Call.ACT)
            .flatMap(paddock -> paddock.options().stream())
            .filter(option -> option.chosen() && which.test(option))
            .count();
  }

  /** The answer in a sentence or three: what is not sure this year, what to do, how sure. */
  public static String headline(Report report) {
    Calls calls = report.plan().calls();
    if (calls.changes() == 0 && calls.undecided() == 0) {
      return Texts.get("headline.keepAll");
    }
    List<String> sentences = new ArrayList<>();
    report.plan().farmWide().forEach(rule -> sentences.add(Texts.capital(rule(rule.what())) + "."));
    List<String> parts = new ArrayList<>();
    int crops = chosen(report, OptionResult::landUse);
    int thinned = chosen(report, option -> !option.landUse() && !option.sows());
    add(parts, "headline.resow", calls.act() - crops - thinned);
    add(parts, "headline.thin", thinned);
    add(parts, "headline.crop", crops);
    add(parts, "headline.holdOff", calls.keepOff());
    add(parts, "headline.keep", calls.keep());
    add(parts, "headline.tooClose", calls.undecided());
    sentences.add(Texts.capital(String.join(", ", parts)) + ".");
    if (calls.changes() > 0) {
      sentences.add(howSure(calls));
      if (calls.unsure() == 0 && Chances.isSeldom(report.plan().gain().chancePays())) {
        sentences.add(Texts.get("headline.sureThoughSeldom"));
      }
    }
    int year = report.plan().years().get(0).year();
    String notSure =
        report.paddocks().stream()
            .filter(paddock -> !paddock.sure().orElse(true))
            .filter(paddock -> paddock.start().orElse(0) == year)
            .map(PaddockResult::name)
            .collect(Collectors.joining(", "));
    if (!notSure.isEmpty()) {
      sentences.add(Texts.get("headline.thisYear", year, notSure));
    }
    return String.join(" ", sentences);
  }

  /** A rule for the whole farm, as what is to be done. */
  public static String rule(PlanResult.Rule rule) {
    return Texts.get("rule." + rule.name());
  }

  /** The same where there is little room. */
  public static String shortRule(PlanResult.Rule rule) {
    return Texts.get("rule.short." + rule.name());
  }

  private static String howSure(Calls calls) {
    if (calls.unsure() == 0) {
      return Texts.get(calls.changes() == 1 ? "headline.oneSure" : "headline.allSure");
    }
    return calls.unsure() == calls.changes()
        ? Texts.get(calls.changes() == 1 ? "headline.oneUnsure" : "headline.allUnsure")
        : Texts.get(
            calls.unsure() == 1 ? "headline.unsureOne" : "headline.unsure",
            calls.changes(),
            calls.unsure());
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

  /** What the row is called that makes the gains of the paddocks add up to that of the plan. */
  public static String shared(double shared) {
    return Texts.get(shared < 0 ? "plan.shared.twice" : "plan.shared.nowhere");
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

  /** Work of a year by kinds, paddocks counted where they are many; blank if there is none. */
  public static String workInShort(Report report, List<Work> work) {
    Set<String> keptOff =
        report.paddocks().stream()
            .filter(paddock -> paddock.call() == Call.KEEP_OFF)
            .map(PaddockResult::name)
            .collect(Collectors.toSet());
    Map<String, List<String>> paddocks = new TreeMap<>();
    for (Work each : work) {
      boolean gate = each.kind() == Work.Kind.BEGIN && keptOff.contains(each.paddock());
      paddocks
          .computeIfAbsent(
              gate ? "work.short.keepOff" : "work.short." + each.kind().name(),
              key -> new ArrayList<>())
          .add(each.paddock());
    }
    return paddocks.entrySet().stream()
        .map(
            of ->
                Texts.get(
                    of.getKey(),
                    of.getValue().size() > NAMED
                        ? Texts.get("headline.paddocks", of.getValue().size())
                        : String.join(", ", of.getValue())))
        .collect(Collectors.joining("; "));
  }

  /** How the plan was chosen and found: how good it is, what hems it in, what is as good. */
  public static List<String> notes(Report report, MoneyFaces faces) {
    PlanResult plan = report.plan();
    HowFound found = plan.howFound();
    List<String> notes = new ArrayList<>();
    notes.add(
        Texts.get(
            plan.keepsAll() ? "plan.chosenToKeep" : "plan.chosen",
            faces.about(plan.riskTolerance()),
            faces.money(faces.rounded(plan.certaintyEquivalent()))));
    notes.add(
        Texts.get(
            found.stillToFind() < 0.5 ? "plan.nothingToFind" : "plan.stillToFind",
            faces.about(found.stillToFind())));
    if (faces.shared() != 0) {
      notes.add(
          Texts.get(
              faces.shared() < 0 ? "plan.countedTwice" : "plan.countedNowhere",
              faces.money(Math.abs(faces.shared()))));
    }
    if (plan.calls().unsure() > 0) {
      double sure = faces.rounded(plan.sureGain().mean());
      notes.add(
          Texts.get(
              sure == faces.gain() ? "plan.sureAsMuch" : "plan.sureAlone",
              faces.money(sure),
              faces.money(faces.gain())));
    }
    plan.careful()
        .ifPresent(
            careful ->
                notes.add(
                    Texts.get(
                        "plan.careful",
                        faces.about(careful.riskTolerance()),
                        choices("plan.other", careful.changes()),
                        faces.withEnds(faces.rounded(careful.gain().mean()), careful.gain()))));
    report.reproduction().otherDates().stream()
        .map(date -> OestrogenWords.otherDate(date, report.farm().currency()))
        .forEach(notes::add);
    if (!found.nearEqual().isEmpty()) {
      notes.add(Texts.get("plan.nearEqual", nearEqual(found.nearEqual())));
    }
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
                        faces.about(limit.worth()))));
    if (!found.fixed().isEmpty()) {
      double cost = found.costOfFixing().orElse(0);
      notes.add(
          Texts.get(
              cost > 0 ? "plan.fixing" : "plan.fixingNothing",
              choices("plan.fixedTo", found.fixed()),
              faces.about(cost)));
    }
    if (!plan.keepsAll()) {
      notes.add(rates(plan.rates(), faces));
    }
    plan.loan()
        .filter(loan -> loan.borrowed() > 0)
        .ifPresent(loan -> notes.add(account(loan, faces)));
    return notes;
  }

  private static String rates(RateEnds rates, MoneyFaces faces) {
    return Texts.get(
        "plan.rates",
        Words.exact(rates.lowPercent()),
        faces.money(faces.rounded(rates.gainAtLow())),
        Words.exact(rates.highPercent()),
        faces.money(faces.rounded(rates.gainAtHigh())));
  }

  static String choices(String key, List<Choice> choices) {
    return choices.stream()
        .map(choice -> Texts.get(key, choice.paddock(), action(choice)))
        .collect(Collectors.joining("; "));
  }

  /** One paddock's action once, with all its years. */
  private static String nearEqual(List<HowFound.NearEqual> near) {
    Map<String, String> years =
        near.stream()
            .map(HowFound.NearEqual::choice)
            .sorted(Comparator.comparing(choice -> choice.start().orElse(0)))
            .collect(
                Collectors.toMap(
                    choice -> Texts.get("plan.other", choice.paddock(), choice.actionName()),
                    choice -> PaddockWords.year(choice.start(), ""),
                    (some, more) -> some + ", " + more,
                    TreeMap::new));
    return years.entrySet().stream()
        .map(
            of ->
                of.getValue().isEmpty()
                    ? of.getKey()
                    : Texts.get("plan.from", of.getKey(), of.getValue()))
        .collect(Collectors.joining("; "));
  }

  private static String action(Choice choice) {
    return choice.start().isPresent()
        ? Texts.get("plan.from", choice.actionName(), choice.start().getAsInt())
        : choice.actionName();
  }

  private static String account(LoanAccount loan, MoneyFaces faces) {
    return Texts.get(
        loan.yearPositive().isPresent() ? "loan.repaid" : "loan.open",
        faces.about(loan.borrowed()),
        loan.years(),
        Words.exact(loan.ratePercent()),
        faces.about(loan.peakDebt()),
        loan.yearPositive().orElse(0));
  }
}
