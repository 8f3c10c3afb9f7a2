package swardcase.outcome;

import swardcase.farm.Action;
import swardcase.farm.ActionKind;
import swardcase.farm.ActionNumber;
import swardcase.tables.Tables;

/**
 * How long an action goes on changing a paddock, at likely numbers. What is begun must be paid for
 * within the years counted, so that an action may start only where its last change lies among them.
 *
 * <p>A year differs from what follows for good if growth, mean over sowings that take and that
 * fail, is more than 5 % away from that of the full stand, or if more than 5 % of the cost of a
 * sowing is expected in it. Run-down years and the sowing year always differ. A sowing after three
 * crops that takes in 80 % of cases, with growth of 62 and 90 % in its first two years: the year
 * after sowing grows 0.8 x 90 + 0.2 x 62 = 84 % and bears a fifth of the cost again, the year after
 * that grows 0.8 x 100 + 0.2 x 90 = 98 %. The last change is then in year 4 from the start.
 *
 * <p>Where grass was drilled in, clover differs as long as more than 5 % of its share is missing:
 * with 0.62 of it left and a recovery of three years, 0.38 exp(-6/3) = 5.1 % six years later.
 *
 * <p>After crops alone the first year back is the last that differs, as the clover is still thin.
 *
 * <p>How the old clover fades over many years is not counted: it never comes to an end.
 */
final class LastChange {

  private static final double NOTICEABLE = 0.05;

  private LastChange() {}

  /** Years from the start to the last one that differs; 0 for an action that is alike for good. */
  static int of(Action action, Tables tables) {
    if (action.kind() == ActionKind.THIN) {
      double missing = 1 - tables.parameter(StandYears.THINNED_CLOVER).likely();
      double years = tables.parameter(StandYears.THINNED_YEARS).likely();
      return (int) Math.max(0, Math.ceil(years * Math.log(missing / NOTICEABLE)) - 1);
    }
    int last = action.changesStand() ? action.runDownYears() : 0;
    if (action.sows()) {
      for (int age = 1; age <= ActionPaths.YEARS_TO_FULL + ActionPaths.MOST_FAILURES; age++) {
        if (differs(action, age)) {
          last = action.runDownYears() + age;
        }
      }
    }
    return last;
  }

  private static boolean differs(Action action, int yearsAfterSowing) {
    double takes = action.number(ActionNumber.ESTABLISHMENT_CHANCE).likely();
    double growth = 0;
    double sowing = 0;
    double left = 1;
    for (int failed = 0; failed <= ActionPaths.MOST_FAILURES; failed++) {
      double share = failed == ActionPaths.MOST_FAILURES ? left : left * takes;
      int age = Math.max(0, yearsAfterSowing - failed);
      growth += share * growth(action, age);
      sowing += yearsAfterSowing <= failed ? share : 0;
      left -= share;
    }
    return Math.abs(1 - growth) > NOTICEABLE || sowing > NOTICEABLE;
  }

  private static double growth(Action action, int age) {
    return switch (age) {
      case 0 -> action.number(ActionNumber.GROWTH_YEAR_ONE).likely();
      case 1 -> action.number(ActionNumber.GROWTH_YEAR_TWO).likely();
      default -> 1;
    };
  }
}
