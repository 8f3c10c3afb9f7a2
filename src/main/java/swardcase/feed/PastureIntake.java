package swardcase.feed;

import swardcase.check.Check;
import swardcase.tables.Tables;

/**
 * What a sheep can eat from pasture and what energy it gets, by the forms of CSIRO (2007).
 *
 * <pre>
 *   potential    = 0.04 SRW Z (1.7 - Z)                  kg DM a day, Z = W / SRW, at most 1
 *   availability = (1 - exp(-b)) (1 + 0.6 exp(-b b))     b = 0.00112 x kg DM/ha
 *   quality      = 1 - 1.7 (0.8 - D) + 0.17 L            D digestibility, L legume share
 *   in milk      = 1 + p m^1.4 exp(1.4 (1 - m))          m = days in milk / 28, p 0.577 or 0.9
 *   M/D          = 0.172 x D in per cent - 1.707         MJ ME/kg DM
 * </pre>
 *
 * <p>Intake is potential x availability x quality. Quality is not let below 0. Worked numbers: 50
 * kg in store condition can eat 1.4 kg; availability at 1,000 kg DM/ha is 0.789; M/D at 40 % is
 * 5.17 and at 80 % 12.05.
 */
public final class PastureIntake {

  private static final double HIGHEST_B = 12;
  private static final int CELLS_PER_B = 512;

  private final Tables tables;
  private final double availabilityPerKg;
  private final double availabilityRise;
  private final double qualitySlope;
  private final double qualityFull;
  private final double legumeRise;
  private final double energySlope;
  private final double energyAtZero;
  private final double[] availabilityTable;

  /** Reads the coefficients once. */
  public PastureIntake(Tables tables) {
    this.tables = tables;
    availabilityPerKg = tables.likely("feed.intake-availability");
    availabilityRise = tables.likely("feed.intake-availability-rise");
    qualitySlope = tables.likely("feed.intake-quality-slope");
    qualityFull = tables.likely("feed.intake-quality-full");
    legumeRise = tables.likely("feed.intake-legume");
    energySlope = tables.likely("feed.forage-energy-slope");
    energyAtZero = tables.likely("feed.forage-energy-intercept");
    availabilityTable = availabilityTable();
  }

  /** Potential intake of a dry sheep in store condition, kg DM a day: Z = 1. */
  public double potentialKgDmPerDay(double liveweightKg) {
    Check.positive(liveweightKg, "liveweight");
    return tables.likely("feed.intake-potential")
        * liveweightKg
        * (tables.likely("feed.intake-size") - 1);
  }

  /** How much more a ewe in milk can eat: 1.577 with one lamb on day 28. */
  public double milkFactor(double daysInMilk, int lambsReared) {
    Check.notNegative(daysInMilk, "days in milk");
    Check.inRange(lambsReared, 0, 2, "lambs reared");
    double m = daysInMilk / tables.likely("feed.intake-milk-peak-day");
    double shape = tables.likely("feed.intake-milk-shape");
    if (lambsReared == 0) {
      return 1;
    }
    String rise = lambsReared == 1 ? "feed.intake-milk-single" : "feed.intake-milk-twins";
    return 1 + tables.likely(rise) * Math.pow(m, shape) * Math.exp(shape * (1 - m));
  }

  /**
   * Availability of feed on offer, 0 to 1, unchecked and read from a table, for it is asked for in
   * every step of a run. The table has 512 cells to a unit of b; in a cell it is the cubic with the
   * right value and slope at both ends, within 1e-12 of the equation. Above b = 12, some 10,000 kg
   * DM/ha, it is 1, within 1e-5.
   */
  public double availability(double kgDmPerHa) {
    double position = availabilityPerKg * CELLS_PER_B * kgDmPerHa;
    if (position >= HIGHEST_B * CELLS_PER_B) {
      return 1;
    }
    int at = 4 * (int) position;
    double t = position - (int) position;
    double[] cubic = availabilityTable;
    return cubic[at] + t * cubic[at + 1] + t * t * (cubic[at + 2] + t * cubic[at + 3]);
  }

  /** How much availability rises with a further kg DM/ha, from the same table. */
  double availabilitySlope(double kgDmPerHa) {
    double position = availabilityPerKg * CELLS_PER_B * kgDmPerHa;
    if (position >= HIGHEST_B * CELLS_PER_B) {
      return 0;
    }
    int at = 4 * (int) position;
    double t = position - (int) position;
    double[] cubic = availabilityTable;
    double slope = cubic[at + 1] + t * (2 * cubic[at + 2] + t * 3 * cubic[at + 3]);
    return slope * (availabilityPerKg * CELLS_PER_B);
  }

  private double[] availabilityTable() {
    double[] table = new double[4 * (int) (HIGHEST_B * CELLS_PER_B)];
    for (int at = 0; at < table.length; at += 4) {
      double left = (double) (at / 4) / CELLS_PER_B;
      double right = (double) (at / 4 + 1) / CELLS_PER_B;
      double rise = availabilityAt(right) - availabilityAt(left);
      double slope = availabilitySlopeAt(left) / CELLS_PER_B;
      double end = availabilitySlopeAt(right) / CELLS_PER_B;
      table[at] = availabilityAt(left);
      table[at + 1] = slope;
      table[at + 2] = 3 * rise - 2 * slope - end;
      table[at + 3] = slope + end - 2 * rise;
    }
    return table;
  }

  private double availabilityAt(double b) {
    return (1 - Math.exp(-b)) * (1 + availabilityRise * Math.exp(-b * b));
  }

  private double availabilitySlopeAt(double b) {
    double bell = availabilityRise * Math.exp(-b * b);
    return Math.exp(-b) * (1 + bell) - (1 - Math.exp(-b)) * 2 * b * bell;
  }

  /**
   * Effect of quality on intake, from {@code digestibility} and {@code legumeShare} as fractions.
   */
  public double quality(double digestibility, double legumeShare) {
    Check.inRange(digestibility, 0, 1, "digestibility");
    Check.inRange(legumeShare, 0, 1, "legume share");
    return withLegume(qualityOfGrass(digestibility), legumeShare);
  }

  /** Quality of feed without a legume, which may be below 0. */
  double qualityOfGrass(double digestibility) {
    return 1 - qualitySlope * (qualityFull - digestibility);
  }

  /** The same feed with so much legume. */
  double withLegume(double qualityOfGrass, double legumeShare) {
    return Math.max(0, qualityOfGrass + legumeRise * legumeShare);
  }

  /** Metabolisable energy of forage, MJ/kg DM, never below 0. */
  public double energyMjPerKgDm(double digestibility) {
    Check.inRange(digestibility, 0, 1, "digestibility");
    return Math.max(0, energySlope * 100 * digestibility + energyAtZero);
  }
}
