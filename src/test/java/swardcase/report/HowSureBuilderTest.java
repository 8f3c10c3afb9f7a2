package swardcase.report;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import swardcase.decision.Decision;
import swardcase.decision.HowSure;
import swardcase.intake.FarmFolder;
import swardcase.outcome.FarmModel;
import swardcase.tables.Tables;
import swardcase.tables.TablesLoader;
import swardcase.wording.HowSureWords;
import swardcase.wording.MoneyFaces;

class HowSureBuilderTest {

  private static HowSure found;
  private static HowSureReport report;
  private static HowSureWords words;

  /** Not while the class is being loaded: other threads would wait for it for ever. */
  @BeforeAll
  static void findOut() {
    Decision decision = decide("mixed-farm", 200);
    found = HowSure.of(decision);
    Report whole = report(decision, found);
    report = whole.howSure().orElseThrow();
    words = new HowSureWords(whole, report, new MoneyFaces(whole));
  }

  private static Decision decide(String farm, int draws) {
    Tables tables = TablesLoader.standard().load();
    FarmModel model =
        new FarmModel(FarmFolder.read(Path.of("demo-data", farm), tables).farm(), tables);
    return Decision.of(Decision.draws(model, 1, draws), List.of(), done -> {});
  }

  private static Report report(Decision decision, HowSure howSure) {
    return ReportBuilder.build(decision, howSure, "test", LocalDate.of(2026, 11, 25), List.of());
  }

  @Test
  void build_numbers_areThoseOfTheFindings() {
    assertThat(report.npv()).isEqualTo(found.gain().drawn());
    assertThat(report.chanceItPays()).isEqualTo(found.gain().chancePays());
    assertThat(report.npvQuantiles()).hasSize(21).isSorted();
    assertThat(report.npvQuantiles().get(10)).isCloseTo(found.gainQuantiles()[10], within(1e-9));
    assertThat(report.paddocks()).hasSize(12);
    assertThat(report.movers()).isNotEmpty().hasSize(Math.min(10, found.byVarianceShare().size()));
  }

  @Test
  void build_sentences_sayChanceRangeDrawsAndWorth() {
    assertThat(words.howSure().get(0)).startsWith("The plan pays in ").contains("A$");
    assertThat(words.howSure()).last().asString().contains("200 draws from seed 1");
  }

  @Test
  void build_planThatKeepsEverything_saysSo() {
    Decision keeps = decide("current-farm", 100);
    Report whole = report(keeps, HowSure.of(keeps));
    HowSureReport kept = whole.howSure().orElseThrow();
    assertThat(new HowSureWords(whole, kept, new MoneyFaces(whole)).howSure().get(0))
        .contains("keeps everything");
    assertThat(kept.breakEvens())
        .extracting(HowSureWords::breakEven)
        .isNotEqualTo(List.of())
        .allSatisfy(words -> assertThat(words).startsWith("no break-even from "));
  }
}
