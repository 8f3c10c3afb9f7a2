package swardcase.outcome;

import java.util.Arrays;
import java.util.List;
import swardcase.evidence.UncertainNumbers;
import swardcase.farm.Farm;
import swardcase.farm.Mob;
import swardcase.feed.FeedResult;
import swardcase.feed.FeedSurface;
import swardcase.feed.GrowthYear;
import swardcase.grazing.InOrder;
import swardcase.grazing.JoiningWindow;
import swardcase.reproduction.DryEweSale;
import swardcase.reproduction.FlockEffect;
import swardcase.sward.Composition;
import swardcase.sward.StandingClover;
import swardcase.tables.Tables;

/**
 * The outcome function with its workspace: {@link #set} takes one array of assumptions, {@link
 * #evaluate} then answers for as many plans as are asked. Nothing is allocated after construction,
 * so that thousands of arrays can be run through one workspace; not for two threads at once.
 *
 * <pre>
 * outcome(year) = supplement saved + lambs saved + crop margin + gain from spare feed - action costs
 * </pre>
 *
 * each against keeping everything, from the same assumptions.
 */
public final class OutcomeFunction {

  /** Key of the real discount rate, share per year. */
  public static final String DISCOUNT_RATE = "finance.discount-rate";

  /** Key of the price of the supplement, money per t as fed. */
  public static final String SUPPLEMENT_PRICE = "price.supplement";

  /** Key of the net value of a lamb marked, money. */
  public static final String LAMB_VALUE = "price.lamb";

  /** Key of what a dry ewe costs beside her lambs, money. */
  public static final String DRY_EWE_COST = "price.dry-ewe";

  private static final String END_VALUE = "finance.end-value";
  private static final String DRY_FACTOR = "dose.dry-factor";

  /** Feed of this strength relative to green is dry (inferred). */
  private static final double DRY = 0.15;

  private final FarmModel model;
  private final Farm farm;
  private final StandingClover stands;
  private final ActionPaths paths;
  private final Sowings sowings;
  private final FeedSurface feed;
  private final FlockEffect[] flock;
  private final GrowthYear year;
  private final EatenYear eatenYear;
  private final JoiningWindow window;
  private final InOrder inOrder;
  private final ChoiceSums choices;
  private final YearMoney money;
  private final PlanChanges changes;
  private final int years;
  private final int keep;
  private final double areaHa;
  private final int[] seasonOfYear;
  private final double[] discount;
  private final int discountRate;
  private final int endValue;
  private final int dryFactor;
  private double[] x;

  /** Every uncertain number of a farm, in the order in which the outcome function reads them. */
  static UncertainNumbers numbers(Farm farm, Tables tables, List<Composition> compositions) {
    UncertainNumbers.Builder numbers = new UncertainNumbers.Builder();
    StandingClover.enter(numbers, farm, tables, compositions);
    StandYears.enter(numbers, farm, tables, compositions);
    Sowings.enter(numbers, farm, tables);
    FeedSurface.enter(numbers, farm, tables);
    farm.mobs().forEach(mob -> FlockEffect.enter(numbers, mob, tables));
    DryEweSale.enter(numbers, farm, tables);
    numbers.add(DISCOUNT_RATE, farm.finance().discountRate().chosen());
    numbers.add(SUPPLEMENT_PRICE, farm.supplement().pricePerTonne());
    numbers.add(YearMoney.SUPPLEMENT_ENERGY, farm.supplement().energyMjPerKgDm());
    numbers.add(YearMoney.SUPPLEMENT_DRY_MATTER, farm.supplement().dryMatterFraction());
    numbers.add(YearMoney.SUPPLEMENT_WASTE, farm.supplement().wasteFraction());
    numbers.add(LAMB_VALUE, farm.prices().netValuePerLamb());
    numbers.add(DRY_EWE_COST, farm.prices().costPerDryEwe());
    numbers.add(YearMoney.EWE_MARGIN, farm.prices().grossMarginPerEwe());
    numbers.add(YearMoney.EWE_PRICE, farm.prices().replacementEwe());
    numbers.add(YearMoney.SPARE_FEED_VALUE, farm.prices().spareFeedPerTonneDm());
    numbers.add(END_VALUE, farm.finance().endValuePerHa());
    numbers.add(DRY_FACTOR, tables.parameter(DRY_FACTOR));
    numbers.add(YearMoney.REACHED, tables.parameter(YearMoney.REACHED));
    numbers.add(ChoiceSums.COST_OF_RULE, farm.management().useRule());
    numbers.add(ChoiceSums.COST_OF_ORDER, farm.management().grazingInOrder());
    numbers.add(YearMoney.NITROGEN_FIXED, tables.parameter(YearMoney.NITROGEN_FIXED));
    numbers.add(YearMoney.NITROGEN_PRICE, farm.prices().nitrogenPerKg());
    return numbers.build();
  }

