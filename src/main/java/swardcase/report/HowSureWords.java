package swardcase.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import swardcase.chance.Range;
import swardcase.farm.Farm;
import swardcase.findings.BreakEvenValue;
import swardcase.findings.HowSure;
import swardcase.findings.Purchase;
import swardcase.findings.Verdict;
import swardcase.report.HowSureReport.FindOut;

/** The findings in sentences a farmer reads in a minute. */
final class HowSureWords {

  private static final Set<String> AS_PER_CENT = Set.of("-", "fraction", "per year");

  private final String currency;
  private final HowSure found;
  private final boolean keepsAll;

  HowSureWords(Farm farm, HowSure found) {
    this.found = found;
    currency = farm.currency();
    keepsAll = found.npv().low() == 0 && found.npv().high() == 0;
  }

  static String verdict(Verdict verdict) {
    return switch (verdict) {
      case ACT -> "act";
      case HOLD_OFF -> "hold joining ewes off";
      case KEEP -> "keep";
      case TOO_CLOSE -> "too close to call";
    };
  }

  static String advice(Purchase.Advice advice) {
    return switch (advice) {
      case WORTH_DOING -> "worth doing";
      case NOT_WORTH_DOING -> "not worth doing";
      case ABOUT_EVEN -> "about even";
    };
  }

  static String breakEven(BreakEvenValue value) {
    boolean share = AS_PER_CENT.contains(value.input().unit());
    double factor = share ? 100 : 1;
    String unit = share ? " %" : " " + value.input().unit();
    if (value.value().isEmpty()) {
      return "no break-even from "
          + Words.about(value.low() * factor)
          + " to "
          + Words.about(value.high() * factor)
          + unit;
    }
    return Words.about(value.value().getAsDouble() * factor)
        + unit
        + (value.isWithinRange() ? ", which may well be" : ", beyond what you expect");
  }

  List<String> howSure() {
    List<String> lines = new ArrayList<>();
    if (keepsAll) {
      lines.add("The plan keeps everything, so it neither gains nor loses.");
    } else {
      lines.add(
          "The plan pays in "
              + outOfTen(found.npv().chanceAboveZero())
              + " cases. In the middle case it brings "
              + Words.likelyMoney(currency, found.npv().range())
              + ends(found.npv().range())
              + ".");
      lines.add(
          found.lossLimit() > 0
              ? "It loses more than "
                  + Words.aboutMoney(currency, found.lossLimit())
                  + " in "
                  + outOfTen(found.chanceOfUnbearableLoss())
                  + " cases."
              : "It loses something in "
                  + outOfTen(found.chanceOfUnbearableLoss())
                  + " cases; give the loss you would not bear to have it counted.");
    }
    lines.add(
        found.draws()
            + " draws from seed "
            + found.seed()
            + String.format(
                Locale.ROOT,
                "; the mean is known to within %s.",
                Words.aboutMoney(currency, 2 * found.npv().standardError())));
    return lines;
  }

  /** The two ends as a clause, or nothing where there is no range. */
  private static String ends(Range range) {
    return range.isExact() ? "" : "; in nine cases of ten, something from " + Words.ends(range);
  }

  List<String> before(List<FindOut> findOut) {
    List<String> lines = new ArrayList<>();
    if (findOut.isEmpty()) {
      lines.add("Nothing you could find out would change the plan enough to pay for the trouble.");
    }
    for (FindOut each : findOut) {
      String worth = "is worth about " + Words.aboutMoney(currency, each.value());
      lines.add(
          each.price().isPresent()
              ? ReasonWords.capital(each.what())
                  + " "
                  + worth
                  + " and costs "
                  + Words.aboutMoney(currency, each.price().getAsDouble())
                  + ": "
                  + each.advice()
                  + "."
              : "To know the "
                  + lowerFirst(each.what())
                  + " for certain "
                  + worth
                  + ": "
                  + each.advice()
                  + ".");
    }
    return lines;
  }

  private static String lowerFirst(String name) {
    return name.substring(0, 1).toLowerCase(Locale.ROOT) + name.substring(1);
  }

  /** 0.79 reads {@code 8 of 10}; the ends are said as they are. */
  private static String outOfTen(double chance) {
    if (chance < 0.05) {
      return chance == 0 ? "none of the" : "fewer than 1 of 20";
    }
    if (chance > 0.95) {
      return chance == 1 ? "all" : "more than 19 of 20";
    }
    return Math.max(1, Math.min(9, Math.round(10 * chance))) + " of 10";
  }
}
