package swardcase.feed;

import swardcase.check.Check;
import swardcase.tables.Tables;

/**
 * Energy that pregnancy takes, by the Gompertz curve that both energy systems share.
 *
 * <pre>
 *   log10 E(t) = a - b exp(-c t)              E, MJ in the gravid uterus, for 4 kg of lamb born
 *   dE/dt      = ln(10) b c exp(-c t) E(t)    MJ a day
 *   ME         = (litter kg / 4) dE/dt / kc   MJ of metabolisable energy a day
 * </pre>
 *
 * <p>a 3.322, b 4.979, c 0.00643 a day, kc 0.133 (Agricultural and Food Research Council 1993; the
 * same curve in natural logarithms is in CSIRO 2007). Meant for 60 to 147 days from conception;
 * earlier days are extrapolated and give less than half a megajoule. Worked number: 4 kg of lamb on
 * day 133 asks 3.78 MJ ME a day.
 */
public final class Conceptus {

  private final Tables tables;

  /** With the coefficients of these tables. */
  public Conceptus(Tables tables) {
    this.tables = tables;
  }

  /** Energy in the gravid uterus on a day from conception, MJ, for a litter of 4 kg at birth. */
  public double energyMj(double daysFromConception) {
    Check.inRange(daysFromConception, 0, 160, "days from conception");
    double drop = tables.likely("feed.conceptus-log-drop");
    double rate = tables.likely("feed.conceptus-rate");
    return Math.pow(
        10,
        tables.likely("feed.conceptus-log-limit") - drop * Math.exp(-rate * daysFromConception));
  }

  /** Energy laid down a day, MJ net; {@code litterKg} is the birth weight of all lambs together. */
  public double retainedMjPerDay(double daysFromConception, double litterKg) {
    Check.notNegative(litterKg, "litter weight");
    double drop = tables.likely("feed.conceptus-log-drop");
    double rate = tables.likely("feed.conceptus-rate");
    double perDayOfCurve =
        Math.log(10)
            * drop
            * rate
            * Math.exp(-rate * daysFromConception)
            * energyMj(daysFromConception);
    return litterKg / tables.likely("feed.conceptus-litter") * perDayOfCurve;
  }

  /** Metabolisable energy the litter asks for, MJ ME a day. */
  public double needMjPerDay(double daysFromConception, double litterKg) {
    return retainedMjPerDay(daysFromConception, litterKg)
        / tables.likely("feed.conceptus-efficiency");
  }
}
