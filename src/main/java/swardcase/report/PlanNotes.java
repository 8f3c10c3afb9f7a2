package swardcase.report;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import swardcase.farm.Action;
import swardcase.farm.Farm;
import swardcase.farm.Paddock;
import swardcase.findings.HowSure;
import swardcase.plan.Choice;
import swardcase.plan.Decision;
import swardcase.plan.FarmModel;
import swardcase.plan.Plan;
import swardcase.plan.PlanLimit;
import swardcase.plan.PlanSearch.Found;

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
    notes.add(
        "In choosing, a change counts only for what it gains beyond "
            + money(model.leastGainPerHa())
            + " a ha and year, because doing it takes effort. Money shown elsewhere is without this.");
    notes.add(howGood());
    notSure(notes);
    limits(notes);
    decision.nextBest().ifPresent(next -> notes.add(nextBest(next)));
    fixed(notes);
    return notes;
  }

  private String howGood() {
    Found found = decision.found();
    if (found.isProved()) {
      return found.value() <= 0 && decision.fixed().isEmpty()
          ? "It is proved that no plan gains more than keeping everything, by this count."
          : "It is proved that no plan gains more than this one, "
              + money(found.value())
              + " by this count.";
    }
    return "No plan can gain more than "
        + money(found.bound())
        + " by this count; this one gains "
        + money(found.value())
        + ", within "
        + Words.rounded(100 * found.gap(), 0.1)
        + " % of that.";
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
      notes.add(
          "The plan and its totals count these in, though it is not sure that they pay: "
              + names
              + ". Find out more before they start.");
    }
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
      notes.add(
          "Larger than may be out of grazing at once, "
              + Words.exact(Math.rint(most))
              + " ha, so never sown in this plan: "
              + tooLarge
              + ".");
    }
    limit(notes, PlanLimit.MONEY, "the money per year");
    limit(notes, PlanLimit.OUT_OF_GRAZING, "the share that may be out of grazing at once");
    limit(notes, PlanLimit.FEED_AT_JOINING, "the feed that ewes must find at joining");
  }

  private void limit(List<String> notes, PlanLimit limit, String name) {
    double worth = decision.worthOfLifting(limit);
    if (worth > 1) {
      notes.add(
          "Without the limit on "
              + name
              + " a plan could gain at least "
              + money(worth)
              + " more.");
    }
  }

  private String nextBest(Found next) {
    double behind = decision.found().value() - next.value();
    return "Next best: "
        + differences(next.plan())
        + ". It gains "
        + money(Math.max(0, behind))
        + " less, so it would be as good if it were worth that much more.";
  }

  private String differences(Plan other) {
    List<String> parts = new ArrayList<>();
    for (int i = 0; i < other.paddocks(); i++) {
      if (other.action(i) != decision.plan().action(i)) {
        parts.add(farm.paddocks().get(i).name() + ", " + words(other.action(i), other.start(i)));
      }
    }
    return String.join("; ", parts);
  }

  private String words(int action, int start) {
    Action of = model.actions().get(action);
    return action == model.keep() ? of.name() : of.name() + " from " + (firstYear + start);
  }

  private void fixed(List<String> notes) {
    if (decision.fixed().isEmpty()) {
      return;
    }
    List<String> parts = new ArrayList<>();
    for (Choice choice : decision.fixed()) {
      int i = choice.paddock();
      parts.add(
          farm.paddocks().get(i).name()
              + " to "
              + words(decision.plan().action(i), decision.plan().start(i)));
    }
    notes.add(
        "Fixing "
            + String.join("; ", parts)
            + " costs "
            + money(decision.costOfFixing())
            + " against the best plan found without it.");
  }

  private String money(double value) {
    return Words.aboutMoney(farm.currency(), value);
  }
}
