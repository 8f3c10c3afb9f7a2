package swardcase.report;

import java.util.List;
import swardcase.chance.Range;

/**
 * Effect of oestrogenic clover on the flock as the paddocks are grazed now: a screening estimate,
 * never a diagnosis.
 *
 * @param ewesJoined ewes joined
 * @param pregnantPercentUnaffected ewes in lamb per 100 joined without oestrogen
 * @param pregnantPercent the same with it
 * @param sterilePercent ewes lost for good per 100 joined, part of the above
 * @param lambsLostPerYear lambs not marked
 * @param costPerYear their value and the other costs the user turned on
 * @param statement the finding in a sentence, with "at least" or "not distinguishable" where due
 * @param mobs the same for each mob
 * @param dose dose of the ewes by month
 */
public record Reproduction(
    int ewesJoined,
    Range pregnantPercentUnaffected,
    Range pregnantPercent,
    Range sterilePercent,
    Range lambsLostPerYear,
    Range costPerYear,
    String statement,
    List<MobResult> mobs,
    List<DoseMonth> dose) {

  /** Copies the lists. */
  public Reproduction {
    mobs = List.copyOf(mobs);
    dose = List.copyOf(dose);
  }

  /**
   * One mob.
   *
   * @param name the mob
   * @param ewes ewes joined
   * @param joining such as {@code 30 Jan, 6 weeks}
   * @param doseAtJoining formononetin, % of dry matter eaten, mean over joining
   * @param pregnantPercentUnaffected ewes in lamb per 100 joined without oestrogen
   * @param pregnantPercent the same with it
   * @param statement the finding in a sentence
   */
  public record MobResult(
      String name,
      int ewes,
      String joining,
      Range doseAtJoining,
      Range pregnantPercentUnaffected,
      Range pregnantPercent,
      String statement) {}

  /**
   * Dose in a month.
   *
   * @param month three letters
   * @param formononetinPercentOfIntake formononetin, % of dry matter eaten by the ewes
   */
  public record DoseMonth(String month, Range formononetinPercentOfIntake) {}
}
