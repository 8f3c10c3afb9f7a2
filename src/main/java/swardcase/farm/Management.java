package swardcase.farm;

import swardcase.check.Check;
import swardcase.evidence.Assumption;

/**
 * Choices of the flock's manager that are numbers.
 *
 * @param conditionDeficit share of daily energy need the ewes may take from their backs: 0.10
 * @param mostEweIncrease most by which ewe numbers may rise: 0.2 is a fifth
 * @param weaningWeeks weeks from lambing to weaning
 * @param lossLimit loss (present value, per farm) that the user would not bear
 * @param useRule own time that a use rule takes, money per ha and year
 * @param scanPerEwe price of scanning a ewe
 * @param grazingInOrder own time that grazing in order takes, money per ewe and year
 */
public record Management(
    Assumption conditionDeficit,
    Assumption mostEweIncrease,
    Assumption weaningWeeks,
    Assumption lossLimit,
    Assumption useRule,
    Assumption scanPerEwe,
    Assumption grazingInOrder) {

  /** Checks ranges. */
  public Management {
    Check.inRange(conditionDeficit.range().high(), 0, 0.5, "deficit carried by the ewes");
    Check.inRange(mostEweIncrease.likely(), 0, 3, "largest rise in ewe numbers");
    Check.inRange(weaningWeeks.likely(), 4, 30, "weeks to weaning");
  }
}
