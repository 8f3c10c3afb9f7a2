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
      String name,
      String formula,
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
    return new Explanation(name, formula, value, unit, joined, parts, movers);
  }

  private int at(OfFarm measure) {
    return decision.measures().at(measure);
  }

  /** Supplement bought in winter because of outdated clover, t as fed. */
  public Explanation winterFeed() {
    return measured(
        "supplement bought in winter because of outdated clover",
        "energy short in winter ÷ energy in a tonne of supplement",
        decision.winterSupplementTonnes(),
        at(OfFarm.WINTER_SUPPLEMENT_TONNES),
        "t as fed",
        Joined.QUOTIENT,
        List.of(winterShortfall(), energyPerTonne()));
  }

  /** The same as money. */
  public Explanation winterFeedCost() {
    return measured(
        "cost of that supplement",
        "tonnes × price",
        decision.winterSupplementCost(),
        at(OfFarm.WINTER_SUPPLEMENT_COST),
        MONEY,
        Joined.PRODUCT,
        List.of(winterFeed(), Explanation.of(farm.supplement().pricePerTonne())));
  }

  private Explanation winterShortfall() {
    double now = run.winterGrowthNow();
    return measured(
        "energy short in winter because of outdated clover",
        "bought in winter with the stands as they are − bought with current cultivars, never below"
            + " 0",
        decision.winterShortfallMj(),
        at(OfFarm.WINTER_SHORTFALL_MJ),
        "MJ",
        Joined.EXCESS,
        List.of(
            bought("energy bought in winter, stands as they are", now),
            bought("energy bought in winter, current cultivars", 1)));
  }

  private Explanation bought(String name, double winterGrowth) {
    return Explanation.likely(
        name,
        "feed budget by half-months over poor, average and good seasons: what the stock need less"
            + " what they eat of pasture",
        run.boughtInWinterMj(winterGrowth),
        "MJ",
        Joined.MODEL,
        Explanation.likely(
            "winter growth of the farm against current cultivars everywhere",
            "mean of the paddocks by area and growth index",
            winterGrowth,
            "",
            Joined.MODEL));
  }

  private Explanation energyPerTonne() {
    return Explanation.likely(
        "energy in a tonne of " + farm.supplement().name(),
        "1000 × dry matter × energy × (1 − waste)",
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
              farm.paddocks().get(i).name(),
              "lost per ha × area",
              run.winterLossKgDmPerHa(i) * area,
              "kg DM",
              Joined.PRODUCT,
              paddocks.growthLost(i),
              Explanation.likely("area", "", area, "ha", Joined.MODEL)));
    }
    return measured(
        "winter growth lost to outdated clover, whole farm",
        "sum of the paddocks",
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
        "lambs not marked because of oestrogenic clover",
        "sum of the mobs",
        decision.lambsLost(),
        at(OfFarm.LAMBS_LOST),
        "lambs",
        Joined.SUM,
        parts);
  }

  private Explanation lambsOf(int g) {
    Mob mob = farm.mobs().get(g);
    return Explanation.likely(
        "lambs lost, " + mob.name(),
        "ewes fewer in lamb × lambs marked for each ewe in lamb",
        run.lambsLost(g),
        "lambs",
        Joined.PRODUCT,
        fewerInLamb(g),
        Explanation.likely(
            "lambs marked for each ewe in lamb",
            "marked per 100 joined ÷ in lamb per 100 joined",
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
        "ewes fewer in lamb, " + mob.name(),
        "ewes joined × share lost",
        fewer * mob.ewes(),
        "ewes",
        Joined.PRODUCT,
        Explanation.likely("ewes joined", "", mob.ewes(), "ewes", Joined.MODEL),
        Explanation.likely(
            "share of ewes in lamb that is lost",
            "in lamb without oestrogen − in lamb as paddocks are grazed now",
            fewer,
            "",
            Joined.DIFFERENCE,
            Explanation.likely(
                "in lamb without oestrogen",
                "the mob's own figure, what oestrogen takes already added back",
                run.flock(g).unaffectedShare(),
                "",
                Joined.MODEL),
            Explanation.likely(
                "in lamb as paddocks are grazed now",
                "chances to conceive in each cycle of joining at the dose met then, less ewes made"
                    + " sterile by green seasons before",
                run.flock(g).shareNow(),
                "",
                Joined.MODEL,
                measured(
                    "formononetin over joining, " + mob.name(),
                    "mean of the paddocks the mob grazes, by feed eaten, over joining",
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
              "lost, " + farm.mobs().get(g).name(),
              "lambs lost and further costs of dry ewes",
              run.lambCost(g),
              MONEY,
              Joined.SUM,
              times("value of the lambs lost", lambs, farm.prices().netValuePerLamb()),
              times("further costs of dry ewes", ewes, farm.prices().costPerDryEwe())));
    }
    return measured(
        "money lost because of oestrogenic clover",
        "sum of the mobs",
        decision.lambCost(),
        at(OfFarm.LAMB_COST),
        MONEY,
        Joined.SUM,
        parts);
  }

  private static Explanation times(String name, Explanation count, Assumption price) {
    return Explanation.likely(
        name,
        "number × price",
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
        "cost of the plan, not discounted",
        "sum of the paddocks that change",
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
        "gain of the plan: net present value against keeping every paddock",
        "sum over the years of net × discount factor, and the end value",
        decision.planNpv(),
        at(OfFarm.PLAN_NPV),
        MONEY,
        Joined.SUM,
        parts);
  }

  private Explanation year(Outcome outcome, int t, double factor) {
    return Explanation.likely(
        "year " + (t + 1) + ", discounted",
        "net × discount factor",
        outcome.net(t) * factor,
        MONEY,
        Joined.PRODUCT,
        Explanation.likely(
            "net of year " + (t + 1),
            "gains − costs of the work",
            outcome.net(t),
            MONEY,
            Joined.SUM,
            part("supplement not bought", outcome.supplementSaved(t)),
            part("lambs not lost", outcome.lambsSaved(t)),
            part("crop margins", outcome.cropMargin(t)),
            part("spare feed or more ewes", outcome.spareFeed(t)),
            part("costs of the work", -outcome.actionCost(t))),
        factor(factor));
  }

  private static Explanation part(String name, double value) {
    return Explanation.likely(name, "", value, MONEY, Joined.MODEL);
  }

  private Explanation factor(double factor) {
    return Explanation.likely(
        "discount factor",
        "1 ÷ (1 + rate) for each year after the first",
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
        "end value, discounted as the last year",
        "hectares sown × end value × discount factor",
        sown * perHa.likely() * factor,
        MONEY,
        Joined.PRODUCT,
        Explanation.likely("hectares sown", "", sown, "ha", Joined.MODEL),
        Explanation.of(perHa),
        factor(factor));
  }
}
