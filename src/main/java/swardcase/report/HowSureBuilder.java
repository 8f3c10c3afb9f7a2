package swardcase.report;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import swardcase.decision.BreakEvenValue;
import swardcase.decision.CourseFindings;
import swardcase.decision.HowSure;
import swardcase.decision.Judgement;
import swardcase.decision.OtherChances;
import swardcase.decision.PaddockFindings;
import swardcase.decision.Purchase;
import swardcase.decision.Unknown;
import swardcase.farm.Farm;
import swardcase.outcome.FarmModel;
import swardcase.report.HowSureReport.BreakEvenLine;
import swardcase.report.HowSureReport.BreakEvenLine.Place;
import swardcase.report.HowSureReport.CertaintyLine;
import swardcase.report.HowSureReport.ChangedCall;
import swardcase.report.HowSureReport.FindOut;
import swardcase.report.HowSureReport.Mover;
import swardcase.report.HowSureReport.OtherChancesLine;
import swardcase.report.HowSureReport.PaddockSure;
import swardcase.report.HowSureReport.PaddockSure.Better;
import swardcase.report.HowSureReport.StoryLine;

/** Turns the findings into records. */
public final class HowSureBuilder {

  private static final int MOVERS = 10;
  private static final int FIND_OUT = 6;
  private static final String FARM_ROW = "default.";
  private static final String WINTER_GROWTH = "winter growth against current cultivars";

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
        found.gain().chanceAboveZero(),
        found.lossLimit(),
        found.chanceOfUnbearableLoss(),
        found.expectedRegretOfPlan(),
        found.expectedRegretOfKeeping(),
        found.certainty().stream()
            .map(line -> new CertaintyLine(line.tolerance(), line.worth()))
            .toList(),
        found.byVarianceShare().stream()
            .limit(MOVERS)
            .map(unknown -> new Mover(unknown.name(), unknown.varianceShare()))
            .toList(),
        found.breakEvens().stream().map(this::breakEven).toList(),
        found.perfect().value(),
        findOut(),
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
    String name = farm.paddocks().get(i).name();
    return new PaddockSure(
        name,
        Call.of(findings.verdict()),
        findings.weighed() == 0
            ? Optional.empty()
            : Optional.of(model.actions().get(weighed.choice().action()).key()),
        weighed.gain().drawn(),
        weighed.gain().chanceAboveZero(),
        model.actions().get(over.choice().action()).key(),
        judgement.regretOfActing(),
        judgement.regretOfKeeping(),
        judgement.regretShare(),
        weighed.betterForAll().contains(0)
            ? Better.FOR_EVERYBODY
            : weighed.betterForCautious().contains(0) ? Better.FOR_THE_CAUTIOUS : Better.FOR_SOME,
        purchase(name, findings.leafTest()),
        findings.plants().stream().map(plants -> purchase(name, plants)).toList(),
        findings.bestPlants().map(Purchase::plants),
        worthKnowing(name, findings));
  }

  private static FindOut purchase(String paddock, Purchase purchase) {
    return new FindOut(
        purchase.plants() == 0 ? FindOut.Kind.LEAF_TEST : FindOut.Kind.PLANTS,
        Optional.empty(),
        Optional.of(paddock),
        purchase.plants(),
        purchase.value(),
        OptionalDouble.of(purchase.price()),
        FindOut.Advice.valueOf(purchase.advice().name()));
  }

  private static List<FindOut> worthKnowing(String paddock, PaddockFindings findings) {
    Stream<Purchase> best =
        findings.plants().stream().max(Comparator.comparingDouble(Purchase::net)).stream();
    return Stream.concat(Stream.of(findings.leafTest()), best)
        .filter(purchase -> purchase.value() >= 1)
        .map(purchase -> purchase(paddock, purchase))
        .toList();
  }

  /** What can be bought and is worth it, and the numbers most worth knowing, by value. */
  private List<FindOut> findOut() {
    List<FindOut> all = new ArrayList<>();
    for (int i = 0; i < farm.paddocks().size(); i++) {
      PaddockFindings findings = found.paddock(i);
      String name = farm.paddocks().get(i).name();
      if (findings.leafTest().advice() == Purchase.Advice.WORTH_DOING) {
        all.add(purchase(name, findings.leafTest()));
      }
      findings.bestPlants().ifPresent(best -> all.add(purchase(name, best)));
    }
    for (Unknown unknown : found.unknowns()) {
      if (unknown.counts()) {
        all.add(
            new FindOut(
                FindOut.Kind.INPUT,
                Optional.of(unknown.name()),
                Optional.empty(),
                0,
                unknown.value().value(),
                OptionalDouble.empty(),
                isOfTheFarm(unknown) ? FindOut.Advice.ASK : FindOut.Advice.RESEARCH));
      }
    }
    return all.stream()
        .sorted(Comparator.comparingDouble(each -> -each.value()))
        .limit(FIND_OUT)
        .toList();
  }

  /** Whether somebody on the farm could find it out: prices, costs and what stands in a paddock. */
  private boolean isOfTheFarm(Unknown unknown) {
    return !unknown.name().startsWith(WINTER_GROWTH)
        && model.tables().parameters().entrySet().stream()
            .noneMatch(
                row ->
                    !row.getKey().startsWith(FARM_ROW) && row.getValue().equals(unknown.input()));
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
