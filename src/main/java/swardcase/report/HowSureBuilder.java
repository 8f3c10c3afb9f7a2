package swardcase.report;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import swardcase.decision.BreakEvenValue;
import swardcase.decision.CourseFindings;
import swardcase.decision.HowSure;
import swardcase.decision.Judgement;
import swardcase.decision.OtherChances;
import swardcase.decision.PaddockFindings;
import swardcase.farm.Farm;
import swardcase.outcome.FarmModel;
import swardcase.report.HowSureReport.BreakEvenLine;
import swardcase.report.HowSureReport.BreakEvenLine.Place;
import swardcase.report.HowSureReport.ChangedCall;
import swardcase.report.HowSureReport.Mover;
import swardcase.report.HowSureReport.OtherChancesLine;
import swardcase.report.HowSureReport.PaddockSure;
import swardcase.report.HowSureReport.PaddockSure.Better;
import swardcase.report.HowSureReport.StoryLine;

/** Turns the findings into records. */
public final class HowSureBuilder {

  private static final int MOVERS = 10;

  private final FarmModel model;
  private final Farm farm;
  private final HowSure found;

  private HowSureBuilder(FarmModel model, HowSure found) {
    this.model = model;
    this.found = found;
    farm = model.farm();
  }

  /** The record of the findings for a farm. */
  public static HowSureReport build(FarmModel model, HowSure found) {
    return new HowSureBuilder(model, found).build();
  }

  private HowSureReport build() {
    List<PaddockSure> paddocks =
        IntStream.range(0, farm.paddocks().size()).mapToObj(this::paddock).toList();
    return new HowSureReport(
        found.seed(),
        found.draws(),
        found.gain().drawn(),
        found.gain().mean(),
        found.gain().standardError(),
        Arrays.stream(found.gainQuantiles()).boxed().toList(),
        found.annuity(),
        found.gain().chancePays(),
        found.lossLimit(),
        found.chanceOfUnbearableLoss(),
        found.expectedRegretOfPlan(),
        found.expectedRegretOfKeeping(),
        found.certainty(),
        found.byVarianceShare().stream()
            .limit(MOVERS)
            .map(unknown -> new Mover(unknown.name(), unknown.varianceShare()))
            .toList(),
        found.breakEvens().stream().map(this::breakEven).toList(),
        found.perfect().value(),
        found.stories().stream()
            .map(
                of ->
                    new StoryLine(
                        StoryLine.Story.valueOf(of.story().name()),
                        of.chance(),
                        of.draws(),
                        of.gain(),
                        of.gainError(),
                        of.chanceItPays()))
            .toList(),
        found.otherChances().stream().map(this::otherChances).toList(),
        found.thrownAway(),
        found.unexplained(),
        paddocks);
  }

  private OtherChancesLine otherChances(OtherChances other) {
    return new OtherChancesLine(
        other.none(),
        other.trial(),
        other.outbreaks(),
        other.changed().stream()
            .map(
                of ->
                    new ChangedCall(
                        farm.paddocks().get(of.paddock()).name(), Call.of(of.verdict()), of.sure()))
            .toList());
  }

  private PaddockSure paddock(int i) {
    PaddockFindings findings = found.paddock(i);
    CourseFindings weighed = findings.courses().get(findings.weighed());
    CourseFindings over = findings.courses().get(findings.sure().isPresent() ? weighed.over() : 0);
    Judgement judgement = findings.sure().isPresent() ? weighed.judgement() : weighed.overKeeping();
    return new PaddockSure(
        farm.paddocks().get(i).name(),
        Call.of(findings.verdict()),
        findings.weighed() == 0
            ? Optional.empty()
            : Optional.of(model.actions().get(weighed.choice().action()).key()),
        weighed.gain().drawn(),
        weighed.gain().chancePays(),
        model.actions().get(over.choice().action()).key(),
        judgement.regretOfActing(),
        judgement.regretOfKeeping(),
        judgement.regretShare(),
        weighed.betterForAll()
            ? Better.FOR_EVERYBODY
            : weighed.betterForCautious() ? Better.FOR_THE_CAUTIOUS : Better.FOR_SOME);
  }

  private BreakEvenLine breakEven(BreakEvenValue value) {
    return new BreakEvenLine(
        value.input().name(),
        value.paddock() < 0
            ? Optional.empty()
            : Optional.of(farm.paddocks().get(value.paddock()).name()),
        value.input().unit(),
        value.input().likely(),
        value.low(),
        value.high(),
        value.value(),
        value.value().isEmpty()
            ? Place.NOWHERE
            : value.isWithinRange() ? Place.WITHIN_RANGE : Place.BEYOND_RANGE);
  }
}
