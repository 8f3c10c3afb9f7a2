package swardcase.joining;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import swardcase.RandomFarms;
import swardcase.farm.Farm;
import swardcase.farm.HalfMonths;
import swardcase.joining.JoiningPlan.Resown;
import swardcase.joining.JoiningPlan.Shift;
import swardcase.outcome.FarmModel;
import swardcase.outcome.OutcomeFunction;

/** Every way out is looked for again, one at a time, on the risky farm and on random ones. */
class WaysOutTest {

  /** A farm with everything that its ways out stand on. */
  private record Case(
      JoiningCase setting, JoiningCalendar calendar, Planner planner, Grazing best) {

    static Case of(Farm farm) {
      return of(new FarmModel(farm, RandomFarms.TABLES), 0, null);
    }

    static Case of(FarmModel model, int daysLater, double[] strengths) {
      OutcomeFunction run = model.newRun();
      double[] strength = strengths == null ? JoiningCase.cautiousStrength(model, run) : strengths;
      JoiningCase setting =
          new JoiningCase(
              model, run, strength, daysLater, new ComingYear(model, run, model.keepAll()));
      JoiningCalendar calendar = new JoiningCalendar(setting);
      Planner planner = new Planner(setting, strength);
      Grazing asNow = planner.asNow();
      Grazing best = planner.plan(asNow, planner.avoiding(calendar));
      return new Case(setting, calendar, planner, best);
    }

    double shortMj() {
      return Arrays.stream(planner.shortMj(calendar, planner.asNow())).sum();
    }

    WaysOut waysOut() {
      return new WaysOut(setting, calendar, planner, best);
    }
  }

  /** No fortnight nearer in the same direction has enough safe feed, and this one has. */
  @Test
  void otherDates_ofTheRiskyFarm_areTheNearestWithEnoughSafeFeed() {
    Case now = Case.of(RandomFarms.demo("risky-farm"));
    double missing = now.shortMj();
    List<Shift> shifts = now.waysOut().otherDates(missing);
    assertThat(missing).isPositive();
    assertThat(shifts).isNotEmpty();
    List<Integer> found = new ArrayList<>();
    for (int direction : new int[] {1, -1}) {
      for (int step = 1; step <= 4; step++) {
        Case then = Case.of(now.setting().model, direction * step * 14, now.setting().strength);
        if (then.shortMj() < 0.05 * missing) {
          found.add(direction * step * 14);
          double cost = then.planner().cost(then.best());
          Shift shift = shifts.get(found.size() - 1);
          assertThat(shift.daysLater()).isEqualTo(direction * step * 14);
          // The quick look has fewer rounds, so it may find a dearer way, never a cheaper one.
          assertThat(shift.cost()).isBetween(cost - 1e-6, 1.05 * cost + 1);
          break;
        }
      }
    }
    assertThat(shifts).hasSize(found.size());
  }

  @Test
  void resown_ofTheRiskyFarm_areItsLargestRiskyPaddocks() {
    assertResown(Case.of(RandomFarms.demo("risky-farm")));
  }

  @Test
  void resown_ofAnyFarm_areItsLargestRiskyPaddocks() {
    SplittableRandom random = new SplittableRandom(51);
    int resown = 0;
    for (int round = 0; round < 12; round++) {
      Farm farm = RandomFarms.any(random, 3);
      if (farm.ewesJoined() > 0) {
        resown += assertResown(Case.of(farm));
      }
    }
    assertThat(resown).isPositive();
  }

  private static int assertResown(Case now) {
    JoiningCase setting = now.setting();
    List<Resown> resown = now.waysOut().resown();
    List<Integer> expected = new ArrayList<>();
    for (int i = 0; i < setting.paddocks(); i++) {
      if (isRisky(now, i) && !JoiningCase.isUnknown(setting.model, setting.run, i)) {
        expected.add(i);
      }
    }
    expected.sort(Comparator.comparingDouble(i -> -setting.run.feedWeight(i)));
    List<Integer> largest =
        expected.stream().limit(6).sorted().filter(i -> weakest(now, i) >= 0).toList();
    assertThat(resown.stream().map(Resown::paddock)).isEqualTo(largest);
    for (Resown way : resown) {
      assertThat(way.action()).isEqualTo(weakest(now, way.paddock()));
      double[] strength = setting.strength.clone();
      strength[way.paddock()] = dose(now, way.paddock(), way.action());
      assertThat(strength[way.paddock()]).isLessThan(setting.strength[way.paddock()]);
      double before = now.planner().cost(now.best());
      double kept = before - new Planner(setting, strength).cost(now.best());
      // The plan as it stands frees that much at least; another plan may free more.
      assertThat(way.freed()).isBetween(Math.max(0, kept) - 1e-6, before + 1e-6);
    }
    return resown.size();
  }

  private static boolean isRisky(Case now, int paddock) {
    for (int g = 0; g < now.setting().mobs(); g++) {
      for (int p = 0; p < HalfMonths.COUNT; p++) {
        if (now.setting().halfMonths.contains(p)
            && now.calendar().isRated(g, p)
            && !now.calendar().isOpen(g, p, paddock)) {
          return true;
        }
      }
    }
    return false;
  }

  private static int weakest(Case now, int paddock) {
    FarmModel model = now.setting().model;
    double least = now.setting().strength[paddock];
    int weakest = -1;
    for (int a = 0; a < model.actions().size(); a++) {
      boolean can = model.actions().get(a).sows() && now.setting().run.allowed(paddock, a);
      if (can && dose(now, paddock, a) < least) {
        least = dose(now, paddock, a);
        weakest = a;
      }
    }
    return weakest;
  }

  private static double dose(Case now, int paddock, int action) {
    int years = Math.min(4, now.setting().model.years() - 1);
    return now.setting().run.greenDose(paddock, action, years);
  }

  /**
   * What a mob eats in a plan costs no more than feed bought, so safe feed is worth that or less.
   */
  @Test
  void worthOfSafeFeed_inThePlan_isBetweenNothingAndThePriceOfFeed() {
    Case now = Case.of(RandomFarms.demo("risky-farm"));
    Planner planner = now.planner();
    Grazing plan = planner.plan(1, planner.asNow());
    double price = now.setting().run.pricePerMj();
    double most = 0;
    for (int g = 0; g < now.setting().mobs(); g++) {
      for (int k = 0; k < now.setting().halfMonths.size(); k++) {
        double worth = planner.worthOfSafeMj(g, k, plan);
        assertThat(worth).isBetween(0.0, price);
        most = Math.max(most, worth);
      }
    }
    assertThat(most).as("where it is short, it is worth something").isGreaterThan(price / 20);
  }
}
