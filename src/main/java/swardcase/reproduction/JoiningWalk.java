package swardcase.reproduction;

import java.util.Arrays;
import java.util.function.IntUnaryOperator;
import java.util.stream.IntStream;
import swardcase.check.Check;
import swardcase.farm.HalfMonths;

/**
 * What a year of doses leaves of the chance of conceiving in each cycle of joining.
 *
 * <p>A walk by days, started {@value #RUN_UP_DAYS} days before joining at that day's full effect.
 * With target(t) = 1 - T(dose of day t) and e the effect carried:
 *
 * <ul>
 *   <li>building up: e rises by target / rampDays a day, to the target at most;
 *   <li>after the dose falls: nothing for {@code lagDays}, then the excess halves every {@code
 *       halfLifeDays}. The excess is over the strongest target of the last {@code lagDays} days, so
 *       that a higher dose on any day never leaves a weaker effect later.
 * </ul>
 *
 * <p>The multiplier of a cycle is the mean of 1 - e over its days of joining. After leaving for
 * good at an effect e, t days later e x 2^(-max(0, t - lag) / h) is left: with lag 17 and h 7 days,
 * 34 % after 28 days and 8 % after 42.
 *
 * <p>Lag and half-life are inferred: in McDonald, Anwar and Keogh 1994 (Proc. NZ Soc. Anim. Prod.
 * 54:231-234) ewes mated in the 17 days after leaving still failed in full, most held at the next
 * two cycles, and none were affected after six weeks on grass. The build-up follows Anwar, Keogh
 * and McDonald 1994 (same volume, 235-238), who found fewer ovulations after two weeks.
 *
 * <p>It is made ready for one joining, for many years of doses. Days on which target and floors
 * come from the same doses are one stride. Strides hang on the days without recovery alone, so they
 * are sorted once; a walk then takes each in one step, save for days on which an effect builds up
 * or the floor moves. In a stride of n days with excess x over a floor f, k = 2^(-1/h) kept a day,
 * the effect ends at f + x k^n and its sum is n f + x (k + ... + k^n).
 *
 * <p>A walk allocates nothing. For one thread.
 */
public final class JoiningWalk {

  /** Days between heats of a ewe. */
  public static final double CYCLE_DAYS = 17;

  /** Days before joining on which the walk starts. */
  static final int RUN_UP_DAYS = 120;

  private static final int CYCLE = (int) CYCLE_DAYS;
  private static final int RUN_UP = -1;
  private static final double[] NONE = {};
  private static final int LONGEST_STRIDE = 16;

  // Where each day of four years stands among 24 half-months and among 365 days.
  private static final int[] HALF_MONTH_OF = places(HalfMonths::ofDay);
  private static final int[] DAY_OF = places(day -> day % HalfMonths.DAYS);
  private static final int[] NEXT_HALF_MONTH = next(HALF_MONTH_OF);
  private static final int[] NEXT_DAY = next(DAY_OF);

  private final double[] fullEffect;
  private final int[] place;
  private final int[] next;
  private final int start;
  private final int joining;
  private final int end;
  private final int cycles;

  private double rise;
  private double keptInLastPart;
  private double keptInRest;
  private final double[] kept = new double[LONGEST_STRIDE + 1];
  private final double[] keptSum = new double[LONGEST_STRIDE + 1];

  private int strides;
  private final int[] days;
  private final int[] target;
  private final int[] longPlace;
  private final int[] cycleOf;
  private final int[] floorsFrom;
  private int[] floorPlace = new int[64];

  /**
   * A joining.
   *
   * @param joiningStartDayOfYear from 0, 1 January
   * @param joiningWeeks length of joining
   * @param places half-months (24) or days (365) that doses will be given by
   */
  public JoiningWalk(int joiningStartDayOfYear, double joiningWeeks, int places) {
    boolean byDay = places == HalfMonths.DAYS;
    fullEffect = new double[places];
    place = byDay ? DAY_OF : HALF_MONTH_OF;
    next = byDay ? NEXT_DAY : NEXT_HALF_MONTH;
    start = Math.floorMod(joiningStartDayOfYear - RUN_UP_DAYS, HalfMonths.DAYS);
    joining = start + RUN_UP_DAYS;
    end = joining + Math.max(1, (int) Math.ceil(7 * joiningWeeks - 1e-9));
    cycles = cycles(joiningWeeks);
    int most = end - start;
    days = new int[most];
    target = new int[most];
    longPlace = new int[most];
    cycleOf = new int[most + 1];
    floorsFrom = new int[most + 1];
  }

  /** Cycles started in a joining: 2 for 34 days, 3 for five weeks. */
  public static int cycles(double joiningWeeks) {
    return Math.max(1, (int) Math.ceil(7 * joiningWeeks / CYCLE_DAYS - 1e-9));
  }

  /**
   * Takes the numbers of recovery.
   *
   * @param rampDays days of grazing until the full effect
   * @param lagDays days without recovery; part days count
   * @param halfLifeDays days in which the effect then halves
   */
  public void set(double rampDays, double lagDays, double halfLifeDays) {
    int wholeLag = (int) Math.floor(lagDays);
    double partLag = lagDays - wholeLag;
    keptInLastPart = Math.pow(2, -partLag / halfLifeDays);
    keptInRest = Math.pow(2, -(1 - partLag) / halfLifeDays);
    rise = Math.min(1, 1 / rampDays);
    double keptInDay = keptInLastPart * keptInRest;
    kept[0] = 1;
    keptSum[0] = 0;
    for (int day = 1; day <= LONGEST_STRIDE; day++) {
      kept[day] = kept[day - 1] * keptInDay;
      keptSum[day] = keptSum[day - 1] + kept[day];
    }
    sortStrides(wholeLag);
  }

