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

  /** The first causes, each a stage. */
  private static final int STAGES = Cause.CROPS.ordinal();

  private final OutcomeFunction run;
  private final double[] kept;
  private final double[][] stages;
  private int paddock;
  private double npvKept;

  /** A workspace beside a run. */
  public GainCredit(OutcomeFunction run) {
    this.run = run;
    kept = new double[run.stageSize()];
    stages = new double[STAGES][run.stageSize()];
  }

  /**
   * Goes to a paddock; the base of the run must be the plan, and stay it.
   *
   * @param npv net present value of the plan with the paddock kept
   */
  public void set(int newPaddock, double npv) {
    paddock = newPaddock;
    npvKept = npv;
    run.fillKept(paddock, kept);
  }

  /**
   * Adds the parts of the gain of a choice.
   *
   * @param course the choice, not to keep the paddock
   * @param npv net present value of the plan with it
   * @param into a sum for each cause
   */
  public void add(Course course, double npv, double[] into) {
    for (double[] stage : stages) {
      System.arraycopy(kept, 0, stage, 0, kept.length);
    }
    double rest = -into[Cause.CROPS.ordinal()] - into[Cause.COSTS.ordinal()];
    boolean isOpen = run.fillStages(paddock, course, stages, into);
    rest += into[Cause.CROPS.ordinal()] + into[Cause.COSTS.ordinal()];
    double value = npvKept;
    double[] before = kept;
    for (int s = 0; s < STAGES; s++) {
      if (!Arrays.equals(stages[s], before)) {
        double then = run.npvOfBaseWith(paddock, course, stages[s]);
        into[s] += then - value;
        value = then;
      }
      before = stages[s];
    }
    if (!isOpen) {
      into[Cause.FEED.ordinal()] += npv - value - rest;
    }
  }
}
