package swardcase.paper;

import java.io.IOException;
import java.io.OutputStream;
import java.util.List;
import java.util.function.Consumer;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.pdmodel.documentinterchange.logicalstructure.PDStructureElement;
import org.apache.pdfbox.pdmodel.documentinterchange.taggedpdf.PDLayoutAttributeObject;
import org.apache.pdfbox.pdmodel.interactive.documentnavigation.outline.PDOutlineItem;

/** Text and figures one below another, page after page. */
public final class Flow {

  public static final double LEFT = 44;
  public static final double RIGHT = Canvas.WIDTH - 44;
  public static final double TOP = 58;
  public static final double BOTTOM = Canvas.HEIGHT - 56;
  public static final double WIDTH = RIGHT - LEFT;

  private static final Style CARD = new Style(true, 11.5, Tint.INK);
  private static final double INDENT = 12;

  private TaggedFile file;
  private Canvas canvas;
  private double y = BOTTOM;
  private PDOutlineItem section;

  private Flow(TaggedFile file) {
    this.file = file;
  }

  /** Writes a document with everything that is put on its pages; the stream stays open. */
  public static void write(String title, RunningHead head, OutputStream out, Consumer<Flow> drawing)
      throws IOException {
    try (TaggedFile file = new TaggedFile(title, head.program(), head.date())) {
      Flow flow = new Flow(file);
      drawing.accept(flow);
      flow.canvas.close();
      for (int page = 1; page <= file.pageCount(); page++) {
        Canvas margins = file.before(page);
        head.draw(margins, file.lettering(), page, file.pageCount());
        margins.close();
      }
      file.save(out);
    }
  }

  /** The file that is written. */
  TaggedFile file() {
    return file;
  }

  /** The faces, which measure and break text. */
  public Lettering lettering() {
    return file.lettering();
  }

  /** The page at hand. */
  public Canvas canvas() {
    return canvas;
  }

  /** Distance of the cursor from the top of the page. */
  public double y() {
    return y;
  }

  /** What is left of the page. */
  public double room() {
    return BOTTOM - y;
  }

  /** Goes on at a height, in points from the top of the page. */
  public void moveTo(double newY) {
    y = newY;
  }

  /** Leaves so many points free. */
  public void gap(double height) {
    y += height;
  }

  /** Goes on on a new page. */
  public void newPage() {
    if (canvas != null) {
      canvas.close();
    }
    canvas = file.newPage();
    y = TOP;
  }

  /** Starts a new page unless there is room for {@code height}. */
  public void need(double height) {
    if (canvas == null || room() < height && y > TOP) {
      newPage();
    }
  }

  /** Height of what a drawing adds, which is found by drawing it where nobody sees it. */
  public double height(Runnable drawing) {
    TaggedFile here = file;
    Canvas page = canvas;
    double at = y;
    PDOutlineItem within = section;
    section = null;
    file = here.trial();
    canvas = file.newPage();
    y = TOP;
    drawing.run();
    double height = (file.pageCount() - 1) * (BOTTOM - TOP) + y - TOP;
    file = here;
    canvas = page;
    y = at;
    section = within;
    return height;
  }

  /** Draws on the page at hand if it fits there, else on a new one. */
  public void together(Runnable drawing) {
    need(Math.min(height(drawing), BOTTOM - TOP));
    drawing.run();
  }

  /** The title of the sheet, on a page of its own or above the rest. */
  public void title(String text, String bookmark) {
    need(0);
    section = file.bookmark(null, bookmark, canvas.page(), y);
    lines("H1", lettering().wrap(text, Style.TITLE, WIDTH, 2), Style.TITLE, LEFT);
    gap(4);
  }

  /** The heading of a section, with a bookmark. */
  public void section(String text) {
    need(120);
    section = file.bookmark(null, text, canvas.page(), y);
    lines("H2", text, Style.SECTION);
    gap(5);
  }

