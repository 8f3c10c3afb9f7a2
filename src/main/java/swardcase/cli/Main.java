package swardcase.cli;

import java.io.BufferedReader;
import java.io.InputStreamReader;
import java.nio.charset.Charset;
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
    return commandLine(
        new BufferedReader(new InputStreamReader(System.in, Charset.defaultCharset())));
  }

  /** The same, reading what is typed from {@code in}. */
  static CommandLine commandLine(BufferedReader in) {
    return new CommandLine(new Swardcase())
        .addSubcommand(new StartCommand(in))
        .setParameterExceptionHandler(Failures::wrongUse)
        .setExecutionExceptionHandler(Failures::whileRunning)
        .setExpandAtFiles(false)
        .setCaseInsensitiveEnumValuesAllowed(true)
        .setUsageHelpAutoWidth(true);
  }
}
