package swardcase.report;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import swardcase.decision.BetterOnAverage;
import swardcase.decision.Decision;
import swardcase.decision.HowSure;
import swardcase.farm.Action;
import swardcase.farm.Farm;
import swardcase.farm.Paddock;
import swardcase.outcome.FarmModel;
import swardcase.outcome.Plan;
import swardcase.search.FixedChoice;
import swardcase.search.PlanLimit;
import swardcase.search.PlanSearch.Found;
import swardcase.wording.Texts;
import swardcase.wording.Words;

/** How the plan was found, in sentences: how good it is, what hems it in, what comes next. */
final class PlanNotes {

  private final Decision decision;
  private final HowSure howSure;
  private final FarmModel model;
  private final Farm farm;
  private final int firstYear;

  PlanNotes(Decision decision, HowSure howSure, int firstYear) {
    this.decision = decision;
    this.howSure = howSure;
    this.firstYear = firstYear;
    model = decision.model();
    farm = model.farm();
  }

  List<String> all() {
    List<String> notes = new ArrayList<>();
    notes.add(Texts.get("plan.effort", money(model.leastGainPerHa())));
    notes.add(howGood());
    notSure(notes);
    howSure.better().ifPresent(better -> notes.add(onAverage(better)));
    limits(notes);
    decision.nextBest().ifPresent(next -> notes.add(nextBest(next)));
    fixed(notes);
    return notes;
  }

  private String howGood() {
    Found found = decision.found();
    int starts = 1 + found.others().size();
    if (found.value() <= 0 && decision.fixed().isEmpty()) {
      return Texts.get("plan.searchedKeep", starts);
    }
    String key = found.mostBehind() < 1 ? "plan.searchedAlike" : "plan.searched";
    return Texts.get(key, starts, money(found.value()), money(found.mostBehind()));
  }

  /** Paddocks that the plan acts on, but which the draws do not speak for. */
  private void notSure(List<String> notes) {
    String names =
        IntStream.range(0, farm.paddocks().size())
            .filter(i -> decision.plan().action(i) != model.keep())
            .filter(i -> !howSure.paddock(i).verdict().acts())
            .mapToObj(i -> farm.paddocks().get(i).name())
            .collect(Collectors.joining(", "));
    if (!names.isEmpty()) {
      notes.add(Texts.get("plan.notSure", names));
    }
  }

  private String onAverage(BetterOnAverage better) {
    return Texts.get(
        "plan.better",
        farm.paddocks().get(better.paddock()).name(),
        words(better.course().action(), better.course().start()),
        money(better.gain()));
  }

  private void limits(List<String> notes) {
    double area = farm.areaHa();
    double most = farm.finance().mostOutOfGrazing().likely() * area;
    String tooLarge =
        farm.paddocks().stream()
            .filter(paddock -> paddock.areaHa() > most)
            .map(Paddock::name)
            .collect(Collectors.joining(", "));
    if (!tooLarge.isEmpty()) {
      notes.add(Texts.get("plan.tooLarge", Words.exact(Math.rint(most)), tooLarge));
    }
    limit(notes, PlanLimit.MONEY, "plan.limit.money");
    limit(notes, PlanLimit.OUT_OF_GRAZING, "plan.limit.outOfGrazing");
    limit(notes, PlanLimit.FEED_AT_JOINING, "plan.limit.joining");
  }

  private void limit(List<String> notes, PlanLimit limit, String key) {
    double worth = decision.worthOfLifting(limit);
    if (worth > 1) {
      notes.add(Texts.get("plan.limit", Texts.get(key), money(worth)));
    }
  }

  private String nextBest(Found next) {
    double behind = decision.found().value() - next.value();
    return Texts.get("plan.nextBest", differences(next.plan()), money(Math.max(0, behind)));
  }

  private String differences(Plan other) {
    List<String> parts = new ArrayList<>();
    for (int i = 0; i < other.paddocks(); i++) {
      if (other.action(i) != decision.plan().action(i)) {
        parts.add(
            Texts.get(
                "plan.other",
                farm.paddocks().get(i).name(),
                words(other.action(i), other.start(i))));
      }
    }
    return String.join("; ", parts);
  }

  private String words(int action, int start) {
    Action of = model.actions().get(action);
    return action == model.keep()
        ? of.name()
        : Texts.get("plan.from", of.name(), firstYear + start);
  }

  private void fixed(List<String> notes) {
    if (decision.fixed().isEmpty()) {
      return;
    }
    List<String> parts = new ArrayList<>();
    for (FixedChoice choice : decision.fixed()) {
      int i = choice.paddock();
      parts.add(
          Texts.get(
              "plan.fixedTo",
              farm.paddocks().get(i).name(),
              words(decision.plan().action(i), decision.plan().start(i))));
    }
    notes.add(Texts.get("plan.fixing", String.join("; ", parts), money(decision.costOfFixing())));
  }

  private String money(double value) {
    return Words.aboutMoney(farm.currency(), value);
  }
}
