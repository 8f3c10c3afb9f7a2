package swardcase.serve;

import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import swardcase.folder.WholeFiles.Content;
import swardcase.report.Answer;
import swardcase.report.BudgetCase;
import swardcase.report.FarmMap;
import swardcase.report.Report;
import swardcase.sheet.CaseHead;
import swardcase.sheet.CaseSheet;
import swardcase.sheet.DecisionSheet;
import swardcase.view.CsvView;
import swardcase.view.JsonView;
import swardcase.workbook.BudgetWorkbook;

/** The files of an answer, the same for the command that writes them and for the page. */
public final class AnswerFiles {

  /** The decision sheet. */
  public static final String SHEET = "decision-sheet.pdf";

  /** The budget case. */
  public static final String CASE = "budget-case.pdf";

  /** The result document. */
  public static final String DOCUMENT = "result.json";

  /** The budget as a workbook. */
  public static final String WORKBOOK = "budget.xlsx";

  private AnswerFiles() {}

  /**
   * Files by name, each made when it is written.
   *
   * @param map drawn where there is one
   * @param head of the case
   */
  public static Map<String, Content> of(Answer answer, Optional<FarmMap> map, CaseHead head) {
    Report report = answer.report();
    Map<String, Content> files = new LinkedHashMap<>();
    files.put(SHEET, to -> DecisionSheet.write(report, map, to));
    files.put(
        CASE,
        to ->
            CaseSheet.write(
                report,
                BudgetCase.of(answer.decision(), report),
                head,
                answer.joiningReport(List.of()),
                to));
    files.put(DOCUMENT, to -> text(JsonView.of(report)).write(to));
    files.put(WORKBOOK, to -> BudgetWorkbook.write(report, answer.budget(), to));
    return files;
  }

  /** Tables for a spreadsheet, by name. */
  public static Map<String, Content> tables(Report report) {
    Map<String, Content> files = new LinkedHashMap<>();
    CsvView.of(report).forEach((name, csv) -> files.put(name, text(csv)));
    return files;
  }

  /** A text as a file. */
  static Content text(String text) {
    return to -> to.write(text.getBytes(StandardCharsets.UTF_8));
  }
}
