package swardcase.decision;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import swardcase.RandomFarms;
import swardcase.farm.Action;
import swardcase.farm.UseRule;
import swardcase.intake.FarmFolder;
import swardcase.outcome.FarmModel;
import swardcase.outcome.FarmRule;

/**
 * One mob on one bad paddock: 50 ha of wet Yarloop that maidens graze, three clean paddocks with
 * the mature ewes. Moving the maidens costs nothing and is what a good adviser says first.
 */
class OneBadPaddockTest {

  private static final int BAD = 0;
  private static Decision decision;
  private static HowSure howSure;

  @BeforeAll
  static void decide() {
    FarmModel model =
        new FarmModel(
            FarmFolder.read(Path.of("src/test/resources/farms/one-bad-paddock"), RandomFarms.TABLES)
                .farm(),
            RandomFarms.TABLES);
    decision = Decision.of(model);
    howSure = HowSure.of(decision);
  }

  private static Action action(int paddock) {
    return decision.model().actions().get(decision.plan().action(paddock));
  }

  @Test
  void plan_keepsTheMaidensOffFromTheComingYearAndSpendsNothing() {
    UseRule rule = action(BAD).use().orElseThrow();
    assertThat(rule.who()).isEqualTo("maidens");
    assertThat(decision.plan().start(BAD)).isZero();
    assertThat(action(BAD).changesStand()).isFalse();
    assertThat(decision.outcome().actionCost(0)).isZero();
    assertThat(howSure.paddock(BAD).verdict()).isEqualTo(Verdict.KEEP_OFF);
    assertThat(howSure.paddock(BAD).planned().gain().mean()).isPositive();
    assertThat(howSure.paddock(BAD).sure()).contains(true);
  }

  /** Where a use rule brings what grazing in order would, the rule that is easier is taken. */
  @Test
  void plan_doesNotGrazeInOrderBeside() {
    assertThat(decision.plan().choice(FarmRule.IN_ORDER)).isZero();
    RuleFindings order = howSure.rules().get(FarmRule.IN_ORDER.ordinal());
    assertThat(order.courses()).hasSize(2);
    assertThat(order.courses().get(1).gain().mean())
        .isLessThan(howSure.paddock(BAD).planned().gain().mean() / 10);
  }

  /** What sows is judged over the rule, not over keeping. */
  @Test
  void resowing_isJudgedBeyondTheRule() {
    PaddockFindings bad = howSure.paddock(BAD);
    List<CourseFindings> sowing =
        bad.courses().stream()
            .filter(course -> decision.model().actions().get(course.choice().action()).sows())
            .toList();
    assertThat(sowing).isNotEmpty();
    assertThat(sowing)
        .allSatisfy(
            course -> {
              Action over =
                  decision
                      .model()
                      .actions()
                      .get(bad.courses().get(course.over()).choice().action());
              assertThat(over.use()).isPresent();
              assertThat(course.step().mean()).isLessThan(course.gain().mean());
            });
  }

  @Test
  void cleanPaddocks_areKept() {
    for (int i = 1; i < decision.plan().paddocks(); i++) {
      assertThat(howSure.paddock(i).verdict()).isEqualTo(Verdict.KEEP);
    }
  }
}
