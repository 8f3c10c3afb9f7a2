package swardcase.tables;

import java.time.Month;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.TreeMap;
import swardcase.check.Check;
import swardcase.evidence.Assumption;
import swardcase.evidence.Evidence;
import swardcase.evidence.SetBy;
import swardcase.farm.SeasonType;

/**
 * Pasture growth of a district, or that of a farm which gives numbers of its own.
 *
 * @param name the key, or what the farm calls its numbers
 * @param seasons twelve values, January to December, kg dry matter per ha and day, of the average
 *     season and of each other kind that is told
 * @param winterMonths the months of its winter
 * @param quality key into the pasture quality table
 * @param evidence how well the twelve values are supported
 * @param source key into the sources table
 * @param setBy the program's table or the user's
 * @param breakMoves half-months by which the break comes later in a poor season, earlier in a good
 *     one, where it is told
 * @param rainMmPerYear rain, if it is known
 * @param greenMonths months of green growth in an average season, if they are told
 * @param unknownHighChance chance that clover of unknown formononetin is high in it, 0 to 1
 */
public record District(
    String name,
    Map<SeasonType, List<Double>> seasons,
    List<Month> winterMonths,
    String quality,
    Evidence evidence,
    String source,
    SetBy setBy,
    Map<SeasonType, Assumption> breakMoves,
    OptionalInt rainMmPerYear,
    OptionalInt greenMonths,
    Optional<Assumption> unknownHighChance) {

  /** Checks shapes. */
  public District {
    Check.notBlank(name, "name of a district");
    seasons = Collections.unmodifiableMap(new TreeMap<>(seasons));
    breakMoves = Collections.unmodifiableMap(new TreeMap<>(breakMoves));
    winterMonths = List.copyOf(winterMonths);
    Check.that(seasons.containsKey(SeasonType.AVERAGE), "growth of %s must be given", name);
    for (List<Double> months : seasons.values()) {
      Check.that(months.size() == 12, "growth of %s must have 12 months", name);
    }
    Check.that(!winterMonths.isEmpty(), "%s must have a winter month", name);
  }

  /** The twelve values of the average season. */
  public List<Double> growthKgDmPerHaPerDay() {
    return seasons.get(SeasonType.AVERAGE);
  }

  /** Half-months by which the break moves in a kind of season. */
  public Optional<Assumption> breakMoves(SeasonType type) {
    return Optional.ofNullable(breakMoves.get(type));
  }
}
