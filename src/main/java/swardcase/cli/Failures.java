package swardcase.cli;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.UncheckedIOException;
import picocli.CommandLine;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.ParseResult;
import picocli.CommandLine.UnmatchedArgumentException;
import swardcase.check.Fault;
import swardcase.check.FaultsException;
import swardcase.check.VisibleText;
import swardcase.folder.CannotWriteException;

/** Turns what went wrong into a message a person can act on, and into an exit code. */
final class Failures {

  private Failures() {}

  /** Options or parameters that do not fit: the message, the usage line, where to find help. */
  static int wrongUse(ParameterException failure, String[] arguments) {
    CommandLine line = failure.getCommandLine();
    PrintWriter err = line.getErr();
    err.println(VisibleText.of(failure.getMessage()));
    UnmatchedArgumentException.printSuggestions(failure, err);
    err.print(line.getHelp().fullSynopsis());
    err.println("Try '" + line.getCommandSpec().qualifiedName() + " --help'.");
    return ExitCodes.BAD_INPUT;
  }

  /** Faults in files, files that cannot be written, and faults of the program itself. */
  static int whileRunning(Exception failure, CommandLine line, ParseResult parsed) {
    PrintWriter err = line.getErr();
    if (failure instanceof FaultsException faults) {
      print(faults, err);
      return ExitCodes.BAD_INPUT;
    }
    if (failure instanceof CannotWriteException) {
      err.println(VisibleText.of(failure.getMessage()));
      return ExitCodes.BAD_INPUT;
    }
    if (failure instanceof UncheckedIOException || failure instanceof IOException) {
      Throwable cause = failure instanceof IOException ? failure : failure.getCause();
      err.println(
          "Cannot read: " + VisibleText.of("" + cause.getMessage()) + ". Nothing was written.");
      return ExitCodes.BAD_INPUT;
    }
    if (failure instanceof IllegalArgumentException && usesOwnTables(parsed)) {
      err.println(
          "A number of your own tables cannot be worked with: "
              + VisibleText.of("" + failure.getMessage())
              + ". Nothing was written.");
      return ExitCodes.BAD_INPUT;
    }
    err.println(
        "Swardcase has a fault of its own: "
            + failure
            + ". Please report it with the farm folder and this line: "
            + place(failure));
    return ExitCodes.INTERNAL_FAULT;
  }

  /** A farm that needs more memory than the program was given. */
  static int outOfRoom(Error tooMuch, CommandLine line) {
    line.getErr()
        .println(
            "Swardcase ran out of memory ("
                + tooMuch.getClass().getSimpleName()
                + "). Give it more, such as java -Xmx2g -jar swardcase.jar ..., or report it with the"
                + " farm folder.");
    return ExitCodes.INTERNAL_FAULT;
  }

  static void print(FaultsException faults, PrintWriter err) {
    for (Fault fault : faults.faults()) {
      err.println(VisibleText.of(fault.message()));
    }
    int count = faults.faults().size();
    err.println(
        count == 1 ? "1 fault. Nothing was written." : count + " faults. Nothing was written.");
  }

  /** The loader checks the form of a row; what a calculator can bear, only the calculator knows. */
  private static boolean usesOwnTables(ParseResult parsed) {
    return parsed.hasSubcommand() && parsed.subcommand().hasMatchedOption("--tables");
  }

  private static String place(Exception failure) {
    StackTraceElement[] trace = failure.getStackTrace();
    return trace.length == 0 ? "place unknown" : trace[0].toString();
  }
}
