package swardcase.cli;

import java.io.IOException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import swardcase.page.EditViews.Asked;
import swardcase.serve.Store;
import swardcase.tables.Tables;

/** Writes what is saved on the page, and asks there the questions of {@code start}. */
final class PageStore implements Store {

  private final Tables tables;
  private final LocalDate day;
  private final List<Question> questions;

  PageStore(Tables tables, LocalDate day) {
    this.tables = tables;
    this.day = day;
    questions = Questions.of(tables);
  }

  @Override
  public void write(Map<Path, String> texts) throws IOException {
    try (WholeFiles files = new WholeFiles(Inputs.none())) {
      for (Map.Entry<Path, String> text : texts.entrySet()) {
        files.add(text.getKey(), text.getValue());
      }
      files.commit();
    }
  }

  /** The answers in their plain form, without those to questions that are not asked. */
  private Map<String, String> settled(Map<String, String> typed) {
    Map<String, String> answers = new LinkedHashMap<>();
    for (Question question : questions) {
      String text = PlainText.of(typed.getOrDefault(question.key(), "")).strip();
      answers.put(question.key(), question.settled(text));
    }
    Questions.dropUnasked(questions, answers);
    return answers;
  }

  @Override
  public List<Asked> questions(Map<String, String> typed) {
    Map<String, String> answers = settled(typed);
    return questions.stream()
        .filter(question -> question.asked().test(answers))
        .map(
            question ->
                new Asked(
                    question.key(),
                    question.text() + (question.unit().isEmpty() ? "" : ", " + question.unit()),
                    question.help(),
                    typed.getOrDefault(question.key(), question.usual())))
        .toList();
  }

  @Override
  public String problem(Map<String, String> typed) {
    Map<String, String> answers = settled(typed);
    String missing =
        questions.stream()
            .filter(question -> question.asked().test(answers) && question.lacks(answers))
            .map(Question::text)
            .collect(Collectors.joining(", "));
    return missing.isEmpty()
        ? new AnswerCheck(tables).problem(answers)
        : "These answers are needed: " + missing;
  }

  @Override
  public Map<String, String> files(Map<String, String> typed) {
    return FarmTemplate.of(settled(typed), day, AnswerCheck.joinings(tables));
  }
}
