package swardcase.report;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import swardcase.chance.Range;

/**
 * How sure the answer is, and what should be found out before money is spent.
 *
 * @param seed where the draws start
 * @param draws how many there were
 * @param npv plan against keeping everything: 5, 50 and 95 of 100 draws lie below
 * @param npvMean mean over the draws
 * @param npvStandardError of that mean
 * @param npvQuantiles 21 values below which 0, 5, 10 and so on to 100 of 100 draws lie
 * @param annuity the plan as an equal yearly sum
 * @param chanceItPays 0 to 1
 * @param lossLimit loss the user would not bear
 * @param chanceOfUnbearableLoss 0 to 1
 * @param expectedRegret what the plan misses on average against the best plan of each draw
 * @param expectedRegretOfKeeping the same for keeping everything
 * @param certainty what the plan is worth for certain, by rising tolerance of risk
 * @param movers the inputs that explain most of the spread, most first
 * @param breakEvens where the gain turns into a loss
 * @param perfect what it would be worth to know everything before choosing
 * @param findOut what is worth finding out, most valuable first
 * @param paddocks one entry a paddock
 * @param howSure sentences that answer "How sure?"
 * @param before sentences that answer "What should I find out before I spend?"
 */
public record HowSureReport(
    long seed,
    int draws,
    Range npv,
    double npvMean,
    double npvStandardError,
    List<Double> npvQuantiles,
    Range annuity,
    double chanceItPays,
    double lossLimit,
    double chanceOfUnbearableLoss,
    double expectedRegret,
    double expectedRegretOfKeeping,
    List<CertaintyLine> certainty,
    List<Mover> movers,
    List<BreakEvenLine> breakEvens,
    double perfect,
    List<FindOut> findOut,
    List<PaddockSure> paddocks,
    List<String> howSure,
    List<String> before) {

  /** Copies the lists. */
  public HowSureReport {
    npvQuantiles = List.copyOf(npvQuantiles);
    certainty = List.copyOf(certainty);
    movers = List.copyOf(movers);
    breakEvens = List.copyOf(breakEvens);
    findOut = List.copyOf(findOut);
    paddocks = List.copyOf(paddocks);
    howSure = List.copyOf(howSure);
    before = List.copyOf(before);
  }

  /**
   * What the plan is worth for certain.
   *
   * @param tolerance risk tolerance in money: the larger, the less one minds risk
   * @param worth in money
   */
  public record CertaintyLine(double tolerance, double worth) {}

  /**
   * An input that moves the answer.
   *
   * @param input its name
   * @param varianceShare share of the variance of the gain it explains, 0 to 1
   */
  public record Mover(String input, double varianceShare) {}

  /**
   * Where a gain turns into a loss.
   *
   * @param input name of the input
   * @param paddock whose gain is meant; blank for the whole plan
   * @param unit of the input
   * @param likely its likely value
   * @param value the break-even; empty if there is none
   * @param words the same in words
   */
  public record BreakEvenLine(
      String input,
      String paddock,
      String unit,
      double likely,
      OptionalDouble value,
      String words) {}

  /**
   * Something to find out.
   *
   * @param what in words
   * @param value what knowing it is worth
   * @param price what it costs; empty where it cannot simply be bought
   * @param advice {@code worth doing}, {@code not worth doing} or {@code about even}; without a
   *     price, who could tell
   */
  public record FindOut(String what, double value, OptionalDouble price, String advice) {}

  /**
   * A paddock.
   *
   * @param name its name
   * @param verdict in words
   * @param option what was weighed against keeping; blank if nothing can be done
   * @param gain of that against keeping, the rest of the plan being done
   * @param chanceItPays 0 to 1
   * @param regretOfActing lost on average by acting where keeping is better
   * @param regretOfKeeping missed on average by keeping where acting is better
   * @param betterThanKeeping {@code for everybody}, {@code for the cautious} or blank
   * @param leafTest a laboratory test of its clover leaf
   * @param plants identifying more plants, by number
   * @param bestPlants the number of plants worth doing, if any
   */
  public record PaddockSure(
      String name,
      String verdict,
      String option,
      Range gain,
      double chanceItPays,
      double regretOfActing,
      double regretOfKeeping,
      String betterThanKeeping,
      FindOut leafTest,
      List<FindOut> plants,
      Optional<Integer> bestPlants) {

    /** Copies the list. */
    public PaddockSure {
      plants = List.copyOf(plants);
    }
  }
}