  OutcomeFunction(FarmModel model) {
    this.model = model;
    UncertainNumbers numbers = model.inputs();
    farm = model.farm();
    year = model.year();
    years = farm.finance().horizonYears();
    keep = model.keep();
    areaHa = farm.areaHa();
    stands = new StandingClover(farm, model.tables(), numbers, model.compositions());
    paths = new ActionPaths(farm, numbers, stands, year);
    sowings = new Sowings(farm, numbers, paths);
    feed =
        new FeedSurface(
            farm,
            model.tables(),
            year,
            numbers,
            model.demand(),
            model.budget(),
            model.runMoreEwes());
    List<Mob> mobs = farm.mobs();
    flock = new FlockEffect[mobs.size()];
    DryEweSale[] dryEweSale = new DryEweSale[flock.length];
    for (int g = 0; g < flock.length; g++) {
      flock[g] = new FlockEffect(farm, mobs.get(g), numbers);
      dryEweSale[g] = new DryEweSale(farm, mobs.get(g), numbers);
    }
    eatenYear = new EatenYear(farm);
    window = new JoiningWindow(farm, year, feed, flock);
    inOrder = new InOrder(mobs);
    seasonOfYear = new int[years];
    discount = new double[years];
    choices = new ChoiceSums(model, stands, paths, sowings, window, inOrder, dryEweSale);
    money = new YearMoney(model, flock, dryEweSale, feed, window, inOrder, choices, seasonOfYear);
    changes =
        new PlanChanges(model, choices, money, flock, dryEweSale, discount, this::endValueNow);
    discountRate = numbers.place(DISCOUNT_RATE);
    endValue = numbers.place(END_VALUE);
    dryFactor = numbers.place(DRY_FACTOR);
    set(numbers.likely());
  }

  /**
   * Takes one array of assumptions, in the order of {@link FarmModel#inputs()}. Every year is the
   * mean over season types.
   */
  public void set(double[] assumptions) {
    stands.set(assumptions);
    Arrays.fill(seasonOfYear, feed.meanOfSeasons());
    sowings.setMean();
    setBesideStands(assumptions, false);
  }

  /**
   * Takes a draw. A season bears on the feed of its year, supplement and spare feed, and on whether
   * a sowing takes. What ewes eat before joining, and how many more ewes would be run, stay means
   * over season types.
   */
  public void set(Draw draw) {
    stands.set(draw.shares);
    System.arraycopy(draw.seasons, 0, seasonOfYear, 0, years);
    setBesideStands(draw.numbers, true);
    sowings.set(draw);
  }

  private void setBesideStands(double[] assumptions, boolean drawn) {
    paths.set(assumptions, drawn);
    setFarm(assumptions);
  }

  private void setFarm(double[] assumptions) {
    x = assumptions;
    changes.forget();
    discount[0] = 1;
    for (int t = 1; t < years; t++) {
      discount[t] = discount[t - 1] / (1 + x[discountRate]);
    }
    double[] kept = choices.set(x);
    double taken = choices.taken(kept, 0);
    money.set(x, kept);
    feed.set(x, choices.winterNow(), money.legumeNow(), money.statedInLamb());
    eatenYear.set(feed, x[dryFactor]);
    double strongest = paths.strongest();
    inOrder.set(strongest);
    window.set(
        flock, eatenYear.onOffer, eatenYear.growth, eatenYear.eaten, eatenYear.eatenByEwes, taken);
    money.setEwes(choices.setKept(), eatenYear.greenShare, strongest);
  }

