package swardcase.report;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.offset;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import swardcase.chance.Drawn;
import swardcase.decision.Decision;
import swardcase.decision.ExplainTopic;
import swardcase.decision.Explanation;
import swardcase.decision.Explanations;
import swardcase.decision.HowSure;
import swardcase.intake.FarmFolder;
import swardcase.outcome.FarmModel;
import swardcase.tables.Tables;
import swardcase.tables.TablesLoader;

class ExplanationReportTest {

  private static final Tables TABLES = TablesLoader.standard().load();

  private static void assertSame(Explanation of, Drawn printed) {
    assertThat(of.amount().drawn()).as(of.what() + " of " + of.names()).contains(printed);
  }

  private static double mean(Explanation of) {
    return of.amount().mean().orElseThrow();
  }

  @ParameterizedTest
  @ValueSource(strings = {"demo-data/mixed-farm", "src/test/resources/farms/sowing"})
  void numbers_ofEveryTopic_areThoseOfTheReport(String folder) {
    Decision decision =
        Decision.rough(
            Decision.draws(
                new FarmModel(FarmFolder.read(Path.of(folder), TABLES).farm(), TABLES), 3, 200),
            List.of(),
            done -> {});
    Report report =
        ReportBuilder.build(
            decision, HowSure.of(decision), "", LocalDate.of(2026, 5, 1), List.of());
    Explanations farm = Explanations.of(decision);

    assertSame(ExplainTopic.WINTER_FEED.explain(farm, 0), report.winterFeed().supplementTonnes());
    assertSame(
        ExplainTopic.WINTER_FEED_COST.explain(farm, 0), report.winterFeed().supplementCost());
    assertSame(
        ExplainTopic.WINTER_GROWTH_LOST.explain(farm, 0), report.winterFeed().dryMatterLostKg());
    assertSame(ExplainTopic.LAMBS.explain(farm, 0), report.reproduction().lambsLostPerYear());
    assertSame(ExplainTopic.LAMB_COST.explain(farm, 0), report.reproduction().costPerYear());
    assertSame(ExplainTopic.PLAN_COST.explain(farm, 0), report.plan().cost());
    assertSame(ExplainTopic.PLAN_GAIN.explain(farm, 0), report.plan().gain().drawn());
    List<Explanation> years = ExplainTopic.PLAN_GAIN.explain(farm, 0).parts();
    assertThat(years).hasSameSizeAs(report.plan().years());
    for (int t = 0; t < years.size(); t++) {
      assertThat(mean(years.get(t))).isCloseTo(report.plan().years().get(t).mean(), offset(1e-6));
    }
    for (int i = 0; i < report.paddocks().size(); i++) {
      int place = i;
      PaddockResult paddock = report.paddocks().get(i);
      assertSame(ExplainTopic.COST.explain(farm, i), paddock.cost());
      assertSame(ExplainTopic.GAIN.explain(farm, i), paddock.gain().drawn());
      assertSame(ExplainTopic.GROWTH_LOST.explain(farm, i), paddock.dryMatterLostKgPerHa());
      assertSame(ExplainTopic.SUPPLEMENT.explain(farm, i), paddock.supplementTonnes());
      assertSame(ExplainTopic.SUPPLEMENT_COST.explain(farm, i), paddock.supplementCost());
      paddock
          .formononetinPercentOfLeaf()
          .ifPresent(leaf -> assertSame(ExplainTopic.FORMONONETIN.explain(farm, place), leaf));
      var old = ExplainTopic.OLD_SHARE.explain(farm, i).amount().given();
      paddock.clover().oldShare().ifPresent(share -> assertThat(old).contains(share));
    }
    double part =
        IntStream.range(0, report.paddocks().size())
            .mapToDouble(i -> mean(ExplainTopic.SUPPLEMENT.explain(farm, i)))
            .sum();
    assertThat(part).isCloseTo(mean(ExplainTopic.WINTER_FEED.explain(farm, 0)), offset(1e-6));
  }
}
