package swardcase.report;

import java.time.MonthDay;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import swardcase.chance.Drawn;
import swardcase.joining.Stay;

/**
 * The coming year of the farm's plan for whoever runs the ewes: which paddocks are shut to whom and
 * where each mob is before and during joining. Money is in the farm's currency.
 *
 * @param schemaVersion version of this layout
 * @param program name and version of the program
 * @param farm the farm's facts
 * @param answer the answer in short
 * @param mobs each ewe mob: what it is kept off, and where it is
 * @param shut paddocks that the plan shuts to somebody in the coming year, with why
 * @param seasons each season type, the one with the earliest break first; none if nothing is shut
 * @param youngEwes paddocks where a green season alone would leave more young ewes barren for good
 *     than can be told from normal variation, the worst first
 * @param otherStock what else may graze paddocks that are shut to ewes
 * @param cautions what is printed whatever the farm
 * @param notices what was odd or missing in the farm folder
 */
public record JoiningReport(
    String schemaVersion,
    String program,
    Report.FarmHead farm,
    Answer answer,
    List<MobRow> mobs,
    List<Shut> shut,
    List<SeasonRow> seasons,
    List<YoungRow> youngEwes,
    List<OtherRow> otherStock,
    List<String> cautions,
    List<String> notices) {

  /**
   * The answer in short.
   *
   * @param paddocksShut paddocks that some mob is kept off by a rule
   * @param paddocks all paddocks of the farm
   * @param lambsSaved lambs that the plan saves in the coming year
   * @param moneySaved what they are worth, with what dry ewes cost
   * @param mostLostNow ewes in lamb lost per 100 joined, grazed as now, of the mob that loses most
   * @param tellable the least loss per 100 that can be told from normal variation
   */
  public record Answer(
      int paddocksShut,
      int paddocks,
      Drawn lambsSaved,
      Drawn moneySaved,
      double mostLostNow,
      double tellable) {}

  /**
   * A mob.
   *
   * @param name its name
   * @param ewes ewes joined
   * @param ramsIn the day the rams go in
   * @param weeks weeks they stay
   * @param from first day of its weeks before and during joining
   * @param to their last day
   * @param offBefore paddocks that it is kept off in its weeks
   * @param offGreen paddocks that it is kept off while there is green feed
   * @param stays where it is in its weeks, in order of time
   */
  public record MobRow(
      String name,
      int ewes,
      MonthDay ramsIn,
      double weeks,
      MonthDay from,
      MonthDay to,
      List<String> offBefore,
      List<String> offGreen,
      List<StayRow> stays) {}

  /**
   * A mob in paddocks for some time.
   *
   * @param from first day
   * @param to last day
   * @param where what kind of stay
   * @param paddocks their names; none where any paddock that is open will do
   * @param feedTonnes supplement to be fed on top, t as fed
   */
  public record StayRow(
      MonthDay from, MonthDay to, Stay.Where where, List<String> paddocks, double feedTonnes) {}

  /** When a paddock is shut. */
  public enum When {
    /** In the weeks before and during joining of whom it is shut to. */
    BEFORE_JOINING,
    /** As long as there is green feed in it. */
    WHILE_GREEN,
    /** The whole year or a part of it to all stock, because it is sown or cropped. */
    OUT
  }

  /**
   * A paddock that is shut to somebody.
   *
   * @param paddock its name
   * @param action key of what the plan does with it
   * @param actionName what is printed
   * @param shutTo to whom
   * @param toAllEwes whether to all ewes
   * @param when when
   * @param clover what is known of its clover
   * @param reason what makes it what it is
   * @param mob the mob it is shut to that would lose most there; empty if it is shut to all stock
   * @param lost ewes in lamb that this mob would lose there per 100 joined, if it spent its weeks
   *     there
   * @param chancePercent chance that this could be told from normal variation, per cent
   */
  public record Shut(
      String paddock,
      String action,
      String actionName,
      String shutTo,
      boolean toAllEwes,
      When when,
      KnownClover clover,
      Reason reason,
      Optional<String> mob,
      Optional<Drawn> lost,
      OptionalDouble chancePercent) {}

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

  /** When the break comes. */
  public enum Break {
    /** Before the usual time. */
    EARLY,
    /** At it. */
    USUAL,
    /** After it. */
    LATE
  }

  /**
   * A season type in the mobs' weeks.
   *
   * @param comes when its break comes
   * @param chance how often, fraction of years
   * @param greenAtStart whether feed is green when the weeks begin
   * @param turns days around which it dries off or greens, by turns
   * @param mob the mob that loses most, grazed as now
   * @param lostNow ewes in lamb it loses per 100, grazed as now
   * @param lostByPlan the same by this sheet
   */
  public record SeasonRow(
      Break comes,
      double chance,
      boolean greenAtStart,
      List<MonthDay> turns,
      String mob,
      double lostNow,
      double lostByPlan) {}

  /**
   * A paddock for young ewes.
   *
   * @param paddock its name
   * @param barrenPercent barren for good per 100 after one green season there
   */
  public record YoungRow(String paddock, Drawn barrenPercent) {}

  /**
   * Other stock.
   *
   * @param name its name
   * @param head how many
   * @param mostRiskyDays days it may spend on risky green feed; empty if they are not limited
   */
  public record OtherRow(String name, int head, OptionalDouble mostRiskyDays) {}
}
