package swardcase.sheet;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TimeZone;
import java.util.stream.Stream;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.documentinterchange.logicalstructure.PDStructureElement;
import org.apache.pdfbox.pdmodel.documentinterchange.logicalstructure.PDStructureNode;
import org.apache.pdfbox.pdmodel.interactive.documentnavigation.outline.PDOutlineItem;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.verapdf.gf.foundry.VeraGreenfieldFoundryProvider;
import org.verapdf.pdfa.Foundries;
import org.verapdf.pdfa.PDFAParser;
import org.verapdf.pdfa.flavours.PDFAFlavour;
import org.verapdf.pdfa.results.ValidationResult;
import swardcase.report.PaddockResult;
import swardcase.report.Report;

class DecisionSheetTest {

  private static final Map<String, Report> REPORTS = new LinkedHashMap<>();
  private static final Map<String, byte[]> SHEETS = new LinkedHashMap<>();

  /** Writes the sheets, a copy of each into {@code target/sheets} to look at. */
  @BeforeAll
  static void writeSheets() throws IOException {
    VeraGreenfieldFoundryProvider.initialise();
    Path folder = Files.createDirectories(Path.of("target/sheets"));
    REPORTS.put("twelve paddocks", SampleReports.twelvePaddocks());
    REPORTS.put("one paddock", SampleReports.onePaddock());
    REPORTS.put("long names", SampleReports.longNames());
    REPORTS.put("40 paddocks", SampleReports.fortyPaddocks());
    REPORTS.put("400 paddocks", SampleReports.fourHundredPaddocks());
    REPORTS.put("empty", SampleReports.empty());
    for (Map.Entry<String, Report> report : REPORTS.entrySet()) {
      byte[] sheet = bytes(report.getValue());
      SHEETS.put(report.getKey(), sheet);
      Files.write(folder.resolve(report.getKey().replace(' ', '-') + ".pdf"), sheet);
    }
  }

  static Stream<String> names() {
    return REPORTS.keySet().stream();
  }

  /** The largest sheet is left out: it takes half a minute and draws nothing the others do not. */
  static Stream<String> namesToValidate() {
    return names().filter(name -> !name.equals("400 paddocks"));
  }

  private static byte[] bytes(Report report) throws IOException {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    DecisionSheet.write(report, out);
    return out.toByteArray();
  }

  @ParameterizedTest
  @MethodSource("namesToValidate")
  void sheet_ofAnyReport_keepsToBothStandards(String name) throws Exception {
    for (String standard : List.of("ua1", "2a")) {
      PDFAFlavour flavour = PDFAFlavour.fromString(standard);
      try (PDFAParser parser =
          Foundries.defaultInstance()
              .createParser(new ByteArrayInputStream(SHEETS.get(name)), flavour)) {
        ValidationResult result =
            Foundries.defaultInstance().createValidator(flavour, false).validate(parser);
        assertThat(
                result.getTestAssertions().stream()
                    .map(fault -> fault.getRuleId() + " " + fault.getMessage())
                    .distinct()
                    .limit(5))
            .as("%s, %s", name, standard)
            .isEmpty();
        assertThat(result.isCompliant()).as("%s, %s", name, standard).isTrue();
      }
    }
  }

  @ParameterizedTest
  @MethodSource("names")
  void sheet_writtenTwice_hasTheSameBytes(String name) throws IOException {
    Locale locale = Locale.getDefault();
    TimeZone zone = TimeZone.getDefault();
    try {
      Locale.setDefault(Locale.forLanguageTag("ar-EG"));
      TimeZone.setDefault(TimeZone.getTimeZone("Pacific/Auckland"));
      assertThat(bytes(REPORTS.get(name))).isEqualTo(SHEETS.get(name));
    } finally {
      Locale.setDefault(locale);
      TimeZone.setDefault(zone);
    }
  }

