package swardcase.cli;

import java.io.BufferedReader;
import java.io.FileDescriptor;
import java.io.FileOutputStream;
import java.util.Optional;
import picocli.CommandLine;
import swardcase.tables.TablesLoader;

/** Where the program starts. */
public final class Main {

  private Main() {}

  /** Runs a command and leaves with its exit code. */
  public static void main(String[] arguments) {
    CommandLine line = commandLine(arguments);
    line.setOut(EncodableWriter.printer(new FileOutputStream(FileDescriptor.out)));
    line.setErr(EncodableWriter.printer(new FileOutputStream(FileDescriptor.err)));
    System.exit(heard(line, run(line, arguments)));
  }

  /** The exit code of a command; running out of memory is told in words, too. */
  static int run(CommandLine line, String... arguments) {
    try {
      return line.execute(arguments);
    } catch (OutOfMemoryError | StackOverflowError tooMuch) {
      return Failures.outOfRoom(tooMuch, line);
    }
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

  /**
   * The program as far as these arguments need it: where they begin with a command about a farm,
   * the tables are read meanwhile, and no other command is set up.
   */
  static CommandLine commandLine(String[] arguments) {
    Optional<Class<?>> command =
        arguments.length == 0 ? Optional.empty() : Commands.find(arguments[0]);
    if (command.isEmpty()) {
      return commandLine();
    }
    Commands commands = new Commands(Begun.of(TablesLoader.standard()::load));
    return ready(new CommandLine(new Program(), commands).addSubcommand(command.get()));
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
    return ready(new CommandLine(new Swardcase(), commands));
  }

  private static CommandLine ready(CommandLine line) {
    return line.setParameterExceptionHandler(Failures::wrongUse)
        .setExecutionExceptionHandler(Failures::whileRunning)
        .setExpandAtFiles(false)
        .setCaseInsensitiveEnumValuesAllowed(true)
        .setUsageHelpAutoWidth(true);
  }
}
