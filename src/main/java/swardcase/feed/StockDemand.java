package swardcase.feed;

import java.time.Month;
import swardcase.check.Check;
import swardcase.farm.Farm;
import swardcase.farm.HalfMonths;
import swardcase.farm.Mob;
import swardcase.farm.OtherStock;
import swardcase.tables.Tables;

/**
 * What all stock of a farm need and can eat through the year, by half-month.
 *
 * <p>A mob conceives on one day, 17 days after joining starts, lambs 148 days later and weans after
 * the farm's weeks to weaning; each day of the year is reckoned and averaged over its half-month.
 * Ewes in lamb carry scanned / in-lamb lambs each, as singles and twins (litters above two count as
 * twins). Lambs live independently with chance marked / scanned, and those that die do so at birth,
 * so a ewe rears none, one or two. Empty ewes, and ewes that lost their lambs, stay at maintenance.
 * Lambs count from weaning only if the farm lists them among its other stock.
 *
 * <p>Potential intake is 0.04 x liveweight x 0.7, raised in milk as in {@link PastureIntake}.
 * Other stock: dry sheep equivalents x 8.6 MJ, and the appetite of a 50 kg sheep each, 1.4 kg DM.
 */
public final class StockDemand {

  private static final int DAYS_A_WEEK = 7;

  private final double[] eweMj = new double[HalfMonths.COUNT];
  private final double[] otherMj = new double[HalfMonths.COUNT];
  private final double[] eweKg = new double[HalfMonths.COUNT];
  private final double[] otherKg = new double[HalfMonths.COUNT];

  private StockDemand() {}

  /**
   * Energy and appetite of all stock of the farm.
   *
   * @param pregnantShareByMob ewes in lamb as a fraction of ewes joined, in the order of the mobs
   */
  public static StockDemand of(
      Farm farm, Tables tables, EnergyMethod method, double[] pregnantShareByMob) {
    Check.that(
        pregnantShareByMob.length == farm.mobs().size(),
        "shares of ewes in lamb must be one for each mob, %s, but were %s",
        farm.mobs().size(),
        pregnantShareByMob.length);
    StockDemand demand = new StockDemand();
    MobYear year = new MobYear(tables, method, farm.management().weaningWeeks().likely());
    for (int m = 0; m < pregnantShareByMob.length; m++) {
      Mob mob = farm.mobs().get(m);
      Check.inRange(pregnantShareByMob[m], 0, 1, "share of ewes in lamb of " + mob.name());
      year.add(mob, pregnantShareByMob[m], demand.eweMj, demand.eweKg);
    }
    double dseMj = tables.parameter("feed.dse-energy").likely();
    double dseKg =
        new PastureIntake(tables)
            .potentialKgDmPerDay(tables.parameter("feed.dse-liveweight").likely());
    for (OtherStock stock : farm.otherStock()) {
      double dse = stock.head() * stock.dsePerHead().likely();
      for (int p = 0; p < HalfMonths.COUNT; p++) {
        Month month = HalfMonths.month(p);
        if (stock.months().contains(month)) {
          demand.otherMj[p] += dse * dseMj;
          demand.otherKg[p] += dse * dseKg;
        }
      }
    }
    return demand;
  }

  /** Energy need of all ewe mobs, whole farm, MJ ME a day. */
  public double eweMjPerDay(int halfMonth) {
    return eweMj[halfMonth];
  }

  /** Energy need of all other stock, whole farm, MJ ME a day. */
  public double otherMjPerDay(int halfMonth) {
    return otherMj[halfMonth];
  }

  /** What all ewes could eat of unlimited good pasture, whole farm, kg DM a day. */
  public double eweAppetiteKgDmPerDay(int halfMonth) {
    return eweKg[halfMonth];
  }

  /** What all other stock could eat of unlimited good pasture, whole farm, kg DM a day. */
  public double otherAppetiteKgDmPerDay(int halfMonth) {
    return otherKg[halfMonth];
  }

  /** The year of one mob, day by day. */
  private static final class MobYear {

    private final EweEnergy energy;
    private final PastureIntake intake;
    private final int conceptionDelay;
    private final int gestationDays;
    private final int milkDays;

    MobYear(Tables tables, EnergyMethod method, double weaningWeeks) {
      energy = new EweEnergy(tables, method);
      intake = new PastureIntake(tables);
      conceptionDelay = (int) Math.round(tables.parameter("feed.conception-delay").likely());
      gestationDays = (int) Math.round(tables.parameter("feed.gestation").likely());
      milkDays = (int) Math.round(weaningWeeks * DAYS_A_WEEK);
    }

    void add(Mob mob, double pregnantShare, double[] mjPerDay, double[] kgPerDay) {
      double weight = mob.liveweightKg().likely();
      double litter = mob.scanningPercent().likely() / mob.pregnantPercent().likely();
      double twins = Math.min(1, litter - 1);
      double alive = mob.markingPercent().likely() / mob.scanningPercent().likely();
      double reared1 = (1 - twins) * alive + twins * 2 * alive * (1 - alive);
      double reared2 = twins * alive * alive;
      double dryMj = energy.dryMjPerDay(weight);
      double dryKg = intake.potentialKgDmPerDay(weight);
      int conception = HalfMonths.dayOfYear(mob.joiningStart()) + conceptionDelay;
      int[] daysIn = new int[HalfMonths.COUNT];
      for (int day = 0; day < HalfMonths.DAYS; day++) {
        daysIn[HalfMonths.ofDay(day)]++;
      }
      for (int day = 0; day < HalfMonths.DAYS; day++) {
        int t = Math.floorMod(day - conception, HalfMonths.DAYS);
        double mj = dryMj;
        double kg = dryKg;
        if (t < gestationDays) {
          mj += pregnantShare * (1 - twins) * extraInLamb(weight, t, 1, dryMj);
          mj += pregnantShare * twins * extraInLamb(weight, t, 2, dryMj);
        } else if (t < gestationDays + milkDays) {
          int milkDay = t - gestationDays;
          mj += pregnantShare * reared1 * extraInMilk(weight, milkDay, 1, dryMj);
          mj += pregnantShare * reared2 * extraInMilk(weight, milkDay, 2, dryMj);
          kg += pregnantShare * reared1 * dryKg * (intake.milkFactor(milkDay, 1) - 1);
          kg += pregnantShare * reared2 * dryKg * (intake.milkFactor(milkDay, 2) - 1);
        }
        int p = HalfMonths.ofDay(day);
        mjPerDay[p] += mob.ewes() * mj / daysIn[p];
        kgPerDay[p] += mob.ewes() * kg / daysIn[p];
      }
    }

    private double extraInLamb(double weight, int day, int lambs, double dryMj) {
      return energy.pregnantMjPerDay(weight, day, energy.litterKg(weight, lambs)) - dryMj;
    }

    private double extraInMilk(double weight, int day, int lambs, double dryMj) {
      return energy.lactatingMjPerDay(weight, energy.milkKgPerDay(weight, day, lambs)) - dryMj;
    }
  }
}