  @ParameterizedTest
  @MethodSource("names")
  void text_onAnyPage_staysWithinTheMargins(String name) throws IOException {
    List<PdfText.Run> runs = PdfText.runs(SHEETS.get(name));
    assertThat(runs).isNotEmpty();
    assertThat(
            runs.stream()
                .filter(
                    run ->
                        run.left() < Flow.LEFT - 0.1
                            || run.right() > Flow.RIGHT + 0.1
                            || run.baseline() < 20
                            || run.baseline() > Canvas.HEIGHT - 20))
        .isEmpty();
  }

  @ParameterizedTest
  @MethodSource("names")
  void text_onAnyPage_neverOverlaps(String name) throws IOException {
    Map<Integer, List<PdfText.Run>> byPage = new LinkedHashMap<>();
    for (PdfText.Run run : PdfText.runs(SHEETS.get(name))) {
      if (!run.text().isBlank()) {
        byPage.computeIfAbsent(run.page(), page -> new ArrayList<>()).add(run);
      }
    }
    assertThat(byPage).isNotEmpty();
    List<String> overlaps = new ArrayList<>();
    byPage
        .values()
        .forEach(
            runs -> {
              for (int i = 0; i < runs.size(); i++) {
                for (int j = i + 1; j < runs.size(); j++) {
                  PdfText.Run one = runs.get(i);
                  PdfText.Run other = runs.get(j);
                  boolean apart =
                      one.right() <= other.left() + 0.1
                          || other.right() <= one.left() + 0.1
                          || one.baseline() <= other.baseline() - 0.72 * other.size()
                          || other.baseline() <= one.baseline() - 0.72 * one.size();
                  if (!apart) {
                    overlaps.add(one + " and " + other);
                  }
                }
              }
            });
    assertThat(overlaps).isEmpty();
  }

  @ParameterizedTest
  @MethodSource("names")
  void sheet_ofAnyReport_isSmallAndNumbersItsPages(String name) throws IOException {
    byte[] sheet = SHEETS.get(name);
    assertThat(sheet.length).isLessThan(10_000_000);
    int pages = PdfText.pages(sheet);
    assertThat(PdfText.ofPage(sheet, 1)).contains("page 1 of " + pages);
    assertThat(PdfText.ofPage(sheet, pages)).contains("page " + pages + " of " + pages);
  }

  @ParameterizedTest
  @MethodSource("names")
  void cautions_ofAnyReport_standInFullOnTheLastPage(String name) throws IOException {
    byte[] sheet = SHEETS.get(name);
    int pages = PdfText.pages(sheet);
    String last = inOneLine(PdfText.ofPage(sheet, pages));
    assertThat(last).contains(SampleReports.CAUTIONS);
    assertThat(inOneLine(PdfText.ofPage(sheet, 1)))
        .contains("Before you act", "see a vet first", "All cautions: page " + pages);
  }

  @ParameterizedTest
  @MethodSource("names")
  void firstPage_ofAnyReport_holdsTheDecisionAlone(String name) throws IOException {
    byte[] sheet = SHEETS.get(name);
    assertThat(inOneLine(PdfText.ofPage(sheet, 1)))
        .contains(REPORTS.get(name).plan().headline(), "Before you act");
    assertThat(PdfText.ofPage(sheet, 2)).contains("How sure this is");
  }

  @Test
  void firstPage_ofTwelvePaddocks_namesThemAllWithTheirReasons() throws IOException {
    String first = inOneLine(PdfText.ofPage(SHEETS.get("twelve paddocks"), 1));
    for (PaddockResult paddock : REPORTS.get("twelve paddocks").paddocks()) {
      assertThat(first).contains(paddock.name(), paddock.reason());
    }
  }

