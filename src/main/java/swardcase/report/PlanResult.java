package swardcase.report;

import java.util.List;
import java.util.Optional;
import swardcase.chance.Drawn;
import swardcase.chance.Spread;

/**
 * The whole farm's answer. The gains of the paddocks in the plan, of farm-wide rules and what they
 * share add up to the gain of the plan; so do its parts, and its years.
 *
 * @param calls how many paddocks have which call
 * @param keepsAll whether it keeps every paddock as it is
 * @param order numbers of the paddocks, from 1 in the order of the user's file, in the order of
 *     use: work that is sure by year, work that is not, undecided ones, those kept
 * @param hectaresSown hectares that are sown
 * @param cost all costs, own labour with them, not discounted
 * @param gain over keeping everything: net present value
 * @param gainStandardError of its mean
 * @param certaintyEquivalent the certain sum that is worth as much as the gain
 * @param riskTolerance tolerance of risk by which the plan was chosen, in money
 * @param parts of the gain, by kinds of money
 * @param years year by year
 * @param farmWide rules for the whole farm that the plan makes
 * @param farmWideNotTaken those that it does not make
 * @param shared what the plan's changes gain together beyond what each would be missed by
 * @param sureGain gain of the plan's sure changes alone
 * @param careful the plan of somebody who bears half the risk; empty if it is the same
 * @param rates the gain at a low and at a high discount rate
 * @param annuity the gain as an equal yearly sum
 * @param returns rates of return and payback of the mean flows
 * @param peakDebt deepest debt of the plan's account, interest at the discount rate
 * @param lowestYear calendar year in which {@code cumulative} is lowest
 * @param howFound other starts of the search, limits that bind, plans as good
 * @param loan the account if the costs are borrowed, of the mean flows; empty if the farm has no
 *     loan
 */
public record PlanResult(
    Calls calls,
    boolean keepsAll,
    List<Integer> order,
    double hectaresSown,
    Drawn cost,
    Spread gain,
    double gainStandardError,
    double certaintyEquivalent,
    double riskTolerance,
    List<GainPart> parts,
    List<PlanYear> years,
    List<FarmRule> farmWide,
    List<FarmRule> farmWideNotTaken,
    Shared shared,
    Spread sureGain,
    Optional<Careful> careful,
    RateEnds rates,
    Drawn annuity,
    Returns returns,
    Drawn peakDebt,
    int lowestYear,
    HowFound howFound,
    Optional<LoanAccount> loan) {

  /**
   * How many paddocks have which call.
   *
   * @param act to be resown, or changed otherwise
   * @param keepOff to be kept, ewes kept off by a rule
   * @param keep to be kept as they are
   * @param undecided not settled by what is known
   * @param unsure changes that are not sure, among the first two and the rules
   * @param rules rules for the whole farm that the plan makes
   */
  public record Calls(int act, int keepOff, int keep, int undecided, int unsure, int rules) {

    /** Changes of the plan: paddocks, and rules for the whole farm. */
    public int changes() {
      return act + keepOff + rules;
    }
  }

  /**
   * A rule for the whole farm.
   *
   * @param what the rule
   * @param cost its costs over the years counted, own labour with them, not discounted
   * @param gain what the plan would lose without it; of one it does not make, what it would gain
   * @param sure whether that is sure
   */
  public record FarmRule(Rule what, Drawn cost, Spread gain, boolean sure) {}

  /** Rules for the whole farm. */
  public enum Rule {
    /** The cleanest paddocks to the mob nearest joining. */
    IN_ORDER,
    /** Scan, and sell ewes that were dry. */
    SELL_DRY_AFTER_ONE,
    /** Scan, and sell ewes that were dry twice running. */
    SELL_DRY_AFTER_TWO;

    /** A rule of the farm with its choice, from 1. */
    static Rule of(swardcase.outcome.FarmRule rule, int choice) {
      return switch (rule) {
        case IN_ORDER -> IN_ORDER;
        case SELL_DRY -> choice == 1 ? SELL_DRY_AFTER_ONE : SELL_DRY_AFTER_TWO;
      };
    }
  }

  /**
   * What the plan's changes gain together beyond the sum of what each would be missed by.
   *
   * @param mean over the draws; below nothing where changes gain only together, which each of them
   *     is then missed for; above where one does a part of another's work
   */
  public record Shared(double mean) {}

  /**
   * The plan of somebody who bears half the risk.
   *
   * @param riskTolerance that tolerance, in money
   * @param changes where it differs from the plan
   * @param gain of it over keeping everything
   * @param certaintyEquivalent at that tolerance
   * @param ahead what it has more than the plan in certainty equivalent at that tolerance
   */
  public record Careful(
      double riskTolerance,
      List<HowFound.Choice> changes,
      Spread gain,
      double certaintyEquivalent,
      double ahead) {}

  /**
   * The mean gain at other discount rates, the mean flows staying as they are.
   *
   * @param lowPercent low rate, per year
   * @param gainAtLow mean gain at it
   * @param highPercent high rate
   * @param gainAtHigh mean gain at it
   */
  public record RateEnds(
      double lowPercent, double gainAtLow, double highPercent, double gainAtHigh) {}

  /**
   * A year of the plan: means over the draws, in money of that year but for {@code mean}.
   *
   * @param year calendar year
   * @param mean what the year adds to the gain, discounted
   * @param work what is done where
   * @param cost paid for actions
   * @param labour own labour for actions
   * @param supplementSaved supplement not bought (negative: bought because paddocks are shut)
   * @param lambsSaved value of lambs not lost
   * @param cropMargin margin of crops
   * @param spareFeed more ewes, feed let to others, and nitrogen that clover fixes
   * @param endValue worth of resown hectares beyond the years counted
   * @param other these three together
   * @param net the sum
   * @param cumulative sum of {@code net} to this year
   * @param without worth of the lambs marked, less what dry ewes and supplement cost, if everything
   *     is kept
   * @param with that and {@code net}
   * @param lambs lambs more, head
   * @param ewesInLamb dry ewes fewer, head
   * @param oldShare share of old cultivars in the farm's clover, area-weighted
   */
  public record PlanYear(
      int year,
      double mean,
      List<Work> work,
      double cost,
      double labour,
      double supplementSaved,
      double lambsSaved,
      double cropMargin,
      double spareFeed,
      double endValue,
      double other,
      double net,
      double cumulative,
      double without,
      double with,
      double lambs,
      double ewesInLamb,
      double oldShare) {}

  /**
   * Work of a year on a paddock.
   *
   * @param kind what is done
   * @param paddock where
   * @param action key of the action it belongs to
   * @param actionName its name
   */
  public record Work(Kind kind, String paddock, String action, String actionName) {

    /** What is done. */
    public enum Kind {
      /** A crop is grown. */
      CROP,
      /** Seed set is stopped. */
      STOP_SEED_SET,
      /** Seed is sown. */
      SOW,
      /** An action that sows nothing begins. */
      BEGIN
    }
  }
}
