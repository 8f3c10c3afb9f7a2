package swardcase.report;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.IntStream;
import swardcase.decision.BreakEvenValue;
import swardcase.decision.CourseFindings;
import swardcase.decision.HowSure;
import swardcase.decision.PaddockFindings;
import swardcase.decision.Purchase;
import swardcase.decision.Unknown;
import swardcase.farm.Farm;
import swardcase.outcome.FarmModel;
import swardcase.report.HowSureReport.BreakEvenLine;
import swardcase.report.HowSureReport.CertaintyLine;
import swardcase.report.HowSureReport.FindOut;
import swardcase.report.HowSureReport.Mover;
import swardcase.report.HowSureReport.PaddockSure;
import swardcase.wording.Texts;

/** Turns the findings into records and sentences. */
public final class HowSureBuilder {

  private static final int MOVERS = 10;
  private static final int FIND_OUT = 6;
  private static final double ERRORS = 2;
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
    List<FindOut> findOut = findOut(paddocks);
    HowSureWords words = new HowSureWords(farm, found);
    return new HowSureReport(
        found.seed(),
        found.draws(),
        found.npv().range(),
        found.npv().mean(),
        found.npv().standardError(),
        Arrays.stream(found.npvQuantiles()).boxed().toList(),
        found.annuity().range(),
        found.npv().chanceAboveZero(),
        found.lossLimit(),
        found.chanceOfUnbearableLoss(),
        found.expectedRegretOfPlan(),
        found.expectedRegretOfKeeping(),
        found.certainty().stream()
            .filter(line -> Double.isFinite(line.tolerance()))
            .map(line -> new CertaintyLine(line.tolerance(), line.worth()))
            .toList(),
        found.byVarianceShare().stream()
            .filter(unknown -> unknown.varianceShare() > 0)
            .limit(MOVERS)
            .map(unknown -> new Mover(unknown.name(), unknown.varianceShare()))
            .toList(),
        found.breakEvens().stream().map(this::breakEven).toList(),
        found.perfect().value(),
        findOut,
        paddocks,
        words.howSure(),
        words.before(findOut));
  }

  private PaddockSure paddock(int i) {
    PaddockFindings findings = found.paddock(i);
    CourseFindings weighed = findings.options().get(findings.weighed());
    String name = farm.paddocks().get(i).name();
    return new PaddockSure(
        name,
        HowSureWords.verdict(findings.verdict()),
        findings.weighed() == 0 ? "" : model.actions().get(weighed.choice().action()).name(),
        weighed.gain().range(),
        weighed.gain().chanceAboveZero(),
        weighed.judgement().regretOfActing(),
        weighed.judgement().regretOfKeeping(),
        weighed.betterForAll().contains(0)
            ? Texts.get("sure.everybody")
            : weighed.betterForCautious().contains(0) ? Texts.get("sure.cautious") : "",
        purchase(Texts.get("buy.leafTest", name), findings.leafTest()),
        findings.plants().stream()
            .map(plants -> purchase(Texts.get("buy.plants", plants.plants(), name), plants))
            .toList(),
        findings.bestPlants().map(Purchase::plants));
  }

  private static FindOut purchase(String what, Purchase purchase) {
    return new FindOut(
        what,
        purchase.value(),
        OptionalDouble.of(purchase.price()),
        HowSureWords.advice(purchase.advice()));
  }

  /** What can be bought and is worth it, and the numbers most worth knowing, by value. */
  private List<FindOut> findOut(List<PaddockSure> paddocks) {
    List<FindOut> all = new ArrayList<>();
    for (int i = 0; i < paddocks.size(); i++) {
      PaddockFindings findings = found.paddock(i);
      if (findings.leafTest().advice() == Purchase.Advice.WORTH_DOING) {
        all.add(paddocks.get(i).leafTest());
      }
      String name = paddocks.get(i).name();
      findings
          .bestPlants()
          .ifPresent(best -> all.add(purchase(Texts.get("buy.plants", best.plants(), name), best)));
    }
    for (Unknown unknown : found.unknowns()) {
      if (unknown.value().value() > ERRORS * unknown.value().standardError()) {
        String advice = Texts.get(isOfTheFarm(unknown) ? "buy.ask" : "buy.research");
        all.add(
            new FindOut(unknown.name(), unknown.value().value(), OptionalDouble.empty(), advice));
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
        value.paddock() < 0 ? "" : farm.paddocks().get(value.paddock()).name(),
        value.input().unit(),
        value.input().likely(),
        value.value(),
        HowSureWords.breakEven(value));
  }
}
