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
  private final ChoiceSums choices;
  private final PlanChanges changes;
  private final ActionPaths paths;
  private final int keep;
  private final double[] kept;
  private final double[][] stages;
  private int paddock;
  private double npvKept;

  /** A workspace beside a run. */
  public GainCredit(OutcomeFunction run) {
    this.run = run;
    choices = run.choices();
    changes = run.changes();
    paths = run.paths();
    keep = run.keep();
    kept = new double[choices.years() * choices.sums()];
    stages = new double[STAGES][kept.length];
  }

  /**
   * Goes to a paddock; the base of the run must be the plan, and stay it.
   *
   * @param npv net present value of the plan with the paddock kept
   */
  public void set(int newPaddock, double npv) {
    paddock = newPaddock;
    npvKept = npv;
    choices.fill(kept, paddock, keep, 0);
  }

  /**
   * Adds the parts of the gain of a choice.
   *
   * @param course the choice, not to keep the paddock
   * @param npv net present value of the plan with it
   * @param into a sum for each cause
   */
  public void add(Course course, double npv, double[] into) {
    int first = changes.firstChanged(paddock, course.action(), course.start());
    int from = first * choices.sums();
    for (double[] stage : stages) {
      System.arraycopy(kept, from, stage, from, kept.length - from);
    }
    double rest = -into[Cause.CROPS.ordinal()] - into[Cause.COSTS.ordinal()];
    boolean isOpen = fillStages(course, into);
    rest += into[Cause.CROPS.ordinal()] + into[Cause.COSTS.ordinal()];
    double value = npvKept;
    double[] before = kept;
    for (int s = 0; s < STAGES; s++) {
      if (!Arrays.equals(stages[s], from, kept.length, before, from, kept.length)) {
        double then = changes.npvWith(paddock, stages[s], first, keep);
        into[s] += then - value;
        value = then;
      }
      before = stages[s];
    }
    if (!isOpen) {
      into[Cause.FEED.ordinal()] += npv - value - rest;
    }
  }

  /**
   * Fills the stages from the year in which a choice starts, with costs and margins as kept. The
   * value now of its crop margins, and of its costs and end value, beyond those of keeping it is
   * added to {@code into}.
   *
   * @return whether the choice leaves the paddock open to grazing as it is kept, in every year
   */
  private boolean fillStages(Course course, double[] into) {
    int asKept = paths.at(paddock, keep, 0);
    double density = paths.density(asKept);
    double crops = 0;
    double costs = 0;
    boolean isOpen = true;
    int begins = choices.begins(paddock, course.action(), course.start());
    for (int t = begins; t < choices.years(); t++) {
      int at = choices.pathYear(t, paddock, course.action(), course.start());
      fill(0, t, course, paths.cultivars(asKept) * density, asKept, paths.strength(asKept));
      fill(1, t, course, paths.ownCultivars(at) * density, at, paths.ownStrength(at));
      fill(2, t, course, paths.cultivars(at) * density, at, paths.strength(at));
      fill(3, t, course, paths.cultivars(at) * paths.density(at), at, paths.strength(at));
      isOpen &= paths.open(at) == paths.open(asKept) && paths.other(at) == paths.other(asKept);
      double discount = run.discount(t);
      crops += discount * (paths.marginPerHa(at) - paths.marginPerHa(asKept));
      double paid = paths.costPerHa(at) + paths.labourPerHa(at);
      paid += choices.labourOfRulePerHa(t, paddock, course.action(), course.start());
      costs += discount * (paths.costPerHa(asKept) + paths.labourPerHa(asKept) - paid);
    }
    into[Cause.CROPS.ordinal()] += choices.areaHa(paddock) * crops;
    double end = run.endValueNow(paddock, course.action()) - run.endValueNow(paddock, keep);
    into[Cause.COSTS.ordinal()] += choices.areaHa(paddock) * costs + end;
    return isOpen;
  }

  private void fill(int stage, int t, Course course, double winter, int clover, double strength) {
    choices.fillGrazed(
        stages[stage],
        t,
        paddock,
        course,
        winter,
        paths.cloverShare(clover),
        strength,
        changes.isInOrder());
  }
}
