package swardcase.evaluation;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.Writer;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.EnabledIfSystemProperty;
import org.junit.jupiter.api.io.TempDir;
import picocli.CommandLine;
import swardcase.cli.Main;

/**
 * Which reference values move a decision on the demo farms: every number of the tables goes to the
 * ends of its range alone, the whole program runs again, and its result documents are compared.
 * Takes minutes; run it with {@code mvn -q test -Dtest=DecidingValuesTest -Ddeciding=true}, which
 * writes the tables at the end of docs/evaluation.md.
 */
@EnabledIfSystemProperty(named = "deciding", matches = "true")
class DecidingValuesTest {

  private static final Path DOCUMENT = Path.of("docs/evaluation.md");
  private static final String FROM = "<!-- deciding values: written by DecidingValuesTest -->\n";
  private static final List<String> FARMS = List.of("mixed-farm", "northern-farm", "current-farm");

  /** Further options of the command, such as fewer draws. */
  private static final String OPTIONS = System.getProperty("deciding.options", "");

  private static final double LIMIT = 0.05;

  @TempDir private Path work;

  private int runs;

  /**
   * What a value moves.
   *
   * @param change the value
   * @param share largest change of an action's net present value, as a share of the action's cost
   * @param where the paddock and action it is largest for
   * @param otherChoice paddocks in which something else is done at one end or the other
   */
  private record Effect(
      ReferenceChange change, double share, String where, List<String> otherChoice) {}

  /** Net present value and cost of an action on a paddock, likely. */
  private record Option(double npv, double cost) {}

  @Test
  void valuesThatMoveADecision_areWrittenDown() throws IOException {
    String document = Files.readString(DOCUMENT, StandardCharsets.UTF_8);
    int at = document.indexOf(FROM);
    assertThat(at).as("the mark in " + DOCUMENT).isPositive();
    StringBuilder text = new StringBuilder(document.substring(0, at)).append(FROM);
    for (String farm : FARMS) {
      List<Effect> effects = effects(Path.of("demo-data", farm));
      assertThat(effects).allSatisfy(e -> assertThat(e.change().evidence()).isNotBlank());
      write(text, farm, effects);
      Files.writeString(DOCUMENT, text, StandardCharsets.UTF_8);
    }
  }

  private List<Effect> effects(Path farm) throws IOException {
    JsonNode base = decide(farm, null).orElseThrow();
    List<Effect> effects = new ArrayList<>();
    for (ReferenceChange change : ReferenceChange.all(base.toString())) {
      JsonNode low = decide(farm, tables(change, change.low())).orElse(base);
      JsonNode high = decide(farm, tables(change, change.high())).orElse(base);
      Effect effect = effect(change, base, low, high);
      if (effect.share() > LIMIT || !effect.otherChoice().isEmpty()) {
        effects.add(effect);
      }
    }
    effects.sort(
        Comparator.comparing((Effect e) -> e.otherChoice().isEmpty())
            .thenComparing(Effect::share, Comparator.reverseOrder())
            .thenComparing(e -> e.change().input()));
    return effects;
  }

  private static Effect effect(ReferenceChange change, JsonNode base, JsonNode low, JsonNode high) {
    Map<String, Option> options = options(base);
    Map<String, Option> atLow = options(low);
    Map<String, Option> atHigh = options(high);
    double most = 0;
    String where = "";
    for (Map.Entry<String, Option> entry : options.entrySet()) {
      double cost = entry.getValue().cost();
      Option a = atLow.get(entry.getKey());
      Option b = atHigh.get(entry.getKey());
      if (cost > 0 && a != null && b != null && Math.abs(b.npv() - a.npv()) / cost > most) {
        most = Math.abs(b.npv() - a.npv()) / cost;
        where = entry.getKey();
      }
    }
    Map<String, String> choices = choices(base);
    List<String> other =
        choices.keySet().stream()
            .filter(
                paddock ->
                    !choices.get(paddock).equals(choices(low).get(paddock))
                        || !choices.get(paddock).equals(choices(high).get(paddock)))
            .toList();
    return new Effect(change, most, where, other);
  }

  private static Map<String, Option> options(JsonNode report) {
    Map<String, Option> options = new TreeMap<>();
    for (JsonNode paddock : report.get("paddocks")) {
      double area = paddock.get("areaHa").asDouble();
      for (JsonNode option : paddock.get("options")) {
        options.put(
            paddock.get("name").asText() + ": " + option.get("action").asText(),
            new Option(
                option.get("npv").get("likely").asDouble(),
                area * option.get("costPerHa").get("likely").asDouble()));
      }
    }
    return options;
  }

  private static Map<String, String> choices(JsonNode report) {
    Map<String, String> choices = new TreeMap<>();
    report
        .get("paddocks")
        .forEach(p -> choices.put(p.get("name").asText(), p.get("action").asText()));
    return choices;
  }

  private Path tables(ReferenceChange change, List<Map<String, String>> rows) throws IOException {
    Path folder = work.resolve("tables-" + runs++);
    ReferenceChange.write(folder, change.file(), rows);
    return folder;
  }

  /** The result document; empty where the program refuses the changed table. */
  private Optional<JsonNode> decide(Path farm, Path tables) throws IOException {
    Path json = work.resolve("result-" + runs++ + ".json");
    List<String> arguments =
        new ArrayList<>(
            List.of("decide", farm.toString(), "--date", "2026-01-01", "--json", json.toString()));
    if (tables != null) {
      arguments.addAll(List.of("--tables", tables.toString()));
    }
    if (!OPTIONS.isEmpty()) {
      arguments.addAll(List.of(OPTIONS.split(" ")));
    }
    PrintWriter nowhere = new PrintWriter(Writer.nullWriter());
    CommandLine program = Main.commandLine().setOut(nowhere).setErr(nowhere);
    int code = program.execute(arguments.toArray(String[]::new));
    return code == 0 ? Optional.of(new ObjectMapper().readTree(json.toFile())) : Optional.empty();
  }

  private static void write(StringBuilder text, String farm, List<Effect> effects) {
    text.append("\n### ").append(farm).append("\n\n");
    if (effects.isEmpty()) {
      text.append("None.\n");
      return;
    }
    text.append("| value | table | range tried | mark | source | NPV moves, % of cost | most in |");
    text.append(" something else is done in |\n|---|---|---|---|---|---|---|---|\n");
    for (Effect effect : effects) {
      ReferenceChange change = effect.change();
      text.append(
          String.format(
              Locale.ROOT,
              "| %s | %s | %s | %s | %s | %.0f | %s | %s |\n",
              change.input(),
              change.file().replace(".csv", ""),
              change.range(),
              change.evidence(),
              change.source().replace(";", "; "),
              100 * effect.share(),
              effect.where(),
              String.join(", ", effect.otherChoice())));
    }
  }
}
