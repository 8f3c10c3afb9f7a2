package swardcase.paper;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import swardcase.chance.Drawn;

/**
 * A straight scale from values to places on the page.
 *
 * @param low the value at {@code from}
 * @param high the value at {@code to}
 * @param from place of {@code low}, points
 * @param to place of {@code high}, points
 */
public record Scale(double low, double high, double from, double to) {

  public Scale {
    if (!(high > low)) {
      high = low + 1;
    }
  }

  /** A scale over all results and zero. */
  public static Scale over(Stream<Drawn> drawn, double from, double to) {
    double[] ends = {0, 0};
    drawn.forEach(
        each -> {
          ends[0] = Math.min(ends[0], Math.min(each.low(), each.mean()));
          ends[1] = Math.max(ends[1], Math.max(each.high(), each.mean()));
        });
    return new Scale(ends[0], ends[1], from, to);
  }

  /** Where a value lies, in points. */
  public double at(double value) {
    return from + (value - low) / (high - low) * (to - from);
  }

  /** Round values within the scale, at most about {@code most}. */
  public List<Double> ticks(int most) {
    double rough = (high - low) / most;
    double power = Math.pow(10, Math.floor(Math.log10(rough)));
    double step =
        power * (rough <= power ? 1 : rough <= 2 * power ? 2 : rough <= 5 * power ? 5 : 10);
    List<Double> ticks = new ArrayList<>();
    for (long i = (long) Math.ceil(low / step - 1e-9); i * step <= high + step * 1e-9; i++) {
      ticks.add(i * step);
    }
    return ticks;
  }
}
