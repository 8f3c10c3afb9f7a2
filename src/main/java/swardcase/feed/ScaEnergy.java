package swardcase.feed;

import swardcase.check.Check;
import swardcase.tables.Tables;

/**
 * Maintenance, grazing and milk by the Standing Committee on Agriculture (1990), <i>Feeding
 * Standards for Australian Livestock: Ruminants</i>, and its successor CSIRO (2007), <i>Nutrient
 * Requirements of Domesticated Ruminants</i>.
 *
 * <pre>
 *   km = 0.02 M/D + 0.5              kl = 0.02 M/D + 0.4
 *   maintenance = 0.28 W^0.75 exp(-0.03 age) / km                  MJ ME a day, age at most 6 years
 *   grazing = [0.05 DMI (0.9 - D) + 0.05 T / (GF + 3)] W / km
 *   each MJ ME for conceptus and milk raises maintenance by 0.1 MJ
 * </pre>
 *
 * <p>W liveweight kg; DMI pasture eaten, kg DM a day; D its digestibility; T terrain, 1 level to 2
 * hilly; GF green forage, t DM/ha. Cold is left out: exposed ewes need more. Worked number: 50 kg,
 * 4 years, M/D 10: 4.6695 MJ net, 6.67 MJ ME; with DMI 1 kg, D 0.68, T 1, GF 1.5 grazing adds 1.58.
 */
public final class ScaEnergy {

  private final Tables tables;

  /** With the coefficients of these tables. */
  public ScaEnergy(Tables tables) {
    this.tables = tables;
  }

  /** Net energy of maintenance before the efficiency, MJ a day; age is capped at 6 years. */
  public double fastingMjPerDay(double liveweightKg, double ageYears) {
    Check.positive(liveweightKg, "liveweight");
    Check.notNegative(ageYears, "age in years");
    double age = Math.min(ageYears, tables.likely("feed.sca-age-cap"));
    return tables.likely("feed.sca-fasting")
        * Math.pow(liveweightKg, tables.likely("feed.metabolic-power"))
        * Math.exp(-tables.likely("feed.sca-age-decline") * age);
  }

  /** Maintenance without grazing, MJ ME a day. */
  public double maintenanceMjPerDay(double liveweightKg, double ageYears, double energyMjPerKgDm) {
    return fastingMjPerDay(liveweightKg, ageYears) / maintenanceEfficiency(energyMjPerKgDm);
  }

  /** What grazing adds by the 1990 form, MJ ME a day. */
  public double grazing1990MjPerDay(
      double liveweightKg, GrazingConditions grazing, double intakeKgDmPerDay) {
    double indigestible = tables.likely("feed.sca-eating-digestibility") - grazing.digestibility();
    double green = grazing.greenTonnesPerHa() + tables.likely("feed.sca-walking-green-offset");
    double walking = tables.likely("feed.sca-walking-cost") * grazing.terrain() / green;
    double eating = tables.likely("feed.sca-eating-cost") * intakeKgDmPerDay * indigestible;
    return (eating + walking) * liveweightKg / maintenanceEfficiency(grazing.energyMjPerKgDm());
  }

  /** Milk, MJ ME a day, before the rise of maintenance it brings. */
  public double milkMjPerDay(double milkKgPerDay, double energyMjPerKgDm) {
    Check.notNegative(milkKgPerDay, "milk");
    double net = milkKgPerDay * tables.likely("feed.sca-milk-energy");
    return net
        / (tables.likely("feed.sca-efficiency-slope") * energyMjPerKgDm
            + tables.likely("feed.sca-kl"));
  }

  /** Energy for conceptus or milk with the rise of maintenance it brings: 10 MJ become 11. */
  public double withProductionCost(double productionMjPerDay) {
    return productionMjPerDay * (1 + tables.likely("feed.sca-production-cost"));
  }

  private double maintenanceEfficiency(double energyMjPerKgDm) {
    Check.inRange(energyMjPerKgDm, 4, 14, "energy of the feed");
    return tables.likely("feed.sca-efficiency-slope") * energyMjPerKgDm
        + tables.likely("feed.sca-km");
  }
}
