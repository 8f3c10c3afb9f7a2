package swardcase.sheet;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.documentinterchange.logicalstructure.PDStructureElement;
import org.apache.pdfbox.pdmodel.documentinterchange.logicalstructure.PDStructureNode;
import org.apache.pdfbox.pdmodel.interactive.documentnavigation.outline.PDOutlineItem;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import swardcase.report.Call;
import swardcase.report.Report;
import swardcase.wording.MoneyFaces;
import swardcase.wording.PaddockWords;
import swardcase.wording.PlanWords;

class DecisionSheetTest {

  @ParameterizedTest
  @MethodSource("swardcase.sheet.Sheets#sheets")
  void cautions_ofAnyReport_standInFullAtTheEnd(String name) throws IOException {
    byte[] sheet = Sheets.bytes(name);
    String first = inOneLine(PdfText.ofPage(sheet, 1));
    assertThat(first)
        .contains("Before you act", "see a vet first", "All cautions stand at the end.")
        .doesNotContain(SampleReports.CAUTIONS);
    int pages = PdfText.pages(sheet);
    String last = PdfText.ofPage(sheet, pages - 1) + " " + PdfText.ofPage(sheet, pages);
    assertThat(inOneLine(last)).contains(SampleReports.CAUTIONS);
    assertThat(inOneLine(PdfText.of(Sheets.bytes(Sheets.ofCase(name)))))
        .contains(SampleReports.CAUTIONS);
  }

  @ParameterizedTest
  @MethodSource("swardcase.sheet.Sheets#sheets")
  void firstPage_ofAnyReport_isOnePageOfTenPointsOrMore(String name) throws IOException {
    byte[] sheet = Sheets.bytes(name);
    assertThat(inOneLine(PdfText.ofPage(sheet, 1)))
        .contains(PlanWords.headline(Sheets.report(name)), "What not to do", "Before you act");
    assertThat(PdfText.ofPage(sheet, 2)).contains("How sure this is");
    List<PdfText.Run> first = PdfText.runs(sheet).stream().filter(run -> run.page() == 1).toList();
    assertThat(first.stream().filter(run -> !run.text().isBlank() && run.size() < 10)).isEmpty();
    String answer = PlanWords.headline(Sheets.report(name)).substring(0, 12);
    assertThat(first.stream().filter(run -> run.text().startsWith(answer)))
        .isNotEmpty()
        .allMatch(run -> run.size() >= 12);
  }

  @Test
  void card_ofAPaddockWhoseLeafTestIsContraryToItsNames_saysSo() throws IOException {
    for (String name : List.of("twelve paddocks", Sheets.ofCase("twelve paddocks"))) {
      assertThat(inOneLine(PdfText.of(Sheets.bytes(name))))
          .contains("far above the 0.02 to 0.31 % that the cultivars named here can have");
    }
  }

  @Test
  void table_ofTwelvePaddocks_hasAllWorkWithItsReasonsAndSums() throws IOException {
    String text = inOneLine(PdfText.of(Sheets.bytes(Sheets.ofCase("twelve paddocks"))));
    String sheet = inOneLine(PdfText.of(Sheets.bytes("twelve paddocks")));
    Report report = Sheets.report("twelve paddocks");
    MoneyFaces faces = new MoneyFaces(report);
    PaddockWords words = new PaddockWords(report, faces);
    for (int i = 0; i < report.paddocks().size(); i++) {
      assertThat(text).contains(report.paddocks().get(i).name(), words.fullReason(i));
      assertThat(sheet).contains(report.paddocks().get(i).name(), words.reason(i));
    }
    assertThat(sheet)
        // The name of the row may be broken over lines, between which its number stands.
        .containsPattern("Shared between.{0,30}" + Pattern.quote(faces.number(faces.shared())))
        .contains("The plan " + faces.number(faces.cost()) + " " + faces.number(faces.gain()));
  }

  @Test
  void firstPage_ofFourHundredPaddocks_hasTheSumsOfItsHeadline() throws IOException {
    Report report = Sheets.report("400 paddocks");
    MoneyFaces faces = new MoneyFaces(report);
    String first = inOneLine(PdfText.ofPage(Sheets.bytes("400 paddocks"), 1));
    long act = report.paddocks().stream().filter(each -> each.call() == Call.ACT).count();
    long off = report.paddocks().stream().filter(each -> each.call() == Call.KEEP_OFF).count();
    double cost = 0;
    for (int i = 0; i < 400; i++) {
      cost += faces.cost(i);
    }
    assertThat(act + off).isGreaterThan(200);
    assertThat(first)
        .contains("Resow " + act + " paddocks, keep ewes off " + off)
        .contains("It costs " + faces.money(cost))
        .contains(faces.money(faces.gain()));
    assertThat(inOneLine(PdfText.ofPage(Sheets.bytes("400 paddocks"), 2)))
        .startsWith("Great Plain Pastoral")
        .contains("How sure this is");
  }

