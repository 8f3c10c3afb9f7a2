package swardcase.chance;

import java.util.List;

/**
 * What it is worth to know one number before choosing, and what would then be chosen.
 *
 * @param worth of knowing it
 * @param picks every choice that would be picked in some draw, the commonest first
 */
public record Learnt(DrawnInformation worth, List<Pick> picks) {

  /**
   * A choice picked by the number.
   *
   * @param choice its place among the payoffs
   * @param chance share of the draws in which it is picked, 0 to 1
   * @param ifHigh whether the number is higher there than in the other draws, on average
   */
  public record Pick(int choice, double chance, boolean ifHigh) {}
}
