package swardcase.paper;

import java.io.IOException;
import java.io.UncheckedIOException;
import org.apache.fontbox.ttf.CmapLookup;

/**
 * Which letters the sheets can print: the Latin ones of Europe and of Vietnamese, Greek without old
 * accents, Cyrillic; with their digits and usual signs. Others come out as question marks.
 */
public final class SheetLetters {

  /**
   * The faces have every sign up to here that is no control, so most names need no look at them.
   */
  static final int ALL_THERE = 0x17F;

  private SheetLetters() {}

  /** What a sheet would print a question mark for in a text, each sign once and in its order. */
  public static String lacking(String text) {
    String tidy = Lettering.tidy(text);
    if (tidy.codePoints().allMatch(sign -> sign <= ALL_THERE)) {
      return "";
    }
    StringBuilder lacking = new StringBuilder();
    CmapLookup glyphs = Face.GLYPHS;
    tidy.codePoints()
        .filter(sign -> glyphs.getGlyphId(sign) <= 0)
        .distinct()
        .forEach(lacking::appendCodePoint);
    return lacking.toString();
  }

  /** Read only when it is needed. */
  private static final class Face {
    private static final CmapLookup GLYPHS = read();

    private static CmapLookup read() {
      try {
        return Lettering.parse(Lettering.REGULAR).getUnicodeCmapLookup();
      } catch (IOException failure) {
        throw new UncheckedIOException(failure);
      }
    }
  }
}
