package swardcase.reproduction;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import swardcase.farm.HalfMonths;

/** The walk by strides against the same walk day by day, as {@link JoiningWalk} tells it. */
class JoiningWalkTest {

  private static final int WALKS = 400;

  @Test
  void multipliers_byStrides_areThoseOfTheWalkByDays() {
    SplittableRandom random = new SplittableRandom(3);
    for (int i = 0; i < WALKS; i++) {
      int places = random.nextBoolean() ? HalfMonths.COUNT : HalfMonths.DAYS;
      double[] effect = random.doubles(places, 0, 0.9).toArray();
      for (int p = 1; p < places; p++) {
        effect[p] = random.nextInt(3) == 0 ? effect[p - 1] : effect[p];
      }
      int joiningDay = random.nextInt(HalfMonths.DAYS);
      double weeks = random.nextInt(3) == 0 ? random.nextInt(1, 10) : random.nextDouble(0.2, 10);
      double ramp = random.nextDouble(0.5, 30);
      double lag = random.nextInt(4) == 0 ? 17 : random.nextDouble(0, 30);
      double halfLife = random.nextDouble(3, 20);
      JoiningWalk walk = new JoiningWalk(joiningDay, weeks, places);
      walk.set(ramp, lag, halfLife);
      double[] multipliers = new double[JoiningWalk.cycles(weeks)];
      walk.multipliers(effect, multipliers);
      assertThat(multipliers)
          .as("walk %s", i)
          .containsExactly(byDays(effect, joiningDay, weeks, ramp, lag, halfLife), within(1e-12));
    }
  }

  /** Strides on unmarked places are walked once; marked places may then change. */
  @Test
  void multipliersFrom_theFirstMarkedPlace_areThoseOfTheWholeWalk() {
    SplittableRandom random = new SplittableRandom(6);
    int begunEarly = 0;
    for (int i = 0; i < WALKS; i++) {
      int joiningDay = random.nextInt(HalfMonths.DAYS);
      double weeks = random.nextDouble(0.2, 10);
      boolean[] marked = new boolean[HalfMonths.COUNT];
      for (int day = joiningDay - random.nextInt(100); day < joiningDay + 7 * weeks; day++) {
        marked[HalfMonths.ofDay(day)] = true;
      }
      JoiningWalk walk = new JoiningWalk(joiningDay, weeks, HalfMonths.COUNT);
      walk.set(random.nextDouble(0.5, 30), random.nextDouble(0, 30), random.nextDouble(3, 20));
      int first = walk.stridesWithout(marked);
      double[] effect = random.doubles(HalfMonths.COUNT, 0, 0.9).toArray();
      double carried = walk.carriedAfter(first, effect);
      for (int p = 0; p < effect.length; p++) {
        effect[p] = marked[p] ? random.nextDouble() : effect[p];
      }
      double[] whole = new double[JoiningWalk.cycles(weeks)];
      double[] parted = new double[whole.length];
      walk.multipliers(effect, whole);
      if (first > 0) {
        begunEarly++;
        walk.multipliersFrom(first, carried, effect, parted);
        assertThat(parted).as("walk %s", i).isEqualTo(whole);
      }
    }
    assertThat(begunEarly).isGreaterThan(WALKS / 2);
  }

  @Test
  void stridesWithout_anyMarkedPlace_endBeforeJoining() {
    JoiningWalk walk = new JoiningWalk(120, 6, HalfMonths.COUNT);
    walk.set(14, 17, 7);
    boolean[] marked = new boolean[HalfMonths.COUNT];
    double[] effect = new SplittableRandom(4).doubles(HalfMonths.COUNT, 0, 0.9).toArray();
    double[] whole = new double[3];
    double[] parted = new double[3];
    walk.multipliers(effect, whole);
    int first = walk.stridesWithout(marked);
    walk.multipliersFrom(first, walk.carriedAfter(first, effect), effect, parted);
    assertThat(parted).isEqualTo(whole);
    marked[HalfMonths.ofDay(0)] = true; // the day the walk starts on
    assertThat(walk.stridesWithout(marked)).isZero();
  }

  @Test
  void walk_setAgain_forgetsTheLastNumbers() {
    double[] effect = new SplittableRandom(4).doubles(HalfMonths.COUNT, 0, 0.9).toArray();
    double[] first = new double[3];
    double[] again = new double[3];
    JoiningWalk walk = new JoiningWalk(120, 6, HalfMonths.COUNT);
    walk.set(14, 17, 7);
    walk.multipliers(effect, first);
    walk.set(3, 29.5, 12);
    walk.multipliers(effect, again);
    assertThat(again).isNotEqualTo(first);
    walk.set(14, 17, 7);
    walk.multipliers(effect, again);
    assertThat(again).isEqualTo(first);
  }

  @Test
  void isOf_anotherDayOrOtherPlaces_isFalse() {
    JoiningWalk walk = new JoiningWalk(30, 5, HalfMonths.COUNT);
    assertThat(walk.isOf(30, HalfMonths.COUNT)).isTrue();
    assertThat(walk.isOf(31, HalfMonths.COUNT)).isFalse();
    assertThat(walk.isOf(30, HalfMonths.DAYS)).isFalse();
  }

  private static double[] byDays(
      double[] effect, int joiningDay, double weeks, double ramp, double lag, double halfLife) {
    int days = (int) Math.ceil(7 * weeks - 1e-9);
    double[] sums = new double[JoiningWalk.cycles(weeks)];
    int[] counted = new int[sums.length];
    int start = joiningDay - JoiningWalk.RUN_UP_DAYS;
    double carried = of(effect, start);
    for (int date = start + 1; date < joiningDay + days; date++) {
      double target = of(effect, date);
      double shortFloor = target;
      for (int back = Math.max(start, date - (int) lag); back < date; back++) {
        shortFloor = Math.max(shortFloor, of(effect, back));
      }
      double longFloor = Math.max(shortFloor, of(effect, Math.max(start, date - (int) lag - 1)));
      double part = lag - Math.floor(lag);
      if (carried < target) {
        carried = Math.min(carried + target * Math.min(1, 1 / ramp), target);
      } else {
        carried = left(carried, longFloor, part / halfLife);
        carried = left(carried, shortFloor, (1 - part) / halfLife);
      }
      if (date >= joiningDay) {
        int cycle = (date - joiningDay) / (int) JoiningWalk.CYCLE_DAYS;
        sums[cycle] += 1 - carried;
        counted[cycle]++;
      }
    }
    double[] means = new double[sums.length];
    Arrays.setAll(means, cycle -> sums[cycle] / counted[cycle]);
    return means;
  }

  private static double left(double effect, double floor, double halfLives) {
    return effect <= floor ? effect : floor + (effect - floor) * Math.pow(2, -halfLives);
  }

  private static double of(double[] effect, int date) {
    int day = Math.floorMod(date, HalfMonths.DAYS);
    return effect[effect.length == HalfMonths.DAYS ? day : HalfMonths.ofDay(day)];
  }
}
