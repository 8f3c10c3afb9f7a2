package swardcase.cli;

import picocli.CommandLine.Command;

/** The program with every command it has. */
@Command(
    subcommands = {
      DecideCommand.class,
      CompareCommand.class,
      BatchCommand.class,
      JoiningCommand.class,
      CheckCommand.class,
      SamplingCommand.class,
      ExplainCommand.class,
      TablesCommand.class,
      StartCommand.class
    })
final class Swardcase extends Program {}
