package swardcase.cli;

import java.nio.file.Path;
import java.util.Optional;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;
import picocli.CommandLine.Spec.Target;
import swardcase.sheet.CaseHead;

/** The adviser's budget case, and what it is told. */
final class CaseOptions {

  private static final int MOST_SIGNS = 2000;

  @Spec(Target.MIXEE)
  private CommandSpec spec;

  @Option(
      names = "--case",
      paramLabel = "FILE",
      description = "Write the budget case for an adviser or a lender (A4, PDF).")
  private Path file;

  @Option(
      names = "--prepared-by",
      paramLabel = "NAME",
      description = "Who prepared the case; printed on it.")
  private String preparedBy;

  @Option(
      names = "--prepared-for",
      paramLabel = "NAME",
      description = "For whom the case was prepared; printed on it.")
  private String preparedFor;

  @Option(names = "--notes", paramLabel = "TEXT", description = "Notes printed on the case.")
  private String notes;

  /** Where the case is to be written; null if it is not asked for. */
  Path file() {
    return file;
  }

  /** Refuses words that have no case to stand on, or that cannot be printed. */
  void check() {
    check("--prepared-by", preparedBy);
    check("--prepared-for", preparedFor);
    check("--notes", notes);
  }

  private void check(String option, String text) {
    if (text != null && file == null) {
      throw new ParameterException(spec.commandLine(), option + " needs --case FILE");
    }
    if (text != null && (text.isBlank() || text.length() > MOST_SIGNS)) {
      throw new ParameterException(
          spec.commandLine(), option + " must be 1 to " + MOST_SIGNS + " signs, not blank");
    }
  }

  CaseHead head() {
    return new CaseHead(
        Optional.ofNullable(preparedBy),
        Optional.ofNullable(preparedFor),
        Optional.ofNullable(notes));
  }
}
