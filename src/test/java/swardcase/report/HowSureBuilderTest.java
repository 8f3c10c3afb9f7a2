package swardcase.report;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import swardcase.decision.Decision;
import swardcase.decision.HowSure;
import swardcase.intake.FarmFolder;
import swardcase.outcome.FarmModel;
import swardcase.tables.Tables;
import swardcase.tables.TablesLoader;

class HowSureBuilderTest {

  private static HowSure found;
  private static HowSureReport report;

  /** Not while the class is being loaded: other threads would wait for it for ever. */
  @BeforeAll
  static void findOut() {
    Decision decision = decide("mixed-farm");
    found = HowSure.of(decision, 1, 200, share -> {});
    report = HowSureBuilder.build(decision.model(), found);
  }

  private static Decision decide(String farm) {
    Tables tables = TablesLoader.standard().load();
    return Decision.of(
        new FarmModel(FarmFolder.read(Path.of("demo-data", farm), tables).farm(), tables));
  }

  @Test
  void build_numbers_areThoseOfTheFindings() {
    assertThat(report.npv()).isEqualTo(found.npv().range());
    assertThat(report.chanceItPays()).isEqualTo(found.npv().chanceAboveZero());
    assertThat(report.npvQuantiles()).hasSize(21).isSorted();
    assertThat(report.npvQuantiles().get(10)).isCloseTo(found.npv().median(), within(1e-9));
    assertThat(report.paddocks()).hasSize(12);
    assertThat(report.movers()).hasSize(10);
    assertThat(report.findOut()).isNotEmpty().hasSizeLessThanOrEqualTo(6);
  }

  @Test
  void build_sentences_sayChanceRangeDrawsAndWorth() {
    assertThat(report.howSure().get(0)).startsWith("The plan pays in ").contains("A$");
    assertThat(report.howSure()).last().asString().contains("200 draws from seed 1");
    assertThat(report.before()).allSatisfy(line -> assertThat(line).contains("A$").endsWith("."));
  }

  @Test
  void build_planThatKeepsEverything_saysSo() {
    Decision keeps = decide("current-farm");
    HowSureReport kept =
        HowSureBuilder.build(keeps.model(), HowSure.of(keeps, 1, 100, share -> {}));
    assertThat(kept.howSure().get(0)).contains("keeps everything");
    assertThat(kept.breakEvens())
        .extracting(HowSureReport.BreakEvenLine::words)
        .isNotEqualTo(List.of())
        .allSatisfy(words -> assertThat(words).startsWith("no break-even from "));
  }
}
