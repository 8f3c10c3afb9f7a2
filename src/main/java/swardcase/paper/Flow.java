package swardcase.paper;

import java.util.List;
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

  public static final Style CARD = new Style(true, 11.5, Tint.INK);

  private final TaggedFile file;
  private final RunningHead head;
  private Canvas canvas;
  private double y;
  private PDOutlineItem section;

  /** Begins on a first page of the file. */
  public Flow(TaggedFile file, RunningHead head) {
    this.file = file;
    this.head = head;
  }

  /** The file that is written. */
  public TaggedFile file() {
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

  /** Its number, from 1. */
  public int page() {
    return file.pageCount();
  }

  /** Distance of the cursor from the top of the page. */
  public double y() {
    return y;
  }

  /** What is left of the page. */
  double room() {
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
    end();
    canvas = file.newPage();
    head.draw(canvas, file.lettering(), file.pageCount());
    y = TOP;
  }

  /** Ends the last page. */
  public void end() {
    if (canvas != null) {
      canvas.close();
    }
  }

  /** Starts a new page unless there is room for {@code height}. */
  public void need(double height) {
    if (room() < height && y > TOP) {
      newPage();
    }
  }

  /** The title of the sheet. */
  public void title(String text, String bookmark) {
    section = file.bookmark(null, bookmark, canvas.page(), y);
    lines("H1", text, Style.TITLE);
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
    need(70);
    gap(6);
    lines("H3", text, Style.PART);
    gap(2);
  }

  /** A heading that follows the title of the sheet without a section between. */
  public void heading(String text) {
    need(70);
    gap(6);
    lines("H2", text, Style.PART);
    gap(2);
  }

  /** A heading within a section with a bookmark below that of the section. */
  public void markedPart(String text) {
    file.bookmark(section, text, canvas.page(), y);
    lines("H3", text, CARD);
    gap(2);
  }

  /** A paragraph over the whole width. */
  public void paragraph(String text, Style style) {
    lines("P", text, style);
    gap(4);
  }

  private void lines(String type, String text, Style style) {
    if (text.isBlank()) {
      return;
    }
    PDStructureElement element = file.element(file.top(), type);
    block(element, lettering().wrap(text, style, WIDTH), style, LEFT);
  }

  /** Lines of one paragraph that begin at {@code x}, in points from the left edge of the page. */
  public void paragraph(List<String> lines, Style style, double x) {
    block(file.element(file.top(), "P"), lines, style, x);
  }

  /** Lines of one element, broken over pages where they must be. */
  void block(PDStructureElement element, List<String> lines, Style style, double x) {
    int from = 0;
    while (from < lines.size()) {
      need(style.leading() * Math.min(2, lines.size() - from));
      int fits = Math.max(1, (int) ((room() + 0.01) / style.leading()));
      List<String> here = lines.subList(from, Math.min(lines.size(), from + fits));
      double start = y;
      canvas.tagged(element, () -> draw(here, x, start, style));
      y += here.size() * style.leading();
      from += here.size();
    }
  }

  /** Draws lines from {@code top} down. */
  void draw(List<String> lines, double x, double top, Style style) {
    for (int i = 0; i < lines.size(); i++) {
      canvas.text(lines.get(i), x, top + i * style.leading() + style.ascent(), style);
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
    PDStructureElement list = file.element(file.top(), "L");
    for (String item : items) {
      List<String> lines = lettering().wrap(item, style, width - 12);
      need(style.leading() * Math.min(2, lines.size()));
      double middle = y + style.ascent() - style.size() * 0.33;
      canvas.artifact(() -> canvas.box(LEFT + 1, middle - 1.4, 2.8, 2.8, Tint.DEEP));
      PDStructureElement entry = file.element(list, "LI");
      block(file.element(entry, "LBody"), lines, style, LEFT + 12);
      gap(2.5);
    }
    gap(2);
  }

  /** Draws a picture at {@code top} with {@code height}. */
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
    PDStructureElement element = file.element(file.top(), "Figure");
    element.setAlternateDescription(Lettering.tidy(alternative));
    PDLayoutAttributeObject place = new PDLayoutAttributeObject();
    place.setBBox(
        new PDRectangle(
            (float) x, (float) (Canvas.HEIGHT - y - height), (float) width, (float) height));
    element.addAttribute(place);
    canvas.tagged(element, () -> painter.paint(canvas, y));
  }
}
