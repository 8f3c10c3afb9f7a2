package swardcase.report;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import swardcase.chance.Range;
import swardcase.farm.Action;
import swardcase.farm.ActionKind;
import swardcase.findings.HowSure;
import swardcase.findings.Verdict;
import swardcase.plan.Decision;
import swardcase.plan.Decision.Option;
import swardcase.plan.Outcome;

/** Why a paddock's answer is what it is, in sentences with the deciding number in them. */
final class ReasonWords {

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
      case KEEP -> "Keep as it is";
      case TOO_CLOSE -> "Too close to call";
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
        ? decision.deciding(paddock).stream().findFirst().map(input -> input.name()).orElse("")
        : "";
  }

  /** Why an option was not chosen; blank for the chosen one. */
  String whyNot(int paddock, Option option) {
    if (isPlanned(paddock, option)) {
      return "";
    }
    double npv = npv(paddock, option).likely();
    if (npv <= 0) {
      return "Likely to lose " + money(-npv) + " against keeping.";
    }
    Optional<Option> chosen = planned(paddock);
    if (npv < decision.effort(paddock) && chosen.isEmpty()) {
      return "Likely to gain " + money(npv) + ", not enough for the effort.";
    }
    return chosen
        .map(
            best ->
                "Likely to gain "
                    + money(npv)
                    + ", less than the "
                    + money(npv(paddock, best).likely())
                    + " of the chosen action.")
        .orElse(
            "Likely to gain "
                + money(npv)
                + " alone, but not beside the rest of the plan and its limits.");
  }

  /** On its own, and as the plan's last piece. */
  private String within(int paddock) {
    double alone = planned(paddock).orElseThrow().npv().likely();
    double within = decision.planNpv(paddock).likely();
    return " After its costs it "
        + gainsOrLoses(alone)
        + " on its own and "
        + gainsOrLoses(within)
        + " within the plan.";
  }

  private String gainsOrLoses(double value) {
    return value < 0 ? "loses " + money(-value) : "gains " + money(value);
  }

  private String gains(Outcome outcome) {
    double feed = 0;
    double lambs = 0;
    double other = 0;
    double factor = 1;
    for (int t = 0; t < outcome.years(); t++) {
      feed += factor * (outcome.supplementSaved(t) + outcome.spareFeed(t));
      lambs += factor * outcome.lambsSaved(t);
      other += factor * outcome.cropMargin(t);
      factor /= 1 + rate;
    }
    StringBuilder text = new StringBuilder("Over ").append(outcome.years()).append(" years ");
    if (lambs >= feed && lambs > 0) {
      text.append("lambs not lost are worth about ").append(money(lambs));
      if (feed > 0) {
        text.append(" and feed about ").append(money(feed));
      }
    } else {
      text.append("feed not bought is worth about ").append(money(Math.max(0, feed)));
      if (lambs > 0) {
        text.append(" and lambs not lost about ").append(money(lambs));
      }
    }
    if (other > 0) {
      text.append(", crops give ").append(money(other));
    }
    if (feed < 0) {
      text.append(", while feed lost to shut paddocks costs ").append(money(-feed));
    }
    return text.append(" in today's money, for this paddock alone.").toString();
  }

  private String whyKeep(int paddock) {
    String old = Words.percent(oldShare(paddock));
    Optional<Option> best = best(paddock);
    if (best.isEmpty()) {
      return "Nothing else can be done with it.";
    }
    Option option = best.get();
    String name = action(option).name();
    double outlay =
        option.costPerHa().likely() * decision.model().farm().paddocks().get(paddock).areaHa();
    double npv = npv(paddock, option).likely();
    if (npv > 0 && npv < decision.effort(paddock)) {
      return "To " + name + " would likely gain " + money(npv) + ", not enough for the effort.";
    }
    if (npv > 0) {
      return "To "
          + name
          + " would likely gain "
          + money(npv)
          + ", too little or too seldom to be worth it.";
    }
    if (action(option).kind() == ActionKind.HOLD_OFF) {
      return old + " of its clover is old; nothing that could be done brings back its cost.";
    }
    return old
        + " of its clover is old; to "
        + name
        + " would cost "
        + money(outlay)
        + " and likely lose "
        + money(-npv)
        + " of it.";
  }

  private String whyClose(int paddock) {
    Option option = planned(paddock).or(() -> best(paddock)).orElseThrow();
    String find =
        decision.deciding(paddock).stream()
            .findFirst()
            .map(input -> " What would settle it soonest: " + input.name() + ".")
            .orElse("");
    Range npv = npv(paddock, option);
    return "To "
        + action(option).name()
        + " likely "
        + (npv.likely() >= 0 ? "gains " : "loses ")
        + money(Math.abs(npv.likely()))
        + ", but anything from "
        + signed(npv.low())
        + " to "
        + signed(npv.high())
        + " is possible."
        + find;
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

  private String signed(double value) {
    return value < 0 ? "a loss of " + money(-value) : "a gain of " + money(value);
  }

  private String money(double value) {
    return Words.aboutMoney(currency, value);
  }

  static String capital(String text) {
    return text.substring(0, 1).toUpperCase(java.util.Locale.ROOT) + text.substring(1);
  }
}
