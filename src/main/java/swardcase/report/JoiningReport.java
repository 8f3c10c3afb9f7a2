package swardcase.report;

import java.util.List;
import swardcase.chance.Range;
import swardcase.evidence.Assumption;

/**
 * The joining plan as it is printed and saved: which paddocks to keep ewes off, where they go
 * instead, and what that saves. Money is in the farm's currency.
 *
 * @param schemaVersion version of this layout
 * @param program name and version of the program
 * @param farm the farm's facts
 * @param headline the answer in a sentence
 * @param halfMonths the half-months of the plan, in order
 * @param mobs the calendar of each ewe mob
 * @param youngEwes the green season for replacement ewe lambs and maidens, by paddock
 * @param policies grazing as now, simple avoidance and the plan
 * @param moves the plan, group by group and half-month by half-month
 * @param gates paddocks that are kept off for some mob in some half-month
 * @param safeFeed what is missing of safe feed and the ways out
 * @param dates loss by the day the rams go in, paddocks grazed as now
 * @param notModelled what another date would change too, and is not counted
 * @param cautions what is printed whatever the farm
 * @param notices what was odd or missing in the farm folder
 * @param assumptions every number the answer rests on
 */
public record JoiningReport(
    String schemaVersion,
    String program,
    Report.FarmHead farm,
    String headline,
    List<HalfMonth> halfMonths,
    List<MobCalendar> mobs,
    List<YoungRow> youngEwes,
    List<PolicyResult> policies,
    List<GroupMoves> moves,
    List<Gate> gates,
    SafeFeed safeFeed,
    List<DatePoint> dates,
    String notModelled,
    List<String> cautions,
    List<String> notices,
    List<Assumption> assumptions) {

  /**
   * A half-month.
   *
   * @param from its first day, such as {@code 16 May}
   * @param to its last day
   */
  public record HalfMonth(String from, String to) {}

  /** What the calendar says of a paddock in a half-month. */
  public enum Rating {
    /** Any day. */
    OPEN,
    /** Some days. */
    LIMITED,
    /** No day. */
    KEEP_OFF,
    /** The half-month does not matter for this mob. */
    NOT_RATED
  }

  /**
   * The calendar of a mob.
   *
   * @param name its name
   * @param ewes ewes joined
   * @param joining in words, such as {@code rams in 1 May for 6 weeks}
   * @param paddocks a row for each paddock
   */
  public record MobCalendar(String name, int ewes, String joining, List<PaddockRow> paddocks) {}

  /**
   * A paddock in a mob's calendar.
   *
   * @param paddock its name
   * @param greenDosePercent formononetin of its green feed, % of intake
   * @param unknown whether too much of its clover has a formononetin nobody knows
   * @param reason what makes it so
   * @param cells one for each half-month of the plan
   */
  public record PaddockRow(
      String paddock, Range greenDosePercent, boolean unknown, String reason, List<Cell> cells) {}

  /**
   * A paddock in a half-month.
   *
   * @param rating the rating
   * @param days days allowed
   * @param daysIn days of the half-month
   * @param lost ewes in lamb lost per 100 if the mob spends all of it there
   * @param chanceRight chance that the rating is right, per cent; where it rests on unknown clover
   *     it is the chance that a leaf test would confirm it
   * @param label what is printed: {@code open}, {@code 9 days}, {@code keep off} or a dash
   */
  public record Cell(
      Rating rating, int days, int daysIn, Range lost, double chanceRight, String label) {}

  /**
   * A paddock for young ewes.
   *
   * @param paddock its name
   * @param barrenPercent barren for good per 100 after one green season there
   * @param days green days a season allowed
   * @param label what is printed
   */
  public record YoungRow(String paddock, Range barrenPercent, double days, String label) {}

  /**
   * A way of grazing.
   *
   * @param name such as {@code graze as now}
   * @param lambs lambs not marked because of the coming joining
   * @param lambMoney their worth
   * @param boughtTonnes supplement bought because of it, t as fed
   * @param boughtMoney its price
   * @param saved gained against grazing as now
   */
  public record PolicyResult(
      String name,
      Range lambs,
      Range lambMoney,
      double boughtTonnes,
      double boughtMoney,
      Range saved) {}

  /**
   * Where a group goes.
   *
   * @param group its name
   * @param ewes whether it is a ewe mob
   * @param moves one for each half-month of the plan
   */
  public record GroupMoves(String group, boolean ewes, List<Move> moves) {}

  /**
   * A group in a half-month.
   *
   * @param where paddocks with days, or {@code any paddock}
   * @param feedTonnes supplement to be fed on top, t as fed
   */
  public record Move(String where, double feedTonnes) {}

  /**
   * A gate that stays shut to ewes for a time.
   *
   * @param paddock the paddock behind it
   * @param to whom, one for each half-month of the plan: {@code all ewes}, names of mobs, or blank
   */
  public record Gate(String paddock, List<String> to) {}

  /**
   * Safe feed.
   *
   * @param statement whether it is short, when and by how much
   * @param waysOut what could be done
   * @param worthPerTonne what one more tonne of supplement's worth of safe feed is worth when it is
   *     scarcest
   * @param worthStatement the same in a sentence
   */
  public record SafeFeed(
      String statement, List<String> waysOut, double worthPerTonne, String worthStatement) {}

  /**
   * A date of joining.
   *
   * @param date such as {@code 16 May}
   * @param lost ewes in lamb lost per 100 joined, by mob in the order of the calendars
   */
  public record DatePoint(String date, List<Double> lost) {}

  /** Copies the lists. */
  public JoiningReport {
    halfMonths = List.copyOf(halfMonths);
    mobs = List.copyOf(mobs);
    youngEwes = List.copyOf(youngEwes);
    policies = List.copyOf(policies);
    moves = List.copyOf(moves);
    gates = List.copyOf(gates);
    dates = List.copyOf(dates);
    cautions = List.copyOf(cautions);
    notices = List.copyOf(notices);
    assumptions = List.copyOf(assumptions);
  }
}
