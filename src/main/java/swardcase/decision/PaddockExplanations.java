package swardcase.decision;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import swardcase.decision.DecisionMeasures.OfPaddock;
import swardcase.decision.Explanation.Joined;
import swardcase.evidence.Assumption;
import swardcase.farm.Farm;
import swardcase.farm.LeafTest;
import swardcase.farm.Paddock;
import swardcase.outcome.Outcome;
import swardcase.outcome.OutcomeFunction;
import swardcase.outcome.Plan;
import swardcase.sward.Composition;
import swardcase.tables.Cultivar;
import swardcase.tables.Tables;

/** Where the numbers of a paddock come from; paddocks are named by their place. */
public final class PaddockExplanations {

  private final Decision decision;
  private final Explanations farmWide;
  private final Farm farm;
  private final Tables tables;
  private final OutcomeFunction run;

  PaddockExplanations(Decision decision, Explanations farmWide) {
    this.decision = decision;
    this.farmWide = farmWide;
    farm = decision.model().farm();
    tables = decision.model().tables();
    run = decision.likely();
  }

  private int at(int i, OfPaddock measure) {
    return decision.measures().at(i, measure);
  }

  private String name(int i) {
    return farm.paddocks().get(i).name();
  }

  private Explanation area(int i) {
    return Explanation.likely(
        Quantity.AREA_OF_PADDOCK,
        List.of(name(i)),
        farm.paddocks().get(i).areaHa(),
        "ha",
        Joined.MODEL);
  }

  /** What the planned action costs. */
  public Explanation cost(int i) {
    Plan plan = decision.plan();
    return farmWide.measured(
        Quantity.COST,
        List.of(name(i), action(i)),
        decision.planCost(i),
        at(i, OfPaddock.PLAN_COST),
        Explanations.MONEY,
        Joined.PRODUCT,
        List.of(
            area(i),
            Explanation.likely(
                Quantity.COST_PER_HA,
                List.of(name(i)),
                run.costPerHa(i, plan.action(i), plan.start(i)),
                "money/ha",
                Joined.MODEL)));
  }

  private String action(int i) {
    return decision.model().actions().get(decision.plan().action(i)).name();
  }

  /** What the plan would lose without its action on the paddock. */
  public Explanation gain(int i) {
    boolean keeps = decision.plan().action(i) == decision.model().keep();
    Outcome without = new Outcome(decision.model().years());
    run.evaluate(decision.plan().with(i, decision.model().keep(), 0), without);
    return farmWide.measured(
        keeps ? Quantity.GAIN_OF_KEEPING : Quantity.GAIN,
        List.of(name(i)),
        decision.planNpv(i),
        at(i, OfPaddock.PLAN_NPV),
        Explanations.MONEY,
        Joined.DIFFERENCE,
        List.of(
            Explanation.likely(
                Quantity.GAIN_OF_PLAN,
                List.of(),
                decision.outcome().npv(),
                Explanations.MONEY,
                Joined.MODEL),
            Explanation.likely(
                Quantity.GAIN_OF_PLAN_WITHOUT,
                List.of(),
                without.npv(),
                Explanations.MONEY,
                Joined.MODEL)));
  }

  /** Winter growth lost, kg DM per ha and year. */
  public Explanation growthLost(int i) {
    Paddock paddock = farm.paddocks().get(i);
    return farmWide.measured(
        Quantity.GROWTH_LOST,
        List.of(name(i)),
        decision.winterLossKgDmPerHa(i),
        at(i, OfPaddock.WINTER_LOSS_KG_DM_PER_HA),
        "kg DM/ha",
        Joined.PRODUCT,
        List.of(
            Explanation.likely(
                Quantity.GROWTH_OF_PROFILE,
                List.of(),
                decision.model().year().winterGrowthKgDmPerHa(),
                "kg DM/ha",
                Joined.MODEL),
            Explanation.of(paddock.growthIndex()),
            Explanation.of(paddock.cloverShare()),
            shortfall(i)));
  }

  private Explanation shortfall(int i) {
    Composition clover = run.composition(i);
    List<Explanation> parts = new ArrayList<>();
    double sum = 0;
    for (int c = 0; c < clover.size(); c++) {
      Cultivar cultivar = clover.cultivar(c);
      double lost = 1 - cultivar.relativeWinterYield().likely();
      sum += clover.likelyShare(c) * lost;
      parts.add(
          Explanation.likely(
              Quantity.SHORTFALL_OF_CULTIVAR,
              List.of(cultivar.name()),
              clover.likelyShare(c) * lost,
              "",
              Joined.PRODUCT,
              share(clover, c),
              Explanation.likely(
                  Quantity.SHORT_OF_CURRENT,
                  List.of(),
                  lost,
                  "",
                  Joined.MODEL,
                  Explanation.of(cultivar.relativeWinterYield()))));
    }
    return Explanation.likely(
        Quantity.SHORTFALL, List.of(), sum, "", Joined.SUM, parts.toArray(Explanation[]::new));
  }

