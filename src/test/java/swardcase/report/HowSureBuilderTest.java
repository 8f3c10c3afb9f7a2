package swardcase.report;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import swardcase.findings.HowSure;
import swardcase.intake.FarmFolder;
import swardcase.plan.Decision;
import swardcase.plan.FarmModel;
import swardcase.tables.Tables;
import swardcase.tables.TablesLoader;

class HowSureBuilderTest {

  private static final Decision DECISION = decide("mixed-farm");
  private static final HowSure FOUND = HowSure.of(DECISION, 1, 200, share -> {});
  private static final HowSureReport REPORT = HowSureBuilder.build(DECISION.model(), FOUND);

  private static Decision decide(String farm) {
    Tables tables = TablesLoader.standard().load();
    return Decision.of(
        new FarmModel(FarmFolder.read(Path.of("demo-data", farm), tables).farm(), tables));
  }

  @Test
  void build_numbers_areThoseOfTheFindings() {
    assertThat(REPORT.npv()).isEqualTo(FOUND.npv().range());
    assertThat(REPORT.chanceItPays()).isEqualTo(FOUND.npv().chanceAboveZero());
    assertThat(REPORT.npvQuantiles()).hasSize(21).isSorted();
    assertThat(REPORT.npvQuantiles().get(10)).isCloseTo(FOUND.npv().median(), within(1e-9));
    assertThat(REPORT.paddocks()).hasSize(12);
    assertThat(REPORT.movers()).hasSize(10);
    assertThat(REPORT.findOut()).isNotEmpty().hasSizeLessThanOrEqualTo(6);
  }

  @Test
  void build_sentences_sayChanceRangeDrawsAndWorth() {
    assertThat(REPORT.howSure().get(0)).startsWith("The plan pays in ").contains("A$");
    assertThat(REPORT.howSure()).last().asString().contains("200 draws from seed 1");
    assertThat(REPORT.before()).allSatisfy(line -> assertThat(line).contains("A$").endsWith("."));
  }

  @Test
  void build_planThatKeepsEverything_saysSo() {
    Decision keeps = decide("current-farm");
    HowSureReport report =
        HowSureBuilder.build(keeps.model(), HowSure.of(keeps, 1, 100, share -> {}));
    assertThat(report.howSure().get(0)).contains("keeps everything");
    assertThat(report.breakEvens())
        .extracting(HowSureReport.BreakEvenLine::words)
        .isNotEqualTo(List.of())
        .allSatisfy(words -> assertThat(words).startsWith("no break-even from "));
  }
}
