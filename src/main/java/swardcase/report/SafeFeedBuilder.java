package swardcase.report;

import java.time.MonthDay;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import swardcase.farm.Farm;
import swardcase.joining.JoiningPlan;
import swardcase.joining.JoiningPlan.Resown;
import swardcase.joining.JoiningPlan.Shift;
import swardcase.report.JoiningReport.Direction;
import swardcase.report.JoiningReport.HalfMonth;
import swardcase.report.JoiningReport.OtherDate;
import swardcase.report.JoiningReport.Resow;
import swardcase.report.JoiningReport.SafeFeed;
import swardcase.report.JoiningReport.Shortage;

/** What is missing of safe feed, the ways out, and what more of it is worth. */
final class SafeFeedBuilder {

  /** Half-months that differ by less are equally scarce; the first of them is named. */
  private static final double ROUNDING = 1e-6;

  private final JoiningPlan plan;
  private final Farm farm;

  private SafeFeedBuilder(JoiningPlan plan) {
    this.plan = plan;
    farm = plan.farm();
  }

  static SafeFeed build(JoiningPlan plan) {
    return new SafeFeedBuilder(plan).build();
  }

  private SafeFeed build() {
    int scarcest = 0;
    for (int k = 1; k < plan.halfMonths().size(); k++) {
      boolean scarcer = plan.worthOfSafeMj(k) > plan.worthOfSafeMj(scarcest) * (1 + ROUNDING);
      scarcest = scarcer ? k : scarcest;
    }
    double tonnesPerMj = plan.likely().tonnesPerMj();
    MonthDay from = halfMonth(scarcest).from();
    return new SafeFeed(
        plan.isShort() ? Optional.of(shortage()) : Optional.empty(),
        plan.isShort() ? Stream.of(Direction.values()).map(this::otherDate).toList() : List.of(),
        resow(),
        plan.leastCost(),
        from,
        tonnesPerMj > 0 ? plan.worthOfSafeMj(scarcest) / tonnesPerMj : 0,
        farm.supplement().pricePerTonne().likely());
  }

  private HalfMonth halfMonth(int k) {
    return JoiningReportBuilder.halfMonth(plan, plan.halfMonths().get(k));
  }

  /** Half-months with less than a hundredth of what is missing are not named. */
  private Shortage shortage() {
    int first = -1;
    int last = 0;
    for (int k = 0; k < plan.halfMonths().size(); k++) {
      if (plan.shortMj(k) > plan.shortMj() / 100) {
        first = first < 0 ? k : first;
        last = k;
      }
    }
    return new Shortage(
        plan.shortMj(),
        plan.shortMj() * plan.likely().tonnesPerMj(),
        plan.shortMj() * plan.likely().pricePerMj(),
        halfMonth(first).from(),
        halfMonth(last).to());
  }

  /** The nearest date, later or earlier, at which safe feed is not short. */
  private OtherDate otherDate(Direction direction) {
    boolean later = direction == Direction.LATER;
    Optional<Shift> nearest =
        plan.shifts().stream().filter(shift -> shift.daysLater() > 0 == later).findFirst();
    return nearest.isEmpty()
        ? new OtherDate(direction, JoiningPlan.MOST_WEEKS_MOVED, OptionalDouble.empty())
        : new OtherDate(
            direction,
            Math.abs(nearest.get().daysLater()) / 7,
            OptionalDouble.of(nearest.get().cost()));
  }

  /** The paddock that frees most, if it frees anything to speak of. */
  private Optional<Resow> resow() {
    return plan.resown().stream()
        .filter(resown -> resown.freed() >= 1)
        .max(Comparator.comparingDouble(Resown::freed))
        .map(this::resow);
  }

  private Resow resow(Resown resown) {
    double cost =
        plan.likely().costPerHa(resown.paddock(), resown.action(), 0)
            * farm.paddocks().get(resown.paddock()).areaHa();
    return new Resow(
        farm.paddocks().get(resown.paddock()).name(),
        plan.model().actions().get(resown.action()).key(),
        plan.model().actions().get(resown.action()).name(),
        resown.freed(),
        JoiningPlan.YEARS_TO_NEW_STAND + 1,
        cost);
  }
}