  private static Explanation share(Composition clover, int c) {
    return new Explanation(
        Quantity.SHARE_OF_CLOVER,
        List.of(clover.cultivar(c).name()),
        clover.estimate(c),
        "",
        Joined.MODEL,
        List.of(),
        List.of());
  }

  /** The paddock's part of the supplement bought because of outdated clover, t as fed. */
  public Explanation supplement(int i) {
    double lost = decision.winterLossKgDm().likely();
    double mine = run.winterLossKgDmPerHa(i) * farm.paddocks().get(i).areaHa();
    return farmWide.measured(
        Quantity.SUPPLEMENT,
        List.of(name(i)),
        decision.supplementTonnes(i),
        at(i, OfPaddock.SUPPLEMENT_TONNES),
        "t as fed",
        Joined.PRODUCT,
        List.of(
            farmWide.winterFeed(),
            Explanation.likely(
                Quantity.PART_OF_GROWTH_LOST,
                List.of(),
                lost > 0 ? mine / lost : 0,
                "",
                Joined.MODEL,
                growthLost(i))));
  }

  /** The same as money. */
  public Explanation supplementCost(int i) {
    return farmWide.measured(
        Quantity.SUPPLEMENT_COST,
        List.of(name(i)),
        decision.supplementCost(i),
        at(i, OfPaddock.SUPPLEMENT_COST),
        Explanations.MONEY,
        Joined.PRODUCT,
        List.of(supplement(i), Explanation.of(farm.supplement().pricePerTonne())));
  }

  /** Formononetin of the clover, per cent of leaf dry matter. */
  public Explanation formononetin(int i) {
    Optional<LeafTest> test = farm.paddocks().get(i).leafTest();
    List<Explanation> parts = new ArrayList<>();
    Composition clover = run.composition(i);
    for (int c = 0; c < clover.size() && test.isEmpty(); c++) {
      Cultivar cultivar = clover.cultivar(c);
      Assumption content =
          cultivar.formononetin().orElse(tables.parameter("dose.unknown-formononetin"));
      parts.add(
          Explanation.likely(
              Quantity.FORMONONETIN_OF_CULTIVAR,
              List.of(cultivar.name()),
              clover.likelyShare(c) * content.likely(),
              "% of leaf",
              Joined.PRODUCT,
              share(clover, c),
              Explanation.of(content)));
    }
    return farmWide.measured(
        test.isPresent() ? Quantity.FORMONONETIN_TESTED : Quantity.FORMONONETIN,
        List.of(name(i)),
        decision.leafFormononetin(i),
        at(i, OfPaddock.LEAF_FORMONONETIN),
        "% of leaf",
        test.isPresent() ? Joined.MODEL : Joined.SUM,
        parts);
  }

  /** Formononetin, per cent of intake, of a ewe on green feed of this paddock only. */
  public Explanation dose(int i) {
    Paddock paddock = farm.paddocks().get(i);
    List<Explanation> parts = new ArrayList<>();
    parts.add(formononetin(i));
    parts.add(Explanation.of(paddock.cloverShare()));
    parts.add(Explanation.of(tables.parameter("dose.leaf-share")));
    if (paddock.waterlogged()) {
      parts.add(Explanation.of(tables.parameter("dose.waterlogged-factor")));
    }
    return farmWide.measured(
        paddock.waterlogged() ? Quantity.DOSE_ON_WET_GROUND : Quantity.DOSE,
        List.of(name(i)),
        decision.greenDose(i),
        at(i, OfPaddock.GREEN_DOSE),
        "% of intake",
        Joined.PRODUCT,
        parts);
  }

  /** Share of old cultivars in the clover. */
  public Explanation oldShare(int i) {
    Composition clover = run.composition(i);
    List<Explanation> parts = new ArrayList<>();
    for (int c = 0; c < clover.size(); c++) {
      if (clover.cultivar(c).isOld()) {
        parts.add(share(clover, c));
      }
    }
    return new Explanation(
        Quantity.OLD_SHARE,
        List.of(name(i)),
        clover.estimate(Cultivar::isOld),
        "",
        Joined.SUM,
        parts,
        List.of());
  }
}