  /**
   * Fills {@code out} with what the plan brings against keeping everything. The plan becomes the
   * base of {@link #npvOfBaseWith} until the next set.
   */
  public void evaluate(Plan of, Outcome out) {
    setBase(of);
    out.copy(changes.base(), years);
    out.clearShares();
    for (int i = 0; i < of.paddocks(); i++) {
      addShares(of, i, choices.areaHa(i) / areaHa, out);
    }
  }

  /** Makes a plan the base of {@link #npvOfBaseWith}, and returns its net present value. */
  public double setBase(Plan of) {
    return changes.setBase(of);
  }

  /**
   * Net present value of the base with another choice on one paddock, in money. A choice that
   * changes nothing gives the base to the last bit.
   */
  public double npvOfBaseWith(int paddock, int action, int start) {
    return changes.npvWith(paddock, action, start);
  }

  /** The same, and fills {@code out} with what comes of it, shares of clover with nothing. */
  public double evaluateBaseWith(int paddock, int action, int start, Outcome out) {
    return changes.evaluateWith(paddock, action, start, out);
  }

  /** The same with other choices on two paddocks, which must not be the same one. */
  public double npvOfBaseWith(
      int one, int actionOne, int startOne, int two, int actionTwo, int startTwo) {
    return changes.npvWith(one, actionOne, startOne, two, actionTwo, startTwo);
  }

  /** The sums that a paddock's choice brings in every year: {@code [year * sums + sum]}. */
  public void addYears(int paddock, int action, int start, double[] into) {
    choices.fill(into, paddock, action, start);
  }

  ChoiceSums choices() {
    return choices;
  }

  PlanChanges changes() {
    return changes;
  }

  ActionPaths paths() {
    return paths;
  }

  int keep() {
    return keep;
  }

  /** Nitrogen that a paddock's clover fixes as it is kept, kg per ha and year. */
  public double nitrogenKgPerHa(int paddock) {
    return nitrogenKgPerHa(paddock, paths.at(paddock, keep, 0));
  }

  /** The same in a year of a plan. */
  public double nitrogenKgPerHa(Plan plan, int paddock, int t) {
    return nitrogenKgPerHa(
        paddock, choices.pathYear(t, paddock, plan.action(paddock), plan.start(paddock)));
  }

  private double nitrogenKgPerHa(int paddock, int at) {
    return money.nitrogenKg(choices.taken(paddock, at) * paths.cloverShare(at))
        / choices.areaHa(paddock);
  }

  /** Money if all ewes of a mob were in lamb that otherwise none would be. */
  double valueOfShare(int g) {
    return money.valueOfShare(g);
  }

  /** Lambs marked for each ewe in lamb, as the mob's own figures have it. */
  public static double lambsPerPregnantEwe(Mob mob) {
    return mob.markingPercent().likely() / mob.pregnantPercent().likely();
  }

  /** Value now of what a paddock is worth beyond the horizon for having been sown. */
  public double endValueNow(int paddock, int action) {
    return !choices.isRule(paddock) && model.actions().get(action).sows()
        ? choices.areaHa(paddock) * x[endValue] * discount[years - 1]
        : 0;
  }

  /** Value now of one unit of money in a year. */
  public double discount(int year) {
    return discount[year];
  }

  double weightSum() {
    return choices.weightSum();
  }

  FeedSurface feed() {
    return feed;
  }

  /** Whether the figures of all mobs could have come about with the numbers that were set. */
  public boolean isPossible() {
    for (FlockEffect effect : flock) {
      if (!effect.isPossible()) {
        return false;
      }
    }
    return true;
  }

  /** What a mob's ewes go through, in this run. */
  public FlockEffect flock(int mob) {
    return flock[mob];
  }

  JoiningWindow window() {
    return window;
  }

  /** How many mobs there are. */
  public int mobs() {
    return flock.length;
  }

  /** Feed that a mob must find in its weeks before joining, in the unit of its sums. */
  public double feedNeeded(int mob) {
    return money.enoughHeld(mob);
  }

  /** The same in winter. */
  public double feedNeededInWinter(int mob) {
    return money.enoughGreen(mob);
  }

  // What the farm is like now, in this run.

  /** Whether the ground lets an action be done on a paddock. */
  boolean isPossible(int paddock, int action) {
    return paths.allowed(paddock, model.base(action));
  }

