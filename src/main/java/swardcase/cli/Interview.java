package swardcase.cli;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.PrintWriter;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

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

  /** Fills {@code answers}; false if the input ended before the last question. */
  boolean fill(Map<String, String> answers, Keeper keeper) throws IOException {
    Deque<Integer> back = new ArrayDeque<>();
    int i = 0;
    while (i < questions.size()) {
      Question question = questions.get(i);
      if (answers.containsKey(question.key()) || !question.asked().test(answers)) {
        i++;
        continue;
      }
      out.print(question.line());
      out.flush();
      String typed = in.readLine();
      if (typed == null) {
        out.println();
        return false;
      }
      String answer = PlainText.of(typed).strip();
      if (answer.equals("?")) {
        out.println("  " + question.help());
      } else if (answer.equals("back")) {
        i = back.isEmpty() ? i : back.pop();
        answers.remove(questions.get(i).key());
      } else if (accepts(question, answer, answers)) {
        back.push(i);
        keeper.keep(answers);
      }
    }
    return true;
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
    return true;
  }
}
