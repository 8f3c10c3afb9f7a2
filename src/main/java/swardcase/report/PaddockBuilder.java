package swardcase.report;

import java.time.LocalDate;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.stream.IntStream;
import swardcase.chance.SideBySide;
import swardcase.chance.Spread;
import swardcase.decision.CourseFindings;
import swardcase.decision.Decision;
import swardcase.decision.FarmMeasures.OfPaddock;
import swardcase.decision.HowSure;
import swardcase.decision.PaddockFindings;
import swardcase.farm.Action;
import swardcase.farm.ActionKind;
import swardcase.farm.Farm;
import swardcase.farm.Paddock;
import swardcase.money.NetPresentValue;
import swardcase.outcome.Outcome;
import swardcase.report.PaddockResult.OptionResult;

/** Makes the records of the paddocks. */
final class PaddockBuilder {

  private static final Comparator<OptionResult> FROM_FREE_TO_DEAR =
      Comparator.comparingDouble(option -> option.costPerHa().mean());

  private final Decision decision;
  private final HowSure howSure;
  private final Farm farm;
  private final OestrogenBuilder oestrogen;
  private final ReasonBuilder reasons;
  private final int firstYear;
  private final double rate;

  PaddockBuilder(Decision decision, HowSure howSure, OestrogenBuilder oestrogen, LocalDate date) {
    this.decision = decision;
    this.howSure = howSure;
    this.oestrogen = oestrogen;
    farm = decision.model().farm();
    reasons = new ReasonBuilder(decision, howSure);
    firstYear = ReportBuilder.firstYear(date);
    rate = farm.finance().discountRate().likely();
  }

  /** Each paddock rests on the decision alone, so they are worked out side by side. */
  List<PaddockResult> all() {
    return SideBySide.of(IntStream.range(0, farm.paddocks().size())).mapToObj(this::of).toList();
  }

  private PaddockResult of(int i) {
    Paddock paddock = farm.paddocks().get(i);
    PaddockFindings findings = howSure.paddock(i);
    CourseFindings planned = findings.planned();
    boolean keeps = !decision.isActedOn(i);
    Action action = action(planned);
    KnownClover clover = oestrogen.clover(i);
    double cheapest =
        findings.courses().stream()
            .filter(course -> action(course).sows())
            .mapToDouble(course -> course.costPerHa().mean())
            .filter(cost -> cost > 0)
            .min()
            .orElse(0);
    return new PaddockResult(
        paddock.name(),
        paddock.areaHa(),
        clover,
        clover.isOestrogenKnown()
            ? Optional.of(decision.of(i, OfPaddock.LEAF_FORMONONETIN))
            : Optional.empty(),
        oestrogen.rating(i),
        decision.of(i, OfPaddock.WINTER_LOSS_KG_DM_PER_HA),
        decision.of(i, OfPaddock.NITROGEN_KG_PER_HA),
        decision.of(i, OfPaddock.NITROGEN_PLANNED_KG_PER_HA),
        decision.of(i, OfPaddock.LOST_TO_CULTIVAR_KG_DM_PER_HA),
        decision.of(i, OfPaddock.LOST_TO_THIN_STAND_KG_DM_PER_HA),
        decision.of(i, OfPaddock.SHORTFALL_MJ),
        decision.of(i, OfPaddock.SUPPLEMENT_TONNES),
        decision.of(i, OfPaddock.SUPPLEMENT_COST),
        Call.of(findings.verdict()),
        findings.sure(),
        findings.notSure(),
        findings.lookFirst(),
        findings.nearLine(),
        action.key(),
        action.name(),
        keeps ? OptionalInt.empty() : OptionalInt.of(firstYear + planned.choice().start()),
        keeps ? OptionalInt.empty() : OptionalInt.of(lastChangeYear(planned)),
        keeps
            ? Optional.empty()
            : action.use().map(rule -> new PaddockResult.KeptOff(rule.who(), rule.when())),
        reasons.reason(i, clover),
        findings.sureInstead().map(c -> action(findings.courses().get(c)).key()),
        decision.of(i, OfPaddock.PLAN_COST),
        keeps ? Spread.NOTHING : planned.gain(),
        keeps ? List.of() : parts(planned, findings.courses().get(0)),
        keeps ? Credit.NOTHING : credit(i, 1),
        IntStream.range(1, findings.courses().size())
            .mapToObj(c -> option(i, c, findings, cheapest))
            .sorted(FROM_FREE_TO_DEAR)
            .toList(),
        decision.tooLong(i).stream().map(this::tooLong).toList());
  }

  private int lastChangeYear(CourseFindings course) {
    int after = decision.model().lastChange(course.choice().action());
    return firstYear + course.choice().start() + after;
  }

  private PaddockResult.TooLong tooLong(int a) {
    Action action = decision.model().actions().get(a);
    int years = decision.model().lastChange(a) + 1;
    return new PaddockResult.TooLong(action.key(), action.name(), years);
  }

  private Action action(CourseFindings course) {
    return decision.model().actions().get(course.choice().action());
  }

  private Outcome mean(CourseFindings course) {
    return decision.simulation().mean(course.place());
  }

  private List<GainPart> parts(CourseFindings course, CourseFindings keeping) {
    return GainPart.of(mean(course), mean(keeping), decision.likely());
  }

  private List<Credit> credit(int i, int choice) {
    return Credit.of(decision.simulation().credit(i, choice));
  }

  private PaddockResult.OptionResult option(
      int i, int choice, PaddockFindings findings, double cheapest) {
    CourseFindings course = findings.courses().get(choice);
    Outcome flows = decision.model().newOutcome();
    flows.add(mean(course), 1);
    flows.add(mean(findings.courses().get(0)), -1);
    int years = flows.years();
    Action over = action(findings.courses().get(course.over()));
    return new PaddockResult.OptionResult(
        action(course).key(),
        action(course).name(),
        OptionalInt.of(firstYear + course.choice().start()),
        lastChangeYear(course),
        course.costPerHa(),
        course.gain(),
        credit(i, choice),
        course
            .gain()
            .drawn()
            .times(NetPresentValue.annuity(1, rate, years) / farm.paddocks().get(i).areaHa()),
        new Step(
            over.key(),
            over.name(),
            course.step(),
            course.judgement().regretShare(),
            course.isSure()),
        Returns.of(flows, rate),
        Arrays.stream(flows.cashFlow()).boxed().toList(),
        IntStream.range(0, farm.paddocks().get(i).isLookedAt() ? years : 0)
            .mapToObj(t -> decision.simulation().oldShare(i, choice, t))
            .toList(),
        IntStream.range(0, years)
            .mapToObj(t -> decision.simulation().cloverShare(i, choice, t))
            .toList(),
        action(course).sows(),
        action(course).kind() == ActionKind.CROP,
        course == findings.planned(),
        cheapest > 0 && course.costPerHa().mean() == cheapest,
        reasons.whyNot(i, course));
  }
}
