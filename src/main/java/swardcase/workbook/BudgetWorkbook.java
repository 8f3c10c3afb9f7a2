package swardcase.workbook;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import org.dhatim.fastexcel.Workbook;
import swardcase.report.Budget;
import swardcase.report.Report;

/** Writes the budget case as an .xlsx workbook; the same report gives the same bytes. */
public final class BudgetWorkbook {

  private BudgetWorkbook() {}

  /** Writes the whole workbook and leaves the stream open. */
  public static void write(Report report, Budget budget, OutputStream to) throws IOException {
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    try (Workbook book = new Workbook(bytes, "Swardcase", report.schemaVersion())) {
      BudgetSheet.fill(book.newWorksheet("Budget"), report, budget);
      PlanSheet.fill(book.newWorksheet("Plan"), report);
      OptionsSheet.fill(book.newWorksheet("Paddocks"), report);
      AssumptionsSheet.fill(book.newWorksheet("Assumptions"), report);
      ReadMeSheet.fill(book.newWorksheet("Read me"), report);
    }
    FixedArchive.copy(bytes.toByteArray(), report.farm().date(), to);
  }
}
