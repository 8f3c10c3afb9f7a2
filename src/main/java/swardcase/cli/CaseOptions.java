package swardcase.cli;

import java.nio.file.Path;
import java.util.Optional;
import picocli.CommandLine.Option;
import swardcase.sheet.CaseHead;

/** The adviser's budget case, and what it is told. */
final class CaseOptions extends Options {

  private static final int MOST_SIGNS = 2000;

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

  /** What stands at its head; refuses words that have no case to stand on or are too many. */
  CaseHead head() {
    return new CaseHead(
        words("--prepared-by", preparedBy),
        words("--prepared-for", preparedFor),
        words("--notes", notes));
  }

  private Optional<String> words(String option, String text) {
    if (text != null && file == null) {
      throw wrong(option + " needs --case FILE");
    }
    if (text != null && (text.isBlank() || text.length() > MOST_SIGNS)) {
      throw wrong(option + " must be 1 to " + MOST_SIGNS + " signs, not blank");
    }
    return Optional.ofNullable(text);
  }
}
