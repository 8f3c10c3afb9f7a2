package swardcase.evaluation;

import com.fasterxml.jackson.databind.MappingIterator;
import com.fasterxml.jackson.dataformat.csv.CsvMapper;
import com.fasterxml.jackson.dataformat.csv.CsvParser;
import com.fasterxml.jackson.dataformat.csv.CsvSchema;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;

/**
 * Rows of a check file among the test resources: a header row, and lines of comment with {@code #}.
 */
public final class PublishedRows {

  private PublishedRows() {}

  /** Rows of a file with values of published sources, by column. */
  public static List<Map<String, String>> published(String name) {
    return rows("/published/" + name);
  }

  /** Rows of a file with values recomputed outside this program, by column. */
  public static List<Map<String, String>> independent(String name) {
    return rows("/independent/" + name);
  }

  private static List<Map<String, String>> rows(String resource) {
    try (InputStream file = PublishedRows.class.getResourceAsStream(resource)) {
      return rows(file);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** Rows of a file, by column. */
  public static List<Map<String, String>> rows(Path path) {
    try (InputStream file = Files.newInputStream(path)) {
      return rows(file);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static List<Map<String, String>> rows(InputStream file) throws IOException {
    CsvSchema header = CsvSchema.emptySchema().withHeader().withComments();
    try (MappingIterator<Map<String, String>> rows =
        new CsvMapper()
            .readerForMapOf(String.class)
            .with(header)
            .with(CsvParser.Feature.TRIM_SPACES)
            .readValues(file)) {
      return rows.readAll();
    }
  }

  /** The number in a column. */
  public static double number(Map<String, String> row, String column) {
    return Double.parseDouble(row.get(column));
  }
}
