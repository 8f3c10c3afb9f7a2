package swardcase.paper;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.text.Normalizer;
import java.util.ArrayList;
import java.util.List;
import java.util.StringTokenizer;
import org.apache.fontbox.ttf.CmapLookup;
import org.apache.fontbox.ttf.TTFParser;
import org.apache.fontbox.ttf.TrueTypeFont;
import org.apache.pdfbox.io.RandomAccessReadBuffer;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.apache.pdfbox.pdmodel.font.PDType0Font;

/**
 * The two faces of the sheet and everything that depends on their widths: cleaning, measuring,
 * wrapping and shortening of text.
 */
public final class Lettering {

  static final String REGULAR = "Roboto-Regular.ttf";
  private static final String FOLDER = "/com/formdev/flatlaf/fonts/roboto/";
  private static final String ELLIPSIS = "\u2026";

  private final PDFont regular;
  private final PDFont bold;
  private final CmapLookup glyphs;
  private final double[] regularWidths = new double[0x500];
  private final double[] boldWidths = new double[0x500];
  private boolean replaced;

  Lettering(PDDocument document) {
    TrueTypeFont regularFace = parse(REGULAR);
    TrueTypeFont boldFace = parse("Roboto-Bold.ttf");
    try {
      regular = PDType0Font.load(document, regularFace, true);
      bold = PDType0Font.load(document, boldFace, true);
      glyphs = regularFace.getUnicodeCmapLookup();
    } catch (IOException failure) {
      throw new UncheckedIOException(failure);
    }
  }

  static TrueTypeFont parse(String name) {
    try (InputStream in = Lettering.class.getResourceAsStream(FOLDER + name)) {
      TrueTypeFont face = new TTFParser().parse(new RandomAccessReadBuffer(in));
      face.setEnableGsub(false);
      return face;
    } catch (IOException failure) {
      throw new UncheckedIOException(failure);
    }
  }

  PDFont font(Style style) {
    return style.bold() ? bold : regular;
  }

  /** Whether a character was replaced by a question mark so far. */
  public boolean hasReplaced() {
    return replaced;
  }

  /** Composed characters, no controls and no invisible marks; white space is one space. */
  static String tidy(String text) {
    StringBuilder out = new StringBuilder();
    Normalizer.normalize(text, Normalizer.Form.NFC)
        .codePoints()
        .forEach(
            c -> {
              int type = Character.getType(c);
              if (Character.isWhitespace(c) || type == Character.CONTROL) {
                out.append(' ');
              } else if (type == Character.SURROGATE) {
                out.append('?');
              } else if (type != Character.FORMAT) {
                out.appendCodePoint(c);
              }
            });
    return out.toString();
  }

  /** The text with what the faces lack replaced by a question mark. */
  public String clean(String text) {
    StringBuilder out = new StringBuilder();
    tidy(text)
        .codePoints()
        .forEach(
            c -> {
              if (glyphs.getGlyphId(c) > 0) {
                out.appendCodePoint(c);
              } else {
                out.append('?');
                replaced = true;
              }
            });
    return out.toString();
  }

  /** Width of cleaned text in points. */
  public double width(String clean, Style style) {
    double[] widths = style.bold() ? boldWidths : regularWidths;
    double sum = 0;
    for (int i = 0; i < clean.length(); i++) {
      char c = clean.charAt(i);
      double width = c < widths.length ? widths[c] : 0;
      if (width == 0) {
        width = measured(c, clean, i, style);
        if (c < widths.length) {
          widths[c] = width;
        }
      }
      sum += width;
    }
    return sum * style.size() / 1000;
  }

  private double measured(char c, String clean, int at, Style style) {
    if (Character.isLowSurrogate(c)) {
      return 0;
    }
    int codePoint = clean.codePointAt(at);
    try {
      return font(style).getStringWidth(Character.toString(codePoint));
    } catch (IOException failure) {
      throw new UncheckedIOException(failure);
    }
  }

  /** The text in lines no wider than {@code width}; a longer word is broken. Never empty. */
  public List<String> wrap(String text, Style style, double width) {
    List<String> lines = new ArrayList<>();
    String line = "";
    for (String word : words(clean(text).strip())) {
      String longer = line.isEmpty() ? word : line + " " + word;
      if (width(longer, style) <= width) {
        line = longer;
        continue;
      }
      if (!line.isEmpty()) {
        lines.add(line);
      }
      line = word;
      while (width(line, style) > width) {
        int fits = Math.max(1, fitting(line, style, width));
        lines.add(line.substring(0, fits));
        line = line.substring(fits);
      }
    }
    lines.add(line);
    return lines;
  }

  /** Splits at spaces, but keeps a currency sign with its number and a number with its per cent. */
  private static List<String> words(String text) {
    List<String> words = new ArrayList<>();
    for (StringTokenizer rest = new StringTokenizer(text, " "); rest.hasMoreTokens(); ) {
      String word = rest.nextToken();
      int last = words.size() - 1;
      boolean joins =
          last >= 0 && (word.startsWith("%") || isCurrency(words.get(last)) && isNumber(word));
      if (joins) {
        words.set(last, words.get(last) + " " + word);
      } else {
        words.add(word);
      }
    }
    return words;
  }

  private static boolean isCurrency(String word) {
    return Character.getType(word.codePointBefore(word.length())) == Character.CURRENCY_SYMBOL;
  }

  private static boolean isNumber(String word) {
    char first = word.charAt(0);
    return first == '\u2212' || first >= '0' && first <= '9';
  }

  /** The style, made smaller where the longest word would otherwise be broken. */
  Style unbroken(String text, Style style, double width) {
    double widest =
        words(clean(text)).stream().mapToDouble(word -> width(word, style)).max().orElse(0);
    return widest <= width
        ? style
        : style.sized(Math.floor(style.size() * width / widest * 10) / 10);
  }

  /** The style, made smaller by halves of a point until the text fits in so many lines. */
  public Style fitting(String text, Style style, double width, int most) {
    Style fitting = style;
    while (fitting.size() > 5 && wrap(text, fitting, width).size() > most) {
      fitting = fitting.sized(fitting.size() - 0.5);
    }
    return fitting;
  }

  /** The text wrapped to at most {@code most} lines, the last one ending in an ellipsis if cut. */
  public List<String> wrap(String text, Style style, double width, int most) {
    List<String> lines = wrap(text, style, width);
    if (lines.size() <= most) {
      return lines;
    }
    List<String> kept = new ArrayList<>(lines.subList(0, most));
    kept.set(most - 1, shorten(kept.get(most - 1) + " " + lines.get(most), style, width, true));
    return kept;
  }

  /** The text on one line, cut with an ellipsis where it is wider than {@code width}. */
  public String shorten(String text, Style style, double width) {
    return shorten(clean(text), style, width, false);
  }

  private String shorten(String clean, Style style, double width, boolean always) {
    if (!always && width(clean, style) <= width) {
      return clean;
    }
    int fits = fitting(clean, style, width - width(ELLIPSIS, style));
    return clean.substring(0, fits).stripTrailing() + ELLIPSIS;
  }

  private int fitting(String clean, Style style, double width) {
    int fits = 0;
    while (fits < clean.length()) {
      int next = clean.offsetByCodePoints(fits, 1);
      if (width(clean.substring(0, next), style) > width) {
        break;
      }
      fits = next;
    }
    return fits;
  }
}
