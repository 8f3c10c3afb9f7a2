package swardcase.farm;

import java.time.Month;
import java.util.List;
import swardcase.check.Check;

/**
 * The rain that starts the growing season: when it comes in a usual year, and what a year looks
 * like in which it comes later or earlier.
 *
 * <p>The usual break b is the first half-month that grows more than a twentieth of the peak, read
 * back from winter. Winter ends at e. In a year whose break comes d half-months later (earlier
 * where d is negative), time between the break and the end of winter is stretched:
 *
 * <pre>
 *   t before b + d         as in the half-month before the usual break (late), as usual (early)
 *   t from b + d to e      as at e - (e - t) (e - b) / (e - b - d) of a usual year
 *   t from e               as usual
 * </pre>
 *
 * <p>So a late break grows less in autumn and early winter and has caught up when winter ends, and
 * the end of the season stays where it is (inferred: no paper gives the form). What a half-month
 * has is the mean over its time, so that parts of half-months count. Growth that is nowhere below
 * that of the half-month before the break, summed from the break to any day of winter, never rises
 * with d. A break moves at most so far that a half-month of winter is left.
 *
 * <p>Worked number: Katanning grows 11 kg DM/ha/day in May, 15 in June, 16 in July, 28 in August; b
 * is 1 May, e 31 August. With d = 2 the four months are squeezed into three: June has the mean of
 * May and the first third of June, 12 kg, and before it April's 1 kg.
 */
public final class AutumnBreak {

  private static final int P = HalfMonths.COUNT;
  private static final double PART_OF_PEAK = 1.0 / 20;

  private final int halfMonth;
  private final int toEndOfWinter;

  /**
   * The break of a usual year.
   *
   * @param growth twelve months, kg DM/ha/day
   * @param winterMonths at least one
   */
  public AutumnBreak(List<Double> growth, List<Month> winterMonths) {
    int firstWinter = 0;
    for (int p = 0; p < P; p++) {
      if (isIn(winterMonths, p) && !isIn(winterMonths, p - 1)) {
        firstWinter = p;
        break;
      }
    }
    int winter = 0;
    while (winter < P && isIn(winterMonths, firstWinter + winter)) {
      winter++;
    }
    double least = growth.stream().mapToDouble(Double::doubleValue).max().orElse(0) * PART_OF_PEAK;
    int before = 0;
    while (before < P / 2 - 1 && growth.get(at(firstWinter - before - 1) / 2) > least) {
      before++;
    }
    halfMonth = at(firstWinter - before);
    toEndOfWinter = Math.min(P, before + winter);
  }

  private static boolean isIn(List<Month> months, int p) {
    return months.contains(HalfMonths.month(at(p)));
  }

  private static int at(int p) {
    return Math.floorMod(p, P);
  }

  /** The half-month of a usual year in which the growing season starts. */
  public int halfMonth() {
    return halfMonth;
  }

  /** Half-months from the usual break to the end of winter. */
  public int toEndOfWinter() {
    return toEndOfWinter;
  }

  /**
   * What half-months have in a year whose break moves. Allocates nothing.
   *
   * @param usual what each of the 24 half-months of a usual year has: a rate or a share, no sum
   * @param later half-months by which the break comes later; negative is earlier, 0 changes nothing
   * @param into another array
   */
  public void move(double[] usual, double later, double[] into) {
    System.arraycopy(usual, 0, into, 0, P);
    if (later == 0) {
      return;
    }
    double moved = Math.min(toEndOfWinter - 1, Math.max(toEndOfWinter - P, later));
    double speed = toEndOfWinter / (toEndOfWinter - moved);
    int first = (int) Math.min(0, Math.floor(moved));
    double until = usual[at(halfMonth + (moved > 0 ? -1 : first))];
    double sum = 0;
    for (int k = first; k < toEndOfWinter; k++) {
      double end = k + 1;
      double upTo = until * (Math.min(end, moved) - first);
      if (end > moved) {
        upTo += grown(usual, (end - moved) * speed) / speed;
      }
      into[at(halfMonth + k)] = upTo - sum;
      sum = upTo;
    }
  }

  /** Sum of a usual year from the break over so many half-months. */
  private double grown(double[] usual, double time) {
    int whole = (int) Math.min(toEndOfWinter, Math.floor(time));
    double sum = 0;
    for (int k = 0; k < whole; k++) {
      sum += usual[at(halfMonth + k)];
    }
    return whole < toEndOfWinter ? sum + (time - whole) * usual[at(halfMonth + whole)] : sum;
  }

  /**
   * Daily growth by half-month of a year whose break moves.
   *
   * @param months twelve months of a usual year, kg DM/ha/day
   */
  public double[] growth(List<Double> months, double later) {
    double[] usual = new double[P];
    for (int p = 0; p < P; p++) {
      usual[p] = months.get(p / 2);
    }
    double[] moved = new double[P];
    move(usual, Check.inRange(later, -P, P, "half-months by which the break moves"), moved);
    return moved;
  }
}
