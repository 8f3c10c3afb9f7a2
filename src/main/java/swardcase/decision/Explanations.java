package swardcase.decision;

import java.time.Month;
import java.util.Arrays;
import java.util.List;
import java.util.function.IntFunction;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import swardcase.decision.Explanation.Joined;
import swardcase.decision.FarmMeasures.OfFarm;
import swardcase.decision.FarmMeasures.OfMob;
import swardcase.decision.FarmMeasures.OfMonth;
import swardcase.decision.FarmMeasures.OfPaddock;
import swardcase.draws.Alternatives;
import swardcase.draws.Simulation;
import swardcase.evidence.Assumption;
import swardcase.evidence.UncertainNumbers;
import swardcase.farm.Farm;
import swardcase.farm.Mob;
import swardcase.feed.SupplementCost;
import swardcase.outcome.FarmRule;
import swardcase.outcome.Outcome;
import swardcase.outcome.OutcomeFunction;

/**
 * Where the numbers of the whole farm come from. Every value and mover is read from the draws of
 * the decision, or from one run of the same calculation at the likely inputs, so that an
 * explanation cannot tell of another calculation than the one made.
 */
public final class Explanations {

  static final String MONEY = "money";

  private final Decision decision;
  private final Farm farm;
  private final OutcomeFunction run;
  private final Simulation simulation;
  private final FarmMeasures measures;
  private final double[] atLikely;
  private final PaddockExplanations paddocks;

