package swardcase.feed;

import java.time.Month;
import java.util.List;
import swardcase.farm.Farm;
import swardcase.farm.HalfMonths;
import swardcase.farm.PastureYear;
import swardcase.farm.SeasonGrowth;

/**
 * Where in the year a farm's pasture grows: the half-months of winter, the autumn break, and how
 * much of winter's and of the other months' growth falls into the first months after the break.
 */
public final class GrowthYear {

  private final double[] growthKgDmPerHa = new double[HalfMonths.COUNT];
  private final boolean[] winter = new boolean[HalfMonths.COUNT];
  private final int breakHalfMonth;
  private final double winterGrowthKgDmPerHa;
  private final double winterShare;

  /** The year of a farm, mean over season types by their chances. */
  public GrowthYear(Farm farm) {
    PastureYear year = farm.feedYear();
    List<Month> winterMonths = year.winterMonths();
    for (int p = 0; p < HalfMonths.COUNT; p++) {
      winter[p] = winterMonths.contains(HalfMonths.month(p));
    }
    for (SeasonGrowth season : year.seasons()) {
      double[] grown = year.growthKgDmPerHa(season);
      for (int p = 0; p < HalfMonths.COUNT; p++) {
        growthKgDmPerHa[p] += season.chance().likely() * grown[p];
      }
    }
    breakHalfMonth = year.usualBreak().halfMonth();
    winterGrowthKgDmPerHa = sum(true, 0, HalfMonths.COUNT);
    winterShare = winterGrowthKgDmPerHa / (winterGrowthKgDmPerHa + sum(false, 0, HalfMonths.COUNT));
  }

  /** Whether a half-month belongs to winter. */
  public boolean isWinter(int halfMonth) {
    return winter[halfMonth];
  }

  /** The half-month in which the growing season starts. */
  int breakHalfMonth() {
    return breakHalfMonth;
  }

  /**
   * Growth of a half-month at the district profile, mean over season types, kg dry matter per ha.
   */
  public double growthKgDmPerHa(int halfMonth) {
    return growthKgDmPerHa[halfMonth];
  }

  /** Winter growth at the district profile, kg dry matter per ha and year. */
  public double winterGrowthKgDmPerHa() {
    return winterGrowthKgDmPerHa;
  }

  /** Growth of the whole year at the district profile, kg dry matter per ha. */
  public double growthKgDmPerHa() {
    return winterGrowthKgDmPerHa + sum(false, 0, HalfMonths.COUNT);
  }

  /** Share of the year's growth that falls in winter. */
  public double winterShare() {
    return winterShare;
  }

  /**
   * Share of winter's growth that the density of the clover bears on: whole at the start of winter,
   * then less from half-month to half-month, and nothing at its end. Three months that grow alike
   * make 0.5; 26, 28 and 36 kg/ha a day make 0.46.
   */
  public double earlyWinterShare() {
    double halfMonths = 0;
    for (boolean isWinter : winter) {
      halfMonths += isWinter ? 1 : 0;
    }
    double early = 0;
    double before = 0;
    for (int k = 0; k < HalfMonths.COUNT; k++) {
      int p = (breakHalfMonth + k) % HalfMonths.COUNT;
      if (winter[p]) {
        early += growthKgDmPerHa[p] * (1 - (before + 0.5) / halfMonths);
        before++;
      }
    }
    return winterGrowthKgDmPerHa > 0 ? early / winterGrowthKgDmPerHa : 0;
  }

  /** Share of winter's growth in the {@code months} after the break. */
  public double winterShareAfterBreak(double months) {
    return shareAfterBreak(true, months);
  }

  /** Share of the other months' growth in the {@code months} after the break. */
  public double otherShareAfterBreak(double months) {
    return shareAfterBreak(false, months);
  }

  private double shareAfterBreak(boolean inWinter, double months) {
    double whole = sum(inWinter, 0, HalfMonths.COUNT);
    return whole == 0 ? 0 : sum(inWinter, breakHalfMonth, (int) Math.round(2 * months)) / whole;
  }

  private double sum(boolean inWinter, int from, int count) {
    double sum = 0;
    for (int k = 0; k < count; k++) {
      int p = (from + k) % HalfMonths.COUNT;
      if (winter[p] == inWinter) {
        sum += growthKgDmPerHa[p];
      }
    }
    return sum;
  }
}
