package swardcase.paper;

import java.util.ArrayList;
import java.util.List;
import org.apache.pdfbox.pdmodel.documentinterchange.logicalstructure.PDStructureElement;
import org.apache.pdfbox.pdmodel.documentinterchange.taggedpdf.PDTableAttributeObject;

/**
 * A tagged table. The first column heads its row; the heading row, if any column has a heading, is
 * drawn again on every page the table runs on to. A row is never broken, nor is a number, which is
 * set smaller instead. What follows a line break in a cell stands below the rest of it in the type
 * of notes; nothing is longer than {@link #MOST_LINES}, nor a head than {@link #MOST_OF_HEAD}.
 */
public final class Table {

  private static final int MOST_LINES = 12;
  private static final int MOST_OF_HEAD = 3;
  private static final double PADDING = 2;
  private static final double LEAST_HEIGHT = 10.5;

  /** Room for a row below the heading. */
  private static final double FIRST_ROW = 40;

  private final Flow flow;
  private final List<Column> columns;
  private final double left;
  private final double width;
  private final List<Box> head;
  private final PDStructureElement body;

  /** Begins a table of these columns where the flow stands. */
  public Table(Flow flow, Column... columns) {
    this(flow, Flow.LEFT, columns);
  }

  /** Begins it {@code left} points from the edge of the page. */
  public Table(Flow flow, double left, Column... columns) {
    this.flow = flow;
    this.columns = List.of(columns);
    this.left = left;
    width = this.columns.stream().mapToDouble(Column::width).sum();
    boolean headed = this.columns.stream().anyMatch(column -> !column.header().isEmpty());
    head = headed ? headings() : List.of();
    if (headed) {
      flow.need(height(head) + FIRST_ROW);
    }
    PDStructureElement table = flow.element("Table");
    if (headed) {
      PDStructureElement rows = flow.file().element(table, "THead");
      draw(head, flow.file().element(rows, "TR"), true);
    }
    body = flow.file().element(table, "TBody");
  }

  /** The next row, on a new page if it does not fit. */
  public void row(String... cells) {
    row(place(List.of(cells), columns.stream().map(Column::style).toList()));
  }

  /** A row that stands out, such as a sum. */
  public void rowInBold(String... cells) {
    row(place(List.of(cells), columns.stream().map(column -> column.style().inBold()).toList()));
  }

  private void row(List<Box> row) {
    if (height(row) > flow.room()) {
      flow.newPage();
      if (!head.isEmpty()) {
        double top = flow.y();
        flow.canvas().artifact(() -> head.forEach(box -> drawText(box, top)));
        ruleBelow(head, Tint.INK);
      }
    }
    draw(row, flow.file().element(body, "TR"), false);
  }

  private void draw(List<Box> row, PDStructureElement element, boolean heading) {
    double top = flow.y();
    for (int i = 0; i < row.size(); i++) {
      Box box = row.get(i);
      boolean isHead = heading || i == 0;
      PDStructureElement cell = flow.file().element(element, isHead ? "TH" : "TD");
      if (isHead) {
        PDTableAttributeObject scope = new PDTableAttributeObject();
        scope.setScope(heading ? "Column" : "Row");
        cell.addAttribute(scope);
      }
      if (!box.lines().isEmpty()) {
        flow.canvas().tagged(cell, () -> drawText(box, top));
      }
    }
    ruleBelow(row, heading ? Tint.INK : Tint.RULE);
  }

  private void ruleBelow(List<Box> row, Tint tint) {
    flow.gap(height(row));
    double at = flow.y();
    flow.canvas().artifact(() -> flow.canvas().line(left, at, left + width, at, 0.5, tint));
  }

  private void drawText(Box box, double top) {
    double y = top + box.y();
    for (Line line : box.lines()) {
      double baseline = y + line.style().ascent();
      if (box.right()) {
        flow.canvas().textTo(line.text(), left + box.x() + box.width(), baseline, line.style());
      } else {
        flow.canvas().text(line.text(), left + box.x(), baseline, line.style());
      }
      y += line.style().leading();
    }
  }

  private record Line(String text, Style style) {}

  private record Box(double x, double y, double width, boolean right, List<Line> lines) {

    double bottom() {
      return y + lines.stream().mapToDouble(line -> line.style().leading()).sum();
    }
  }

  private static double height(List<Box> row) {
    return PADDING + row.stream().mapToDouble(Box::bottom).reduce(LEAST_HEIGHT, Math::max);
  }

  /** What stands below its row has its heading below that of the first column. */
  private List<Box> headings() {
    List<Box> boxes = new ArrayList<>();
    double x = 0;
    for (Column column : columns) {
      double inner = column.below() ? columns.get(0).width() : inner(column);
      double y = column.below() ? boxes.get(0).bottom() : PADDING;
      boxes.add(box(column.below() ? 0 : x, y, inner, column, column.header(), Style.NOTE_BOLD));
      x += column.width();
    }
    return boxes;
  }

  private List<Box> place(List<String> cells, List<Style> styles) {
    List<Box> boxes = new ArrayList<>();
    double x = 0;
    for (int i = 0; i < cells.size(); i++) {
      Column column = columns.get(i);
      boxes.add(
          column.below()
              ? box(0, height(boxes) - PADDING, width, column, cells.get(i), styles.get(i))
              : box(x, PADDING, inner(column), column, cells.get(i), styles.get(i)));
      x += column.width();
    }
    return boxes;
  }

  private double inner(Column column) {
    return column.width() - (columns.indexOf(column) < columns.size() - 1 ? Column.GAP : 0);
  }

  private Box box(double x, double y, double inner, Column column, String text, Style style) {
    int most = columns.indexOf(column) == 0 ? MOST_OF_HEAD : MOST_LINES;
    List<Line> lines = new ArrayList<>();
    String[] pieces = text.split("\n");
    for (int i = 0; i < pieces.length; i++) {
      lines.addAll(lines(pieces[i], i == 0 ? style : Style.NOTE, column.right(), inner, most));
    }
    return new Box(x, y, inner, column.right(), lines);
  }

  private List<Line> lines(String text, Style style, boolean isNumber, double inner, int most) {
    Style fitting = isNumber ? flow.lettering().unbroken(text, style, inner) : style;
    return text.isBlank()
        ? List.of()
        : flow.lettering().wrap(text, fitting, inner, most).stream()
            .map(line -> new Line(line, fitting))
            .toList();
  }
}
