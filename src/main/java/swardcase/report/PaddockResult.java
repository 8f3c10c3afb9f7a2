package swardcase.report;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import swardcase.chance.Range;

/**
 * What the program has to say about one paddock.
 *
 * @param name the paddock
 * @param areaHa hectares
 * @param plantsLookedAt plants identified; 0 if nobody looked
 * @param composition share of the clover by name, largest first
 * @param oldCultivarShare share of the clover that is old cultivars
 * @param outdatedShare share of the clover that a current cultivar would probably outgrow in winter
 * @param highOestrogenShareOfSward share of the green feed that is high-oestrogen clover
 * @param chanceAboveTwentyPercent chance, in per cent, that this share is above 20 %
 * @param morePlantsToSettle further plants that would probably settle that question; empty if more
 *     plants would not, if it is settled, or if a leaf test tells the formononetin
 * @param formononetinPercentOfLeaf mean over the clover; empty if unknown
 * @param formononetinFrom where that comes from
 * @param leafTest the leaf test beside the names; empty without a test, or if nobody looked
 * @param oestrogenRating what it would do to ewes that eat nothing but the paddock's green feed
 * @param dryMatterLostKgPerHa winter growth lost, kg dry matter per ha and year
 * @param shortfallMj the paddock's share of the farm's winter shortfall, MJ
 * @param supplementTonnes the same as supplement, t as fed
 * @param supplementCost the same as money
 * @param call what to do
 * @param action key of the chosen action
 * @param actionName its name
 * @param start calendar year it starts; empty for keeping
 * @param reason why
 * @param deciding the input that would settle an undecided call soonest; empty if none would
 * @param cost what the chosen action costs in all, undiscounted, for the paddock
 * @param npv of the chosen action against keeping, within the plan
 * @param npvAlone the same with every other paddock kept
 * @param parts what the planned action alone brings before its costs; empty if none is planned
 * @param effort what a change must gain to be worth doing, present value
 * @param cashFlow yearly, likely, of the chosen action against keeping
 * @param options every action that was looked at, the chosen one among them
 */
public record PaddockResult(
    String name,
    double areaHa,
    double plantsLookedAt,
    List<NamedShare> composition,
    Range oldCultivarShare,
    Range outdatedShare,
    Range highOestrogenShareOfSward,
    double chanceAboveTwentyPercent,
    OptionalInt morePlantsToSettle,
    Optional<Range> formononetinPercentOfLeaf,
    FormononetinFrom formononetinFrom,
    Optional<LeafTestResult> leafTest,
    OestrogenRating oestrogenRating,
    Range dryMatterLostKgPerHa,
    Range shortfallMj,
    Range supplementTonnes,
    Range supplementCost,
    Call call,
    String action,
    String actionName,
    OptionalInt start,
    Reason reason,
    Optional<String> deciding,
    Range cost,
    Range npv,
    Range npvAlone,
    Optional<GainParts> parts,
    double effort,
    List<Double> cashFlow,
    List<OptionResult> options) {

  /** Copies the lists. */
  public PaddockResult {
    composition = List.copyOf(composition);
    cashFlow = List.copyOf(cashFlow);
    options = List.copyOf(options);
  }

  /** The option with an action; empty for keeping. */
  public Optional<OptionResult> option(String key) {
    return options.stream().filter(option -> option.action().equals(key)).findFirst();
  }

  /** Where a formononetin comes from. */
  public enum FormononetinFrom {
    /** A laboratory test of the paddock's leaf. */
    LEAF_TEST,
    /** The cultivar table, by composition. */
    CULTIVAR_TABLE,
    /** Too much of the clover has a formononetin nobody knows. */
    UNKNOWN
  }

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
    /** Nobody knows: a leaf test would tell. */
    UNKNOWN
  }

  /**
   * What an action brings before its costs, present value at likely inputs.
   *
   * @param lambs lambs not lost
   * @param feed feed not bought or sold; negative if more is bought than saved
   * @param crops crop margins
   */
  public record GainParts(double lambs, double feed, double crops) {}

  /**
   * Share of the clover held by one name.
   *
   * @param name cultivar, or candidates such as {@code Dwalganup or Geraldton}
   * @param share fraction of the clover: 0.35 is 35 %
   */
  public record NamedShare(String name, Range share) {}

  /**
   * An action that was weighed for the paddock against keeping it.
   *
   * @param action key
   * @param name printed name
   * @param start calendar year it starts; empty for keeping
   * @param costPerHa all its costs, undiscounted, per ha
   * @param npv net present value for the paddock, the rest of the plan being done; alone where the
   *     option does not fit beside the plan
   * @param annuityPerHa the same as an equal yearly sum per ha
   * @param returns rates of return, payback and peak debt of the action alone
   * @param cashFlow yearly, likely
   * @param oldShareByYear share of old cultivars in the clover by year, likely
   * @param chosen whether it is the chosen one
   * @param cheapest whether it costs least a hectare of those that cost anything
   * @param whyNot why it was not chosen; empty for the planned one
   */
  public record OptionResult(
      String action,
      String name,
      OptionalInt start,
      Range costPerHa,
      Range npv,
      Range annuityPerHa,
      Returns returns,
      List<Double> cashFlow,
      List<Double> oldShareByYear,
      boolean chosen,
      boolean cheapest,
      Optional<WhyNot> whyNot) {

    /** Copies the lists. */
    public OptionResult {
      cashFlow = List.copyOf(cashFlow);
      oldShareByYear = List.copyOf(oldShareByYear);
    }
  }

  /**
   * Why an option was not chosen.
   *
   * @param kind which reason
   * @param plannedNpv likely net present value of the planned option; empty if none is planned
   */
  public record WhyNot(Kind kind, OptionalDouble plannedNpv) {

    /** Which reason. */
    public enum Kind {
      /** It likely loses against keeping. */
      LOSES,
      /** It likely gains less than the effort of doing it. */
      EFFORT,
      /** It is not what the plan does here. */
      LESS,
      /** Alone it likely gains, but not beside the rest of the plan and its limits. */
      LIMITS
    }
  }
}
