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
import swardcase.joining.JoiningPlan.Policy;
import swardcase.paper.Flow;
import swardcase.report.JoiningReport;
import swardcase.report.JoiningReport.Answer;
import swardcase.report.JoiningReport.Cell;
import swardcase.report.JoiningReport.DateEnds;
import swardcase.report.JoiningReport.DatePoint;
import swardcase.report.JoiningReport.Direction;
import swardcase.report.JoiningReport.Finding;
import swardcase.report.JoiningReport.Gate;
import swardcase.report.JoiningReport.GroupMoves;
import swardcase.report.JoiningReport.HalfMonth;
import swardcase.report.JoiningReport.MobCalendar;
import swardcase.report.JoiningReport.Move;
import swardcase.report.JoiningReport.OtherDate;
import swardcase.report.JoiningReport.PaddockRow;
import swardcase.report.JoiningReport.PolicyResult;
import swardcase.report.JoiningReport.Rating;
import swardcase.report.JoiningReport.Reason;
import swardcase.report.JoiningReport.SafeFeed;
import swardcase.report.JoiningReport.Shortage;
import swardcase.report.JoiningReport.Stay;
import swardcase.report.JoiningReport.Where;
import swardcase.report.JoiningReport.YoungRating;
import swardcase.report.JoiningReport.YoungRow;

class JoiningSheetTest {

  private static final Map<String, byte[]> SHEETS = new LinkedHashMap<>();

  @BeforeAll
  static void writeSheets() throws IOException {
    Path folder = Files.createDirectories(Path.of("target/sheets"));
    SHEETS.put("small", bytes(report(4, 7, 2)));
    SHEETS.put("large", bytes(report(9, 24, 2)));
    SHEETS.put("nothing to shut", bytes(report(0, 7, 1)));
    for (Map.Entry<String, byte[]> sheet : SHEETS.entrySet()) {
      String name = "joining-" + sheet.getKey().replace(' ', '-') + ".pdf";
      Files.write(folder.resolve(name), sheet.getValue());
    }
  }

  static Stream<String> names() {
    return Stream.of("small", "large", "nothing to shut");
  }

  private static byte[] bytes(JoiningReport report) throws IOException {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    JoiningSheet.write(report, out);
    return out.toByteArray();
  }

