package swardcase.cli;

import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Spec;

/** The program without a command: says what there is. */
@Command(
    name = "swardcase",
    mixinStandardHelpOptions = true,
    versionProvider = Version.class,
    description = {
      "Which subterranean clover paddocks to resow, when and how; which to keep; which to keep ewes"
          + " off before joining; and does it pay?",
      "A screening estimate, not veterinary or agronomic advice."
    },
    exitCodeListHeading = "%nExit codes:%n",
    exitCodeList = {ExitCodes.DONE_LINE, ExitCodes.FAULT_LINE, ExitCodes.INPUT_LINE},
    footer = "%nStart with: swardcase decide demo-data/mixed-farm",
    subcommands = {
      DecideCommand.class,
      PageCommand.class,
      CompareCommand.class,
      BatchCommand.class,
      JoiningCommand.class,
      CheckCommand.class,
      SamplingCommand.class,
      ExplainCommand.class,
      TablesCommand.class,
      StartCommand.class
    })
final class Swardcase implements Runnable {

  @Spec private CommandSpec spec;

  @Override
  public void run() {
    CommandLine line = spec.commandLine();
    line.usage(line.getOut());
  }
}