  /** Whether an action can be done on a paddock at all. */
  public boolean allowed(int paddock, int action) {
    return isPossible(paddock, action) && model.rules().isOpen(paddock, action);
  }

  /** Whether year {@code k} of an action takes the paddock out of grazing. */
  public boolean isShut(int action, int k) {
    return paths.isShut(model.base(action), k);
  }

  /**
   * Share of each species in the clover by year after a sowing starts; the sown one stands last.
   */
  public double[] plantShares(int paddock, int action) {
    return paths.plantShares(paddock, model.base(action));
  }

  /** Winter growth of a paddock as it is, relative to current cultivars. */
  double winterFactorNow(int paddock) {
    return paths.winter(paths.at(paddock, keep, 0));
  }

  /** What the density of the clover makes of winter growth so many years after an action starts. */
  double densityFactor(int paddock, int action, int yearsOn) {
    return paths.density(paths.at(paddock, action, yearsOn));
  }

  /** Names and shares of the clover in a paddock. */
  public Composition composition(int paddock) {
    return stands.composition(paddock);
  }

  /** Place of a paddock's share of old cultivars in the inputs. */
  public int oldShareInput(int paddock) {
    return stands.oldShareInput(paddock);
  }

  /** Place of a paddock's clover share in the inputs. */
  public int cloverShareInput(int paddock) {
    return stands.cloverShareInput(paddock);
  }

  /** Place of the chance that an action's sowing takes in the inputs; -1 if it does not sow. */
  public int establishmentInput(int action) {
    return paths.establishmentInput(model.base(action));
  }

  /** Clover share of what the farm's stock eat. */
  public double legumeShareNow() {
    return money.legumeNow();
  }

  /** Takes the share of each mob's ewes in lamb by which the feed of the farm is reckoned. */
  public void readInLamb(double[] into) {
    money.readInLamb(into);
  }

  /** Winter growth of the farm relative to current cultivars everywhere. */
  public double winterGrowthNow() {
    return choices.winterNow();
  }

  /** What of {@link #winterLossKgDmPerHa} is lost because the clover is thin. */
  public double thinLossKgDmPerHa(int paddock) {
    int at = paths.at(paddock, keep, 0);
    return (paths.cultivars(at) - paths.winter(at)) * profileKgDmPerHa(paddock);
  }

  private double profileKgDmPerHa(int paddock) {
    return stands.growthIndex(x, paddock) * year.winterGrowthKgDmPerHa();
  }

  /**
   * Winter growth that a paddock loses to its cultivars and because its clover is thin, kg dry
   * matter per ha and year.
   */
  public double winterLossKgDmPerHa(int paddock) {
    return (1 - paths.winter(paths.at(paddock, keep, 0))) * profileKgDmPerHa(paddock);
  }

  /** Energy bought, MJ for the whole farm and year, at a winter growth. */
  public double boughtMj(double winterGrowth) {
    return feed.bought(winterGrowth, 1) * areaHa;
  }

  /** Money for one MJ of supplement, dry matter, energy and waste counted. */
  public double pricePerMj() {
    return money.pricePerMj();
  }

  /** Supplement that holds one MJ, t as fed. */
  public double tonnesPerMj() {
    return money.tonnesPerMj();
  }

  /** Rise in ewe numbers that current cultivars everywhere would carry, ewes. */
  public double extraEwesWithCurrent() {
    return feed.riseAt(x, choices.winterNow(), 1) * farm.ewesJoined();
  }

  /** Yearly gain of so many more ewes, supplement and the capital in them paid. */
  public double gainOfMoreEwes(double ewes) {
    return money.gainOfMoreEwes(ewes);
  }

  /** Formononetin, per cent of leaf dry matter, mean over the clover of a paddock. */
  public double leafFormononetin(int paddock) {
    double sum = 0;
    for (int c = 0; c < stands.species(paddock); c++) {
      sum += stands.shares(paddock)[c] * stands.formononetin(x, paddock, c);
    }
    return sum;
  }

  /** Formononetin, per cent of intake, of a ewe that eats green feed of this paddock only. */
  public double greenDose(int paddock) {
    return paths.strength(paths.at(paddock, keep, 0));
  }

