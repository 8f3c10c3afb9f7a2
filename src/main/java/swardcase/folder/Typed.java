package swardcase.folder;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Answers as people type them. Numbers are one, or low, likely and high, perhaps with a sign of
 * money before them or with the unit that was asked for behind them; what could be read in two ways
 * is refused with the way to write it.
 */
public final class Typed {

  private static final String NUMBER = "[+-]?(?:\\d+(?:\\.\\d*)?|\\.\\d+)";
  private static final String BETWEEN = "[,;\\s]+";
  private static final Pattern LIST = Pattern.compile(NUMBER + "(?:" + BETWEEN + NUMBER + ")*");
  private static final Pattern SIGN_OF_MONEY = Pattern.compile("\\p{Lu}{0,3}\\p{Sc}\\s*");
  private static final Pattern WORDS_BEHIND =
      Pattern.compile("(.*[\\d.])\\s*([\\p{L}%][\\p{L}% ]*)");
  private static final Pattern THOUSANDS = Pattern.compile("[+-]?\\d{1,3}(?:,\\d{3})+(?:\\.\\d+)?");
  private static final Pattern DECIMAL_COMMA = Pattern.compile("[+-]?\\d+,\\d+");

  private Typed() {}

  /**
   * The numbers alone, if all that stands beside them is a sign of money or words of the question.
   *
   * @param asked the question with its unit: {@code How long the rams stay, weeks} lets {@code 6
   *     weeks} be 6
   */
  static String settled(String typed, String asked) {
    Matcher money = SIGN_OF_MONEY.matcher(typed);
    String text = money.lookingAt() ? typed.substring(money.end()) : typed;
    Matcher words = WORDS_BEHIND.matcher(text);
    return words.matches() && areOf(words.group(2), asked) ? words.group(1) : text;
  }

  private static boolean areOf(String words, String asked) {
    List<String> known = Arrays.stream(asked.split("[ ,]+")).map(Typed::plain).toList();
    return words.strip().equals("%")
        ? known.contains("per") && known.contains("100")
        : Arrays.stream(words.strip().split(" +")).map(Typed::plain).allMatch(known::contains);
  }

  /** In small letters, without the s of the plural. */
  private static String plain(String word) {
    return word.toLowerCase(Locale.ROOT).replaceFirst("s$", "");
  }

  /**
   * Why a text is not what was asked for, to be read behind "It"; blank if it is.
   *
   * @param unit what is counted; may be blank
   * @param one whether one number is wanted, and not three
   */
  static String refusal(String text, String unit, boolean one) {
    List<String> parts = List.of(text.split(BETWEEN));
    if (THOUSANDS.matcher(text).matches() && (one || !areThreeRising(parts))) {
      return "can be read in two ways: write "
          + text.replace(",", "")
          + " without a comma"
          + (one ? "" : ", or several numbers with a space behind each comma");
    }
    if (DECIMAL_COMMA.matcher(text).matches()) {
      return "must have a decimal point: write " + text.replace(',', '.');
    }
    boolean numbers = LIST.matcher(text).matches();
    if (numbers && (parts.size() == 1 || parts.size() == 3 && !one)) {
      return "";
    }
    String kind =
        one ? "one number" : "one number, or low, likely and high with commas between, as 2, 3, 5";
    return "must be " + kind + ", without words" + (unit.isEmpty() ? "" : " (" + unit + ")");
  }

  private static boolean areThreeRising(List<String> parts) {
    return parts.size() == 3
        && Double.parseDouble(parts.get(0)) <= Double.parseDouble(parts.get(1))
        && Double.parseDouble(parts.get(1)) <= Double.parseDouble(parts.get(2));
  }

  /** What was typed as YAML: several numbers become a list, and odd signs are put in quotes. */
  public static String yaml(String typed) {
    String text = typed.strip().replaceAll("\\R", " ");
    if (LIST.matcher(text).matches() && text.matches(".*" + BETWEEN + ".*")) {
      return "[" + text.replaceAll(BETWEEN, ", ") + "]";
    }
    boolean plain = text.matches("\\[[\\d.,+ -]*]|[\\p{L}\\p{N}][\\p{L}\\p{N} .%+-]*|");
    return plain ? text : quoted(text);
  }

  /** A text as YAML, whatever signs are in it. */
  public static String quoted(String text) {
    return "\"" + text.replace("\\", "\\\\").replace("\"", "\\\"") + "\"";
  }
}
