package swardcase.sheet;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import swardcase.evidence.SetBy;
import swardcase.report.BudgetCase;
import swardcase.report.BudgetCase.CostItem;
import swardcase.report.BudgetCase.PriceTable;
import swardcase.report.Report;

/**
 * The sheets and cases under test, each written once, with a copy in {@code target/sheets} to look
 * at. A case has the name of its report and {@code , case} behind it.
 */
final class Sheets {

  private static final String CASE = ", case";
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
      for (String name : names().toList()) {
        byte[] sheet = write(name);
        SHEETS.put(name, sheet);
        Files.write(folder.resolve(name.replaceAll("\\W+", "-") + ".pdf"), sheet);
      }
    } catch (IOException failure) {
      throw new UncheckedIOException(failure);
    }
  }

  private Sheets() {}

  /** Sheets and cases. */
  static Stream<String> names() {
    return Stream.concat(sheets(), sheets().map(Sheets::ofCase));
  }

  static Stream<String> sheets() {
    return REPORTS.keySet().stream();
  }

  static String ofCase(String name) {
    return name + CASE;
  }

  static Report report(String name) {
    return REPORTS.get(name);
  }

  static byte[] bytes(String name) {
    return SHEETS.get(name);
  }

  static byte[] write(String name) throws IOException {
    return name.endsWith(CASE)
        ? writeCase(report(name.substring(0, name.length() - CASE.length())))
        : write(report(name));
  }

  static byte[] write(Report report) throws IOException {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    DecisionSheet.write(report, Optional.empty(), out);
    return out.toByteArray();
  }

  static byte[] writeCase(Report report) throws IOException {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    CaseSheet.write(
        report,
        new BudgetCase(
            "0123456789abcdef",
            report.paddocks().stream().map(paddock -> item(paddock.name())).toList(),
            new PriceTable(
                List.of(80.0, 120.0, 180.0),
                List.of(260.0, 330.0, 420.0),
                List.of(
                    List.of(13_000.0, 12_000.0, 11_000.0),
                    List.of(20_000.0, 19_000.0, 18_000.0),
                    List.of(30_000.0, 29_000.0, -28_000.0)))),
        new CaseHead(Optional.of("A. Nobody"), Optional.of("A lender"), Optional.of("First.")),
        Optional.empty(),
        out);
    return out.toByteArray();
  }

  private static CostItem item(String paddock) {
    return new CostItem(
        paddock,
        BudgetCase.Kind.LINE,
        Optional.of("seed"),
        1,
        45.5,
        1_820,
        Optional.of(SetBy.DEFAULT));
  }
}
