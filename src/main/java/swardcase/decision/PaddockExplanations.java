package swardcase.decision;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;
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
final class PaddockExplanations {

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
    return Explanation.of(what, name(i), Amount.fixed(areaHa(i)));
  }

  private Explanation measured(int i, Quantity what, OfPaddock measure, Explanation... parts) {
    return Explanation.of(what, name(i), farmWide.amount(farmWide.values(i, measure)), parts);
  }

  /** What the planned action costs. */
  Explanation cost(int i) {
    Values cost = farmWide.values(i, OfPaddock.PLAN_COST);
    Amount perHa = farmWide.amount(cost.times(1 / areaHa(i)));
    String action = decision.model().actions().get(decision.plan().action(i)).name();
    return Explanation.of(
        Quantity.COST,
        List.of(name(i), action),
        farmWide.amount(cost),
        area(Quantity.AREA_OF_PADDOCK, i),
        Explanation.of(Quantity.COST_PER_HA, name(i), perHa));
  }

  /** What the plan would lose without its action on the paddock. */
  Explanation gain(int i) {
    Simulation simulation = decision.simulation();
    double[] plan = simulation.npv(Alternatives.PLAN);
    double[] without = simulation.npv(simulation.alternatives().place(i, PaddockStudy.KEEPING));
    return Explanation.of(
        decision.isActedOn(i) ? Quantity.GAIN : Quantity.GAIN_OF_KEEPING,
        name(i),
        farmWide.amount(decision.gain(i)),
        Explanation.of(Quantity.GAIN_OF_PLAN, farmWide.amount(plan)),
        Explanation.of(Quantity.GAIN_OF_PLAN_WITHOUT, farmWide.amount(without)));
  }

  /** Where that gain comes from. */
  Explanation credit(int i) {
    Simulation simulation = decision.simulation();
    double[] means =
        decision.isActedOn(i) ? simulation.credit(i, 1) : new double[Cause.values().length];
    Explanation[] parts =
        Arrays.stream(Cause.values())
            .map(
                cause ->
                    Explanation.of(
                        Quantity.valueOf("CREDIT_" + cause.name()),
                        Amount.mean(means[cause.ordinal()])))
            .toArray(Explanation[]::new);
    return Explanation.of(Quantity.CREDIT, name(i), farmWide.amount(decision.gain(i)), parts);
  }

  /** Winter growth lost, per ha and year. */
  Explanation growthLost(int i) {
    Paddock paddock = farm.paddocks().get(i);
    double profile = decision.model().year().winterGrowthKgDmPerHa();
    Explanation toCultivar =
        measured(
            i,
            Quantity.LOST_TO_CULTIVAR,
            OfPaddock.LOST_TO_CULTIVAR_KG_DM_PER_HA,
            Explanation.of(Quantity.GROWTH_OF_PROFILE, Amount.fixed(profile)),
            Explanation.of(paddock.growthIndex()),
            Explanation.of(paddock.cloverShare()),
            shortfall(i));
    Explanation toThinStand =
        measured(
            i,
            Quantity.LOST_TO_THIN_STAND,
            OfPaddock.LOST_TO_THIN_STAND_KG_DM_PER_HA,
            thinNumbers(i));
    return measured(
        i, Quantity.GROWTH_LOST, OfPaddock.WINTER_LOSS_KG_DM_PER_HA, toCultivar, toThinStand);
  }

  /** What the thin part rests on. */
  private Explanation[] thinNumbers(int i) {
    UncertainNumbers inputs = decision.model().inputs();
    String count = StandingClover.keyOfSeedlings(farm.paddocks().get(i));
    String own = inputs.find(count).isPresent() ? count : "density.seed-weight";
    return Stream.of(own, "density.reference", "density.half-growth", "density.rest-fills")
        .map(key -> Explanation.of(inputs.get(inputs.place(key))))
        .toArray(Explanation[]::new);
  }

  /** Nitrogen that the clover fixes as it stands, per ha and year. */
  Explanation nitrogen(int i) {
    Paddock paddock = farm.paddocks().get(i);
    double grown = decision.model().year().growthKgDmPerHa() / 1000;
    double index = paddock.growthIndex().likely();
    double relative = run.feedWeight(i) / (areaHa(i) * index);
    Explanation clover =
        Explanation.of(
            Quantity.CLOVER_GROWN,
            Amount.atLikely(grown * index * relative * paddock.cloverShare().likely()),
            Explanation.of(Quantity.GROWTH_OF_YEAR, Amount.fixed(grown)),
            Explanation.of(paddock.growthIndex()),
            Explanation.of(Quantity.RELATIVE_GROWTH, Amount.atLikely(relative)),
            Explanation.of(paddock.cloverShare()));
    return measured(
        i,
        Quantity.NITROGEN_FIXED,
        OfPaddock.NITROGEN_KG_PER_HA,
        clover,
        Explanation.of(tables.parameter("clover.nitrogen-fixed")));
  }

  /** Winter growth lost on the whole paddock in a year. */
  Explanation growthLostInAll(int i) {
    Values perHa = farmWide.values(i, OfPaddock.WINTER_LOSS_KG_DM_PER_HA);
    return Explanation.of(
        Quantity.GROWTH_LOST_OF_PADDOCK,
        name(i),
        farmWide.amount(perHa.times(areaHa(i))),
        growthLost(i),
        area(Quantity.AREA, i));
  }

  private Explanation shortfall(int i) {
    Composition clover = run.composition(i);
    List<Explanation> parts = new ArrayList<>();
    double sum = 0;
    for (int c = 0; c < clover.size(); c++) {
      Assumption yield = clover.cultivar(c).relativeWinterYield();
      double lost = 1 - yield.likely();
      sum += clover.likelyShare(c) * lost;
      Explanation ofEach =
          Explanation.of(Quantity.SHORT_OF_CURRENT, Amount.atLikely(lost), Explanation.of(yield));
      parts.add(ofCultivar(Quantity.SHORTFALL_OF_CULTIVAR, clover, c, lost, ofEach));
    }
    return Explanation.of(
        Quantity.SHORTFALL, Amount.atLikely(sum), parts.toArray(Explanation[]::new));
  }

  private static Explanation ofCultivar(
      Quantity what, Composition clover, int c, double each, Explanation ofEach) {
    Amount amount = Amount.atLikely(clover.likelyShare(c) * each);
    return Explanation.of(what, clover.cultivar(c).name(), amount, share(clover, c), ofEach);
  }

  private static Explanation share(Composition clover, int c) {
    return Explanation.of(
        clover.lookedAt() ? Quantity.SHARE_OF_CLOVER : Quantity.SHARE_ASSUMED,
        clover.cultivar(c).name(),
        Amount.given(clover.estimate(c)));
  }

  /** The paddock's part of the supplement bought because of outdated clover. */
  Explanation supplement(int i) {
    double lost = farmWide.values(OfFarm.WINTER_LOSS_KG_DM).likely();
    double mine = farmWide.values(i, OfPaddock.WINTER_LOSS_KG_DM_PER_HA).likely() * areaHa(i);
    Amount part = Amount.atLikely(lost > 0 ? mine / lost : 0);
    return measured(
        i,
        Quantity.SUPPLEMENT,
        OfPaddock.SUPPLEMENT_TONNES,
        farmWide.winterFeed(),
        Explanation.of(Quantity.PART_OF_GROWTH_LOST, part, growthLost(i)));
  }

  Explanation supplementCost(int i) {
    return measured(
        i,
        Quantity.SUPPLEMENT_COST,
        OfPaddock.SUPPLEMENT_COST,
        supplement(i),
        Explanation.of(farm.supplement().pricePerTonne()));
  }

  /** Formononetin of the clover leaf. */
  Explanation formononetin(int i) {
    boolean tested = farm.paddocks().get(i).leafTest().isPresent();
    List<Explanation> parts = new ArrayList<>();
    Composition clover = run.composition(i);
    for (int c = 0; c < clover.size() && !tested; c++) {
      Assumption content =
          clover
              .cultivar(c)
              .formononetin()
              .orElse(tables.parameter(StandingClover.UNKNOWN_FORMONONETIN));
      parts.add(
          ofCultivar(
              Quantity.FORMONONETIN_OF_CULTIVAR,
              clover,
              c,
              content.likely(),
              Explanation.of(content)));
    }
    return measured(
        i,
        tested ? Quantity.FORMONONETIN_TESTED : Quantity.FORMONONETIN,
        OfPaddock.LEAF_FORMONONETIN,
        parts.toArray(Explanation[]::new));
  }

  /** Formononetin in what a ewe on green feed of this paddock only eats. */
  Explanation dose(int i) {
    Paddock paddock = farm.paddocks().get(i);
    List<Explanation> parts = new ArrayList<>();
    parts.add(formononetin(i));
    parts.add(Explanation.of(paddock.cloverShare()));
    parts.add(Explanation.of(tables.parameter("dose.leaf-share")));
    if (paddock.waterlogged()) {
      parts.add(Explanation.of(tables.parameter("dose.waterlogged-factor")));
    }
    return measured(
        i,
        paddock.waterlogged() ? Quantity.DOSE_ON_WET_GROUND : Quantity.DOSE,
        OfPaddock.GREEN_DOSE,
        parts.toArray(Explanation[]::new));
  }

  /** Share of old cultivars in the clover, as it was counted. */
  Explanation oldShare(int i) {
    Composition clover = run.composition(i);
    return Explanation.of(
        clover.lookedAt() ? Quantity.OLD_SHARE : Quantity.OLD_SHARE_ASSUMED,
        name(i),
        Amount.given(clover.estimate(Cultivar::isOld)),
        IntStream.range(0, clover.size())
            .filter(c -> clover.cultivar(c).isOld())
            .mapToObj(c -> share(clover, c))
            .toArray(Explanation[]::new));
  }
}
