package swardcase.cli;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.stream.Collectors;
import swardcase.check.Fault;
import swardcase.check.FaultsException;
import swardcase.intake.FarmFolder;
import swardcase.tables.Tables;

/**
 * Judges answers by having them read as a farm folder would be, with stand-ins for what has not
 * been answered yet.
 */
final class AnswerCheck {

  /** They fit any answer, so that only what was answered can be at fault. */
  private static final Map<String, String> STAND_INS =
      Map.of(
          "name", "x",
          "paddocks", "x 1",
          "joining-start", "1 January",
          "in-lamb", "1",
          "scanned", "400",
          "marked", "0",
          "figures", "unaffected");

  private final Tables tables;

  AnswerCheck(Tables tables) {
    this.tables = tables;
  }

  /** What is wrong with these answers, in words; blank if nothing is. */
  String problem(Map<String, String> answers) {
    Map<String, String> whole = new LinkedHashMap<>(STAND_INS);
    whole.put("growth", tables.districts().firstKey());
    whole.putAll(answers);
    try {
      Path folder = Files.createTempDirectory("swardcase");
      try {
        for (Map.Entry<String, String> file : FarmTemplate.of(whole, LocalDate.EPOCH).entrySet()) {
          Files.writeString(folder.resolve(file.getKey()), file.getValue());
        }
        FarmFolder.read(folder, tables);
        return "";
      } catch (FaultsException faults) {
        return faults.faults().stream()
            .map(AnswerCheck::words)
            .distinct()
            .collect(Collectors.joining("; "));
      } finally {
        delete(folder);
      }
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static String words(Fault fault) {
    String nearest = fault.nearest().isEmpty() ? "" : "; did you mean '" + fault.nearest() + "'?";
    return fault.rule()
        + (fault.found().isEmpty() ? "" : "; found '" + fault.found() + "'")
        + nearest;
  }

  private static void delete(Path folder) throws IOException {
    for (String name : FarmFolder.FILES) {
      Files.deleteIfExists(folder.resolve(name));
    }
    Files.delete(folder);
  }
}
