package swardcase.report;

import java.util.Comparator;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Predicate;
import swardcase.chance.Range;
import swardcase.decision.Decision;
import swardcase.decision.Decision.ActionAlone;
import swardcase.decision.HowSure;
import swardcase.decision.PaddockFindings;
import swardcase.decision.Verdict;
import swardcase.evidence.Assumption;
import swardcase.outcome.Outcome;
import swardcase.report.PaddockResult.GainParts;
import swardcase.report.PaddockResult.WhyNot;

/** Why a paddock's answer is what it is: which reason, and the deciding numbers in it. */
final class ReasonBuilder {

  /** Sums of money below this are not worth a word. */
  private static final double SMALL = 10;

  /** A share of old clover below this is printed as none. */
  private static final double HALF_PER_CENT = 0.005;

  private final Decision decision;
  private final HowSure howSure;
  private final double rate;

  ReasonBuilder(Decision decision, HowSure howSure) {
    this.decision = decision;
    this.howSure = howSure;
    rate = decision.model().farm().finance().discountRate().likely();
  }

  /** What to do, as the draws have it. */
  Verdict call(int paddock) {
    return howSure.paddock(paddock).verdict();
  }

  /**
   * Net present value of an action, the rest of the plan being done; of the action alone where it
   * does not fit beside the plan.
   */
  Range npv(int paddock, ActionAlone alone) {
    return howSure.paddock(paddock).courses().stream()
        .filter(found -> found.choice().action() == alone.action())
        .findFirst()
        .map(found -> found.gain().range())
        .orElse(alone.npv());
  }

  Reason reason(int paddock) {
    return switch (call(paddock)) {
      case ACT, HOLD_OFF -> of(Reason.Kind.PAYS, planned(paddock).orElseThrow());
      case KEEP -> whyKeep(paddock);
      case TOO_CLOSE -> whyClose(paddock);
    };
  }

  /** The input to find out first; empty where the verdict does not hang on one. */
  Optional<String> deciding(int paddock) {
    return call(paddock) == Verdict.TOO_CLOSE
        ? decision.deciding(paddock).map(Assumption::name)
        : Optional.empty();
  }

  /** Why an option was not chosen; empty for the planned one. */
  Optional<WhyNot> whyNot(int paddock, ActionAlone alone) {
    if (isPlanned(paddock, alone)) {
      return Optional.empty();
    }
    double npv = npv(paddock, alone).likely();
    Optional<ActionAlone> planned = planned(paddock);
    WhyNot.Kind kind;
    if (npv <= 0) {
      kind = WhyNot.Kind.LOSES;
    } else if (planned.isPresent()) {
      kind = WhyNot.Kind.LESS;
    } else {
      kind = npv < decision.effort(paddock) ? WhyNot.Kind.EFFORT : WhyNot.Kind.LIMITS;
    }
    return Optional.of(
        new WhyNot(
            kind,
            planned
                .map(chosen -> OptionalDouble.of(npv(paddock, chosen).likely()))
                .orElse(OptionalDouble.empty())));
  }

  /** What the planned action alone brings before its costs, in today's money. */
  Optional<GainParts> parts(int paddock) {
    return planned(paddock).map(alone -> parts(alone.outcome()));
  }

  private GainParts parts(Outcome outcome) {
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
    return new GainParts(lambs, feed, crops);
  }

  private Reason whyKeep(int paddock) {
    Optional<ActionAlone> best = best(paddock, alone -> true);
    if (best.isEmpty()) {
      return Reason.of(Reason.Kind.NOTHING_ELSE, Optional.empty());
    }
    double npv = npv(paddock, best.get()).likely();
    if (npv >= SMALL) {
      boolean small = npv < decision.effort(paddock);
      return of(small ? Reason.Kind.EFFORT : Reason.Kind.SELDOM, best.get());
    }
    double old = decision.likely().oldShare(decision.model().keepAll(), paddock, 0);
    if (old < HALF_PER_CENT && decision.winterLossKgDmPerHa(paddock).likely() == 0) {
      return Reason.of(Reason.Kind.NOTHING_TO_GAIN, Optional.empty());
    }
    Optional<ActionAlone> sowing =
        best(paddock, alone -> decision.model().actions().get(alone.action()).sows());
    double area = decision.model().farm().paddocks().get(paddock).areaHa();
    return new Reason(
        sowing.isPresent() ? Reason.Kind.WOULD_LOSE : Reason.Kind.NOT_ARABLE,
        sowing.map(this::key),
        OptionalDouble.of(old),
        sowing
            .map(alone -> OptionalDouble.of(alone.costPerHa().likely() * area))
            .orElse(OptionalDouble.empty()));
  }

  private Reason whyClose(int paddock) {
    ActionAlone alone =
        planned(paddock)
            .or(() -> weighed(paddock))
            .or(() -> best(paddock, each -> true))
            .orElseThrow();
    boolean neverLoses = npv(paddock, alone).low() >= 0;
    return of(neverLoses ? Reason.Kind.CLOSE_TO_EFFORT : Reason.Kind.CLOSE, alone);
  }

  private Reason of(Reason.Kind kind, ActionAlone alone) {
    return Reason.of(kind, Optional.of(key(alone)));
  }

  /** The choice the verdict is about. */
  private Optional<ActionAlone> weighed(int paddock) {
    PaddockFindings findings = howSure.paddock(paddock);
    int action = findings.courses().get(findings.weighed()).choice().action();
    return decision.alone(paddock).stream().filter(o -> o.action() == action).findFirst();
  }

  /** The planned action on the paddock alone, if the plan does anything there. */
  Optional<ActionAlone> planned(int paddock) {
    return decision.alone(paddock).stream().filter(alone -> isPlanned(paddock, alone)).findFirst();
  }

  private boolean isPlanned(int paddock, ActionAlone alone) {
    return alone.action() == decision.plan().action(paddock);
  }

  private Optional<ActionAlone> best(int paddock, Predicate<ActionAlone> among) {
    return decision.alone(paddock).stream()
        .filter(among)
        .max(Comparator.comparingDouble(alone -> npv(paddock, alone).likely()));
  }

  private String key(ActionAlone alone) {
    return decision.model().actions().get(alone.action()).key();
  }
}
