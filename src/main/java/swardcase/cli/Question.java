package swardcase.cli;

import java.util.Locale;
import java.util.Map;
import java.util.function.Predicate;

/**
 * One thing asked about a farm.
 *
 * @param key names the answer on the command line and in the file of answers
 * @param kind what an answer looks like
 * @param text the question in the trade's words
 * @param unit unit of the answer, perhaps with a comma and what an answer means; blank for a name
 * @param usual taken for an empty answer; blank where there is none
 * @param needed whether an empty answer without a usual one is refused, after the answers so far
 * @param help what is behind the question
 * @param asked whether it is asked at all, after the answers so far
 */
record Question(
    String key,
    Kind kind,
    String text,
    String unit,
    String usual,
    Predicate<Map<String, String>> needed,
    String help,
    Predicate<Map<String, String>> asked) {

  /** What an answer looks like. */
  enum Kind {
    TEXT,
    ONE_NUMBER,
    NUMBERS,
    YES_NO,
    PADDOCKS
  }

  /** The question as one line, after the answers so far. */
  String line(Map<String, String> answers) {
    String behind =
        usual.isEmpty() ? (needed.test(answers) ? "" : " [leave out]") : " [" + usual + "]";
    return text + (unit.isEmpty() ? "" : ", " + unit) + behind + ": ";
  }

  /** What was typed in its plain form, or the usual answer if nothing was. */
  String settled(String typed) {
    if (typed.isEmpty()) {
      return usual;
    }
    return switch (kind) {
      case TEXT, PADDOCKS -> typed;
      case ONE_NUMBER, NUMBERS -> TypedNumbers.settled(typed, text + ", " + unit);
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
    String counted = unit.replaceFirst(",.*", "");
    return switch (kind) {
      case TEXT -> "";
      case ONE_NUMBER -> TypedNumbers.refusal(settled, counted, true);
      case NUMBERS -> TypedNumbers.refusal(settled, counted, false);
      case PADDOCKS -> areas(FarmTemplate.withoutArea(settled));
      case YES_NO -> settled.equals("yes") || settled.equals("no") ? "" : "must be yes or no";
    };
  }

  private static String areas(String without) {
    return without.isEmpty()
        ? ""
        : "must have hectares behind each name, as House 28: '" + without + "' has none";
  }

  /** Whether these answers lack a needed one to this question. */
  boolean lacks(Map<String, String> answers) {
    return needed.test(answers) && answers.getOrDefault(key, "").isEmpty();
  }
}
