package swardcase.sward;

import com.fasterxml.jackson.databind.MappingIterator;
import com.fasterxml.jackson.dataformat.csv.CsvMapper;
import com.fasterxml.jackson.dataformat.csv.CsvSchema;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import swardcase.chance.Range;
import swardcase.evidence.Assumption;
import swardcase.evidence.Evidence;
import swardcase.evidence.SetBy;
import swardcase.tables.Cultivar;
import swardcase.tables.Tables;

/** The stand parameters as shipped, with a few cultivars for the tests of this package. */
final class StandTables {

  private StandTables() {}

  /** Rows of a CSV file on the class path, by column. */
  static List<Map<String, String>> rows(String resource) {
    try (InputStream file = StandTables.class.getResourceAsStream(resource)) {
      MappingIterator<Map<String, String>> rows =
          new CsvMapper()
              .readerForMapOf(String.class)
              .with(CsvSchema.emptySchema().withHeader())
              .readValues(file);
      return rows.readAll();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  static SortedMap<String, Assumption> parameters() {
    SortedMap<String, Assumption> parameters = new TreeMap<>();
    for (Map<String, String> row : rows("/tables/stand-parameters.csv")) {
      Range range =
          Range.of(
              Double.parseDouble(row.get("low")),
              Double.parseDouble(row.get("likely")),
              Double.parseDouble(row.get("high")));
      parameters.put(
          row.get("key"),
          new Assumption(
              row.get("name"),
              range,
              row.get("unit"),
              Evidence.valueOf(row.get("evidence").toUpperCase(Locale.ROOT).replace(' ', '_')),
              row.get("source"),
              SetBy.DEFAULT));
    }
    return parameters;
  }

  static Tables tables() {
    SortedMap<String, Cultivar> cultivars = new TreeMap<>();
    for (Cultivar cultivar :
        List.of(
            cultivar("Dinninup", Cultivar.Era.OLD, Cultivar.HardSeed.HARD, true, 1.0),
            cultivar("Yarloop", Cultivar.Era.OLD, Cultivar.HardSeed.SOFT, true, 1.0),
            cultivar("Mount Barker", Cultivar.Era.OLD, Cultivar.HardSeed.SOFT, false, 0.12),
            cultivar("Riverina", Cultivar.Era.CURRENT, Cultivar.HardSeed.MODERATE, false, 0.12),
            cultivar(
                "unidentified", Cultivar.Era.TRANSITION, Cultivar.HardSeed.MODERATE, false, -1),
            cultivar(
                "unidentified old", Cultivar.Era.OLD, Cultivar.HardSeed.MODERATE, false, -1))) {
      cultivars.put(cultivar.name(), cultivar);
    }
    return new Tables(
        cultivars,
        new TreeMap<>(),
        new TreeMap<>(),
        new TreeMap<>(),
        new TreeMap<>(),
        parameters(),
        List.of(),
        new TreeMap<>(),
        List.of());
  }

  /** A cultivar; formononetin below zero stands for unknown. */
  static Cultivar cultivar(
      String name, Cultivar.Era era, Cultivar.HardSeed hardSeed, boolean high, double leafPercent) {
    return new Cultivar(
        name,
        "",
        era,
        hardSeed,
        leafPercent < 0 ? Optional.empty() : Optional.of(assumption("formononetin", leafPercent)),
        high,
        assumption("winter yield", 0.9),
        "old");
  }

  static Assumption assumption(String name, double value) {
    return new Assumption(name, Range.exactly(value), "-", Evidence.INFERRED, "", SetBy.DEFAULT);
  }
}
