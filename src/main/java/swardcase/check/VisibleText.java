package swardcase.check;

import java.util.regex.Pattern;

/**
 * Text in which nothing is hidden: a name that looks like another is that other, and no character
 * turns the text around it about.
 *
 * <p>Control characters and line separators become spaces. Taken out are the characters that turn
 * the direction of writing (U+061C, U+200E, U+200F, U+202A to U+202E, U+2066 to U+2069) and those
 * that take no room (among them U+00AD, U+200B, U+2060, U+FEFF and the tags from U+E0000). The two
 * joiners U+200C and U+200D stay between letters or marks outside the Latin, Greek and Cyrillic
 * scripts, where spelling needs them.
 */
public final class VisibleText {

  private static final Pattern CONTROL = Pattern.compile("[\\p{Cc}\\p{Zl}\\p{Zp}]");
  private static final Pattern HIDDEN =
      Pattern.compile(
          "[\\u00AD\\u034F\\u061C\\u115F\\u1160\\u17B4\\u17B5\\u180E\\u200B\\u200E\\u200F"
              + "\\u202A-\\u202E\\u2060-\\u206F\\u3164\\uFEFF\\uFFA0\\uFFF9-\\uFFFB"
              + "\\x{E0000}-\\x{E0FFF}]");
  private static final String JOINED = "[\\p{L}\\p{M}&&[^\\p{IsLatin}\\p{IsGreek}\\p{IsCyrillic}]]";
  private static final Pattern IDLE_JOINER =
      Pattern.compile("[\\u200C\\u200D](?!" + JOINED + ")|(?<!" + JOINED + ")[\\u200C\\u200D]");

  private VisibleText() {}

  /** The text without what cannot be seen. */
  public static String of(String text) {
    if (text.chars().allMatch(sign -> sign >= ' ' && sign <= '~')) {
      return text;
    }
    String spaced = CONTROL.matcher(text).replaceAll(" ");
    return IDLE_JOINER.matcher(HIDDEN.matcher(spaced).replaceAll("")).replaceAll("");
  }
}
