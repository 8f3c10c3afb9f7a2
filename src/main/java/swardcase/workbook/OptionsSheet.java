package swardcase.workbook;

import java.util.List;
import org.dhatim.fastexcel.Worksheet;
import swardcase.report.PaddockResult;
import swardcase.report.Report;
import swardcase.wording.PaddockWords;
import swardcase.wording.ReturnsWords;

/** Every action looked at on every paddock, each on its own against keeping. */
final class OptionsSheet {

  private OptionsSheet() {}

  static void fill(Worksheet sheet, Report report) {
    Grid grid = new Grid(sheet, 20, 8, 32, 9, 8, 9, 11, 11, 11, 11, 10, 9, 11, 10, 60);
    grid.head(
        0,
        List.of(
            "Paddock",
            ">Area, ha",
            "Action",
            "Chosen",
            ">Start",
            ">Cost per ha",
            ">Gain, low",
            ">Gain, likely",
            ">Gain, high",
            ">Yearly per ha",
            ">IRR",
            ">MIRR",
            ">Payback, years",
            ">Benefit : cost",
            "Why not"));
    grid.freezeBelow(0);
    PaddockWords words = new PaddockWords(report.farm());
    int row = 1;
    for (PaddockResult paddock : report.paddocks()) {
      for (PaddockResult.OptionResult option : paddock.options()) {
        ReturnsWords returns = ReturnsWords.of(option.returns(), report.farm().horizonYears());
        grid.text(row, 0, paddock.name());
        grid.number(row, 1, paddock.areaHa(), Grid.AMOUNT);
        grid.text(row, 2, option.name());
        grid.text(row, 3, option.chosen() ? "yes" : "no");
        if (option.start().isPresent()) {
          grid.number(row, 4, option.start().getAsInt(), "0");
        }
        grid.number(row, 5, option.costPerHa().likely(), Grid.MONEY);
        grid.number(row, 6, option.npv().low(), Grid.MONEY);
        grid.number(row, 7, option.npv().likely(), Grid.MONEY);
        grid.number(row, 8, option.npv().high(), Grid.MONEY);
        grid.number(row, 9, option.annuityPerHa().likely(), Grid.AMOUNT);
        grid.right(row, 10, returns.irr());
        grid.right(row, 11, returns.mirr());
        grid.right(row, 12, returns.payback());
        grid.right(row, 13, returns.benefitCost());
        grid.wrapped(row, 14, words.whyNot(option));
        row++;
      }
    }
  }
}
