package swardcase.decision;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import swardcase.Answers;
import swardcase.OtherCurrency;
import swardcase.RandomFarms;
import swardcase.chance.Payoffs;
import swardcase.farm.Farm;
import swardcase.outcome.FarmModel;

/** What must hold for the findings of any farm. */
class FindingLawsTest {

  private static final int FARMS = 24;
  private static final int DRAWS = 40;
  private static final double TIMES = 4;

  private static HowSure howSure(FarmModel model) {
    return HowSure.of(Decision.rough(Decision.draws(model, 1, DRAWS), List.of(), done -> {}));
  }

  @Test
  void values_ofFindingOut_liveBetweenNothingAndThePerfect() {
    Answers.forAll(
        answer -> {
          HowSure found = answer.howSure();
          double perfect = found.perfect().value();
          for (Unknown unknown : found.unknowns()) {
            assertThat(unknown.value().value())
                .as(unknown.name())
                .isBetween(0.0, perfect * (1 + 1e-9) + 1e-9);
            assertThat(unknown.varianceShare()).isBetween(0.0, 1.0);
          }
          for (int i = 0; i < answer.paddocks(); i++) {
            PaddockFindings paddock = found.paddock(i);
            double most = payoffs(answer, paddock).perfect().value() * (1 + 1e-9) + 1e-9;
            assertThat(paddock.enquiries())
                .hasSizeGreaterThanOrEqualTo(2)
                .allSatisfy(each -> assertThat(each.worth().value()).isBetween(0.0, most));
          }
        });
  }

  /** Of the choices that keep within the limits: what cannot be done is not chosen by knowing. */
  private static Payoffs payoffs(Answers.Answer answer, PaddockFindings paddock) {
    return new Payoffs(
        paddock.courses().stream()
            .filter(CourseFindings::fits)
            .map(course -> answer.decision().simulation().npv(course.place()))
            .toArray(double[][]::new));
  }

  @Test
  void perfectInformation_isWorthTheLeastExpectedRegret() {
    Answers.forAll(
        answer -> {
          HowSure found = answer.howSure();
          double rounding = 1e-9 * Math.abs(found.perfect().value()) + 1e-6;
          for (int i = 0; i < answer.paddocks(); i++) {
            PaddockFindings paddock = found.paddock(i);
            if (paddock.courses().stream().allMatch(CourseFindings::fits)) {
              Payoffs payoffs = payoffs(answer, paddock);
              double[] regret = payoffs.expectedRegret();
              assertThat(Arrays.stream(regret).min().orElseThrow())
                  .isCloseTo(payoffs.perfect().value(), within(rounding));
              // The choices of the farm are more, so the best of a draw is no worse.
              assertThat(regret[paddock.courses().indexOf(paddock.planned())])
                  .isLessThanOrEqualTo(found.expectedRegretOfPlan() + rounding);
            }
          }
          assertThat(found.expectedRegretOfPlan())
              .isGreaterThanOrEqualTo(found.perfect().value() - rounding);
          assertThat(found.expectedRegretOfKeeping() - found.expectedRegretOfPlan())
              .isCloseTo(found.gain().mean(), within(rounding));
        });
  }

  @Test
  void findings_inAnotherCurrency_areTheSameInIt() {
    Set<Verdict> seen = EnumSet.noneOf(Verdict.class);
    for (int k = 0; k < FARMS; k++) {
      SplittableRandom random = new SplittableRandom(3000 + k);
      Farm any = k % 2 == 0 ? Answers.random(k) : RandomFarms.any(random, 1 + random.nextInt(3));
      Farm farm = any.withFinance(any.finance().withHorizonYears(1 + random.nextInt(5)));
      FarmModel here = new FarmModel(farm, RandomFarms.TABLES);
      FarmModel there = new OtherCurrency(TIMES).model(farm);
      HowSure found = howSure(here);
      HowSure then = howSure(there);
      double rounding = 1e-9 * Math.abs(found.perfect().value()) + 1e-6;
      assertThat(then.gainQuantiles()[10])
          .isCloseTo(TIMES * found.gainQuantiles()[10], within(rounding * TIMES));
      assertThat(then.perfect().value())
          .isCloseTo(TIMES * found.perfect().value(), within(rounding * TIMES));
      assertThat(then.chanceOfUnbearableLoss()).isEqualTo(found.chanceOfUnbearableLoss());
      assertThat(then.sureGain().mean())
          .isCloseTo(TIMES * found.sureGain().mean(), within(rounding * TIMES));
      for (int i = 0; i < farm.paddocks().size(); i++) {
        assertThat(then.paddock(i).verdict()).isEqualTo(found.paddock(i).verdict());
        assertThat(then.paddock(i).sure()).isEqualTo(found.paddock(i).sure());
        seen.add(found.paddock(i).verdict());
      }
    }
    assertThat(seen).hasSizeGreaterThan(2);
  }
}
