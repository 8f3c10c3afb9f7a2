package swardcase.intake;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;
import java.util.zip.ZipEntry;
import java.util.zip.ZipFile;
import org.dhatim.fastexcel.reader.ReadableWorkbook;
import org.dhatim.fastexcel.reader.ReadingOptions;
import org.dhatim.fastexcel.reader.Sheet;
import swardcase.check.Fault;
import swardcase.intake.FaultList.Place;
import swardcase.tables.CsvTable;

/**
 * The workbook {@code farm.xlsx}: its sheets {@code paddocks} and {@code plants}, case aside. Other
 * sheets are the user's own and are not read. Nothing is written to disk and no link is followed.
 */
final class FarmWorkbook {

  static final String FILE = "farm.xlsx";

  private static final List<String> SHEETS = List.of(PaddocksCsv.TABLE, PlantsCsv.TABLE);
  private static final long MOST_BYTES = 5_000_000;
  private static final long MOST_BYTES_UNPACKED = 50_000_000;

  /** A cell beyond column XFD, which no spreadsheet writes and which would fill the memory. */
  private static final Pattern CELL_TOO_FAR = Pattern.compile("\\br=[\"'][A-Za-z]{4,}\\d");

  private final Map<String, CsvTable> tables = new LinkedHashMap<>();

  private FarmWorkbook() {}

  /** The workbook, or empty and a fault that says what to do. */
  static Optional<FarmWorkbook> find(Path file, List<Fault> ofTables, FaultList faults) {
    Place place = new Place(FILE, 0, "");
    try {
      if (!Files.isRegularFile(file)) {
        faults.add(place, "must be a file", "");
        return Optional.empty();
      }
      if (Files.size(file) > MOST_BYTES) {
        faults.add(place, "must not be larger than 5 MB", "");
        return Optional.empty();
      }
      byte[] bytes = Files.readAllBytes(file);
      Optional<String> wrong = wrong(file, bytes);
      if (wrong.isPresent()) {
        faults.add(place, wrong.get(), "");
        return Optional.empty();
      }
      return Optional.of(read(bytes, ofTables));
    } catch (IOException | RuntimeException unreadable) {
      // The reader throws exceptions of many kinds for a file that is cut short or was changed.
      faults.add(place, "must be a whole workbook: open it in a spreadsheet and save it again", "");
      return Optional.empty();
    }
  }

  /** The table on a sheet. */
  Optional<CsvTable> find(String sheet) {
    return Optional.ofNullable(tables.get(sheet));
  }

  private static FarmWorkbook read(byte[] bytes, List<Fault> ofTables) throws IOException {
    FarmWorkbook workbook = new FarmWorkbook();
    try (ReadableWorkbook book =
        new ReadableWorkbook(new ByteArrayInputStream(bytes), new ReadingOptions(true, true))) {
      for (Sheet sheet : book.getSheets().toList()) {
        String name = sheet.getName().strip().toLowerCase(Locale.ROOT);
        if (SHEETS.contains(name)) {
          String printed = FILE + ", sheet " + name;
          workbook.tables.put(name, SheetCells.read(printed, sheet, ofTables));
        }
      }
    }
    return workbook;
  }

  /** Looks through the archive before anything is built from it: what is wrong, if anything. */
  private static Optional<String> wrong(Path file, byte[] bytes) throws IOException {
    if (!ReadableWorkbook.isOOXMLZipHeader(bytes)) {
      return Optional.of("must be saved as .xlsx by a spreadsheet, without a password");
    }
    long unpacked = 0;
    try (ZipFile zip = new ZipFile(file.toFile())) {
      for (ZipEntry entry : Collections.list(zip.entries())) {
        byte[] part =
            zip.getInputStream(entry).readNBytes((int) (MOST_BYTES_UNPACKED - unpacked + 1));
        unpacked += part.length;
        if (unpacked > MOST_BYTES_UNPACKED) {
          return Optional.of("must not hold more than 50 MB unpacked");
        }
        if (entry.getName().endsWith(".xml")
            && CELL_TOO_FAR.matcher(new String(part, StandardCharsets.ISO_8859_1)).find()) {
          return Optional.of("must not have cells beyond column XFD");
        }
      }
    }
    return Optional.empty();
  }
}
