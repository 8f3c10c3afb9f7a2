package swardcase.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import swardcase.chance.Range;
import swardcase.decision.BreakEvenValue;
import swardcase.decision.HowSure;
import swardcase.decision.Purchase;
import swardcase.decision.Verdict;
import swardcase.farm.Farm;
import swardcase.report.HowSureReport.FindOut;
import swardcase.wording.Texts;
import swardcase.wording.Words;

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
      case ACT -> Texts.get("verdict.act");
      case HOLD_OFF -> Texts.get("verdict.holdOff");
      case KEEP -> Texts.get("verdict.keep");
      case TOO_CLOSE -> Texts.get("verdict.tooClose");
    };
  }

  static String advice(Purchase.Advice advice) {
    return switch (advice) {
      case WORTH_DOING -> Texts.get("advice.worthDoing");
      case NOT_WORTH_DOING -> Texts.get("advice.notWorthDoing");
      case ABOUT_EVEN -> Texts.get("advice.even");
    };
  }

  static String breakEven(BreakEvenValue value) {
    boolean share = AS_PER_CENT.contains(value.input().unit());
    double factor = share ? 100 : 1;
    String unit = share ? " %" : " " + value.input().unit();
    if (value.value().isEmpty()) {
      return Texts.get(
          "breakEven.none",
          Words.about(value.low() * factor),
          Words.about(value.high() * factor),
          unit);
    }
    return Texts.get(
        value.isWithinRange() ? "breakEven.within" : "breakEven.beyond",
        Words.about(value.value().getAsDouble() * factor),
        unit);
  }

  List<String> howSure() {
    List<String> lines = new ArrayList<>();
    if (keepsAll) {
      lines.add(Texts.get("howSure.keepsAll"));
    } else {
      Range npv = found.npv().range();
      lines.add(
          Texts.get(
              npv.isExact() ? "howSure.paysExactly" : "howSure.pays",
              outOfTen(found.npv().chanceAboveZero()),
              Words.likelyMoney(currency, npv),
              Words.ends(npv)));
      lines.add(
          Texts.get(
              found.lossLimit() > 0 ? "howSure.loses" : "howSure.losesAny",
              outOfTen(found.chanceOfUnbearableLoss()),
              Words.aboutMoney(currency, found.lossLimit())));
    }
    lines.add(
        Texts.get(
            "howSure.draws",
            Words.exact(found.draws()),
            found.seed(),
            Words.aboutMoney(currency, 2 * found.npv().standardError())));
    return lines;
  }

  List<String> before(List<FindOut> findOut) {
    List<String> lines = new ArrayList<>();
    if (findOut.isEmpty()) {
      lines.add(Texts.get("before.nothing"));
    }
    for (FindOut each : findOut) {
      String worth = Words.aboutMoney(currency, each.value());
      lines.add(
          each.price().isPresent()
              ? Texts.get(
                  "before.buy",
                  ReasonWords.capital(each.what()),
                  worth,
                  Words.aboutMoney(currency, each.price().getAsDouble()),
                  each.advice())
              : Texts.get("before.know", lowerFirst(each.what()), worth, each.advice()));
    }
    return lines;
  }

  private static String lowerFirst(String name) {
    return name.substring(0, 1).toLowerCase(Locale.ROOT) + name.substring(1);
  }

  /** 0.79 reads {@code 8 of 10}; the ends are said as they are. */
  private static String outOfTen(double chance) {
    if (chance < 0.05) {
      return Texts.get(chance == 0 ? "chance.none" : "chance.few");
    }
    if (chance > 0.95) {
      return Texts.get(chance == 1 ? "chance.all" : "chance.most");
    }
    return Texts.get("chance.ofTen", Math.max(1, Math.min(9, Math.round(10 * chance))));
  }
}
