package swardcase.cli;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import swardcase.check.Fault;
import swardcase.check.FaultsException;
import swardcase.cli.Questions.AskedMob;
import swardcase.intake.FarmFolder;
import swardcase.tables.Tables;

/**
 * Judges answers by having them read as a farm folder would be, with stand-ins for what has not
 * been answered yet.
 */
final class AnswerCheck {

  private final Tables tables;
  private final List<Question> questions;

  AnswerCheck(Tables tables) {
    this.tables = tables;
    this.questions = Questions.of(tables);
  }

  /** They fit any answer, so that only what was answered can be at fault. */
  private Map<String, String> standIns() {
    Map<String, String> all = new LinkedHashMap<>();
    all.put("name", "x");
    all.put("growth", tables.districts().firstKey());
    for (AskedMob mob : Questions.mobs()) {
      all.put(mob.prefix() + "joining-start", "1 January");
      all.put(mob.prefix() + "in-lamb", "1");
      all.put(mob.prefix() + "scanned", "400");
      all.put(mob.prefix() + "marked", "0");
      all.put(mob.prefix() + "figures", "no");
      if (!mob.name().isEmpty()) {
        all.put(mob.ewes(), "1");
      }
    }
    all.put("supplement", "barley");
    all.put("supplement-energy", "10");
    all.put("supplement-price", "1");
    all.put("paddocks", "x 1");
    return all;
  }

  /** How often a ewe is joined in her life, where the farm does not say. */
  static int joinings(Tables tables) {
    return (int) Math.round(tables.parameter("default.joinings-per-ewe").likely());
  }

  /** What is wrong with these answers, to be read behind "It"; blank if nothing is. */
  String problem(Map<String, String> answers) {
    for (Question question : questions) {
      String refusal = question.refusal(answers.getOrDefault(question.key(), ""));
      if (!refusal.isEmpty()) {
        return refusal;
      }
    }
    Map<String, String> whole = standIns();
    whole.putAll(answers);
    Questions.dropUnasked(questions, whole);
    try {
      Path folder = Files.createTempDirectory("swardcase");
      try {
        for (Map.Entry<String, String> file :
            FarmTemplate.of(whole, LocalDate.EPOCH, joinings(tables)).entrySet()) {
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

  /** What to say of an answer that is taken but may be a slip; blank if there is nothing. */
  String remark(String key, Map<String, String> answers) {
    return Questions.remark(key, answers, tables);
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
