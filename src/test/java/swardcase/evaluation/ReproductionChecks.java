package swardcase.evaluation;

import static swardcase.evaluation.PublishedRows.number;
import static swardcase.evaluation.PublishedRows.published;

import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import swardcase.evaluation.PublishedCheck.Part;
import swardcase.farm.Farm;
import swardcase.farm.HalfMonths;
import swardcase.intake.FarmFolder;
import swardcase.outcome.FarmModel;
import swardcase.reproduction.DoseResponse;
import swardcase.reproduction.FlockEffect;
import swardcase.reproduction.JoiningWalk;
import swardcase.reproduction.Pregnancy;
import swardcase.tables.Tables;

/** Published rows on oestrogenic clover beside the calculators of reproduction. */
public final class ReproductionChecks {

  private static final double TWO_CYCLES_WEEKS = 34 / 7.0;
  private static final double UNAFFECTED = 0.89;
  private static final double REFERENCE_DOSE = 0.5;

  /** Conception at first service of the unaffected groups of the trial: 57 of 63 ewes. */
  private static final double TRIAL_CONTROL = 57 / 63.0;

  private final double d50;
  private final double d50Outbreaks;
  private final double steepness;
  private final FlockEffect flock;
  private final double[] numbers;

  /** Reads the curve from the tables. */
  public ReproductionChecks(Tables tables) {
    d50 = tables.parameter("oestrogen.d50").likely();
    d50Outbreaks = tables.parameter("oestrogen.d50-outbreaks").likely();
    steepness = tables.parameter("oestrogen.steepness").likely();
    Farm farm = FarmFolder.read(Path.of("demo-data/current-farm"), tables).farm();
    FarmModel model = new FarmModel(farm, tables);
    flock = new FlockEffect(farm, farm.mobs().get(0), model.inputs());
    numbers = model.inputs().likely();
  }

  /** Sound ewes that a year leaves, share, with a dose in these half-months and none in others. */
  private double soundAfterYear(double dose, int halfMonths) {
    double[] green = new double[HalfMonths.COUNT];
    Arrays.fill(green, 0, halfMonths, 1);
    flock.set(numbers, green, dose, dose);
    return 1 - flock.barrenAfterYearOn(flock.power(dose));
  }

  /** The curve beside the trials it was and was not fitted to. */
  public List<PublishedCheck> trials() {
    return published("reproduction-trials.csv").stream()
        .map(
            row -> {
              String cycles = row.get("cycles").isEmpty() ? "" : ", cycles " + row.get("cycles");
              String what =
                  "%s, %% (dose %s %%%s)"
                      .formatted(row.get("what"), row.get("dose_percent"), cycles);
              return PublishedCheck.ofRow(what, row, trial(row), Part.of(row));
            })
        .toList();
  }

  private double trial(Map<String, String> row) {
    double dose = number(row, "dose_percent");
    double multiplier = DoseResponse.conceptionMultiplier(dose, d50, steepness);
    return switch (row.get("what")) {
      case "first service after 6 weeks", "first service after 12 weeks" ->
          100 * number(row, "unaffected") * multiplier;
      case "fall in ewes in lamb in the story of the outbreaks" -> {
        double there = DoseResponse.conceptionMultiplier(dose, d50Outbreaks, steepness);
        yield 100 * (number(row, "unaffected") - inLamb(row, there));
      }
      case "fall in ewes in lamb" -> 100 * (number(row, "unaffected") - inLamb(row, multiplier));
      case "barren after three years" ->
          100 * (1 - Math.pow(soundAfterYear(dose, HalfMonths.COUNT), 3));
      default -> throw new IllegalArgumentException(row.toString());
    };
  }

  private static double inLamb(Map<String, String> row, double multiplier) {
    double weeks = number(row, "cycles") * JoiningWalk.CYCLE_DAYS / 7;
    return inLamb(number(row, "unaffected"), weeks, multiplier);
  }

  private static double inLamb(double unaffected, double weeks, double multiplier) {
    double[] multipliers = new double[JoiningWalk.cycles(weeks)];
    Arrays.fill(multipliers, multiplier);
    return Pregnancy.pregnantShare(
        Pregnancy.perCycleConception(unaffected, weeks), weeks, multipliers, 0);
  }

  /**
   * Sound ewes left in each trial, in points of the control. A season of exposure is 180 days at
   * the reference dose; the first half of the year has 181.
   */
  public List<PublishedCheck> barrenEwes() {
    double season = Math.pow(soundAfterYear(REFERENCE_DOSE, HalfMonths.COUNT / 2), 180 / 181.0);
    return published("sterility.csv").stream().map(row -> barren(row, season)).toList();
  }

  private static PublishedCheck barren(Map<String, String> row, double soundAfterSeason) {
    double exposure = number(row, "exposureSeasons");
    PublishedCheck check =
        new PublishedCheck(
            "left of %s %%, seasons of exposure %s"
                .formatted(row.get("controlPercent"), row.get("exposureSeasons")),
            row.get("source"),
            row.get("affectedPercent"),
            number(row, "controlPercent") * Math.pow(soundAfterSeason, exposure),
            PublishedCheck.halfOfTheLastDigit(row.get("affectedPercent")),
            "half of the last digit; the error of the source was not seen",
            row.get("inFit").equals("true") ? Part.FIT : Part.READING,
            row.get("effect"));
    return check.orEffect(check.difference() > 0 ? "barren-more" : "barren-less");
  }

  /** Arithmetic with the curve, worked separately. */
  public static List<PublishedCheck> workedCurve() {
    return published("dose-response.csv").stream()
        .map(
            row ->
                new PublishedCheck(
                    "%s, dose %s %%, D50 %s %%, n %s"
                        .formatted(
                            words(row.get("kind")),
                            row.get("dosePercent"),
                            row.get("d50Percent"),
                            row.get("steepness")),
                    "",
                    row.get("expected"),
                    curve(row),
                    number(row, "digit") / 2,
                    "worked separately; half of the last digit",
                    Part.EQUATION))
        .toList();
  }

  private static String words(String kind) {
    return switch (kind) {
      case "multiplier" -> "T";
      case "pregnant" -> "in lamb after two cycles, %";
      case "firstService" -> "held to first service, %";
      case "weight" -> "weight of the dose, w";
      default -> throw new IllegalArgumentException(kind);
    };
  }

  /** The value of a row of dose-response.csv. */
  public static double curve(Map<String, String> row) {
    double d50 = number(row, "d50Percent");
    double steepness = number(row, "steepness");
    double t = DoseResponse.conceptionMultiplier(number(row, "dosePercent"), d50, steepness);
    return switch (row.get("kind")) {
      case "multiplier" -> t;
      case "pregnant" -> 100 * inLamb(UNAFFECTED, TWO_CYCLES_WEEKS, t);
      case "firstService" -> 100 * TRIAL_CONTROL * t;
      case "weight" -> (1 - t) / (1 - DoseResponse.conceptionMultiplier(0.5, d50, steepness));
      default -> throw new IllegalArgumentException(row.toString());
    };
  }
}
