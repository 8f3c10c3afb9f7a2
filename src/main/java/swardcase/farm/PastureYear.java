package swardcase.farm;

import java.time.Month;
import java.util.List;
import swardcase.check.Check;

/**
 * How pasture grows and how good it is through the year, January to December whatever the
 * hemisphere.
 *
 * @param growthName the district, or the user's own name for the numbers
 * @param seasons one for each season type, in the order poor, average, good; chances sum to 1
 * @param winterMonths the months in which winter growth is lost to outdated cultivars
 * @param quality twelve months of pasture quality
 */
public record PastureYear(
    String growthName,
    List<SeasonGrowth> seasons,
    List<Month> winterMonths,
    List<PastureQuality> quality) {

  /** Checks shapes, that the season chances sum to 1 within 0.001, and that something grows. */
  public PastureYear {
    Check.notBlank(growthName, "name of the growth profile");
    seasons = List.copyOf(seasons);
    winterMonths = List.copyOf(winterMonths);
    quality = List.copyOf(quality);
    Check.that(seasons.size() == 3, "there must be 3 season types, but were %s", seasons.size());
    for (int i = 0; i < 3; i++) {
      Check.that(
          seasons.get(i).type() == SeasonType.values()[i],
          "season types must come in the order poor, average, good");
    }
    double chances = seasons.stream().mapToDouble(s -> s.chance().likely()).sum();
    Check.that(
        Math.abs(chances - 1) <= 0.001, "chances of seasons must sum to 1, but was %s", chances);
    Check.that(
        seasons.stream().anyMatch(PastureYear::grows),
        "pasture must grow in at least one month of a season that comes");
    Check.that(!winterMonths.isEmpty(), "there must be a winter month");
    Check.that(quality.size() == 12, "pasture quality must have 12 months");
  }

  /** The break of a usual year, that of the average season. */
  public AutumnBreak usualBreak() {
    return new AutumnBreak(
        seasons.get(SeasonType.AVERAGE.ordinal()).growthKgDmPerHaPerDay(), winterMonths);
  }

  /**
   * Growth of a season by half-month with its break where it likely comes, kg dry matter per ha and
   * half-month.
   */
  public double[] growthKgDmPerHa(SeasonGrowth season) {
    double[] growth = usualBreak().growth(season.growthKgDmPerHaPerDay(), season.breakLater());
    for (int p = 0; p < growth.length; p++) {
      growth[p] *= HalfMonths.days(p);
    }
    return growth;
  }

  private static boolean grows(SeasonGrowth season) {
    return season.chance().likely() > 0
        && season.growthKgDmPerHaPerDay().stream().anyMatch(growth -> growth > 0);
  }
}
