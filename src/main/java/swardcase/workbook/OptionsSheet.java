package swardcase.workbook;

import java.util.List;
import org.dhatim.fastexcel.Worksheet;
import swardcase.report.PaddockResult;
import swardcase.report.Report;
import swardcase.wording.MoneyFaces;
import swardcase.wording.PaddockWords;
import swardcase.wording.ReturnsWords;

/** Every action looked at on every paddock, against keeping it, the rest of the plan being done. */
final class OptionsSheet {

  private OptionsSheet() {}

  static void fill(Worksheet sheet, Report report) {
    Grid grid =
        new Grid(sheet, 20, 8, 32, 9, 8, 9, 11, 11, 11, 9, 11, 32, 11, 8, 10, 9, 11, 10, 60);
    grid.head(
        0,
        List.of(
            "Paddock",
            ">Area, ha",
            "Action",
            "Chosen",
            ">Start",
            ">Cost per ha",
            ">Gain, mean",
            ">Gain, low",
            ">Gain, high",
            ">Chance it pays",
            ">Yearly per ha",
            "Step over",
            ">Gain of the step",
            "Sure",
            ">IRR",
            ">MIRR",
            ">Payback, years",
            ">Benefit : cost",
            "Why not"));
    grid.freezeBelow(0);
    PaddockWords words = new PaddockWords(report, new MoneyFaces(report));
    int row = 1;
    for (int i = 0; i < report.paddocks().size(); i++) {
      PaddockResult paddock = report.paddocks().get(i);
      for (PaddockResult.OptionResult option : paddock.options()) {
        ReturnsWords returns = ReturnsWords.of(option.returns(), report.farm().horizonYears());
        grid.text(row, 0, paddock.name());
        grid.number(row, 1, paddock.areaHa(), Grid.AMOUNT);
        grid.text(row, 2, option.name());
        grid.text(row, 3, option.chosen() ? "yes" : "no");
        if (option.start().isPresent()) {
          grid.number(row, 4, option.start().getAsInt(), "0");
        }
        grid.number(row, 5, option.costPerHa().mean(), Grid.MONEY);
        grid.number(row, 6, option.gain().mean(), Grid.MONEY);
        grid.number(row, 7, option.gain().low(), Grid.MONEY);
        grid.number(row, 8, option.gain().high(), Grid.MONEY);
        grid.number(row, 9, option.gain().chancePays(), "0%");
        grid.number(row, 10, option.annuityPerHa().mean(), Grid.AMOUNT);
        grid.text(row, 11, option.step().overName());
        grid.number(row, 12, option.step().gain().mean(), Grid.MONEY);
        grid.text(row, 13, option.step().sure() ? "yes" : "no");
        grid.right(row, 14, returns.irr());
        grid.right(row, 15, returns.mirr());
        grid.right(row, 16, returns.payback());
        grid.right(row, 17, returns.benefitCost());
        grid.wrapped(row, 18, words.whyNot(i, option));
        row++;
      }
    }
  }
}