  /** A heading within a section. */
  public void part(String text) {
    heading("H3", text);
  }

  /** A heading that follows the title of the sheet without a section between. */
  public void heading(String text) {
    heading("H2", text);
  }

  private void heading(String type, String text) {
    need(90);
    gap(6);
    lines(type, text, Style.PART);
    gap(2);
  }

  /** A heading within a section, below a rule, with a bookmark below that of the section. */
  public void card(String text) {
    double top = y;
    canvas.artifact(() -> canvas.box(LEFT, top, WIDTH, 1.4, Tint.DEEP));
    gap(6);
    file.bookmark(section, text, canvas.page(), y);
    lines("H3", text, CARD);
    gap(2);
  }

  /** A paragraph over the whole width. */
  public void paragraph(String text, Style style) {
    lines("P", text, style);
    gap(4);
  }

  /** A paragraph from {@code x} on. */
  public void paragraph(String text, Style style, double x, double width) {
    lines("P", lettering().wrap(text, style, width), style, x);
  }

  private void lines(String type, String text, Style style) {
    if (!text.isBlank()) {
      lines(type, lettering().wrap(text, style, WIDTH), style, LEFT);
    }
  }

  private void lines(String type, List<String> lines, Style style, double x) {
    block(element(type), lines, style, x);
  }

  PDStructureElement element(String type) {
    return file.element(file.top(), type);
  }

  /** Lines of one element, broken over pages where they must be. */
  private void block(PDStructureElement element, List<String> lines, Style style, double x) {
    int from = 0;
    while (from < lines.size()) {
      need(style.leading() * Math.min(2, lines.size() - from));
      int fits = Math.max(1, (int) ((room() + 0.01) / style.leading()));
      List<String> here = lines.subList(from, Math.min(lines.size(), from + fits));
      double start = y;
      canvas.tagged(
          element,
          () -> {
            for (int i = 0; i < here.size(); i++) {
              double baseline = start + i * style.leading() + style.ascent();
              canvas.text(here.get(i), x, baseline, style);
            }
          });
      y += here.size() * style.leading();
      from += here.size();
    }
  }

  /** A list with a small square before each item. */
  public void bullets(List<String> items, Style style) {
    bullets(items, style, WIDTH);
  }

  /** The same in less width, from the left. */
  public void bullets(List<String> items, Style style, double width) {
    if (items.isEmpty()) {
      return;
    }
    PDStructureElement list = element("L");
    for (String item : items) {
      List<String> lines = lettering().wrap(item, style, width - INDENT);
      need(style.leading() * Math.min(2, lines.size()));
      double middle = y + style.ascent() - style.size() * 0.33;
      canvas.artifact(() -> canvas.box(LEFT + 1, middle - 1.4, 2.8, 2.8, Tint.DEEP));
      PDStructureElement entry = file.element(list, "LI");
      block(file.element(entry, "LBody"), lines, style, LEFT + INDENT);
      gap(2.5);
    }
    gap(2);
  }

  /** Draws a picture at {@code top}. */
  public interface Painter {
    void paint(Canvas canvas, double top);
  }

  /** A figure over the whole width with the words that stand for it. */
  public void figure(double height, String alternative, Painter painter) {
    need(height);
    figureAt(LEFT, WIDTH, height, alternative, painter);
    gap(height + 6);
  }

  /** A figure at the cursor, which stays where it is. */
  public void figureAt(double x, double width, double height, String alternative, Painter painter) {
    PDStructureElement element = element("Figure");
    element.setAlternateDescription(Lettering.tidy(alternative));
    PDLayoutAttributeObject place = new PDLayoutAttributeObject();
    place.setBBox(
        new PDRectangle(
            (float) x, (float) (Canvas.HEIGHT - y - height), (float) width, (float) height));
    element.addAttribute(place);
    canvas.tagged(element, () -> painter.paint(canvas, y));
  }
}
