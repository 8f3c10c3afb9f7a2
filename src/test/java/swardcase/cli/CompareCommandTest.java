package swardcase.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Two farms side by side, as a user sees it. */
class CompareCommandTest {

  private static final Path SOWING = Path.of("src/test/resources/farms/sowing");

  @TempDir private Path folder;
  private Path farm;
  private Path copy;

  /** What was printed, and the document. */
  private record Compared(String out, JsonNode json) {

    List<String> steps() {
      List<String> steps = new ArrayList<>();
      for (JsonNode parts : json.at("/others/0/steps").findValues("parts")) {
        List<String> names = new ArrayList<>();
        parts.forEach(part -> names.add(part.asText()));
        steps.add(String.join("; ", names));
      }
      return steps;
    }
  }

  @BeforeEach
  void copyFarm() throws IOException {
    farm = copyTo("farm");
    copy = copyTo("copy");
  }

  /** A farm that sows; the actions it would not choose are left out, to be quick. */
  private Path copyTo(String name) throws IOException {
    Path to = Files.createDirectories(folder.resolve(name));
    try (Stream<Path> files = Files.list(SOWING)) {
      for (Path file : files.toList()) {
        Files.copy(file, to.resolve(file.getFileName()));
      }
    }
    StringBuilder actions = new StringBuilder();
    for (String action : List.of("oversow", "crop-1", "crop-2", "crop-3")) {
      actions.append("  ").append(action).append(":\n    considered: no\n");
    }
    Files.writeString(to.resolve("farm.yaml"), actions, StandardOpenOption.APPEND);
    edit(to, "farm.yaml", "oversow:\n    seed", "spray-fallow:\n    seed");
    return to;
  }

  private void edit(String file, String from, String to) throws IOException {
    edit(copy, file, from, to);
  }

  private static void edit(Path folder, String file, String from, String to) throws IOException {
    Path place = folder.resolve(file);
    String text = Files.readString(place);
    assertThat(text).contains(from);
    Files.writeString(place, text.replace(from, to));
  }

  private Ran compare(Path first, Path second, Object... more) {
    Object[] command = {"compare", first, second, "--date", "2026-11-25", "--draws", "200"};
    return Ran.command(Stream.concat(Stream.of(command), Stream.of(more)).toArray());
  }

  private Compared compared() throws IOException {
    Path file = folder.resolve("comparison.json");
    Ran ran = compare(farm, copy, "--json", file);
    assertThat(ran.err()).isEmpty();
    assertThat(ran.code()).isZero();
    assertThat(ran.out()).contains("Written: " + file);
    return new Compared(ran.out(), new ObjectMapper().readTree(file.toFile()));
  }

  @Test
  void compare_farmWithItself_findsNoDifference() throws IOException {
    Compared compared = compared();
    JsonNode same = compared.json();

    assertThat(same.at("/others/0/steps")).isEmpty();
    assertThat(same.at("/first/planNpv")).isEqualTo(same.at("/others/0/side/planNpv"));
    assertThat(same.at("/first/likelyNpv").asDouble()).isPositive();
    for (JsonNode paddock : same.at("/others/0/paddocks")) {
      assertThat(paddock.get("first")).isEqualTo(paddock.get("second"));
    }
    assertThat(compared.out())
        .contains("Nothing: the two are alike in all that is calculated with.");
  }

  @Test
  void compare_copyWithDearerLambs_namesPricesAloneAndGainsMore() throws IOException {
    edit("farm.yaml", "net_value_per_lamb: 150", "net_value_per_lamb: 200");

    Compared dearer = compared();

    assertThat(dearer.steps()).containsExactly("prices");
    assertThat(dearer.json().at("/others/0/steps/0/change").asDouble()).isPositive();
  }

  @Test
  void steps_fromAFarmToAnother_comeInOrderAndAddUp() throws IOException {
    changeALot();

    Compared compared = compared();

    assertThat(compared.steps())
        .containsExactly(
            "prices", "finance", "seasons", "flock", "management", "actions", "paddocks");
    JsonNode changed = compared.json();
    double npv = changed.at("/first/likelyNpv").asDouble();
    for (JsonNode step : changed.at("/others/0/steps")) {
      npv += step.get("change").asDouble();
      // Numbers of the document have six significant digits.
      assertThat(npv).isCloseTo(step.get("npv").asDouble(), within(1e-5 * 7 * Math.abs(npv)));
      npv = step.get("npv").asDouble();
    }
    assertThat(npv).isEqualTo(changed.at("/others/0/side/likelyNpv").asDouble());
  }

  @Test
  void step_onTheWay_arrivesAtTheFarmWithThatGroupAlone() throws IOException {
    edit("farm.yaml", "net_value_per_lamb: 150", "net_value_per_lamb: 110");
    double pricesAlone = compared().json().at("/others/0/side/likelyNpv").asDouble();

    edit("farm.yaml", "ewes: 600", "ewes: 900");
    edit("paddocks.csv", "Flat,60,50,60,70", "Flat,80,50,60,70");

    Compared all = compared();
    assertThat(all.json().at("/others/0/steps/0/npv").asDouble()).isEqualTo(pricesAlone);
    assertThat(all.json().at("/others/0/side/likelyNpv").asDouble()).isNotEqualTo(pricesAlone);
  }

