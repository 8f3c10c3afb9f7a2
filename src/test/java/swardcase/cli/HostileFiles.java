package swardcase.cli;

import java.io.IOException;
import java.io.RandomAccessFile;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.IntFunction;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;

/**
 * Files made to fill the memory, to take for ever or to be waited for, most of them within the
 * limits of size. Each is small where it can be: a workbook of a few kB may unpack to gigabytes.
 */
final class HostileFiles {

  private static final int MILLION = 1_000_000;
  private static final String YAML = "name: A\ngrowth: Katanning\n";
  private static final String PADDOCKS = "paddock,area_ha\nHill,30\nFlat,20\n";
  private static final String PLANTS = "paddock,cultivar,plants\n";
  private static final String SHEET = "xl/worksheets/sheet1.xml";
  private static final String ROWS =
      "<row r='1'><c r='A1' t='s'><v>0</v></c><c r='B1' t='s'><v>1</v></c></row>"
          + "<row r='2'><c r='A2' t='s'><v>2</v></c><c r='B2'><v>30</v></c></row>";
  private static final String TEXTS =
      "<sst><si><t>paddock</t></si><si><t>area_ha</t></si><si><t>Hill</t></si></sst>";
  private static final String STYLES =
      "<styleSheet><cellXfs><xf numFmtId='0'/></cellXfs></styleSheet>";

  private final Path folder;
  private final List<Case> cases = new ArrayList<>();

  /**
   * One of them.
   *
   * @param says part of what is printed
   * @param arguments the command that reads it
   */
  record Case(String name, String says, List<String> arguments) {}

  private HostileFiles(Path folder) {
    this.folder = folder;
  }

  /** Writes all of them, a sound farm first. */
  static List<Case> write(Path folder) throws IOException, InterruptedException {
    HostileFiles files = new HostileFiles(folder);
    files.farm("sound", "no faults", Map.of());
    files.workbook("sound workbook", "no faults", sheet(""));
    files.workbooks();
    files.tables();
    files.yaml();
    files.scenarios();
    files.ownTables();
    return files.cases;
  }

  private static String repeated(int count, IntFunction<String> piece) {
    return IntStream.range(0, count).mapToObj(piece).collect(Collectors.joining());
  }

  private Path farm(String name, String says, Map<String, String> files) throws IOException {
    Path farm = Files.createDirectory(folder.resolve(name));
    Files.writeString(farm.resolve("farm.yaml"), files.getOrDefault("farm.yaml", YAML));
    Files.writeString(farm.resolve("paddocks.csv"), files.getOrDefault("paddocks.csv", PADDOCKS));
    Files.writeString(farm.resolve("plants.csv"), files.getOrDefault("plants.csv", PLANTS));
    cases.add(new Case(name, says, List.of("check", farm.toString())));
    return farm;
  }

  private void workbook(String name, String says, String sheet) throws IOException {
    workbook(name, says, SHEET, sheet, Map.of());
  }

  /** A workbook whose sheet of paddocks is a part of any name; other parts may be replaced. */
  private void workbook(
      String name, String says, String part, String sheet, Map<String, String> others)
      throws IOException {
    Path farm = farm(name, says, Map.of());
    Files.delete(farm.resolve("paddocks.csv"));
    Map<String, String> parts =
        new LinkedHashMap<>(
            Map.of(
                "xl/workbook.xml",
                "<workbook xmlns:r='http://schemas.openxmlformats.org/officeDocument/2006/relationships'>"
                    + "<sheets><sheet name='paddocks' r:id='a'/></sheets></workbook>",
                "xl/_rels/workbook.xml.rels",
                "<Relationships><Relationship Id='a' Target='/"
                    + part
                    + "'/><Relationship Type='http://x/styles' Target='styles.xml'/>"
                    + "<Relationship Type='http://x/sharedStrings' Target='texts.xml'/>"
                    + "</Relationships>",
                "xl/styles.xml",
                STYLES,
                "xl/texts.xml",
                TEXTS,
                part,
                sheet));
    parts.putAll(others);
    try (ZipOutputStream zip =
        new ZipOutputStream(Files.newOutputStream(farm.resolve("farm.xlsx")))) {
      for (Map.Entry<String, String> entry : parts.entrySet()) {
        zip.putNextEntry(new ZipEntry(entry.getKey()));
        zip.write(entry.getValue().getBytes(StandardCharsets.UTF_8));
        zip.closeEntry();
      }
    }
  }

  private static String sheet(String more) {
    return "<worksheet><sheetData>" + ROWS + more + "</sheetData></worksheet>";
  }

  private static String cell(String inside) {
    return sheet("<row r='3'>" + inside + "</row>");
  }

