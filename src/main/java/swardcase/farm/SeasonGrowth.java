package swardcase.farm;

import java.util.List;
import java.util.Optional;
import swardcase.check.Check;
import swardcase.evidence.Assumption;
import swardcase.evidence.Evidence;
import swardcase.evidence.SetBy;

/**
 * Pasture growth in one kind of season.
 *
 * @param type poor, average or good
 * @param chance how often such a season comes, 0 to 1: one year in four is 0.25
 * @param growthKgDmPerHaPerDay twelve values, January to December, kg dry matter per ha and day, as
 *     they would be with the break of a usual year
 * @param breakMoves half-months by which the break comes later in a poor season, earlier in a good
 *     one; empty where the twelve values already say when it comes
 * @param evidence how well the twelve values are supported
 * @param source key into the sources table, or blank
 * @param setBy who set the twelve values
 */
public record SeasonGrowth(
    SeasonType type,
    Assumption chance,
    List<Double> growthKgDmPerHaPerDay,
    Optional<Assumption> breakMoves,
    Evidence evidence,
    String source,
    SetBy setBy) {

  /** Checks shape and sign. */
  public SeasonGrowth {
    Check.inRange(chance.likely(), 0, 1, "chance of a " + type.label() + " season");
    growthKgDmPerHaPerDay = List.copyOf(growthKgDmPerHaPerDay);
    Check.that(growthKgDmPerHaPerDay.size() == 12, "growth must have 12 months");
    growthKgDmPerHaPerDay.forEach(growth -> Check.inRange(growth, 0, 250, "daily growth"));
    Check.that(
        breakMoves.isEmpty() || type.laterBreak() != 0, "the break of an average season is usual");
    breakMoves.ifPresent(moves -> Check.notNegative(moves.range().low(), "move of the break"));
  }

  /** Half-months by which the break likely comes later than usual; negative is earlier. */
  public double breakLater() {
    return breakMoves.map(moves -> type.laterBreak() * moves.likely()).orElse(0d);
  }
}
