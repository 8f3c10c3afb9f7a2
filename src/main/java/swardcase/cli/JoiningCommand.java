package swardcase.cli;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;
import swardcase.draws.Draws;
import swardcase.farm.Farm;
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
    mixinStandardHelpOptions = true,
    versionProvider = Version.class,
    description = {
      "Says which paddocks the farm's plan shuts to which ewes before and during joining, where each"
          + " mob is instead, and what that saves in the coming year.",
      "Prints a summary; files are written only where an option asks for them."
    },
    exitCodeListHeading = "%nExit codes:%n",
    exitCodeList = {ExitCodes.DONE_LINE, ExitCodes.FAULT_LINE, ExitCodes.INPUT_LINE})
final class JoiningCommand implements Callable<Integer> {

  @Spec private CommandSpec spec;
  @Mixin private FarmOptions options;
  @Mixin private SheetOptions sheet;
  @Mixin private DrawOptions draws;

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
    draws.check();
    Tables tables = options.tables();
    LoadedFarm loaded = options.load(tables);
    Farm farm = sheet.signed(loaded.farm());
    PrintWriter out = spec.commandLine().getOut();
    Optional<JoiningPlan> plan = plan(draws.of(new FarmModel(farm, tables)));
    if (plan.isEmpty()) {
      out.println(
          "No ewes are joined on this farm, so there is no plan to make. Nothing was written.");
      return ExitCodes.DONE;
    }
    LocalDate day = sheet.date();
    JoiningReport report =
        JoiningReportBuilder.build(plan.get(), Version.text(), day, loaded.on(day).remarks());
    try (WholeFiles files = new WholeFiles(options.inputs())) {
      if (pdf != null) {
        files.add(pdf, to -> JoiningSheet.write(report, FarmMap.of(loaded.shapes()), to));
      }
      if (json != null) {
        files.add(json, JsonView.of(report));
      }
      if (csv != null) {
        files.add(csv, JoiningCsvView.of(report));
      }
      files.commit();
    }
    JoiningTerminalView.of(report, spec.commandLine().getUsageHelpWidth())
        .forEach(line -> out.println(PlainText.of(line)));
    for (Path written : Arrays.asList(csv, json, pdf)) {
      if (written != null) {
        out.println("Written: " + PlainText.of(written.toString()));
      }
    }
    return ExitCodes.DONE;
  }
}
