package swardcase.report;

import java.util.Arrays;
import java.util.List;
import swardcase.outcome.MoneyKind;
import swardcase.outcome.Outcome;
import swardcase.outcome.OutcomeFunction;

/**
 * One kind of money in a gain. The parts of a gain add up to its mean.
 *
 * @param what which kind
 * @param mean present value, mean over the draws; costs and labour are below nothing
 */
public record GainPart(MoneyKind what, double mean) {

  /** The parts of what an outcome brings more than another, both means over the same draws. */
  static List<GainPart> of(Outcome outcome, Outcome than, OutcomeFunction discounting) {
    return Arrays.stream(MoneyKind.values())
        .map(kind -> new GainPart(kind, now(kind, outcome, than, discounting)))
        .toList();
  }

  private static double now(
      MoneyKind kind, Outcome outcome, Outcome than, OutcomeFunction discounting) {
    double sum = 0;
    for (int t = 0; t < outcome.years(); t++) {
      sum += discounting.discount(t) * (outcome.money(kind, t) - than.money(kind, t));
    }
    return sum;
  }
}
