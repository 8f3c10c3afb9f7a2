package swardcase.wording;

import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Locale;
import java.util.Properties;
import swardcase.check.Check;

/**
 * Every word of a sheet and of the page, read from {@code words.properties} and {@code
 * page.properties}; {@code {0}} stands for an argument. A second language is a second pair of such
 * files.
 */
public final class Texts {

  private static final Properties WORDS = load();

  private Texts() {}

  private static Properties load() {
    Properties words = new Properties();
    for (String file : List.of("words.properties", "page.properties")) {
      try (InputStream in = Texts.class.getResourceAsStream(file)) {
        words.load(new InputStreamReader(in, StandardCharsets.UTF_8));
      } catch (IOException failure) {
        throw new UncheckedIOException(failure);
      }
    }
    return words;
  }

  /** The words under a key, with the arguments in their places. */
  public static String get(String key, Object... arguments) {
    String pattern = Check.notNull(WORDS.getProperty(key), "words for " + key);
    StringBuilder words = new StringBuilder();
    int done = 0;
    for (int open = pattern.indexOf('{'); open >= 0; open = pattern.indexOf('{', open + 1)) {
      if (pattern.startsWith("}", open + 2) && isDigit(pattern.charAt(open + 1))) {
        words.append(pattern, done, open).append(arguments[pattern.charAt(open + 1) - '0']);
        done = open + 3;
      }
    }
    return words.append(pattern, done, pattern.length()).toString();
  }

  /** The words for a constant, under a key of its own: {@code advice.ABOUT_EVEN}. */
  public static String of(String prefix, Enum<?> constant, Object... arguments) {
    return get(prefix + "." + constant.name(), arguments);
  }

  /** The same words with a capital first. */
  public static String capital(String text) {
    return text.substring(0, 1).toUpperCase(Locale.ROOT) + text.substring(1);
  }

  private static boolean isDigit(char sign) {
    return sign >= '0' && sign <= '9';
  }

  /** Whether there are words under a key. */
  public static boolean has(String key) {
    return WORDS.containsKey(key);
  }
}
