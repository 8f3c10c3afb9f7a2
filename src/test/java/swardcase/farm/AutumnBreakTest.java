package swardcase.farm;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.time.Month;
import java.util.Arrays;
import java.util.List;
import java.util.SplittableRandom;
import java.util.stream.DoubleStream;
import java.util.stream.Stream;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;
import swardcase.tables.District;
import swardcase.tables.Tables;
import swardcase.tables.TablesLoader;

class AutumnBreakTest {

  private static final Tables TABLES = TablesLoader.standard().load();

  /** Katanning, kg DM/ha/day, January to December: DPIRD, annual pasture table 2. */
  private static final List<Double> KATANNING =
      List.of(0d, 0d, 0d, 1d, 11d, 15d, 16d, 28d, 51d, 45d, 15d, 0d);

  private static final List<Month> WINTER = List.of(Month.JUNE, Month.JULY, Month.AUGUST);
  private static final AutumnBreak BREAK = new AutumnBreak(KATANNING, WINTER);
  private static final Offset<Double> ROUNDING = within(1e-9);

  /** May begins half-month 8; from there to the end of August there are eight. */
  @Test
  void break_ofKatanning_isTheFirstOfMay() {
    assertThat(BREAK.halfMonth()).isEqualTo(8);
    assertThat(BREAK.toEndOfWinter()).isEqualTo(8);
  }

  @Test
  void growth_atTheUsualBreak_isThatOfTheMonths() {
    double[] usual = BREAK.growth(KATANNING, 0);
    for (int p = 0; p < HalfMonths.COUNT; p++) {
      assertThat(usual[p]).isEqualTo(KATANNING.get(p / 2));
    }
  }

  /**
   * By hand: two half-months later, eight half-months in six, so that one takes the mean of 4/3
   * usual ones. June's first: May; its second: 2/3 May and 2/3 June, of 4/3; July's first: June;
   * July's second: July; August's first: 2/3 July and 2/3 August, of 4/3; its second: August.
   */
  @Test
  void growth_twoHalfMonthsLater_isSqueezedIntoWhatIsLeftOfWinter() {
    double[] late = BREAK.growth(KATANNING, 2);
    assertThat(Arrays.copyOfRange(late, 6, 17))
        .containsExactly(new double[] {1, 1, 1, 1, 11, 13, 15, 16, 22, 28, 51}, ROUNDING);
  }

  /** By hand: half a half-month later, the first one is half April's and half May's. */
  @Test
  void growth_partOfAHalfMonthLater_isTheMeanOverTheHalfMonth() {
    double[] late = BREAK.growth(KATANNING, 0.5);
    assertThat(late[8]).isCloseTo((1 + 11) / 2.0, ROUNDING);
    double[] early = BREAK.growth(KATANNING, -0.5);
    assertThat(early[7]).isCloseTo((1 + 11) / 2.0, ROUNDING);
    assertThat(early[6]).isEqualTo(1);
  }

  private static double upTo(double[] growth, int from, int count) {
    double sum = 0;
    for (int k = 0; k < count; k++) {
      sum += growth[Math.floorMod(from + k, growth.length)];
    }
    return sum;
  }

  @Test
  void growth_withALaterBreak_isNeverMoreUpToAnyDayBeforeTheEndOfWinter() {
    SplittableRandom random = new SplittableRandom(31);
    for (District district : TABLES.districts().values()) {
      List<Double> months = district.growthKgDmPerHaPerDay();
      AutumnBreak usual = new AutumnBreak(months, district.winterMonths());
      for (int round = 0; round < 50; round++) {
        double sooner = random.nextDouble(-6, 6);
        double later = sooner + random.nextDouble(0, 3);
        double[] more = usual.growth(months, sooner);
        double[] less = usual.growth(months, later);
        for (int count = 1; count <= usual.toEndOfWinter() + 8; count++) {
          assertThat(upTo(less, usual.halfMonth() - 8, count))
              .as("%s, %s after %s, %s half-months", district.name(), later, sooner, count)
              .isLessThanOrEqualTo(upTo(more, usual.halfMonth() - 8, count) + 1e-9);
        }
        // Spring and summer stay as they are.
        for (int k = usual.toEndOfWinter(); k < HalfMonths.COUNT - 8; k++) {
          int p = Math.floorMod(usual.halfMonth() + k, HalfMonths.COUNT);
          assertThat(less[p]).isEqualTo(months.get(p / 2));
        }
      }
    }
  }

