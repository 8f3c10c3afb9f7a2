package swardcase.draws;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import swardcase.chance.Range;
import swardcase.chance.SideBySide;
import swardcase.chance.Workspaces;
import swardcase.check.Check;
import swardcase.evidence.Assumption;
import swardcase.evidence.UncertainNumbers;
import swardcase.outcome.FarmModel;
import swardcase.outcome.OutcomeFunction;

/**
 * The low and high run: every uncertain input is taken to its low and to its high end alone, the
 * others staying likely, and each measure is read again.
 *
 * <p>The range of a measure adds the swings as independent errors are added: with d the change
 * caused by one input at one end,
 *
 * <pre> low = likely - sqrt(sum of min(0, d)^2)      high = likely + sqrt(sum of max(0, d)^2)
 * </pre>
 *
 * where of one input's two ends only the lower counts into {@code low} and only the higher into
 * {@code high}. Two inputs that move a measure by -3 and -4 give likely - 5. This leaves out that
 * inputs may work on each other (inferred).
 *
 * <p>Swings are added up while the inputs are read, so that no more than a few inputs' readings are
 * held at a time; those of the first {@link Measures#kept} measures stay.
 */
public final class OneAtATime {

  private static final int INPUTS_AT_A_TIME = 64;
  private static final int NONE = -1;

  private final List<Assumption> inputs;
  private final int kept;
  private final double[] likely;
  private final double[] down;
  private final double[] up;
  private final double[] most;
  private final int[] strongest;
  private final double[][] atLow;
  private final double[][] atHigh;

  private OneAtATime(List<Assumption> inputs, double[] likely, int kept) {
    this.inputs = inputs;
    this.likely = likely;
    this.kept = kept;
    down = new double[likely.length];
    up = new double[likely.length];
    most = new double[likely.length];
    strongest = new int[likely.length];
    Arrays.fill(strongest, NONE);
    atLow = new double[inputs.size()][];
    atHigh = new double[inputs.size()][];
  }

  /** Runs all inputs; the answer does not depend on the number of threads. */
  public static OneAtATime of(FarmModel model, Measures measures) {
    return of(model, measures, measures.kept());
  }

  /** The same with another number of measures kept. */
  public static OneAtATime of(FarmModel model, Measures measures, int kept) {
    double[] likely = new double[measures.size()];
    measures.read(model.newRun(), likely);
    OneAtATime all = new OneAtATime(model.inputs().all(), likely, kept);
    Workspaces<Ends> ends = new Workspaces<>(() -> new Ends(model, measures, likely));
    double[][] low = new double[INPUTS_AT_A_TIME][];
    double[][] high = new double[INPUTS_AT_A_TIME][];
    for (int from = 0; from < all.inputs.size(); from += INPUTS_AT_A_TIME) {
      int first = from;
      int count = Math.min(INPUTS_AT_A_TIME, all.inputs.size() - first);
      SideBySide.of(IntStream.range(0, count))
          .forEach(
              k -> {
                Range range = all.inputs.get(first + k).range();
                low[k] = ends.with(one -> one.readAt(first + k, range.low()));
                high[k] = ends.with(one -> one.readAt(first + k, range.high()));
              });
      for (int k = 0; k < count; k++) {
        all.add(first + k, low[k], high[k]);
      }
    }
    return all;
  }

  /** Readings with one input moved, one input at a time. */
  private static final class Ends {

    private final UncertainNumbers inputs;
    private final Measures measures;
    private final double[] likely;
    private final double[] x;
    private final OutcomeFunction ofFarm;
    private final OutcomeFunction ofPaddocks;

    Ends(FarmModel model, Measures measures, double[] likely) {
      this.measures = measures;
      this.likely = likely;
      inputs = model.inputs();
      x = inputs.likely();
      ofFarm = model.newRun();
      ofPaddocks = model.newRun();
    }

    double[] readAt(int j, double value) {
      double usual = x[j];
      if (usual == value) {
        return likely;
      }
      x[j] = value;
      double[] read = new double[likely.length];
      if (inputs.paddock(j) == UncertainNumbers.WHOLE_FARM) {
        ofFarm.set(x);
        measures.read(ofFarm, read);
      } else {
        ofPaddocks.setPaddock(inputs.paddock(j), x);
        measures.read(ofPaddocks, read);
      }
      x[j] = usual;
      return read;
    }
  }

  private void add(int j, double[] low, double[] high) {
    if (low == likely && high == likely) {
      atLow[j] = likely;
      atHigh[j] = likely;
      return;
    }
    for (int measure = 0; measure < likely.length; measure++) {
      double toLow = low[measure] - likely[measure];
      double toHigh = high[measure] - likely[measure];
      down[measure] += square(Math.min(0, Math.min(toLow, toHigh)));
      up[measure] += square(Math.max(0, Math.max(toLow, toHigh)));
      double swing = Math.abs(high[measure] - low[measure]);
      if (swing > most[measure]) {
        most[measure] = swing;
        strongest[measure] = j;
      }
    }
    atLow[j] = low == likely ? likely : Arrays.copyOf(low, kept);
    atHigh[j] = high == likely ? likely : Arrays.copyOf(high, kept);
  }

  /** Likely value of a measure. */
  public double likely(int measure) {
    return likely[measure];
  }

  /** Range of a measure. */
  public Range range(int measure) {
    return Range.of(
        likely[measure] - Math.sqrt(down[measure]),
        likely[measure],
        likely[measure] + Math.sqrt(up[measure]));
  }

  /** Range of a measure that cannot leave these limits, such as a share or a weight. */
  public Range range(int measure, double least, double most) {
    Range range = range(measure);
    double centre = clamp(range.likely(), least, most);
    return Range.of(
        Math.min(centre, clamp(range.low(), least, most)),
        centre,
        Math.max(centre, clamp(range.high(), least, most)));
  }

  private static double clamp(double value, double least, double most) {
    return Math.max(least, Math.min(most, value));
  }

  /** The input that moves a measure most, the first of equals; empty if none does. */
  public Optional<Assumption> strongest(int measure) {
    return strongest[measure] == NONE
        ? Optional.empty()
        : Optional.of(inputs.get(strongest[measure]));
  }

  /** Places of the inputs that move a kept measure, most first; those that do not are left out. */
  public List<Integer> moving(int measure) {
    Check.that(measure < kept, "the ends of measure %s were not kept", measure);
    return IntStream.range(0, inputs.size())
        .filter(j -> swing(j, measure) > 0)
        .boxed()
        .sorted((a, b) -> Double.compare(swing(b, measure), swing(a, measure)))
        .toList();
  }

  private double swing(int input, int measure) {
    return Math.abs(atHigh[input][measure] - atLow[input][measure]);
  }

  /** A kept measure with one input at its low end. */
  public double atLow(int input, int measure) {
    return atLow[input][measure];
  }

  /** A kept measure with one input at its high end. */
  public double atHigh(int input, int measure) {
    return atHigh[input][measure];
  }

  /** The inputs, in the order of their places. */
  public List<Assumption> inputs() {
    return inputs;
  }

  private static double square(double value) {
    return value * value;
  }
}