  @Test
  void firstPage_ofFourHundredPaddocks_showsWorkFirstAndCountsTheRest() throws IOException {
    Report report = REPORTS.get("400 paddocks");
    String first = inOneLine(PdfText.ofPage(SHEETS.get("400 paddocks"), 1));
    long shown =
        report.paddocks().stream()
            .map(paddock -> " " + paddock.name() + " ")
            .filter(first::contains)
            .count();
    assertThat(shown).isGreaterThan(5);
    assertThat(first).contains("Not shown here: " + (400 - shown) + " more");
    assertThat(first).doesNotContain("Keep as it is");
  }

  @Test
  void cards_ofFourHundredPaddocks_nameEveryPaddockWithArea() throws IOException {
    String text = inOneLine(PdfText.of(SHEETS.get("400 paddocks")));
    for (int i = 1; i <= 400; i++) {
      assertThat(text).containsPattern("\\b" + i + " +Paddock " + i + ", [\\d.]+ ha:");
    }
  }

  @Test
  void lettersTheTypeLacks_becomeQuestionMarksWithANote() throws IOException {
    byte[] sheet = SHEETS.get("long names");
    String text = inOneLine(PdfText.of(sheet));
    assertThat(text)
        .contains(
            "Whāngārei", "Λιβάδι", "Луг у старой", "??????", "are printed as a question mark");
    assertThat(text).doesNotContain("\u725b");
    try (PDDocument document = Loader.loadPDF(sheet)) {
      List<String> bookmarks = new ArrayList<>();
      for (PDOutlineItem top : document.getDocumentCatalog().getDocumentOutline().children()) {
        top.children().forEach(item -> bookmarks.add(item.getTitle()));
      }
      assertThat(bookmarks)
          .hasSize(REPORTS.get("long names").paddocks().size())
          .anyMatch(title -> title.contains("\u725b\u4e73"));
    }
    assertThat(inOneLine(PdfText.of(SHEETS.get("twelve paddocks"))))
        .doesNotContain("question mark", "?");
  }

  @Test
  void figures_ofTheSheet_stateTheirFindingInWords() throws IOException {
    try (PDDocument document = Loader.loadPDF(SHEETS.get("twelve paddocks"))) {
      List<String> alternatives = new ArrayList<>();
      collect(document.getDocumentCatalog().getStructureTreeRoot(), alternatives);
      assertThat(alternatives).hasSize(5 + 12).noneMatch(String::isBlank);
      assertThat(String.join("\n", alternatives))
          .contains(
              "moves the answer most is winter growth of old cultivars: the net present value is"
                  + " A$ 100,000",
              "Most supplement is bought in Apr",
              "lowest at A$ \u221242,100 in 2028 and stands at A$ 108,600 in 2041",
              "The dose is highest in Dec",
              "Dwalganup or Geraldton 46 % (31 to 61 %); Mount Barker");
    }
  }

  private static void collect(PDStructureNode node, List<String> alternatives) {
    for (Object kid : node.getKids()) {
      if (kid instanceof PDStructureElement element) {
        if (element.getStructureType().equals("Figure")) {
          alternatives.add(element.getAlternateDescription());
        }
        collect(element, alternatives);
      }
    }
  }

  @Test
  void reading_fromTopToBottom_followsThePages() throws IOException {
    String text = inOneLine(PdfText.of(SHEETS.get("twelve paddocks")));
    List<String> order =
        List.of(
            "Clover decision sheet: Karradale",
            "Resow 4 of 12",
            "Winter feed lost to outdated clover",
            "Why, in a sentence",
            "Before you act",
            "How sure this is",
            "What moves the answer most",
            "The feed budget by month",
            "The years",
            "Ewes and oestrogen",
            "Mob by mob",
            "The paddocks",
            "What the answer rests on",
            "Words used",
            "Do not take feed away from late-pregnant ewes in order");
    int at = -1;
    for (String words : order) {
      int next = text.indexOf(words, at + 1);
      assertThat(next).as(words).isGreaterThan(at);
      at = next;
    }
  }

  private static String inOneLine(String text) {
    return text.replaceAll("\\s+", " ");
  }
}
