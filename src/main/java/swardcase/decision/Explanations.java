package swardcase.decision;

import java.time.Month;
import java.util.Arrays;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.IntFunction;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import swardcase.chance.Drawn;
import swardcase.decision.FarmMeasures.OfFarm;
import swardcase.decision.FarmMeasures.OfMob;
import swardcase.decision.FarmMeasures.OfMonth;
import swardcase.decision.FarmMeasures.OfPaddock;
import swardcase.draws.Alternatives;
import swardcase.draws.Simulation;
import swardcase.evidence.Assumption;
import swardcase.farm.Farm;
import swardcase.farm.Mob;
import swardcase.farm.Supplement;
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
    measures = new FarmMeasures(decision.model(), decision.plan(), decision.otherDates());
    atLikely = new double[measures.size()];
    measures.read(run, decision.model().inputs().likely(), atLikely);
    paddocks = new PaddockExplanations(decision, this);
  }

  /** The explanations of a decision. */
  public static Explanations of(Decision decision) {
    return new Explanations(decision);
  }

  /** Those of the numbers of paddocks. */
  PaddockExplanations paddocks() {
    return paddocks;
  }

  /** A number with the inputs that move it, if it is drawn. */
  Explanation moved(Explanation number) {
    return number.amount().drawn().isEmpty()
        ? number
        : number.movedBy(new Unknowns(simulation).moving(number.amount().draws()));
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

  private Amount amount(OfFarm measure) {
    return amount(values(measure));
  }

  private Amount amount(int mob, OfMob measure) {
    return amount(values(mob, measure));
  }

  /** Over the draws, and at the likely inputs. */
  Amount amount(Values values) {
    return amount(values.drawn()).withLikely(values.likely());
  }

  /** Over the draws alone. */
  Amount amount(double[] draws) {
    Drawn drawn = decision.spread(draws).drawn();
    OptionalDouble mean = OptionalDouble.of(drawn.mean());
    return new Amount(Optional.empty(), Optional.of(drawn), mean, OptionalDouble.empty(), draws);
  }

  /** Supplement bought in winter because of outdated clover. */
  Explanation winterFeed() {
    return Explanation.of(
        Quantity.WINTER_FEED,
        amount(OfFarm.WINTER_SUPPLEMENT_TONNES),
        winterShortfall(),
        energyPerTonne());
  }

  Explanation winterFeedCost() {
    return Explanation.of(
        Quantity.WINTER_FEED_COST,
        amount(OfFarm.WINTER_SUPPLEMENT_COST),
        winterFeed(),
        Explanation.of(farm.supplement().pricePerTonne()));
  }

  private Explanation winterShortfall() {
    return Explanation.of(
        Quantity.WINTER_SHORTFALL,
        amount(OfFarm.WINTER_SHORTFALL_MJ),
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
        what, amount(bought), Explanation.of(Quantity.WINTER_GROWTH, winterGrowth));
  }

  private Explanation energyPerTonne() {
    Supplement fed = farm.supplement();
    double energy =
        SupplementCost.energyMjPerTonne(
            fed.energyMjPerKgDm().likely(),
            fed.dryMatterFraction().likely(),
            fed.wasteFraction().likely());
    return Explanation.of(
        Quantity.ENERGY_PER_TONNE,
        fed.name(),
        Amount.atLikely(energy),
        Explanation.of(fed.dryMatterFraction()),
        Explanation.of(fed.energyMjPerKgDm()),
        Explanation.of(fed.wasteFraction()));
  }

  Explanation winterGrowthLost() {
    return Explanation.of(
        Quantity.WINTER_GROWTH_LOST,
        amount(OfFarm.WINTER_LOSS_KG_DM),
        each(farm.paddocks().size(), paddocks::growthLostInAll));
  }

  private static Explanation[] each(int count, IntFunction<Explanation> of) {
    return IntStream.range(0, count).mapToObj(of).toArray(Explanation[]::new);
  }

  /** Lambs not marked in a year because of oestrogen. */
  Explanation lambs() {
    return Explanation.of(
        Quantity.LAMBS_LOST, amount(OfFarm.LAMBS_LOST), each(farm.mobs().size(), this::lambsOf));
  }

  private Explanation lambsOf(int g) {
    Mob mob = farm.mobs().get(g);
    return Explanation.of(
        Quantity.LAMBS_LOST_OF_MOB,
        mob.name(),
        amount(g, OfMob.LAMBS_LOST),
        fewerInLamb(g),
        Explanation.of(
            Quantity.LAMBS_PER_EWE_IN_LAMB,
            Amount.fixed(run.lambsPerPregnantEwe(g)),
            Explanation.of(mob.markingPercent()),
            Explanation.of(mob.pregnantPercent())));
  }

  private Values shareLost(int g) {
    return values(g, OfMob.UNAFFECTED_PERCENT).minus(values(g, OfMob.PREGNANT_PERCENT)).times(0.01);
  }

  private Explanation fewerInLamb(int g) {
    Mob mob = farm.mobs().get(g);
    Amount without = amount(values(g, OfMob.UNAFFECTED_PERCENT).times(0.01));
    Amount now = amount(values(g, OfMob.PREGNANT_PERCENT).times(0.01));
    Amount dose = amount(g, OfMob.DOSE_AT_JOINING);
    return Explanation.of(
        Quantity.EWES_FEWER_IN_LAMB,
        mob.name(),
        amount(shareLost(g).times(mob.ewes())),
        Explanation.of(Quantity.EWES_JOINED, Amount.fixed(mob.ewes())),
        Explanation.of(
            Quantity.SHARE_LOST,
            amount(shareLost(g)),
            Explanation.of(Quantity.IN_LAMB_WITHOUT_OESTROGEN, without),
            Explanation.of(
                Quantity.IN_LAMB_NOW,
                now,
                Explanation.of(Quantity.DOSE_OVER_JOINING, mob.name(), dose))));
  }

  /** Money lost in a year because of oestrogen. */
  Explanation lambCost() {
    return Explanation.of(
        Quantity.LAMB_COST, amount(OfFarm.LAMB_COST), each(farm.mobs().size(), this::lambCostOf));
  }

  private Explanation lambCostOf(int g) {
    Values lambs = values(g, OfMob.LAMBS_LOST);
    Values ewes = shareLost(g).times(farm.mobs().get(g).ewes());
    return Explanation.of(
        Quantity.LAMB_COST_OF_MOB,
        farm.mobs().get(g).name(),
        amount(g, OfMob.LAMB_COST),
        priced(Quantity.LAMB_VALUE, lambsOf(g), lambs, OutcomeFunction.LAMB_VALUE),
        priced(Quantity.DRY_EWE_COST, fewerInLamb(g), ewes, OutcomeFunction.DRY_EWE_COST));
  }

  private Explanation priced(Quantity what, Explanation count, Values number, String price) {
    int place = decision.model().inputs().place(price);
    Assumption each = decision.model().inputs().get(place);
    Values prices = new Values(simulation.drawn(place), each.likely());
    return Explanation.of(what, amount(number.times(prices)), count, Explanation.of(each));
  }

  Explanation planCost() {
    return Explanation.of(
        Quantity.PLAN_COST,
        amount(OfFarm.PLAN_COST),
        Stream.concat(
                IntStream.range(0, farm.paddocks().size())
                    .filter(decision::isActedOn)
                    .mapToObj(paddocks::cost),
                Stream.of(FarmRule.values())
                    .filter(rule -> decision.plan().choice(rule) > 0)
                    .map(this::costOf))
            .toArray(Explanation[]::new));
  }

  private Explanation costOf(FarmRule rule) {
    return Explanation.of(
        Quantity.valueOf(rule.name() + "_COST"), amount(FarmMeasures.costOf(rule)));
  }

  /** Net present value of the plan. */
  Explanation planGain() {
    return Explanation.of(
        Quantity.PLAN_GAIN,
        amount(simulation.npv(Alternatives.PLAN)),
        each(decision.outcome().years(), this::year));
  }

  private Explanation year(int t) {
    double[] net = new double[simulation.draws().count()];
    Arrays.setAll(net, d -> simulation.cashFlow(d)[t]);
    double factor = run.discount(t);
    String name = Integer.toString(t + 1);
    return Explanation.of(
        Quantity.YEAR,
        name,
        amount(Arrays.stream(net).map(each -> each * factor).toArray()),
        Explanation.of(Quantity.NET_OF_YEAR, name, amount(net), lines(t)),
        Explanation.of(
            Quantity.DISCOUNT_FACTOR,
            Amount.fixed(factor),
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
    return Explanation.of(what, Amount.mean(mean));
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
        Amount.mean(outcome.endValue(outcome.years() - 1)).withLikely(sown * perHa.likely()),
        Explanation.of(Quantity.HECTARES_SOWN, Amount.fixed(sown)),
        Explanation.of(perHa));
  }
}
