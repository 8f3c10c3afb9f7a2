package swardcase.report;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import swardcase.chance.Range;
import swardcase.decision.Decision;
import swardcase.decision.Decision.Option;
import swardcase.decision.HowSure;
import swardcase.decision.PaddockFindings;
import swardcase.decision.Verdict;
import swardcase.evidence.Assumption;
import swardcase.farm.Action;
import swardcase.outcome.Outcome;
import swardcase.wording.Texts;
import swardcase.wording.Words;

/** Why a paddock's answer is what it is, in sentences with the deciding number in them. */
final class ReasonWords {

  /** Sums of money below this are not worth a word. */
  private static final double SMALL = 10;

  private final Decision decision;
  private final HowSure howSure;
  private final String currency;
  private final double rate;

  ReasonWords(Decision decision, HowSure howSure) {
    this.decision = decision;
    this.howSure = howSure;
    currency = decision.model().farm().currency();
    rate = decision.model().farm().finance().discountRate().likely();
  }

  /** What to do, as the draws have it. */
  Verdict call(int paddock) {
    return howSure.paddock(paddock).verdict();
  }

  /**
   * Net present value of an option, the rest of the plan being done; of the option alone where it
   * does not fit beside the plan.
   */
  Range npv(int paddock, Option option) {
    return howSure.paddock(paddock).options().stream()
        .filter(found -> found.choice().action() == option.action())
        .findFirst()
        .map(found -> found.gain().range())
        .orElse(option.npv());
  }

  /** The verdict in a few words. */
  String verdict(int paddock) {
    return switch (call(paddock)) {
      case ACT, HOLD_OFF -> capital(plannedAction(paddock).name());
      case KEEP -> Texts.get("reason.keep");
      case TOO_CLOSE -> Texts.get("reason.tooClose");
    };
  }

  /** The reason in a sentence or two. */
  String reason(int paddock) {
    return switch (call(paddock)) {
      case ACT, HOLD_OFF -> gains(planned(paddock).orElseThrow().outcome()) + within(paddock);
      case KEEP -> whyKeep(paddock);
      case TOO_CLOSE -> whyClose(paddock);
    };
  }

  /** The input to find out first; blank where the verdict does not hang on one. */
  String deciding(int paddock) {
    return call(paddock) == Verdict.TOO_CLOSE
        ? decision.deciding(paddock).map(Assumption::name).orElse("")
        : "";
  }

  /** Why an option was not chosen; blank for the chosen one. */
  String whyNot(int paddock, Option option) {
    if (isPlanned(paddock, option)) {
      return "";
    }
    double npv = npv(paddock, option).likely();
    if (npv <= 0) {
      return Texts.get("whyNot.loses", money(-npv));
    }
    Optional<Option> chosen = planned(paddock);
    if (chosen.isEmpty()) {
      boolean small = npv < decision.effort(paddock);
      return Texts.get(small ? "whyNot.effort" : "whyNot.limits", money(npv));
    }
    return Texts.get("whyNot.less", money(npv), money(npv(paddock, chosen.get()).likely()));
  }

  /** On its own, and as the plan's last piece. */
  private String within(int paddock) {
    PaddockFindings found = howSure.paddock(paddock);
    Range within = found.options().get(found.weighed()).gain().range();
    Range alone = found.alone().range();
    boolean alike = alone.likely() < 0 == within.likely() < 0;
    return " "
        + Texts.get(
            alike ? "reason.within" : "reason.withinBut",
            gainsOrLoses(alone),
            currency + " " + Words.rounded(Math.abs(within.likely()), Words.step(within)),
            gainsOrLoses(within));
  }

  private String gainsOrLoses(Range npv) {
    return signed("reason.gains", "reason.loses", npv.likely(), Words.step(npv));
  }

  /** What the action alone brings, in today's money, part by part; small parts are left out. */
  private String gains(Outcome outcome) {
    double feed = 0;
    double lambs = 0;
    double crops = 0;
    double factor = 1;
    for (int t = 0; t < outcome.years(); t++) {
      feed += factor * (outcome.supplementSaved(t) + outcome.spareFeed(t));
      lambs += factor * outcome.lambsSaved(t);
      crops += factor * outcome.cropMargin(t);
      factor /= 1 + rate;
    }
    List<String> parts = new ArrayList<>();
    add(parts, "reason.lambs", lambs);
    add(parts, "reason.feed", feed);
    add(parts, "reason.crops", crops);
    add(parts, "reason.feedLost", -feed);
    return parts.isEmpty()
        ? Texts.get("reason.together")
        : Texts.get("reason.parts", outcome.years(), String.join(", ", parts));
  }

