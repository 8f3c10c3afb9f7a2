package swardcase.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.DynamicTest.dynamicTest;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.lang.management.ManagementFactory;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Date;
import java.util.List;
import java.util.Optional;
import java.util.SplittableRandom;
import java.util.function.Supplier;
import java.util.stream.Stream;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;
import org.junit.jupiter.api.io.TempDir;
import swardcase.Damage;
import swardcase.check.FaultsException;
import swardcase.intake.FarmDocument;
import swardcase.reading.Faults;
import swardcase.reading.Fields;
import swardcase.reading.Table;
import swardcase.tables.Tables;
import swardcase.tables.TablesLoader;

/**
 * Damages every kind of file that a user hands in, at random places: the program reads it or says
 * what is wrong and where, and never breaks.
 */
class MutantsTest {

  private static final Tables TABLES = TablesLoader.standard().load();

  /** In all; {@code -Dswardcase.mutants=10000} for the trial of {@code docs/reliability.md}. */
  private static final int MUTANTS = Integer.getInteger("swardcase.mutants", 500);

  /** Of the processor, for one mutant. */
  private static final long MOST_MILLISECONDS = 1000;

  private static final String DOCUMENT =
      """
      {"farm": {"name": "A", "growth": "Katanning", "price_date": "2026-10-01",
       "mobs": [{"name": "ewes", "ewes": 300, "joining_start": "30 January"}],
       "prices": {"net_value_per_lamb": [60, 105, 170]},
       "actions": {"crop-1": {"considered": false}}, "sow": "Narrikup"},
       "paddocks": [{"paddock": "Hill", "area_ha": 30.5, "clover_percent": 40, "arable": true},
        {"paddock": "Flat", "area_ha": 2e1, "clover_percent": null, "use": "ewes"}],
       "plants": [{"paddock": "Hill", "cultivar": "Geraldton", "plants": 40}]}""";

  @TempDir private Path folder;

  /** What is damaged, and how a sound or damaged one is read. */
  private record Kind(String name, List<Path> files, Damager damager, Supplier<Ran> reader) {}

  /** A way to damage bytes. */
  private interface Damager {
    byte[] apply(byte[] sound, SplittableRandom random) throws IOException;
  }

  private final List<Kind> kinds = new ArrayList<>();

  private void writeSoundFiles() throws IOException {
    for (String demo :
        List.of("mixed-farm", "current-farm", "northern-farm", "risky-farm", "large-farm")) {
      Path farm = Files.createDirectory(folder.resolve(demo));
      List<Path> files =
          copy(Path.of("demo-data", demo), farm, "farm.yaml", "paddocks.csv", "plants.csv");
      kinds.add(new Kind(demo, files, Damage::to, () -> check(farm)));
    }
    Path mixed = Path.of("demo-data/mixed-farm");
    Path book = Files.createDirectory(folder.resolve("book"));
    copy(mixed, book, "farm.yaml");
    List<Path> workbook = List.of(book.resolve("farm.xlsx"));
    write(workbook.get(0));
    kinds.add(new Kind("farm.xlsx, its bytes", workbook, Damage::to, () -> check(book)));
    kinds.add(new Kind("farm.xlsx, a part", workbook, Damage::toPartOf, () -> check(book)));
    List<Path> scenarios = copy(Path.of("demo-data"), folder, "mixed-scenarios.yaml");
    kinds.add(
        new Kind(
            "scenarios",
            scenarios,
            Damage::to,
            () -> check(mixed, "--scenario", scenarios.get(0))));
    Path own = Files.createDirectory(folder.resolve("tables"));
    List<Path> tables =
        copy(Path.of("tables"), own, "cultivars.csv", "action-values.csv", "farm-defaults.csv");
    kinds.add(new Kind("tables", tables, Damage::to, () -> check(mixed, "--tables", own)));
    Path document = Files.writeString(folder.resolve("farm.json"), DOCUMENT);
    kinds.add(new Kind("JSON document", List.of(document), Damage::to, () -> document(document)));
  }

  private static List<Path> copy(Path from, Path to, String... names) throws IOException {
    List<Path> files = new ArrayList<>();
    for (String name : names) {
      files.add(Files.copy(from.resolve(name), to.resolve(name)));
    }
    return files;
  }

