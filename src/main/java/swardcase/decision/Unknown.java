package swardcase.decision;

import swardcase.chance.DrawnInformation;
import swardcase.chance.Learnt;
import swardcase.chance.StraightLine;
import swardcase.evidence.Assumption;

/**
 * One uncertain number, how the gain moves with it, and what it would be worth to know it first.
 *
 * @param name of the number, without the action where several share it
 * @param place of the input in the register
 * @param input the number
 * @param learnt what it is worth to know it alone, and what would then be chosen
 * @param counts whether that value is more than luck, with so many numbers tried
 * @param line the gain over it, in the draws
 * @param moves whether the slope of that line is more than luck, with so many numbers tried
 */
public record Unknown(
    String name,
    int place,
    Assumption input,
    Learnt learnt,
    boolean counts,
    StraightLine line,
    boolean moves) {

  /** What it is worth to know it alone. */
  public DrawnInformation value() {
    return learnt.worth();
  }

  /** Share of the variance of the gain that the straight line explains, 0 to 1. */
  public double varianceShare() {
    return line.varianceShare();
  }
}
