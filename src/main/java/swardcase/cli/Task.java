package swardcase.cli;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.Collection;
import java.util.List;
import java.util.Objects;
import java.util.concurrent.Callable;
import java.util.stream.Stream;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;
import swardcase.check.NearestName;
import swardcase.check.VisibleText;

/** What all commands have: their help, what their exit codes mean, and how they print. */
@Command(
    mixinStandardHelpOptions = true,
    versionProvider = Version.class,
    exitCodeListHeading = "%nExit codes:%n",
    exitCodeList = {
      "0:done",
      ExitCodes.FAULT_LINE,
      "2:wrong use, or faults in the files; nothing was written"
    })
abstract class Task implements Callable<Integer> {

  @Spec private CommandSpec spec;

  final PrintWriter out() {
    return spec.commandLine().getOut();
  }

  final PrintWriter err() {
    return spec.commandLine().getErr();
  }

  /** Columns that there are to print in. */
  final int width() {
    return spec.commandLine().getUsageHelpWidth();
  }

  /**
   * Prints a line without what a terminal would obey or what is hidden in it: views leave a user's
   * text as it is.
   */
  final void print(String line) {
    out().println(VisibleText.of(line));
  }

  final void print(List<String> lines) {
    lines.forEach(this::print);
  }

  /** Says which of these files were written; null stands for one that was not asked for. */
  final void printWritten(Path... files) {
    Stream.of(files).filter(Objects::nonNull).forEach(file -> print("Written: " + file));
  }

  /** Prints the help of the command. */
  final void usage() {
    spec.commandLine().usage(out());
  }

  /** A use of the command that is refused. */
  final ParameterException wrong(String message) {
    return new ParameterException(spec.commandLine(), message);
  }

  /** {@code There is no table 'dry-stok'; did you mean 'dry-stock'?}. */
  final ParameterException unknown(String what, String typed, Collection<String> names) {
    String hint =
        NearestName.find(typed, names).map(near -> "; did you mean '" + near + "'?").orElse("");
    return wrong("There is no " + what + " '" + typed + "'" + hint);
  }
}
