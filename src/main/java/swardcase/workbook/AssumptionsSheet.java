package swardcase.workbook;

import java.util.List;
import org.dhatim.fastexcel.Worksheet;
import swardcase.evidence.Assumption;
import swardcase.report.Report;
import swardcase.tables.Source;

/** Every number the answer rests on, with its mark, and the sources below. */
final class AssumptionsSheet {

  /** What stands for no unit. */
  private static final String NONE = "-";

  private AssumptionsSheet() {}

  static void fill(Worksheet sheet, Report report) {
    Grid grid = new Grid(sheet, 56, 11, 11, 11, 20, 16, 40, 14);
    grid.head(
        0, List.of("Number", ">Low", ">Likely", ">High", "Unit", "Evidence", "Source", "Set by"));
    grid.freezeBelow(0);
    int row = 1;
    for (Assumption assumption : report.assumptions()) {
      grid.wrapped(row, 0, assumption.name());
      grid.plain(row, 1, assumption.range().low());
      grid.plain(row, 2, assumption.likely());
      grid.plain(row, 3, assumption.range().high());
      grid.text(row, 4, assumption.unit().equals(NONE) ? "" : assumption.unit());
      grid.text(row, 5, assumption.evidence().label());
      grid.wrapped(row, 6, assumption.source().replace(";", "; "));
      grid.text(row, 7, assumption.setBy().label());
      row++;
    }
    row++;
    grid.head(row++, List.of("Sources", "Read", "Citation"));
    for (Source source : report.sources()) {
      grid.text(row, 0, source.key());
      grid.text(row, 1, source.read());
      grid.text(row, 2, source.citation());
      row++;
    }
  }
}
