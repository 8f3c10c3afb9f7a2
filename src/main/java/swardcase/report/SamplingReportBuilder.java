package swardcase.report;

import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import swardcase.chance.Range;
import swardcase.chance.SampleSize;
import swardcase.farm.Farm;
import swardcase.farm.Paddock;
import swardcase.report.SamplingReport.CountCall;
import swardcase.report.SamplingReport.Further;
import swardcase.report.SamplingReport.PaddockCount;
import swardcase.sward.Composition;
import swardcase.sward.LeafAgreement;
import swardcase.tables.Cultivar;
import swardcase.tables.Tables;

/** Works out what the counts of a farm's paddocks say. */
public final class SamplingReportBuilder {

  private static final double SETTLED = 0.9;
  private static final int FIRST_WALK = 50;

  private SamplingReportBuilder() {}

  /** The report of a farm. */
  public static SamplingReport build(Farm farm, Tables ofAnyFarm) {
    Tables tables = ofAnyFarm.in(farm);
    double riskShare = tables.parameter("oestrogen.risk-share").likely();
    double designEffect = tables.parameter("stand.design-effect").likely();
    return new SamplingReport(
        farm.name(),
        riskShare,
        designEffect,
        SampleSize.forOneShare(riskShare, 0.10, 0.95),
        SampleSize.toSeeOne(0.05, 0.95),
        farm.paddocks().stream()
            .map(paddock -> count(paddock, tables, designEffect, riskShare))
            .toList());
  }

  private static PaddockCount count(
      Paddock paddock, Tables tables, double designEffect, double riskShare) {
    Composition composition = Composition.of(paddock, tables, designEffect);
    Range clover = paddock.cloverShare().range();
    double above = composition.chanceHighOestrogenAbove(riskShare, clover);
    double wrong = Math.min(above, 1 - above);
    boolean tested = paddock.leafTest().isPresent();
    OptionalInt more =
        tested ? OptionalInt.empty() : composition.morePlantsToSettle(riskShare, clover, SETTLED);
    boolean looked = composition.lookedAt();
    Optional<LeafTestResult> test =
        LeafAgreement.of(paddock, composition, tables).map(LeafTestResult::of);
    Range high = composition.estimate(Cultivar::highOestrogen);
    return new PaddockCount(
        paddock.name(),
        paddock.plantsLookedAt(),
        Optional.of(composition.estimate(Cultivar::isOld).times(100)).filter(share -> looked),
        Optional.of(
                Range.of(
                    100 * high.low() * clover.low(),
                    100 * high.likely() * clover.likely(),
                    100 * high.high() * clover.high()))
            .filter(share -> looked),
        tested
            ? CountCall.LEAF_TESTED
            : !looked
                ? CountCall.NOBODY_LOOKED
                : above > 0.5 ? CountCall.ABOVE : CountCall.NOT_ABOVE,
        tested ? OptionalDouble.empty() : OptionalDouble.of(100 * wrong),
        further(test, looked, more, wrong),
        looked || test.isPresent() ? more : OptionalInt.of(Math.max(FIRST_WALK, more.orElse(0))),
        test);
  }

  /** A paddock nobody walked is to be walked, whatever its leaf test says of formononetin. */
  private static Further further(
      Optional<LeafTestResult> test, boolean looked, OptionalInt more, double wrong) {
    if (test.isPresent()) {
      return test.get().isContrary() ? Further.NAME_AGAIN : Further.LEAF_TESTED;
    }
    if (!looked || more.isPresent()) {
      return Further.WOULD_SETTLE;
    }
    return wrong <= 1 - SETTLED ? Further.SETTLED : Further.WILL_NOT_SETTLE;
  }
}