  /** A small move is a small change: nothing jumps where a break passes into a half-month. */
  @Test
  void growth_asTheBreakMoves_changesWithoutJumps() {
    double[] last = BREAK.growth(KATANNING, -6);
    for (int step = 1; step <= 1200; step++) {
      double[] next = BREAK.growth(KATANNING, -6 + step / 100.0);
      for (int p = 0; p < HalfMonths.COUNT; p++) {
        assertThat(Math.abs(next[p] - last[p])).isLessThan(0.7);
      }
      last = next;
    }
  }

  /** A share or quality that is the same all year stays so. */
  @Test
  void move_ofWhatDoesNotChange_changesNothing() {
    double[] usual = new double[HalfMonths.COUNT];
    Arrays.fill(usual, 0.4);
    double[] moved = new double[HalfMonths.COUNT];
    for (double later : new double[] {-9, -5.3, -1, 0, 0.2, 3.7, 7, 20}) {
      BREAK.move(usual, later, moved);
      assertThat(moved).containsExactly(usual, within(1e-12));
    }
  }

  @Test
  void move_beyondTheEndOfWinter_leavesAHalfMonthOfIt() {
    assertThat(BREAK.growth(KATANNING, 20)).containsExactly(BREAK.growth(KATANNING, 7), ROUNDING);
    assertThat(BREAK.growth(KATANNING, 7)[15]).isCloseTo((11 + 15 + 16 + 28) / 4.0, ROUNDING);
    assertThatThrownBy(() -> BREAK.growth(KATANNING, Double.NaN))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("half-months by which the break moves");
  }

  @Test
  void break_halfAYearLater_isHalfAYearLater() {
    List<Double> turned =
        Stream.concat(KATANNING.subList(6, 12).stream(), KATANNING.subList(0, 6).stream()).toList();
    AutumnBreak north =
        new AutumnBreak(turned, List.of(Month.JANUARY, Month.FEBRUARY, Month.DECEMBER));
    assertThat(north.halfMonth()).isEqualTo(20);
    assertThat(north.toEndOfWinter()).isEqualTo(8);
    double[] there = north.growth(turned, 1.3);
    double[] here = BREAK.growth(KATANNING, 1.3);
    for (int p = 0; p < HalfMonths.COUNT; p++) {
      assertThat(there[(p + 12) % HalfMonths.COUNT]).isCloseTo(here[p], ROUNDING);
    }
  }

  /** Winter all year, or a year without growth: nothing is out of bounds. */
  @Test
  void break_ofOddYears_isSomewhereInThem() {
    AutumnBreak allWinter = new AutumnBreak(KATANNING, List.of(Month.values()));
    assertThat(allWinter.toEndOfWinter()).isEqualTo(HalfMonths.COUNT);
    assertThat(DoubleStream.of(allWinter.growth(KATANNING, 5)).allMatch(g -> g >= 0)).isTrue();
    AutumnBreak bare = new AutumnBreak(java.util.Collections.nCopies(12, 0d), WINTER);
    assertThat(bare.halfMonth()).isEqualTo(10);
    assertThat(bare.growth(KATANNING, -3)).isNotEmpty();
  }

  /** The districts' green months are those of their growth. */
  @Test
  void greenMonths_ofEveryDistrict_areThoseAboveATwentiethOfTheBest() {
    for (District district : TABLES.districts().values()) {
      double best = district.growthKgDmPerHaPerDay().stream().max(Double::compare).orElseThrow();
      long green = district.growthKgDmPerHaPerDay().stream().filter(g -> g > best / 20).count();
      assertThat(district.greenMonths().orElseThrow()).as(district.name()).isEqualTo((int) green);
    }
  }
}
