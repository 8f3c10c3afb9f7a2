package swardcase.reading;

import java.text.Normalizer;
import java.util.Collection;
import java.util.HashMap;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;
import swardcase.check.VisibleText;

/** Names as people and spreadsheets write them. */
public final class Names {

  private static final Pattern SPACES = Pattern.compile("[\\s\\p{Z}]+");

  private Names() {}

  /**
   * On one line, with nothing hidden, with single spaces, and with accents stored as one sign with
   * their letter.
   */
  public static String tidy(String name) {
    String composed = Normalizer.normalize(VisibleText.of(name), Normalizer.Form.NFC);
    return SPACES.matcher(composed).replaceAll(" ").strip();
  }

  /** Names that differ only in case, spacing or the coding of accents have one key. */
  public static String key(String name) {
    return tidy(name).toLowerCase(Locale.ROOT);
  }

  /** The names by their keys; of two with the same key, the first. */
  public static Map<String, String> byKey(Collection<String> names) {
    Map<String, String> byKey = new HashMap<>();
    names.forEach(name -> byKey.putIfAbsent(key(name), name));
    return byKey;
  }

  /** The one of {@code names} with the same key. */
  public static Optional<String> find(String name, Collection<String> names) {
    String key = key(name);
    return names.stream().filter(known -> key(known).equals(key)).findFirst();
  }
}
