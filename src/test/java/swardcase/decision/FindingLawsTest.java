package swardcase.decision;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.EnumSet;
import java.util.Set;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import swardcase.OtherCurrency;
import swardcase.RandomFarms;
import swardcase.draws.Farms;
import swardcase.farm.Farm;
import swardcase.outcome.FarmModel;

/** What must hold for the findings of any farm. */
class FindingLawsTest {

  private static final int FARMS = 24;
  private static final int DRAWS = 40;
  private static final double TIMES = 4;

  private interface Law {
    void check(Farm farm);
  }

  private static void forAnyFarm(long seed, Law law) {
    for (int k = 0; k < FARMS; k++) {
      SplittableRandom random = new SplittableRandom(1000 * seed + k);
      Farm any = RandomFarms.any(random, 1 + random.nextInt(3));
      law.check(any.withFinance(any.finance().withHorizonYears(1 + random.nextInt(5))));
    }
  }

  private static HowSure howSure(Farm farm) {
    return Farms.of(new FarmModel(farm, RandomFarms.TABLES)).howSure(1, DRAWS);
  }

  @Test
  void values_ofFindingOut_liveBetweenNothingAndThePerfect() {
    forAnyFarm(
        1,
        farm -> {
          HowSure found = howSure(farm);
          double perfect = found.perfect().value();
          for (Unknown unknown : found.unknowns()) {
            assertThat(unknown.value().value())
                .as(unknown.name())
                .isBetween(0.0, perfect * (1 + 1e-9) + 1e-9);
            assertThat(unknown.varianceShare()).isBetween(0.0, 1.0);
          }
          for (int i = 0; i < found.plan().paddocks(); i++) {
            PaddockFindings paddock = found.paddock(i);
            double most = paddock.perfect().value() * (1 + 1e-9) + 1e-9;
            assertThat(paddock.leafTest().value()).isBetween(0.0, most);
            for (Purchase plants : paddock.plants()) {
              assertThat(plants.value()).isBetween(0.0, most);
            }
          }
        });
  }

  @Test
  void perfectInformation_isWorthTheLeastExpectedRegret() {
    forAnyFarm(
        2,
        farm -> {
          HowSure found = howSure(farm);
          double rounding = 1e-9 * Math.abs(found.perfect().value()) + 1e-6;
          for (int i = 0; i < found.plan().paddocks(); i++) {
            PaddockFindings paddock = found.paddock(i);
            assertThat(paddock.courses().stream().mapToDouble(CourseFindings::expectedRegret).min())
                .hasValueCloseTo(paddock.perfect().value(), within(rounding));
            assertThat(paddock.perfect().value())
                .isLessThanOrEqualTo(found.perfect().value() + rounding);
          }
          assertThat(found.expectedRegretOfPlan())
              .isGreaterThanOrEqualTo(found.perfect().value() - rounding);
          assertThat(found.expectedRegretOfKeeping() - found.expectedRegretOfPlan())
              .isCloseTo(found.npv().mean(), within(rounding));
        });
  }

  @Test
  void findings_inAnotherCurrency_areTheSameInIt() {
    Set<Verdict> seen = EnumSet.noneOf(Verdict.class);
    forAnyFarm(
        3,
        farm -> {
          Farms here = Farms.of(new FarmModel(farm, RandomFarms.TABLES));
          FarmModel other = new OtherCurrency(TIMES).model(farm);
          HowSure found = here.howSure(1, DRAWS);
          HowSure then = HowSure.of(other, here.plan(), here.options(), 1, DRAWS, share -> {});
          double rounding = 1e-9 * Math.abs(found.perfect().value()) + 1e-6;
          assertThat(then.npv().median())
              .isCloseTo(TIMES * found.npv().median(), within(rounding * TIMES));
          assertThat(then.perfect().value())
              .isCloseTo(TIMES * found.perfect().value(), within(rounding * TIMES));
          assertThat(then.chanceOfUnbearableLoss()).isEqualTo(found.chanceOfUnbearableLoss());
          for (int i = 0; i < found.plan().paddocks(); i++) {
            assertThat(then.paddock(i).verdict()).isEqualTo(found.paddock(i).verdict());
            seen.add(found.paddock(i).verdict());
          }
        });
    assertThat(seen).hasSizeGreaterThan(2);
  }
}
