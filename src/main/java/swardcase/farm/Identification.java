package swardcase.farm;

import java.util.List;
import swardcase.check.Check;

/**
 * Plants of a paddock that were given one name, or could not be told apart further.
 *
 * @param candidates names in the cultivar table: one if certain, several if it may be any of them.
 *     The table's rows {@code unidentified old} and {@code unidentified} stand for the rest, those
 *     that begin with {@code unnamed} for plants known by their group alone.
 * @param plants how many plants
 */
public record Identification(List<String> candidates, double plants) {

  /** Checks that there is a name and a count. */
  public Identification {
    candidates = List.copyOf(candidates);
    Check.that(!candidates.isEmpty(), "an identification must have a name");
    Check.notNegative(plants, "plants counted");
  }
}