  /** The tables of the mixed farm as a spreadsheet would save them, the same bytes every time. */
  private static void write(Path workbook) throws IOException {
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    try (XSSFWorkbook book = new XSSFWorkbook()) {
      for (String name : List.of("paddocks", "plants")) {
        Table table =
            Table.of(
                name,
                Files.readString(Path.of("demo-data/mixed-farm", name + ".csv")),
                new Faults());
        List<Fields> rows = table.rows();
        for (int r = 0; r <= rows.size(); r++) {
          Row row = r == 0 ? book.createSheet(name).createRow(0) : book.getSheet(name).createRow(r);
          for (int c = 0; c < table.columns().size(); c++) {
            String heading = table.columns().get(c);
            String cell = r == 0 ? heading : rows.get(r - 1).findText(heading).orElse("");
            if (cell.matches("[0-9.]+")) {
              row.createCell(c).setCellValue(Double.parseDouble(cell));
            } else if (!cell.isEmpty()) {
              row.createCell(c).setCellValue(cell);
            }
          }
        }
      }
      book.getProperties().getCoreProperties().setCreated(Optional.of(Date.from(Instant.EPOCH)));
      book.write(bytes);
    }
    Files.write(workbook, Damage.archive(Damage.parts(bytes.toByteArray())));
  }

  private static Ran check(Path farm, Object... more) {
    List<Object> arguments = new ArrayList<>(List.of("check", farm, "--date=2026-11-01"));
    arguments.addAll(List.of(more));
    return Ran.command(arguments.toArray());
  }

  private static Ran document(Path file) {
    try {
      String text = new String(Files.readAllBytes(file), StandardCharsets.UTF_8);
      return new Ran(ExitCodes.DONE, FarmDocument.read("line 3", text, TABLES).farm().name(), "");
    } catch (FaultsException faults) {
      StringWriter err = new StringWriter();
      Failures.print(faults, new PrintWriter(err, true));
      return new Ran(ExitCodes.BAD_INPUT, "", err.toString());
    } catch (IOException e) {
      throw new java.io.UncheckedIOException(e);
    }
  }

  @TestFactory
  Stream<DynamicTest> files_damagedAnywhere_areReadOrRefusedInWords() throws IOException {
    writeSoundFiles();
    return kinds.stream().map(kind -> dynamicTest(kind.name(), () -> damage(kind)));
  }

  private void damage(Kind kind) throws IOException {
    assertThat(kind.reader().get().code()).isEqualTo(ExitCodes.DONE);
    SplittableRandom random = new SplittableRandom(20261128 + kinds.indexOf(kind));
    int count = MUTANTS / kinds.size();
    int refused = 0;
    long slowest = 0;
    for (int mutant = 0; mutant < count; mutant++) {
      Path file = kind.files().get(random.nextInt(kind.files().size()));
      byte[] damaged = kind.damager().apply(Files.readAllBytes(file), random);
      long before = ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime();
      Ran ran = with(damaged, file, kind.reader());
      long spent = ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime() - before;
      slowest = Math.max(slowest, spent / 1_000_000);
      String which = "mutant " + mutant + " of " + file + ":\n" + ran.out() + ran.err();
      assertThat(ran.code()).as(which).isIn(ExitCodes.DONE, ExitCodes.BAD_INPUT);
      assertThat(ran.out() + ran.err())
          .as(which)
          .doesNotContain("Exception", "\tat ", "of its own");
      assertThat((ran.out() + ran.err()).replaceAll("\\R", ""))
          .as(which)
          .doesNotContainPattern("\\p{Cntrl}");
      if (ran.code() == ExitCodes.BAD_INPUT) {
        refused++;
        assertThat(ran.err()).as(which).contains("Nothing was written.");
      }
    }
    if (System.getProperty("swardcase.mutants") != null) {
      System.out.printf(
          "%s: %d mutants, %d refused, slowest %d ms%n", kind.name(), count, refused, slowest);
    }
    assertThat(slowest).as("milliseconds").isLessThan(MOST_MILLISECONDS);
    assertThat(refused).isBetween(count / 6, count - 1);
  }

  /** What the program says to a damaged file; no library may say anything behind its back. */
  private static Ran with(byte[] damaged, Path file, Supplier<Ran> reader) throws IOException {
    byte[] sound = Files.readAllBytes(file);
    PrintStream usual = System.err;
    ByteArrayOutputStream stray = new ByteArrayOutputStream();
    System.setErr(new PrintStream(stray, true, StandardCharsets.UTF_8));
    Ran ran;
    try {
      Files.write(file, damaged);
      ran = reader.get();
    } finally {
      System.setErr(usual);
      Files.write(file, sound);
    }
    assertThat(stray.toString(StandardCharsets.UTF_8)).isEmpty();
    return ran;
  }
}
