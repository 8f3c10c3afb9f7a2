package swardcase.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import swardcase.paper.Flow;
import swardcase.sheet.PdfText;
import swardcase.sheet.Standards;
import swardcase.wording.SheetWords;

/**
 * What a reader meets on the sheets and cases of the demo farms, and their text, line by line. The
 * text pins what is printed today and is no evidence that it is right. After a change that is
 * meant, read the difference and write it anew: {@code mvn test -Dtest=SheetReadingTest
 * -Dgolden.write=true}.
 */
class SheetReadingTest {

  private static final Path GOLDEN = Path.of("src/test/resources/golden");

  @ParameterizedTest
  @CsvSource({
    "decide, mixed-farm, 6",
    "decide, current-farm, 6",
    "decide, northern-farm, 6",
    "decide, one-mob-farm, 6",
    "decide, recorded-farm, 6",
    "decide, risky-farm, 6",
    "decide, large-farm, 10",
    "case, one-mob-farm, 40",
    "joining, mixed-farm, 2",
    "joining, current-farm, 2",
    "joining, northern-farm, 2",
    "joining, one-mob-farm, 2",
    "joining, risky-farm, 2",
    "joining, large-farm, 2"
  })
  void sheet_ofADemoFarm_readsAsBeforeAndKeepsToBothStandards(
      String kind, String farm, int mostPages) throws Exception {
    byte[] bytes =
        switch (kind) {
          case "decide" -> DemoSheets.sheet(farm);
          case "case" -> DemoSheets.budget(farm);
          default -> Files.readAllBytes(DemoSheets.joined(farm).resolve("sheet.pdf"));
        };
    Standards.assertKept(farm, bytes);
    assertThat(PdfText.pages(bytes)).isLessThanOrEqualTo(mostPages);
    List<String> lines = PdfText.of(bytes).lines().map(String::stripTrailing).toList();
    Path golden = GOLDEN.resolve(kind + "-" + farm + ".txt");
    if (Boolean.getBoolean("golden.write")) {
      Files.createDirectories(GOLDEN);
      Files.write(golden, lines);
    }
    List<String> before = Files.readAllLines(golden);
    for (int i = 0; i < Math.min(lines.size(), before.size()); i++) {
      assertThat(lines.get(i)).as("%s, line %d", golden, i + 1).isEqualTo(before.get(i));
    }
    assertThat(lines).hasSameSizeAs(before);
  }

  private static final List<String> NEVER =
      List.of("by this count", "in the middle of the draws", "whole dose-response");
  private static final double FIFTH = 842 / 5.0;

  static Stream<String> farms() {
    return DemoSheets.FARMS.stream();
  }

  @ParameterizedTest
  @MethodSource("farms")
  void case_ofADemoFarm_keepsToTheStandards(String farm) throws Exception {
    Standards.assertKept(farm + " case", DemoSheets.budget(farm));
  }

  @ParameterizedTest
  @MethodSource("farms")
  void sentences_ofTheFirstTwoPages_areShort(String farm) throws IOException {
    List<String> tooLong = new ArrayList<>();
    int sentences = 0;
    for (int page = 1; page <= 2; page++) {
      for (String element : PdfText.elements(DemoSheets.sheet(farm), page)) {
        for (String sentence : element.split("(?<=[.?!])\\s+")) {
          sentences++;
          if (sentence.split("\\s+").length > SheetWords.MOST_WORDS) {
            tooLong.add(sentence);
          }
        }
      }
    }
    assertThat(sentences).isGreaterThan(25);
    assertThat(tooLong).isEmpty();
  }

  @ParameterizedTest
  @MethodSource("farms")
  void firstPage_ofADemoFarm_isSetInTenPointsOrMore(String farm) throws IOException {
    assertThat(PdfText.runs(DemoSheets.sheet(farm)))
        .filteredOn(run -> run.page() == 1 && !run.text().isBlank())
        .isNotEmpty()
        .allMatch(run -> run.size() >= 10);
  }

  @ParameterizedTest
  @MethodSource("farms")
  void pages_ofADemoFarm_leaveNoFifthBlank(String farm) throws IOException {
    for (byte[] pdf : List.of(DemoSheets.sheet(farm))) {
      Map<Integer, TreeSet<Double>> lines = new LinkedHashMap<>();
      PdfText.runs(pdf)
          .forEach(
              run ->
                  lines
                      .computeIfAbsent(run.page(), page -> new TreeSet<>(List.of(Flow.BOTTOM)))
                      .add(run.baseline()));
      lines.remove(PdfText.pages(pdf));
      lines.forEach(
          (page, all) -> {
            double last = Flow.TOP;
            for (double line : all) {
              assertThat(line - last)
                  .as("%s, page %d below %s", farm, page, last)
                  .isLessThan(FIFTH);
              last = line;
            }
          });
    }
  }

  @ParameterizedTest
  @MethodSource("farms")
  void words_ofADemoFarm_areWhole(String farm) throws IOException {
    for (byte[] pdf : List.of(DemoSheets.sheet(farm), DemoSheets.budget(farm))) {
      String text = PdfText.of(pdf).replaceAll("\\s+", " ");
      assertThat(text).doesNotContain("off likely gains", "0 none, 1 trial");
      for (int page = 1; page <= PdfText.pages(pdf); page++) {
        String ofPage = PdfText.ofPage(pdf, page);
        assertThat(ofPage.contains("What moves the answer most") && ofPage.contains("\u2026"))
            .as("%s, labels of page %d are whole", farm, page)
            .isFalse();
      }
      // A range that repeats its middle, one of anything in the plural, a rate of return of none.
      assertThat(text).doesNotContainPattern("(?<![\\d,.])(\\d[\\d,.]*) \\(\\1\\)");
      assertThat(text).doesNotContainPattern("(?<![\\d,.])1 (plants|paddocks|draws|lambs) ");
      assertThat(text).doesNotContainPattern("rate of return \\([A-Z]+\\), % none");
    }
    for (int page = 1; page <= 2; page++) {
      assertThat(PdfText.ofPage(DemoSheets.sheet(farm), page)).doesNotContain(NEVER);
    }
    String peak = "peak debt";
    assertThat(PdfText.of(DemoSheets.sheet(farm)).toLowerCase(Locale.ROOT).split(peak))
        .as("a peak debt is told in one place, the case")
        .hasSizeLessThanOrEqualTo(2);
  }
}
