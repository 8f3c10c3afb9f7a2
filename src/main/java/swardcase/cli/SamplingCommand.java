package swardcase.cli;

import java.io.PrintWriter;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Spec;
import swardcase.report.SamplingReportBuilder;
import swardcase.tables.Tables;
import swardcase.view.SamplingView;

/** Says what the plants looked at so far tell, and how many more to look at. */
@Command(
    name = "sampling",
    mixinStandardHelpOptions = true,
    versionProvider = Version.class,
    description =
        "Says for each paddock what the plants looked at so far tell, how easily that is wrong, and"
            + " how many more to look at.",
    exitCodeListHeading = "%nExit codes:%n",
    exitCodeList = {ExitCodes.DONE_LINE, ExitCodes.FAULT_LINE, ExitCodes.INPUT_LINE})
final class SamplingCommand implements Callable<Integer> {

  @Spec private CommandSpec spec;
  @Mixin private FarmOptions options;

  @Override
  public Integer call() {
    Tables tables = options.tables();
    PrintWriter out = spec.commandLine().getOut();
    SamplingView.of(
            SamplingReportBuilder.build(options.load(tables).farm(), tables),
            spec.commandLine().getUsageHelpWidth())
        .forEach(line -> out.println(PlainText.of(line)));
    return ExitCodes.DONE;
  }
}
