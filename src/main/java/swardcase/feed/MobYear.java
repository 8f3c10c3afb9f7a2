package swardcase.feed;

import swardcase.farm.HalfMonths;
import swardcase.farm.Mob;
import swardcase.tables.Tables;

/**
 * The year of one ewe of a mob, day by day, averaged over half-months: what she needs and can eat
 * if she stays empty, and what being in lamb adds to it.
 */
final class MobYear {

  private static final int DAYS_A_WEEK = 7;

  /** An empty ewe, MJ ME a day, the same all year. */
  final double emptyMjPerDay;

  /** Potential intake of an empty ewe, kg DM a day, the same all year. */
  final double emptyKgDmPerDay;

  /** What a ewe in lamb, and later in milk, needs above an empty one, MJ ME a day. */
  final double[] extraMjPerDay = new double[HalfMonths.COUNT];

  /** What she could eat above an empty one, kg DM a day. */
  final double[] extraKgDmPerDay = new double[HalfMonths.COUNT];

  private final EweEnergy energy;
  private final PastureIntake intake;
  private final double weightKg;

  MobYear(Mob mob, Tables tables, EnergyMethod method, double weaningWeeks) {
    energy = new EweEnergy(tables, method);
    intake = new PastureIntake(tables);
    weightKg = mob.liveweightKg().likely();
    emptyMjPerDay = energy.dryMjPerDay(weightKg);
    emptyKgDmPerDay = intake.potentialKgDmPerDay(weightKg);
    double twins = Math.min(1, mob.scanningPercent().likely() / mob.pregnantPercent().likely() - 1);
    double alive = mob.markingPercent().likely() / mob.scanningPercent().likely();
    double rearsOne = (1 - twins) * alive + twins * 2 * alive * (1 - alive);
    double rearsTwo = twins * alive * alive;
    int conception =
        HalfMonths.dayOfYear(mob.joiningStart())
            + (int) Math.round(tables.likely("feed.conception-delay"));
    int gestation = (int) Math.round(tables.likely("feed.gestation"));
    int milkDays = (int) Math.round(weaningWeeks * DAYS_A_WEEK);
    int[] daysIn = new int[HalfMonths.COUNT];
    for (int day = 0; day < HalfMonths.DAYS; day++) {
      int p = HalfMonths.ofDay(day);
      int t = Math.floorMod(day - conception, HalfMonths.DAYS);
      daysIn[p]++;
      if (t < gestation) {
        extraMjPerDay[p] += (1 - twins) * inLambMj(t, 1) + twins * inLambMj(t, 2);
      } else if (t < gestation + milkDays) {
        int d = t - gestation;
        extraMjPerDay[p] += rearsOne * inMilkMj(d, 1) + rearsTwo * inMilkMj(d, 2);
        extraKgDmPerDay[p] += rearsOne * inMilkKg(d, 1) + rearsTwo * inMilkKg(d, 2);
      }
    }
    for (int p = 0; p < HalfMonths.COUNT; p++) {
      extraMjPerDay[p] /= daysIn[p];
      extraKgDmPerDay[p] /= daysIn[p];
    }
  }

  private double inLambMj(int daysFromConception, int lambs) {
    double litterKg = energy.litterKg(weightKg, lambs);
    return energy.pregnantMjPerDay(weightKg, daysFromConception, litterKg) - emptyMjPerDay;
  }

  private double inMilkMj(int daysInMilk, int lambs) {
    double milkKg = energy.milkKgPerDay(weightKg, daysInMilk, lambs);
    return energy.lactatingMjPerDay(weightKg, milkKg) - emptyMjPerDay;
  }

  private double inMilkKg(int daysInMilk, int lambs) {
    return emptyKgDmPerDay * (intake.milkFactor(daysInMilk, lambs) - 1);
  }
}
