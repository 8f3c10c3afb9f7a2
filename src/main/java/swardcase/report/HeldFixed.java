package swardcase.report;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.function.ToDoubleFunction;
import java.util.stream.Collectors;
import swardcase.evidence.Assumption;
import swardcase.evidence.Evidence;
import swardcase.evidence.SetBy;
import swardcase.farm.PastureQuality;
import swardcase.farm.PastureYear;
import swardcase.farm.SeasonGrowth;
import swardcase.outcome.FarmModel;

/**
 * A number that no draw moves by itself: what the tables say of animals and pasture. Such numbers
 * bear on the answer like the others, so they are printed with their marks. For most of them one
 * number of their equation is drawn, because coefficients fitted together do not err alone.
 *
 * @param name what it is
 * @param least the number; of numbers that go by month, the least
 * @param most the same; of numbers that go by month, the most
 * @param unit {@code -} for a ratio
 * @param evidence how well it is supported; of several rows, the weakest
 * @param source keys into the sources table, or blank
 * @param setBy who set it
 * @param doubt the number that is drawn for the error of this one, with others of the same
 *     equation; blank if none is
 */
public record HeldFixed(
    String name,
    double least,
    double most,
    String unit,
    Evidence evidence,
    String source,
    SetBy setBy,
    String doubt) {

  /**
   * Rows that stand in for what a farm does not tell, whose own numbers are inputs, and rows of
   * other climates and cultivars than the farm's, whose are inputs too.
   */
  private static final List<String> INPUTS_OR_UNUSED =
      List.of("default.", "flock.", "seed.retention.", "seed.yield.", "seed.crowding.");

  /** A number of the quality of feed, with the key of the row that is drawn for its error. */
  private record ByMonth(String name, ToDoubleFunction<PastureQuality> number, String doubt) {}

  private static final List<ByMonth> BY_MONTH =
      List.of(
          new ByMonth(
              "digestibility of green feed, by month",
              PastureQuality::greenDigestibility,
              "feed.green-digestibility"),
          new ByMonth(
              "digestibility of dry feed, by month",
              PastureQuality::dryDigestibility,
              "feed.dry-selection"),
          new ByMonth(
              "green feed that dies in a month",
              PastureQuality::greenDyingPerMonth,
              "feed.green-dying-multiplier"),
          new ByMonth(
              "dry feed that decays in a month",
              PastureQuality::dryLostPerMonth,
              "feed.dry-loss-multiplier"));

  static List<HeldFixed> of(FarmModel model) {
    List<HeldFixed> all = new ArrayList<>();
    model.tables().parameters().entrySet().stream()
        .filter(row -> isFixed(row.getKey(), model))
        .forEach(row -> all.add(of(row.getValue())));
    for (SeasonGrowth season : model.farm().feedYear().seasons()) {
      all.add(of(season.chance()));
      all.add(growth(season, model.farm().feedYear(), doubt(model, "feed.growth-multiplier")));
    }
    BY_MONTH.forEach(
        number ->
            all.add(
                byMonth(number, model.farm().feedYear().quality(), doubt(model, number.doubt))));
    return all;
  }

  private static boolean isFixed(String key, FarmModel model) {
    boolean elsewhere = INPUTS_OR_UNUSED.stream().anyMatch(key::startsWith);
    boolean ofRecords = key.startsWith("records.") && model.farm().records().isEmpty();
    return model.inputs().find(key).isEmpty() && !elsewhere && !ofRecords;
  }

  private static HeldFixed of(Assumption number) {
    return new HeldFixed(
        number.name(),
        number.likely(),
        number.likely(),
        number.unit(),
        number.evidence(),
        number.source(),
        number.setBy(),
        number.doubt());
  }

  private static String doubt(FarmModel model, String key) {
    return model.tables().parameter(key).name();
  }

  /** A sum of rough numbers, to two figures. */
  private static HeldFixed growth(SeasonGrowth season, PastureYear pasture, String doubt) {
    double year = Arrays.stream(pasture.growthKgDmPerHa(season)).sum();
    double about =
        new BigDecimal(year).round(new MathContext(2, RoundingMode.HALF_UP)).doubleValue();
    return new HeldFixed(
        "pasture grown in a " + season.type().label() + " season, a year",
        about,
        about,
        "kg DM/ha",
        season.evidence(),
        season.source(),
        season.setBy(),
        doubt);
  }

  private static HeldFixed byMonth(ByMonth of, List<PastureQuality> months, String doubt) {
    var values = months.stream().mapToDouble(of.number).summaryStatistics();
    return new HeldFixed(
        of.name,
        values.getMin(),
        values.getMax(),
        "fraction",
        months.stream().map(PastureQuality::evidence).max(Comparator.naturalOrder()).orElseThrow(),
        months.stream()
            .map(PastureQuality::source)
            .filter(source -> !source.isBlank())
            .distinct()
            .collect(Collectors.joining(";")),
        SetBy.DEFAULT,
        doubt);
  }
}
