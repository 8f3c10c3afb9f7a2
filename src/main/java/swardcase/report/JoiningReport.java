package swardcase.report;

import java.time.MonthDay;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import swardcase.chance.Drawn;
import swardcase.evidence.Assumption;
import swardcase.joining.JoiningPlan.Policy;

/**
 * The joining plan as it is printed and saved: which paddocks to keep ewes off, where they go
 * instead, and what that saves. Money is in the farm's currency.
 *
 * @param schemaVersion version of this layout
 * @param program name and version of the program
 * @param farm the farm's facts
 * @param answer the answer in short
 * @param fromPlan paddocks that the plan of the farm shuts or keeps somebody off in the coming year
 * @param halfMonths the half-months of the plan, in order
 * @param mobs the calendar of each ewe mob
 * @param youngEwes the green season for replacement ewe lambs and maidens, by paddock
 * @param policies grazing as now, simple avoidance and the plan
 * @param moves the plan, group by group and half-month by half-month
 * @param gates paddocks that are kept off for some mob in some half-month
 * @param safeFeed what is missing of safe feed and the ways out
 * @param dates loss by the day the rams go in, paddocks grazed as now
 * @param dateEnds the best and the worst of these dates for each mob
 * @param cautions what is printed whatever the farm
 * @param notices what was odd or missing in the farm folder
 * @param assumptions every number the answer rests on
 */
