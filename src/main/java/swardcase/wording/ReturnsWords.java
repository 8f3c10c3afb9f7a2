package swardcase.wording;

import java.util.OptionalDouble;
import swardcase.report.Returns;

/**
 * The returns of a cash flow in words.
 *
 * @param irr internal rate of return: a number, {@code several}, or why there is none
 * @param mirr modified internal rate of return, or why there is none
 * @param payback years, or {@code over 15}
 * @param benefitCost benefit for each unit of cost, or that there is no cost
 */
public record ReturnsWords(String irr, String mirr, String payback, String benefitCost) {

  /** The words of a cash flow over so many years. */
  public static ReturnsWords of(Returns returns, int years) {
    OptionalDouble payback = returns.paybackYears();
    OptionalDouble ratio = returns.benefitCost();
    String none = Texts.get(payback.orElse(1) == 0 ? "returns.noOutlay" : "returns.neverEarned");
    return new ReturnsWords(
        returns.irr().status() == Returns.Status.SEVERAL
            ? Texts.get("returns.several")
            : percent(returns.irr().percent(), none),
        percent(returns.mirrPercent(), none),
        payback.isPresent()
            ? Words.rounded(payback.getAsDouble(), 1)
            : Texts.get("returns.over", years),
        ratio.isPresent() ? Words.rounded(ratio.getAsDouble(), 0.1) : Texts.get("returns.noCost"));
  }

  private static String percent(OptionalDouble percent, String none) {
    return percent.isPresent() ? Words.rounded(percent.getAsDouble(), 1) + " %" : none;
  }
}
