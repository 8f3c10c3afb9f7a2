package swardcase.decision;

import java.util.ArrayList;
import java.util.List;
import swardcase.chance.Range;
import swardcase.decision.DecisionMeasures.OfFarm;
import swardcase.decision.Explanation.Joined;
import swardcase.decision.Explanation.Mover;
import swardcase.draws.OneAtATime;
import swardcase.evidence.Assumption;
import swardcase.farm.Farm;
import swardcase.farm.Mob;
import swardcase.feed.SupplementCost;
import swardcase.outcome.Outcome;
import swardcase.outcome.OutcomeFunction;

/**
 * Where the numbers of the whole farm come from. Every value, range and mover is read from the
 * decision itself, so that an explanation cannot tell of another calculation than the one made.
 */
public final class Explanations {

  static final String MONEY = "money";

  private final Decision decision;
  private final Farm farm;
  private final OutcomeFunction run;
  private final OneAtATime ranges;
  private final PaddockExplanations paddocks;

  private Explanations(Decision decision) {
    this.decision = decision;
    farm = decision.model().farm();
    run = decision.likely();
    ranges = decision.everyEnd();
    paddocks = new PaddockExplanations(decision, this);
  }

  /** The explanations of a decision. */
  public static Explanations of(Decision decision) {
    return new Explanations(decision);
  }

  /** Those of the numbers of paddocks. */
  public PaddockExplanations paddocks() {
    return paddocks;
  }

  /** A number of the decision with its movers. */
  Explanation measured(
      Quantity what,
      List<String> names,
      Range value,
      int measure,
      String unit,
      Joined joined,
      List<Explanation> parts) {
    List<Mover> movers =
        ranges.moving(measure).stream()
            .map(
                j ->
                    new Mover(
                        ranges.inputs().get(j),
                        ranges.atLow(j, measure),
                        ranges.atHigh(j, measure)))
            .toList();
    return new Explanation(what, names, value, unit, joined, parts, movers);
  }

  private int at(OfFarm measure) {
    return decision.measures().at(measure);
  }

  /** Supplement bought in winter because of outdated clover, t as fed. */
  public Explanation winterFeed() {
    return measured(
        Quantity.WINTER_FEED,
        List.of(),
        decision.winterSupplementTonnes(),
        at(OfFarm.WINTER_SUPPLEMENT_TONNES),
        "t as fed",
        Joined.QUOTIENT,
        List.of(winterShortfall(), energyPerTonne()));
  }

  /** The same as money. */
  public Explanation winterFeedCost() {
    return measured(
        Quantity.WINTER_FEED_COST,
        List.of(),
        decision.winterSupplementCost(),
        at(OfFarm.WINTER_SUPPLEMENT_COST),
        MONEY,
        Joined.PRODUCT,
        List.of(winterFeed(), Explanation.of(farm.supplement().pricePerTonne())));
  }

  private Explanation winterShortfall() {
    double now = run.winterGrowthNow();
    return measured(
        Quantity.WINTER_SHORTFALL,
        List.of(),
        decision.winterShortfallMj(),
        at(OfFarm.WINTER_SHORTFALL_MJ),
        "MJ",
        Joined.EXCESS,
        List.of(bought(Quantity.BOUGHT_NOW, now), bought(Quantity.BOUGHT_WITH_CURRENT, 1)));
  }

  private Explanation bought(Quantity what, double winterGrowth) {
    return Explanation.likely(
        what,
        List.of(),
        run.boughtInWinterMj(winterGrowth),
        "MJ",
        Joined.MODEL,
        Explanation.likely(Quantity.WINTER_GROWTH, List.of(), winterGrowth, "", Joined.MODEL));
  }

  private Explanation energyPerTonne() {
    return Explanation.likely(
        Quantity.ENERGY_PER_TONNE,
        List.of(farm.supplement().name()),
        SupplementCost.of(farm.supplement()).energyMjPerTonne(),
        "MJ/t",
        Joined.MODEL,
        Explanation.of(farm.supplement().dryMatterFraction()),
        Explanation.of(farm.supplement().energyMjPerKgDm()),
        Explanation.of(farm.supplement().wasteFraction()));
  }

