package swardcase.intake;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.function.Consumer;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.CellStyle;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.usermodel.Sheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import swardcase.check.FaultsException;
import swardcase.farm.Farm;
import swardcase.reading.Faults;
import swardcase.reading.Fields;
import swardcase.reading.FileText;
import swardcase.reading.Table;
import swardcase.tables.Tables;
import swardcase.tables.TablesLoader;

/** Workbooks are made by another library than the one that reads them. */
class FarmWorkbookTest {

  private static final Tables TABLES = TablesLoader.standard().load();

  @TempDir private Path folder;

  @BeforeEach
  void writeYaml() throws IOException {
    Files.writeString(folder.resolve("farm.yaml"), "name: Small Farm\ngrowth: Katanning\n");
  }

  private Farm read() {
    return FarmFolder.read(folder, TABLES).farm();
  }

  private void assertFaults(String... messages) {
    assertThatThrownBy(this::read)
        .isInstanceOf(FaultsException.class)
        .hasMessage(String.join("\n", messages));
  }

  private void write(Consumer<XSSFWorkbook> content) throws IOException {
    try (XSSFWorkbook book = new XSSFWorkbook();
        OutputStream to = Files.newOutputStream(folder.resolve("farm.xlsx"))) {
      content.accept(book);
      book.getCreationHelper().createFormulaEvaluator().evaluateAll();
      book.write(to);
    }
  }

  /** A sheet with a row of cells for each array; numbers, texts and truth values. */
  private static Sheet sheet(XSSFWorkbook book, String name, Object[]... rows) {
    Sheet sheet = book.createSheet(name);
    for (int r = 0; r < rows.length; r++) {
      Row row = sheet.createRow(r);
      for (int c = 0; c < rows[r].length; c++) {
        Object value = rows[r][c];
        if (value instanceof Number number) {
          row.createCell(c).setCellValue(number.doubleValue());
        } else if (value instanceof Boolean yes) {
          row.createCell(c).setCellValue(yes);
        } else if (value != null) {
          row.createCell(c).setCellValue(value.toString());
        }
      }
    }
    return sheet;
  }

  private static Object[] row(Object... cells) {
    return cells;
  }

  private static void format(XSSFWorkbook book, Cell cell, String format) {
    CellStyle style = book.createCellStyle();
    style.setDataFormat(book.createDataFormat().getFormat(format));
    cell.setCellStyle(style);
  }

  @ParameterizedTest
  @ValueSource(strings = {"mixed-farm", "recorded-farm"})
  void workbook_withTheDemoFarmsTables_givesTheSameFarm(String farm) throws IOException {
    Path demo = Path.of("demo-data", farm);
    Files.copy(
        demo.resolve("farm.yaml"),
        folder.resolve("farm.yaml"),
        java.nio.file.StandardCopyOption.REPLACE_EXISTING);
    write(
        book -> {
          book.createSheet("notes");
          for (String name : new String[] {"plants", "paddocks", "records"}) {
            if (!Files.exists(demo.resolve(name + ".csv"))) {
              continue;
            }
            Sheet sheet = book.createSheet(name.equals("paddocks") ? "Paddocks" : name);
            Table csv = read(demo.resolve(name + ".csv"));
            copy(csv, sheet);
          }
        });

    assertThat(read()).isEqualTo(FarmFolder.read(demo, TABLES).farm());
  }

  private static Table read(Path csv) {
    return FileText.find(csv, "copied", new Faults())
        .map(text -> Table.of("copied", text, new Faults()))
        .orElseThrow();
  }

  private static void copy(Table from, Sheet to) {
    Row heading = to.createRow(1);
    for (int c = 0; c < from.columns().size(); c++) {
      heading.createCell(c).setCellValue(from.columns().get(c));
    }
    int r = 2;
    for (Fields row : from.rows()) {
      Row copy = to.createRow(r++);
      for (int c = 0; c < from.columns().size(); c++) {
        String text = row.findText(from.columns().get(c)).orElse("");
        if (text.matches("[0-9.]+")) {
          copy.createCell(c).setCellValue(Double.parseDouble(text));
        } else if (!text.isEmpty()) {
          copy.createCell(c).setCellValue(text);
        }
      }
    }
  }

  @Test
  void cells_ofEveryKind_areReadAsTheyAreShown() throws IOException {
    write(
        book -> {
          Sheet sheet =
              sheet(
                  book,
                  "paddocks",
                  row("# my farm"),
                  row("paddock", "area_ha", "clover_percent", "growth_index", "waterlogged"),
                  row(7, null, 0.3, 1.1, true),
                  row("Flat", "20", "0,5"));
          sheet.getRow(2).createCell(1).setCellFormula("4.1+8.2");
          format(book, sheet.getRow(2).getCell(2), "0%");
        });

    Farm farm = read();

    assertThat(farm.paddocks()).extracting(p -> p.name()).containsExactly("7", "Flat");
    assertThat(farm.paddocks().get(0).areaHa()).isEqualTo(4.1 + 8.2);
    assertThat(farm.paddocks().get(0).cloverShare().likely()).isEqualTo(0.3);
    assertThat(farm.paddocks().get(0).growthIndex().likely()).isEqualTo(1.1);
    assertThat(farm.paddocks().get(0).waterlogged()).isTrue();
    assertThat(farm.paddocks().get(1).cloverShare().likely()).isEqualTo(0.005);
  }

