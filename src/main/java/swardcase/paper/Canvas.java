package swardcase.paper;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.List;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.documentinterchange.logicalstructure.PDStructureElement;

/**
 * One page to draw on, in points from its top left corner. Everything drawn belongs either to an
 * element of the structure tree or, if it carries no meaning, to an artifact.
 */
public final class Canvas {

  static final double WIDTH = 595.28;
  public static final double HEIGHT = 841.89;

  private final TaggedFile file;
  private final PDPage page;

  /** Null where nothing is to be drawn. */
  private final PDPageContentStream content;

  Canvas(TaggedFile file, PDDocument document, PDPage page) {
    this.file = file;
    this.page = page;
    try {
      content = new PDPageContentStream(document, page);
    } catch (IOException failure) {
      throw new UncheckedIOException(failure);
    }
  }

  /** A page that counts what is put on it but shows nothing. */
  Canvas(TaggedFile file, PDPage page) {
    this.file = file;
    this.page = page;
    content = null;
  }

  PDPage page() {
    return page;
  }

  /** Draws content of an element. */
  void tagged(PDStructureElement element, Runnable drawing) {
    int number = file.mark(element, page);
    run(() -> content.beginMarkedContent(COSName.getPDFName(element.getStructureType()), number));
    drawing.run();
    run(() -> content.endMarkedContent());
  }

  /** Draws what a reader aloud may skip: rules, grounds, running heads. */
  public void artifact(Runnable drawing) {
    run(() -> content.beginMarkedContent(COSName.ARTIFACT));
    drawing.run();
    run(() -> content.endMarkedContent());
  }

  /** Cleaned text from {@code x} on. */
  public void text(String clean, double x, double baseline, Style style) {
    if (clean.isEmpty()) {
      return;
    }
    run(
        () -> {
          content.beginText();
          content.setFont(file.lettering().font(style), (float) style.size());
          content.setNonStrokingColor(style.tint().color());
          content.newLineAtOffset((float) x, (float) (HEIGHT - baseline));
          content.showText(clean);
          content.endText();
        });
  }

  /** Cleaned text that ends at {@code right}. */
  public void textTo(String clean, double right, double baseline, Style style) {
    text(clean, right - file.lettering().width(clean, style), baseline, style);
  }

  /** Cleaned text around {@code middle}. */
  public void textAround(String clean, double middle, double baseline, Style style) {
    text(clean, middle - file.lettering().width(clean, style) / 2, baseline, style);
  }

  /** A line between two points, in points from the top left corner of the page. */
  public void line(double x1, double y1, double x2, double y2, double width, Tint tint) {
    run(
        () -> {
          content.setStrokingColor(tint.color());
          content.setLineWidth((float) width);
          content.moveTo((float) x1, (float) (HEIGHT - y1));
          content.lineTo((float) x2, (float) (HEIGHT - y2));
          content.stroke();
        });
  }

  /** A filled rectangle from its top left corner. */
  public void box(double x, double y, double width, double height, Tint tint) {
    run(
        () -> {
          content.setNonStrokingColor(tint.color());
          content.addRect((float) x, (float) (HEIGHT - y - height), (float) width, (float) height);
          content.fill();
        });
  }

  /** The outline of a rectangle from its top left corner. */
  public void frame(double x, double y, double width, double height, double lineWidth, Tint tint) {
    run(
        () -> {
          content.setStrokingColor(tint.color());
          content.setLineWidth((float) lineWidth);
          content.addRect((float) x, (float) (HEIGHT - y - height), (float) width, (float) height);
          content.stroke();
        });
  }

  /** Slanted lines within a rectangle. */
  public void hatch(double x, double y, double width, double height, Tint tint) {
    run(
        () -> {
          content.saveGraphicsState();
          content.addRect((float) x, (float) (HEIGHT - y - height), (float) width, (float) height);
          content.clip();
          content.setStrokingColor(tint.color());
          content.setLineWidth(0.6f);
          for (double start = x - height; start < x + width; start += 3) {
            content.moveTo((float) start, (float) (HEIGHT - y - height));
            content.lineTo((float) (start + height), (float) (HEIGHT - y));
          }
          content.stroke();
          content.restoreGraphicsState();
        });
  }

