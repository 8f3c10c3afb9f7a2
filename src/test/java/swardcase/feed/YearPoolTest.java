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
}