  /** Winter growth lost on the whole farm, kg DM a year. */
  public Explanation winterGrowthLost() {
    List<Explanation> parts = new ArrayList<>();
    for (int i = 0; i < farm.paddocks().size(); i++) {
      double area = farm.paddocks().get(i).areaHa();
      parts.add(
          Explanation.likely(
              Quantity.GROWTH_LOST_OF_PADDOCK,
              List.of(farm.paddocks().get(i).name()),
              run.winterLossKgDmPerHa(i) * area,
              "kg DM",
              Joined.PRODUCT,
              paddocks.growthLost(i),
              Explanation.likely(Quantity.AREA, List.of(), area, "ha", Joined.MODEL)));
    }
    return measured(
        Quantity.WINTER_GROWTH_LOST,
        List.of(),
        decision.winterLossKgDm(),
        at(OfFarm.WINTER_LOSS_KG_DM),
        "kg DM",
        Joined.SUM,
        parts);
  }

  /** Lambs not marked in a year because of oestrogen. */
  public Explanation lambs() {
    List<Explanation> parts = new ArrayList<>();
    for (int g = 0; g < farm.mobs().size(); g++) {
      parts.add(lambsOf(g));
    }
    return measured(
        Quantity.LAMBS_LOST,
        List.of(),
        decision.lambsLost(),
        at(OfFarm.LAMBS_LOST),
        "lambs",
        Joined.SUM,
        parts);
  }

  private Explanation lambsOf(int g) {
    Mob mob = farm.mobs().get(g);
    return Explanation.likely(
        Quantity.LAMBS_LOST_OF_MOB,
        List.of(mob.name()),
        run.lambsLost(g),
        "lambs",
        Joined.PRODUCT,
        fewerInLamb(g),
        Explanation.likely(
            Quantity.LAMBS_PER_EWE_IN_LAMB,
            List.of(),
            OutcomeFunction.lambsPerPregnantEwe(mob),
            "lambs",
            Joined.QUOTIENT,
            Explanation.of(mob.markingPercent()),
            Explanation.of(mob.pregnantPercent())));
  }

  private Explanation fewerInLamb(int g) {
    Mob mob = farm.mobs().get(g);
    double fewer = run.flock(g).unaffectedShare() - run.flock(g).shareNow();
    return Explanation.likely(
        Quantity.EWES_FEWER_IN_LAMB,
        List.of(mob.name()),
        fewer * mob.ewes(),
        "ewes",
        Joined.PRODUCT,
        Explanation.likely(Quantity.EWES_JOINED, List.of(), mob.ewes(), "ewes", Joined.MODEL),
        Explanation.likely(
            Quantity.SHARE_LOST,
            List.of(),
            fewer,
            "",
            Joined.DIFFERENCE,
            Explanation.likely(
                Quantity.IN_LAMB_WITHOUT_OESTROGEN,
                List.of(),
                run.flock(g).unaffectedShare(),
                "",
                Joined.MODEL),
            Explanation.likely(
                Quantity.IN_LAMB_NOW,
                List.of(),
                run.flock(g).shareNow(),
                "",
                Joined.MODEL,
                measured(
                    Quantity.DOSE_OVER_JOINING,
                    List.of(mob.name()),
                    decision.doseAtJoining(g),
                    decision.measures().at(g, DecisionMeasures.OfMob.DOSE_AT_JOINING),
                    "% of intake",
                    Joined.MODEL,
                    List.of()))));
  }