  /** How an area is filled: apart from each other in grey, and without any colour. */
  public enum Fill {
    PLAIN,
    SLANTED,
    CROSSED,
    DOTTED
  }

  /**
   * An area with its outline.
   *
   * @param rings corners of each ring, x and y by turns; a ring within another is a hole
   */
  public void area(List<double[]> rings, Fill fill) {
    double left = Double.MAX_VALUE;
    double top = Double.MAX_VALUE;
    double right = 0;
    double bottom = 0;
    for (double[] ring : rings) {
      for (int i = 0; i < ring.length; i += 2) {
        left = Math.min(left, ring[i]);
        right = Math.max(right, ring[i]);
        top = Math.min(top, ring[i + 1]);
        bottom = Math.max(bottom, ring[i + 1]);
      }
    }
    double[] box = {left, top, right, bottom};
    run(
        () -> {
          content.saveGraphicsState();
          path(rings);
          content.clipEvenOdd();
          content.setNonStrokingColor(Tint.PAPER.color());
          content.addRect(
              (float) box[0],
              (float) (HEIGHT - box[3]),
              (float) (box[2] - box[0]),
              (float) (box[3] - box[1]));
          content.fill();
          content.setStrokingColor(Tint.INK.color());
          content.setLineWidth(fill == Fill.DOTTED ? 1.3f : 0.5f);
          content.setLineDashPattern(fill == Fill.DOTTED ? new float[] {1.3f, 5} : new float[0], 0);
          if (fill == Fill.SLANTED || fill == Fill.CROSSED) {
            slant(box, 1);
          }
          if (fill == Fill.CROSSED) {
            slant(box, -1);
          }
          for (double y = box[1]; fill == Fill.DOTTED && y < box[3]; y += 6) {
            content.moveTo((float) box[0], (float) (HEIGHT - y));
            content.lineTo((float) box[2], (float) (HEIGHT - y));
          }
          content.stroke();
          content.restoreGraphicsState();
          content.setStrokingColor(Tint.INK.color());
          content.setLineWidth(1);
          path(rings);
          content.stroke();
        });
  }

  /** Slanted lines over a box, rising to the right or, at -1, to the left. */
  private void slant(double[] box, int direction) throws IOException {
    double height = box[3] - box[1];
    for (double start = box[0] - height; start < box[2] + height; start += 5) {
      content.moveTo((float) start, (float) (HEIGHT - box[3]));
      content.lineTo((float) (start + direction * height), (float) (HEIGHT - box[1]));
    }
  }

  private void path(List<double[]> rings) throws IOException {
    for (double[] ring : rings) {
      for (int i = 0; i < ring.length; i += 2) {
        if (i == 0) {
          content.moveTo((float) ring[i], (float) (HEIGHT - ring[i + 1]));
        } else {
          content.lineTo((float) ring[i], (float) (HEIGHT - ring[i + 1]));
        }
      }
      content.closePath();
    }
  }

  /** A small diamond around a point, filled or open. */
  public void diamond(double x, double y, double radius, boolean filled) {
    run(
        () -> {
          content.setStrokingColor(Tint.INK.color());
          content.setNonStrokingColor((filled ? Tint.INK : Tint.PAPER).color());
          content.setLineWidth(0.9f);
          content.moveTo((float) (x - radius), (float) (HEIGHT - y));
          content.lineTo((float) x, (float) (HEIGHT - y + radius));
          content.lineTo((float) (x + radius), (float) (HEIGHT - y));
          content.lineTo((float) x, (float) (HEIGHT - y - radius));
          content.closePath();
          content.fillAndStroke();
        });
  }

  void close() {
    run(() -> content.close());
  }

  private interface Step {
    void run() throws IOException;
  }

  private void run(Step step) {
    if (content == null) {
      return;
    }
    try {
      step.run();
    } catch (IOException failure) {
      throw new UncheckedIOException(failure);
    }
  }
}
