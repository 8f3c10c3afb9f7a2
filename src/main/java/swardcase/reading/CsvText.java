package swardcase.reading;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.JsonToken;
import com.fasterxml.jackson.dataformat.csv.CsvFactory;
import com.fasterxml.jackson.dataformat.csv.CsvParser;
import com.fasterxml.jackson.dataformat.csv.CsvSchema;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import swardcase.check.ReadLimits;
import swardcase.reading.Node.Spot;

/** Turns the text of a CSV file into lines of cells, each with its line number. */
final class CsvText {

  private static final CsvFactory FACTORY =
      CsvFactory.builder()
          .enable(CsvParser.Feature.TRIM_SPACES)
          .enable(CsvParser.Feature.SKIP_EMPTY_LINES)
          .build();

  private CsvText() {}

  /** The lines that hold something; faults make the list empty or short. */
  static List<Table.Line> lines(String file, String text, Faults faults) {
    hashNames(file, text, faults);
    List<Table.Line> lines = new ArrayList<>();
    try (CsvParser parser = FACTORY.createParser(text)) {
      parser.setSchema(CsvSchema.emptySchema().withComments().withColumnSeparator(separator(text)));
      read(parser, lines);
    } catch (JsonProcessingException e) {
      String rule = "must have each quotation mark closed, and only a separator after it";
      faults.add(new Spot(file, Math.max(0, e.getLocation().getLineNr())), "", rule, "");
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return lines;
  }

  /** Reads one line more than a table may have, so that the table can refuse them. */
  private static void read(CsvParser parser, List<Table.Line> lines) throws IOException {
    while (parser.nextToken() != null && lines.size() <= ReadLimits.ROWS) {
      List<String> cells = new ArrayList<>();
      int number = 0;
      while (parser.nextToken() != JsonToken.END_ARRAY) {
        number = number == 0 ? parser.currentTokenLocation().getLineNr() : number;
        cells.add(parser.getText().strip());
      }
      if (!cells.stream().allMatch(String::isEmpty)) {
        lines.add(new Table.Line(number, cells));
      }
    }
  }

  /** A name such as #3 or #Back at the start of a line would be skipped as a comment. */
  private static void hashNames(String file, String text, Faults faults) {
    int number = 0;
    for (String line : text.lines().toList()) {
      number++;
      if (line.indexOf('#') >= 0 && line.matches("\\s*#[\\p{L}\\p{N}].*")) {
        faults.add(
            new Spot(file, number),
            "",
            "must not start with # and a letter or digit: put a name in quotation marks, or a"
                + " space after the # of a comment",
            line.strip());
      }
    }
  }

  /** Semicolon if the heading line has more of them than commas. */
  static char separator(String text) {
    String heading =
        text.lines()
            .filter(line -> !line.isBlank() && !line.stripLeading().startsWith("#"))
            .findFirst()
            .orElse("");
    long semicolons = heading.chars().filter(c -> c == ';').count();
    return semicolons > heading.chars().filter(c -> c == ',').count() ? ';' : ',';
  }
}
