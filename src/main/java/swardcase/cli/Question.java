package swardcase.cli;

import java.util.Map;
import java.util.function.Predicate;

/**
 * One thing asked about a farm.
 *
 * @param key names the answer on the command line and in the file of answers
 * @param text the question in the trade's words
 * @param unit unit of the answer; blank for a name
 * @param usual taken for an empty answer; blank where there is none
 * @param required whether an empty answer without a usual one is refused
 * @param help what is behind the question
 * @param asked whether it is asked at all, after the answers so far
 */
record Question(
    String key,
    String text,
    String unit,
    String usual,
    boolean required,
    String help,
    Predicate<Map<String, String>> asked) {

  /** The question as one line. */
  String line() {
    String behind = usual.isEmpty() ? (required ? "" : " [leave out]") : " [" + usual + "]";
    return text + (unit.isEmpty() ? "" : ", " + unit) + behind + ": ";
  }

  /** What was typed, or the usual answer if nothing was. */
  String settled(String typed) {
    return typed.isEmpty() ? usual : typed;
  }

  /** Whether these answers lack a needed one to this question. */
  boolean lacks(Map<String, String> answers) {
    return required && answers.getOrDefault(key, "").isEmpty();
  }
}
