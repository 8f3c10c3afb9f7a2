package swardcase.sheet;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.documentinterchange.logicalstructure.PDStructureElement;
import org.apache.pdfbox.pdmodel.documentinterchange.logicalstructure.PDStructureNode;
import org.apache.pdfbox.pdmodel.interactive.documentnavigation.outline.PDOutlineItem;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import swardcase.report.Report;
import swardcase.wording.MoneyFaces;
import swardcase.wording.PaddockWords;
import swardcase.wording.PlanWords;

class DecisionSheetTest {

  @ParameterizedTest
  @MethodSource("swardcase.sheet.Sheets#names")
  void cautions_ofAnyReport_standInFullOnTheLastPage(String name) throws IOException {
    byte[] sheet = Sheets.bytes(name);
    int pages = PdfText.pages(sheet);
    String last = inOneLine(PdfText.ofPage(sheet, pages));
    assertThat(last).contains(SampleReports.CAUTIONS);
    assertThat(inOneLine(PdfText.ofPage(sheet, 1)))
        .contains("Before you act", "see a vet first", "All cautions: page " + pages);
  }

  @ParameterizedTest
  @MethodSource("swardcase.sheet.Sheets#names")
  void firstPage_ofAnyReport_holdsTheDecisionAlone(String name) throws IOException {
    byte[] sheet = Sheets.bytes(name);
    assertThat(inOneLine(PdfText.ofPage(sheet, 1)))
        .contains(PlanWords.headline(Sheets.report(name)), "Before you act");
    assertThat(PdfText.ofPage(sheet, 2)).contains("How sure this is");
  }

  @Test
  void card_ofAPaddockWhoseLeafTestIsContraryToItsNames_saysSo() throws IOException {
    byte[] sheet = Sheets.bytes("twelve paddocks");
    StringBuilder all = new StringBuilder();
    for (int page = 1; page <= PdfText.pages(sheet); page++) {
      all.append(inOneLine(PdfText.ofPage(sheet, page))).append(' ');
    }
    assertThat(all.toString().replaceAll("\\s+", " "))
        .contains("far above the 0.02 to 0.31 % that the cultivars named here can have");
  }

  @Test
  void firstPage_ofTwelvePaddocks_hasAllWorkWithItsReasonsAndSums() throws IOException {
    String first = inOneLine(PdfText.ofPage(Sheets.bytes("twelve paddocks"), 1));
    Report report = Sheets.report("twelve paddocks");
    MoneyFaces faces = new MoneyFaces(report);
    PaddockWords words = new PaddockWords(report, faces);
    for (int i = 0; i < report.paddocks().size(); i++) {
      if (report.paddocks().get(i).isInPlan()) {
        assertThat(first).contains(report.paddocks().get(i).name(), words.reason(i));
      }
    }
    assertThat(first)
        // The name of the row may be broken over lines, between which its number stands.
        .containsPattern("Shared between.{0,30}" + Pattern.quote(faces.number(faces.shared())))
        .contains(
            "The plan " + faces.number(faces.cost()) + " " + faces.number(faces.gain()),
            "Not shown here: 4 more, with no work to start");
  }

  @Test
  void firstPage_ofFourHundredPaddocks_showsWorkFirstAndCountsTheRest() throws IOException {
    Report report = Sheets.report("400 paddocks");
    String first = inOneLine(PdfText.ofPage(Sheets.bytes("400 paddocks"), 1));
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
    String text = inOneLine(PdfText.of(Sheets.bytes("400 paddocks")));
    for (int i = 1; i <= 400; i++) {
      assertThat(text).containsPattern("\\b" + i + "\\. Paddock " + i + ", [\\d.]+ ha:");
    }
  }

  @Test
  void lettersTheTypeLacks_becomeQuestionMarksWithANote() throws IOException {
    byte[] sheet = Sheets.bytes("long names");
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
          .hasSize(Sheets.report("long names").paddocks().size())
          .anyMatch(title -> title.contains("\u725b\u4e73"));
    }
    assertThat(inOneLine(PdfText.of(Sheets.bytes("twelve paddocks"))))
        .doesNotContain("question mark", "?");
  }

  @Test
  void figures_ofTheSheet_stateTheirFindingInWords() throws IOException {
    try (PDDocument document = Loader.loadPDF(Sheets.bytes("twelve paddocks"))) {
      List<String> alternatives = new ArrayList<>();
      collect(document.getDocumentCatalog().getStructureTreeRoot(), alternatives);
      assertThat(alternatives).hasSize(5 + 12).noneMatch(String::isBlank);
      assertThat(String.join("\n", alternatives))
          .contains(
              "moves the answer most is winter growth of old cultivars: the net present value is"
                  + " A$ 102,000",
              "Most supplement is bought in Apr",
              "lowest at A$ \u221242,100 in 2028 and stands at A$ 108,600 in 2041",
              "The dose is highest in Dec",
              "Dwalganup or Geraldton 46 % (31 to 61 %); Mount Barker");
    }
  }

  @Test
  void greatSums_inNarrowPlaces_areNeverBrokenOrCut() throws IOException {
    byte[] sheet = Sheets.bytes("great sums");
    assertThat(PdfText.ofPage(sheet, 1))
        .contains("A$ 539,000,000", "\u2212180,000,000", "84.5 ha are sown");
    assertThat(PdfText.ofPage(sheet, 5))
        .contains("213,000,000", "\u2212233,000,000", "1,086,000,000");
  }

  @Test
  void reading_fromTopToBottom_followsThePages() throws IOException {
    String text = inOneLine(PdfText.of(Sheets.bytes("twelve paddocks")));
    List<String> order =
        List.of(
            "Clover decision sheet: Karradale",
            "Resow 4 paddocks, keep ewes off 4, keep 1, 3 too close to call.",
            "Winter feed short: outdated, thin clover",
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

  private static String inOneLine(String text) {
    return text.replaceAll("\\s+", " ");
  }
}
