package swardcase.wording;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalInt;
import swardcase.chance.Range;
import swardcase.report.Call;
import swardcase.report.PaddockResult;
import swardcase.report.PaddockResult.GainParts;
import swardcase.report.PaddockResult.OptionResult;
import swardcase.report.PaddockResult.WhyNot;
import swardcase.report.Reason;
import swardcase.report.Report;

/** What is done with a paddock and why, in sentences with the deciding number in them. */
public final class PaddockWords {

  /** Sums of money below this are not worth a word. */
  private static final double SMALL = 10;

  /** A share of old clover below this is printed as none. */
  private static final double HALF_PER_CENT = 0.005;

  /** Year in between at which the share of old clover is told. */
  private static final int LATER = 5;

  private final String currency;
  private final int years;

  /** Words of the paddocks of a farm. */
  public PaddockWords(Report.FarmHead farm) {
    currency = farm.currency();
    years = farm.horizonYears();
  }

  /** What to do with a paddock in a few words: the action where the draws speak for it. */
  public static String verdict(Call call, String actionName) {
    return call == Call.ACT || call == Call.KEEP_OFF
        ? Texts.capital(actionName)
        : Texts.of("reason", call);
  }

  /** The same of a paddock. */
  public static String verdict(PaddockResult paddock) {
    return verdict(paddock.call(), paddock.actionName());
  }

  /** A calendar year; {@code none} where there is none. */
  public static String year(OptionalInt year, String none) {
    return year.isPresent() ? Integer.toString(year.getAsInt()) : none;
  }

  /** The reason in a sentence or two. */
  public String reason(PaddockResult paddock) {
    Reason reason = paddock.reason();
    return switch (reason.kind()) {
      case PAYS -> gains(paddock.parts().orElseThrow()) + " " + within(paddock);
      case NOTHING_ELSE, NOTHING_TO_GAIN -> Texts.of("reason", reason.kind());
      case EFFORT, SELDOM -> {
        OptionResult best = option(paddock);
        yield Texts.of("reason", reason.kind(), best.name(), money(best.npv().likely()));
      }
      case NOT_ARABLE -> Texts.of("reason", reason.kind(), found(reason));
      case WOULD_LOSE -> {
        OptionResult sowing = option(paddock);
        yield Texts.of(
            "reason",
            reason.kind(),
            found(reason),
            sowing.name(),
            money(reason.cost().orElseThrow()),
            money(Math.max(0, -sowing.npv().likely())));
      }
      case CLOSE_TO_EFFORT, CLOSE -> close(paddock);
    };
  }

  private static OptionResult option(PaddockResult paddock) {
    return paddock.option(paddock.reason().action().orElseThrow()).orElseThrow();
  }

  private static String found(Reason reason) {
    double old = reason.oldShare().orElseThrow();
    return old < HALF_PER_CENT
        ? Texts.get("reason.noOld")
        : Texts.get("reason.old", Words.percent(old));
  }

  /** What the action alone brings, part by part; small parts are left out. */
  private String gains(GainParts brought) {
    List<String> parts = new ArrayList<>();
    add(parts, "reason.lambs", brought.lambs());
    add(parts, "reason.feed", brought.feed());
    add(parts, "reason.crops", brought.crops());
    add(parts, "reason.feedLost", -brought.feed());
    return parts.isEmpty()
        ? Texts.get("reason.together")
        : Texts.get("reason.parts", years, String.join(", ", parts));
  }

  private void add(List<String> parts, String key, double value) {
    if (value >= SMALL) {
      parts.add(Texts.get(key, money(value)));
    }
  }

  /** On its own, and as the plan's last piece. */
  private String within(PaddockResult paddock) {
    Range within = paddock.npv();
    Range alone = paddock.npvAlone();
    boolean alike = alone.likely() < 0 == within.likely() < 0;
    return Texts.get(
        alike ? "reason.within" : "reason.withinBut",
        gainsOrLoses(alone),
        currency + " " + Words.rounded(Math.abs(within.likely()), Words.step(within)),
        gainsOrLoses(within));
  }

  private String close(PaddockResult paddock) {
    OptionResult option = option(paddock);
    Range npv = option.npv();
    double step = Words.step(npv);
    String counted = paddock.start().isPresent() ? Texts.get("reason.counted") + " " : "";
    String likely = Texts.get("reason.likely", option.name(), gainsOrLoses(npv));
    return counted
        + (paddock.reason().kind() == Reason.Kind.CLOSE_TO_EFFORT
            ? Texts.get("reason.closeToEffort", likely, Words.ends(npv), money(paddock.effort()))
            : Texts.get(
                "reason.anything",
                likely,
                signed("reason.aGain", "reason.aLoss", npv.low(), step),
                signed("reason.aGain", "reason.aLoss", npv.high(), step)));
  }

  private String gainsOrLoses(Range npv) {
    return signed("reason.gains", "reason.loses", npv.likely(), Words.step(npv));
  }

  /** A gain or a loss with the digits that its range deserves. */
  private String signed(String gain, String loss, double value, double step) {
    return Texts.get(
        value < 0 ? loss : gain, currency + " " + Words.rounded(Math.abs(value), step));
  }

  /** Why an option was not chosen; blank for the planned one. */
  public String whyNot(OptionResult option) {
    if (option.whyNot().isEmpty()) {
      return "";
    }
    WhyNot why = option.whyNot().get();
    double npv = option.npv().likely();
    return Texts.of(
        "whyNot",
        why.kind(),
        money(why.kind() == WhyNot.Kind.LOSES ? -npv : npv),
        money(why.plannedNpv().orElse(0)));
  }

  /** How the share of old clover would move with an option; blank if that is not known. */
  public static String oldClover(OptionResult option) {
    List<Double> old = option.oldShareByYear();
    if (old.size() < 2) {
      return "";
    }
    int last = old.size() - 1;
    int later = Math.min(LATER, last);
    return Texts.get(
        later == last ? "cards.oldShare" : "cards.oldShare.later",
        Words.percent(old.get(0)),
        Words.percent(old.get(later)),
        later,
        Words.percent(old.get(last)),
        last);
  }

  private String money(double value) {
    return Words.aboutMoney(currency, Math.abs(value) < SMALL ? Math.rint(value) : value);
  }
}
