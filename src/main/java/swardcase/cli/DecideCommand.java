package swardcase.cli;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;
import swardcase.farm.Farm;
import swardcase.intake.LoadedFarm;
import swardcase.outcome.FarmModel;
import swardcase.report.Answer;
import swardcase.report.BudgetCase;
import swardcase.report.FarmMap;
import swardcase.report.Report;
import swardcase.report.ReportBuilder;
import swardcase.search.FixedChoice;
import swardcase.sheet.CaseSheet;
import swardcase.sheet.DecisionSheet;
import swardcase.tables.Tables;
import swardcase.view.CsvView;
import swardcase.view.JsonView;
import swardcase.view.TerminalView;
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
  @Mixin private SheetOptions sheet;
  @Mixin private ScenarioOptions scenarios;
  @Mixin private FarmChanges changes;
  @Mixin private DrawOptions draws;

  @Option(names = "--pdf", paramLabel = "FILE", description = "Write the decision sheet (A4, PDF).")
  private Path pdf;

  @Mixin private CaseOptions budgetCase;

  @Option(names = "--json", paramLabel = "FILE", description = "Write the result document (JSON).")
  private Path json;

  @Option(names = "--csv", paramLabel = "DIR", description = "Write tables for a spreadsheet.")
  private Path csv;

  @Option(
      names = "--xlsx",
      paramLabel = "FILE",
      description = "Write the budget as a workbook whose prices can be changed.")
  private Path xlsx;

  @Override
  public Integer call() throws IOException {
    draws.check();
    budgetCase.check();
    Tables tables = options.tables();
    LoadedFarm loaded = scenarios.one(options, tables);
    Farm farm = sheet.signed(changes.change(loaded.farm()));
    LocalDate day = sheet.date();
    FarmModel model = new FarmModel(farm, tables);
    List<FixedChoice> fixed = changes.fixed(model, ReportBuilder.firstYear(day));
    Answer answer =
        Answer.of(
            draws.decide(draws.of(model), fixed),
            Version.text(),
            day,
            loaded.on(day).remarks(),
            budgetCase.file() != null);
    Optional<BudgetCase> asCase =
        Optional.ofNullable(budgetCase.file())
            .map(file -> BudgetCase.of(answer.decision(), answer.report()));
    write(answer, asCase, FarmMap.of(loaded.shapes()));
    return ExitCodes.DONE;
  }

  private void write(Answer answer, Optional<BudgetCase> asCase, Optional<FarmMap> map)
      throws IOException {
    Report report = answer.report();
    PrintWriter out = spec.commandLine().getOut();
    try (WholeFiles files = new WholeFiles(scenarios.inputs(options.inputs()))) {
      if (pdf != null) {
        files.add(pdf, to -> DecisionSheet.write(report, map, to));
      }
      if (asCase.isPresent()) {
        files.add(
            budgetCase.file(),
            to ->
                CaseSheet.write(
                    report, asCase.get(), budgetCase.head(), answer.joiningReport(List.of()), to));
      }
      if (json != null) {
        files.add(json, JsonView.of(report));
      }
      if (xlsx != null) {
        files.add(xlsx, to -> BudgetWorkbook.write(report, answer.budget(), to));
      }
      if (csv != null) {
        for (Map.Entry<String, String> file : CsvView.of(report).entrySet()) {
          files.add(csv.resolve(file.getKey()), file.getValue());
        }
      }
      files.commit();
    }
    TerminalView.of(report, spec.commandLine().getUsageHelpWidth())
        .forEach(line -> out.println(PlainText.of(line)));
    out.println();
    for (Path written : Arrays.asList(csv, json, pdf, budgetCase.file(), xlsx)) {
      if (written != null) {
        out.println("Written: " + PlainText.of(written.toString()));
      }
    }
  }
}