public record JoiningReport(
    String schemaVersion,
    String program,
    Report.FarmHead farm,
    Answer answer,
    List<FromPlan> fromPlan,
    List<HalfMonth> halfMonths,
    List<MobCalendar> mobs,
    List<YoungRow> youngEwes,
    List<PolicyResult> policies,
    List<GroupMoves> moves,
    List<Gate> gates,
    SafeFeed safeFeed,
    List<DatePoint> dates,
    List<DateEnds> dateEnds,
    List<String> cautions,
    List<String> notices,
    List<Assumption> assumptions) {

  /**
   * What the plan of the farm says of a paddock.
   *
   * @param paddock its name
   * @param action key of what is done with it
   * @param actionName what is printed
   * @param isShut whether it is out of grazing in the coming year
   */
  public record FromPlan(String paddock, String action, String actionName, boolean isShut) {}

  /** What there is to do in the weeks before and during joining. */
  public enum Finding {
    /** Paddocks are to be shut to some mob in some half-month. */
    KEEP_OFF,
    /** No paddock need be shut outright, but some are open for a few days only. */
    FEW_DAYS,
    /** Joining falls on dry feed, or on feed with next to no oestrogen. */
    NOTHING_GREEN,
    /** No paddock costs any mob what can be told from normal variation. */
    NOTHING_TO_SHUT
  }

  /**
   * The answer in short.
   *
   * @param finding what there is to do
   * @param paddocksKeptOff paddocks that are kept off for some mob in some half-month
   * @param paddocks all paddocks of the farm
   * @param lambsSpared lambs the plan likely saves against grazing as now
   * @param mostLostNow ewes in lamb lost per 100 joined, grazed as now, of the mob that loses most
   * @param tellable the least loss per 100 that can be told from normal variation
   */
  public record Answer(
      Finding finding,
      int paddocksKeptOff,
      int paddocks,
      double lambsSpared,
      double mostLostNow,
      double tellable) {}

  /**
   * A half-month.
   *
   * @param from its first day
   * @param to its last day
   */
  public record HalfMonth(MonthDay from, MonthDay to) {}

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
   * @param ramsIn the day the rams go in
   * @param weeks weeks they stay
   * @param paddocks a row for each paddock
   */
  public record MobCalendar(
      String name, int ewes, MonthDay ramsIn, double weeks, List<PaddockRow> paddocks) {

    /** Copies the list. */
    public MobCalendar {
      paddocks = List.copyOf(paddocks);
    }
  }

  /**
   * A paddock in a mob's calendar.
   *
   * @param paddock its name
   * @param greenDosePercent formononetin of its green feed, % of intake
   * @param clover what is known of its clover
   * @param onUnknown whether a rating of the row rests on clover nobody knows
   * @param reason what makes the paddock what it is
   * @param leastSure lowest chance that a rating of the row is right, per cent
   * @param mostSure highest such chance
   * @param cells one for each half-month of the plan
   */
  public record PaddockRow(
      String paddock,
      Drawn greenDosePercent,
      KnownClover clover,
      boolean onUnknown,
      Reason reason,
      double leastSure,
      double mostSure,
      List<Cell> cells) {

    /** Copies the list. */
    public PaddockRow {
      cells = List.copyOf(cells);
    }
  }

  /**
   * What makes a paddock what it is, beside what is known of its clover.
   *
   * @param cultivar the cultivar that brings most formononetin; empty unless that comes from the
   *     cultivar table
   * @param cultivarShare its share of the clover, fraction
   * @param cloverShare share of clover in the green feed, fraction
   * @param waterlogged whether the ground is wet, which raises formononetin
   */
  public record Reason(
      Optional<String> cultivar,
      OptionalDouble cultivarShare,
      double cloverShare,
      boolean waterlogged) {}

  /**
   * A paddock in a half-month.
   *
   * @param rating the rating
   * @param days days allowed
   * @param daysIn days of the half-month
   * @param lost ewes in lamb lost per 100 if the mob spends all of it there
   * @param chanceRight chance that the rating is right, per cent; where it rests on unknown clover
   *     the chance that it would still hold if that were known
   */
  public record Cell(Rating rating, int days, int daysIn, Drawn lost, double chanceRight) {}

  /** What the green season of a paddock is to young ewes. */
  public enum YoungRating {
    /** Any day. */
    OPEN,
    /** Some days a season. */
    LIMITED,
    /** No day while it is green. */
    KEEP_OFF,
    /** No day while it is green, because nobody knows its clover. */
    UNKNOWN
  }

  /**
   * A paddock for young ewes.
   *
   * @param paddock its name
   * @param barrenPercent barren for good per 100 after one green season there
   * @param rating the rating
   * @param days green days a season allowed as far as it is known
   */
  public record YoungRow(String paddock, Drawn barrenPercent, YoungRating rating, double days) {}

  /**
   * A way of grazing.
   *
   * @param policy which
   * @param lambs lambs not marked because of the coming joining
   * @param lambMoney their worth
   * @param boughtTonnes supplement bought because of it, t as fed
   * @param boughtMoney its price
   * @param saved gained against grazing as now
   */
  public record PolicyResult(
      Policy policy,
      Drawn lambs,
      Drawn lambMoney,
      double boughtTonnes,
      double boughtMoney,
      Drawn saved) {}

  /**
   * Where a group goes.
   *
   * @param group its name
   * @param ewes whether it is a ewe mob
   * @param moves one for each half-month of the plan
   */
  public record GroupMoves(String group, boolean ewes, List<Move> moves) {

    /** Copies the list. */
    public GroupMoves {
      moves = List.copyOf(moves);
    }
  }

  /** Where a group can be in a half-month. */
  public enum Where {
    /** In the paddocks named. */
    PADDOCKS,
    /** In any paddock: none costs it anything to speak of. */
    ANY_PADDOCK,
    /** In any paddock, and the feed is dry. */
    ANY_DRY_PADDOCK,
    /** On bare ground, fed. */
    BARE_GROUND,
    /** Not on the farm. */
    NOT_HERE
  }

  /**
   * A group in a half-month.
   *
   * @param where where it can be
   * @param stays its paddocks, the longest stay first; empty unless paddocks are named
   * @param feedTonnes supplement to be fed on top, t as fed
   */
  public record Move(Where where, List<Stay> stays, double feedTonnes) {

    /** Copies the list. */
    public Move {
      stays = List.copyOf(stays);
    }
  }

  /**
   * A group in a paddock.
   *
   * @param paddock its name
   * @param days whole days there, at least one
   * @param keptOff whether the calendar rates it keep off for the group, and the plan takes the
   *     loss
   */
  public record Stay(String paddock, long days, boolean keptOff) {}

  /**
   * A gate that stays shut to ewes for a time.
   *
   * @param paddock the paddock behind it
   * @param shutTo names of the mobs that must not go in, for each half-month of the plan
   */
  public record Gate(String paddock, List<List<String>> shutTo) {

    /** Copies the lists. */
    public Gate {
      shutTo = shutTo.stream().map(List::copyOf).toList();
    }
  }

  /**
   * Safe feed.
   *
   * @param shortage how much is missing; empty if it is enough
   * @param otherDates whether joining later or earlier ends the shortage; none if it is enough
   * @param resow the risky paddock that frees most if it is resown; empty if none frees anything
   * @param planCost lambs and feed lost under the plan, money a year
   * @param scarcestFrom first day of the half-month in which safe feed is scarcest
   * @param worthPerTonne what one more tonne of supplement's worth of safe feed is worth then
   * @param pricePerTonne what a tonne of supplement costs
   */
  public record SafeFeed(
      Optional<Shortage> shortage,
      List<OtherDate> otherDates,
      Optional<Resow> resow,
      double planCost,
      MonthDay scarcestFrom,
      double worthPerTonne,
      double pricePerTonne) {

    /** Copies the list. */
    public SafeFeed {
      otherDates = List.copyOf(otherDates);
    }
  }

  /**
   * Feed of paddocks open without limit that is missing.
   *
   * @param energyMj as energy, MJ
   * @param tonnes as supplement, t as fed
   * @param cost its price
   * @param from first day of the shortage
   * @param to last day of it
   */
  public record Shortage(double energyMj, double tonnes, double cost, MonthDay from, MonthDay to) {}

  /** A way to move the date of joining. */
  public enum Direction {
    /** The rams go in later. */
    LATER,
    /** The rams go in earlier. */
    EARLIER
  }

  /**
   * Joining at another date.
   *
   * @param direction later or earlier
   * @param weeks by how many weeks; where the shortage stays, by how many at most it was looked at
   * @param planCost lambs and feed lost under the plan made for that date, money a year; empty if
   *     safe feed stays short
   */
  public record OtherDate(Direction direction, int weeks, OptionalDouble planCost) {}

  /**
   * A risky paddock resown.
   *
   * @param paddock its name
   * @param action key of the action
   * @param actionName its name
   * @param freed what the plan's loss falls by, money a year
   * @param fromYear from which year on, counted from the first
   * @param cost what the action costs, money
   */
  public record Resow(
      String paddock, String action, String actionName, double freed, int fromYear, double cost) {}

  /**
   * A date of joining.
   *
   * @param date the day the rams go in
   * @param lost ewes in lamb lost per 100 joined, by mob in the order of the calendars
   * @param most the largest of these
   */
  public record DatePoint(MonthDay date, List<Double> lost, double most) {

    /** Copies the list. */
    public DatePoint {
      lost = List.copyOf(lost);
    }
  }

  /**
   * The best and the worst date for a mob.
   *
   * @param mob its name
   * @param best the date that costs least; of several the first
   * @param least ewes in lamb lost per 100 joined then
   * @param worst the date that costs most; of several the first
   * @param most ewes in lamb lost per 100 joined then
   */
  public record DateEnds(String mob, MonthDay best, double least, MonthDay worst, double most) {}

  /** Copies the lists. */
  public JoiningReport {
    halfMonths = List.copyOf(halfMonths);
    mobs = List.copyOf(mobs);
    youngEwes = List.copyOf(youngEwes);
    policies = List.copyOf(policies);
    moves = List.copyOf(moves);
    gates = List.copyOf(gates);
    dates = List.copyOf(dates);
    dateEnds = List.copyOf(dateEnds);
    cautions = List.copyOf(cautions);
    notices = List.copyOf(notices);
    assumptions = List.copyOf(assumptions);
  }
}
