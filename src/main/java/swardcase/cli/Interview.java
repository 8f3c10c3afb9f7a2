package swardcase.cli;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import swardcase.check.VisibleText;
import swardcase.folder.CannotWriteException;
import swardcase.folder.NewFarm;
import swardcase.folder.Question;
import swardcase.folder.WholeFiles;

/**
 * Asks the questions about a new farm that are still open, one after another. Answers are kept in
 * the new folder until all of them are there, so that a stop loses nothing.
 */
record Interview(NewFarm farm, Path folder, BufferedReader in, PrintWriter out) {

  /** The file in which the answers are kept. */
  static final String FILE = "start-answers.txt";

  /** The answers of an earlier run, if there was one, without those that do not hold any more. */
  Map<String, String> kept() throws IOException {
    Map<String, String> answers = new LinkedHashMap<>();
    if (!Files.exists(folder.resolve(FILE))) {
      return answers;
    }
    byte[] bytes = Files.readAllBytes(folder.resolve(FILE));
    List<String> lines = new String(bytes, StandardCharsets.UTF_8).lines().toList();
    for (Question question : farm.questions()) {
      String start = question.key() + ":";
      lines.stream()
          .filter(line -> line.startsWith(start))
          .map(line -> VisibleText.of(line.substring(start.length())).strip())
          .forEach(answer -> answers.put(question.key(), question.settled(answer)));
      boolean kept = answers.containsKey(question.key());
      if (kept && (question.lacks(answers) || !farm.problem(answers).isEmpty())) {
        answers.remove(question.key());
      }
    }
    return answers;
  }

  private void keep(Map<String, String> answers) throws CannotWriteException {
    String text =
        answers.entrySet().stream()
            .map(answer -> answer.getKey() + ": " + answer.getValue() + "\n")
            .collect(Collectors.joining());
    WholeFiles.write(folder, Map.of(FILE, text));
  }

  /** Fills {@code answers}; says what to do next if the input ended before the last question. */
  Optional<String> fill(Map<String, String> answers) throws IOException {
    String end = "Nothing was typed. Run it at a terminal, or take --blank.";
    List<Question> questions = farm.questions();
    int i = 0;
    while (i < questions.size()) {
      Question question = questions.get(i);
      if (answers.containsKey(question.key()) || !question.asked().test(answers)) {
        i++;
        continue;
      }
      out.print(question.line(answers));
      out.flush();
      String typed = in.readLine();
      if (typed == null || typed.indexOf('\0') >= 0) { // a zero: not typed, but a file of bytes
        out.println();
        return Optional.of(end);
      }
      end = "Stopped. To go on, run it again: swardcase start " + folder;
      String answer = VisibleText.of(typed).strip();
      if (answer.equals("?")) {
        say(question.help());
      } else if (answer.equals("back")) {
        i = back(i, answers);
      } else if (accepts(question, answer, answers)) {
        keep(answers);
      }
    }
    return Optional.empty();
  }

  private void say(String text) {
    out.println("  " + VisibleText.of(text));
  }

  /** Forgets the answer before question {@code i}, of this run or of one before, and goes there. */
  private int back(int i, Map<String, String> answers) {
    for (int before = i - 1; before >= 0; before--) {
      Question question = farm.questions().get(before);
      if (question.asked().test(answers)) {
        answers.remove(question.key());
        return before;
      }
    }
    say("This is the first question.");
    return i;
  }

  private boolean accepts(Question question, String typed, Map<String, String> answers) {
    Map<String, String> with = new LinkedHashMap<>(answers);
    with.put(question.key(), question.settled(typed));
    if (question.lacks(with)) {
      say("This one is needed. Write ? for help, back for the question before.");
      return false;
    }
    String problem = farm.problem(with);
    if (!problem.isEmpty()) {
      say("It " + problem + ". Write ? for help, back for the one before.");
      return false;
    }
    answers.putAll(with);
    farm.remark(question.key(), answers).ifPresent(this::say);
    return true;
  }
}
