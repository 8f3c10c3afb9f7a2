package swardcase.farm;

import java.time.MonthDay;
import java.util.List;
import swardcase.check.Check;
import swardcase.evidence.Assumption;
import swardcase.evidence.SetBy;

/**
 * A mob of ewes that is joined together.
 *
 * @param name the mob's name
 * @param ewes ewes joined
 * @param ageShares share of the ewes by number of joinings, this one included: first the maidens;
 *     sums to 1
 * @param agesSetBy who set the shares
 * @param liveweightKg liveweight of a ewe in store condition, kg
 * @param joiningStart the day the rams go in
 * @param joiningWeeks how long they stay
 * @param pregnantPercent ewes in lamb per 100 joined
 * @param scanningPercent lambs scanned per 100 ewes joined
 * @param markingPercent lambs marked per 100 ewes joined
 * @param scanningBasis whether these three figures hide the paddocks' effect or show it
 * @param mayMove whether the mob may be put on paddocks that it does not use now
 */
public record Mob(
    String name,
    int ewes,
    List<Double> ageShares,
    SetBy agesSetBy,
    Assumption liveweightKg,
    MonthDay joiningStart,
    Assumption joiningWeeks,
    Assumption pregnantPercent,
    Assumption scanningPercent,
    Assumption markingPercent,
    ScanningBasis scanningBasis,
    boolean mayMove) {

  /** Checks ranges and that the age shares sum to 1 within 0.001. */
  public Mob {
    Check.notBlank(name, "name of the mob");
    Check.that(ewes > 0, "ewes in %s must be more than zero, but was %s", name, ewes);
    ageShares = List.copyOf(ageShares);
    Check.that(!ageShares.isEmpty(), "%s must have an age class", name);
    double sum = ageShares.stream().mapToDouble(Double::doubleValue).sum();
    Check.that(Math.abs(sum - 1) <= 0.001, "age shares of %s must sum to 1, but was %s", name, sum);
    Check.inRange(liveweightKg.likely(), 20, 150, "liveweight of " + name);
    Check.notNull(joiningStart, "joining start of " + name);
    Check.inRange(joiningWeeks.likely(), 1, 30, "joining weeks of " + name);
    Check.inRange(pregnantPercent.likely(), 1, 100, "ewes in lamb per 100 joined of " + name);
    Check.inRange(scanningPercent.likely(), 1, 400, "lambs scanned per 100 joined of " + name);
    Check.inRange(markingPercent.likely(), 0, 400, "lambs marked per 100 joined of " + name);
    Check.that(
        scanningPercent.likely() >= pregnantPercent.likely(),
        "lambs scanned per 100 joined of %s must not be fewer than ewes in lamb",
        name);
    Check.that(
        markingPercent.likely() <= scanningPercent.likely(),
        "lambs marked of %s must not be more than lambs scanned",
        name);
  }

  /**
   * The same mob whose ewes in lamb are told by records: lambs scanned and marked that were
   * observed beside so many ewes in lamb are put beside the figure of a flock without oestrogen, so
   * that a ewe in lamb keeps her lambs. Figures that are unaffected stay as they are.
   *
   * @param recordedPercent ewes in lamb per 100 joined, mean of the records
   */
  public Mob besideRecords(double recordedPercent) {
    if (scanningBasis == ScanningBasis.UNAFFECTED) {
      return this;
    }
    double times = pregnantPercent.likely() / recordedPercent;
    return new Mob(
        name,
        ewes,
        ageShares,
        agesSetBy,
        liveweightKg,
        joiningStart,
        joiningWeeks,
        pregnantPercent,
        scanningPercent.times(times),
        markingPercent.times(times),
        ScanningBasis.UNAFFECTED,
        mayMove);
  }
}
