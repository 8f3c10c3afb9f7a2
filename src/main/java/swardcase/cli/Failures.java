package swardcase.cli;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.UncheckedIOException;
import java.util.Optional;
import java.util.stream.Stream;
import picocli.CommandLine;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.ParseResult;
import picocli.CommandLine.UnmatchedArgumentException;
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
    Optional<String> ofInput = ofInput(failure, parsed);
    err.println(
        VisibleText.of(
            ofInput.orElse(
                "Swardcase has a fault of its own: "
                    + failure
                    + ". Please report it with the farm folder and this line: "
                    + Stream.of(failure.getStackTrace())
                        .findFirst()
                        .map(Object::toString)
                        .orElse("place unknown"))));
    return ofInput.isPresent() ? ExitCodes.BAD_INPUT : ExitCodes.INTERNAL_FAULT;
  }

  static void print(FaultsException faults, PrintWriter err) {
    faults.faults().forEach(fault -> err.println(VisibleText.of(fault.message())));
    int count = faults.faults().size();
    err.println(count + (count == 1 ? " fault" : " faults") + ". Nothing was written.");
  }

  /** What is wrong with the files or the places of results; empty for a fault of the program. */
  private static Optional<String> ofInput(Exception failure, ParseResult parsed) {
    if (failure instanceof CannotWriteException) {
      return Optional.of(failure.getMessage());
    }
    String end = ". Nothing was written.";
    if (failure instanceof UncheckedIOException || failure instanceof IOException) {
      Throwable cause = failure instanceof IOException ? failure : failure.getCause();
      return Optional.of("Cannot read: " + cause.getMessage() + end);
    }
    // The loader checks the form of a row; what a calculator can bear, only the calculator knows.
    boolean ownTables = parsed.hasSubcommand() && parsed.subcommand().hasMatchedOption("--tables");
    return failure instanceof IllegalArgumentException && ownTables
        ? Optional.of(
            "A number of your own tables cannot be worked with: " + failure.getMessage() + end)
        : Optional.empty();
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
}
