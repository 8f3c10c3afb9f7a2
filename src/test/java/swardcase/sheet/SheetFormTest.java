package swardcase.sheet;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TimeZone;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import swardcase.paper.Canvas;
import swardcase.paper.Flow;

/** The form of the sheet, whatever it says: standards, bytes, margins. */
class SheetFormTest {

  /** The largest sheet is left out: it takes half a minute and draws nothing the others do not. */
  static Stream<String> namesToValidate() {
    return Sheets.names().filter(name -> !name.startsWith("400 paddocks"));
  }

  @ParameterizedTest
  @MethodSource("namesToValidate")
  void sheet_ofAnyReport_keepsToBothStandards(String name) throws Exception {
    Standards.assertKept(name, Sheets.bytes(name));
  }

  @ParameterizedTest
  @MethodSource("swardcase.sheet.Sheets#names")
  void sheet_writtenTwice_hasTheSameBytes(String name) throws IOException {
    Locale locale = Locale.getDefault();
    TimeZone zone = TimeZone.getDefault();
    try {
      Locale.setDefault(Locale.forLanguageTag("ar-EG"));
      TimeZone.setDefault(TimeZone.getTimeZone("Pacific/Auckland"));
      assertThat(Sheets.write(name)).isEqualTo(Sheets.bytes(name));
    } finally {
      Locale.setDefault(locale);
      TimeZone.setDefault(zone);
    }
  }

  @ParameterizedTest
  @MethodSource("swardcase.sheet.Sheets#names")
  void text_onAnyPage_staysWithinTheMargins(String name) throws IOException {
    List<PdfText.Run> runs = PdfText.runs(Sheets.bytes(name));
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
  @MethodSource("swardcase.sheet.Sheets#names")
  void text_onAnyPage_neverOverlaps(String name) throws IOException {
    Map<Integer, List<PdfText.Run>> byPage = new LinkedHashMap<>();
    for (PdfText.Run run : PdfText.runs(Sheets.bytes(name))) {
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
  @MethodSource("swardcase.sheet.Sheets#names")
  void sheet_ofAnyReport_isSmallAndNumbersItsPages(String name) throws IOException {
    byte[] sheet = Sheets.bytes(name);
    assertThat(sheet.length).isLessThan(10_000_000);
    int pages = PdfText.pages(sheet);
    assertThat(PdfText.ofPage(sheet, 1)).contains("page 1 of " + pages);
    assertThat(PdfText.ofPage(sheet, pages)).contains("page " + pages + " of " + pages);
  }
}
