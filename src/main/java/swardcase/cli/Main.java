package swardcase.cli;

import picocli.CommandLine;

/** Where the program starts. */
public final class Main {

  private Main() {}

  /** Runs a command and leaves with its exit code. */
  public static void main(String[] arguments) {
    CommandLine line = commandLine();
    line.setOut(EncodableWriter.printer(System.out));
    line.setErr(EncodableWriter.printer(System.err));
    System.exit(line.execute(arguments));
  }

  /** The program as a command line, ready to be executed. */
  public static CommandLine commandLine() {
    return new CommandLine(new Swardcase())
        .setParameterExceptionHandler(Failures::wrongUse)
        .setExecutionExceptionHandler(Failures::whileRunning)
        .setExpandAtFiles(false)
        .setCaseInsensitiveEnumValuesAllowed(true)
        .setUsageHelpAutoWidth(true);
  }
}
