package swardcase.report;

import java.time.Month;
import java.util.List;
import java.util.Optional;
import swardcase.chance.Drawn;

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
 * @param statement the finding
 * @param tellablePoints ewes in lamb per 100 that can be told from normal variation
 * @param dryJoining whether joining falls on dry feed, which carries little oestrogen
 * @param hardestHit the mob that loses what can be told though the flock as a whole does not
 * @param mobs the same for each mob
 * @param otherDates other days for the rams that would save something, never counted in the plan
 * @param dose dose of the ewes by month
 * @param highestDoseIn month in which its mean is highest
 */
public record Reproduction(
    int ewesJoined,
    Drawn pregnantPercentUnaffected,
    Drawn pregnantPercent,
    Drawn sterilePercent,
    Drawn lambsLostPerYear,
    Drawn costPerYear,
    Finding statement,
    double tellablePoints,
    boolean dryJoining,
    Optional<HardestHit> hardestHit,
    List<MobResult> mobs,
    List<OtherDate> otherDates,
    List<DoseMonth> dose,
    Month highestDoseIn) {

  /**
   * One mob.
   *
   * @param name the mob
   * @param ewes ewes joined
   * @param joining when the rams are in
   * @param doseAtJoining formononetin, % of dry matter eaten, mean over joining
   * @param pregnantPercentUnaffected ewes in lamb per 100 joined without oestrogen
   * @param pregnantPercent the same with it
   * @param statement the finding
   */
  public record MobResult(
      String name,
      int ewes,
      Joining joining,
      Drawn doseAtJoining,
      Drawn pregnantPercentUnaffected,
      Drawn pregnantPercent,
      Finding statement) {}

  /**
   * The finding of a flock or a mob.
   *
   * @param kind which
   * @param points ewes in lamb fewer per 100 joined, mean
   */
  public record Finding(Kind kind, double points) {

    /** Which finding. */
    public enum Kind {
      /** No ewes are joined. */
      NO_EWES,
      /** The loss cannot be told from normal variation. */
      NOT_TOLD,
      /** At least so many are lost: the dose is above those that were tried. */
      AT_LEAST,
      /** About so many are lost. */
      ABOUT
    }
  }

  /**
   * The mob that loses most.
   *
   * @param mob its name
   * @param points ewes in lamb fewer per 100 joined, mean
   */
  public record HardestHit(String mob, double points) {}

  /**
   * When the rams are in.
   *
   * @param month of the first day, 1 is January
   * @param day of that month
   * @param weeks how long, likely
   */
  public record Joining(Month month, int day, double weeks) {}

  /**
   * Another day for a mob's rams: the nearest of the 1st and 16th of every month on which about
   * least is lost to oestrogen, paddocks grazed as now. The feed at lambing is not judged.
   *
   * @param mob its name
   * @param joining when the rams would be in
   * @param lambsSavedPerYear lambs marked more
   * @param worthPerYear their worth, and that of fewer dry ewes
   */
  public record OtherDate(
      String mob, Joining joining, Drawn lambsSavedPerYear, Drawn worthPerYear) {}

  /**
   * Dose in a month.
   *
   * @param month 1 is January
   * @param formononetinPercentOfIntake formononetin, % of dry matter eaten by the ewes
   */
  public record DoseMonth(Month month, Drawn formononetinPercentOfIntake) {}
}
