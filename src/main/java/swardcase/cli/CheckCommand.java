package swardcase.cli;

import java.io.PrintWriter;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Spec;
import swardcase.check.FaultsException;
import swardcase.farm.Farm;
import swardcase.intake.Doubt;
import swardcase.intake.LoadedFarm;

/** Reads a farm folder and says everything that is wrong in it, or odd. */
@Command(
    name = "check",
    mixinStandardHelpOptions = true,
    versionProvider = Version.class,
    description = {
      "Reads a farm folder and lists every fault with its file, line and column.",
      "Without faults, lists doubts: what is allowed but odd, and what follows from it."
    },
    exitCodeListHeading = "%nExit codes:%n",
    exitCodeList = {
      "0:no faults; there may be doubts",
      ExitCodes.FAULT_LINE,
      "2:wrong use, or faults in the files"
    })
final class CheckCommand implements Callable<Integer> {

  @Spec private CommandSpec spec;
  @Mixin private FarmOptions options;

  @Override
  public Integer call() {
    PrintWriter out = spec.commandLine().getOut();
    LoadedFarm loaded = load();
    Farm farm = loaded.farm();
    out.printf(
        "%s: no faults. %d paddocks, %d ewes joined.%n",
        PlainText.of(farm.name()), farm.paddocks().size(), farm.ewesJoined());
    out.println();
    out.println(loaded.doubts().isEmpty() ? "Doubts: none" : "Doubts: check that these are meant");
    for (Doubt doubt : loaded.doubts()) {
      out.println("- " + PlainText.of(doubt.what()));
      out.println("  " + PlainText.of(doubt.consequence()));
    }
    if (!loaded.notices().isEmpty()) {
      out.println();
      out.println("Left out, so taken from the tables");
      loaded.notices().forEach(notice -> out.println("- " + PlainText.of(notice)));
    }
    return ExitCodes.DONE;
  }

  private LoadedFarm load() {
    try {
      return options.load(options.tables());
    } catch (FaultsException faults) {
      spec.commandLine().getErr().println("Faults");
      throw faults;
    }
  }
}