  private void sortStrides(int wholeLag) {
    strides = 0;
    int floors = 0;
    int date = start + 1;
    while (date < end) {
      int first = Math.max(start, date - wholeLag - 1);
      int shortFirst = Math.max(start, date - wholeLag);
      int cycle = date < joining ? RUN_UP : (date - joining) / CYCLE;
      int until = cycle == RUN_UP ? joining : Math.min(end, joining + (cycle + 1) * CYCLE);
      until = Math.min(until, next[date]);
      until = Math.min(until, next[first] + wholeLag + 1);
      until = Math.min(until, next[shortFirst] + wholeLag);
      days[strides] = until - date;
      target[strides] = place[date];
      longPlace[strides] = place[first];
      cycleOf[strides] = cycle;
      floorsFrom[strides] = floors;
      for (int back = shortFirst; back < date; back = next[back]) {
        if (floors == floorPlace.length) {
          floorPlace = Arrays.copyOf(floorPlace, 2 * floors);
        }
        floorPlace[floors++] = place[back];
      }
      strides++;
      date = until;
    }
    floorsFrom[strides] = floors;
    cycleOf[strides] = cycles;
  }

  /** Whether this is the walk of a joining that starts on a day, for doses by so many places. */
  public boolean isOf(int joiningStartDayOfYear, int places) {
    int from = Math.floorMod(joiningStartDayOfYear - RUN_UP_DAYS, HalfMonths.DAYS);
    return from == start && places == fullEffect.length;
  }

  /**
   * Fills {@code multiplierByCycle} from doses, % of dry matter eaten.
   *
   * @param d50 dose that halves conception, %
   * @param n steepness of the curve
   */
  public void multipliers(double[] dosePercent, double d50, double n, double[] multiplierByCycle) {
    DoseResponse.effects(dosePercent, d50, n, fullEffect);
    multipliers(fullEffect, multiplierByCycle);
  }

  /**
   * Fills {@code multiplierByCycle} with the mean multiplier of each cycle; values beyond are left
   * alone.
   *
   * @param effects 1 - T of each dose, as many as the places of the walk
   */
  public void multipliers(double[] effects, double[] multiplierByCycle) {
    walk(0, strides, effects[place[start]], effects, multiplierByCycle);
  }

  /** How many strides before joining the walk begins with that rest on no marked place. */
  public int stridesWithout(boolean[] marked) {
    int without = 0;
    if (!marked[place[start]]) {
      while (without < strides && cycleOf[without] == RUN_UP && !restsOn(marked, without)) {
        without++;
      }
    }
    return without;
  }

  private boolean restsOn(boolean[] marked, int stride) {
    boolean rests = marked[target[stride]] || marked[longPlace[stride]];
    for (int f = floorsFrom[stride]; f < floorsFrom[stride + 1]; f++) {
      rests |= marked[floorPlace[f]];
    }
    return rests;
  }

  /** The effect carried after the first strides, all before joining. */
  public double carriedAfter(int first, double[] effects) {
    return walk(0, first, effects[place[start]], effects, NONE);
  }

  /**
   * The same as {@link #multipliers(double[], double[])} of a walk whose first strides are known.
   */
  public void multipliersFrom(
      int first, double carried, double[] effects, double[] multiplierByCycle) {
    walk(first, strides, carried, effects, multiplierByCycle);
  }

  private double walk(
      int from, int to, double carried, double[] effects, double[] multiplierByCycle) {
    if (to == strides && multiplierByCycle.length < cycles) {
      Check.that(false, "there must be room for %s cycles", cycles);
    }
    double effect = carried;
    double effectSum = 0;
    for (int s = from; s < to; s++) {
      double full = effects[target[s]];
      double floor = full;
      for (int f = floorsFrom[s]; f < floorsFrom[s + 1]; f++) {
        floor = greater(floor, effects[floorPlace[f]]);
      }
      double longFloor = greater(floor, effects[longPlace[s]]);
      int left = days[s];
      for (; left > 0 && effect < full; left--) {
        effect += full * rise;
        effect = effect < full ? effect : full;
        effectSum += effect;
      }
      for (; left > 0 && effect > floor && longFloor > floor; left--) {
        effect = recover(recover(effect, longFloor, keptInLastPart), floor, keptInRest);
        effectSum += effect;
      }
      if (effect > floor) {
        double excess = effect - floor;
        effectSum += left * floor + excess * keptSum[left];
        effect = floor + excess * kept[left];
      } else {
        effectSum += left * effect;
      }
      int cycle = cycleOf[s];
      if (cycleOf[s + 1] != cycle) {
        if (cycle != RUN_UP) {
          int daysOfCycle = Math.min(CYCLE, end - joining - cycle * CYCLE);
          multiplierByCycle[cycle] = 1 - effectSum / daysOfCycle;
        }
        effectSum = 0;
      }
    }
    return effect;
  }

  private static double greater(double first, double second) {
    return first > second ? first : second;
  }

  private static double recover(double effect, double floor, double kept) {
    return effect <= floor ? effect : floor + (effect - floor) * kept;
  }

  /** For each day the first later one that stands at another place. */
  private static int[] next(int[] place) {
    int[] next = new int[place.length];
    for (int date = place.length - 1; date >= 0; date--) {
      boolean last = date == place.length - 1 || place[date] != place[date + 1];
      next[date] = last ? date + 1 : next[date + 1];
    }
    return next;
  }

  private static int[] places(IntUnaryOperator ofDay) {
    return IntStream.range(0, 4 * HalfMonths.DAYS).map(ofDay).toArray();
  }
}
