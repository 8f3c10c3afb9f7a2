package swardcase.feed;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

/** Years whose dry feed comes to 1,900 kg, with a share q of an error left after each. */
class RepeatingYearTest {

  private static final double REPEATS_AT = 1900;

  /** Ends a year in which each kg of dry feed saves 2 MJ, and 3,000 MJ are bought without any. */
  private static void end(RepeatingYear year, double green, double q) {
    double dry = year.dryKg();
    double bought = 6000 - 2 * dry;
    double uneaten = 100 + 0.5 * dry;
    year.end(green, REPEATS_AT + q * (dry - REPEATS_AT), q, bought, -2, uneaten, 0.5);
  }

  /** By hand: 2,000 kg end at 1,906, so that 100 too much was there: the second year repeats. */
  @Test
  void dryFeed_whoseErrorShrinksInProportion_repeatsInTheSecondYear() {
    RepeatingYear year = new RepeatingYear();
    year.begin(0, 2000);
    end(year, 0, 0.06);
    assertThat(year.repeats()).isFalse();
    assertThat(year.dryKg()).isCloseTo(1900, within(1e-9));
    end(year, 0, 0.06);
    assertThat(year.repeats()).isTrue();
    assertThat(year.yearsToRepeat()).isEqualTo(2);
    assertThat(year.boughtMjPerHa()).isCloseTo(2200, within(1e-9));
    assertThat(year.carriedInKgDmPerHa()).isCloseTo(1900, within(1e-9));
  }

  /** 0.2 kg too much, by Newton's root, are carried: 0.4 MJ more bought, 0.1 kg less uneaten. */
  @Test
  void oneOfVeryManyYears_closeToTheRoot_isCarriedThere() {
    RepeatingYear from = new RepeatingYear();
    from.begin(0, REPEATS_AT + 0.2);
    RepeatingYear year = new RepeatingYear();
    year.beginNear(from);
    end(year, 0, 0.06);
    assertThat(year.repeats()).isTrue();
    assertThat(year.yearsToRepeat()).isEqualTo(1);
    assertThat(year.boughtMjPerHa()).isCloseTo(2200, within(1e-9));
    assertThat(year.uneatenKgDmPerHa()).isCloseTo(1050, within(1e-9));
  }

  @Test
  void oneOfVeryManyYears_fromFarther_isRunAgain() {
    RepeatingYear from = new RepeatingYear();
    from.begin(0, REPEATS_AT + 0.31);
    RepeatingYear year = new RepeatingYear();
    year.beginNear(from);
    end(year, 0, 0.06);
    assertThat(year.repeats()).isFalse();
    assertThat(year.dryKg()).isCloseTo(1900, within(1e-9));
  }

  /** Green feed is not carried: it must end within a gram of where it began. */
  @Test
  void oneOfVeryManyYears_whoseGreenMoved_isRunAgainFromThere() {
    RepeatingYear from = new RepeatingYear();
    from.begin(5, REPEATS_AT);
    RepeatingYear year = new RepeatingYear();
    year.beginNear(from);
    end(year, 5.002, 0.06);
    assertThat(year.repeats()).isFalse();
    assertThat(year.greenKg()).isEqualTo(5.002);
    end(year, 5.0025, 0.06);
    assertThat(year.repeats()).isTrue();
  }

  /** A printed year is not carried, however close. */
  @Test
  void printedYear_closeToTheRoot_isRunAgain() {
    RepeatingYear from = new RepeatingYear();
    from.begin(0, REPEATS_AT + 0.2);
    RepeatingYear year = new RepeatingYear();
    year.beginFrom(from);
    end(year, 0, 0.06);
    assertThat(year.repeats()).isFalse();
    end(year, 0, 0.06);
    assertThat(year.repeats()).isTrue();
  }

  /** 0.5 MJ bought, and 1 MJ less for what is carried: nothing is bought, and nothing sold. */
  @Test
  void carried_belowNothing_isNothing() {
    RepeatingYear from = new RepeatingYear();
    from.begin(0, 1000);
    RepeatingYear year = new RepeatingYear();
    year.beginNear(from);
    year.end(0, 1000.25, 0, 0.5, -4, 0.1, -1);
    assertThat(year.repeats()).isTrue();
    assertThat(year.boughtMjPerHa()).isZero();
    assertThat(year.uneatenKgDmPerHa()).isZero();
  }

  /** Of dry feed that hardly decays no root is trusted: the next year begins where this ended. */
  @Test
  void dryFeed_thatHardlyDecays_goesOnPlainly() {
    RepeatingYear year = new RepeatingYear();
    year.begin(0, 2000);
    end(year, 0, 0.95);
    assertThat(year.dryKg()).isCloseTo(1995, within(1e-9));
    while (year.goesOn()) {
      end(year, 0, 0.95);
    }
    assertThat(year.yearsToRepeat()).isEqualTo(100);
    assertThat(year.dryKg()).isCloseTo(1900 + 100 * Math.pow(0.95, 100), within(1e-9));
  }

  /** A slope told as 0.85 that is 0 sends Newton's method from side to side of 1,900 kg. */
  @Test
  void dryFeed_thatGoesRoundAKink_goesOnPlainlyAfterTwentyYears() {
    RepeatingYear year = new RepeatingYear();
    year.begin(0, 2000);
    while (year.goesOn()) {
      year.end(0, REPEATS_AT, 0.85, 0, 0, 0, 0);
    }
    assertThat(year.repeats()).isTrue();
    assertThat(year.yearsToRepeat()).isEqualTo(21);
    assertThat(year.dryKg()).isEqualTo(REPEATS_AT);
  }

  @Test
  void dryFeed_whoseRootLiesBelowNothing_beginsWithNothing() {
    RepeatingYear year = new RepeatingYear();
    year.begin(0, 10);
    year.end(0, 4, 0.5, 0, 0, 0, 0);
    assertThat(year.dryKg()).isZero();
  }
}
