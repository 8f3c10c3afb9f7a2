package swardcase.cli;

import java.io.BufferedReader;
import java.io.FileDescriptor;
import java.io.FileOutputStream;
import picocli.CommandLine;

/** Where the program starts. */
public final class Main {

  private Main() {}

  /** Runs a command and leaves with its exit code. */
  public static void main(String[] arguments) {
    CommandLine line = commandLine();
    line.setOut(EncodableWriter.printer(new FileOutputStream(FileDescriptor.out)));
    line.setErr(EncodableWriter.printer(new FileOutputStream(FileDescriptor.err)));
    System.exit(heard(line, line.execute(arguments)));
  }

  /** The exit code, which says so if what was printed did not arrive. */
  static int heard(CommandLine line, int code) {
    if (!line.getOut().checkError()) {
      return code;
    }
    line.getErr()
        .println("Cannot print all of the answer: the disk may be full, or the reader has gone.");
    return ExitCodes.BAD_INPUT;
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
