package swardcase.decision;

import java.util.stream.IntStream;
import swardcase.chance.Range;
import swardcase.chance.SideBySide;
import swardcase.chance.Workspaces;
import swardcase.draws.DrawnFarm;
import swardcase.draws.Draws;
import swardcase.outcome.FarmModel;
import swardcase.outcome.OutcomeFunction;

/**
 * What the plan in hand gains at other prices of lambs and of supplement. The plan is not sought
 * anew: every draw is worked out again with both prices held, all else as it was drawn.
 *
 * @param lamb low, likely and high net value of a lamb
 * @param supplement low, likely and high price of a tonne
 * @param gains mean over the draws by place of the lamb's value, then of the price of supplement
 */
public record PriceGains(Range lamb, Range supplement, double[][] gains) {

  private static final int ENDS = 3;

  /** The gains of a decision's plan: nine times the work of one plan in every draw. */
  public static PriceGains of(Decision decision) {
    Draws draws = decision.simulation().draws();
    FarmModel model = draws.model();
    int lambPlace = model.inputs().place(OutcomeFunction.LAMB_VALUE);
    int supplementPlace = model.inputs().place(OutcomeFunction.SUPPLEMENT_PRICE);
    Range lamb = model.farm().prices().netValuePerLamb().range();
    Range supplement = model.farm().supplement().pricePerTonne().range();
    double[][] drawn = new double[draws.count()][];
    Workspaces<DrawnFarm> workspaces = new Workspaces<>(() -> new DrawnFarm(model));
    SideBySide.of(IntStream.range(0, drawn.length))
        .forEach(
            d ->
                drawn[d] =
                    workspaces.with(
                        farm -> {
                          farm.set(draws, d);
                          double[] gains = new double[ENDS * ENDS];
                          for (int k = 0; k < gains.length; k++) {
                            gains[k] =
                                farm.with(
                                        new int[] {lambPlace, supplementPlace},
                                        new double[] {
                                          end(lamb, k / ENDS), end(supplement, k % ENDS)
                                        })
                                    .setBase(decision.plan());
                          }
                          return gains;
                        }));
    double[][] mean = new double[ENDS][ENDS];
    for (double[] gains : drawn) {
      for (int k = 0; k < gains.length; k++) {
        mean[k / ENDS][k % ENDS] += gains[k] / drawn.length;
      }
    }
    return new PriceGains(lamb, supplement, mean);
  }

  /** An end of a range by its place: low, likely, high. */
  static double end(Range range, int place) {
    return place == 0 ? range.low() : place == 1 ? range.likely() : range.high();
  }
}
