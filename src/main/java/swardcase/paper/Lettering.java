package swardcase.paper;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.text.Normalizer;
import java.text.Normalizer.Form;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Pattern;
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
  private static final Pattern WHITE = Pattern.compile("[\\p{javaWhitespace}\\p{Cc}]");
  private static final Pattern HALF_A_SIGN = Pattern.compile("\\p{Cs}");
  private static final Pattern INVISIBLE = Pattern.compile("\\p{Cf}");

  /** Spaces, but none between a currency sign and its number or a number and its per cent. */
  private static final Pattern BETWEEN_WORDS = Pattern.compile(" ++(?!%|(?<=\\p{Sc} )[\u22120-9])");

  private final PDFont regular;
  private final PDFont bold;
  private final CmapLookup glyphs;
  private final Map<Integer, Double> regularWidths = new HashMap<>();
  private final Map<Integer, Double> boldWidths = new HashMap<>();
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
    String spaced = WHITE.matcher(Normalizer.normalize(text, Form.NFC)).replaceAll(" ");
    return INVISIBLE.matcher(HALF_A_SIGN.matcher(spaced).replaceAll("?")).replaceAll("");
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
    Map<Integer, Double> widths = style.bold() ? boldWidths : regularWidths;
    double sum = 0;
    for (int i = 0; i < clean.length(); i = clean.offsetByCodePoints(i, 1)) {
      sum += widths.computeIfAbsent(clean.codePointAt(i), sign -> width(sign, font(style)));
    }
    return sum * style.size() / 1000;
  }

  private static double width(int sign, PDFont font) {
    try {
      return font.getStringWidth(Character.toString(sign));
    } catch (IOException failure) {
      throw new UncheckedIOException(failure);
    }
  }

  /** The text in lines no wider than {@code width}; a longer word is broken. Never empty. */
  public List<String> wrap(String text, Style style, double width) {
    List<String> lines = new ArrayList<>();
    String line = "";
    for (String word : BETWEEN_WORDS.split(clean(text).strip())) {
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

  /** The style, made smaller where the longest word would otherwise be broken. */
  Style unbroken(String text, Style style, double width) {
    double widest =
        BETWEEN_WORDS
            .splitAsStream(clean(text))
            .mapToDouble(word -> width(word, style))
            .max()
            .orElse(0);
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
