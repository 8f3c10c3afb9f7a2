package swardcase.joining;

import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import swardcase.chance.SideBySide;
import swardcase.joining.JoiningPlan.Resown;
import swardcase.joining.JoiningPlan.Shift;
import swardcase.outcome.OutcomeFunction;

/** What else could be done about risky paddocks: another date of joining, a paddock resown. */
final class WaysOut {

  private static final int DAYS_OF_STEP = 14;
  private static final int FORTNIGHTS = JoiningPlan.MOST_WEEKS_MOVED / 2;
  private static final double SHORT_NO_MORE = 0.05;
  private static final int QUICK_ROUNDS = 2;
  private static final int MOST_RESOWN = 6;

  private final JoiningCase setting;
  private final JoiningCalendar calendar;
  private final Planner planner;
  private final Grazing best;

  /** Measured against {@code best}, the plan of {@code planner}. */
  WaysOut(JoiningCase setting, JoiningCalendar calendar, Planner planner, Grazing best) {
    this.setting = setting;
    this.calendar = calendar;
    this.planner = planner;
    this.best = best;
  }

  /**
   * The nearest later and the nearest earlier date at which safe feed is not short. Works with runs
   * of its own, so that a thread may look while another one looks at something else.
   */
  List<Shift> otherDates(double shortMj) {
    return SideBySide.of(Stream.of(1, -1))
        .map(direction -> nearest(direction, shortMj))
        .flatMap(Optional::stream)
        .toList();
  }

  /** The largest risky paddocks that could be resown to weaker clover, in the farm's order. */
  List<Resown> resown() {
    return candidates().stream().map(this::resow).flatMap(Optional::stream).toList();
  }

  /** Looks later or earlier by fortnights for the nearest date at which safe feed suffices. */
  private Optional<Shift> nearest(int direction, double shortMj) {
    OutcomeFunction run = setting.model.newRun();
    for (int step = 1; step <= FORTNIGHTS; step++) {
      int days = direction * step * DAYS_OF_STEP;
      JoiningCase then =
          new JoiningCase(setting.model, run, setting.strength, days, setting.coming);
      JoiningCalendar rated = new JoiningCalendar(then);
      Planner planned = new Planner(then, then.strength);
      Grazing asNow = planned.asNow();
      double missing = Arrays.stream(planned.shortMj(rated, asNow)).sum();
      if (missing < SHORT_NO_MORE * shortMj) {
        Grazing way = planned.plan(QUICK_ROUNDS, asNow, planned.avoiding(rated));
        return Optional.of(new Shift(days, planned.cost(way)));
      }
    }
    return Optional.empty();
  }

  /** The risky paddocks that give most feed; resowing a small one frees little. */
  private List<Integer> candidates() {
    return IntStream.range(0, setting.paddocks())
        .filter(i -> !JoiningCase.isUnknown(setting.model, setting.run, i) && everRisky(i))
        .boxed()
        .sorted(Comparator.comparingDouble(i -> -setting.run.feedWeight(i)))
        .limit(MOST_RESOWN)
        .sorted()
        .toList();
  }

  private Optional<Resown> resow(int paddock) {
    int chosen = -1;
    int years = Math.min(JoiningPlan.YEARS_TO_NEW_STAND, setting.model.years() - 1);
    double weakest = setting.strength[paddock];
    for (int a = 0; a < setting.model.actions().size(); a++) {
      if (setting.model.actions().get(a).sows() && setting.run.allowed(paddock, a)) {
        double dose = setting.run.greenDose(paddock, a, years);
        if (dose < weakest) {
          weakest = dose;
          chosen = a;
        }
      }
    }
    if (chosen < 0) {
      return Optional.empty();
    }
    double[] strength = setting.strength.clone();
    strength[paddock] = weakest;
    JoiningCalendar then = calendar.with(paddock, weakest);
    Planner plan = new Planner(setting, strength);
    Grazing asNow = plan.asNow();
    Grazing with = plan.plan(QUICK_ROUNDS, asNow, plan.avoiding(then), best);
    double freed = planner.cost(best) - plan.cost(with);
    return Optional.of(new Resown(paddock, chosen, Math.max(0, freed)));
  }

  private boolean everRisky(int paddock) {
    for (int g = 0; g < setting.mobs(); g++) {
      for (int p : setting.halfMonths) {
        if (calendar.isRated(g, p) && !calendar.isOpen(g, p, paddock)) {
          return true;
        }
      }
    }
    return false;
  }
}