  /** Money lost in a year because of oestrogen. */
  public Explanation lambCost() {
    List<Explanation> parts = new ArrayList<>();
    for (int g = 0; g < farm.mobs().size(); g++) {
      Explanation lambs = lambsOf(g);
      Explanation ewes = fewerInLamb(g);
      parts.add(
          Explanation.likely(
              Quantity.LAMB_COST_OF_MOB,
              List.of(farm.mobs().get(g).name()),
              run.lambCost(g),
              MONEY,
              Joined.SUM,
              times(Quantity.LAMB_VALUE, lambs, farm.prices().netValuePerLamb()),
              times(Quantity.DRY_EWE_COST, ewes, farm.prices().costPerDryEwe())));
    }
    return measured(
        Quantity.LAMB_COST,
        List.of(),
        decision.lambCost(),
        at(OfFarm.LAMB_COST),
        MONEY,
        Joined.SUM,
        parts);
  }

  private static Explanation times(Quantity what, Explanation count, Assumption price) {
    return Explanation.likely(
        what,
        List.of(),
        count.value().likely() * price.likely(),
        MONEY,
        Joined.PRODUCT,
        count,
        Explanation.of(price));
  }

  /** All costs of the plan. */
  public Explanation planCost() {
    List<Explanation> parts = new ArrayList<>();
    for (int i = 0; i < farm.paddocks().size(); i++) {
      if (decision.plan().action(i) != decision.model().keep()) {
        parts.add(paddocks.cost(i));
      }
    }
    return measured(
        Quantity.PLAN_COST,
        List.of(),
        decision.planCost(),
        at(OfFarm.PLAN_COST),
        MONEY,
        Joined.SUM,
        parts);
  }

  /** Net present value of the plan. */
  public Explanation planGain() {
    Outcome outcome = decision.outcome();
    double rate = farm.finance().discountRate().likely();
    List<Explanation> parts = new ArrayList<>();
    double factor = 1;
    for (int t = 0; t < outcome.years(); t++) {
      factor = t == 0 ? 1 : factor / (1 + rate);
      parts.add(year(outcome, t, factor));
    }
    parts.add(endValue(factor));
    return measured(
        Quantity.PLAN_GAIN,
        List.of(),
        decision.planNpv(),
        at(OfFarm.PLAN_NPV),
        MONEY,
        Joined.SUM,
        parts);
  }

  private Explanation year(Outcome outcome, int t, double factor) {
    return Explanation.likely(
        Quantity.YEAR,
        List.of(Integer.toString(t + 1)),
        outcome.net(t) * factor,
        MONEY,
        Joined.PRODUCT,
        Explanation.likely(
            Quantity.NET_OF_YEAR,
            List.of(Integer.toString(t + 1)),
            outcome.net(t),
            MONEY,
            Joined.SUM,
            part(Quantity.SUPPLEMENT_SAVED, outcome.supplementSaved(t)),
            part(Quantity.LAMBS_SAVED, outcome.lambsSaved(t)),
            part(Quantity.CROP_MARGINS, outcome.cropMargin(t)),
            part(Quantity.SPARE_FEED, outcome.spareFeed(t)),
            part(Quantity.WORK_COSTS, -outcome.actionCost(t))),
        factor(factor));
  }

  private static Explanation part(Quantity what, double value) {
    return Explanation.likely(what, List.of(), value, MONEY, Joined.MODEL);
  }

  private Explanation factor(double factor) {
    return Explanation.likely(
        Quantity.DISCOUNT_FACTOR,
        List.of(),
        factor,
        "",
        Joined.MODEL,
        Explanation.of(farm.finance().discountRate()));
  }

  private Explanation endValue(double factor) {
    double sown = 0;
    for (int i = 0; i < farm.paddocks().size(); i++) {
      boolean sows = decision.model().actions().get(decision.plan().action(i)).sows();
      sown += sows ? farm.paddocks().get(i).areaHa() : 0;
    }
    Assumption perHa = farm.finance().endValuePerHa();
    return Explanation.likely(
        Quantity.END_VALUE,
        List.of(),
        sown * perHa.likely() * factor,
        MONEY,
        Joined.PRODUCT,
        Explanation.likely(Quantity.HECTARES_SOWN, List.of(), sown, "ha", Joined.MODEL),
        Explanation.of(perHa),
        factor(factor));
  }
}
