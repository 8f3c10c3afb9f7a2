package swardcase.sheet;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.MonthDay;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import swardcase.chance.Drawn;
import swardcase.farm.PaddockShape;
import swardcase.farm.PaddockShape.Corner;
import swardcase.farm.PaddockShape.Polygon;
import swardcase.joining.Stay.Where;
import swardcase.paper.Flow;
import swardcase.report.FarmMap;
import swardcase.report.JoiningReport;
import swardcase.report.JoiningReport.Answer;
import swardcase.report.JoiningReport.Break;
import swardcase.report.JoiningReport.MobRow;
import swardcase.report.JoiningReport.OtherRow;
import swardcase.report.JoiningReport.Reason;
import swardcase.report.JoiningReport.SeasonRow;
import swardcase.report.JoiningReport.Shut;
import swardcase.report.JoiningReport.StayRow;
import swardcase.report.JoiningReport.When;
import swardcase.report.JoiningReport.YoungRow;
import swardcase.report.KnownClover;

class JoiningSheetTest {

  private static final KnownClover CLOVER =
      new KnownClover(
          0,
          List.of(),
          1,
          Optional.empty(),
          Optional.empty(),
          Optional.empty(),
          0.2,
          OptionalDouble.empty(),
          KnownClover.FormononetinFrom.LEAF_TEST,
          OptionalDouble.of(1.1),
          Optional.empty());

  private static final Map<String, byte[]> SHEETS = new LinkedHashMap<>();

  @BeforeAll
  static void writeSheets() throws IOException {
    Path folder = Files.createDirectories(Path.of("target/sheets"));
    SHEETS.put("small", bytes(report(4, 2, 2), Optional.empty()));
    SHEETS.put("with map", bytes(report(4, 2, 2), map(9)));
    SHEETS.put("400 paddocks", bytes(report(300, 4, 1), map(400)));
    SHEETS.put("40 paddocks", bytes(report(39, 2, 4), map(40)));
    SHEETS.put("nothing shut", bytes(report(0, 1, 1), map(3)));
    for (Map.Entry<String, byte[]> sheet : SHEETS.entrySet()) {
      String name = "joining-" + sheet.getKey().replace(' ', '-') + ".pdf";
      Files.write(folder.resolve(name), sheet.getValue());
    }
  }

  static Stream<String> names() {
    return Stream.of("small", "with map", "40 paddocks", "400 paddocks", "nothing shut");
  }

  private static byte[] bytes(JoiningReport report, Optional<FarmMap> map) throws IOException {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    JoiningSheet.write(report, map, out);
    return out.toByteArray();
  }

  private static String name(int i) {
    return i == 0 ? "Open Paddock" : "Long Paddock of Name " + i;
  }

  /** Squares in rows of twenty, the first with a hole and the second in two parts. */
  private static Optional<FarmMap> map(int paddocks) {
    List<PaddockShape> shapes = new ArrayList<>();
    for (int i = 0; i < paddocks; i++) {
      double east = 117 + 0.01 * (i % 20);
      double north = -33 - 0.01 * (i / 20);
      List<Polygon> polygons = new ArrayList<>();
      polygons.add(
          i == 0
              ? new Polygon(
                  List.of(square(east, north, 0.01), square(east + 0.001, north + 0.001, 0.002)))
              : new Polygon(List.of(square(east, north, 0.01))));
      if (i == 1) {
        polygons.add(new Polygon(List.of(square(east, north + 0.02, 0.005))));
      }
      shapes.add(new PaddockShape(name(i), polygons));
    }
    return FarmMap.of(shapes);
  }

  private static List<Corner> square(double east, double north, double side) {
    return List.of(
        new Corner(east, north),
        new Corner(east + side, north),
        new Corner(east + side, north + side),
        new Corner(east, north + side),
        new Corner(east, north));
  }

  /** A made-up plan: so many paddocks shut beside an open one, mobs, and stays of each. */
  private static JoiningReport report(int shut, int mobs, int stays) {
    List<Shut> paddocks = IntStream.rangeClosed(1, shut).mapToObj(i -> shut(i)).toList();
    List<String> off = paddocks.stream().map(Shut::paddock).toList();
    List<MobRow> rows = new ArrayList<>();
    for (int g = 0; g < mobs; g++) {
      List<StayRow> own =
          IntStream.range(0, stays)
              .mapToObj(
                  k ->
                      new StayRow(
                          MonthDay.of(5, 1),
                          MonthDay.of(5, 31),
                          Where.values()[k % 5],
                          k % 5 == 3 ? List.of() : List.of("Open Paddock", "Long Paddock"),
                          k == 1 ? 12 : 0))
              .toList();
      rows.add(
          new MobRow(
              "mob of ewes " + g,
              500,
              MonthDay.of(5, 1),
              6,
              MonthDay.of(3, 1),
              MonthDay.of(6, 15),
              off.subList(0, off.size() / 2),
              off.subList(off.size() / 2, off.size()),
              own));
    }
    List<SeasonRow> seasons = new ArrayList<>();
    for (Break comes : Break.values()) {
      seasons.add(
          new SeasonRow(
              comes,
              1 / 3.0,
              comes == Break.LATE,
              List.of(MonthDay.of(4, 1 + comes.ordinal())),
              "mob of ewes 0",
              9,
              2));
    }
    return new JoiningReport(
        "4.0",
        "Swardcase test",
        SampleReports.onePaddock().farm(),
        new Answer(shut, shut + 1, Drawn.of(45, 5, 90), Drawn.of(5e3, 500, 9e3), 9, 3),
        rows,
        paddocks,
        shut == 0 ? List.of() : seasons,
        IntStream.range(0, shut).mapToObj(i -> new YoungRow(name(i), Drawn.of(5, 1, 9))).toList(),
        List.of(
            new OtherRow("wethers", 300, OptionalDouble.of(28)),
            new OtherRow("steers", 40, OptionalDouble.empty())),
        List.of("Call a vet first.", "Never keep feed from late-pregnant ewes."),
        List.of());
  }

