package swardcase.wording;

import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * What the user is asked for, in words: a key of {@code farm.yaml} or a question about a new farm.
 *
 * @param key of the words
 * @param of what of the user's it belongs to, such as a mob; blank if there is one alone
 */
public record KeyWords(String key, String of) {

  /** Its name: {@code Ewes joined (maidens)}. */
  public String text() {
    return Texts.get(key) + (of.isEmpty() ? "" : " (" + of + ")");
  }

  /** Its unit, perhaps with a comma and what an answer means; blank for a name. */
  public String unit() {
    return orBlank(".unit");
  }

  /** What is behind it; may be blank. */
  public String help() {
    return orBlank(".help");
  }

  /** Its name with its unit. */
  public String whole() {
    return Stream.of(text(), unit())
        .filter(words -> !words.isEmpty())
        .collect(Collectors.joining(", "));
  }

  private String orBlank(String end) {
    return Texts.has(key + end) ? Texts.get(key + end) : "";
  }
}
