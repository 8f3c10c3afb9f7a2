package swardcase.evaluation;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Month;
import java.util.Locale;
import java.util.Map;
import swardcase.intake.FarmFolder;
import swardcase.outcome.FarmModel;
import swardcase.outcome.OutcomeFunction;
import swardcase.tables.ResponseStory;
import swardcase.tables.Tables;

/**
 * The sheep and pasture of a published trial or case as a farm of the program, read from a farm
 * folder like any other: paddocks of 100 ha, defaults for what neither the source nor the row
 * tells.
 */
final class TrialFarm {

  static final double PADDOCK_HA = 100;

  private final FarmModel model;
  private final OutcomeFunction run;
  private final double headPerHa;

  private TrialFarm(FarmModel model, double headPerHa) {
    this.model = model;
    this.run = model.newRun();
    this.headPerHa = headPerHa;
  }

  /** The farm of a row of trial-farms.csv. */
  static TrialFarm of(Map<String, String> row, Tables tables) {
    try {
      Path folder = Files.createTempDirectory("trial-farm");
      try {
        write(folder, "farm.yaml", yaml(row, tables));
        write(folder, "paddocks.csv", paddocks(row, tables));
        write(folder, "plants.csv", plants(row));
        FarmModel model = new FarmModel(FarmFolder.read(folder, tables).farm(), tables);
        return new TrialFarm(model, number(row, "ewes_per_ha") + number(row, "wethers_per_ha"));
      } finally {
        for (String file : FarmFolder.FILES) {
          Files.deleteIfExists(folder.resolve(file));
        }
        Files.delete(folder);
      }
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  FarmModel model() {
    return model;
  }

  /** A run at likely inputs. */
  OutcomeFunction run() {
    return run;
  }

  /** A run at likely inputs in a story of how ewes respond. */
  OutcomeFunction run(ResponseStory story) {
    double[] x = model.inputs().likely();
    x[model.inputs().place(ResponseStory.KEY)] = story.ordinal();
    OutcomeFunction ofStory = model.newRun();
    ofStory.set(x);
    return ofStory;
  }

  /** Ewes and wethers a hectare. */
  double headPerHa() {
    return headPerHa;
  }

  private static String yaml(Map<String, String> row, Tables tables) {
    double area = PADDOCK_HA * stands(row).length;
    StringBuilder text = new StringBuilder("name: " + row.get("key") + "\n");
    text.append("climate: ").append(row.get("climate")).append('\n');
    text.append("growth: ").append(row.get("growth")).append('\n');
    if (!row.get("poor_t").isEmpty()) {
      text.append("season_growth_percent:\n");
      text.append("  poor: ").append(percentOfAverage(row, "poor_t")).append('\n');
      text.append("  good: ").append(percentOfAverage(row, "good_t")).append('\n');
    }
    if (!row.get("sow").isEmpty()) {
      text.append("sow: ").append(row.get("sow")).append('\n');
    }
    long ewes = Math.round(number(row, "ewes_per_ha") * area);
    if (ewes > 0) {
      text.append("mobs:\n  - name: ewes\n    ewes: ").append(ewes).append('\n');
      append(text, "liveweight_kg", row.get("liveweight_kg"));
      append(text, "joining_start", row.get("joining_start"));
      append(text, "joining_weeks", row.get("joining_weeks"));
      append(text, "pregnant_percent", row.get("pregnant_percent"));
      append(text, "figures", row.get("pregnant_percent").isEmpty() ? "" : "unaffected");
      if (!row.get("joinings").isEmpty()) {
        int joinings = Integer.parseInt(row.get("joinings"));
        append(text, "ages", "[" + "0, ".repeat(joinings - 1) + ewes + "]");
      }
    }
    long wethers = Math.round(number(row, "wethers_per_ha") * area);
    if (wethers > 0) {
      text.append("other_stock:\n  - name: wethers\n    kind: wether 50 kg\n");
      append(text, "head", Long.toString(wethers));
    }
    return text.toString();
  }

  private static void append(StringBuilder text, String key, String value) {
    if (!value.isEmpty()) {
      text.append("    ").append(key).append(": ").append(value).append('\n');
    }
  }

  private static String percentOfAverage(Map<String, String> row, String column) {
    return rounded(100 * number(row, column) / number(row, "grown_t"));
  }

  private static String paddocks(Map<String, String> row, Tables tables) {
    StringBuilder text = new StringBuilder("paddock,area_ha,clover_percent,growth_index\n");
    String index = row.get("grown_t").isEmpty() ? "1" : rounded(index(row, tables));
    int paddock = 0;
    for (String stand : stands(row)) {
      String clover = stand.substring(0, stand.indexOf(' '));
      text.append("P%d,%.0f,%s,%s\n".formatted(++paddock, PADDOCK_HA, clover, index));
    }
    return text.toString();
  }

  /** Growth of the source over that of the district in an average season. */
  private static double index(Map<String, String> row, Tables tables) {
    double sum = 0;
    int month = 0;
    for (double kgPerDay : tables.districts().get(row.get("growth")).growthKgDmPerHaPerDay()) {
      sum += kgPerDay * Month.of(++month).minLength();
    }
    return 1000 * number(row, "grown_t") / sum;
  }

  private static String plants(Map<String, String> row) {
    StringBuilder text = new StringBuilder("paddock,cultivar,plants\n");
    int paddock = 0;
    for (String stand : stands(row)) {
      String cultivar = stand.substring(stand.indexOf(' ') + 1);
      text.append("P%d,%s,400\n".formatted(++paddock, cultivar));
    }
    return text.toString();
  }

  /** Per cent of clover and its name, a paddock each. */
  private static String[] stands(Map<String, String> row) {
    return row.get("stand").split("; ");
  }

  private static double number(Map<String, String> row, String column) {
    return row.get(column).isEmpty() ? 0 : Double.parseDouble(row.get(column));
  }

  private static String rounded(double value) {
    return String.format(Locale.ROOT, "%.4f", value);
  }

  private static void write(Path folder, String file, String text) throws IOException {
    Files.writeString(folder.resolve(file), text, StandardCharsets.UTF_8);
  }
}
