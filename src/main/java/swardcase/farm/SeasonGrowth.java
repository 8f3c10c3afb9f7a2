package swardcase.farm;

import java.util.List;
import swardcase.check.Check;
import swardcase.evidence.Assumption;
import swardcase.evidence.Evidence;
import swardcase.evidence.SetBy;

/**
 * Pasture growth in one kind of season.
 *
 * @param type poor, average or good
 * @param chance how often such a season comes, 0 to 1: one year in four is 0.25
 * @param growthKgDmPerHaPerDay twelve values, January to December, kg dry matter per ha and day
 * @param evidence how well the twelve values are supported
 * @param source key into the sources table, or blank
 * @param setBy who set the twelve values
 */
public record SeasonGrowth(
    SeasonType type,
    Assumption chance,
    List<Double> growthKgDmPerHaPerDay,
    Evidence evidence,
    String source,
    SetBy setBy) {

  /** Checks shape and sign. */
  public SeasonGrowth {
    Check.notNull(type, "season type");
    Check.inRange(chance.likely(), 0, 1, "chance of a " + type.label() + " season");
    growthKgDmPerHaPerDay = List.copyOf(growthKgDmPerHaPerDay);
    Check.that(growthKgDmPerHaPerDay.size() == 12, "growth must have 12 months");
    growthKgDmPerHaPerDay.forEach(growth -> Check.inRange(growth, 0, 250, "daily growth"));
    Check.notNull(evidence, "evidence");
    Check.notNull(source, "source");
    Check.notNull(setBy, "origin");
  }
}
