package swardcase.page;

import java.util.List;
import java.util.Locale;
import java.util.stream.DoubleStream;
import java.util.stream.Stream;
import swardcase.chance.Drawn;

/** Small pictures: bars of ranges on one scale. The numbers stand beside them in words. */
final class Figures {

  private static final int WIDTH = 200;
  private static final int HEIGHT = 18;

  private final double low;
  private final double high;

  /** Bars on a scale that holds all of these and zero. */
  Figures(List<Drawn> all) {
    low = ends(all).min().orElse(0);
    high = Math.max(low + 1e-9, ends(all).max().orElse(1));
  }

  private static DoubleStream ends(List<Drawn> all) {
    return Stream.concat(Stream.of(Drawn.exactly(0)), all.stream())
        .flatMapToDouble(one -> DoubleStream.of(one.low(), one.mean(), one.high()));
  }

  /** A line from the low to the high end with a stroke at the mean, and an upright line at zero. */
  Html bar(Drawn of) {
    Html svg = new Html();
    svg.open("svg class=bar viewBox=? aria-hidden=true", "0 0 " + WIDTH + " " + HEIGHT);
    line(svg, "zero", at(0), 0, at(0), HEIGHT);
    line(svg, "range", at(of.low()), 9, Math.max(at(of.low()) + 1, at(of.high())), 9);
    line(svg, "mean", at(of.mean()), 3, at(of.mean()), 15);
    return svg.close();
  }

  private double at(double value) {
    return 3 + (WIDTH - 6) * (value - low) / (high - low);
  }

  private static void line(Html svg, String name, double x1, double y1, double x2, double y2) {
    svg.open("line class=? x1=? y1=? x2=? y2=?", name, s(x1), s(y1), s(x2), s(y2));
  }

  private static String s(double place) {
    return String.format(Locale.ROOT, "%.1f", place);
  }
}
