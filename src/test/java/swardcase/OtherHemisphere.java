package swardcase;

import java.time.MonthDay;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import swardcase.farm.Farm;
import swardcase.farm.Mob;
import swardcase.farm.OtherStock;
import swardcase.farm.PastureQuality;
import swardcase.farm.PastureYear;
import swardcase.farm.SeasonGrowth;

/** The same farm with its whole calendar half a year later. */
public final class OtherHemisphere {

  private static final int MONTHS = 6;

  private OtherHemisphere() {}

  /** The farm on the other side of the equator. */
  public static Farm of(Farm farm) {
    return FarmCopy.of(farm)
        .feedYear(later(farm.feedYear()))
        .mobs(farm.mobs().stream().map(OtherHemisphere::later).toList())
        .otherStock(farm.otherStock().stream().map(OtherHemisphere::later).toList())
        .build();
  }

  private static PastureYear later(PastureYear year) {
    return new PastureYear(
        year.growthName(),
        year.seasons().stream().map(OtherHemisphere::later).toList(),
        year.winterMonths().stream().map(month -> month.plus(MONTHS)).toList(),
        turned(year.quality()).stream().map(OtherHemisphere::later).toList());
  }

  private static SeasonGrowth later(SeasonGrowth season) {
    return new SeasonGrowth(
        season.type(),
        season.chance(),
        turned(season.growthKgDmPerHaPerDay()),
        season.breakMoves(),
        season.evidence(),
        season.source(),
        season.setBy());
  }

  private static <T> List<T> turned(List<T> year) {
    List<T> turned = new ArrayList<>(year);
    Collections.rotate(turned, MONTHS);
    return turned;
  }

  private static PastureQuality later(PastureQuality row) {
    return new PastureQuality(
        row.month().plus(MONTHS),
        row.greenDigestibility(),
        row.dryDigestibility(),
        row.greenDyingPerMonth(),
        row.dryLostPerMonth(),
        row.evidence(),
        row.source());
  }

  private static Mob later(Mob mob) {
    MonthDay start = mob.joiningStart();
    return new Mob(
        mob.name(),
        mob.ewes(),
        mob.ageShares(),
        mob.agesSetBy(),
        mob.liveweightKg(),
        MonthDay.of(start.getMonth().plus(MONTHS), start.getDayOfMonth()),
        mob.joiningWeeks(),
        mob.pregnantPercent(),
        mob.scanningPercent(),
        mob.markingPercent(),
        mob.scanningBasis(),
        mob.mayMove());
  }

  private static OtherStock later(OtherStock stock) {
    return new OtherStock(
        stock.name(),
        stock.head(),
        stock.dsePerHead(),
        stock.mostRiskyDays(),
        stock.months().stream().map(month -> month.plus(MONTHS)).toList(),
        stock.mayMove());
  }
}
