package swardcase.feed;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

class YearPoolTest {

  private static final double TOLERANCE = 1e-9;

  private static int yearsToRepeat(YearPool pool, double q, double end) {
    int years = 0;
    boolean repeats = false;
    while (!repeats && years < 100) {
      pool.kg = end + q * (pool.kg - end);
      years++;
      repeats = pool.repeats(TOLERANCE);
      if (!repeats) {
        pool.goOn();
      }
    }
    return years;
  }

  /** By hand: 2,000 ends at 1,906; q is learnt from the second year, and the third repeats. */
  @Test
  void pool_whoseErrorShrinksInProportion_repeatsInTheThirdYear() {
    YearPool pool = new YearPool();
    pool.begin(2000, 0);
    assertThat(yearsToRepeat(pool, 0.06, 1900)).isEqualTo(3);
    assertThat(pool.kg).isCloseTo(1900, within(1e-9));
  }

  /** A pool that begins where another ended knows what a year leaves of an error. */
  @Test
  void pool_fromAnotherOfTheSameKind_repeatsInTheSecondYear() {
    YearPool usual = new YearPool();
    usual.begin(2000, 0);
    yearsToRepeat(usual, 0.06, 1900);
    YearPool pool = new YearPool();
    pool.beginFrom(usual);
    assertThat(yearsToRepeat(pool, 0.06, 1500)).isEqualTo(2);
    assertThat(pool.kg).isCloseTo(1500, within(1e-9));
  }

  /** Of a share of 0.9 nothing is trusted: the pool goes on plainly, as 0.9^n does. */
  @Test
  void pool_thatForgetsSlowly_isNotExtrapolated() {
    YearPool pool = new YearPool();
    pool.begin(2000, 0);
    assertThat(yearsToRepeat(pool, 0.9, 1900)).isEqualTo(100);
    assertThat(pool.kg).isCloseTo(1900 + 100 * Math.pow(0.9, 100), within(1e-9));
  }

  /** Two starts half a gram apart: a year ends 0.4 g on, and 0.1 is still what is left of it. */
  @Test
  void pool_whoseStartsHardlyDiffer_learnsNothingOfThem() {
    YearPool pool = new YearPool();
    pool.begin(1000, 0.1);
    pool.kg += 5e-4;
    pool.goOn();
    double second = pool.kg;
    assertThat(second).isCloseTo(1000 + 5e-4 / 0.9, within(1e-10));
    pool.kg += 4e-4;
    pool.goOn();
    assertThat(pool.kg).isCloseTo(second + 4e-4 / 0.9, within(1e-10));
  }

  /** Starts 20 g apart, of which a year leaves a quarter: that is learnt, and the error is gone. */
  @Test
  void pool_whoseStartsDifferByGrams_learnsWhatAYearLeaves() {
    YearPool pool = new YearPool();
    pool.begin(1000, 0);
    pool.kg = 1000.015; // of 20 g to 1,000.02
    pool.goOn();
    pool.kg = 1000.02 + 0.25 * (pool.kg - 1000.02);
    pool.goOn();
    assertThat(pool.kg).isCloseTo(1000.02, within(1e-9));
  }

  @Test
  void repeats_aYearThatEndsAtTheTolerance_isTrue() {
    YearPool pool = new YearPool();
    pool.begin(0, 0);
    pool.kg = 0.5;
    assertThat(pool.repeats(0.5)).isTrue();
    assertThat(pool.repeats(0.4999)).isFalse();
  }
}
