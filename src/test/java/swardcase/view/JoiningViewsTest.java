package swardcase.view;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import swardcase.decision.Decision;
import swardcase.intake.FarmFolder;
import swardcase.intake.LoadedFarm;
import swardcase.joining.JoiningPlan;
import swardcase.outcome.FarmModel;
import swardcase.report.JoiningReport;
import swardcase.report.JoiningReport.Finding;
import swardcase.report.JoiningReport.Gate;
import swardcase.report.JoiningReport.MobCalendar;
import swardcase.report.JoiningReport.Rating;
import swardcase.report.JoiningReportBuilder;
import swardcase.tables.Tables;
import swardcase.tables.TablesLoader;
import swardcase.wording.JoiningWords;
import swardcase.wording.SafeFeedWords;

class JoiningViewsTest {

  private static final LocalDate DAY = LocalDate.of(2026, 3, 1);
  private static JoiningReport risky;
  private static JoiningReport summer;

  @BeforeAll
  static void build() {
    risky = report("risky-farm");
    summer = report("mixed-farm");
  }

  private static JoiningReport report(String folder) {
    Tables tables = TablesLoader.standard().load();
    LoadedFarm loaded = FarmFolder.read(Path.of("demo-data", folder), tables);
    JoiningPlan plan =
        JoiningPlan.of(Decision.draws(new FarmModel(loaded.farm(), tables), 1, 200)).orElseThrow();
    return JoiningReportBuilder.build(plan, "Swardcase test", DAY, loaded.notices());
  }

  @Test
  void report_ofARiskyFarm_saysWhatToShutAndWhatItSaves() {
    assertThat(JoiningWords.answer(risky))
        .startsWith("Keep ewes off 9 of 10 paddocks")
        .contains("lambs");
    assertThat(risky.answer().finding()).isEqualTo(Finding.KEEP_OFF);
    assertThat(risky.gates()).extracting(Gate::paddock).contains("Lagoon", "Lease");
    assertThat(risky.gates()).extracting(Gate::paddock).doesNotContain("New Ground");
    SafeFeedWords safeFeed = new SafeFeedWords(risky);
    assertThat(safeFeed.statement()).contains("short by", "MJ", "barley", "from", "to");
    assertThat(safeFeed.waysOut())
        .anyMatch(way -> way.startsWith("Buy "))
        .anyMatch(way -> way.startsWith("Join 4 weeks earlier"))
        .anyMatch(way -> way.startsWith("Resow "));
  }

  @Test
  void report_ofSummerJoining_saysThatNothingNeedBeShut() {
    assertThat(JoiningWords.answer(summer)).startsWith("Nothing to shut");
    assertThat(summer.answer().finding()).isEqualTo(Finding.NOTHING_TO_SHUT);
    assertThat(summer.gates()).isEmpty();
    assertThat(summer.safeFeed().shortage()).isEmpty();
    SafeFeedWords safeFeed = new SafeFeedWords(summer);
    assertThat(safeFeed.statement()).startsWith("Safe feed is enough");
    assertThat(safeFeed.waysOut()).isEmpty();
  }

  @Test
  void rows_ofTheCalendar_sayWhatMakesThemSo() {
    MobCalendar maidens = risky.mobs().get(1);
    assertThat(JoiningWords.joining(maidens)).isEqualTo("rams in 1 June for 5 weeks");
    assertThat(reason(maidens, "Lagoon")).isEqualTo("leaf test 1.25 %, 60 % clover, wet ground");
    assertThat(reason(maidens, "Back Gate")).startsWith("Dwalganup ").contains("60 % clover");
    assertThat(reason(maidens, "Lease")).startsWith("nobody looked");
  }

  private static String reason(MobCalendar mob, String paddock) {
    return mob.paddocks().stream()
        .filter(row -> row.paddock().equals(paddock))
        .map(JoiningWords::reason)
        .findFirst()
        .orElseThrow();
  }

  @Test
  void terminal_ofAnyPlan_carriesCautionsAndNoControlCharacters() {
    for (JoiningReport report : List.of(risky, summer)) {
      String text = String.join("\n", JoiningTerminalView.of(report, 160));
      assertThat(text.replaceAll("\\s+", " "))
          .contains(
              "call a vet first",
              "Never keep feed from late-pregnant ewes",
              "stays risky; dry standing feed does not",
              "Wethers may graze risky green feed for limited periods only",
              "none of these is counted");
      assertThat(text.replace("\n", "")).doesNotContainPattern("\\p{Cntrl}");
    }
    assertThat(String.join("\n", JoiningTerminalView.of(risky, 160)))
        .contains("keep off", "unknown", "Gates to keep shut", "hold on bare ground");
  }

  @Test
  void csv_ofThePlan_hasARowForEveryRating() {
    long rated =
        risky.mobs().stream()
            .flatMap(mob -> mob.paddocks().stream())
            .flatMap(row -> row.cells().stream())
            .filter(cell -> cell.rating() != Rating.NOT_RATED)
            .count();
    String[] lines = JoiningCsvView.of(risky).split("\n");
    assertThat(lines).hasSize((int) rated + 1);
    assertThat(lines[1]).startsWith("mature ewes,Home,1 Mar,15 Mar,open,15,15,");
  }

  @Test
  void json_ofThePlan_holdsTheSameTree() throws IOException {
    JsonNode tree = new ObjectMapper().readTree(JsonView.of(risky));
    assertThat(tree.path("schemaVersion").asText()).isEqualTo("2.0");
    assertThat(tree.path("mobs")).hasSize(2);
    assertThat(tree.path("mobs").path(0).path("paddocks")).hasSize(10);
    assertThat(tree.path("policies")).hasSize(3);
    assertThat(tree.path("dates")).hasSize(24);
    assertThat(tree.at("/answer/finding").asText()).isEqualTo("keep off");
    assertThat(tree.at("/halfMonths/0/from").asText()).isEqualTo("--03-01");
    assertThat(tree.at("/cautions/0").asText()).contains("call a vet first");
    assertThat(tree.path("farm").path("date").asText()).isEqualTo("2026-03-01");
  }

  @Test
  void views_inAnyLocale_areTheSame() {
    Locale before = Locale.getDefault();
    String json = JsonView.of(risky);
    List<String> terminal = JoiningTerminalView.of(risky, 160);
    try {
      Locale.setDefault(Locale.forLanguageTag("ar-EG"));
      JoiningReport again = report("risky-farm");
      assertThat(JsonView.of(again)).isEqualTo(json);
      assertThat(JoiningTerminalView.of(again, 160)).isEqualTo(terminal);
    } finally {
      Locale.setDefault(before);
    }
  }
}
