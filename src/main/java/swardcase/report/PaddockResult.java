package swardcase.report;

import java.util.List;
import java.util.Optional;
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
 * @param formononetinNote such as {@code laboratory test} or {@code unknown: get a leaf test}
 * @param leafTest the leaf test beside the names; empty without a test, or if nobody looked
 * @param oestrogenRating in plain words
 * @param dryMatterLostKgPerHa winter growth lost, kg dry matter per ha and year
 * @param shortfallMj the paddock's share of the farm's winter shortfall, MJ
 * @param supplementTonnes the same as supplement, t as fed
 * @param supplementCost the same as money
 * @param verdict what to do, in a few words
 * @param action key of the chosen action
 * @param actionName its name
 * @param startYear calendar year it starts; empty for keeping
 * @param reason why, in a sentence
 * @param deciding the input that would change the verdict soonest; blank if none would
 * @param cost what the chosen action costs in all, undiscounted, for the paddock
 * @param npv of the chosen action against keeping, within the plan
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
    String formononetinNote,
    Optional<LeafTestResult> leafTest,
    String oestrogenRating,
    Range dryMatterLostKgPerHa,
    Range shortfallMj,
    Range supplementTonnes,
    Range supplementCost,
    String verdict,
    String action,
    String actionName,
    OptionalInt startYear,
    String reason,
    String deciding,
    Range cost,
    Range npv,
    List<Double> cashFlow,
    List<OptionResult> options) {

  /** Copies the lists. */
  public PaddockResult {
    composition = List.copyOf(composition);
    cashFlow = List.copyOf(cashFlow);
    options = List.copyOf(options);
  }

  /**
   * Share of the clover held by one name.
   *
   * @param name cultivar, or candidates such as {@code Dwalganup or Geraldton}
   * @param share fraction of the clover: 0.35 is 35 %
   */
  public record NamedShare(String name, Range share) {}

  /**
   * One action for the paddock, on its own, against keeping.
   *
   * @param action key
   * @param name printed name
   * @param startYear calendar year it starts; empty for keeping
   * @param costPerHa all its costs, undiscounted, per ha
   * @param npv net present value for the paddock
   * @param annuityPerHa the same as an equal yearly sum per ha
   * @param irrPercent internal rate of return in words: a number, {@code none} or {@code several}
   * @param mirrPercent modified internal rate of return, likely, or {@code none}
   * @param paybackYears discounted, in words: a number or {@code over 15}
   * @param peakDebt deepest running balance, likely
   * @param benefitCost present value of benefits over that of costs, in words
   * @param cashFlow yearly, likely
   * @param oldShareByYear share of old cultivars in the clover by year, likely
   * @param chosen whether it is the chosen one
   * @param whyNot why it was not chosen, in a sentence; blank for the chosen one
   */
  public record OptionResult(
      String action,
      String name,
      OptionalInt startYear,
      Range costPerHa,
      Range npv,
      Range annuityPerHa,
      String irrPercent,
      String mirrPercent,
      String paybackYears,
      double peakDebt,
      String benefitCost,
      List<Double> cashFlow,
      List<Double> oldShareByYear,
      boolean chosen,
      String whyNot) {

    /** Copies the lists. */
    public OptionResult {
      cashFlow = List.copyOf(cashFlow);
      oldShareByYear = List.copyOf(oldShareByYear);
    }
  }
}
