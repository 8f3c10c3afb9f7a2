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
import swardcase.check.ReadLimits;
import swardcase.reading.Faults;
import swardcase.reading.FileText;
import swardcase.reading.Table;
import swardcase.reading.TooMuchException;

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

  private FarmWorkbook() {}

  /** The tables on its sheets by their names, or empty and a fault that says what to do. */
  static Optional<Map<String, Table>> find(Path file, Faults faults) {
    try {
      Optional<String> refusal = FileText.refusal(file, ReadLimits.WORKBOOK_BYTES);
      if (refusal.isPresent()) {
        faults.add(FILE, refusal.get());
      } else if (!isArchive(file)) {
        faults.add(FILE, "must be saved as .xlsx by a spreadsheet, without a password");
      } else {
        return Optional.of(read(file, faults));
      }
    } catch (TooMuchException beyond) {
      beyond.addTo(faults);
    } catch (IOException | XMLStreamException | RuntimeException unreadable) {
      // A file that is cut short or was changed fails in many ways.
      faults.add(FILE, "must be a whole workbook: open it in a spreadsheet and save it again");
    }
    return Optional.empty();
  }

  private static boolean isArchive(Path file) throws IOException {
    try (InputStream in = Files.newInputStream(file)) {
      return Arrays.equals(in.readNBytes(ARCHIVE.length), ARCHIVE);
    }
  }

  private static Map<String, Table> read(Path file, Faults faults)
      throws IOException, XMLStreamException {
    Map<String, Table> tables = new LinkedHashMap<>();
    try (WorkbookParts parts = new WorkbookParts(file)) {
      String main = links(parts, "").getOrDefault("officeDocument", "xl/workbook.xml");
      Map<String, String> links = links(parts, main);
      List<String> texts = texts(parts.find(links.getOrDefault("sharedStrings", "")));
      NumberFormats formats = NumberFormats.of(parts.find(links.getOrDefault("styles", "")));
      WorkbookParts.Part book = parts.get(main);
      while (book.next()) {
        String name = book.begins("sheet") ? book.attribute("name").orElse("") : "";
        String sheet = name.strip().toLowerCase(Locale.ROOT);
        if (SHEETS.contains(sheet)) {
          String part = links.getOrDefault(book.attribute("id").orElse(""), "");
          SheetCells cells = new SheetCells(FILE + ", sheet " + sheet, texts, formats, faults);
          tables.put(sheet, cells.read(parts.get(part)));
        }
      }
    }
    return tables;
  }

  /** The parts that a part of the archive refers to, by the kind of link and by its number. */
  private static Map<String, String> links(WorkbookParts parts, String from)
      throws IOException, XMLStreamException {
    int name = from.lastIndexOf('/') + 1;
    String folder = from.substring(0, name);
    Optional<WorkbookParts.Part> part =
        parts.find(folder + "_rels/" + from.substring(name) + ".rels");
    Map<String, String> links = new HashMap<>();
    while (part.isPresent() && part.get().next()) {
      if (part.get().begins("Relationship")) {
        String target = part.get().attribute("Target").orElse("");
        String type = part.get().attribute("Type").orElse("");
        String whole = target.startsWith("/") ? target.substring(1) : folder + target;
        links.put(part.get().attribute("Id").orElse(""), whole);
        links.put(type.substring(type.lastIndexOf('/') + 1), whole);
      }
    }
    return links;
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
