package swardcase.tables;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.JsonToken;
import com.fasterxml.jackson.dataformat.csv.CsvFactory;
import com.fasterxml.jackson.dataformat.csv.CsvParser;
import com.fasterxml.jackson.dataformat.csv.CsvSchema;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.ByteBuffer;
import java.nio.CharBuffer;
import java.nio.charset.CharsetDecoder;
import java.nio.charset.CoderResult;
import java.nio.charset.CodingErrorAction;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import swardcase.check.Fault;
import swardcase.check.ReadLimits;

/** Turns the bytes of a CSV file into lines of cells, each with its line number. */
final class CsvText {

  private static final CsvFactory FACTORY =
      CsvFactory.builder()
          .enable(CsvParser.Feature.TRIM_SPACES)
          .enable(CsvParser.Feature.SKIP_EMPTY_LINES)
          .build();

  /** The cells of a line, trimmed; blank cells are empty strings. */
  record Line(int number, List<String> cells) {

    boolean isBlank() {
      return cells.stream().allMatch(String::isEmpty);
    }
  }

  private CsvText() {}

  /** The lines that hold something, and the separator; faults make the list empty or short. */
  static List<Line> lines(String file, byte[] bytes, List<Fault> faults) {
    String text = decode(file, bytes, faults);
    hashNames(file, text, faults);
    List<Line> lines = new ArrayList<>();
    try (CsvParser parser = FACTORY.createParser(text)) {
      parser.setSchema(CsvSchema.emptySchema().withComments().withColumnSeparator(separator(text)));
      read(parser, lines);
    } catch (JsonProcessingException e) {
      faults.add(
          new Fault(
              file,
              Math.max(0, e.getLocation().getLineNr()),
              "",
              "must have each quotation mark closed, and only a separator after it",
              "",
              ""));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return lines;
  }

  /** Reads one line more than a table may have, so that the table can refuse them. */
  private static void read(CsvParser parser, List<Line> lines) throws IOException {
    List<String> cells = new ArrayList<>();
    int number = 0;
    for (JsonToken token = parser.nextToken(); token != null; token = parser.nextToken()) {
      if (token == JsonToken.START_ARRAY) {
        cells = new ArrayList<>();
        number = 0;
      } else if (token == JsonToken.END_ARRAY) {
        Line line = new Line(number, List.copyOf(cells));
        if (!line.isBlank()) {
          lines.add(line);
        }
        if (lines.size() > ReadLimits.ROWS) {
          return;
        }
      } else {
        number = number == 0 ? parser.currentTokenLocation().getLineNr() : number;
        cells.add(parser.getText().strip());
      }
    }
  }

  /** UTF-8, with or without a byte order mark. */
  private static String decode(String file, byte[] bytes, List<Fault> faults) {
    CharsetDecoder decoder =
        StandardCharsets.UTF_8
            .newDecoder()
            .onMalformedInput(CodingErrorAction.REPORT)
            .onUnmappableCharacter(CodingErrorAction.REPORT);
    ByteBuffer in = ByteBuffer.wrap(bytes);
    CharBuffer out = CharBuffer.allocate(bytes.length + 1);
    CoderResult result = decoder.decode(in, out, true);
    String text = out.flip().toString();
    if (result.isError()) {
      int line = 1 + (int) text.chars().filter(c -> c == '\n').count();
      faults.add(new Fault(file, line, "", "must be saved as UTF-8 text", "", ""));
      return "";
    }
    return text.startsWith("\uFEFF") ? text.substring(1) : text;
  }

  /** A name such as #3 or #Back at the start of a line would be skipped as a comment. */
  private static void hashNames(String file, String text, List<Fault> faults) {
    List<String> lines = text.lines().toList();
    for (int i = 0; i < lines.size() && faults.size() < ReadLimits.FAULTS; i++) {
      if (lines.get(i).indexOf('#') >= 0 && lines.get(i).matches("\\s*#[\\p{L}\\p{N}].*")) {
        faults.add(
            new Fault(
                file,
                i + 1,
                "",
                "must not start with # and a letter or digit: put a name in quotation marks, or a"
                    + " space after the # of a comment",
                lines.get(i).strip(),
                ""));
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
