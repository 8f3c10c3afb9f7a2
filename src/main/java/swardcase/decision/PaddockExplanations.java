package swardcase.decision;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;
import swardcase.chance.Sample;
import swardcase.decision.Explanation.Joined;
import swardcase.decision.FarmMeasures.OfFarm;
import swardcase.decision.FarmMeasures.OfPaddock;
import swardcase.draws.Alternatives;
import swardcase.draws.Simulation;
import swardcase.evidence.Assumption;
import swardcase.evidence.UncertainNumbers;
import swardcase.farm.Farm;
import swardcase.farm.Paddock;
import swardcase.outcome.Cause;
import swardcase.outcome.OutcomeFunction;
import swardcase.sward.Composition;
import swardcase.sward.StandingClover;
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

  private String name(int i) {
    return farm.paddocks().get(i).name();
  }

  private double areaHa(int i) {
    return farm.paddocks().get(i).areaHa();
  }

  private Explanation area(Quantity what, int i) {
    return Explanation.of(what, List.of(name(i)), Amount.fixed(areaHa(i)), "ha", Joined.MODEL);
  }

  private Explanation measured(
      int i, Quantity what, OfPaddock measure, String unit, Joined joined, Explanation... parts) {
    return Explanation.of(
        what, List.of(name(i)), farmWide.amount(farmWide.values(i, measure)), unit, joined, parts);
  }

  private Explanation moved(int i, OfPaddock measure, Explanation number) {
    return farmWide.moved(number, farmWide.values(i, measure).drawn());
  }

  /** What the planned action costs. */
  public Explanation cost(int i) {
    return moved(i, OfPaddock.PLAN_COST, costAlone(i));
  }

  Explanation costAlone(int i) {
    Values cost = farmWide.values(i, OfPaddock.PLAN_COST);
    String action = decision.model().actions().get(decision.plan().action(i)).name();
    return Explanation.of(
        Quantity.COST,
        List.of(name(i), action),
        farmWide.amount(cost),
        Explanations.MONEY,
        Joined.PRODUCT,
        area(Quantity.AREA_OF_PADDOCK, i),
        Explanation.of(
            Quantity.COST_PER_HA,
            List.of(name(i)),
            farmWide.amount(cost.times(1 / areaHa(i))),
            "money/ha",
            Joined.MODEL));
  }

  /** What the plan would lose without its action on the paddock. */
  public Explanation gain(int i) {
    Simulation simulation = decision.simulation();
    double[] plan = simulation.npv(Alternatives.PLAN);
    double[] without = simulation.npv(simulation.alternatives().place(i, PaddockStudy.KEEPING));
    double[] gain = Sample.difference(plan, without);
    return farmWide.moved(
        Explanation.of(
            decision.isActedOn(i) ? Quantity.GAIN : Quantity.GAIN_OF_KEEPING,
            List.of(name(i)),
            farmWide.amount(gain),
            Explanations.MONEY,
            Joined.DIFFERENCE,
            npv(Quantity.GAIN_OF_PLAN, plan),
            npv(Quantity.GAIN_OF_PLAN_WITHOUT, without)),
        gain);
  }

  /** Where that gain comes from. */
  public Explanation credit(int i) {
    Simulation simulation = decision.simulation();
    double[] gain =
        Sample.difference(
            simulation.npv(Alternatives.PLAN),
            simulation.npv(simulation.alternatives().place(i, PaddockStudy.KEEPING)));
    double[] means =
        decision.isActedOn(i) ? simulation.credit(i, 1) : new double[Cause.values().length];
    Explanation[] parts =
        Arrays.stream(Cause.values())
            .map(
                cause ->
                    Explanation.of(
                        Quantity.valueOf("CREDIT_" + cause.name()),
                        List.of(),
                        Amount.mean(means[cause.ordinal()]),
                        Explanations.MONEY,
                        Joined.MODEL))
            .toArray(Explanation[]::new);
    return farmWide.moved(
        Explanation.of(
            Quantity.CREDIT,
            List.of(name(i)),
            farmWide.amount(gain),
            Explanations.MONEY,
            Joined.SUM,
            parts),
        gain);
  }

  private Explanation npv(Quantity what, double[] npv) {
    return Explanation.of(what, List.of(), farmWide.amount(npv), Explanations.MONEY, Joined.MODEL);
  }

  /** Winter growth lost, kg DM per ha and year. */
  public Explanation growthLost(int i) {
    return moved(i, OfPaddock.WINTER_LOSS_KG_DM_PER_HA, growthLostAlone(i));
  }

  private Explanation growthLostAlone(int i) {
    Paddock paddock = farm.paddocks().get(i);
    Explanation toCultivar =
        measured(
            i,
            Quantity.LOST_TO_CULTIVAR,
            OfPaddock.LOST_TO_CULTIVAR_KG_DM_PER_HA,
            "kg DM/ha",
            Joined.PRODUCT,
            Explanation.of(
                Quantity.GROWTH_OF_PROFILE,
                List.of(),
                Amount.fixed(decision.model().year().winterGrowthKgDmPerHa()),
                "kg DM/ha",
                Joined.MODEL),
            Explanation.of(paddock.growthIndex()),
            Explanation.of(paddock.cloverShare()),
            shortfall(i));
    return measured(
        i,
        Quantity.GROWTH_LOST,
        OfPaddock.WINTER_LOSS_KG_DM_PER_HA,
        "kg DM/ha",
        Joined.SUM,
        toCultivar,
        measured(
            i,
            Quantity.LOST_TO_THIN_STAND,
            OfPaddock.LOST_TO_THIN_STAND_KG_DM_PER_HA,
            "kg DM/ha",
            Joined.MODEL,
            thinNumbers(i)));
  }

  /** What the thin part rests on. */
  private Explanation[] thinNumbers(int i) {
    List<Explanation> numbers = new ArrayList<>();
    UncertainNumbers inputs = decision.model().inputs();
    String count = StandingClover.keyOfSeedlings(farm.paddocks().get(i));
    String own = inputs.find(count).isPresent() ? count : "density.seed-weight";
    for (String key :
        List.of(own, "density.reference", "density.half-growth", "density.rest-fills")) {
      numbers.add(Explanation.of(inputs.get(inputs.place(key))));
    }
    return numbers.toArray(Explanation[]::new);
  }

  /** Nitrogen that the clover fixes as it stands, kg per ha and year. */
  public Explanation nitrogen(int i) {
    Paddock paddock = farm.paddocks().get(i);
    double grown = decision.model().year().growthKgDmPerHa() / 1000;
    double index = paddock.growthIndex().likely();
    double relative = run.feedWeight(i) / (areaHa(i) * index);
    Explanation clover =
        Explanation.of(
            Quantity.CLOVER_GROWN,
            List.of(),
            Amount.atLikely(grown * index * relative * paddock.cloverShare().likely()),
            "t DM/ha",
            Joined.PRODUCT,
            Explanation.of(
                Quantity.GROWTH_OF_YEAR, List.of(), Amount.fixed(grown), "t DM/ha", Joined.MODEL),
            Explanation.of(paddock.growthIndex()),
            Explanation.of(
                Quantity.RELATIVE_GROWTH, List.of(), Amount.atLikely(relative), "", Joined.MODEL),
            Explanation.of(paddock.cloverShare()));
    return moved(
        i,
        OfPaddock.NITROGEN_KG_PER_HA,
        measured(
            i,
            Quantity.NITROGEN_FIXED,
            OfPaddock.NITROGEN_KG_PER_HA,
            "kg N/ha",
            Joined.PRODUCT,
            clover,
            Explanation.of(tables.parameter("clover.nitrogen-fixed"))));
  }

  /** Winter growth lost on the whole paddock, kg DM a year. */
  Explanation growthLostInAll(int i) {
    Values perHa = farmWide.values(i, OfPaddock.WINTER_LOSS_KG_DM_PER_HA);
    return Explanation.of(
        Quantity.GROWTH_LOST_OF_PADDOCK,
        List.of(name(i)),
        farmWide.amount(perHa.times(areaHa(i))),
        "kg DM",
        Joined.PRODUCT,
        growthLostAlone(i),
        area(Quantity.AREA, i));
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
          ofCultivar(
              Quantity.SHORTFALL_OF_CULTIVAR,
              clover,
              c,
              lost,
              "",
              Explanation.of(
                  Quantity.SHORT_OF_CURRENT,
                  List.of(),
                  Amount.atLikely(lost),
                  "",
                  Joined.MODEL,
                  Explanation.of(cultivar.relativeWinterYield()))));
    }
    return Explanation.of(
        Quantity.SHORTFALL,
        List.of(),
        Amount.atLikely(sum),
        "",
        Joined.SUM,
        parts.toArray(Explanation[]::new));
  }

  private static Explanation ofCultivar(
      Quantity what, Composition clover, int c, double each, String unit, Explanation ofEach) {
    return Explanation.of(
        what,
        List.of(clover.cultivar(c).name()),
        Amount.atLikely(clover.likelyShare(c) * each),
        unit,
        Joined.PRODUCT,
        share(clover, c),
        ofEach);
  }

  private static Explanation share(Composition clover, int c) {
    return Explanation.of(
        clover.lookedAt() ? Quantity.SHARE_OF_CLOVER : Quantity.SHARE_ASSUMED,
        List.of(clover.cultivar(c).name()),
        Amount.given(clover.estimate(c)),
        "",
        Joined.MODEL);
  }

  /** The paddock's part of the supplement bought because of outdated clover, t as fed. */
  public Explanation supplement(int i) {
    return moved(i, OfPaddock.SUPPLEMENT_TONNES, supplementAlone(i));
  }

  private Explanation supplementAlone(int i) {
    double lost = farmWide.values(OfFarm.WINTER_LOSS_KG_DM).likely();
    double mine = farmWide.values(i, OfPaddock.WINTER_LOSS_KG_DM_PER_HA).likely() * areaHa(i);
    return measured(
        i,
        Quantity.SUPPLEMENT,
        OfPaddock.SUPPLEMENT_TONNES,
        "t as fed",
        Joined.PRODUCT,
        farmWide.winterFeedAlone(),
        Explanation.of(
            Quantity.PART_OF_GROWTH_LOST,
            List.of(),
            Amount.atLikely(lost > 0 ? mine / lost : 0),
            "",
            Joined.MODEL,
            growthLostAlone(i)));
  }

  /** The same as money. */
  public Explanation supplementCost(int i) {
    return moved(
        i,
        OfPaddock.SUPPLEMENT_COST,
        measured(
            i,
            Quantity.SUPPLEMENT_COST,
            OfPaddock.SUPPLEMENT_COST,
            Explanations.MONEY,
            Joined.PRODUCT,
            supplementAlone(i),
            Explanation.of(farm.supplement().pricePerTonne())));
  }

  /** Formononetin of the clover, per cent of leaf dry matter. */
  public Explanation formononetin(int i) {
    return moved(i, OfPaddock.LEAF_FORMONONETIN, formononetinAlone(i));
  }

  private Explanation formononetinAlone(int i) {
    boolean tested = farm.paddocks().get(i).leafTest().isPresent();
    List<Explanation> parts = new ArrayList<>();
    Composition clover = run.composition(i);
    for (int c = 0; c < clover.size() && !tested; c++) {
      Assumption content =
          clover.cultivar(c).formononetin().orElse(tables.parameter("dose.unknown-formononetin"));
      parts.add(
          ofCultivar(
              Quantity.FORMONONETIN_OF_CULTIVAR,
              clover,
              c,
              content.likely(),
              "% of leaf",
              Explanation.of(content)));
    }
    return measured(
        i,
        tested ? Quantity.FORMONONETIN_TESTED : Quantity.FORMONONETIN,
        OfPaddock.LEAF_FORMONONETIN,
        "% of leaf",
        tested ? Joined.MODEL : Joined.SUM,
        parts.toArray(Explanation[]::new));
  }

  /** Formononetin, per cent of intake, of a ewe on green feed of this paddock only. */
  public Explanation dose(int i) {
    Paddock paddock = farm.paddocks().get(i);
    List<Explanation> parts = new ArrayList<>();
    parts.add(formononetinAlone(i));
    parts.add(Explanation.of(paddock.cloverShare()));
    parts.add(Explanation.of(tables.parameter("dose.leaf-share")));
    if (paddock.waterlogged()) {
      parts.add(Explanation.of(tables.parameter("dose.waterlogged-factor")));
    }
    return moved(
        i,
        OfPaddock.GREEN_DOSE,
        measured(
            i,
            paddock.waterlogged() ? Quantity.DOSE_ON_WET_GROUND : Quantity.DOSE,
            OfPaddock.GREEN_DOSE,
            "% of intake",
            Joined.PRODUCT,
            parts.toArray(Explanation[]::new)));
  }

  /** Share of old cultivars in the clover, as it was counted. */
  public Explanation oldShare(int i) {
    Composition clover = run.composition(i);
    Explanation[] parts =
        IntStream.range(0, clover.size())
            .filter(c -> clover.cultivar(c).isOld())
            .mapToObj(c -> share(clover, c))
            .toArray(Explanation[]::new);
    return Explanation.of(
        clover.lookedAt() ? Quantity.OLD_SHARE : Quantity.OLD_SHARE_ASSUMED,
        List.of(name(i)),
        Amount.given(clover.estimate(Cultivar::isOld)),
        "",
        Joined.SUM,
        parts);
  }
}
