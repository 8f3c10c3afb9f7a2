package swardcase.cli;

import java.io.BufferedReader;
import java.io.FileDescriptor;
import java.io.FileOutputStream;
import java.time.LocalDate;
import java.util.function.BooleanSupplier;
import picocli.CommandLine;

/** Where the program starts. */
public final class Main {

  /** Columns below which the words of the help have no room. */
  private static final int LEAST_WIDTH = 55;

  private Main() {}

  /** Runs a command and leaves with its exit code. */
  public static void main(String[] arguments) {
    CommandLine line = commandLine();
    StandardOutput out = new StandardOutput();
    line.setOut(new Printer(out));
    line.setErr(new Printer(new FileOutputStream(FileDescriptor.err)));
    int code = run(line, arguments);
    System.exit(heard(line, code, out::readerGone));
  }

  /** The exit code of a command; running out of memory is told in words, too. */
  static int run(CommandLine line, String... arguments) {
    try {
      return line.execute(arguments);
    } catch (OutOfMemoryError | StackOverflowError tooMuch) {
      return Failures.outOfRoom(tooMuch, line);
    }
  }

  /**
   * The exit code, which says so if what was printed did not arrive. Whoever stops reading has read
   * enough: files are written by then.
   */
  static int heard(CommandLine line, int code, BooleanSupplier readerGone) {
    if (code != ExitCodes.DONE || !line.getOut().checkError() || readerGone.getAsBoolean()) {
      return code;
    }
    line.getErr().println("Cannot print all of the answer: the disk may be full.");
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
    CommandLine line = new CommandLine(new Swardcase(), commands);
    line.registerConverter(LocalDate.class, SheetOptions::day)
        .setParameterExceptionHandler(Failures::wrongUse)
        .setExecutionExceptionHandler(Failures::whileRunning)
        .setExpandAtFiles(false);
    String columns = System.getenv("COLUMNS");
    return columns != null && columns.matches("[0-9]{1,4}")
        ? line.setUsageHelpWidth(Math.max(LEAST_WIDTH, Integer.parseInt(columns)))
        : line.setUsageHelpAutoWidth(true);
  }
}
