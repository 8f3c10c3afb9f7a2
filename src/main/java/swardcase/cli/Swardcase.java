package swardcase.cli;

import picocli.CommandLine.Command;

/** The program without a command: says what there is. */
@Command(
    name = "swardcase",
    description = {
      "Which subterranean clover paddocks to resow, when and how; which to keep; which to keep ewes"
          + " off before joining; and does it pay?",
      "A screening estimate, not veterinary or agronomic advice."
    },
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
final class Swardcase extends Task {

  @Override
  public Integer call() {
    usage();
    return ExitCodes.DONE;
  }
}
