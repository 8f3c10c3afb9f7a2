package swardcase.report;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.stream.IntStream;
import swardcase.chance.Range;
import swardcase.chance.SideBySide;
import swardcase.decision.Decision;
import swardcase.decision.Decision.ActionAlone;
import swardcase.decision.HowSure;
import swardcase.decision.PaddockFindings;
import swardcase.decision.Verdict;
import swardcase.farm.Farm;
import swardcase.farm.Paddock;
import swardcase.money.NetPresentValue;
import swardcase.outcome.Plan;
import swardcase.report.PaddockResult.FormononetinFrom;
import swardcase.sward.Composition;
import swardcase.sward.LeafAgreement;
import swardcase.tables.Cultivar;

/** Makes the records of the paddocks. */
final class PaddockBuilder {

  private static final double SETTLED = 0.9;

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
    firstYear = PlanBuilder.firstYear(date);
    rate = farm.finance().discountRate().likely();
  }

  /** Each paddock rests on the decision alone, so they are worked out side by side. */
  List<PaddockResult> all() {
    return SideBySide.of(IntStream.range(0, farm.paddocks().size())).mapToObj(this::of).toList();
  }

  private PaddockResult of(int i) {
    Paddock paddock = farm.paddocks().get(i);
    Composition composition = decision.likely().composition(i);
    Plan plan = decision.plan();
    boolean keeps = plan.action(i) == decision.model().keep() || reasons.call(i) == Verdict.KEEP;
    int action = keeps ? decision.model().keep() : plan.action(i);
    Range clover = paddock.cloverShare().range();
    Range high = composition.estimate(Cultivar::highOestrogen);
    FormononetinFrom from = oestrogen.from(paddock, composition);
    double cheapest =
        decision.alone(i).stream()
            .mapToDouble(alone -> alone.costPerHa().likely())
            .filter(cost -> cost > 0)
            .min()
            .orElse(0);
    return new PaddockResult(
        paddock.name(),
        paddock.areaHa(),
        paddock.plantsLookedAt(),
        shares(composition),
        composition.estimate(Cultivar::isOld),
        composition.estimate(Cultivar::isOutdated),
        Range.of(
            high.low() * clover.low(),
            high.likely() * clover.likely(),
            high.high() * clover.high()),
        100 * composition.chanceHighOestrogenAbove(oestrogen.riskShare(), clover),
        paddock.leafTest().isPresent()
            ? OptionalInt.empty()
            : composition.morePlantsToSettle(oestrogen.riskShare(), clover, SETTLED),
        from == FormononetinFrom.UNKNOWN
            ? Optional.empty()
            : Optional.of(decision.leafFormononetin(i)),
        from,
        LeafAgreement.of(paddock, composition, decision.model().tables()).map(LeafTestResult::of),
        oestrogen.rating(decision, i),
        decision.winterLossKgDmPerHa(i),
        decision.shortfallMj(i),
        decision.supplementTonnes(i),
        decision.supplementCost(i),
        Call.of(reasons.call(i)),
        decision.model().actions().get(action).key(),
        decision.model().actions().get(action).name(),
        keeps ? OptionalInt.empty() : OptionalInt.of(firstYear + plan.start(i)),
        reasons.reason(i),
        reasons.deciding(i),
        decision.planCost(i),
        keeps ? Range.exactly(0) : planGain(i),
        keeps ? Range.exactly(0) : howSure.paddock(i).alone().range(),
        reasons.parts(i),
        decision.effort(i),
        reasons
            .planned(i)
            .map(alone -> Arrays.stream(alone.outcome().cashFlow()).boxed().toList())
            .orElse(List.of()),
        decision.alone(i).stream().map(alone -> of(i, alone, cheapest)).toList());
  }

  /** The planned action against keeping, the rest of the plan being done. */
  private Range planGain(int i) {
    PaddockFindings findings = howSure.paddock(i);
    return findings.courses().get(findings.weighed()).gain().range();
  }

  private static List<PaddockResult.NamedShare> shares(Composition composition) {
    List<PaddockResult.NamedShare> shares = new ArrayList<>();
    for (int c = 0; c < composition.size(); c++) {
      shares.add(
          new PaddockResult.NamedShare(composition.cultivar(c).name(), composition.estimate(c)));
    }
    shares.sort(
        Comparator.<PaddockResult.NamedShare>comparingDouble(share -> -share.share().likely())
            .thenComparing(PaddockResult.NamedShare::name));
    return shares;
  }

  private PaddockResult.OptionResult of(int i, ActionAlone alone, double cheapest) {
    double area = farm.paddocks().get(i).areaHa();
    int years = alone.outcome().years();
    Plan onlyThis = decision.model().keepAll().with(i, alone.action(), alone.start());
    Range npv = reasons.npv(i, alone);
    boolean chosen = alone.action() == decision.plan().action(i) && reasons.call(i) != Verdict.KEEP;
    return new PaddockResult.OptionResult(
        decision.model().actions().get(alone.action()).key(),
        decision.model().actions().get(alone.action()).name(),
        OptionalInt.of(firstYear + alone.start()),
        alone.costPerHa(),
        npv,
        Range.of(
            NetPresentValue.annuity(npv.low(), rate, years) / area,
            NetPresentValue.annuity(npv.likely(), rate, years) / area,
            NetPresentValue.annuity(npv.high(), rate, years) / area),
        Returns.of(alone.outcome(), rate),
        Arrays.stream(alone.outcome().cashFlow()).boxed().toList(),
        IntStream.range(0, years)
            .mapToObj(t -> decision.likely().oldShare(onlyThis, i, t))
            .toList(),
        chosen,
        cheapest > 0 && alone.costPerHa().likely() == cheapest,
        reasons.whyNot(i, alone));
  }
}
