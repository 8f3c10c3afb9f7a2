package swardcase.cli;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.PrintWriter;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import swardcase.check.VisibleText;
import swardcase.folder.NewFarm;
import swardcase.folder.Question;

/** Asks the questions that are still open, one after another, and keeps each answer. */
record Interview(NewFarm farm, SavedAnswers saved, BufferedReader in, PrintWriter out) {

  /** How an interview ended. */
  enum End {
    /** With an answer to every question. */
    ANSWERED,
    /** The input ended before the last question. */
    STOPPED,
    /** The input ended before anything was typed. */
    NO_INPUT
  }

  /** The answers of an earlier run, without those that do not hold any more. */
  Map<String, String> accepted(Map<String, String> before) {
    Map<String, String> answers = new LinkedHashMap<>();
    for (Question question : farm.questions()) {
      if (before.containsKey(question.key())) {
        answers.put(
            question.key(), question.settled(VisibleText.of(before.get(question.key())).strip()));
        if (question.lacks(answers) || !farm.problem(answers).isEmpty()) {
          answers.remove(question.key());
        }
      }
    }
    return answers;
  }

  /** Fills {@code answers}. */
  End fill(Map<String, String> answers) throws IOException {
    End end = End.NO_INPUT;
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
        return end;
      }
      end = End.STOPPED;
      String answer = VisibleText.of(typed).strip();
      if (answer.equals("?")) {
        say(question.help());
      } else if (answer.equals("back")) {
        i = back(i, answers);
      } else if (accepts(question, answer, answers)) {
        saved.write(answers);
      }
    }
    return End.ANSWERED;
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
    String remark = farm.remark(question.key(), answers);
    if (!remark.isEmpty()) {
      say(remark);
    }
    return true;
  }
}
