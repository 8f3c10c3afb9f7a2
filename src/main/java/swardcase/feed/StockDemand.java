package swardcase.feed;

import java.util.List;
import java.util.function.ToDoubleFunction;
import swardcase.check.Check;
import swardcase.farm.Farm;
import swardcase.farm.HalfMonths;
import swardcase.farm.Mob;
import swardcase.farm.OtherStock;
import swardcase.tables.Tables;

/**
 * What all stock of a farm need and can eat through the year, by half-month. Immutable.
 *
 * <p>A mob conceives on one day, 17 days after joining starts, lambs 148 days later and weans after
 * the farm's weeks to weaning. Ewes in lamb carry scanned / in-lamb lambs each, as singles and
 * twins (litters above two count as twins). Lambs live independently with chance marked / scanned,
 * and those that die do so at birth, so a ewe rears none, one or two. Empty ewes, and ewes that
 * lost their lambs, stay at maintenance. Lambs count from weaning only if the farm lists them among
 * its other stock.
 *
 * <p>Potential intake is 0.028 of liveweight, raised in milk as in {@link PastureIntake}. Other
 * stock: dry sheep equivalents x 8.6 MJ, each with the appetite of a 50 kg sheep, 1.4 kg DM.
 */
public final class StockDemand {

  private final List<Mob> mobs;
  private final List<MobYear> years;
  private final double[] pregnantShareByMob;
  private final double[] eweMj = new double[HalfMonths.COUNT];
  private final double[] eweKg = new double[HalfMonths.COUNT];
  private final double[] otherMj = new double[HalfMonths.COUNT];
  private final double[] otherKg = new double[HalfMonths.COUNT];

  /**
   * Energy and appetite of all stock of the farm.
   *
   * @param pregnantShareByMob ewes in lamb as a fraction of ewes joined, in the order of the mobs
   */
  public StockDemand(Farm farm, Tables tables, EnergyMethod method, double[] pregnantShareByMob) {
    mobs = farm.mobs();
    Check.that(
        pregnantShareByMob.length == mobs.size(),
        "shares of ewes in lamb must be one for each mob, %s, but were %s",
        mobs.size(),
        pregnantShareByMob.length);
    this.pregnantShareByMob = pregnantShareByMob.clone();
    double weaningWeeks = farm.management().weaningWeeks().likely();
    years = mobs.stream().map(mob -> new MobYear(mob, tables, method, weaningWeeks)).toList();
    for (int m = 0; m < mobs.size(); m++) {
      Mob mob = mobs.get(m);
      MobYear year = years.get(m);
      double share =
          Check.inRange(pregnantShareByMob[m], 0, 1, "share of ewes in lamb of " + mob.name());
      for (int p = 0; p < HalfMonths.COUNT; p++) {
        eweMj[p] += mob.ewes() * (year.emptyMjPerDay + share * year.extraMjPerDay[p]);
        eweKg[p] += mob.ewes() * (year.emptyKgDmPerDay + share * year.extraKgDmPerDay[p]);
      }
    }
    double dseMj = tables.likely("feed.dse-energy");
    double dseKg =
        new PastureIntake(tables).potentialKgDmPerDay(tables.likely("feed.dse-liveweight"));
    for (OtherStock stock : farm.otherStock()) {
      double dse = stock.head() * stock.dsePerHead().likely();
      for (int p = 0; p < HalfMonths.COUNT; p++) {
        boolean there = stock.months().contains(HalfMonths.month(p));
        otherMj[p] += there ? dse * dseMj : 0;
        otherKg[p] += there ? dse * dseKg : 0;
      }
    }
  }

  /** Energy need of all ewe mobs, whole farm, MJ ME a day. */
  public double eweMjPerDay(int halfMonth) {
    return eweMj[halfMonth];
  }

  /** Energy need of one mob, MJ ME a day. */
  public double mobMjPerDay(int mob, int halfMonth) {
    double extra = pregnantShareByMob[mob] * inLambMjPerDay(mob, halfMonth);
    return mobs.get(mob).ewes() * years.get(mob).emptyMjPerDay + extra;
  }

  /** How many mobs of ewes there are. */
  public int mobs() {
    return mobs.size();
  }

  /** What a mob would need above empty ewes if all of it were in lamb, MJ ME a day. */
  public double inLambMjPerDay(int mob, int halfMonth) {
    return mobs.get(mob).ewes() * years.get(mob).extraMjPerDay[halfMonth];
  }

  /** What it could eat above empty ewes if all of it were in lamb, kg DM a day. */
  public double inLambAppetiteKgDmPerDay(int mob, int halfMonth) {
    return mobs.get(mob).ewes() * years.get(mob).extraKgDmPerDay[halfMonth];
  }

  /** Energy need of all ewe mobs if every ewe were empty, the same all year, MJ ME a day. */
  public double emptyEweMjPerDay() {
    return sumOverMobs(year -> year.emptyMjPerDay);
  }

  /** What they could eat if every ewe were empty, the same all year, kg DM a day. */
  public double emptyEweAppetiteKgDmPerDay() {
    return sumOverMobs(year -> year.emptyKgDmPerDay);
  }

  private double sumOverMobs(ToDoubleFunction<MobYear> ofAEwe) {
    double sum = 0;
    for (int mob = 0; mob < mobs.size(); mob++) {
      sum += mobs.get(mob).ewes() * ofAEwe.applyAsDouble(years.get(mob));
    }
    return sum;
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
}
