package swardcase.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Collections;
import java.util.List;
import java.util.zip.ZipEntry;
import java.util.zip.ZipFile;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class DecideCommandTest {

  private static final String HIDDEN =
      "[\\u0080-\\u009F\\u200B-\\u200F\\u202A-\\u202E\\u2060-\\u206F\\uFEFF]";

  private static final String DAY = "--date=2026-03-01";

  /** So few that it is quick: what is written is the same but for its numbers. */
  private static final String FEW = "--draws=100";

  @TempDir private Path folder;

  private Path farm;
  private Path out;

  @BeforeEach
  void writeFarm() throws IOException {
    farm = SmallFarm.write(folder.resolve("farm"));
    out = Files.createDirectory(folder.resolve("out"));
  }

  @Test
  void decide_withoutFileOptions_printsAndWritesNothing() {
    List<String> before = Ran.below(folder);

    Ran ran = Ran.command("decide", farm, DAY, FEW);

    assertThat(ran.code()).isZero();
    assertThat(ran.err()).isEmpty();
    assertThat(ran.out())
        .startsWith("Small Farm, 2026-03-01")
        .contains("Hill")
        .contains("call a vet")
        .doesNotContain("Written:");
    assertThat(Ran.below(folder)).isEqualTo(before);
  }

  @Test
  void decide_withAllFileOptions_writesWholeFilesAndNamesThem() throws IOException {
    Path pdf = out.resolve("new/sheet.pdf");
    Path json = out.resolve("result.json");
    Path csv = out.resolve("tables");

    Ran ran = Ran.command("decide", farm, DAY, FEW, "--pdf", pdf, "--json", json, "--csv", csv);

    assertThat(ran.code()).isZero();
    assertThat(ran.out()).contains("Written: " + pdf, "Written: " + json, "Written: " + csv);
    assertThat(Ran.below(out))
        .containsExactly(
            "new",
            "new/sheet.pdf",
            "result.json",
            "tables",
            "tables/assumptions.csv",
            "tables/credit.csv",
            "tables/feed.csv",
            "tables/old-share.csv",
            "tables/options.csv",
            "tables/paddocks.csv",
            "tables/plan.csv",
            "tables/stories.csv",
            "tables/years.csv");
    JsonNode document = new ObjectMapper().readTree(json.toFile());
    assertThat(document.at("/farm/date").asText()).isEqualTo("2026-03-01");
    assertThat(document.at("/paddocks")).hasSize(2);
    assertThat(Files.readAllLines(csv.resolve("paddocks.csv"))).hasSize(3);
    assertThat(text(pdf)).contains("Small Farm").contains("Hill");
  }

  @Test
  void decide_sameInputsTwice_givesTheSameBytes() throws IOException {
    for (String run : List.of("first", "second")) {
      Path to = out.resolve(run);
      Ran.command(
          "decide",
          farm,
          DAY,
          FEW,
          "--pdf",
          to.resolve("s.pdf"),
          "--json",
          to.resolve("r.json"),
          "--csv",
          to.resolve("csv"));
    }

    List<String> files = Ran.below(out.resolve("first"));
    assertThat(files).hasSize(12).isEqualTo(Ran.below(out.resolve("second")));
    for (String file : files) {
      Path first = out.resolve("first").resolve(file);
      if (Files.isRegularFile(first)) {
        assertThat(out.resolve("second").resolve(file)).hasSameBinaryContentAs(first);
      }
    }
  }

  @Test
  void decide_folderWithFaults_writesNothing() {
    Path pdf = out.resolve("s.pdf");

    Ran ran = Ran.command("decide", "src/test/resources/farms/faulty", "--pdf", pdf);

    assertThat(ran.code()).isEqualTo(ExitCodes.BAD_INPUT);
    assertThat(ran.out()).isEmpty();
    assertThat(ran.err()).endsWith("19 faults. Nothing was written." + System.lineSeparator());
    assertThat(Ran.below(out)).isEmpty();
  }

  @ParameterizedTest
  @ValueSource(strings = {"--pdf", "--json", "--csv"})
  void decide_fileWhereAFolderShouldBe_leavesEverythingAsItWas(String option) throws IOException {
    Path file = Files.writeString(out.resolve("notes.txt"), "mine");
    Path old = Files.writeString(out.resolve("old.json"), "old");
    Path target = file.resolve("result");

    Ran ran =
        option.equals("--json")
            ? Ran.command("decide", farm, DAY, FEW, "--pdf", out.resolve("s.pdf"), option, target)
            : Ran.command("decide", farm, DAY, FEW, "--json", old, option, target);

    assertThat(ran.code()).isEqualTo(ExitCodes.BAD_INPUT);
    assertThat(ran.out()).isEmpty();
    assertThat(ran.err())
        .startsWith("Cannot write " + target)
        .contains(
            "a file stands where its folder should be. What stood there before still stands.");
    assertThat(Ran.below(out)).containsExactly("notes.txt", "old.json");
    assertThat(file).hasContent("mine");
    assertThat(old).hasContent("old");
  }

  @Test
  void decide_folderWhereAFileShouldBe_isRefused() throws IOException {
    Path place = Files.createDirectory(out.resolve("sheet.pdf"));

    for (Path target : List.of(place, Path.of("/"))) {
      Ran ran = Ran.command("decide", farm, DAY, FEW, "--pdf", target);

      assertThat(ran.code()).isEqualTo(ExitCodes.BAD_INPUT);
      assertThat(ran.err())
          .startsWith("Cannot write " + target + ": a folder stands there.")
          .doesNotContain("Exception");
    }
    assertThat(place).isEmptyDirectory();
  }

  @Test
  void decide_resultsIntoTheFarmFolder_doNotReplaceWhatWasRead() throws IOException {
    String paddocks = Files.readString(farm.resolve("paddocks.csv"));
    String yaml = Files.readString(farm.resolve("farm.yaml"));

    Ran csv = Ran.command("decide", farm, DAY, FEW, "--csv", farm);
    Ran json = Ran.command("decide", farm, DAY, FEW, "--json", farm.resolve("../farm/farm.yaml"));

    for (Ran ran : List.of(csv, json)) {
      assertThat(ran.code()).isEqualTo(ExitCodes.BAD_INPUT);
      assertThat(ran.err()).contains("it is one of the files that were read");
    }
    assertThat(farm.resolve("paddocks.csv")).hasContent(paddocks);
    assertThat(farm.resolve("farm.yaml")).hasContent(yaml);
    assertThat(Ran.below(farm)).containsExactly("farm.yaml", "paddocks.csv", "plants.csv");
  }

  @Test
  void decide_twoResultsIntoOneFile_isRefused() {
    Path one = out.resolve("result");

    Ran ran = Ran.command("decide", farm, DAY, FEW, "--pdf", one, "--json", one);

    assertThat(ran.code()).isEqualTo(ExitCodes.BAD_INPUT);
    assertThat(ran.err()).contains("two results would go into this one file");
    assertThat(Ran.below(out)).isEmpty();
  }

  @Test
  void decide_hostileNames_areHarmlessInEveryOutput() throws IOException {
    SmallFarm.write(
        farm, "\"\\e[31mBold\\a <b>&amp; @|red x|@ %s\"", "\"=cmd|'/C calc'!A0\u001b[2J\"");
    Path pdf = out.resolve("s.pdf");
    Path json = out.resolve("r.json");

    Ran ran = Ran.command("decide", farm, DAY, FEW, "--pdf", pdf, "--json", json, "--csv", out);

    assertThat(ran.code()).isZero();
    assertThat(ran.out()).contains("<b>&amp; @|red x|@ %s").contains("=cmd|'/C calc'!A0");
    assertThat(ran.out().replaceAll("\\R", "")).doesNotContainPattern("\\p{Cntrl}");
    JsonNode document = new ObjectMapper().readTree(json.toFile());
    assertThat(document.at("/farm/name").asText()).contains("<b>&amp; @|red x|@ %s");
    assertThat(Files.readString(json).replaceAll("\\R", "")).doesNotContainPattern("\\p{Cntrl}");
    for (String table : List.of("paddocks.csv", "plan.csv", "options.csv", "assumptions.csv")) {
      assertThat(Files.readAllLines(out.resolve(table)))
          .noneMatch(line -> line.matches("(.*,)?\"?=.*"));
    }
    assertThat(Files.readAllLines(out.resolve("paddocks.csv")).get(2)).startsWith("'=cmd|");
    assertThat(text(pdf)).contains("<b>&amp;").contains("=cmd|");
    String bytes = Files.readString(pdf, StandardCharsets.ISO_8859_1);
    assertThat(bytes).doesNotContain("/JavaScript").doesNotContain("/Launch");
  }

  @Test
  void decide_namesWithHiddenOrTurnedText_areAsTheyLookInEveryOutput() throws IOException {
    SmallFarm.write(farm, "\"\\u202EFa\\u200Brm\\u2069 \\uFEFFone\"", "Fl\u2067a\u200Dt\u009B2J");
    Path pdf = out.resolve("s.pdf");
    Path xlsx = out.resolve("b.xlsx");
    Path json = out.resolve("r.json");

    Ran ran =
        Ran.command(
            "decide", farm, DAY, FEW, "--pdf", pdf, "--json", json, "--csv", out, "--xlsx", xlsx);

    assertThat(ran.err()).isEmpty();
    assertThat(ran.out()).contains("Farm one").contains("Flat 2J");
    assertThat(ran.out()).doesNotContainPattern(HIDDEN);
    JsonNode document = new ObjectMapper().readTree(json.toFile());
    assertThat(document.at("/farm/name").asText()).isEqualTo("Farm one");
    assertThat(Files.readString(json)).doesNotContainPattern(HIDDEN);
    assertThat(Files.readString(out.resolve("paddocks.csv")))
        .contains("\nFlat 2J,")
        .doesNotContainPattern(HIDDEN);
    assertThat(text(pdf)).contains("Farm one", "Flat 2J").doesNotContainPattern(HIDDEN);
    assertThat(Files.readString(pdf, StandardCharsets.ISO_8859_1)).contains("Farm one</rdf:li>");
    assertThat(sheets(xlsx)).contains("Farm one", "Flat 2J").doesNotContainPattern(HIDDEN);
  }

  /** The text of all parts of a workbook. */
  private static String sheets(Path xlsx) throws IOException {
    StringBuilder text = new StringBuilder();
    try (ZipFile parts = new ZipFile(xlsx.toFile())) {
      for (ZipEntry part : Collections.list(parts.entries())) {
        text.append(new String(parts.getInputStream(part).readAllBytes(), StandardCharsets.UTF_8));
      }
    }
    return text.toString();
  }

  @Test
  void decide_anotherCurrencySign_isPrintedAndConvertsNothing() throws IOException {
    Path own = out.resolve("own.json");
    Path other = out.resolve("other.json");

    Ran.command("decide", farm, DAY, FEW, "--json", own);
    Ran ran = Ran.command("decide", farm, DAY, FEW, "--json", other, "--currency", "NZ$");

    ObjectMapper mapper = new ObjectMapper();
    assertThat(ran.out()).contains("NZ$ ");
    assertThat(mapper.readTree(other.toFile()).at("/farm/currency").asText()).isEqualTo("NZ$");
    assertThat(mapper.readTree(other.toFile()).at("/winterFeed/supplementCost"))
        .isEqualTo(mapper.readTree(own.toFile()).at("/winterFeed/supplementCost"));
  }

  @ParameterizedTest
  @ValueSource(strings = {"\u001b[31m$", "\u202E$", "", "thirteensigns"})
  void decide_currencySignThatIsNone_isRefused(String sign) {
    Ran ran = Ran.command("decide", farm, DAY, FEW, "--currency", sign);

    assertThat(ran.code()).isEqualTo(ExitCodes.BAD_INPUT);
    assertThat(ran.err()).startsWith("--currency must be 1 to 12 plain signs");
  }

  @ParameterizedTest
  @ValueSource(strings = {"1899-12-31", "3000-01-01", "+999999999-12-31", "2026-02-30", "tomorrow"})
  void decide_dateThatIsNone_isRefused(String date) {
    Ran ran = Ran.command("decide", farm, "--date=" + date);

    assertThat(ran.code()).isEqualTo(ExitCodes.BAD_INPUT);
    assertThat(ran.err())
        .startsWith(
            "Invalid value for option '--date': '"
                + date
                + "' must be a date such as 2026-11-25, from 1900 to 2999");
  }

  private static String text(Path pdf) throws IOException {
    try (PDDocument document = Loader.loadPDF(pdf.toFile())) {
      return new PDFTextStripper().getText(document);
    }
  }
}
