package swardcase.report;

import java.util.Comparator;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Predicate;
import java.util.stream.IntStream;
import swardcase.decision.CourseFindings;
import swardcase.decision.Decision;
import swardcase.decision.FarmMeasures.OfPaddock;
import swardcase.decision.HowSure;
import swardcase.decision.PaddockFindings;
import swardcase.farm.Action;
import swardcase.farm.ActionKind;

/** Why a paddock's answer is what it is: which reason, and the deciding numbers in it. */
final class ReasonBuilder {

  /** Sums of money below this are not worth a word. */
  private static final double SMALL = 10;

  /** A share of old clover below this is printed as none. */
  private static final double HALF_PER_CENT = 0.005;

  private final Decision decision;
  private final HowSure howSure;

  ReasonBuilder(Decision decision, HowSure howSure) {
    this.decision = decision;
    this.howSure = howSure;
  }

  Reason reason(int paddock, KnownClover clover) {
    PaddockFindings findings = howSure.paddock(paddock);
    CourseFindings weighed = findings.courses().get(findings.weighed());
    return switch (findings.verdict()) {
      case ACT, KEEP_OFF ->
          action(weighed).kind() == ActionKind.CROP
              ? Reason.of(
                  Reason.Kind.CROPS,
                  best(
                          findings,
                          course -> action(course).sows() && course.over() == findings.weighed())
                      .map(course -> action(course).key()))
              : of(Reason.Kind.GAINS, weighed);
      case KEEP -> whyKeep(paddock, clover, findings);
      case TOO_CLOSE -> of(weighed.fits() ? Reason.Kind.CLOSE : Reason.Kind.LIMIT, weighed);
    };
  }

  /** Why a choice was not made; empty for the one that was. */
  Optional<WhyNot> whyNot(int paddock, CourseFindings course) {
    PaddockFindings findings = howSure.paddock(paddock);
    CourseFindings chosen = findings.planned();
    if (course == chosen) {
      return Optional.empty();
    }
    double gain = course.gain().mean();
    CourseFindings over = findings.courses().get(course.over());
    if (gain <= 0) {
      return why(WhyNot.Kind.LOSES, course, Optional.empty());
    }
    if (course.over() > 0 && course.step().mean() <= 0) {
      return why(WhyNot.Kind.CHEAPER, course, Optional.of(over));
    }
    if (chosen.gain().mean() >= gain && findings.sure().isPresent()) {
      return why(WhyNot.Kind.LESS, course, Optional.of(chosen));
    }
    if (!course.fits()) {
      return why(WhyNot.Kind.LIMIT, course, Optional.empty());
    }
    return course.certaintyGain() < chosen.certaintyGain()
        ? why(WhyNot.Kind.RISK, course, Optional.of(chosen))
        : why(WhyNot.Kind.LITTLE, course, Optional.empty());
  }

  private Optional<WhyNot> why(
      WhyNot.Kind kind, CourseFindings course, Optional<CourseFindings> than) {
    return Optional.of(
        new WhyNot(
            kind,
            course.gain().mean(),
            than.map(of -> action(of).name()),
            than.map(of -> OptionalDouble.of(of.gain().mean())).orElse(OptionalDouble.empty()),
            kind == WhyNot.Kind.LIMIT
                ? course.passes().stream().min(Comparator.naturalOrder())
                : Optional.empty()));
  }

  private Reason whyKeep(int paddock, KnownClover clover, PaddockFindings findings) {
    Optional<CourseFindings> best = best(findings, course -> true);
    boolean isTooLong = !decision.tooLong(paddock).isEmpty();
    if (best.isEmpty() && !isTooLong) {
      return Reason.of(Reason.Kind.NOTHING_ELSE, Optional.empty());
    }
    if (best.isPresent() && best.get().gain().mean() >= SMALL) {
      return of(Reason.Kind.SELDOM, best.get());
    }
    if (clover.oldShare().map(old -> old.likely() < HALF_PER_CENT).orElse(false)
        && decision.of(paddock, OfPaddock.WINTER_LOSS_KG_DM_PER_HA).high() < 1) {
      return Reason.of(Reason.Kind.NOTHING_TO_GAIN, Optional.empty());
    }
    double areaHa = decision.model().farm().paddocks().get(paddock).areaHa();
    Optional<CourseFindings> sowing =
        best(findings, course -> action(course).kind() == ActionKind.RESOW)
            .or(() -> best(findings, course -> action(course).sows()));
    return new Reason(
        sowing.isPresent()
            ? Reason.Kind.WOULD_LOSE
            : isTooLong ? Reason.Kind.YEARS_COUNTED : Reason.Kind.NOT_ARABLE,
        sowing.map(course -> action(course).key()),
        sowing
            .map(course -> OptionalDouble.of(course.costPerHa().mean() * areaHa))
            .orElse(OptionalDouble.empty()));
  }

  private Reason of(Reason.Kind kind, CourseFindings course) {
    return Reason.of(kind, Optional.of(action(course).key()));
  }

  private static Optional<CourseFindings> best(
      PaddockFindings findings, Predicate<CourseFindings> among) {
    return IntStream.range(1, findings.courses().size())
        .mapToObj(findings.courses()::get)
        .filter(among)
        .max(Comparator.comparingDouble(course -> course.gain().mean()));
  }

  private Action action(CourseFindings course) {
    return decision.model().actions().get(course.choice().action());
  }
}
