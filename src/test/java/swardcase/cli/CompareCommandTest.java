package swardcase.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Two farms side by side, as a user sees it. */
class CompareCommandTest {

  private static final double MILLIONTH = 1e-6;

  @TempDir private Path folder;
  private Path farm;
  private Path copy;

  /** What was printed, and the document. */
  private record Compared(String out, JsonNode json) {

    /** The mean of a part of the difference. */
    double mean(String part) {
      return json.at("/others/0/difference/" + part + "/mean").asDouble();
    }

    /** What the plan of the other farm gains more than that of the first. */
    double gains() {
      return json.at("/others/0/side/gain/mean").asDouble()
          - json.at("/first/gain/mean").asDouble();
    }
  }

  @BeforeEach
  void copyFarm() throws IOException {
    farm = SowingFarm.write(folder.resolve("farm"));
    copy = SowingFarm.write(folder.resolve("copy"));
  }

  private void edit(String file, String from, String to) throws IOException {
    SowingFarm.edit(copy.resolve(file), from, to);
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

    for (JsonNode part : same.at("/others/0/difference")) {
      part.forEach(number -> assertThat(number.asDouble()).isZero());
    }
    assertThat(same.at("/first/gain")).isEqualTo(same.at("/others/0/side/gain"));
    assertThat(same.at("/first/gain/mean").asDouble()).isPositive();
    for (JsonNode paddock : same.at("/others/0/paddocks")) {
      assertThat(paddock.get("first")).isEqualTo(paddock.get("second"));
      assertThat(paddock.get("answerChanges").asBoolean()).isFalse();
    }
    assertThat(compared.out()).contains("Nothing: in every draw both come to the same.");
  }

  /** 12 years at 6 %, the coming one not discounted, are worth 8.8869 of one. */
  @Test
  void together_ofDearerLambs_isLambsMarkedTimesThePriceAndWhatThePlansGainMore()
      throws IOException {
    edit("farm.yaml", "net_value_per_lamb: 300", "net_value_per_lamb: 350");

    Compared dearer = compared();

    double result = dearer.json().at("/first/standingResult/mean").asDouble();
    double of = dearer.json().at("/others/0/side/standingResult/mean").asDouble();
    double years = 1.06 * (1 - Math.pow(1.06, -12)) / 0.06;
    assertThat(years).isCloseTo(8.8869, within(5e-5));
    assertThat(of - result).isBetween(50 * 200.0, 50 * 900.0);
    // Beside the lambs of today's stands, those that the plan of today gains are dearer too.
    assertThat(dearer.mean("byItself")).isGreaterThan((of - result) * years);
    assertThat(dearer.mean("together") - dearer.gains())
        .isCloseTo((of - result) * years, within(MILLIONTH));
    assertThat(dearer.mean("planAdds")).isNotNegative();
  }

  @Test
  void difference_ofAnotherFarm_addsUpAndEndsAtItsPlan() throws IOException {
    changeALot();

    Compared compared = compared();

    double size = Math.abs(compared.mean("byItself")) + Math.abs(compared.mean("planAdds"));
    assertThat(size).isGreaterThan(1000);
    assertThat(compared.mean("byItself") + compared.mean("planAdds"))
        .isCloseTo(compared.mean("together"), within(MILLIONTH));
    double here = compared.json().at("/first/standingResult/mean").asDouble();
    double there = compared.json().at("/others/0/side/standingResult/mean").asDouble();
    double standing =
        there * 1.08 * (1 - Math.pow(1.08, -15)) / 0.08
            - here * 1.06 * (1 - Math.pow(1.06, -12)) / 0.06;
    assertThat(compared.mean("together")).isCloseTo(standing + compared.gains(), within(MILLIONTH));
    // A long path may be broken over two lines.
    assertThat(compared.out().replaceAll("\\s+", ""))
        .contains("Thefirstfarmcounts12yearsand" + copy + "counts15")
        .contains("Thefirstfarmdiscountsby6%and" + copy + "by8%");
  }

  @Test
  void difference_asPrinted_addsUpToTheLastDigit() throws IOException {
    edit("farm.yaml", "net_value_per_lamb: 300", "net_value_per_lamb: 20");

    List<Long> means =
        compare(farm, copy)
            .out()
            .lines()
            .dropWhile(line -> !line.startsWith("the change by itself "))
            .limit(3)
            .map(CompareCommandTest::mean)
            .toList();

    assertThat(means).hasSize(3).doesNotContain(0L);
    assertThat(means.get(0) + means.get(1)).isEqualTo(means.get(2));
  }

  private void changeALot() throws IOException {
    edit("farm.yaml", "net_value_per_lamb: 300", "net_value_per_lamb: 220");
    edit("farm.yaml", "horizon_years: 12", "horizon_years: 15");
    edit("farm.yaml", "discount_rate_percent: 6", "discount_rate_percent: 8");
    edit("farm.yaml", "growth: Katanning", "growth: Esperance");
    edit("farm.yaml", "ewes: 600", "ewes: 900");
    edit("farm.yaml", "name: Sowing Farm", "name: Other Farm\nextra_feed_use: run more ewes");
    edit("farm.yaml", "drilling: 10", "drilling: 60");
    edit("paddocks.csv", "Flat,60,50,60,70", "Flat,80,50,60,70");
  }

  /** The first number of a row. */
  private static long mean(String row) {
    String number = row.split(" {2,}")[1].replaceAll(" \\(.*", "");
    return Long.parseLong(number.replace(",", "").replace('\u2212', '-'));
  }

  @Test
  void sides_ofTheComparison_areWhatDecideSays() throws IOException {
    edit("farm.yaml", "ewes: 600", "ewes: 900");
    Path decided = folder.resolve("decided.json");

    JsonNode second = compared().json().at("/others/0/side");
    Ran.command(
        "decide", copy, "--date", "2026-11-25", "--draws", "200", "--json", decided, "--seed", 1);

    JsonNode report = new ObjectMapper().readTree(decided.toFile());
    for (String key : List.of("gain", "sureGain", "calls", "hectaresSown")) {
      assertThat(second.get(key)).as(key).isEqualTo(report.at("/plan/" + key));
    }
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
    assertThat(compared.out())
        .containsPattern("Far .+ not on this farm")
        .containsPattern("Flat +not on this farm");
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
