package swardcase.feed;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import swardcase.evaluation.PublishedRows;
import swardcase.evidence.Evidence;

/** The shipped table of feed parameters: complete, marked, and nothing in it unread. */
class FeedParametersTableTest {

  private static final List<Map<String, String>> ROWS =
      PublishedRows.rows(Path.of("tables/feed-parameters.csv"));

  @Test
  void everyRow_hasAUniqueKeyAMarkAndItsSourceOrReason() {
    assertThat(ROWS).extracting(row -> row.get("key")).doesNotHaveDuplicates();
    for (Map<String, String> row : ROWS) {
      assertThat(row.get("key")).startsWith("feed.");
      Evidence mark =
          Evidence.valueOf(row.get("evidence").toUpperCase(Locale.ROOT).replace(' ', '_'));
      if (mark == Evidence.PUBLISHED || mark == Evidence.MEMORY) {
        assertThat(row.get("source")).as(row.get("key")).isNotBlank();
      }
    }
  }

  @Test
  void everyKey_isReadByTheCalculators() throws IOException {
    StringBuilder code = new StringBuilder();
    try (Stream<Path> files = Files.list(Path.of("src/main/java/swardcase/feed"))) {
      for (Path file : files.sorted().toList()) {
        code.append(Files.readString(file));
      }
    }
    for (Map<String, String> row : ROWS) {
      assertThat(code).as(row.get("key")).contains("\"" + row.get("key") + "\"");
    }
  }

  @Test
  void ranges_standOnlyWhereARunTakesThem() {
    List<String> uncertain = new ArrayList<>();
    for (Map<String, String> row : ROWS) {
      if (PublishedRows.number(row, "low") < PublishedRows.number(row, "high")) {
        uncertain.add(row.get("key"));
      }
    }
    assertThat(uncertain)
        .containsExactly(
            "feed.leaf-area-penalty",
            "feed.leaf-area-bound",
            "feed.demand-multiplier",
            "feed.dry-loss-multiplier",
            "feed.growth-multiplier",
            "feed.intake-multiplier",
            "feed.green-digestibility",
            "feed.dry-selection",
            "feed.green-dying-multiplier");
  }

  @Test
  void numberWithoutARange_isDrawnWithItsEquation_orSaysWhyItIsFixed() {
    List<String> drawn = new ArrayList<>();
    for (Map<String, String> row : ROWS) {
      if (PublishedRows.number(row, "low") < PublishedRows.number(row, "high")) {
        drawn.add(row.get("name"));
      }
    }
    for (Map<String, String> row : ROWS) {
      if (!drawn.contains(row.get("name")) && !row.get("note").contains("Fixed: ")) {
        assertThat(drawn).as(row.get("key")).contains(row.get("doubt"));
      }
    }
  }
}
