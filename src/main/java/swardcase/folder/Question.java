package swardcase.folder;

import java.util.Locale;
import java.util.Map;
import java.util.function.Predicate;
import swardcase.wording.KeyWords;

/**
 * One thing asked about a farm.
 *
 * @param key names the answer on the command line and in the file of answers
 * @param kind what an answer looks like
 * @param words the question in the trade's words
 * @param help what is behind the question
 * @param usual taken for an empty answer; blank where there is none
 * @param needed whether an empty answer without a usual one is refused, after the answers so far
 * @param asked whether it is asked at all, after the answers so far
 */
public record Question(
    String key,
    Kind kind,
    KeyWords words,
    String help,
    String usual,
    Predicate<Map<String, String>> needed,
    Predicate<Map<String, String>> asked) {

  /** What an answer looks like. */
  enum Kind {
    TEXT,
    ONE_NUMBER,
    NUMBERS,
    YES_NO,
    PADDOCKS
  }

  /** A question that is always asked and may be left unanswered. */
  Question(String key, Kind kind, KeyWords words, String help) {
    this(key, kind, words, help, "", answers -> false, answers -> true);
  }

  /** The same with an answer that is taken for none. */
  Question usually(String answer) {
    return new Question(key, kind, words, help, answer, needed, asked);
  }

  /** The same, an answer being needed after such answers. */
  Question neededAfter(Predicate<Map<String, String>> answers) {
    return new Question(key, kind, words, help, usual, answers, asked);
  }

  /** The same, asked after such answers only. */
  Question askedAfter(Predicate<Map<String, String>> answers) {
    return new Question(key, kind, words, help, usual, needed, answers);
  }

  /** The question as one line with what is taken for no answer, after the answers so far. */
  public String line(Map<String, String> answers) {
    String behind =
        usual.isEmpty() ? (needed.test(answers) ? "" : " [leave out]") : " [" + usual + "]";
    return words.whole() + behind + ": ";
  }

  /** What was typed in its plain form, or the usual answer if nothing was. */
  public String settled(String typed) {
    if (typed.isEmpty()) {
      return usual;
    }
    return switch (kind) {
      case TEXT, PADDOCKS -> typed;
      case ONE_NUMBER, NUMBERS -> Typed.settled(typed, words.whole());
      case YES_NO -> yesOrNo(typed.toLowerCase(Locale.ROOT));
    };
  }

  private static String yesOrNo(String typed) {
    return typed.equals("y") ? "yes" : typed.equals("n") ? "no" : typed;
  }

  /** Why a settled answer has not the form that is wanted, to be read behind "It"; else blank. */
  String refusal(String settled) {
    if (settled.isEmpty()) {
      return "";
    }
    String counted = words.unit().replaceFirst(",.*", "");
    return switch (kind) {
      case TEXT -> "";
      case ONE_NUMBER -> Typed.refusal(settled, counted, true);
      case NUMBERS -> Typed.refusal(settled, counted, false);
      case PADDOCKS -> FarmTemplate.withoutArea(settled);
      case YES_NO -> settled.matches("yes|no") ? "" : "must be yes or no";
    };
  }

  /** Whether these answers lack a needed one to this question. */
  public boolean lacks(Map<String, String> answers) {
    return needed.test(answers) && answers.getOrDefault(key, "").isEmpty();
  }
}