  private void add(List<String> parts, String key, double value) {
    if (value >= SMALL) {
      parts.add(Texts.get(key, money(value)));
    }
  }

  private String whyKeep(int paddock) {
    Optional<Option> best = best(paddock);
    if (best.isEmpty()) {
      return Texts.get("reason.nothingElse");
    }
    double npv = npv(paddock, best.get()).likely();
    String name = action(best.get()).name();
    if (npv >= SMALL) {
      boolean small = npv < decision.effort(paddock);
      return Texts.get(small ? "reason.effort" : "reason.seldom", name, money(npv));
    }
    double old = oldShare(paddock);
    if (old < 0.005 && decision.winterLossKgDmPerHa(paddock).likely() == 0) {
      return Texts.get("reason.nothingToGain");
    }
    String found =
        old < 0.005 ? Texts.get("reason.noOld") : Texts.get("reason.old", Words.percent(old));
    return bestSowing(paddock)
        .map(option -> wouldLose(paddock, option, found))
        .orElse(Texts.get("reason.notArable", found));
  }

  private String wouldLose(int paddock, Option option, String found) {
    double area = decision.model().farm().paddocks().get(paddock).areaHa();
    return Texts.get(
        "reason.wouldLose",
        found,
        action(option).name(),
        money(option.costPerHa().likely() * area),
        money(Math.max(0, -npv(paddock, option).likely())));
  }

  private String whyClose(int paddock) {
    Option option =
        planned(paddock).or(() -> weighed(paddock)).or(() -> best(paddock)).orElseThrow();
    Range npv = npv(paddock, option);
    double step = Words.step(npv);
    String counted = isPlanned(paddock, option) ? Texts.get("reason.counted") + " " : "";
    String likely = Texts.get("reason.likely", action(option).name(), gainsOrLoses(npv));
    return counted
        + (npv.low() >= 0
            ? Texts.get(
                "reason.closeToEffort", likely, Words.ends(npv), money(decision.effort(paddock)))
            : Texts.get(
                "reason.anything",
                likely,
                signed("reason.aGain", "reason.aLoss", npv.low(), step),
                signed("reason.aGain", "reason.aLoss", npv.high(), step)));
  }

  /** The choice the verdict is about. */
  private Optional<Option> weighed(int paddock) {
    PaddockFindings findings = howSure.paddock(paddock);
    int action = findings.options().get(findings.weighed()).choice().action();
    return decision.options(paddock).stream().filter(o -> o.action() == action).findFirst();
  }

  /** The planned action on the paddock alone, if the plan does anything there. */
  Optional<Option> planned(int paddock) {
    return decision.options(paddock).stream()
        .filter(option -> isPlanned(paddock, option))
        .findFirst();
  }

  private boolean isPlanned(int paddock, Option option) {
    return option.action() == decision.plan().action(paddock);
  }

  private Optional<Option> bestSowing(int paddock) {
    return decision.options(paddock).stream()
        .filter(option -> action(option).sows())
        .max(Comparator.comparingDouble(option -> npv(paddock, option).likely()));
  }

  private Optional<Option> best(int paddock) {
    List<Option> options = decision.options(paddock);
    return options.stream()
        .max(Comparator.comparingDouble(option -> npv(paddock, option).likely()));
  }

  private Action plannedAction(int paddock) {
    return decision.model().actions().get(decision.plan().action(paddock));
  }

  private Action action(Option option) {
    return decision.model().actions().get(option.action());
  }

  private double oldShare(int paddock) {
    return decision.likely().oldShare(decision.model().keepAll(), paddock, 0);
  }

  /** A gain or a loss with the digits that its range deserves. */
  private String signed(String gain, String loss, double value, double step) {
    return Texts.get(
        value < 0 ? loss : gain, currency + " " + Words.rounded(Math.abs(value), step));
  }

  private String money(double value) {
    return Words.aboutMoney(currency, Math.abs(value) < SMALL ? Math.rint(value) : value);
  }

  static String capital(String text) {
    return text.substring(0, 1).toUpperCase(java.util.Locale.ROOT) + text.substring(1);
  }
}