  /** Dose of the ewes in a half-month as paddocks are grazed now, mean of the mobs, % of intake. */
  public double dose(int halfMonth) {
    double sum = 0;
    for (FlockEffect mob : flock) {
      sum += mob.mob().ewes() * mob.doseNow(halfMonth) / farm.ewesJoined();
    }
    return sum;
  }

  /** Strength of intake in a half-month: green feed counts 1, dry feed by its own factor. */
  public double greenShare(int halfMonth) {
    return eatenYear.greenShare[halfMonth];
  }

  /** Whether feed is green at all then; dry feed hurts nobody. */
  public boolean isGreen(int halfMonth) {
    return greenShare(halfMonth) > DRY;
  }

  /** Strength of intake in a half-month of a season type, which stands in the farm's order. */
  public double greenShare(int season, int halfMonth) {
    return eatenYear.greenShare(season, halfMonth);
  }

  /** Whether feed is green at all then. */
  public boolean isGreen(int season, int halfMonth) {
    return greenShare(season, halfMonth) > DRY;
  }

  /** Strength of intake in the coming year, whose season type a draw tells. */
  public double greenShareOfComingYear(int halfMonth) {
    return eatenYear.greenShare(seasonOfYear[0], halfMonth);
  }

  /** Formononetin of a paddock's green feed so many years after an action starts, % of intake. */
  public double greenDose(int paddock, int action, int yearsOn) {
    return paths.strength(paths.at(paddock, model.base(action), yearsOn));
  }

  /** Feed that a paddock gives in a year relative to others; its share of the sum is its part. */
  public double feedWeight(int paddock) {
    return choices.taken(paddock, paths.at(paddock, keep, 0));
  }

  /** Lambs that a ewe in lamb brings to marking. */
  public double lambsPerPregnantEwe(int mob) {
    return money.lambsPerPregnantEwe(mob);
  }

  /** Money for one more ewe in lamb: her lambs, and what a dry ewe costs. */
  public double valuePerPregnantEwe(int mob) {
    return money.valuePerPregnantEwe(mob);
  }

  /** Lambs not marked in a year because of oestrogen, one mob. */
  public double lambsLost(int mob) {
    return shareLost(mob) * flock[mob].mob().ewes() * lambsPerPregnantEwe(mob);
  }

  /** Money lost in a year because of oestrogen, one mob. */
  public double lambCost(int mob) {
    return shareLost(mob) * valueOfShare(mob);
  }

  /**
   * Worth of a mob's lambs marked in a year, less what its dry ewes cost, as paddocks are grazed
   * now.
   */
  public double yearOfFlock(int mob) {
    return flock[mob].shareNow() * valueOfShare(mob) - money.costIfAllDry(mob);
  }

  /** Ewes not in lamb because of oestrogen as paddocks are grazed now, share of those joined. */
  public double shareLost(int mob) {
    return flock[mob].unaffectedShare() - flock[mob].shareNow();
  }

  /** Costs of an action from start to end, own labour among them, undiscounted, per ha. */
  public double costPerHa(int paddock, int action, int start) {
    double cost = choices.cost(paddock, action, start);
    return choices.isRule(paddock) ? cost / areaHa : cost;
  }

  /** Share of old cultivars in a paddock's clover in a year of a plan. */
  public double oldShare(Plan plan, int paddock, int t) {
    return paths.oldShare(choices.pathYear(t, paddock, plan.action(paddock), plan.start(paddock)));
  }

  /** Clover as a share of a paddock's green feed in a year of a plan. */
  public double cloverShare(Plan plan, int paddock, int t) {
    return paths.cloverShare(
        choices.pathYear(t, paddock, plan.action(paddock), plan.start(paddock)));
  }

  /** Adds so many times a paddock's clover share, and that of old cultivars, in each year. */
  public void addShares(Plan plan, int paddock, double times, Outcome to) {
    for (int t = 0; t < years; t++) {
      to.oldShare[t] += times * oldShare(plan, paddock, t);
      to.cloverShare[t] += times * cloverShare(plan, paddock, t);
    }
  }

  /** One season of the feed budget as the farm stands, which the next set overwrites. */
  public FeedResult feedNow(int season) {
    return feed.now(season);
  }

  /** One season of the feed budget at a winter growth. */
  public void feedYear(int season, double winterGrowth, FeedResult into) {
    feed.run(season, winterGrowth, 1, into);
  }
}
