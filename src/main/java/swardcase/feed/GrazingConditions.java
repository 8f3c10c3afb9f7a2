package swardcase.feed;

import swardcase.check.Check;
import swardcase.tables.Tables;

/**
 * The pasture on which maintenance of grazing sheep is reckoned.
 *
 * @param terrain 1 level, 1.5 undulating, 2 hilly
 * @param greenTonnesPerHa green forage, t DM/ha
 * @param intakeShare pasture eaten a day as a fraction of liveweight: 2 % is 0.02
 * @param digestibility of what is eaten, fraction
 * @param energyMjPerKgDm metabolisable energy of what is eaten, MJ/kg DM
 */
public record GrazingConditions(
    double terrain,
    double greenTonnesPerHa,
    double intakeShare,
    double digestibility,
    double energyMjPerKgDm) {

  /** Checks ranges. */
  public GrazingConditions {
    Check.inRange(terrain, 1, 2, "terrain");
    Check.inRange(greenTonnesPerHa, 0, 20, "green forage, t DM/ha");
    Check.inRange(intakeShare, 0, 0.1, "intake as a share of liveweight");
    Check.inRange(digestibility, 0.3, 0.9, "digestibility");
    Check.inRange(energyMjPerKgDm, 4, 14, "energy of the feed");
  }

  /** The table's conditions: level ground, 1.5 t green, 2 % of liveweight, D 0.68, M/D 10. */
  public static GrazingConditions of(Tables tables) {
    return new GrazingConditions(
        tables.likely("feed.grazing-terrain"),
        tables.likely("feed.grazing-green"),
        tables.likely("feed.grazing-intake-share"),
        tables.likely("feed.grazing-digestibility"),
        tables.likely("feed.grazing-energy"));
  }
}