  /** A made-up plan: so many paddocks to shut beside one open one, half-months and mobs. */
  private static JoiningReport report(int paddocks, int halves, int mobs) {
    List<HalfMonth> half =
        IntStream.range(0, halves)
            .mapToObj(k -> new HalfMonth(MonthDay.of(5, k % 2 * 15 + 1), MonthDay.of(5, 31)))
            .toList();
    List<String> names = new ArrayList<>(List.of("Open Paddock"));
    IntStream.range(0, paddocks).forEach(i -> names.add("Long Paddock of Name " + i));
    List<MobCalendar> calendars = new ArrayList<>();
    List<GroupMoves> moves = new ArrayList<>();
    for (int g = 0; g < mobs; g++) {
      List<PaddockRow> rows = new ArrayList<>();
      for (int i = 0; i < names.size(); i++) {
        int paddock = i;
        rows.add(
            new PaddockRow(
                names.get(i),
                Drawn.of(0.2, 0.1, 0.4),
                SamplePaddocks.clover(i != 2, true),
                i == 2,
                new Reason(Optional.empty(), OptionalDouble.empty(), 0.6, true),
                91,
                91,
                IntStream.range(0, halves).mapToObj(k -> cell(paddock, k)).toList()));
      }
      calendars.add(new MobCalendar("mob of ewes " + g, 500, MonthDay.of(5, 1), 6, rows));
      List<Move> stays =
          IntStream.range(0, halves)
              .mapToObj(
                  k ->
                      k % 3 == 0
                          ? new Move(Where.ANY_PADDOCK, List.of(), 0)
                          : new Move(
                              Where.PADDOCKS,
                              List.of(
                                  new Stay("Open Paddock", 11, false),
                                  new Stay("Long Paddock of Name 1", 4, false)),
                              2.4))
              .toList();
      moves.add(new GroupMoves("mob of ewes " + g, true, stays));
    }
    List<String> all = calendars.stream().map(MobCalendar::name).toList();
    List<Gate> gates =
        names.stream()
            .skip(1)
            .map(
                name ->
                    new Gate(
                        name,
                        IntStream.range(0, halves)
                            .mapToObj(k -> k % 2 == 0 ? List.<String>of() : all)
                            .toList()))
            .toList();
    return new JoiningReport(
        "2.0",
        "Swardcase test",
        SampleReports.onePaddock().farm(),
        new Answer(
            paddocks > 0 ? Finding.KEEP_OFF : Finding.NOTHING_TO_SHUT,
            paddocks,
            paddocks + 1,
            45,
            6,
            3),
        List.of(),
        half,
        calendars,
        names.stream()
            .map(name -> new YoungRow(name, Drawn.of(5, 1, 9), YoungRating.LIMITED, 40))
            .toList(),
        List.of(
            new PolicyResult(
                Policy.AS_NOW,
                Drawn.of(50, 10, 90),
                Drawn.of(5e3, 1e3, 9e3),
                0,
                0,
                Drawn.exactly(0)),
            new PolicyResult(
                Policy.PLAN,
                Drawn.of(5, 0, 20),
                Drawn.of(500, 0, 2e3),
                3,
                990,
                Drawn.of(3e3, -100, 8e3))),
        moves,
        gates,
        new SafeFeed(
            Optional.of(new Shortage(3e4, 3, 990, MonthDay.of(5, 1), MonthDay.of(5, 31))),
            List.of(new OtherDate(Direction.EARLIER, 8, OptionalDouble.empty())),
            Optional.empty(),
            5_000,
            MonthDay.of(5, 1),
            0,
            330),
        IntStream.range(0, 24)
            .mapToObj(
                k ->
                    new DatePoint(
                        MonthDay.of(5, k + 1),
                        IntStream.range(0, mobs).mapToObj(g -> (double) (k * (g + 1))).toList(),
                        k * mobs))
            .toList(),
        all.stream()
            .map(name -> new DateEnds(name, MonthDay.of(5, 1), 0, MonthDay.of(5, 24), 23))
            .toList(),
        List.of("Call a vet first.", "Never keep feed from late-pregnant ewes."),
        List.of(),
        List.of());
  }

  private static Cell cell(int paddock, int k) {
    Rating rating = paddock == 0 ? Rating.OPEN : Rating.values()[(paddock + k) % 4];
    return new Cell(rating, 9, 15, Drawn.of(1, 0, 2), 91);
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
    assertThat(runs).hasSizeGreaterThan(50);
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
      assertThat(bytes(report(4, 7, 2))).isEqualTo(SHEETS.get("small"));
    } finally {
      Locale.setDefault(locale);
    }
  }

  @Test
  void firstPage_ofASmallFarm_holdsAllThatIsPinnedUp() throws IOException {
    String first = PdfText.ofPage(SHEETS.get("small"), 1).replaceAll("\\s+", " ");
    assertThat(first)
        .contains(
            "Joining sheet: ",
            "Where to be",
            "mob of ewes 0",
            "mob of ewes 1",
            "Gates to keep shut",
            "all ewes",
            "Call a vet first.",
            "Never keep feed from late-pregnant ewes.",
            "page 1 of " + PdfText.pages(SHEETS.get("small")));
  }

  @Test
  void ratings_onPaper_standInWords() throws IOException {
    String text = PdfText.of(SHEETS.get("small")).replaceAll("\\s+", " ");
    assertThat(text).contains("open", "9 days", "keep off", "91 %", "unknown", "(?)");
  }
}
