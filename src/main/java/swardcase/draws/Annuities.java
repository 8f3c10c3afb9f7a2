package swardcase.draws;

import swardcase.money.NetPresentValue;
import swardcase.outcome.OutcomeFunction;

/** Turns present values into equal yearly sums, each draw at its own discount rate. */
public final class Annuities {

  private final double[] perUnit;

  /** For the draws of a simulation. */
  public Annuities(Simulation simulation) {
    var model = simulation.draws().model();
    int rate = model.inputs().place(OutcomeFunction.DISCOUNT_RATE);
    double[] rates = simulation.drawn(rate);
    perUnit = new double[rates.length];
    for (int d = 0; d < rates.length; d++) {
      perUnit[d] = NetPresentValue.annuity(1, rates[d], model.years());
    }
  }

  /**
   * The equal yearly sum, in money, that is worth each present value at its draw's discount rate.
   */
  public double[] of(double[] presentValues) {
    double[] annuities = new double[presentValues.length];
    for (int d = 0; d < annuities.length; d++) {
      annuities[d] = presentValues[d] * perUnit[d];
    }
    return annuities;
  }
}
