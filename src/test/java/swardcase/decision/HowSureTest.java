package swardcase.decision;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.EnumSet;
import java.util.Set;
import org.junit.jupiter.api.Test;
import swardcase.draws.Farms;
import swardcase.draws.Spread;
import swardcase.outcome.Outcome;
import swardcase.outcome.OutcomeFunction;

class HowSureTest {

  private static final Farms FARM = Farms.of("mixed-farm");
  private static final HowSure FOUND = FARM.howSure(1, 400);

  @Test
  void verdict_overTwentySeeds_neverTurnsIntoAnotherCall() {
    for (int i = 0; i < FARM.plan().paddocks(); i++) {
      assertThat(FOUND.paddock(i).verdict()).isNotNull();
    }
    @SuppressWarnings({"unchecked", "rawtypes"})
    Set<Verdict>[] called = new Set[FARM.plan().paddocks()];
    for (int seed = 1; seed <= 20; seed++) {
      HowSure found = FARM.howSure(seed, 60);
      for (int i = 0; i < called.length; i++) {
        called[i] = called[i] == null ? EnumSet.noneOf(Verdict.class) : called[i];
        Verdict verdict = found.paddock(i).verdict();
        if (verdict != Verdict.TOO_CLOSE) {
          called[i].add(verdict);
        }
      }
    }
    for (int i = 0; i < called.length; i++) {
      assertThat(called[i]).as("calls for paddock %s", i).hasSizeLessThanOrEqualTo(1);
    }
  }

  @Test
  void values_ofFindingOut_liveBetweenNothingAndThePerfect() {
    double perfect = FOUND.perfect().value();
    assertThat(FOUND.unknowns()).hasSizeGreaterThan(50);
    for (Unknown unknown : FOUND.unknowns()) {
      assertThat(unknown.value().value()).as(unknown.name()).isBetween(0.0, perfect + 1e-9);
      assertThat(unknown.varianceShare()).isBetween(0.0, 1.0);
    }
    for (int i = 0; i < FARM.plan().paddocks(); i++) {
      PaddockFindings paddock = FOUND.paddock(i);
      double most = paddock.perfect().value() + 1e-9;
      assertThat(paddock.leafTest().value()).isBetween(0.0, most);
      for (Purchase plants : paddock.plants()) {
        assertThat(plants.value()).isBetween(0.0, most);
      }
      assertThat(paddock.courses().stream().mapToDouble(CourseFindings::expectedRegret).min())
          .hasValueCloseTo(paddock.perfect().value(), within(1e-6));
    }
  }

  @Test
  void regret_ofThePlan_isNoLessThanThePerfectIsWorth() {
    assertThat(FOUND.expectedRegretOfPlan()).isGreaterThanOrEqualTo(FOUND.perfect().value() - 1e-6);
    assertThat(FOUND.expectedRegretOfKeeping() - FOUND.expectedRegretOfPlan())
        .isCloseTo(FOUND.npv().mean(), within(1e-6));
  }

  @Test
  void certainty_byRisingTolerance_risesToTheMean() {
    double before = Double.NEGATIVE_INFINITY;
    for (Certainty certainty : FOUND.certainty()) {
      assertThat(certainty.worth()).isGreaterThan(before);
      before = certainty.worth();
    }
    assertThat(before).isCloseTo(FOUND.npv().mean(), within(1e-6));
  }

  /** Independent: the outcome function itself at the value found. */
  @Test
  void breakEven_putBackIntoThePlan_leavesNoGain() {
    OutcomeFunction run = FARM.model().newRun();
    Outcome with = FARM.model().newOutcome();
    Outcome without = FARM.model().newOutcome();
    int found = 0;
    for (BreakEvenValue value : FOUND.breakEvens()) {
      if (value.value().isEmpty()) {
        continue;
      }
      double[] x = FARM.model().inputs().likely();
      x[FARM.model().inputs().all().indexOf(value.input())] = value.value().getAsDouble();
      run.set(x);
      run.evaluate(FARM.plan(), with);
      run.evaluate(
          value.paddock() < 0
              ? FARM.model().keepAll()
              : FARM.plan().with(value.paddock(), FARM.model().keep(), 0),
          without);
      assertThat(with.npv() - without.npv())
          .as(value.input().name())
          .isCloseTo(0, within(Math.max(1, Math.abs(value.gainAtLikely()) * 1e-3)));
      found++;
    }
    assertThat(found).isPositive();
  }

  @Test
  void spread_ofThePlan_keepsItsOrderAndASmallError() {
    Spread npv = FOUND.npv();
    assertThat(npv.low()).isLessThan(npv.median());
    assertThat(npv.median()).isLessThan(npv.high());
    // A fifth of the usual draws; the usual ones are held to 2 % below.
    assertThat(npv.standardError()).isLessThan(0.05 * npv.standardDeviation());
    assertThat(FOUND.annuity().median()).isLessThan(npv.median());
  }

  @Test
  void standardError_withTheUsualDraws_isBelowTwoPerCentOfTheSpread() {
    Spread npv = FARM.howSure(HowSure.USUAL_SEED, HowSure.USUAL_DRAWS).npv();
    assertThat(npv.standardError()).isLessThan(0.02 * npv.standardDeviation());
  }

  @Test
  void of_drawsThatDoNotFillTheBlocks_areRefused() {
    assertThatThrownBy(() -> FARM.howSure(1, 30))
        .hasMessage("draws must be a multiple of 20, but was 30");
  }
}
