package swardcase.money;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

/** Payback, running balance, benefit-cost ratio and loan payment. */
class CashFlowTest {

  /** Flows of numpy-financial; results worked separately. */
  private static final double[] EXAMPLE = Flows.parse("-40000 5000 8000 12000 30000");

  @Test
  void discountedYears_neverPaidOrNeverOwed_areEmptyAndZero() {
    assertThat(Payback.discountedYears(0.5, EXAMPLE)).isEmpty();
    assertThat(Payback.discountedYears(0.08, Flows.parse("0 5 5"))).hasValue(0);
  }

  /** Arithmetic without discounting: what was owed is paid to the last unit, and no more. */
  @Test
  void paidBack_exactlyAtTheEnd_countsAsPaid() {
    double[] flows = Flows.parse("-100 60 40");
    assertThat(Payback.discountedYears(0, flows)).hasValue(2);
    assertThat(RunningBalance.yearOutOfDebt(0, flows)).hasValue(2);
    assertThat(RunningBalance.yearOutOfDebt(0, Flows.parse("-100 100 0 0"))).hasValue(1);
    assertThat(Payback.discountedYears(0, Flows.parse("-100 100 0 0"))).hasValue(1);
  }

  /** Arithmetic without discounting: 100 is owed from year 1 and covered halfway through year 3. */
  @Test
  void discountedYears_outlayLater_countFromNow() {
    assertThat(Payback.discountedYears(0, Flows.parse("0 -100 60 80")).orElseThrow())
        .isEqualTo(2.5);
  }

  /** Arithmetic: paid back at 1.5, then 200 more are spent and covered a quarter into year 5. */
  @Test
  void discountedYears_secondOutlay_waitForBoth() {
    assertThat(Payback.discountedYears(0, Flows.parse("-100 50 100 -200 100 200")).orElseThrow())
        .isEqualTo(4.25);
  }

  @Test
  void balances_workedFlows_areMet() {
    assertThat(RunningBalance.of(0.08, EXAMPLE))
        .usingComparatorWithPrecision(0.005)
        .containsExactly(-40000, -38200, -33256, -23916.48, 4170.20);
    assertThat(RunningBalance.peakDebt(0.08, EXAMPLE)).isEqualTo(40000);
    assertThat(RunningBalance.yearOutOfDebt(0.08, EXAMPLE)).hasValue(4);
  }

  /** Arithmetic: -100, -110 - 50 = -160, -176 + 300 = 124, 136.4 - 200 = -63.6, 30.04. */
  @Test
  void balances_debtTwice_peakAndYearLookAtBoth() {
    double[] flows = Flows.parse("-100 -50 300 -200 100");
    assertThat(RunningBalance.peakDebt(0.10, flows)).isCloseTo(160, within(1e-9));
    assertThat(RunningBalance.yearOutOfDebt(0.10, flows)).hasValue(4);
    assertThat(RunningBalance.yearOutOfDebt(0.10, Flows.parse("-100 -50 300 -200"))).isEmpty();
    assertThat(RunningBalance.yearOutOfDebt(0.10, Flows.parse("1 2"))).hasValue(0);
    assertThat(RunningBalance.peakDebt(0.10, Flows.parse("1 2"))).isZero();
  }

  /** Identity: the last balance is NPV (1 + r)^n. */
  @Test
  void balances_anyFlows_endAtTheCompoundedValue() {
    SplittableRandom random = new SplittableRandom(10);
    for (int i = 0; i < 500; i++) {
      double[] flows = random.doubles(random.nextLong(1, 25), -1e4, 1e4).toArray();
      double rate = random.nextDouble(0.3);
      double[] balances = RunningBalance.of(rate, flows);
      double end = NetPresentValue.of(rate, flows) * Math.pow(1 + rate, flows.length - 1);
      assertThat(balances[flows.length - 1]).isCloseTo(end, within(1e-6));
      double lowest = 0;
      for (double balance : balances) {
        lowest = Math.min(lowest, balance);
      }
      assertThat(RunningBalance.peakDebt(rate, flows)).isEqualTo(0 - lowest);
    }
  }

  @Test
  void discountedYears_outlayThenInflows_isThereExactlyIfTheValueIsNotNegative() {
    SplittableRandom random = new SplittableRandom(12);
    for (int i = 0; i < 500; i++) {
      double[] flows = Flows.outlayThenInflows(random);
      double rate = random.nextDouble(0.3);
      boolean pays = NetPresentValue.of(rate, flows) >= 0;
      assertThat(Payback.discountedYears(rate, flows).isPresent()).isEqualTo(pays);
      assertThat(RunningBalance.yearOutOfDebt(rate, flows).isPresent()).isEqualTo(pays);
    }
  }

  @Test
  void ratio_workedFlows_isWorkedValueAndEmptyWithoutCosts() {
    double[] benefits = EXAMPLE.clone();
    benefits[0] = 0;
    assertThat(BenefitCost.ratio(0.08, benefits, new double[] {40000}).orElseThrow())
        .isCloseTo(1.0766306, within(5e-8));
    assertThat(BenefitCost.ratio(0.08, benefits, new double[] {0})).isEmpty();
  }

  @Test
  void yearly_anyLoan_isClearedByItsPayments() {
    SplittableRandom random = new SplittableRandom(14);
    for (int i = 0; i < 200; i++) {
      double[] flows = new double[random.nextInt(2, 40)];
      double rate = i % 10 == 0 ? 0 : random.nextDouble(0.2);
      Arrays.fill(flows, NetPresentValue.annuity(5000, rate, flows.length - 1));
      flows[0] = -5000;
      assertThat(RunningBalance.of(rate, flows)[flows.length - 1]).isCloseTo(0, within(1e-6));
    }
  }
}
