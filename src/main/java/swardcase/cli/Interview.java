package swardcase.cli;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.PrintWriter;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** Asks the questions that are still open, one after another. */
final class Interview {

  /** Keeps the answers so far. */
  interface Keeper {
    void keep(Map<String, String> answers) throws IOException;
  }

  private final List<Question> questions;
  private final AnswerCheck check;
  private final BufferedReader in;
  private final PrintWriter out;

  Interview(List<Question> questions, AnswerCheck check, BufferedReader in, PrintWriter out) {
    this.questions = questions;
    this.check = check;
    this.in = in;
    this.out = out;
  }

  /** How an interview ended. */
  enum End {
    /** With an answer to every question. */
    ANSWERED,
    /** The input ended before the last question. */
    STOPPED,
    /** The input ended before anything was typed. */
    NO_INPUT
  }

  /**
   * Fills {@code answers}.
   *
   * @param given keys of answers that came as options: they are not asked again
   */
  End fill(Map<String, String> answers, Set<String> given, Keeper keeper) throws IOException {
    End end = End.NO_INPUT;
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
      String answer = PlainText.of(typed).strip();
      if (answer.equals("?")) {
        out.println("  " + question.help());
      } else if (answer.equals("back")) {
        i = back(i, answers, given);
      } else if (accepts(question, answer, answers)) {
        keeper.keep(answers);
      }
    }
    return End.ANSWERED;
  }

  /** Forgets the answer before question {@code i}, of this run or of one before, and goes there. */
  private int back(int i, Map<String, String> answers, Set<String> given) {
    for (int before = i - 1; before >= 0; before--) {
      Question question = questions.get(before);
      if (question.asked().test(answers) && !given.contains(question.key())) {
        answers.remove(question.key());
        return before;
      }
    }
    out.println("  This is the first question.");
    return i;
  }

  private boolean accepts(Question question, String typed, Map<String, String> answers) {
    Map<String, String> with = new LinkedHashMap<>(answers);
    with.put(question.key(), question.settled(typed));
    if (question.lacks(with)) {
      out.println("  This one is needed. Write ? for help, back for the question before.");
      return false;
    }
    String problem = check.problem(with);
    if (!problem.isEmpty()) {
      out.println("  It " + PlainText.of(problem) + ". Write ? for help, back for the one before.");
      return false;
    }
    answers.putAll(with);
    String remark = check.remark(question.key(), answers);
    if (!remark.isEmpty()) {
      out.println("  " + PlainText.of(remark));
    }
    return true;
  }
}