  private void workbooks() throws IOException {
    String far = "must not have cells beyond column XFD";
    String elements = "must not hold more than 250000 elements";
    String attributes = "must not have more than 100 attributes in an element";
    String unpacked = "must not hold more than 10 MB unpacked";
    workbook("far cell", far, cell("<c r = 'ZZZZZZ3'/>"));
    workbook("far cell, odd part", far, "xl/sheet.bin", cell("<c r='ZZZZZZ3'/>"), Map.of());
    workbook("text number", "text 99999999 of 3", cell("<c t='s'><v>99999999</v></c>"));
    workbook(
        "digits",
        "sheet paddocks:3: area_ha: must not have more than 100 digits",
        cell("<c r='B3'><v>" + "7".repeat(2 * MILLION) + "</v></c>"));
    workbook(
        "attributes", attributes, cell("<c " + repeated(300_000, i -> "a" + i + "='' ") + "/>"));
    workbook(
        "namespaces",
        attributes,
        cell("<c " + repeated(300_000, i -> "xmlns:a" + i + "='u' ") + "/>"));
    workbook("last column", elements, sheet("<row><c r='XFD3'/></row>".repeat(300_000)));
    workbook("empty rows", elements, sheet("<row><c r='XFD3'/></row>" + "<row/>".repeat(MILLION)));
    workbook(
        "shared formula",
        "must be saved with its value",
        cell(
            "<c><f t='shared' si='0' ref='A3:A9'>"
                + "A1+".repeat(100_000)
                + "A1</f></c></row><row>"
                + "<c><f t='shared' si='0'/></c>".repeat(10_000)));
    workbook(
        "array formulas",
        "must not have more than 10000 rows",
        sheet("<row><c><f t='array' ref='A1'/><v>1</v></c></row>".repeat(100_000)));
    workbook(
        "format",
        "must not have attributes longer than 2000 characters",
        SHEET,
        cell("<c s='1'><v>1</v></c>"),
        Map.of(
            "xl/styles.xml",
            "<a><numFmt numFmtId='200' formatCode='" + "[".repeat(100_000) + "'/></a>"));
    workbook("deep", "must not have more than 64 elements within", sheet("<a>".repeat(MILLION)));
    workbook("text unpacked", unpacked, cell("<c><v>" + "x".repeat(60 * MILLION) + "</v></c>"));
    workbook("long attribute", "no faults", cell("<c a='" + "x".repeat(9 * MILLION) + "'/>"));
    workbook("comments", "no faults", sheet("<!---->".repeat(MILLION)));
    workbook(
        "long element", "must be a whole workbook", cell("<" + "c".repeat(9 * MILLION) + "/>"));
    workbook("names", elements, sheet(repeated(800_000, i -> "<n" + i + "/>")));
    workbook(
        "texts",
        elements,
        SHEET,
        sheet(""),
        Map.of("xl/texts.xml", "<sst>" + "<si><t>a</t></si>".repeat(500_000) + "</sst>"));
    workbook(
        "document type",
        "must not have a document type",
        "<!DOCTYPE a [<!ENTITY b 'c'>]>" + cell("<c><v>&b;</v></c>"));
    workbook(
        "parts",
        "must not have more than 1000 parts",
        SHEET,
        sheet(""),
        IntStream.range(0, 20_000).boxed().collect(Collectors.toMap(i -> "p" + i, i -> "")));
  }

  private void tables() throws IOException {
    String rows = "csv:10001: must not have more than 10000 rows";
    String columns = "csv:1: must not have more than 100 columns";
    String longer = "must not be longer than 2000 characters";
    paddocks("short rows", rows, repeated(85_000, i -> "p" + i + ",1\n"));
    plants("short rows of plants", rows, repeated(85_000, i -> "q" + i + ",Y,1\n"));
    paddocks(
        "too many paddocks",
        "must not have more than 1000 paddocks",
        repeated(1001, i -> "p" + i + ",1\n"));
    farm(
        "headings",
        columns,
        Map.of("paddocks.csv", "paddock,area_ha" + repeated(100_000, i -> ",h" + i)));
    farm("headings alike", columns, Map.of("paddocks.csv", "h" + ",h".repeat(400_000)));
    plants("names to choose from", longer, "Hill,a" + "/a".repeat(450_000) + ",1\n");
    plants(
        "names of a cell",
        "more than 20 names",
        ("Hill,a" + "/a".repeat(900) + ",1\n").repeat(500));
    plants("spaces", longer, "Hill,Yarloop" + " ".repeat(900_000) + "x,1\n");
    paddocks("digits of a cell", longer, "Hill," + "1".repeat(900_000) + "\n");
    paddocks("long word", longer, "x".repeat(900_000) + ",1\n");
    paddocks("long name", "paddock: must not be longer than 200", "x".repeat(201) + ",1\n");
    String name = "Long Paddock With A Very Long Name Indeed %03d";
    farm(
        "names nearly right",
        "did you mean 'Long Paddock With A Very",
        Map.of(
            "paddocks.csv",
            "paddock,area_ha\n" + repeated(999, i -> name.formatted(i) + ",1\n"),
            "plants.csv",
            PLANTS
                + repeated(
                    9990, i -> name.formatted(i % 999).replace("ng", "gn") + ",Yarloop,1\n")));
  }

  private void paddocks(String name, String says, String rows) throws IOException {
    farm(name, says, Map.of("paddocks.csv", "paddock,area_ha\n" + rows));
  }