  @Test
  void steps_asPrinted_addUpToTheLastDigit() throws IOException {
    changeALot();

    List<long[]> rows =
        compare(farm, copy)
            .out()
            .lines()
            .dropWhile(line -> !line.startsWith("nothing yet"))
            .takeWhile(line -> line.matches(".*\\d"))
            .map(CompareCommandTest::numbers)
            .toList();

    assertThat(rows).hasSizeGreaterThan(3);
    long npv = rows.get(0)[0];
    for (long[] step : rows.subList(1, rows.size() - 1)) {
      npv += step[0];
      assertThat(step[0]).isNotZero();
      assertThat(step[1]).isEqualTo(npv);
    }
    assertThat(rows.get(rows.size() - 1)).containsExactly(npv - rows.get(0)[0], npv);
  }

  private void changeALot() throws IOException {
    edit("farm.yaml", "net_value_per_lamb: 150", "net_value_per_lamb: 110");
    edit("farm.yaml", "horizon_years: 12", "horizon_years: 15");
    edit("farm.yaml", "growth: Katanning", "growth: Esperance");
    edit("farm.yaml", "ewes: 600", "ewes: 900");
    edit("farm.yaml", "name: Sowing Farm", "name: Other Farm\nextra_feed_use: run more ewes");
    edit("farm.yaml", "drilling: 10", "drilling: 60");
    edit("paddocks.csv", "Flat,60,50,60,70", "Flat,80,50,60,70");
  }

  private static long[] numbers(String row) {
    String[] cells = row.split(" {2,}");
    return Stream.of(cells)
        .skip(1)
        .mapToLong(cell -> Long.parseLong(cell.replace(",", "").replace('\u2212', '-')))
        .toArray();
  }

  @Test
  void sides_ofTheComparison_areWhatDecideSays() throws IOException {
    edit("farm.yaml", "ewes: 600", "ewes: 900");
    Path decided = folder.resolve("decided.json");

    JsonNode second = compared().json().at("/others/0/side");
    Ran.command(
        "decide", copy, "--date", "2026-11-25", "--draws", "200", "--json", decided, "--seed", 1);

    JsonNode report = new ObjectMapper().readTree(decided.toFile());
    assertThat(second.get("planNpv")).isEqualTo(report.at("/plan/npv"));
    assertThat(second.get("planCost")).isEqualTo(report.at("/plan/cost"));
    assertThat(second.get("lambsLost")).isEqualTo(report.at("/reproduction/lambsLostPerYear"));
    assertThat(second.get("winterFeedCost")).isEqualTo(report.at("/winterFeed/supplementCost"));
  }

  @Test
  void paddocks_ofOneFarmOnly_areSaidNotToBeOnTheOther() throws IOException {
    edit("paddocks.csv", "Flat,", "Far,");
    edit("plants.csv", "Flat,", "Far,");

    Compared compared = compared();
    JsonNode renamed = compared.json();

    assertThat(renamed.at("/others/0/paddocks").findValuesAsText("name"))
        .containsExactly("House", "Flat", "Far");
    assertThat(renamed.at("/others/0/paddocks/1/second").isNull()).isTrue();
    assertThat(renamed.at("/others/0/paddocks/2/first").isNull()).isTrue();
    assertThat(compared.out()).containsPattern("Far +not on this farm");
  }

  @Test
  void mobs_withPaddocksOfTheirOwn_areTakenTogetherWithThem() throws IOException {
    edit(farm, "farm.yaml", "  - name: ewes\n    ewes: 600", "  - name: old\n    ewes: 600");
    edit(farm, "paddocks.csv", "clover_percent_high", "clover_percent_high,use");
    edit(farm, "paddocks.csv", "60,70,80", "60,70,80,old");
    edit(farm, "paddocks.csv", "50,60,70", "50,60,70,");

    assertThat(compared().steps()).containsExactly("flock; paddocks");
  }

  @Test
  void faults_ofBothFarms_areGivenAtOnceWithTheirFolders() throws IOException {
    edit("farm.yaml", "ewes: 600", "ewes: many");
    Path none = folder.resolve("none");

    Ran ran = compare(none, copy);

    assertThat(ran.code()).isEqualTo(ExitCodes.BAD_INPUT);
    assertThat(ran.out()).isEmpty();
    assertThat(ran.err().lines())
        .hasSize(3)
        .anyMatch(line -> line.startsWith(copy + "/farm.yaml:7: mobs[1].ewes: "))
        .contains(none + ": must be a folder", "2 faults. Nothing was written.");
  }

  @Test
  void farms_inTwoCurrencies_areNotCompared() throws IOException {
    edit("farm.yaml", "currency: A$", "currency: £");

    Ran ran = compare(farm, copy);

    assertThat(ran.code()).isEqualTo(ExitCodes.BAD_INPUT);
    assertThat(ran.err())
        .contains(copy + "/farm.yaml: currency: must be A$ as in the first farm", "found '£'");
  }

  @Test
  void json_overAFileOfTheSecondFarm_isRefused() throws IOException {
    Ran ran = compare(farm, copy, "--json", copy.resolve("farm.yaml"));

    assertThat(ran.code()).isEqualTo(ExitCodes.BAD_INPUT);
    assertThat(ran.err()).contains("it is one of the files that were read");
  }
}
