package swardcase.evaluation;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import swardcase.evidence.Evidence;

/** The counts in docs/evaluation.md are those of the tables; -Drewrite=true writes them. */
class EvaluationDocumentTest {

  private static final Path TABLES = Path.of("tables");
  private static final String SOURCES = "sources.csv";

  static final List<String> MARKS =
      Stream.of(Evidence.PUBLISHED, Evidence.COMMON_PRACTICE, Evidence.MEMORY, Evidence.INFERRED)
          .map(Evidence::label)
          .toList();

  @Test
  void evidenceMarks_inTheDocument_areThoseOfTheTables() throws IOException {
    StringBuilder text = new StringBuilder("| table | " + String.join(" | ", MARKS) + " | all |\n");
    text.append("|---|---|---|---|---|---|\n");
    long[] all = new long[MARKS.size()];
    for (Path file : tables()) {
      List<String> marks = marks(file);
      long[] counts = MARKS.stream().mapToLong(mark -> count(marks, mark)).toArray();
      for (int k = 0; k < all.length; k++) {
        all[k] += counts[k];
      }
      row(text, file.getFileName().toString().replace(".csv", ""), counts);
      assertThat(MARKS).containsAll(marks);
    }
    row(text, "all", all);
    List<Map<String, String>> sources = PublishedRows.rows(TABLES.resolve(SOURCES));
    Map<String, Long> read = new TreeMap<>();
    sources.forEach(source -> read.merge(source.get("read").split(",")[0].strip(), 1L, Long::sum));
    text.append(
        "\nOf %s sources %s were read as an abstract, %s as one page; %s were not read at all.\n"
            .formatted(
                sources.size(), read.get("abstract"), read.get("page"), read.get("not read")));
    new GeneratedBlock("evidence marks").assertHolds(text.toString());
  }

  private static List<Path> tables() throws IOException {
    try (Stream<Path> files = Files.list(TABLES)) {
      return files
          .filter(file -> file.toString().endsWith(".csv") && !file.endsWith(SOURCES))
          .sorted()
          .toList();
    }
  }

  private static List<String> marks(Path file) {
    List<String> marks = new ArrayList<>();
    for (Map<String, String> row : PublishedRows.rows(file)) {
      row.forEach(
          (column, cell) -> {
            if (column.endsWith("evidence") && !cell.isEmpty()) {
              marks.add(cell);
            }
          });
    }
    return marks;
  }

  private static long count(List<String> marks, String mark) {
    return marks.stream().filter(mark::equals).count();
  }

  static void row(StringBuilder text, String name, long[] counts) {
    text.append("| ").append(name);
    long sum = 0;
    for (long count : counts) {
      text.append(" | ").append(count);
      sum += count;
    }
    text.append(" | ").append(sum).append(" |\n");
  }

  @Test
  void publishedChecks_inTheDocument_areCountedAsTheyStand() {
    new GeneratedBlock("headline of the checks").assertHolds(PublishedChecks.headline() + "\n");
    new GeneratedBlock("published checks").assertHolds(PublishedChecks.counts());
  }

  /** The list takes long to make; that its rows still say what the tables say is seen at once. */
  @Test
  void decidingValues_inTheirDocument_stillStandInTheTables() throws IOException {
    List<String> known =
        ReferenceChange.all(everyName()).stream().map(ReferenceChange::cells).toList();
    assertThat(decidingRows())
        .isNotEmpty()
        .allSatisfy(row -> assertThat(known).anyMatch(cells -> row.startsWith(cells)));
  }

  private static List<String> decidingRows() throws IOException {
    try (Stream<String> lines = Files.lines(DecidingValuesTest.DOCUMENT)) {
      return lines
          .dropWhile(line -> !line.startsWith("## "))
          .filter(line -> line.startsWith("| ") && !line.startsWith("| value |"))
          .toList();
    }
  }

  private static String everyName() {
    StringBuilder names = new StringBuilder();
    try {
      for (Path file : tables()) {
        names.append(Files.readString(file));
      }
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return names.toString();
  }
}