  private void plants(String name, String says, String rows) throws IOException {
    farm(name, says, Map.of("plants.csv", PLANTS + rows));
  }

  private void yaml() throws IOException {
    String keys = "must not have more than 1000 keys";
    String items = "must not have more than 100 items";
    String longer = "must not be longer than 2000 characters";
    yaml("nested lists", "must not have lists in lists", "a: " + "[".repeat(400_000));
    yaml("nested keys", "must not have lists in lists", "a: " + "{a: ".repeat(200_000));
    yaml("aliases", items, "a: &a [x, x]\nb: [" + "*a,".repeat(200_000) + "]\n");
    yaml("anchors", "must be written out", repeated(50_000, i -> "k" + i + ": &a" + i + " 1\n"));
    yaml("keys", keys, YAML + repeated(100_000, i -> "k" + i + ": 1\n"));
    yaml("keys alike", "must be given once", "a: 1\n".repeat(200_000));
    yaml("digits of a value", longer, YAML + "price_date: " + "9".repeat(900_000));
    yaml("long farm name", "name: must not be longer than 200", YAML.replace("A", "x".repeat(201)));
    yaml(
        "long key",
        longer,
        "? " + "k".repeat(400_000) + "\n: {" + repeated(50_000, i -> "a" + i + ": 1,") + "}\n");
    yaml("mobs", items, YAML + "mobs:\n" + repeated(50_000, i -> "- name: m" + i + "\n"));
    yaml(
        "unknown keys of mobs",
        "must be one of the known keys",
        YAML + "mobs:\n" + ("- {" + repeated(990, i -> "k" + i + ": 1, ") + "b: 1}\n").repeat(90));
    yaml("costs", keys, YAML + "costs:\n crop-1:\n" + repeated(60_000, i -> "  l" + i + ": 1\n"));
  }

  private void yaml(String name, String says, String text) throws IOException {
    farm(name, says, Map.of("farm.yaml", text));
  }

  private void scenarios() throws IOException {
    String change = ": {prices: {net_value_per_lamb: 1}}\n";
    scenario("many", "must not be more than 20", repeated(21, i -> "  s" + i + change));
    scenario("far too many", "more than 1000 keys", repeated(20_000, i -> "  s" + i + change));
    scenario("alike", "must be given once", ("  s" + change).repeat(20_000));
    scenario(
        "paddocks",
        "must not have more than 1000 keys",
        "  s:\n    paddocks:\n" + repeated(35_000, i -> "      p" + i + ": {area_ha: 1}\n"));
    scenario(
        "columns",
        "must not have more than 1000 keys",
        "  s:\n    paddocks:\n      Hill: {" + repeated(80_000, i -> "c" + i + ": 1, ") + "}\n");
    scenario(
        "stock",
        "must not have more than 100 items",
        "  s:\n    other_stock:\n" + repeated(30_000, i -> "    - {name: m" + i + ", head: 1}\n"));
  }

  private void scenario(String name, String says, String text) throws IOException {
    Path file = folder.resolve("scenario " + name + ".yaml");
    Files.writeString(file, "scenarios:\n" + text);
    reading("scenario " + name, says, "--scenario", file);
  }

  /** The same command about the sound farm with one more file to read. */
  private void reading(String name, String says, String option, Path file) {
    String farm = folder.resolve("sound").toString();
    cases.add(new Case(name, says, List.of("check", farm, option, file.toString())));
  }

  private void ownTables() throws IOException, InterruptedException {
    String heading = Files.readAllLines(Path.of("tables/feed-parameters.csv")).get(0) + "\n";
    Files.createSymbolicLink(own("device", "must be a file"), Path.of("/dev/zero"));
    Path pipe = own("pipe", "must be a file");
    new ProcessBuilder("mkfifo", pipe.toString()).inheritIO().start().waitFor();
    try (RandomAccessFile sparse =
        new RandomAccessFile(own("huge file", "must not be larger than 1 MB").toFile(), "rw")) {
      sparse.setLength(3_000_000_000L);
    }
    own("nothing", "must hold a table of the program, such as cultivars.csv");
    Path other = own("no table", "must hold a table of the program, such as cultivars.csv");
    Files.writeString(other.resolveSibling("notes.txt"), "mine");
    Files.createSymbolicLink(own("link to nothing", "must be a file"), Path.of("/nowhere"));
    Files.createDirectory(own("folder for a file", "must be a file"));
    Files.writeString(
        own("rows of a table", "must not have more than 10000 rows"),
        heading + "x,x,x,x,x,x,x,x,x,x\n".repeat(45_000));
    Files.writeString(
        own("faults of a table", "500 faults"), heading + "x,x,x,x,x,x,x,x,x,x\n".repeat(9_000));
    Files.writeString(
        own("headings of a table", "must not have more than 100 columns"),
        "key" + repeated(100_000, i -> ",h" + i));
  }

  /** A table in a folder of its own, which is still to be written. */
  private Path own(String name, String says) throws IOException {
    Path tables = Files.createDirectory(folder.resolve("tables " + name));
    reading("tables " + name, says, "--tables", tables);
    return tables.resolve("feed-parameters.csv");
  }
}
