package swardcase.farm;

import java.time.MonthDay;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import swardcase.check.Check;

/**
 * What the farm wrote down of one mob in one year. What is empty is unknown, never nothing.
 *
 * @param year calendar year of the joining
 * @param mob name of the mob
 * @param ewesJoined ewes joined
 * @param inLamb of them in lamb
 * @param lambsMarked lambs marked from them
 * @param joiningStart the day the rams went in, where it was another than now
 * @param grazedBefore names of the paddocks they grazed in the weeks before and during joining;
 *     empty if that is not known, and then they are taken to have grazed as now
 * @param supplementTonnes supplement fed on the whole farm in that year, t as fed
 * @param season how the year's season was
 */
public record FlockRecord(
    int year,
    String mob,
    int ewesJoined,
    OptionalInt inLamb,
    OptionalInt lambsMarked,
    Optional<MonthDay> joiningStart,
    List<String> grazedBefore,
    OptionalDouble supplementTonnes,
    Optional<SeasonType> season) {

  /** Checks the counts. */
  public FlockRecord {
    Check.notBlank(mob, "mob of a record");
    Check.that(ewesJoined > 0, "ewes joined must be more than zero, but was %s", ewesJoined);
    Check.that(
        inLamb.orElse(0) >= 0 && inLamb.orElse(0) <= ewesJoined,
        "ewes in lamb must be from 0 to the %s joined",
        ewesJoined);
    Check.notNegative(lambsMarked.orElse(0), "lambs marked");
    grazedBefore = List.copyOf(grazedBefore);
    Check.notNegative(supplementTonnes.orElse(0), "supplement fed");
  }

  /** Whether it says how many ewes were in lamb, or how many lambs there were. */
  public boolean tellsLambs() {
    return inLamb.isPresent() || lambsMarked.isPresent();
  }
}
