package swardcase.intake;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import javax.xml.stream.XMLStreamException;
import swardcase.check.Check;
import swardcase.check.ReadLimits;
import swardcase.intake.NumberFormats.Shown;
import swardcase.reading.Faults;
import swardcase.reading.Node.Spot;
import swardcase.reading.Table;

/**
 * Turns the cells of a sheet into the text a CSV file would hold. A formula counts by the value
 * that was saved with it, a ticked box as {@code yes}, and a cell shown as per cent below a heading
 * with {@code percent} as what it shows: 0.3 shown as 30 % is 30. A date is refused, because a
 * spreadsheet makes dates of names such as {@code 3-1} on its own.
 */
final class SheetCells {

  private static final Pattern ERROR = Pattern.compile("#[A-Z0-9/]+[!?]?");
  private static final Pattern CELL = Pattern.compile("([A-Z]+)[0-9]+");

  private final String name;
  private final List<String> shared;
  private final NumberFormats formats;
  private final Faults faults;
  private final SortedMap<Integer, List<String>> rows = new TreeMap<>();
  private List<String> headings = List.of();

  /** A cell as it is stored: what kind it says it is, its style, and the value saved in it. */
  private record Stored(String type, int style, Optional<String> value, boolean isFormula) {}

  /**
   * A sheet to be read.
   *
   * @param name what it is called in faults
   * @param shared the texts that cells refer to by number
   */
  SheetCells(String name, List<String> shared, NumberFormats formats, Faults faults) {
    this.name = name;
    this.shared = shared;
    this.formats = formats;
    this.faults = faults;
  }

  /** The sheet as a table, its rows numbered as the spreadsheet numbers them. */
  Table read(WorkbookParts.Part part) throws XMLStreamException {
    int row = 0;
    while (part.next() && !part.ends("sheetData") && rows.size() <= ReadLimits.ROWS) {
      if (part.begins("row")) {
        row = part.attribute("r").map(Integer::parseInt).orElse(row + 1);
        add(row, cells(part, row));
      }
    }
    List<Table.Line> lines = new ArrayList<>();
    rows.forEach(
        (number, texts) -> {
          List<String> filled = new ArrayList<>(texts);
          filled.addAll(Collections.nCopies(Math.max(0, headings.size() - texts.size()), ""));
          if (!texts.get(0).startsWith("# ")) {
            lines.add(new Table.Line(number, filled));
          }
        });
    return Table.ofLines(name, lines, faults);
  }

  private void add(int row, List<String> texts) {
    if (!texts.isEmpty()) {
      if (rows.put(row, texts) != null) {
        fault(row, "", "must not be a row twice");
      }
      headings = headings.isEmpty() && !texts.get(0).startsWith("# ") ? texts : headings;
    }
  }

  /** The texts of a row up to the last cell that has one. */
  private List<String> cells(WorkbookParts.Part part, int row) throws XMLStreamException {
    List<String> texts = new ArrayList<>();
    int column = -1;
    boolean tooMany = false;
    while (part.next() && !part.ends("row")) {
      if (part.begins("c")) {
        column = part.attribute("r").map(SheetCells::column).orElse(column + 1);
        String text = text(stored(part), row, column);
        if (text.isEmpty()) {
          continue;
        }
        if (column >= ReadLimits.COLUMNS) {
          tooMany = true;
          continue;
        }
        while (texts.size() <= column) {
          texts.add("");
        }
        texts.set(column, text);
      }
    }
    if (tooMany) {
      fault(row, "", "must not have more than " + ReadLimits.COLUMNS + " columns");
    }
    return texts;
  }

  /** The column of a cell such as {@code AB12}, from 0. */
  private static int column(String cell) {
    Matcher place = CELL.matcher(cell);
    Check.that(place.matches(), "a cell must have a place such as B3, but had %s", cell);
    String letters = place.group(1);
    WorkbookParts.refuse(letters.length() > 3, "must not have cells beyond column XFD");
    return letters.chars().reduce(0, (column, letter) -> column * 26 + letter - 'A' + 1) - 1;
  }

  private static Stored stored(WorkbookParts.Part part) throws XMLStreamException {
    String type = part.attribute("t").orElse("n");
    int style = part.attribute("s").map(Integer::parseInt).orElse(0);
    Optional<String> value = Optional.empty();
    boolean isFormula = type.equals("str");
    while (part.next() && !part.ends("c")) {
      if (part.begins("v")) {
        value = Optional.of(part.text());
      } else if (part.begins("is")) {
        value = Optional.of(part.runs("is"));
      } else if (part.begins("f")) {
        isFormula = true;
      }
    }
    return new Stored(type, style, value, isFormula);
  }

  private String text(Stored cell, int row, int column) {
    String heading = column < headings.size() ? headings.get(column) : "";
    if (cell.value().isEmpty()) {
      if (cell.isFormula()) {
        fault(
            row,
            heading,
            "must be saved with its value: open the workbook in a spreadsheet and save it again");
      }
      return "";
    }
    String value = cell.value().get();
    switch (cell.type()) {
      case "s":
        return value.isEmpty() ? "" : shared(value).strip();
      case "b":
        return value.equals("1") ? "yes" : "no";
      case "n":
        return value.isEmpty() ? "" : number(value, formats.get(cell.style()), row, heading);
      case "d":
        return date(value, row, heading);
      default:
        if (cell.type().equals("e") || cell.isFormula() && ERROR.matcher(value).matches()) {
          fault(row, heading, "must not be an error of the spreadsheet");
        }
        return value.strip();
    }
  }

  private String shared(String number) {
    int index = Integer.parseInt(number);
    WorkbookParts.refuse(
        index >= shared.size(), "must not refer to text " + index + " of " + shared.size());
    return shared.get(index);
  }

  private String number(String value, Shown shown, int row, String heading) {
    if (value.length() > ReadLimits.DIGITS) {
      fault(row, heading, "must not have more than " + ReadLimits.DIGITS + " digits");
      return "";
    }
    BigDecimal number;
    try {
      // The file holds 17 digits; the shortest that mean the same number are what was typed.
      number = BigDecimal.valueOf(new BigDecimal(value).doubleValue());
    } catch (NumberFormatException none) {
      return value;
    }
    if (shown == Shown.PER_CENT && heading.contains("percent")) {
      number = number.movePointRight(2);
    }
    String text = number.stripTrailingZeros().toPlainString();
    return shown == Shown.DATE ? date(text, row, heading) : text;
  }

  private String date(String text, int row, String heading) {
    fault(row, heading, "must not be a date: set the column to text and type it again");
    return text;
  }

  private void fault(int row, String column, String rule) {
    faults.add(new Spot(name, row), column, rule, "");
  }
}
