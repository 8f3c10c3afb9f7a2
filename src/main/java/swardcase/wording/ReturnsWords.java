package swardcase.wording;

import java.util.OptionalDouble;
import swardcase.report.Returns;

/**
 * The returns of a cash flow in words.
 *
 * @param irr internal rate of return: a number, {@code none} or {@code several}
 * @param mirr modified internal rate of return, or {@code none}
 * @param payback years, or {@code over 15}
 * @param benefitCost benefit for each unit of cost, or {@code none}
 */
public record ReturnsWords(String irr, String mirr, String payback, String benefitCost) {

  /** The words of a cash flow over so many years. */
  public static ReturnsWords of(Returns returns, int years) {
    OptionalDouble payback = returns.paybackYears();
    OptionalDouble ratio = returns.benefitCost();
    return new ReturnsWords(
        returns.irr().status() == Returns.Status.SEVERAL
            ? Texts.get("returns.several")
            : percent(returns.irr().percent()),
        percent(returns.mirrPercent()),
        payback.isPresent()
            ? Words.rounded(payback.getAsDouble(), 1)
            : Texts.get("returns.over", years),
        ratio.isPresent() ? Words.rounded(ratio.getAsDouble(), 0.1) : Texts.get("returns.none"));
  }

  private static String percent(OptionalDouble percent) {
    return percent.isPresent()
        ? Words.rounded(percent.getAsDouble(), 1) + " %"
        : Texts.get("returns.none");
  }
}
