package swardcase.cli;

import picocli.CommandLine;

/** Where the program starts. */
public final class Main {

  private Main() {}

  /** Runs a command and leaves with its exit code. */
  public static void main(String[] arguments) {
    System.exit(commandLine().execute(arguments));
  }

  /** The program as a command line, ready to be executed. */
  public static CommandLine commandLine() {
    return new CommandLine(new Swardcase())
        .setParameterExceptionHandler(Failures::wrongUse)
        .setExecutionExceptionHandler(Failures::whileRunning)
        .setCaseInsensitiveEnumValuesAllowed(true)
        .setUsageHelpAutoWidth(true);
  }
}
