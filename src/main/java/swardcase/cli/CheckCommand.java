package swardcase.cli;

import java.io.PrintWriter;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Spec;
import swardcase.farm.Farm;
import swardcase.intake.LoadedFarm;

/** Reads a farm folder and says everything that is wrong or odd in it. */
@Command(
    name = "check",
    mixinStandardHelpOptions = true,
    versionProvider = Version.class,
    description = "Reads a farm folder and lists every fault with its file, line and column.",
    exitCodeListHeading = "%nExit codes:%n",
    exitCodeList = {
      "0:no faults; there may be notes",
      ExitCodes.FAULT_LINE,
      "2:wrong use, or faults in the files"
    })
final class CheckCommand implements Callable<Integer> {

  @Spec private CommandSpec spec;
  @Mixin private FarmOptions options;

  @Override
  public Integer call() {
    LoadedFarm loaded = options.load(options.tables());
    Farm farm = loaded.farm();
    PrintWriter out = spec.commandLine().getOut();
    out.printf(
        "%s: no faults. %d paddocks, %d ewes joined.%n",
        PlainText.of(farm.name()), farm.paddocks().size(), farm.ewesJoined());
    loaded.notices().forEach(notice -> out.println("- " + PlainText.of(notice)));
    return ExitCodes.DONE;
  }
}
