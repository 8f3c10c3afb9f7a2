package swardcase.evaluation;

import static swardcase.evaluation.PublishedRows.number;
import static swardcase.evaluation.PublishedRows.published;

import java.time.Month;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import swardcase.chance.Range;
import swardcase.farm.Climate;
import swardcase.sward.SeedKeys;
import swardcase.tables.Cultivar.HardSeed;
import swardcase.tables.District;
import swardcase.tables.Tables;

/** Published rows on seed, formononetin, growth and costs beside the tables and calculators. */
public final class SwardChecks {

  private final Tables tables;

  /** Reads the rows of these tables. */
  public SwardChecks(Tables tables) {
    this.tables = tables;
  }

  /**
   * Hard seed left of a single crop; the source prints a range, whose middle stands as the value.
   */
  public List<PublishedCheck> hardSeed() {
    return published("seed-decay.csv").stream()
        .map(
            row -> {
              double low = number(row, "low_percent");
              double high = number(row, "high_percent");
              return new PublishedCheck(
                  "%s, %s seed, %% left after %s summers"
                      .formatted(row.get("climate"), row.get("hard_seed"), row.get("summers")),
                  row.get("source"),
                  middle(low, high),
                  100 * left(row),
                  (high - low) / 2,
                  "the source gives %s to %s"
                      .formatted(row.get("low_percent"), row.get("high_percent")));
            })
        .toList();
  }

  private static String middle(double low, double high) {
    return Double.toString(Math.round(50 * (low + high)) / 100.0);
  }

  private double left(Map<String, String> row) {
    Climate climate = row.get("climate").equals("hot") ? Climate.HOT_DRY_SUMMER : Climate.COOL;
    HardSeed seed = HardSeed.valueOf(row.get("hard_seed").toUpperCase(Locale.ROOT));
    double left = 1;
    for (int summer = 1; summer <= number(row, "summers"); summer++) {
      left *= tables.parameter(SeedKeys.retention(climate, seed, Math.min(summer, 4))).likely();
    }
    return left;
  }

  /** Formononetin on waterlogged ground from that on drained ground. */
  public List<PublishedCheck> formononetin() {
    Range factor = tables.parameter("dose.waterlogged-factor").range();
    return published("formononetin-wet.csv").stream()
        .map(
            row ->
                new PublishedCheck(
                    "waterlogged, %% of leaf, from %s on drained ground, %s end of the factor"
                        .formatted(row.get("drained"), row.get("end")),
                    row.get("source"),
                    row.get("waterlogged"),
                    number(row, "drained")
                        * (row.get("end").equals("high") ? factor.high() : factor.low()),
                    number(row, "tolerance"),
                    "half of the last digit"))
        .toList();
  }

  /** Sums of the districts' monthly growth rows. */
  public List<PublishedCheck> growth() {
    List<PublishedCheck> checks = new ArrayList<>();
    for (Map<String, String> row : published("district-growth-sums.csv")) {
      District district = tables.districts().get(row.get("district"));
      checks.add(
          new PublishedCheck(
              district.name() + ", t DM/ha a year",
              row.get("source"),
              row.get("year_t_dm_per_ha"),
              sum(district, List.of(Month.values())) / 1000,
              0.0005,
              "half of the last digit of the sum"));
      checks.add(
          new PublishedCheck(
              district.name() + ", kg DM/ha in winter",
              row.get("source"),
              row.get("winter_kg_dm_per_ha"),
              sum(district, district.winterMonths()),
              0.5,
              "half of the last digit of the sum"));
    }
    return checks;
  }

  private static double sum(District district, List<Month> months) {
    return months.stream()
        .mapToDouble(m -> m.minLength() * district.growthKgDmPerHaPerDay().get(m.ordinal()))
        .sum();
  }

  /** The lines of a published budget, and their sum, which the paper rounds. */
  public static List<PublishedCheck> budget() {
    List<PublishedCheck> checks = new ArrayList<>();
    double sum = 0;
    for (Map<String, String> row : published("cost-lines-1986.csv")) {
      double cost = number(row, "quantity") * number(row, "price");
      sum += number(row, "cost_per_ha");
      checks.add(
          new PublishedCheck(
              row.get("name") + ", A$/ha",
              row.get("source"),
              row.get("cost_per_ha"),
              cost,
              0.0051,
              "half a cent, which the paper rounds either way"));
    }
    checks.add(
        new PublishedCheck(
            "sum of the printed lines, A$/ha",
            "burfitt-1986",
            "251.00",
            sum,
            0.005,
            "half a cent; the paper rounds its total"));
    return checks;
  }
}
