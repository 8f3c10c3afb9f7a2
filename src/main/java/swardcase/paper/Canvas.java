package swardcase.paper;

import java.awt.geom.GeneralPath;
import java.awt.geom.Rectangle2D;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.List;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.PDPageContentStream.AppendMode;
import org.apache.pdfbox.pdmodel.documentinterchange.logicalstructure.PDStructureElement;

/**
 * One page to draw on, in points from its top left corner. Everything drawn belongs either to an
 * element of the structure tree or, if it carries no meaning, to an artifact.
 */
public final class Canvas {

  static final double WIDTH = 595.28;
  public static final double HEIGHT = 841.89;

  /** A thinner bar could not be seen. */
  private static final double LEAST = 0.6;

  private final TaggedFile file;
  private final PDPage page;

  /** Null where nothing is to be drawn. */
  private final PDPageContentStream content;

  /** A page of a document, or what is to be drawn before all that is on it. */
  Canvas(TaggedFile file, PDDocument document, PDPage page) {
    this.file = file;
    this.page = page;
    try {
      content = new PDPageContentStream(document, page, AppendMode.PREPEND, true);
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
          stroke(x1, y1, x2, y2);
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

  /** A bar with its outline, from its top left corner; however thin, it can be seen. */
  public void bar(double x, double y, double width, double height, Fill fill) {
    double right = x + Math.max(LEAST, width);
    double lower = y + Math.max(LEAST, height);
    area(List.of(new double[] {x, y, right, y, right, lower, x, lower}), fill, 0.5);
  }

  /** A small diamond around a point, filled or open. */
  public void diamond(double x, double y, double radius, boolean filled) {
    double[] corners = {x - radius, y, x, y - radius, x + radius, y, x, y + radius};
    area(List.of(corners), filled ? Fill.INK : Fill.OPEN, 0.9);
  }

  /**
   * An area with its outline.
   *
   * @param rings corners of each ring, x and y by turns; a ring within another is a hole
   * @param outline width of the outline, points
   */
  public void area(List<double[]> rings, Fill fill, double outline) {
    run(
        () -> {
          path(rings);
          content.setNonStrokingColor(fill.ground().color());
          content.fillEvenOdd();
          if (fill.ordinal() >= Fill.HATCHED.ordinal()) {
            content.saveGraphicsState();
            path(rings);
            content.clipEvenOdd();
            pattern(rings, fill);
            content.restoreGraphicsState();
          }
          path(rings);
          content.setStrokingColor(Tint.INK.color());
          content.setLineWidth((float) outline);
          content.stroke();
        });
  }

  /** Lines over the box around rings. */
  private void pattern(List<double[]> rings, Fill fill) throws IOException {
    GeneralPath shape = new GeneralPath();
    for (double[] ring : rings) {
      shape.moveTo(ring[0], ring[1]);
      for (int i = 2; i < ring.length; i += 2) {
        shape.lineTo(ring[i], ring[i + 1]);
      }
    }
    Rectangle2D box = shape.getBounds2D();
    boolean dots = fill == Fill.DOTTED;
    content.setStrokingColor(Tint.INK.color());
    content.setLineWidth(dots ? 1.3f : 0.5f);
    if (dots) {
      content.setLineDashPattern(new float[] {1.3f, 5}, 0);
    }
    double rise = dots ? 0 : box.getHeight();
    for (double at = -rise; at < (dots ? box.getHeight() : box.getWidth()); at += dots ? 6 : 4) {
      double x = dots ? box.getMinX() : box.getMinX() + at;
      double y = dots ? box.getMinY() + at : box.getMaxY();
      double to = dots ? box.getMaxX() : x + rise;
      stroke(x, y, to, y - rise);
      if (fill == Fill.CROSSED) {
        stroke(x, y - rise, to, y);
      }
    }
    content.stroke();
  }

  private void stroke(double x1, double y1, double x2, double y2) throws IOException {
    content.moveTo((float) x1, (float) (HEIGHT - y1));
    content.lineTo((float) x2, (float) (HEIGHT - y2));
  }

  private void path(List<double[]> rings) throws IOException {
    for (double[] ring : rings) {
      content.moveTo((float) ring[0], (float) (HEIGHT - ring[1]));
      for (int i = 2; i < ring.length; i += 2) {
        content.lineTo((float) ring[i], (float) (HEIGHT - ring[i + 1]));
      }
      content.closePath();
    }
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
