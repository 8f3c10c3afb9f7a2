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
import swardcase.draws.Draws;
import swardcase.farm.Action;
import swardcase.farm.UseRule;
import swardcase.intake.FarmFolder;
import swardcase.intake.LoadedFarm;
import swardcase.joining.JoiningPlan;
import swardcase.outcome.FarmModel;
import swardcase.outcome.Plan;
import swardcase.report.JoiningReport;
import swardcase.report.JoiningReport.MobRow;
import swardcase.report.JoiningReport.Shut;
import swardcase.report.JoiningReportBuilder;
import swardcase.tables.Tables;
import swardcase.tables.TablesLoader;
import swardcase.wording.JoiningWords;

class JoiningViewsTest {

  private static final LocalDate DAY = LocalDate.of(2026, 3, 1);
  private static JoiningReport shut;
  private static JoiningReport open;

  @BeforeAll
  static void build() {
    shut = report(true);
    open = report(false);
  }

  /** The risky farm with Lagoon and Lease shut to all ewes before joining, or with nothing shut. */
  private static JoiningReport report(boolean shuts) {
    Tables tables = TablesLoader.standard().load();
    LoadedFarm loaded = FarmFolder.read(Path.of("demo-data", "risky-farm"), tables);
    FarmModel model = new FarmModel(loaded.farm(), tables);
    Draws draws = Decision.draws(model, 1, 200);
    List<String> keys = model.actions().stream().map(Action::key).toList();
    int rule = keys.indexOf("keep-off-all-ewes-before-joining");
    Plan plan = model.keepAll();
    for (int i = 0; i < plan.paddocks() && shuts; i++) {
      String name = loaded.farm().paddocks().get(i).name();
      plan = List.of("Lagoon", "Lease").contains(name) ? plan.with(i, rule, 0) : plan;
    }
    assertThat(UseRule.of(loaded.farm())).extracting(UseRule::key).contains(keys.get(rule));
    JoiningPlan joining = JoiningPlan.of(draws, plan).orElseThrow();
    return JoiningReportBuilder.build(joining, "Swardcase test", DAY, loaded.notices());
  }

  @Test
  void report_ofAPlanThatShuts_saysWhatToWhomAndWhatItSaves() {
    assertThat(JoiningWords.answer(shut).get(0))
        .isEqualTo("2 of 10 paddocks are shut to ewes for a time.");
    assertThat(JoiningWords.answer(shut).get(1)).contains("lambs in the coming year, worth A$");
    assertThat(shut.shut()).extracting(Shut::paddock).containsExactly("Lagoon", "Lease");
    for (MobRow mob : shut.mobs()) {
      assertThat(mob.offBefore()).containsExactly("Lagoon", "Lease");
      assertThat(mob.offGreen()).isEmpty();
      assertThat(mob.stays()).isNotEmpty();
    }
    assertThat(shut.seasons()).hasSize(3);
    assertThat(JoiningWords.others(shut))
        .singleElement()
        .asString()
        .contains("Lagoon, Lease", "wethers, at most 28 days");
  }

  @Test
  void report_ofAPlanThatShutsNothing_saysSoAndShowsNothing() {
    assertThat(JoiningWords.answer(open).get(0)).startsWith("Nothing is shut");
    assertThat(open.shut()).isEmpty();
    assertThat(open.seasons()).isEmpty();
    assertThat(JoiningWords.others(open)).isEmpty();
    assertThat(JoiningCsvView.of(open).lines()).hasSize(1);
    assertThat(String.join("\n", JoiningTerminalView.of(open, 160)))
        .doesNotContain("Keep out of", "Break ", "any paddock");
  }

  @Test
  void rows_ofPaddocksShut_sayWhatMakesThemSo() {
    assertThat(JoiningWords.joining(shut.mobs().get(1))).isEqualTo("rams in 1 June for 5 weeks");
    assertThat(JoiningWords.reason(shut.shut().get(0)))
        .startsWith("leaf test 1.25 %")
        .endsWith("60 % clover, wet ground");
    assertThat(JoiningWords.reason(shut.shut().get(1))).startsWith("nobody looked");
    assertThat(JoiningWords.shutTo(shut.shut().get(0))).isEqualTo("all ewes before joining");
    assertThat(shut.shut().get(0).lost().orElseThrow().mean()).isGreaterThan(3);
  }

  @Test
  void terminal_ofAnyPlan_carriesCautionsAndNoControlCharacters() {
    for (JoiningReport report : List.of(shut, open)) {
      String text = String.join("\n", JoiningTerminalView.of(report, 160));
      assertThat(text.replaceAll("\\s+", " "))
          .contains(
              "call a vet first",
              "Never keep feed from late-pregnant ewes",
              "stays risky; dry standing feed does not",
              "Wethers may graze risky green feed for limited periods only",
              "not veterinary advice");
      assertThat(text.replace("\n", "")).doesNotContainPattern("\\p{Cntrl}");
      assertThat(text).doesNotContain("test first", "leaf is tested");
    }
  }

  @Test
  void csv_ofThePlan_hasARowForEveryPaddockShut() {
    String[] lines = JoiningCsvView.of(shut).split("\n");
    assertThat(lines).hasSize(3);
    assertThat(lines[1])
        .startsWith("Lagoon,keep-off-all-ewes-before-joining,all ewes,before joining,maidens,");
  }

  @Test
  void json_ofThePlan_holdsTheSameTree() throws IOException {
    JsonNode tree = new ObjectMapper().readTree(JsonView.of(shut));
    assertThat(tree.path("schemaVersion").asText()).isEqualTo("4.0");
    assertThat(tree.path("mobs")).hasSize(2);
    assertThat(tree.at("/answer/paddocksShut").asInt()).isEqualTo(2);
    assertThat(tree.at("/shut/0/when").asText()).isEqualTo("before joining");
    assertThat(tree.at("/mobs/0/from").asText()).isEqualTo("--03-01");
    assertThat(tree.at("/cautions/0").asText()).contains("call a vet first");
    assertThat(tree.path("farm").path("date").asText()).isEqualTo("2026-03-01");
  }

  @Test
  void views_inAnyLocale_areTheSame() {
    Locale before = Locale.getDefault();
    String json = JsonView.of(shut);
    List<String> terminal = JoiningTerminalView.of(shut, 160);
    try {
      Locale.setDefault(Locale.forLanguageTag("ar-EG"));
      JoiningReport again = report(true);
      assertThat(JsonView.of(again)).isEqualTo(json);
      assertThat(JoiningTerminalView.of(again, 160)).isEqualTo(terminal);
    } finally {
      Locale.setDefault(before);
    }
  }
}
