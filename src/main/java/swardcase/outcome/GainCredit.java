package swardcase.outcome;

import java.util.Arrays;

/**
 * Splits what a choice for one paddock brings over keeping it, the rest of the plan being done, by
 * {@link Cause}. Its changes are added one after the other, always in the same order, in the same
 * draw:
 *
 * <pre>
 * V0 the paddock kept
 * V1 V0, grazed as with the choice               who grazes it = V1 − V0
 * V2 V1, clover share as if its own mix was sown less clover   = V2 − V1
 * V3 V2, cultivars as they then are              other cultivar = V3 − V2
 * V4 V3, density as it then is                   denser stand  = V4 − V3
 * V  V4, and growth, margins and costs           feed          = V − V4 − crops − costs
 * </pre>
 *
 * <p>Crop margins and costs are sums of their own. A stage that changes nothing is not worked, and
 * its part is exactly 0. The workspace of one thread.
 */
public final class GainCredit {

  private static final Cause[] CAUSES = Cause.values();
  private static final int STAGES = 4;

  private final OutcomeFunction run;
  private double[] before = new double[0];
  private double[] stage = new double[0];

  /** A workspace beside a run. */
  public GainCredit(OutcomeFunction run) {
    this.run = run;
  }

  /**
   * Adds the parts of the gain of a choice; the base of the run must be the plan.
   *
   * @param course the choice, not to keep the paddock
   * @param kept net present value of the plan with the paddock kept
   * @param npv the same with the choice
   * @param into a sum for each cause
   */
  public void add(int paddock, Course course, double kept, double npv, double[] into) {
    int size = run.stageSize();
    if (stage.length != size) {
      before = new double[size];
      stage = new double[size];
    }
    run.addStage(paddock, course, 0, before);
    double value = kept;
    for (int s = 1; s <= STAGES; s++) {
      run.addStage(paddock, course, s, stage);
      if (!Arrays.equals(stage, before)) {
        double then = run.npvOfBaseWith(paddock, course, stage);
        into[CAUSES[s - 1].ordinal()] += then - value;
        value = then;
        double[] last = before;
        before = stage;
        stage = last;
      }
    }
    double crops = run.marginsNow(paddock, course);
    double costs = run.costsNow(paddock, course);
    into[Cause.CROPS.ordinal()] += crops;
    into[Cause.COSTS.ordinal()] += costs;
    run.addStage(paddock, course, STAGES + 1, stage);
    if (!Arrays.equals(stage, before)) {
      into[Cause.FEED.ordinal()] += npv - value - crops - costs;
    }
  }
}
