package swardcase.report;

import java.util.Optional;
import java.util.OptionalInt;
import swardcase.chance.Range;
import swardcase.chance.SampleSize;
import swardcase.farm.Farm;
import swardcase.farm.Paddock;
import swardcase.report.SamplingReport.CountCall;
import swardcase.report.SamplingReport.Further;
import swardcase.report.SamplingReport.PaddockCount;
import swardcase.sward.Composition;
import swardcase.tables.Cultivar;
import swardcase.tables.Tables;

/** Works out what the counts of a farm's paddocks say. */
public final class SamplingReportBuilder {

  private static final double SETTLED = 0.9;
  private static final int FIRST_WALK = 50;

  private SamplingReportBuilder() {}

  /** The report of a farm. */
  public static SamplingReport build(Farm farm, Tables tables) {
    double riskShare = tables.parameter("oestrogen.risk-share").likely();
    double designEffect = tables.parameter("stand.design-effect").likely();
    return new SamplingReport(
        farm.name(),
        riskShare,
        designEffect,
        SampleSize.forOneShare(riskShare, 0.10, 0.95),
        SampleSize.toSeeOne(0.05, 0.95),
        farm.paddocks().stream()
            .map(
                paddock -> count(paddock, Composition.of(paddock, tables, designEffect), riskShare))
            .toList());
  }

  private static PaddockCount count(Paddock paddock, Composition composition, double riskShare) {
    Range clover = paddock.cloverShare().range();
    double above = composition.chanceHighOestrogenAbove(riskShare, clover);
    double wrong = Math.min(above, 1 - above);
    OptionalInt more = composition.morePlantsToSettle(riskShare, clover, SETTLED);
    if (!composition.lookedAt()) {
      return new PaddockCount(
          paddock.name(),
          paddock.plantsLookedAt(),
          Optional.empty(),
          Optional.empty(),
          CountCall.NOBODY_LOOKED,
          100 * wrong,
          Further.WOULD_SETTLE,
          OptionalInt.of(Math.max(FIRST_WALK, more.orElse(0))));
    }
    Range high = composition.estimate(Cultivar::highOestrogen);
    return new PaddockCount(
        paddock.name(),
        paddock.plantsLookedAt(),
        Optional.of(composition.estimate(Cultivar::isOld).times(100)),
        Optional.of(
            Range.of(
                100 * high.low() * clover.low(),
                100 * high.likely() * clover.likely(),
                100 * high.high() * clover.high())),
        above > 0.5 ? CountCall.ABOVE : CountCall.NOT_ABOVE,
        100 * wrong,
        more.isPresent()
            ? Further.WOULD_SETTLE
            : wrong <= 1 - SETTLED ? Further.SETTLED : Further.WILL_NOT_SETTLE,
        more);
  }
}
