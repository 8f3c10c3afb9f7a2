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
      return "Safe feed is enough: every mob can stay on paddocks that are open to it.";
    }
    int first = -1;
    int last = 0;
    for (int k = 0; k < plan.halfMonths().size(); k++) {
      if (plan.shortMj(k) > plan.shortMj() / 100) {
        first = first < 0 ? k : first;
        last = k;
      }
    }
    return "Feed of paddocks open without limit is short by "
        + Words.about(plan.shortMj())
        + " MJ (as "
        + farm.supplement().name()
        + " "
        + Words.about(plan.shortMj() * plan.likely().tonnesPerMj())
        + " t) from "
        + words.halfMonth(plan.halfMonths().get(first)).from()
        + " to "
        + words.halfMonth(plan.halfMonths().get(last)).to()
        + ". The plan sets that against lambs.";
  }

  private List<String> waysOut() {
    List<String> out = new ArrayList<>();
    if (plan.isShort()) {
      double price = plan.shortMj() * plan.likely().pricePerMj();
      out.add(
          "Buy "
              + Words.about(plan.shortMj() * plan.likely().tonnesPerMj())
              + " t of "
              + farm.supplement().name()
              + " every year: "
              + Words.aboutMoney(farm.currency(), price)
              + " a year.");
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
              "Joining up to "
                  + JoiningPlan.MOST_WEEKS_MOVED
                  + " weeks "
                  + (later ? "later" : "earlier")
                  + " does not end the shortage.")
          : Optional.empty();
    }
    int weeks = Math.abs(nearest.get().daysLater()) / 7;
    return Optional.of(
        "Join "
            + weeks
            + " weeks "
            + (later ? "later" : "earlier")
            + ": safe feed is then enough; lambs and feed lost under the plan go from "
            + Words.aboutMoney(farm.currency(), plan.planCost())
            + " to "
            + Words.aboutMoney(farm.currency(), nearest.get().cost())
            + ". What else the date changes is not counted.");
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
    return "Resow "
        + farm.paddocks().get(resown.paddock()).name()
        + ", the paddock that frees most ("
        + action
        + "): the plan's loss falls by "
        + Words.aboutMoney(farm.currency(), resown.freed())
        + " a year from year "
        + (JoiningPlan.YEARS_TO_NEW_STAND + 1)
        + ", against about "
        + Words.aboutMoney(farm.currency(), cost)
        + " of costs. The decision sheet says whether it pays.";
  }

  private String worth(double perTonne, int k) {
    String supplement = farm.supplement().name();
    if (perTonne < 1) {
      return "More safe feed is worth nothing here: there is enough.";
    }
    return "Safe feed is scarcest from "
        + words.halfMonth(plan.halfMonths().get(k)).from()
        + ": as much of it as holds the energy of a tonne of "
        + supplement
        + " is then worth "
        + Words.aboutMoney(farm.currency(), perTonne)
        + " (a tonne of "
        + supplement
        + " costs "
        + Words.aboutMoney(farm.currency(), farm.supplement().pricePerTonne().likely())
        + ").";
  }
}
