package swardcase.money;

import java.util.Arrays;
import java.util.SplittableRandom;

/** Yearly flows for the tests. */
final class Flows {

  private Flows() {}

  /** Flows with spaces between them, the first now. */
  static double[] parse(String text) {
    return Arrays.stream(text.split(" ")).mapToDouble(Double::parseDouble).toArray();
  }

  /** An outlay now, then inflows only. */
  static double[] outlayThenInflows(SplittableRandom random) {
    double[] flows = random.doubles(random.nextLong(3, 25), 0, 1e4).toArray();
    flows[0] = -random.nextDouble(1e3, 1e5);
    return flows;
  }
}
