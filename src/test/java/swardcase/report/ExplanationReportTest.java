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
import swardcase.decision.Explanation;
import swardcase.decision.Explanations;
import swardcase.decision.HowSure;
import swardcase.decision.PaddockExplanations;
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

    assertSame(farm.winterFeed(), report.winterFeed().supplementTonnes());
    assertSame(farm.winterFeedCost(), report.winterFeed().supplementCost());
    assertSame(farm.winterGrowthLost(), report.winterFeed().dryMatterLostKg());
    assertSame(farm.lambs(), report.reproduction().lambsLostPerYear());
    assertSame(farm.lambCost(), report.reproduction().costPerYear());
    assertSame(farm.planCost(), report.plan().cost());
    assertSame(farm.planGain(), report.plan().gain().drawn());
    List<Explanation> years = farm.planGain().parts();
    assertThat(years).hasSameSizeAs(report.plan().years());
    for (int t = 0; t < years.size(); t++) {
      assertThat(mean(years.get(t))).isCloseTo(report.plan().years().get(t).mean(), offset(1e-6));
    }
    for (int i = 0; i < report.paddocks().size(); i++) {
      int place = i;
      PaddockResult paddock = report.paddocks().get(i);
      PaddockExplanations of = farm.paddocks();
      assertSame(of.cost(i), paddock.cost());
      assertSame(of.gain(i), paddock.gain().drawn());
      assertSame(of.growthLost(i), paddock.dryMatterLostKgPerHa());
      assertSame(of.supplement(i), paddock.supplementTonnes());
      assertSame(of.supplementCost(i), paddock.supplementCost());
      paddock
          .formononetinPercentOfLeaf()
          .ifPresent(leaf -> assertSame(of.formononetin(place), leaf));
      var old = of.oldShare(i).amount().given();
      paddock.clover().oldShare().ifPresent(share -> assertThat(old).contains(share));
    }
    double part =
        IntStream.range(0, report.paddocks().size())
            .mapToDouble(i -> mean(farm.paddocks().supplement(i)))
            .sum();
    assertThat(part).isCloseTo(mean(farm.winterFeed()), offset(1e-6));
  }
}
