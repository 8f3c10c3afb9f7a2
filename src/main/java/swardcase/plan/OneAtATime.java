package swardcase.plan;

import java.util.List;
import java.util.stream.IntStream;
import swardcase.chance.Range;
import swardcase.evidence.Assumption;

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
 */
public final class OneAtATime {

  private final List<Assumption> inputs;
  private final double[] likely;
  private final double[][] atLow;
  private final double[][] atHigh;

  private OneAtATime(
      List<Assumption> inputs, double[] likely, double[][] atLow, double[][] atHigh) {
    this.inputs = inputs;
    this.likely = likely;
    this.atLow = atLow;
    this.atHigh = atHigh;
  }

  /** Runs all inputs; the answer does not depend on the number of threads. */
  public static OneAtATime of(FarmModel model, Measures measures) {
    List<Assumption> inputs = model.inputs().all();
    double[] likely = new double[measures.size()];
    measures.read(model.newRun(), likely);
    double[][] atLow = new double[inputs.size()][];
    double[][] atHigh = new double[inputs.size()][];
    ThreadLocal<Run> runs = ThreadLocal.withInitial(model::newRun);
    IntStream.range(0, inputs.size())
        .parallel()
        .forEach(
            j -> {
              Range range = inputs.get(j).range();
              atLow[j] = readAt(model, measures, runs.get(), j, range.low(), likely);
              atHigh[j] = readAt(model, measures, runs.get(), j, range.high(), likely);
            });
    return new OneAtATime(inputs, likely, atLow, atHigh);
  }

  private static double[] readAt(
      FarmModel model, Measures measures, Run run, int j, double value, double[] likely) {
    double[] x = model.inputs().likely();
    if (x[j] == value) {
      return likely;
    }
    x[j] = value;
    run.set(x);
    double[] read = new double[measures.size()];
    measures.read(run, read);
    return read;
  }

  /** Likely value of a measure. */
  public double likely(int measure) {
    return likely[measure];
  }

  /** Range of a measure. */
  public Range range(int measure) {
    double down = 0;
    double up = 0;
    for (int j = 0; j < inputs.size(); j++) {
      double low = atLow[j][measure] - likely[measure];
      double high = atHigh[j][measure] - likely[measure];
      down += square(Math.min(0, Math.min(low, high)));
      up += square(Math.max(0, Math.max(low, high)));
    }
    return Range.of(
        likely[measure] - Math.sqrt(down), likely[measure], likely[measure] + Math.sqrt(up));
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

  /** Places of the inputs that move a measure, most first; those that do not are left out. */
  public List<Integer> moving(int measure) {
    return IntStream.range(0, inputs.size())
        .filter(j -> swing(j, measure) > 0)
        .boxed()
        .sorted((a, b) -> Double.compare(swing(b, measure), swing(a, measure)))
        .toList();
  }

  private double swing(int input, int measure) {
    return Math.abs(atHigh[input][measure] - atLow[input][measure]);
  }

  /** The measure with one input at its low end. */
  public double atLow(int input, int measure) {
    return atLow[input][measure];
  }

  /** The measure with one input at its high end. */
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
