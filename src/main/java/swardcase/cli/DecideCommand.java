package swardcase.cli;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.Map;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;
import swardcase.farm.Farm;
import swardcase.intake.LoadedFarm;
import swardcase.plan.Decision;
import swardcase.plan.FarmModel;
import swardcase.report.Budget;
import swardcase.report.CsvView;
import swardcase.report.JsonView;
import swardcase.report.Report;
import swardcase.report.ReportBuilder;
import swardcase.report.TerminalView;
import swardcase.sheet.DecisionSheet;
import swardcase.tables.Tables;
import swardcase.workbook.BudgetWorkbook;

/** The whole job: reads a farm folder, decides, prints and writes. */
@Command(
    name = "decide",
    mixinStandardHelpOptions = true,
    versionProvider = Version.class,
    description = {
      "Says for each paddock whether to resow or keep it, what that costs and brings, and writes the"
          + " decision sheet.",
      "Prints a summary; files are written only where an option asks for them."
    },
    exitCodeListHeading = "%nExit codes:%n",
    exitCodeList = {ExitCodes.DONE_LINE, ExitCodes.FAULT_LINE, ExitCodes.INPUT_LINE})
final class DecideCommand implements Callable<Integer> {

  @Spec private CommandSpec spec;
  @Mixin private FarmOptions options;

  @Option(names = "--pdf", paramLabel = "FILE", description = "Write the decision sheet (A4, PDF).")
  private Path pdf;

  @Option(names = "--json", paramLabel = "FILE", description = "Write the result document (JSON).")
  private Path json;

  @Option(names = "--csv", paramLabel = "DIR", description = "Write tables for a spreadsheet.")
  private Path csv;

  @Option(
      names = "--xlsx",
      paramLabel = "FILE",
      description = "Write the budget as a workbook whose prices can be changed.")
  private Path xlsx;

  @Option(
      names = "--date",
      paramLabel = "YYYY-MM-DD",
      description =
          "Date of the sheet; the year after it is the first one planned. Default: today.")
  private LocalDate date;

  @Option(
      names = "--currency",
      paramLabel = "SIGN",
      description = "Sign printed before money instead of the farm's own. Nothing is converted.")
  private String currency;

  @Override
  public Integer call() throws IOException {
    Tables tables = options.tables();
    LoadedFarm loaded = options.load(tables);
    Farm farm = currency == null ? loaded.farm() : loaded.farm().withCurrency(currency);
    LocalDate day = date == null ? LocalDate.now() : date;
    Decision decision = Decision.of(new FarmModel(farm, tables));
    Report report = ReportBuilder.build(decision, Version.text(), day, loaded.remarks());
    write(report, Budget.of(decision, report));
    return ExitCodes.DONE;
  }

  private void write(Report report, Budget budget) throws IOException {
    PrintWriter out = spec.commandLine().getOut();
    if (pdf != null) {
      WholeFile.write(pdf, to -> DecisionSheet.write(report, to));
    }
    if (json != null) {
      WholeFile.write(json, JsonView.of(report));
    }
    if (xlsx != null) {
      WholeFile.write(xlsx, to -> BudgetWorkbook.write(report, budget, to));
    }
    if (csv != null) {
      for (Map.Entry<String, String> file : CsvView.of(report).entrySet()) {
        WholeFile.write(csv.resolve(file.getKey()), file.getValue());
      }
    }
    TerminalView.of(report).forEach(out::println);
    out.println();
    for (Path written : Arrays.asList(csv, json, pdf, xlsx)) {
      if (written != null) {
        out.println("Written: " + written);
      }
    }
  }
}
