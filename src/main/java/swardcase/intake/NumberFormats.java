package swardcase.intake;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;
import javax.xml.stream.XMLStreamException;

/** How the cells of a workbook show their numbers, by the number of the cell's style. */
final class NumberFormats {

  /** What a number is taken for. */
  enum Shown {
    PLAIN,
    PER_CENT,
    DATE
  }

  /** Parts of a format that are printed as they are, or are no digits: colours, spaces, texts. */
  private static final Pattern PRINTED =
      Pattern.compile("\"[^\"]*\"?|\\\\.|_.|\\*.|\\[[^\\]]*\\]?|general");

  private static final Pattern OF_A_DATE = Pattern.compile("[dmyhs]");

  private final List<Shown> styles = new ArrayList<>();

  private NumberFormats() {}

  /** Reads the part of the styles; without one every number is plain. */
  static NumberFormats of(Optional<WorkbookParts.Part> part) throws XMLStreamException {
    NumberFormats formats = new NumberFormats();
    if (part.isPresent()) {
      formats.read(part.get());
    }
    return formats;
  }

  private void read(WorkbookParts.Part part) throws XMLStreamException {
    Map<String, Shown> own = new HashMap<>();
    boolean ofCells = false;
    while (part.next()) {
      if (part.begins("numFmt")) {
        own.put(
            part.attribute("numFmtId").orElse(""), shown(part.attribute("formatCode").orElse("")));
      } else if (part.begins("cellXfs") || part.ends("cellXfs")) {
        ofCells = part.begins("cellXfs");
      } else if (ofCells && part.begins("xf")) {
        String id = part.attribute("numFmtId").orElse("0");
        Shown usual = usual(Integer.parseInt(id));
        styles.add(usual == Shown.PLAIN ? own.getOrDefault(id, usual) : usual);
      }
    }
  }

  /** How a cell of this style shows a number. */
  Shown get(int style) {
    return style >= 0 && style < styles.size() ? styles.get(style) : Shown.PLAIN;
  }

  /** The formats that every spreadsheet knows by number and no workbook writes down. */
  private static Shown usual(int id) {
    if (id == 9 || id == 10) {
      return Shown.PER_CENT;
    }
    return id >= 14 && id <= 22 || id >= 45 && id <= 47 ? Shown.DATE : Shown.PLAIN;
  }

  private static Shown shown(String format) {
    String shape = PRINTED.matcher(format.toLowerCase(Locale.ROOT)).replaceAll("");
    if (shape.contains("%")) {
      return Shown.PER_CENT;
    }
    return OF_A_DATE.matcher(shape).find() ? Shown.DATE : Shown.PLAIN;
  }
}
