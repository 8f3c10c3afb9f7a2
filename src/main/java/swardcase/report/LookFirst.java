package swardcase.report;

import java.util.Optional;
import java.util.OptionalDouble;
import swardcase.chance.Range;
import swardcase.sward.StandGate;

/**
 * Something to look at before a paddock is sown: it may hold the clover back whatever the cultivar.
 *
 * @param what which
 * @param state poor, between the critical values, or unknown; what is good is not listed
 * @param value the number found; empty where there is none
 * @param critical what a number is held against; empty where it is no number
 * @param cost price of looking; soil phosphorus and acidity come from one test, nodules and roots
 *     from one digging
 * @param costCurrency the currency of that price
 */
public record LookFirst(
    StandGate.What what,
    StandGate.State state,
    OptionalDouble value,
    Optional<Critical> critical,
    Range cost,
    String costCurrency) {

  /** The record of a finding. */
  static LookFirst of(StandGate.Finding finding) {
    return new LookFirst(
        finding.what(),
        finding.state(),
        finding.value(),
        finding.critical().map(each -> new Critical(each.poorBelow(), each.goodFrom())),
        finding.look().range(),
        finding.look().unit());
  }

  /**
   * What a number is held against, in its unit.
   *
   * @param poorBelow poor below this
   * @param goodFrom good from here on, unsettled between; empty where nobody can tell
   */
  public record Critical(double poorBelow, OptionalDouble goodFrom) {}
}
