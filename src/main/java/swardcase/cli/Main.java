package swardcase.cli;

import java.io.BufferedReader;
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
    return commandLine(new Commands());
  }

  /** The same, reading what is typed from {@code in}. */
  static CommandLine commandLine(BufferedReader in) {
    return commandLine(new Commands(in));
  }

  private static CommandLine commandLine(Commands commands) {
    return new CommandLine(new Swardcase(), commands)
        .setParameterExceptionHandler(Failures::wrongUse)
        .setExecutionExceptionHandler(Failures::whileRunning)
        .setExpandAtFiles(false)
        .setCaseInsensitiveEnumValuesAllowed(true)
        .setUsageHelpAutoWidth(true);
  }
}
