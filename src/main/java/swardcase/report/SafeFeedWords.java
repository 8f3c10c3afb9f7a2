package swardcase.report;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import swardcase.farm.Farm;
import swardcase.joining.JoiningPlan;
import swardcase.joining.JoiningPlan.Resown;
import swardcase.joining.JoiningPlan.Shift;
import swardcase.report.JoiningReport.SafeFeed;
import swardcase.wording.Texts;
import swardcase.wording.Words;

/** What is missing of safe feed, the ways out, and what more of it is worth. */
final class SafeFeedWords {

  /** Half-months that differ by less are equally scarce; the first of them is named. */
  private static final double ROUNDING = 1e-6;

  private final JoiningPlan plan;
  private final JoiningWords words;
  private final Farm farm;

  SafeFeedWords(JoiningPlan plan, JoiningWords words) {
    this.plan = plan;
    this.words = words;
    farm = plan.farm();
  }

  SafeFeed safeFeed() {
    int scarcest = 0;
    for (int k = 1; k < plan.halfMonths().size(); k++) {
      boolean scarcer = plan.worthOfSafeMj(k) > plan.worthOfSafeMj(scarcest) * (1 + ROUNDING);
      scarcest = scarcer ? k : scarcest;
    }
    double tonnesPerMj = plan.likely().tonnesPerMj();
    double perTonne = tonnesPerMj > 0 ? plan.worthOfSafeMj(scarcest) / tonnesPerMj : 0;
    return new SafeFeed(statement(), waysOut(), perTonne, worth(perTonne, scarcest));
  }

  private String statement() {
    if (!plan.isShort()) {
      return Texts.get("safe.enough");
    }
    int first = -1;
    int last = 0;
    for (int k = 0; k < plan.halfMonths().size(); k++) {
      if (plan.shortMj(k) > plan.shortMj() / 100) {
        first = first < 0 ? k : first;
        last = k;
      }
    }
    return Texts.get(
        "safe.short",
        Words.about(plan.shortMj()),
        farm.supplement().name(),
        Words.about(plan.shortMj() * plan.likely().tonnesPerMj()),
        words.halfMonth(plan.halfMonths().get(first)).from(),
        words.halfMonth(plan.halfMonths().get(last)).to());
  }

  private List<String> waysOut() {
    List<String> out = new ArrayList<>();
    if (plan.isShort()) {
      double price = plan.shortMj() * plan.likely().pricePerMj();
      out.add(
          Texts.get(
              "safe.buy",
              Words.about(plan.shortMj() * plan.likely().tonnesPerMj()),
              farm.supplement().name(),
              Words.aboutMoney(farm.currency(), price)));
    }
    for (boolean later : new boolean[] {true, false}) {
      date(later).ifPresent(out::add);
    }
    best().ifPresent(resown -> out.add(resow(resown)));
    return out;
  }

  /** The nearest date, later or earlier, at which safe feed is not short. */
  private Optional<String> date(boolean later) {
    Optional<Shift> nearest =
        plan.shifts().stream().filter(shift -> shift.daysLater() > 0 == later).findFirst();
    if (nearest.isEmpty()) {
      return plan.isShort()
          ? Optional.of(
              Texts.get(later ? "safe.notLater" : "safe.notEarlier", JoiningPlan.MOST_WEEKS_MOVED))
          : Optional.empty();
    }
    return Optional.of(
        Texts.get(
            later ? "safe.later" : "safe.earlier",
            Math.abs(nearest.get().daysLater()) / 7,
            Words.aboutMoney(farm.currency(), plan.planCost()),
            Words.aboutMoney(farm.currency(), nearest.get().cost())));
  }

  private Optional<Resown> best() {
    return plan.resown().stream()
        .filter(resown -> resown.freed() >= 1)
        .max(Comparator.comparingDouble(Resown::freed));
  }

  private String resow(Resown resown) {
    String action = plan.model().actions().get(resown.action()).name();
    double cost =
        plan.likely().costPerHa(resown.paddock(), resown.action(), 0)
            * farm.paddocks().get(resown.paddock()).areaHa();
    return Texts.get(
        "safe.resow",
        farm.paddocks().get(resown.paddock()).name(),
        action,
        Words.aboutMoney(farm.currency(), resown.freed()),
        JoiningPlan.YEARS_TO_NEW_STAND + 1,
        Words.aboutMoney(farm.currency(), cost));
  }

  private String worth(double perTonne, int k) {
    if (perTonne < 1) {
      return Texts.get("safe.worthNothing");
    }
    return Texts.get(
        "safe.worth",
        words.halfMonth(plan.halfMonths().get(k)).from(),
        farm.supplement().name(),
        Words.aboutMoney(farm.currency(), perTonne),
        Words.aboutMoney(farm.currency(), farm.supplement().pricePerTonne().likely()));
  }
}
