package swardcase.search;

import java.util.ArrayList;
import java.util.List;
import swardcase.chance.CertaintyGain;
import swardcase.search.DrawnSample.Trial;

/**
 * What a search raises: the certainty equivalent of a pick over the draws of a sample, less a small
 * sum for each paddock that is not kept, so that nothing is done for next to nothing.
 *
 * @param table the choices
 * @param tolerance tolerance of risk, in money; without limit for the mean
 * @param leastPerChange what a change of a paddock must add to be made, in money
 */
record Aim(PlanTable table, double tolerance, double leastPerChange) {

  /** Errors within which a change may yet gain on other draws. */
  private static final double ERRORS = 2;

  /** A change with what it gains, by the draws of a sample. */
  record Gain(Change change, double gain, double plainError) {

    /** Whether other draws may find that it gains. */
    boolean mayGain() {
      return mayGain(0);
    }

    /** Whether other draws may find that it costs no more than this. */
    boolean mayGain(double cost) {
      return gain + ERRORS * plainError > -cost;
    }
  }

  /** The same for the choices of another table. */
  Aim of(PlanTable other) {
    return new Aim(other, tolerance, leastPerChange);
  }

  /** The same for another tolerance. */
  Aim at(double otherTolerance) {
    return new Aim(table, otherTolerance, leastPerChange);
  }

  /** Gains over these values. */
  CertaintyGain over(double[] values) {
    return new CertaintyGain(values, tolerance);
  }

  /** What picks gain over the first of them, from {@code [pick][0][draw]}. */
  double[] gains(List<Trial> trials, double[][][] values) {
    CertaintyGain gain = over(values[0][0]);
    int changed = table.changed(trials.get(0).pick());
    double[] gains = new double[values.length];
    for (int k = 1; k < gains.length; k++) {
      int more = table.changed(trials.get(k).pick()) - changed;
      gains[k] = gain.of(values[k][0]) - leastPerChange * more;
    }
    return gains;
  }

  /** What each change of a trial gains, from the values of the pick and then of each change. */
  List<Gain> gains(Trial trial, double[][] values) {
    CertaintyGain gain = over(values[0]);
    List<Gain> gains = new ArrayList<>();
    for (int k = 0; k < values.length - 1; k++) {
      Change change = trial.changes().get(k);
      CertaintyGain.Gained gained = gain.gained(values[k + 1]);
      double less = leastPerChange * table.moreChanged(trial.pick(), change);
      gains.add(new Gain(change, gained.gain() - less, gained.plainError()));
    }
    return gains;
  }

  /** The same on a sample, whether or not the changes keep within the limits. */
  List<Gain> gains(DrawnSample sample, int[] pick, List<Change> changes) {
    if (changes.isEmpty()) {
      return List.of();
    }
    Trial trial = new Trial(pick, changes);
    return gains(trial, sample.values(List.of(trial))[0]);
  }
}
