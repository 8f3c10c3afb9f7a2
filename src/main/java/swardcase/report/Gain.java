package swardcase.report;

import swardcase.chance.Drawn;
import swardcase.draws.Spread;

/**
 * A gain of money over the draws, net present value over the years counted.
 *
 * @param mean over the draws
 * @param low passed downwards in 5 draws of 100
 * @param high passed upwards in 5 draws of 100
 * @param chancePays share of the draws in which it is above nothing, 0 to 1
 */
public record Gain(double mean, double low, double high, double chancePays) {

  /** No gain in any draw. */
  static final Gain NOTHING = new Gain(0, 0, 0, 0);

  static Gain of(Spread spread) {
    return new Gain(spread.mean(), spread.low(), spread.high(), spread.chanceAboveZero());
  }

  /** Its mean and its ends. */
  public Drawn drawn() {
    return Drawn.of(mean, low, high);
  }
}
