package swardcase.report;

import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import swardcase.chance.Drawn;
import swardcase.chance.Spread;
import swardcase.decision.NotSure;
import swardcase.farm.UseRule;
import swardcase.sward.StandGate;

/**
 * What the program has to say about one paddock.
 *
 * @param name the paddock
 * @param areaHa hectares
 * @param clover what is known of its clover
 * @param formononetinPercentOfLeaf mean over the clover; empty if unknown
 * @param oestrogenRating what it would do to ewes that eat nothing but the paddock's green feed
 * @param dryMatterLostKgPerHa winter growth lost, kg dry matter per ha and year
 * @param nitrogenFixedKgPerHa nitrogen that its clover fixes as it stands, kg per ha and year
 * @param nitrogenPlannedKgPerHa the same in the last year counted of what is planned here
 * @param lostToCultivarKgPerHa the part of it that is lost to outdated cultivars
 * @param lostToThinStandKgPerHa the part that is lost because the clover is thin
 * @param shortfallMj the paddock's share of the farm's winter shortfall, MJ
 * @param supplementTonnes the same as supplement, t as fed
 * @param supplementCost the same as money
 * @param call what to do
 * @param sure whether the plan's change is sure; empty where the plan changes nothing
 * @param notSure why it is not sure; empty where it is, or where the plan changes nothing
 * @param lookFirst what to look at before it is sown; none where the plan does not sow it
 * @param nearLine whether other draws might find it sure, or keeping sure
 * @param action key of the chosen action
 * @param actionName its name
 * @param start calendar year it starts; empty for keeping
 * @param lastChangeYear last calendar year that differs by more than 5 % from what follows for
 *     good: the sowing with its expected repeat, the years shut, the stand's first years; empty for
 *     keeping
 * @param keptOff whom the plan keeps off it until the action starts, or by itself; empty if nobody
 * @param reason why
 * @param sureInstead key of the best action that is sure where the change is not; empty if that is
 *     keeping, or if the change is sure
 * @param cost what the chosen action costs in all, own labour with it, not discounted, for the
 *     paddock
 * @param gain what the plan would lose without its choice here
 * @param parts of that gain; none if it is kept
 * @param credit where that gain comes from, every cause; all nothing if it is kept
 * @param options every action that was looked at, the chosen one among them
 * @param tooLong actions that could be done here, but not be seen through in the years counted
 */
public record PaddockResult(
    String name,
    double areaHa,
    KnownClover clover,
    Optional<Drawn> formononetinPercentOfLeaf,
    OestrogenRating oestrogenRating,
    Drawn dryMatterLostKgPerHa,
    Drawn nitrogenFixedKgPerHa,
    Drawn nitrogenPlannedKgPerHa,
    Drawn lostToCultivarKgPerHa,
    Drawn lostToThinStandKgPerHa,
    Drawn shortfallMj,
    Drawn supplementTonnes,
    Drawn supplementCost,
    Call call,
    Optional<Boolean> sure,
    Optional<NotSure> notSure,
    List<StandGate.LookFirst> lookFirst,
    boolean nearLine,
    String action,
    String actionName,
    OptionalInt start,
    OptionalInt lastChangeYear,
    Optional<KeptOff> keptOff,
    Reason reason,
    Optional<String> sureInstead,
    Drawn cost,
    Spread gain,
    List<GainPart> parts,
    List<Credit> credit,
    List<OptionResult> options,
    List<TooLong> tooLong) {

  /** Whether the plan changes something here. */
  public boolean isInPlan() {
    return sure.isPresent();
  }

  /** The option with an action; empty for keeping. */
  public Optional<OptionResult> option(String key) {
    return options.stream().filter(option -> option.action().equals(key)).findFirst();
  }

  /**
   * Who is kept off.
   *
   * @param who whom, as it is printed: {@code all ewes}, or the name of a mob
   * @param when when they are
   */
  public record KeptOff(String who, UseRule.When when) {}

  /** What the green feed of a paddock does to ewes that eat nothing else. */
  public enum OestrogenRating {
    /** Halves conception in a cycle, or worse. */
    SEVERE,
    /** Can be told from normal variation. */
    MARKED,
    /** Can be told only at the high end of the range. */
    SLIGHT,
    /** Cannot be told from normal variation. */
    LITTLE,
    /** Nobody knows. */
    UNKNOWN
  }

  /**
   * An action that cannot be seen through in the years counted, so that it was not weighed.
   *
   * @param action key
   * @param name printed name
   * @param years that it takes from its start to its last change, both counted
   */
  public record TooLong(String action, String name, int years) {}

  /**
   * An action that was weighed for the paddock against keeping it.
   *
   * @param action key
   * @param name printed name
   * @param start calendar year it starts; empty for keeping
   * @param lastChangeYear last calendar year that differs by more than 5 % from what follows for
   *     good
   * @param costPerHa all its costs, own labour with them, not discounted, per ha
   * @param gain over keeping the paddock, the rest of the plan being done
   * @param credit where that gain comes from, every cause
   * @param annuityPerHa the gain as an equal yearly sum per ha
   * @param step what it gains over the best cheaper choice
   * @param returns rates of return and payback of its mean flows over keeping
   * @param cashFlow these flows, year by year
   * @param oldShareByYear share of old cultivars in the clover by year, mean over the draws; none
   *     if nobody looked at the clover
   * @param cloverShareByYear share of clover in the green feed by year, mean over the draws
   * @param sows whether clover is sown
   * @param landUse whether it only crops, so that its gain is a matter of land use and not of
   *     clover
   * @param chosen whether it is the chosen one
   * @param cheapest whether it costs least a hectare of those that sow
   * @param whyNot why it was not chosen; empty for the chosen one
   */
  public record OptionResult(
      String action,
      String name,
      OptionalInt start,
      int lastChangeYear,
      Drawn costPerHa,
      Spread gain,
      List<Credit> credit,
      Drawn annuityPerHa,
      Step step,
      Returns returns,
      List<Double> cashFlow,
      List<Double> oldShareByYear,
      List<Double> cloverShareByYear,
      boolean sows,
      boolean landUse,
      boolean chosen,
      boolean cheapest,
      Optional<WhyNot> whyNot) {}
}
