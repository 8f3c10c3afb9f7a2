package swardcase.folder;

import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import swardcase.check.Fault;
import swardcase.check.FaultsException;
import swardcase.check.VisibleText;
import swardcase.folder.Questions.AskedMob;
import swardcase.tables.Tables;

/** A new farm folder, made of answers to questions. */
public final class NewFarm {

  private final Tables tables;
  private final Questions questions;
  private final int joinings;

  /** A farm whose answers may use the names of these tables. */
  public NewFarm(Tables tables) {
    this.tables = tables;
    questions = new Questions(tables);
    joinings = (int) Math.round(tables.parameter("default.joinings-per-ewe").likely());
  }

  /** All questions, in the order they are asked. */
  public List<Question> questions() {
    return questions.all();
  }

  /** The questions that are asked after these answers. */
  public List<Question> asked(Map<String, String> answers) {
    return questions().stream().filter(question -> question.asked().test(answers)).toList();
  }

  /** What was typed in its plain form, usual answers for blank ones, and none that is not asked. */
  public Map<String, String> settled(Map<String, String> typed) {
    Map<String, String> answers = new LinkedHashMap<>();
    for (Question question : questions()) {
      String text = VisibleText.of(typed.getOrDefault(question.key(), "")).strip();
      answers.put(question.key(), question.settled(text));
    }
    return withoutUnasked(answers);
  }

  /** The answers to questions that are asked after the others. */
  public Map<String, String> withoutUnasked(Map<String, String> all) {
    Map<String, String> answers = new LinkedHashMap<>(all);
    for (Question question : questions()) {
      if (!question.asked().test(answers)) {
        answers.remove(question.key());
      }
    }
    return answers;
  }

  /**
   * What is wrong with these answers, to be read behind "It"; blank if nothing is. They are read as
   * a farm folder would be, with stand-ins for what has not been answered yet.
   */
  public String problem(Map<String, String> answers) {
    for (Question question : questions()) {
      String refusal = question.refusal(answers.getOrDefault(question.key(), ""));
      if (!refusal.isEmpty()) {
        return refusal;
      }
    }
    Map<String, String> whole = standIns();
    whole.putAll(answers);
    try {
      FarmTrial.read(files(withoutUnasked(whole), LocalDate.EPOCH), Optional.empty(), tables);
      return "";
    } catch (FaultsException faults) {
      return faults.faults().stream()
          .map(NewFarm::words)
          .distinct()
          .collect(Collectors.joining("; "));
    }
  }

  /** What is missing in all the answers there are, or wrong with them; blank if nothing is. */
  public String refusal(Map<String, String> answers) {
    return asked(answers).stream()
        .filter(question -> question.lacks(answers))
        .map(question -> question.words().text())
        .reduce((all, next) -> all + ", " + next)
        .map(lacking -> "These answers are needed: " + lacking)
        .orElseGet(() -> problem(answers));
  }

  /** They fit any answer, so that only what was answered can be at fault. */
  private Map<String, String> standIns() {
    Map<String, String> all = new LinkedHashMap<>();
    all.put("name", "x");
    all.put("growth", tables.districts().firstKey());
    for (AskedMob mob : Questions.MOBS) {
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

  private static String words(Fault fault) {
    return fault.rule()
        + (fault.found().isEmpty() ? "" : "; found '" + fault.found() + "'")
        + (fault.nearest().isEmpty() ? "" : "; did you mean '" + fault.nearest() + "'?");
  }

  /** What to say of an answer that is taken but may be a slip. */
  public Optional<String> remark(String key, Map<String, String> answers) {
    return questions.remark(key, answers);
  }

  /** The files by name; {@code day} is when the prices were taken. */
  public Map<String, String> files(Map<String, String> answers, LocalDate day) {
    return FarmTemplate.of(answers, day, joinings);
  }
}
