package swardcase.intake;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import javax.xml.stream.XMLStreamException;
import swardcase.check.Fault;
import swardcase.check.ReadLimits;
import swardcase.check.SmallFile;
import swardcase.intake.FaultList.Place;
import swardcase.tables.CsvTable;

/**
 * The workbook {@code farm.xlsx}: its sheets {@code paddocks}, {@code plants} and {@code records},
 * case aside. Other sheets are the user's own and are not read. Nothing is written to disk and no
 * link is followed.
 */
final class FarmWorkbook {

  static final String FILE = "farm.xlsx";

  private static final List<String> SHEETS =
      List.of(PaddocksCsv.TABLE, PlantsCsv.TABLE, RecordsCsv.TABLE);

  /** How an archive begins. */
  private static final byte[] ARCHIVE = {'P', 'K', 3, 4};

  private final Map<String, CsvTable> tables = new LinkedHashMap<>();

  private FarmWorkbook() {}

  /** The workbook, or empty and a fault that says what to do. */
  static Optional<FarmWorkbook> find(Path file, List<Fault> ofTables, FaultList faults) {
    Place whole = new Place(FILE, 0, "");
    try {
      Optional<String> refusal = SmallFile.refusal(file, ReadLimits.WORKBOOK_BYTES);
      if (refusal.isPresent()) {
        faults.add(whole, refusal.get(), "");
      } else if (!isArchive(file)) {
        faults.add(whole, "must be saved as .xlsx by a spreadsheet, without a password", "");
      } else {
        return Optional.of(read(file, ofTables));
      }
    } catch (TooMuchException beyond) {
      beyond.addTo(faults);
    } catch (IOException | XMLStreamException | RuntimeException unreadable) {
      // A file that is cut short or was changed fails in many ways.
      faults.add(whole, "must be a whole workbook: open it in a spreadsheet and save it again", "");
    }
    return Optional.empty();
  }

  /** The table on a sheet. */
  Optional<CsvTable> find(String sheet) {
    return Optional.ofNullable(tables.get(sheet));
  }

  private static boolean isArchive(Path file) throws IOException {
    try (InputStream in = Files.newInputStream(file)) {
      return Arrays.equals(in.readNBytes(ARCHIVE.length), ARCHIVE);
    }
  }

  private static FarmWorkbook read(Path file, List<Fault> ofTables)
      throws IOException, XMLStreamException {
    FarmWorkbook workbook = new FarmWorkbook();
    try (WorkbookParts parts = new WorkbookParts(file)) {
      Map<String, String> byKind = kinds(parts.get("[Content_Types].xml"));
      String main = byKind.getOrDefault("main", "xl/workbook.xml");
      Map<String, String> sheets = sheets(parts, main);
      List<String> texts = texts(parts.find(byKind.getOrDefault("sharedStrings", "")));
      NumberFormats formats = NumberFormats.of(parts.find(byKind.getOrDefault("styles", "")));
      for (Map.Entry<String, String> sheet : sheets.entrySet()) {
        String printed = FILE + ", sheet " + sheet.getKey();
        SheetCells cells = new SheetCells(printed, texts, formats, ofTables);
        workbook.tables.put(sheet.getKey(), cells.read(parts.get(sheet.getValue())));
      }
    }
    return workbook;
  }

  /** The names of parts by what they hold; of a kind that comes often, such as sheets, the last. */
  private static Map<String, String> kinds(WorkbookParts.Part part) throws XMLStreamException {
    Map<String, String> kinds = new HashMap<>();
    while (part.next()) {
      if (part.begins("Override")) {
        String type = part.attribute("ContentType").orElse("");
        String kind = type.substring(type.lastIndexOf('.') + 1).replace("+xml", "");
        kinds.put(kind, part.attribute("PartName").orElse("").replaceFirst("^/", ""));
      }
    }
    return kinds;
  }

  /** The parts of the sheets that are read, by the names of the sheets. */
  private static Map<String, String> sheets(WorkbookParts parts, String main)
      throws IOException, XMLStreamException {
    int name = main.lastIndexOf('/') + 1;
    String folder = main.substring(0, name);
    WorkbookParts.Part links = parts.get(folder + "_rels/" + main.substring(name) + ".rels");
    Map<String, String> targets = new HashMap<>();
    while (links.next()) {
      if (links.begins("Relationship")) {
        String target = links.attribute("Target").orElse("");
        boolean whole = target.startsWith("/");
        targets.put(
            links.attribute("Id").orElse(""), whole ? target.substring(1) : folder + target);
      }
    }
    Map<String, String> sheets = new LinkedHashMap<>();
    WorkbookParts.Part book = parts.get(main);
    while (book.next()) {
      if (book.begins("sheet")) {
        String sheet = book.attribute("name").orElse("").strip().toLowerCase(Locale.ROOT);
        if (SHEETS.contains(sheet)) {
          sheets.put(sheet, targets.getOrDefault(book.attribute("id").orElse(""), ""));
        }
      }
    }
    return sheets;
  }

  /** The texts that cells refer to by number. */
  private static List<String> texts(Optional<WorkbookParts.Part> part) throws XMLStreamException {
    List<String> texts = new ArrayList<>();
    while (part.isPresent() && part.get().next()) {
      if (part.get().begins("si")) {
        texts.add(part.get().runs("si"));
      }
    }
    return texts;
  }
}
