package swardcase.workbook;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.Collections;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;
import org.apache.commons.compress.archivers.zip.ZipArchiveEntry;
import org.apache.commons.compress.archivers.zip.ZipFile;

/**
 * Copies a workbook's archive without the time of day: every entry has the same time, and the
 * workbook is dated as its sheet is. Asks the spreadsheet to work out all formulas on opening,
 * because the writer saves none of their values.
 */
final class FixedArchive {

  private static final LocalDateTime TIME = LocalDateTime.of(1980, 1, 1, 0, 0);

  private FixedArchive() {}

  static void copy(byte[] archive, LocalDate date, OutputStream to) throws IOException {
    try (ZipFile from = ZipFile.builder().setByteArray(archive).get()) {
      ZipOutputStream zip = new ZipOutputStream(to);
      for (ZipArchiveEntry entry : Collections.list(from.getEntries())) {
        ZipEntry copy = new ZipEntry(entry.getName());
        copy.setTimeLocal(TIME);
        zip.putNextEntry(copy);
        zip.write(fixed(entry.getName(), from.getInputStream(entry).readAllBytes(), date));
        zip.closeEntry();
      }
      zip.finish();
    }
  }

  private static byte[] fixed(String name, byte[] content, LocalDate date) {
    String text = new String(content, StandardCharsets.UTF_8);
    if (name.equals("docProps/core.xml")) {
      text =
          text.replaceAll(
              "(<dcterms:created[^>]*>)[^<]*(</dcterms:created>)", "$1" + date + "T00:00:00Z$2");
    } else if (name.equals("xl/workbook.xml")) {
      text = text.replace("</workbook>", "<calcPr fullCalcOnLoad=\"1\"/></workbook>");
    } else {
      return content;
    }
    return text.getBytes(StandardCharsets.UTF_8);
  }
}
