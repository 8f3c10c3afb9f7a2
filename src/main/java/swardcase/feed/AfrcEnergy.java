package swardcase.feed;

import swardcase.check.Check;
import swardcase.tables.Tables;

/**
 * Maintenance and milk by the Agricultural and Food Research Council (1993), <i>Energy and Protein
 * Requirements of Ruminants</i>.
 *
 * <pre>
 *   q  = M/D / GE                    metabolisability, GE 18.4 MJ/kg DM
 *   km = 0.35 q + 0.503              kl = 0.35 q + 0.420
 *   F  = 0.23 (W / 1.08)^0.75        fasting heat of a ewe over a year old, MJ a day
 *   A  = activity W                  0.0107 lowland, 0.0240 hill, 0.0054 housed, MJ a day
 *   maintenance = (F + A) / km       milk = kg x 4.6 / kl        MJ ME a day
 * </pre>
 *
 * <p>Valid for q from 0.35 to 0.75, that is M/D 6.5 to 13.8; outside it is refused. The correction
 * for level of feeding and the 5 % safety margin of the printed tables are left out. Worked number:
 * 50 kg, M/D 10, lowland: F 4.082, A 0.535, km 0.6932, maintenance 6.66 MJ.
 */
public final class AfrcEnergy {

  /** Where the ewe lives, which sets what walking and standing cost. */
  public enum Activity {
    /** Housed. */
    HOUSED("feed.afrc-activity-housed"),
    /** Outdoors on lowland. */
    LOWLAND("feed.afrc-activity-lowland"),
    /** Outdoors on hills. */
    HILL("feed.afrc-activity-hill");

    private final String key;

    Activity(String key) {
      this.key = key;
    }
  }

  private final Tables tables;

  /** With the coefficients of these tables. */
  public AfrcEnergy(Tables tables) {
    this.tables = tables;
  }

  /** Fasting heat F, MJ a day, of a ewe over a year old. */
  public double fastingMjPerDay(double liveweightKg) {
    Check.positive(liveweightKg, "liveweight");
    double scaled = liveweightKg / tables.likely("feed.afrc-weight-scale");
    return tables.likely("feed.afrc-fasting")
        * Math.pow(scaled, tables.likely("feed.metabolic-power"));
  }

  /** Efficiency of maintenance, km, on feed of {@code energyMjPerKgDm}. */
  public double maintenanceEfficiency(double energyMjPerKgDm) {
    return efficiency("feed.afrc-km", energyMjPerKgDm);
  }

  /** Maintenance with activity, MJ ME a day. */
  public double maintenanceMjPerDay(
      double liveweightKg, double energyMjPerKgDm, Activity activity) {
    double net = fastingMjPerDay(liveweightKg) + tables.likely(activity.key) * liveweightKg;
    return net / maintenanceEfficiency(energyMjPerKgDm);
  }

  /** Milk, MJ ME a day. */
  public double milkMjPerDay(double milkKgPerDay, double energyMjPerKgDm) {
    Check.notNegative(milkKgPerDay, "milk");
    double net = milkKgPerDay * tables.likely("feed.afrc-milk-energy");
    return net / efficiency("feed.afrc-kl", energyMjPerKgDm);
  }

  private double efficiency(String atZero, double energyMjPerKgDm) {
    double metabolisability =
        Check.inRange(
            energyMjPerKgDm / tables.likely("feed.gross-energy"),
            0.35,
            0.75,
            "metabolisability of the feed");
    return tables.likely("feed.afrc-efficiency-slope") * metabolisability + tables.likely(atZero);
  }
}
