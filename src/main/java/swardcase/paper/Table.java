package swardcase.paper;

import java.util.ArrayList;
import java.util.List;
import org.apache.pdfbox.pdmodel.documentinterchange.logicalstructure.PDStructureElement;
import org.apache.pdfbox.pdmodel.documentinterchange.taggedpdf.PDTableAttributeObject;

/**
 * A tagged table. The first column heads its row; the heading row is drawn again on every page the
 * table runs on to. A row is never broken, nor is a number, which is set smaller instead; no piece
 * of a cell is longer than {@link #MOST_LINES}.
 */
public final class Table {

  private static final int MOST_LINES = 12;
  private static final double PADDING = 2;

  private final Flow flow;
  private final List<Column> columns;
  private final int mostLinesOfHead;
  private final double left;
  private final double width;
  private PDStructureElement table;
  private PDStructureElement body;

  /** A table of these columns where the flow stands. */
  public Table(Flow flow, List<Column> columns) {
    this(flow, columns, Flow.LEFT, MOST_LINES);
  }

  /** A table from {@code left} on whose first column has at most so many lines a row. */
  public Table(Flow flow, List<Column> columns, double left, int mostLinesOfHead) {
    this.flow = flow;
    this.columns = List.copyOf(columns);
    this.left = left;
    this.mostLinesOfHead = mostLinesOfHead;
    this.width = columns.stream().mapToDouble(Column::width).sum();
  }

  /** Starts a table whose columns explain themselves, without a heading row. */
  public void start() {
    table = flow.file().element(flow.file().top(), "Table");
    body = flow.file().element(table, "TBody");
  }

  /** The heading row; needs room for a row below it. */
  public void head() {
    Placed head = headings();
    flow.need(head.height() + 40);
    table = flow.file().element(flow.file().top(), "Table");
    PDStructureElement row = flow.file().element(flow.file().element(table, "THead"), "TR");
    body = flow.file().element(table, "TBody");
    draw(head, row, true);
  }

  private Placed headings() {
    return place(
        columns.stream().map(column -> Cell.of(column.header(), Style.NOTE_BOLD)).toList(), true);
  }

  /** Height a row would take. */
  public double height(List<Cell> cells) {
    return place(cells, false).height();
  }

  /** The next row, on a new page if it does not fit. */
  public void row(List<Cell> cells) {
    Placed row = place(cells, false);
    if (row.height() > flow.room()) {
      flow.newPage();
      repeatHeadings();
    }
    draw(row, flow.file().element(body, "TR"), false);
  }

  private void repeatHeadings() {
    Placed head = headings();
    double top = flow.y();
    flow.canvas().artifact(() -> head.boxes().forEach(box -> drawText(box, top)));
    ruleBelow(top + head.height(), Tint.INK);
    flow.gap(head.height());
  }

  private void draw(Placed row, PDStructureElement element, boolean heading) {
    double top = flow.y();
    for (int i = 0; i < row.boxes().size(); i++) {
      Box box = row.boxes().get(i);
      boolean head = heading || i == 0;
      PDStructureElement cell = flow.file().element(element, head ? "TH" : "TD");
      if (head) {
        PDTableAttributeObject scope = new PDTableAttributeObject();
        scope.setScope(heading ? "Column" : "Row");
        cell.addAttribute(scope);
      }
      if (box.mark() != null) {
        flow.canvas()
            .artifact(
                () ->
                    box.mark().draw(flow.canvas(), left + box.x(), top, box.width(), row.upper()));
      }
      if (!box.lines().isEmpty()) {
        flow.canvas().tagged(cell, () -> drawText(box, top));
      }
    }
    ruleBelow(top + row.height(), heading ? Tint.INK : Tint.RULE);
    flow.gap(row.height());
  }

  private void ruleBelow(double at, Tint tint) {
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

  private record Box(
      double x, double y, double width, boolean right, List<Line> lines, Cell.Mark mark) {

    public double height() {
      return lines.stream().mapToDouble(line -> line.style().leading()).sum();
    }
  }

  /** Boxes of a row; {@code upper} is its height without the part below. */
  private record Placed(List<Box> boxes, double upper, double height) {}

  private Placed place(List<Cell> cells, boolean heading) {
    List<Box> boxes = new ArrayList<>();
    double x = 0;
    double height = 0;
    for (int i = 0; i < columns.size(); i++) {
      Column column = columns.get(i);
      if (!column.below()) {
        double inner = column.width() - (i < columns.size() - 1 ? Column.GAP : 0);
        int most = i == 0 ? mostLinesOfHead : MOST_LINES;
        Box box =
            new Box(
                x,
                PADDING,
                inner,
                column.right(),
                lines(cells.get(i), column, inner, most),
                cells.get(i).mark());
        boxes.add(box);
        x += column.width();
        height = Math.max(height, box.height());
      }
    }
    double upper = PADDING + Math.max(height, 10.5);
    double y = heading ? PADDING + boxes.get(0).height() : upper;
    for (int i = 0; i < columns.size(); i++) {
      if (columns.get(i).below()) {
        double inner = heading ? boxes.get(0).width() : width;
        Box box =
            new Box(
                0, y, inner, false, lines(cells.get(i), columns.get(i), inner, MOST_LINES), null);
        boxes.add(box);
        y += box.height();
      }
    }
    y = Math.max(y, upper);
    return new Placed(boxes, upper, y + PADDING);
  }

  private List<Line> lines(Cell cell, Column column, double inner, int most) {
    List<Line> lines = new ArrayList<>();
    for (Cell.Piece piece : cell.pieces()) {
      if (!piece.text().isBlank()) {
        Style style =
            column.right()
                ? flow.lettering().unbroken(piece.text(), piece.style(), inner)
                : piece.style();
        for (String line : flow.lettering().wrap(piece.text(), style, inner, most)) {
          lines.add(new Line(line, style));
        }
      }
    }
    return lines;
  }
}