  private static Shut shut(int i) {
    When when = When.values()[i % 3];
    boolean out = when == When.OUT;
    return new Shut(
        name(i),
        "key",
        "crop three seasons, then resow",
        out ? "" : i % 2 == 0 ? "all ewes" : "mob of ewes 0",
        out || i % 2 == 0,
        when,
        CLOVER,
        new Reason(Optional.empty(), OptionalDouble.empty(), 0.6, true),
        out ? Optional.empty() : Optional.of("mob of ewes 0"),
        out ? Optional.empty() : Optional.of(Drawn.of(12, 1, 30)),
        out ? OptionalDouble.empty() : OptionalDouble.of(71));
  }

  @ParameterizedTest
  @MethodSource("names")
  void sheet_ofAnyPlan_keepsToBothStandards(String name) throws Exception {
    Standards.assertKept(name, SHEETS.get(name));
  }

  @ParameterizedTest
  @MethodSource("names")
  void text_onAnyPage_staysWithinTheMarginsAndApart(String name) throws IOException {
    List<PdfText.Run> runs =
        PdfText.runs(SHEETS.get(name)).stream().filter(run -> !run.text().isBlank()).toList();
    assertThat(runs).hasSizeGreaterThan(10);
    assertThat(runs)
        .allMatch(run -> run.left() >= Flow.LEFT - 0.1 && run.right() <= Flow.RIGHT + 0.1);
    List<String> overlaps = new ArrayList<>();
    for (int i = 0; i < runs.size(); i++) {
      for (int j = i + 1; j < runs.size() && runs.get(j).page() == runs.get(i).page(); j++) {
        if (!areApart(runs.get(i), runs.get(j))) {
          overlaps.add(runs.get(i) + " and " + runs.get(j));
        }
      }
    }
    assertThat(overlaps).isEmpty();
  }

  private static boolean areApart(PdfText.Run one, PdfText.Run other) {
    return one.right() <= other.left() + 0.1
        || other.right() <= one.left() + 0.1
        || one.baseline() <= other.baseline() - 0.72 * other.size()
        || other.baseline() <= one.baseline() - 0.72 * one.size();
  }

  @Test
  void sheet_writtenTwice_hasTheSameBytes() throws IOException {
    Locale locale = Locale.getDefault();
    try {
      Locale.setDefault(Locale.forLanguageTag("ar-EG"));
      assertThat(bytes(report(4, 2, 2), map(9))).isEqualTo(SHEETS.get("with map"));
    } finally {
      Locale.setDefault(locale);
    }
  }

  /** Without a map the sheet is what it would be if there were no maps. */
  @Test
  void sheet_withoutAMap_speaksOfNone() throws IOException {
    assertThat(PdfText.of(SHEETS.get("small"))).doesNotContain("shut to some ewes", " km");
    assertThat(PdfText.of(SHEETS.get("with map"))).contains("shut to some ewes", " km");
  }

  @ParameterizedTest
  @MethodSource("names")
  void sheet_ofAnyPlan_isAPageAndOneBehindIt(String name) throws IOException {
    assertThat(PdfText.pages(SHEETS.get(name))).isLessThanOrEqualTo(2);
  }

  @Test
  void sheetOfNothingShut_saysSoOnOnePageWithoutTableOrMap() throws IOException {
    assertThat(PdfText.pages(SHEETS.get("nothing shut"))).isEqualTo(1);
    assertThat(PdfText.of(SHEETS.get("nothing shut")).replaceAll("\\s+", " "))
        .contains("Nothing is shut to ewes before joining", "Call a vet first.")
        .doesNotContain("Keep out of", "Break", "open", " km");
  }

  @Test
  void firstPage_holdsAllThatIsPinnedUp() throws IOException {
    String first = PdfText.ofPage(SHEETS.get("with map"), 1).replaceAll("\\s+", " ");
    assertThat(first)
        .contains(
            "Joining sheet: ",
            "mob of ewes 0, 500",
            "mob of ewes 1, 500",
            "Keep out of",
            "early",
            "usual",
            "late",
            "Call a vet first.",
            "Never keep feed from late-pregnant ewes.",
            "page 1 of 2");
  }

  /** A pattern each and words for it; what the picture says is said to those who do not see it. */
  @Test
  void map_ofAJoiningSheet_saysItsFindingInWords() {
    JoiningReport report = report(4, 2, 2);
    FarmMap map = map(5).orElseThrow();
    assertThat(PaddockMap.ofJoining(map, report, null).alternative())
        .isEqualTo(
            "Map of 5 paddocks, north at the top. Shut to all ewes: Long Paddock of Name 4. Shut to"
                + " some ewes: Long Paddock of Name 1, Long Paddock of Name 3. Sown or cropped:"
                + " Long Paddock of Name 2. Open: Open Paddock.");
  }
}
