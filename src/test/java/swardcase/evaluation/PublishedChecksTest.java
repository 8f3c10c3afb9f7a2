package swardcase.evaluation;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import swardcase.tables.Tables;
import swardcase.tables.TablesLoader;

/** The document of published checks is what the program computes; -Drewrite=true writes it. */
class PublishedChecksTest {

  private static final Path DOCUMENT = Path.of("docs/published-checks.md");

  @Test
  void document_onDisk_isWhatTheProgramComputes() throws IOException {
    String fresh = PublishedChecks.markdown();
    if (Boolean.getBoolean("rewrite")) {
      Files.writeString(DOCUMENT, fresh, StandardCharsets.UTF_8);
    }
    assertThat(Files.readString(DOCUMENT, StandardCharsets.UTF_8).lines().toList())
        .as("run mvn -q test -Dtest=PublishedChecksTest -Drewrite=true and read what changed")
        .isEqualTo(fresh.lines().toList());
  }

  /** Files that state which of their rows the program misses: no more and no fewer do. */
  @Test
  void rows_thatSayWhetherTheyAgree_doSo() {
    Map<String, List<PublishedCheck>> checks = new TreeMap<>();
    for (PublishedChecks.Section section : PublishedChecks.sections()) {
      checks.put(section.file(), section.checks());
    }
    for (String file :
        List.of("feed-values.csv", "reproduction-trials.csv", "supplement-cost.csv")) {
      List<Map<String, String>> rows = PublishedRows.published(file);
      for (int i = 0; i < rows.size(); i++) {
        assertThat(checks.get(file).get(i).agrees())
            .as(rows.get(i).toString())
            .isEqualTo(Boolean.parseBoolean(rows.get(i).get("agrees")));
      }
    }
  }

  /** A miss names a lever that has been tried, or says why none tells. */
  @Test
  void misses_ofAnyPart_sayWhatTheyWouldChange() {
    List<String> levers = Lever.all().stream().map(Lever::name).toList();
    for (PublishedChecks.Section section : PublishedChecks.sections()) {
      assertThat(section.checks())
          .as(section.title())
          .filteredOn(check -> !check.agrees())
          .allMatch(
              check -> levers.contains(check.effect()) || check.effect().startsWith("nothing"));
    }
  }

  /** A source that set a row of the tables is no outside evidence on what rests on that row. */
  @Test
  void trialsOfThePartOutside_areOfSourcesThatSetNothingTheyTest() {
    Tables tables = TablesLoader.standard().load();
    assertThat(PublishedRows.published("trial-results.csv"))
        .filteredOn(row -> row.get("part").equals("outside"))
        .hasSizeGreaterThanOrEqualTo(50)
        .allSatisfy(
            row -> {
              assertThat(tables.sources()).containsKey(row.get("source"));
              for (String key : row.get("tests").split(";")) {
                String source = key.isEmpty() ? "" : tables.parameter(key).source();
                assertThat(source.split(";")).as(key).doesNotContain(row.get("source"));
              }
            });
  }

  /** Worked values, and rows set with their source in view, all agree. */
  @Test
  void rows_ofArithmetic_allAgree() {
    for (PublishedChecks.Section section : PublishedChecks.sections()) {
      switch (section.file()) {
        case "money.csv", "seed-decay.csv", "dose-response.csv" ->
            assertThat(section.checks())
                .as(section.file())
                .isNotEmpty()
                .allMatch(PublishedCheck::agrees);
        default -> assertThat(section.checks()).as(section.file()).isNotEmpty();
      }
    }
  }
}