  @Test
  void faults_inASheet_nameFileSheetRowAndColumn() throws IOException {
    write(
        book -> {
          Sheet sheet =
              sheet(
                  book,
                  "paddocks",
                  row("paddock", "area_ha", "arable"),
                  row("House", -3, "yes"),
                  row(46025, 10, "perhaps"),
                  row("Flat", null));
          format(book, sheet.getRow(2).getCell(0), "d mmm");
          sheet.getRow(3).createCell(1).setCellFormula("1/0");
          sheet(book, "plants", row("paddock", "cultivar", "plants"), row("Hose", "Yarloop", 4));
        });

    assertFaults(
        "farm.xlsx, sheet paddocks:2: area_ha: must be more than zero and not above 100000; found"
            + " '-3'",
        "farm.xlsx, sheet paddocks:3: arable: must be one of: no, yes; found 'perhaps'",
        "farm.xlsx, sheet paddocks:3: paddock: must not be a date: set the column to text and type"
            + " it again",
        "farm.xlsx, sheet paddocks:4: area_ha: must be a number; found '#DIV/0!'",
        "farm.xlsx, sheet paddocks:4: area_ha: must not be an error of the spreadsheet",
        "farm.xlsx, sheet plants:2: paddock: must be a paddock of farm.xlsx, sheet paddocks; found"
            + " 'Hose'; did you mean 'House'?");
  }

  @Test
  void table_inBothCsvAndWorkbook_isAFault() throws IOException {
    write(book -> sheet(book, "paddocks", row("paddock", "area_ha"), row("House", 10)));
    Files.writeString(folder.resolve("paddocks.csv"), "paddock,area_ha\nHouse,11\n");

    assertFaults(
        "paddocks.csv: must not stand beside the sheet 'paddocks' of farm.xlsx: delete the one"
            + " that is not kept up");
  }

  @Test
  void tables_oneInCsvOneInWorkbook_areReadTogether() throws IOException {
    write(book -> sheet(book, "paddocks", row("paddock", "area_ha"), row("House", 10)));
    Files.writeString(folder.resolve("plants.csv"), "paddock,cultivar,plants\nHouse,Yarloop,40\n");

    assertThat(read().paddocks().get(0).plantsLookedAt()).isEqualTo(40);
  }

  @Test
  void workbook_withoutTheSheet_saysSo() throws IOException {
    write(book -> sheet(book, "Sheet1", row("paddock", "area_ha"), row("House", 10)));

    assertFaults("farm.xlsx: must have a sheet 'paddocks' if there is no paddocks.csv");
  }

  @Test
  void formula_thatGivesAnEmptyText_countsAsABlankCell() throws IOException {
    write(
        book -> {
          Sheet sheet =
              sheet(book, "paddocks", row("paddock", "area_ha", "waterlogged"), row("House", 10));
          sheet.getRow(1).createCell(2).setCellFormula("IF(B2>5,\"\",\"yes\")");
        });

    assertThat(read().paddocks().get(0).waterlogged()).isFalse();
  }

  @Test
  void number_thatIsNone_isAFaultWithItsPlace() throws IOException {
    write(
        book -> {
          Sheet sheet = sheet(book, "paddocks", row("paddock", "area_ha"), row("House", 10));
          org.openxmlformats.schemas.spreadsheetml.x2006.main.CTCell stored =
              ((org.apache.poi.xssf.usermodel.XSSFCell) sheet.getRow(1).getCell(1)).getCTCell();
          stored.setV("1e400");
        });

    assertFaults("farm.xlsx, sheet paddocks:2: area_ha: must be a number; found '1e400'");
  }

  @Test
  void formula_savedWithoutItsValue_isAFault() throws IOException {
    try (OutputStream to = Files.newOutputStream(folder.resolve("farm.xlsx"));
        org.dhatim.fastexcel.Workbook book = new org.dhatim.fastexcel.Workbook(to, "Test", "1.0")) {
      var sheet = book.newWorksheet("paddocks");
      sheet.value(0, 0, "paddock");
      sheet.value(0, 1, "area_ha");
      sheet.value(1, 0, "House");
      sheet.formula(1, 1, "5+5");
    }

    assertThatThrownBy(this::read)
        .hasMessageContaining("farm.xlsx, sheet paddocks:2: area_ha: must be saved with its value");
  }

  @Test
  void file_thatIsNoWorkbook_isRefused() throws IOException {
    Files.writeString(folder.resolve("farm.xlsx"), "paddock,area_ha\nHouse,10\n");

    assertFaults("farm.xlsx: must be saved as .xlsx by a spreadsheet, without a password");
  }

  @Test
  void workbook_ofTooManyRows_isRefused() throws IOException {
    write(
        book -> {
          Sheet sheet = sheet(book, "paddocks", row("paddock", "area_ha"));
          for (int r = 1; r <= 10_000; r++) {
            sheet.createRow(r).createCell(0).setCellValue("P" + r);
          }
        });

    assertThatThrownBy(this::read)
        .hasMessageContaining(
            "farm.xlsx, sheet paddocks:10001: must not have more than 10000 rows");
  }

  @Test
  void archive_withAnEntryOutsideTheFolder_writesNothing() throws IOException {
    Files.write(folder.resolve("farm.xlsx"), zip("../../escaped.xml", new byte[] {1}));

    assertThatThrownBy(this::read).isInstanceOf(FaultsException.class);
    assertThat(folder.resolve("../../escaped.xml").normalize()).doesNotExist();
  }

  private static byte[] zip(String name, byte[] content) throws IOException {
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    try (ZipOutputStream zip = new ZipOutputStream(bytes)) {
      zip.putNextEntry(new ZipEntry(name));
      zip.write(content);
      zip.closeEntry();
    }
    return bytes.toByteArray();
  }
}
