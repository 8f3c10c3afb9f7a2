package swardcase.cli;

import java.io.PrintWriter;
import java.time.LocalDate;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Spec;
import swardcase.decision.Decision;
import swardcase.decision.HowSure;
import swardcase.intake.LoadedFarm;
import swardcase.outcome.FarmModel;
import swardcase.report.Report;
import swardcase.report.ReportBuilder;
import swardcase.tables.Tables;
import swardcase.view.SamplingView;

/** Says what the plants looked at so far tell, and how many more to look at. */
@Command(
    name = "sampling",
    mixinStandardHelpOptions = true,
    versionProvider = Version.class,
    description =
        "Says for each paddock what the plants looked at so far tell, how easily that is wrong, and"
            + " how many more are worth looking at.",
    exitCodeListHeading = "%nExit codes:%n",
    exitCodeList = {ExitCodes.DONE_LINE, ExitCodes.FAULT_LINE, ExitCodes.INPUT_LINE})
final class SamplingCommand implements Callable<Integer> {

  @Spec private CommandSpec spec;
  @Mixin private FarmOptions options;

  @Mixin private SheetOptions sheet;
  @Mixin private DrawOptions draws;

  @Override
  public Integer call() {
    draws.check();
    Tables tables = options.tables();
    LoadedFarm loaded = options.load(tables);
    LocalDate day = sheet.date();
    Decision decision =
        draws.decide(draws.of(new FarmModel(sheet.signed(loaded.farm()), tables)), List.of());
    Report report =
        ReportBuilder.build(
            decision, HowSure.of(decision), Version.text(), day, loaded.on(day).remarks());
    PrintWriter out = spec.commandLine().getOut();
    SamplingView.of(report, spec.commandLine().getUsageHelpWidth())
        .forEach(line -> out.println(PlainText.of(line)));
    return ExitCodes.DONE;
  }
}
