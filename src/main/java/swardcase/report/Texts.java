package swardcase.report;

import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Properties;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import swardcase.check.Check;

/**
 * Every word of a sheet, read from {@code words.properties}; {@code {0}} stands for an argument. A
 * second language is a second such file.
 */
public final class Texts {

  private static final Pattern PLACE = Pattern.compile("\\{(\\d)}");
  private static final Properties WORDS = load();

  private Texts() {}

  private static Properties load() {
    Properties words = new Properties();
    try (InputStream in = Texts.class.getResourceAsStream("words.properties")) {
      words.load(new InputStreamReader(in, StandardCharsets.UTF_8));
    } catch (IOException failure) {
      throw new UncheckedIOException(failure);
    }
    return words;
  }

  /** The words under a key, with the arguments in their places. */
  public static String get(String key, Object... arguments) {
    String pattern = Check.notNull(WORDS.getProperty(key), "words for " + key);
    return PLACE
        .matcher(pattern)
        .replaceAll(
            place ->
                Matcher.quoteReplacement(
                    String.valueOf(arguments[Integer.parseInt(place.group(1))])));
  }

  /** Whether there are words under a key. */
  public static boolean has(String key) {
    return WORDS.containsKey(key);
  }
}
