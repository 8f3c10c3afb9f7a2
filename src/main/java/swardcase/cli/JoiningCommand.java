package swardcase.cli;

import java.io.IOException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import swardcase.draws.Draws;
import swardcase.farm.Farm;
import swardcase.folder.WholeFiles;
import swardcase.intake.LoadedFarm;
import swardcase.joining.JoiningPlan;
import swardcase.outcome.FarmModel;
import swardcase.report.FarmMap;
import swardcase.report.JoiningReport;
import swardcase.report.JoiningReportBuilder;
import swardcase.search.PlanSearch;
import swardcase.sheet.JoiningSheet;
import swardcase.tables.Tables;
import swardcase.view.JoiningCsvView;
import swardcase.view.JoiningTerminalView;
import swardcase.view.JsonView;

/** The job of whoever runs the ewes: where they may graze before and during joining. */
@Command(
    name = "joining",
    description = {
      "Says which paddocks the farm's plan shuts to which ewes before and during joining, where each"
          + " mob is instead, and what that saves in the coming year.",
      "Prints a summary; files are written only where an option asks for them."
    })
final class JoiningCommand extends FarmTask {

  @Mixin private SheetOptions sheet;

  @Option(
      names = "--pdf",
      paramLabel = "FILE",
      description = "Write the joining sheet: a page to pin up and one behind it (A4, PDF).")
  private Path pdf;

  @Option(names = "--json", paramLabel = "FILE", description = "Write the result (JSON).")
  private Path json;

  @Option(
      names = "--csv",
      paramLabel = "FILE",
      description = "Write what is shut to whom as a table.")
  private Path csv;

  /** The coming year of the plan that {@code decide} finds. */
  private static Optional<JoiningPlan> plan(Draws draws) {
    return draws.model().farm().ewesJoined() == 0
        ? Optional.empty()
        : JoiningPlan.of(
            draws, new PlanSearch(draws, List.of()).find().orElseThrow().plan().plan());
  }

  @Override
  public Integer call() throws IOException {
    Tables tables = tables();
    LoadedFarm loaded = load(tables);
    Farm farm = sheet.signed(loaded.farm());
    Optional<JoiningPlan> plan = plan(sheet.of(new FarmModel(farm, tables)));
    if (plan.isEmpty()) {
      print("No ewes are joined on this farm, so there is no plan to make. Nothing was written.");
      return ExitCodes.DONE;
    }
    LocalDate day = sheet.date();
    JoiningReport report =
        JoiningReportBuilder.build(plan.get(), Version.text(), day, loaded.on(day).remarks());
    try (WholeFiles files = new WholeFiles(inputs())) {
      files.add(csv, () -> JoiningCsvView.of(report));
      files.add(json, () -> JsonView.of(report));
      files.add(pdf, to -> JoiningSheet.write(report, FarmMap.of(loaded.shapes()), to));
      files.commit();
    }
    print(JoiningTerminalView.of(report, width()));
    printWritten(csv, json, pdf);
    return ExitCodes.DONE;
  }
}