  private Explanations(Decision decision) {
    this.decision = decision;
    farm = decision.model().farm();
    run = decision.likely();
    simulation = decision.simulation();
    measures = new FarmMeasures(decision.model(), decision.plan());
    atLikely = new double[measures.size()];
    measures.read(run, decision.model().inputs().likely(), atLikely);
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

  Values values(OfFarm measure) {
    return values(measures.at(measure));
  }

  private Values values(int mob, OfMob measure) {
    return values(measures.at(mob, measure));
  }

  Values values(int paddock, OfPaddock measure) {
    return values(measures.at(paddock, measure));
  }

  private Values values(int measure) {
    return new Values(simulation.measured(measure), atLikely[measure]);
  }

  /** Over the draws, and at the likely inputs. */
  Amount amount(Values values) {
    return amount(values.drawn()).withLikely(values.likely());
  }

  /** Over the draws alone. */
  Amount amount(double[] drawn) {
    return Amount.drawn(decision.spread(drawn).drawn());
  }

  /** The number with the inputs that move it. */
  Explanation moved(Explanation number, double[] drawn) {
    return number.movedBy(new Unknowns(simulation).moving(drawn));
  }

  /** Supplement bought in winter because of outdated clover, t as fed. */
  public Explanation winterFeed() {
    return moved(winterFeedAlone(), values(OfFarm.WINTER_SUPPLEMENT_TONNES).drawn());
  }

  Explanation winterFeedAlone() {
    return Explanation.of(
        Quantity.WINTER_FEED,
        List.of(),
        amount(values(OfFarm.WINTER_SUPPLEMENT_TONNES)),
        "t as fed",
        Joined.QUOTIENT,
        winterShortfall(),
        energyPerTonne());
  }

  /** The same as money. */
  public Explanation winterFeedCost() {
    Values cost = values(OfFarm.WINTER_SUPPLEMENT_COST);
    return moved(
        Explanation.of(
            Quantity.WINTER_FEED_COST,
            List.of(),
            amount(cost),
            MONEY,
            Joined.PRODUCT,
            winterFeedAlone(),
            Explanation.of(farm.supplement().pricePerTonne())),
        cost.drawn());
  }

  private Explanation winterShortfall() {
    return Explanation.of(
        Quantity.WINTER_SHORTFALL,
        List.of(),
        amount(values(OfFarm.WINTER_SHORTFALL_MJ)),
        "MJ",
        Joined.EXCESS,
        bought(Quantity.BOUGHT_NOW, OfMonth.BOUGHT_MJ, Amount.atLikely(run.winterGrowthNow())),
        bought(Quantity.BOUGHT_WITH_CURRENT, OfMonth.BOUGHT_WITH_CURRENT_MJ, Amount.fixed(1)));
  }

  private Explanation bought(Quantity what, OfMonth measure, Amount winterGrowth) {
    Values bought =
        farm.feedYear().winterMonths().stream()
            .mapToInt(Month::ordinal)
            .mapToObj(month -> values(measures.ofMonth(month, measure)))
            .reduce(Values::plus)
            .orElseThrow()
            .times(farm.areaHa());
    return Explanation.of(
        what,
        List.of(),
        amount(bought),
        "MJ",
        Joined.MODEL,
        Explanation.of(Quantity.WINTER_GROWTH, List.of(), winterGrowth, "", Joined.MODEL));
  }

  private Explanation energyPerTonne() {
    return Explanation.of(
        Quantity.ENERGY_PER_TONNE,
        List.of(farm.supplement().name()),
        Amount.atLikely(SupplementCost.of(farm.supplement()).energyMjPerTonne()),
        "MJ/t",
        Joined.MODEL,
        Explanation.of(farm.supplement().dryMatterFraction()),
        Explanation.of(farm.supplement().energyMjPerKgDm()),
        Explanation.of(farm.supplement().wasteFraction()));
  }

  /** Winter growth lost on the whole farm, kg DM a year. */
  public Explanation winterGrowthLost() {
    return sum(
        Quantity.WINTER_GROWTH_LOST,
        values(OfFarm.WINTER_LOSS_KG_DM),
        "kg DM",
        each(farm.paddocks().size(), paddocks::growthLostInAll));
  }

  private static Explanation[] each(int count, IntFunction<Explanation> of) {
    return IntStream.range(0, count).mapToObj(of).toArray(Explanation[]::new);
  }

  private Explanation sum(Quantity what, Values values, String unit, Explanation... parts) {
    return moved(
        Explanation.of(what, List.of(), amount(values), unit, Joined.SUM, parts), values.drawn());
  }

  /** Lambs not marked in a year because of oestrogen. */
  public Explanation lambs() {
    return sum(
        Quantity.LAMBS_LOST,
        values(OfFarm.LAMBS_LOST),
        "lambs",
        each(farm.mobs().size(), this::lambsOf));
  }

  private Explanation lambsOf(int g) {
    Mob mob = farm.mobs().get(g);
    double each = run.lambsPerPregnantEwe(g);
    return Explanation.of(
        Quantity.LAMBS_LOST_OF_MOB,
        List.of(mob.name()),
        amount(values(g, OfMob.LAMBS_LOST)),
        "lambs",
        Joined.PRODUCT,
        fewerInLamb(g),
        Explanation.of(
            Quantity.LAMBS_PER_EWE_IN_LAMB,
            List.of(),
            Amount.fixed(each),
            "lambs",
            Joined.QUOTIENT,
            Explanation.of(mob.markingPercent()),
            Explanation.of(mob.pregnantPercent())));
  }

  private Values shareLost(int g) {
    return values(g, OfMob.UNAFFECTED_PERCENT).minus(values(g, OfMob.PREGNANT_PERCENT)).times(0.01);
  }

  private Explanation fewerInLamb(int g) {
    Mob mob = farm.mobs().get(g);
    return Explanation.of(
        Quantity.EWES_FEWER_IN_LAMB,
        List.of(mob.name()),
        amount(shareLost(g).times(mob.ewes())),
        "ewes",
        Joined.PRODUCT,
        Explanation.of(
            Quantity.EWES_JOINED, List.of(), Amount.fixed(mob.ewes()), "ewes", Joined.MODEL),
        Explanation.of(
            Quantity.SHARE_LOST,
            List.of(),
            amount(shareLost(g)),
            "",
            Joined.DIFFERENCE,
            Explanation.of(
                Quantity.IN_LAMB_WITHOUT_OESTROGEN,
                List.of(),
                amount(values(g, OfMob.UNAFFECTED_PERCENT).times(0.01)),
                "",
                Joined.MODEL),
            Explanation.of(
                Quantity.IN_LAMB_NOW,
                List.of(),
                amount(values(g, OfMob.PREGNANT_PERCENT).times(0.01)),
                "",
                Joined.MODEL,
                Explanation.of(
                    Quantity.DOSE_OVER_JOINING,
                    List.of(mob.name()),
                    amount(values(g, OfMob.DOSE_AT_JOINING)),
                    "% of intake",
                    Joined.MODEL))));
  }

  /** Money lost in a year because of oestrogen. */
  public Explanation lambCost() {
    return sum(
        Quantity.LAMB_COST,
        values(OfFarm.LAMB_COST),
        MONEY,
        each(farm.mobs().size(), this::lambCostOf));
  }

  private Explanation lambCostOf(int g) {
    Values lambs = values(g, OfMob.LAMBS_LOST);
    Values ewes = shareLost(g).times(farm.mobs().get(g).ewes());
    return Explanation.of(
        Quantity.LAMB_COST_OF_MOB,
        List.of(farm.mobs().get(g).name()),
        amount(values(g, OfMob.LAMB_COST)),
        MONEY,
        Joined.SUM,
        priced(Quantity.LAMB_VALUE, lambsOf(g), lambs, OutcomeFunction.LAMB_VALUE),
        priced(Quantity.DRY_EWE_COST, fewerInLamb(g), ewes, OutcomeFunction.DRY_EWE_COST));
  }

  private Explanation priced(Quantity what, Explanation count, Values number, String price) {
    UncertainNumbers inputs = decision.model().inputs();
    int place = inputs.place(price);
    Assumption each = inputs.get(place);
    return Explanation.of(
        what,
        List.of(),
        amount(number.times(new Values(simulation.drawn(place), each.likely()))),
        MONEY,
        Joined.PRODUCT,
        count,
        Explanation.of(each));
  }

  /** All costs of the plan. */
  public Explanation planCost() {
    return sum(
        Quantity.PLAN_COST,
        values(OfFarm.PLAN_COST),
        MONEY,
        Stream.concat(
                IntStream.range(0, farm.paddocks().size())
                    .filter(decision::isActedOn)
                    .mapToObj(paddocks::costAlone),
                Stream.of(FarmRule.values())
                    .filter(rule -> decision.plan().choice(rule) > 0)
                    .map(this::costOf))
            .toArray(Explanation[]::new));
  }

  private Explanation costOf(FarmRule rule) {
    Quantity what =
        switch (rule) {
          case IN_ORDER -> Quantity.IN_ORDER_COST;
          case SELL_DRY -> Quantity.SELL_DRY_COST;
        };
    return Explanation.of(
        what, List.of(), amount(values(FarmMeasures.costOf(rule))), MONEY, Joined.MODEL);
  }

  /** Net present value of the plan. */
  public Explanation planGain() {
    double[] gain = simulation.npv(Alternatives.PLAN);
    Explanation[] years = each(decision.outcome().years(), this::year);
    return moved(
        Explanation.of(Quantity.PLAN_GAIN, List.of(), amount(gain), MONEY, Joined.SUM, years),
        gain);
  }

  private Explanation year(int t) {
    double[] net = new double[simulation.draws().count()];
    Arrays.setAll(net, d -> simulation.cashFlow(d)[t]);
    double factor = run.discount(t);
    List<String> name = List.of(Integer.toString(t + 1));
    return Explanation.of(
        Quantity.YEAR,
        name,
        amount(Arrays.stream(net).map(each -> each * factor).toArray()),
        MONEY,
        Joined.PRODUCT,
        Explanation.of(Quantity.NET_OF_YEAR, name, amount(net), MONEY, Joined.SUM, lines(t)),
        Explanation.of(
            Quantity.DISCOUNT_FACTOR,
            List.of(),
            Amount.fixed(factor),
            "",
            Joined.MODEL,
            Explanation.of(farm.finance().discountRate())));
  }

  private Explanation[] lines(int t) {
    Outcome outcome = decision.outcome();
    Stream<Explanation> lines =
        Stream.of(
            line(Quantity.SUPPLEMENT_SAVED, outcome.supplementSaved(t)),
            line(Quantity.LAMBS_SAVED, outcome.lambsSaved(t)),
            line(Quantity.CROP_MARGINS, outcome.cropMargin(t)),
            line(Quantity.SPARE_FEED, outcome.spareFeed(t)),
            line(Quantity.WORK_COSTS, -outcome.actionCost(t)),
            line(Quantity.OWN_LABOUR, -outcome.labourCost(t)));
    boolean last = t == outcome.years() - 1;
    return Stream.concat(lines, last ? Stream.of(endValue()) : Stream.empty())
        .filter(line -> line.amount().mean().orElseThrow() != 0)
        .toArray(Explanation[]::new);
  }

  private static Explanation line(Quantity what, double mean) {
    return Explanation.of(what, List.of(), Amount.mean(mean), MONEY, Joined.MODEL);
  }

  private Explanation endValue() {
    Outcome outcome = decision.outcome();
    double sown = 0;
    for (int i = 0; i < farm.paddocks().size(); i++) {
      boolean sows = decision.model().actions().get(decision.plan().action(i)).sows();
      sown += sows ? farm.paddocks().get(i).areaHa() : 0;
    }
    Assumption perHa = farm.finance().endValuePerHa();
    return Explanation.of(
        Quantity.END_VALUE,
        List.of(),
        Amount.mean(outcome.endValue(outcome.years() - 1)).withLikely(sown * perHa.likely()),
        MONEY,
        Joined.PRODUCT,
        Explanation.of(Quantity.HECTARES_SOWN, List.of(), Amount.fixed(sown), "ha", Joined.MODEL),
        Explanation.of(perHa));
  }
}
