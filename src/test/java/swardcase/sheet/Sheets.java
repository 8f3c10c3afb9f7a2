package swardcase.sheet;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import swardcase.report.Report;

/** The sheets under test, each written once, with a copy in {@code target/sheets} to look at. */
final class Sheets {

  private static final Map<String, Report> REPORTS = new LinkedHashMap<>();
  private static final Map<String, byte[]> SHEETS = new LinkedHashMap<>();

  static {
    REPORTS.put("twelve paddocks", SampleReports.twelvePaddocks());
    REPORTS.put("one paddock", SampleReports.onePaddock());
    REPORTS.put("long names", SampleReports.longNames());
    REPORTS.put("great sums", SampleReports.greatSums());
    REPORTS.put("400 paddocks", SampleReports.fourHundredPaddocks());
    REPORTS.put("empty", SampleReports.empty());
    try {
      Path folder = Files.createDirectories(Path.of("target/sheets"));
      for (Map.Entry<String, Report> report : REPORTS.entrySet()) {
        byte[] sheet = write(report.getValue());
        SHEETS.put(report.getKey(), sheet);
        Files.write(folder.resolve(report.getKey().replace(' ', '-') + ".pdf"), sheet);
      }
    } catch (IOException failure) {
      throw new UncheckedIOException(failure);
    }
  }

  private Sheets() {}

  static Stream<String> names() {
    return REPORTS.keySet().stream();
  }

  static Report report(String name) {
    return REPORTS.get(name);
  }

  static byte[] bytes(String name) {
    return SHEETS.get(name);
  }

  static byte[] write(Report report) throws IOException {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    DecisionSheet.write(report, Optional.empty(), out);
    return out.toByteArray();
  }
}
