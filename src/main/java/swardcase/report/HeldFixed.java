package swardcase.report;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.function.ToDoubleFunction;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import swardcase.evidence.Assumption;
import swardcase.evidence.Evidence;
import swardcase.evidence.SetBy;
import swardcase.farm.HalfMonths;
import swardcase.farm.PastureQuality;
import swardcase.farm.SeasonGrowth;
import swardcase.outcome.FarmModel;
import swardcase.wording.Texts;
import swardcase.wording.Words;

/**
 * A number that no draw moves: what the tables say of animals and pasture, taken as it is. Such
 * numbers bear on the answer like the others, so they are printed with their marks.
 *
 * @param name what it is
 * @param value in words; of numbers that go by month, the least and the most
 * @param unit {@code -} for a ratio
 * @param evidence how well it is supported; of several rows, the weakest
 * @param source keys into the sources table, or blank
 * @param setBy who set it
 */
public record HeldFixed(
    String name, String value, String unit, Evidence evidence, String source, SetBy setBy) {

  /** Rows that stand in for what a farm does not tell; the farm's own numbers are inputs. */
  private static final String OF_THE_FARM = "default.";

  private static final String OF_A_FLOCK = "flock.";

  /** Those of the farm's climate are inputs. */
  private static final String OF_A_CLIMATE = "seed.retention.";

  static List<HeldFixed> of(FarmModel model) {
    List<HeldFixed> all = new ArrayList<>();
    model
        .tables()
        .parameters()
        .forEach(
            (key, parameter) -> {
              boolean moved = model.inputs().find(key).isPresent();
              boolean elsewhere =
                  Stream.of(OF_THE_FARM, OF_A_FLOCK, OF_A_CLIMATE).anyMatch(key::startsWith);
              if (!moved && !elsewhere) {
                all.add(of(parameter));
              }
            });
    for (SeasonGrowth season : model.farm().feedYear().seasons()) {
      all.add(of(season.chance()));
      all.add(growth(season));
    }
    List<PastureQuality> quality = model.farm().feedYear().quality();
    all.add(byMonth("fixed.greenDigestibility", quality, PastureQuality::greenDigestibility));
    all.add(byMonth("fixed.dryDigestibility", quality, PastureQuality::dryDigestibility));
    all.add(byMonth("fixed.greenDying", quality, PastureQuality::greenDyingPerMonth));
    all.add(byMonth("fixed.dryLost", quality, PastureQuality::dryLostPerMonth));
    return List.copyOf(all);
  }

  private static HeldFixed of(Assumption number) {
    return new HeldFixed(
        number.name(),
        Words.figures(number.likely()),
        number.unit(),
        number.evidence(),
        number.source(),
        number.setBy());
  }

  private static HeldFixed growth(SeasonGrowth season) {
    double year = 0;
    for (int p = 0; p < HalfMonths.COUNT; p++) {
      year += season.growthKgDmPerHaPerDay().get(p / 2) * HalfMonths.days(p);
    }
    return new HeldFixed(
        Texts.get("fixed.growth", season.type().label()),
        Words.about(year),
        "kg DM/ha",
        season.evidence(),
        season.source(),
        season.setBy());
  }

  private static HeldFixed byMonth(
      String key, List<PastureQuality> months, ToDoubleFunction<PastureQuality> of) {
    var values = months.stream().mapToDouble(of).summaryStatistics();
    return new HeldFixed(
        Texts.get(key),
        Texts.get("fixed.months", Words.figures(values.getMin()), Words.figures(values.getMax())),
        "fraction",
        months.stream().map(PastureQuality::evidence).max(Comparator.naturalOrder()).orElseThrow(),
        months.stream()
            .map(PastureQuality::source)
            .filter(source -> !source.isBlank())
            .distinct()
            .collect(Collectors.joining(";")),
        SetBy.DEFAULT);
  }
}