  @Test
  void cards_ofFourHundredPaddocks_nameEveryPaddockOfThePlan() throws IOException {
    Report report = Sheets.report("400 paddocks");
    Set<String> onSheet = cards(Sheets.bytes("400 paddocks"));
    Set<String> inCase = cards(Sheets.bytes(Sheets.ofCase("400 paddocks")));
    for (int i = 1; i <= 400; i++) {
      if (report.paddocks().get(i - 1).isInPlan()) {
        assertThat(onSheet).contains(i + "");
      }
      assertThat(inCase).contains(i + "");
    }
  }

  /** Numbers of the paddocks that have the heading of a card. */
  private static Set<String> cards(byte[] pdf) throws IOException {
    return Pattern.compile("\\b(\\d+)\\. Paddock \\1, [\\d.]+ ha:")
        .matcher(inOneLine(PdfText.of(pdf)))
        .results()
        .map(heading -> heading.group(1))
        .collect(Collectors.toSet());
  }

  @Test
  void lettersTheTypeLacks_becomeQuestionMarksWithANote() throws IOException {
    byte[] sheet = Sheets.bytes(Sheets.ofCase("long names"));
    String text = inOneLine(PdfText.of(sheet));
    assertThat(text)
        .contains(
            "Whāngārei", "Λιβάδι", "Луг у старой", "??????", "are printed as a question mark");
    assertThat(text).doesNotContain("\u725b");
    assertThat(inOneLine(PdfText.of(Sheets.bytes("long names"))))
        .contains("??????", "are printed as a question mark");
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
  void figures_ofTheSheetAndTheCase_stateTheirFindingInWords() throws IOException {
    assertThat(String.join("\n", alternatives("twelve paddocks")))
        .contains("lowest at A$ \u221242,100 in 2028 and stands at A$ 108,600 in 2041")
        .contains("Dwalganup or Geraldton 46 % (31 to 61 %); Mount Barker");
    assertThat(String.join("\n", alternatives(Sheets.ofCase("twelve paddocks"))))
        .contains(
            "moves the answer most is winter growth of old cultivars: the net present value is"
                + " A$ 102,000",
            "Most supplement is bought in Apr",
            "lowest at A$ \u221242,100 in 2028 and stands at A$ 108,600 in 2041",
            "The dose is highest in Dec",
            "Dwalganup or Geraldton 46 % (31 to 61 %); Mount Barker");
  }

  private static List<String> alternatives(String name) throws IOException {
    try (PDDocument document = Loader.loadPDF(Sheets.bytes(name))) {
      List<String> alternatives = new ArrayList<>();
      collect(document.getDocumentCatalog().getStructureTreeRoot(), alternatives);
      assertThat(alternatives).isNotEmpty().noneMatch(String::isBlank);
      return alternatives;
    }
  }

  @Test
  void greatSums_inNarrowPlaces_areNeverBrokenOrCut() throws IOException {
    assertThat(PdfText.ofPage(Sheets.bytes("great sums"), 1)).contains("A$ 539,000,000");
    String budget = PdfText.of(Sheets.bytes(Sheets.ofCase("great sums")));
    assertThat(budget).contains("213,000,000", "\u2212233,000,000", "1,086,000,000");
    assertThat(budget).contains("\u2212180,000,000");
  }

  @Test
  void reading_fromTopToBottom_followsThePages() throws IOException {
    inOrder(
        "twelve paddocks",
        "Clover decision sheet: Karradale",
        "Resow 4 paddocks, keep ewes off 4, keep 1, 3 too close to call.",
        "First, for no money",
        "Then, for money",
        "It gains on average",
        "Find out first",
        "What not to do",
        "Before you act",
        "How sure this is",
        "Money by year",
        "The paddocks",
        "What the plan changes",
        "What stays as it is",
        "Do not take feed away from late-pregnant ewes in order",
        "Words used");
    inOrder(
        Sheets.ofCase("twelve paddocks"),
        "Budget case: Karradale",
        "Prepared by: A. Nobody",
        "Cash flow with and without the plan",
        "Gain at other prices",
        "The costs item by item",
        "What the plan changes",
        "How sure this is",
        "What moves the answer most",
        "The feed budget by month",
        "Ewes and oestrogen",
        "Mob by mob",
        "The paddocks",
        "What the answer rests on",
        "Do not take feed away from late-pregnant ewes in order",
        "Words used");
  }

  private static void inOrder(String name, String... order) throws IOException {
    String text = inOneLine(PdfText.of(Sheets.bytes(name)));
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
