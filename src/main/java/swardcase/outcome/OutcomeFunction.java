package swardcase.outcome;

import java.util.Arrays;
import java.util.List;
import java.util.function.IntToDoubleFunction;
import swardcase.evidence.UncertainNumbers;
import swardcase.farm.Farm;
import swardcase.farm.HalfMonths;
import swardcase.farm.Mob;
import swardcase.farm.Paddock;
import swardcase.farm.UseRule;
import swardcase.feed.FeedResult;
import swardcase.feed.FeedSurface;
import swardcase.feed.GrowthYear;
import swardcase.feed.SupplementCost;
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

  private static final String SUPPLEMENT_ENERGY = "supplement.energy";
  private static final String SUPPLEMENT_DRY_MATTER = "supplement.dry-matter";
  private static final String SUPPLEMENT_WASTE = "supplement.waste";
  private static final String EWE_MARGIN = "price.ewe-margin";
  private static final String EWE_PRICE = "price.ewe";
  private static final String SPARE_FEED_VALUE = "price.spare-feed";
  private static final String NITROGEN_PRICE = "price.nitrogen";
  private static final String NITROGEN_FIXED = "clover.nitrogen-fixed";
  private static final String END_VALUE = "finance.end-value";
  private static final String DRY_FACTOR = "dose.dry-factor";
  private static final String REACHED = "grazing.reached";
  private static final String COST_OF_RULE = "management.use-rule";
  private static final String COST_OF_ORDER = "management.grazing-in-order";
  private static final int NONE = -1;

  /** Feed of this strength relative to green is dry (inferred). */
  private static final double DRY = 0.15;

  private static final DryEweSale.Rule[] SALE_RULES = DryEweSale.Rule.values();

  /** Less feed than that of a square millimetre is what rounding leaves of none. */
  private static final double NOTHING_HA = 1e-10;

  private final FarmModel model;
  private final Farm farm;
  private final StandingClover stands;
  private final ActionPaths paths;
  private final Sowings sowings;
  private final FeedSurface feed;
  private final FlockEffect[] flock;
  private final DryEweSale[] dryEweSale;
  private final GrowthYear year;
  private final int years;
  private final int actions;
  private final int keep;
  private final boolean runMoreEwes;
  private final int[] ewes;
  private final double[] lambsPerEwe;
  private final double areaHa;
  private final double[] paddockArea;
  private final double[] paddockWeight;
  private final double[] keptTaken;
  private final boolean[][] grazes;
  private final double[][] partOf;
  private final boolean[] moves;
  private final int[] base;
  private final Off[] off;
  private final int sums;
  private final double[] keptSums;
  private final double[] baseSums;
  private final double[] baseNpv;
  private final OwnYears own;
  private final OwnYears ownOfSecond;
  private final double[] addedThen;
  private final double[] exchanged;
  private final Outcome baseYears;
  private final Outcome scratch;
  private final double[] valueOfShare;
  private final double[] boughtNowMjPerHa;
  private final int[] seasonOfYear;
  private Plan plan;
  private boolean withBins = true;
  private double baseEnd;
  private final JoiningWindow window;
  private final InOrder inOrder;
  private final IntToDoubleFunction needed;
  private final double[] enoughHeld;
  private final double[] enoughGreen;
  private final double[] greenShare = new double[HalfMonths.COUNT];
  private final double[][] greenShareOf;
  private final double[] onOffer = new double[HalfMonths.COUNT];
  private final double[] growth = new double[HalfMonths.COUNT];
  private final double[] eaten = new double[HalfMonths.COUNT];
  private final double[] eatenByEwes = new double[HalfMonths.COUNT];

  private final int discountRate;
  private final int supplementPrice;
  private final int supplementEnergy;
  private final int supplementDryMatter;
  private final int supplementWaste;
  private final int lambValue;
  private final int dryEweCost;
  private final int eweMargin;
  private final int ewePrice;
  private final int spareFeedValue;
  private final int endValue;
  private final int dryFactor;
  private final int reached;
  private final int costOfRule;
  private final int costOfOrder;

  private final int nitrogenFixed;
  private final int nitrogenPrice;
  private final double growthKgDmPerHa;
  private final double[] inLamb;
  private final double[] unaffected;

  private double[] x;
  private double weightSum;
  private double winterNow;
  private double legumeNow;
  private double lambFeedNow;
  private double pricePerMj;
  private double tonnesPerMj;
  private final double[] discount;

  /** Every uncertain number of a farm, in the order in which the outcome function reads them. */
  static UncertainNumbers numbers(Farm farm, Tables tables, List<Composition> compositions) {
    UncertainNumbers.Builder numbers = new UncertainNumbers.Builder();
    StandingClover.enter(numbers, farm, tables, compositions);
    ActionPaths.enter(numbers, farm, tables, compositions);
    Sowings.enter(numbers, farm, tables);
    FeedSurface.enter(numbers, farm, tables);
    farm.mobs().forEach(mob -> FlockEffect.enter(numbers, mob, tables));
    DryEweSale.enter(numbers, farm, tables);
    numbers.add(DISCOUNT_RATE, farm.finance().discountRate().chosen());
    numbers.add(SUPPLEMENT_PRICE, farm.supplement().pricePerTonne());
    numbers.add(SUPPLEMENT_ENERGY, farm.supplement().energyMjPerKgDm());
    numbers.add(SUPPLEMENT_DRY_MATTER, farm.supplement().dryMatterFraction());
    numbers.add(SUPPLEMENT_WASTE, farm.supplement().wasteFraction());
    numbers.add(LAMB_VALUE, farm.prices().netValuePerLamb());
    numbers.add(DRY_EWE_COST, farm.prices().costPerDryEwe());
    numbers.add(EWE_MARGIN, farm.prices().grossMarginPerEwe());
    numbers.add(EWE_PRICE, farm.prices().replacementEwe());
    numbers.add(SPARE_FEED_VALUE, farm.prices().spareFeedPerTonneDm());
    numbers.add(END_VALUE, farm.finance().endValuePerHa());
    numbers.add(DRY_FACTOR, tables.parameter(DRY_FACTOR));
    numbers.add(REACHED, tables.parameter(REACHED));
    numbers.add(COST_OF_RULE, farm.management().useRule());
    numbers.add(COST_OF_ORDER, farm.management().grazingInOrder());
    numbers.add(NITROGEN_FIXED, tables.parameter(NITROGEN_FIXED));
    numbers.add(NITROGEN_PRICE, farm.prices().nitrogenPerKg());
    return numbers.build();
  }

  OutcomeFunction(FarmModel model) {
    this.model = model;
    UncertainNumbers numbers = model.inputs();
    farm = model.farm();
    year = model.year();
    years = farm.finance().horizonYears();
    actions = model.actions().size();
    keep = model.keep();
    runMoreEwes = model.runMoreEwes();
    areaHa = farm.areaHa();
    paddockArea = farm.paddocks().stream().mapToDouble(Paddock::areaHa).toArray();
    paddockWeight = new double[paddockArea.length];
    keptTaken = new double[paddockArea.length];
    stands = new StandingClover(farm, model.tables(), numbers, model.compositions());
    paths = new ActionPaths(farm, numbers, stands, year);
    sowings = new Sowings(farm, numbers, paths);
    feed =
        new FeedSurface(
            farm, model.tables(), year, numbers, model.demand(), model.budget(), runMoreEwes);
    List<Mob> mobs = farm.mobs();
    ewes = mobs.stream().mapToInt(Mob::ewes).toArray();
    inLamb = new double[ewes.length];
    unaffected = new double[ewes.length];
    lambsPerEwe = mobs.stream().mapToDouble(OutcomeFunction::lambsPerPregnantEwe).toArray();
    flock = new FlockEffect[mobs.size()];
    dryEweSale = new DryEweSale[mobs.size()];
    for (int g = 0; g < flock.length; g++) {
      flock[g] = new FlockEffect(farm, mobs.get(g), numbers);
      dryEweSale[g] = new DryEweSale(farm, mobs.get(g), numbers);
    }
    grazes = new boolean[flock.length][paddockArea.length];
    for (int g = 0; g < flock.length; g++) {
      for (int i = 0; i < paddockArea.length; i++) {
        grazes[g][i] = farm.paddocks().get(i).isGrazedBy(mobs.get(g));
      }
    }
    moves = new boolean[flock.length];
    for (int g = 0; g < moves.length; g++) {
      moves[g] = mobs.get(g).mayMove();
    }
    base = new int[actions];
    off = new Off[actions];
    for (int a = 0; a < actions; a++) {
      base[a] = model.rules().base(a);
      off[a] = model.actions().get(a).use().map(rule -> new Off(rule, flock.length)).orElse(null);
    }
    sums = YearSums.size(flock.length);
    keptSums = new double[sums];
    baseSums = new double[years * sums];
    baseNpv = new double[years + 1];
    own = new OwnYears();
    ownOfSecond = new OwnYears();
    addedThen = new double[sums];
    exchanged = new double[sums];
    baseYears = model.newOutcome();
    scratch = model.newOutcome();
    discount = new double[years];
    seasonOfYear = new int[years];
    greenShareOf = new double[feed.meanOfSeasons()][HalfMonths.COUNT];
    boughtNowMjPerHa = new double[feed.meanOfSeasons() + 1];
    valueOfShare = new double[flock.length];
    window = new JoiningWindow(farm, year, feed, flock);
    partOf = new double[flock.length][paddockArea.length];
    for (int g = 0; g < flock.length; g++) {
      for (int i = 0; i < paddockArea.length; i++) {
        partOf[g][i] = part(g, i);
      }
    }
    inOrder = new InOrder(mobs);
    needed = window::needed;
    enoughHeld = new double[flock.length];
    enoughGreen = new double[flock.length];
    discountRate = numbers.place(DISCOUNT_RATE);
    supplementPrice = numbers.place(SUPPLEMENT_PRICE);
    supplementEnergy = numbers.place(SUPPLEMENT_ENERGY);
    supplementDryMatter = numbers.place(SUPPLEMENT_DRY_MATTER);
    supplementWaste = numbers.place(SUPPLEMENT_WASTE);
    lambValue = numbers.place(LAMB_VALUE);
    dryEweCost = numbers.place(DRY_EWE_COST);
    eweMargin = numbers.place(EWE_MARGIN);
    ewePrice = numbers.place(EWE_PRICE);
    spareFeedValue = numbers.place(SPARE_FEED_VALUE);
    endValue = numbers.place(END_VALUE);
    dryFactor = numbers.place(DRY_FACTOR);
    reached = numbers.place(REACHED);
    costOfRule = numbers.place(COST_OF_RULE);
    costOfOrder = numbers.place(COST_OF_ORDER);
    nitrogenFixed = numbers.place(NITROGEN_FIXED);
    nitrogenPrice = numbers.place(NITROGEN_PRICE);
    growthKgDmPerHa = year.growthKgDmPerHa();
    set(numbers.likely());
  }

  /** Who is kept off by a rule. */
  private static final class Off {

    private final boolean[] mob;
    private final boolean whileGreen;
    private final boolean all;

    Off(UseRule rule, int mobs) {
      mob = new boolean[mobs];
      rule.mobs().forEach(g -> mob[g] = true);
      whileGreen = rule.when() == UseRule.When.WHILE_GREEN;
      all = rule.mobs().size() == mobs;
    }
  }

  /** A mob's part of a paddock among the mobs that graze it. */
  private double part(int mob, int paddock) {
    double all = 0;
    for (int g = 0; g < flock.length; g++) {
      all += grazes[g][paddock] ? window.weightKg(g) : 0;
    }
    return grazes[mob][paddock] ? window.weightKg(mob) / all : 0;
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
    plan = null;
    discount[0] = 1;
    for (int t = 1; t < years; t++) {
      discount[t] = discount[t - 1] / (1 + x[discountRate]);
    }
    weightSum = 0;
    double grown = 0;
    for (int i = 0; i < paddockArea.length; i++) {
      paddockWeight[i] = paddockArea[i] * stands.growthIndex(x, i);
      weightSum += paddockWeight[i];
      grown += paddockWeight[i] * paths.winter(paths.at(i, keep, 0));
    }
    winterNow = grown / weightSum;
    tonnesPerMj =
        1
            / SupplementCost.energyMjPerTonne(
                x[supplementEnergy], x[supplementDryMatter], x[supplementWaste]);
    pricePerMj = tonnesPerMj * x[supplementPrice];
    Arrays.fill(keptSums, 0);
    for (int i = 0; i < paddockArea.length; i++) {
      keptTaken[i] = taken(i, paths.at(i, keep, 0));
      addGrowth(keptSums, 0, i, paths.at(i, keep, 0), keptTaken[i]);
    }
    double taken = taken(keptSums, 0);
    legumeNow = legume(keptSums, 0);
    Arrays.fill(keptSums, 0);
    for (int g = 0; g < flock.length; g++) {
      inLamb[g] = flock[g].statedShare(x);
    }
    feed.set(x, winterNow, legumeNow, inLamb);
    readFeedYear();
    double strongest = paths.strongest();
    inOrder.set(strongest);
    window.set(flock, onOffer, growth, eaten, eatenByEwes, taken);
    for (int i = 0; i < paddockArea.length; i++) {
      addTo(keptSums, 0, 0, i, keep, 0);
    }
    for (int g = 0; g < flock.length; g++) {
      enoughHeld[g] = Math.min(keptSums[YearSums.at(g, YearSums.SAFE)], window.needed(g));
      enoughGreen[g] = window.usedInWinter() * keptSums[YearSums.at(g, YearSums.SAFE_GREEN)];
      valueOfShare[g] = ewes[g] * valuePerPregnantEwe(g);
      flock[g].set(x, greenShare, strength(keptSums, 0, g), strongest);
      dryEweSale[g].set(x, flock[g].sparedNow());
    }
    setEwesInLamb();
  }

  /** The feed of the farm as it stands is that of the ewes that are in lamb now. */
  private void setEwesInLamb() {
    lambFeedNow = 0;
    for (int g = 0; g < flock.length; g++) {
      if (flock[g].isStatedUnaffected()) {
        inLamb[g] = flock[g].shareNow();
      }
      lambFeedNow += flock[g].shareNow() * feed.inLambMj(g);
      unaffected[g] = flock[g].unaffectedShare();
    }
    feed.settle(inLamb, unaffected);
    for (int season = 0; season < boughtNowMjPerHa.length; season++) {
      boughtNowMjPerHa[season] = feed.bought(season, winterNow, 1);
    }
  }

  /**
   * Adds what the choice of a paddock brings in a year, or that of a rule of the farm; until it
   * starts the paddock is kept.
   */
  private void addTo(double[] into, int to, int t, int i, int action, int start) {
    if (i >= paddockArea.length) {
      addRule(into, to, i - paddockArea.length, action);
      return;
    }
    int a = t < start ? keep : base[action];
    int k = t < start ? 0 : t - start;
    int at = pathYear(t, i, action, start);
    Off rule = ruleIn(t, i, action, start);
    double taken = taken(i, at);
    addGrowth(into, to, i, at, taken);
    addGrazed(into, to, i, taken, paths.strength(at), rule);
    into[to + YearSums.LABOUR] += rule == null ? 0 : paddockArea[i] * x[costOfRule];
    into[to + YearSums.COST] += paddockArea[i] * paths.costPerHa(at);
    into[to + YearSums.LABOUR] += paddockArea[i] * paths.labourPerHa(at);
    into[to + YearSums.MARGIN] += paddockArea[i] * paths.marginPerHa(at);
    into[to + YearSums.OUT] += paths.isShut(a, k) ? paddockArea[i] : 0;
    into[to + YearSums.CROP] += paths.isCrop(a, k) ? paddockArea[i] : 0;
  }

  /** Adds what ewes take from a paddock in a year, with the strength of its clover. */
  private void addGrazed(double[] into, int to, int i, double taken, double strength, Off rule) {
    double strong = taken * strength;
    double more = rule == null ? 1 : moreOf(rule, i);
    if (rule != null && rule.all) {
      into[to + (rule.whileGreen ? YearSums.HELD_GREEN : YearSums.HELD)] += taken;
    }
    for (int g = 0; g < flock.length; g++) {
      int of = to + YearSums.at(g, 0);
      if (!grazes[g][i]) {
        if (moves[g]) {
          into[of + YearSums.DOSE_ELSE] += strong;
          into[of + YearSums.GRAZED_ELSE] += taken;
          into[of + YearSums.OPEN] += taken * window.spare(g);
          into[of + YearSums.OPEN_GREEN] += keptTaken[i] * window.spareInWinter(g);
        }
        continue;
      }
      if (rule != null && rule.mob[g] && !rule.all) {
        into[of + (rule.whileGreen ? YearSums.OFF_GREEN : YearSums.OFF)] += taken;
      }
      double part = partOf[g][i];
      if (rule == null || !rule.mob[g] || !rule.whileGreen) {
        double most = rule != null && rule.whileGreen ? more : 1;
        double times = 1 + window.usedInWinter() * (most - 1);
        into[of + YearSums.DOSE] += times * strong;
        into[of + YearSums.GRAZED] += times * taken;
        into[of + YearSums.SAFE_GREEN] += taken * part * most;
        into[of + YearSums.OPEN_GREEN] += keptTaken[i] * part * most;
      }
      if (rule == null || !rule.mob[g]) {
        double times = 1 + window.used(g) * (more - 1);
        into[of + YearSums.DOSE_HELD] += times * strong;
        into[of + YearSums.GRAZED_HELD] += times * taken;
        into[of + YearSums.SAFE] += taken * part * more;
        into[of + YearSums.OPEN] += taken * part * more;
      }
    }
    if (withBins) {
      int bin = to + YearSums.bins(flock.length) + inOrder.bin(strength);
      into[bin] += taken;
      into[bin + InOrder.BINS] += strong;
    }
  }

  private void addGrowth(double[] into, int to, int i, int at, double taken) {
    into[to + YearSums.WINTER] += paddockWeight[i] * paths.winter(at);
    into[to + YearSums.OTHER] += paddockWeight[i] * paths.other(at);
    into[to + YearSums.CLOVER] += taken * paths.cloverShare(at);
  }

  private void addRule(double[] into, int to, int rule, int choice) {
    if (choice > 0 && rule == FarmRule.IN_ORDER.ordinal()) {
      into[to + YearSums.IN_ORDER] += 1;
      into[to + YearSums.LABOUR] += costOfRulePerYear(rule);
    } else if (choice > 0) {
      into[to + YearSums.SELL_DRY] += choice;
      into[to + YearSums.COST] += costOfRulePerYear(rule);
    }
  }

  /**
   * What falls to a mob that stays on a paddock others are kept off, as a multiple of what it took
   * there before: two mobs of one weight, one of which goes, leave twice as much to the other.
   * Where little of the feed is used it is not taken, so that the mob spreads as before.
   */
  private double moreOf(Off rule, int paddock) {
    double staying = 0;
    for (int g = 0; g < flock.length; g++) {
      staying += rule.mob[g] ? 0 : partOf[g][paddock];
    }
    return staying > 0 ? 1 / staying : 1;
  }

  /** Own time of grazing in order; of selling dry ewes, what scanning them costs. */
  private double costOfRulePerYear(int rule) {
    double perEwe = rule == FarmRule.IN_ORDER.ordinal() ? x[costOfOrder] : dryEweSale[0].scanCost();
    return perEwe * farm.ewesJoined();
  }

  /** The use rule that holds on a paddock in a year; null if none does. */
  private Off ruleIn(int t, int i, int action, int start) {
    boolean ends = base[action] != keep && t >= start + model.rules().years(i, action);
    return ends ? null : off[action];
  }

  /** Numbers of a stage of {@link #fillStages}. */
  int stageSize() {
    return years * sums;
  }

  /** The yearly sums of a paddock that is kept. */
  void fillKept(int i, double[] into) {
    addYears(i, keep, 0, into);
  }

  /**
   * The yearly sums of a paddock at the stages of {@link GainCredit} from the year in which a
   * choice starts, with growth, costs and margins as kept: with the grazing of the choice; also
   * with the clover share as if its own mix was sown; its cultivars; its density. The value now of
   * its crop margins, and of its costs and end value, beyond those of keeping it is added to the
   * last two of {@code into}.
   *
   * @return whether the choice leaves the paddock open to grazing as it is kept, in every year
   */
  boolean fillStages(int i, Course course, double[][] stages, double[] into) {
    int kept = paths.at(i, keep, 0);
    double asKept = paths.cultivars(kept);
    double crops = 0;
    double costs = 0;
    boolean isOpen = true;
    for (int t = begins(i, course.action(), course.start()); t < years; t++) {
      int at = pathYear(t, i, course.action(), course.start());
      Off rule = ruleIn(t, i, course.action(), course.start());
      double density = paths.density(kept);
      fillStage(
          stages[0],
          t,
          i,
          at,
          asKept * density,
          paths.cloverShare(kept),
          paths.strength(kept),
          rule);
      double own = paths.ownCultivars(at) * density;
      fillStage(stages[1], t, i, at, own, paths.cloverShare(at), paths.ownStrength(at), rule);
      double cultivars = paths.cultivars(at);
      fillStage(
          stages[2],
          t,
          i,
          at,
          cultivars * density,
          paths.cloverShare(at),
          paths.strength(at),
          rule);
      double then = cultivars * paths.density(at);
      fillStage(stages[3], t, i, at, then, paths.cloverShare(at), paths.strength(at), rule);
      isOpen &= paths.open(at) == paths.open(kept) && paths.other(at) == paths.other(kept);
      crops += discount[t] * (paths.marginPerHa(at) - paths.marginPerHa(kept));
      double paid = paths.costPerHa(at) + paths.labourPerHa(at);
      paid += rule == null ? 0 : x[costOfRule];
      costs += discount[t] * (paths.costPerHa(kept) + paths.labourPerHa(kept) - paid);
    }
    into[Cause.CROPS.ordinal()] += paddockArea[i] * crops;
    double end = endValueNow(i, course.action()) - endValueNow(i, keep);
    into[Cause.COSTS.ordinal()] += paddockArea[i] * costs + end;
    return isOpen;
  }

  /**
   * Growth without what shuts it, from which ewes take what is open; costs are those of keeping.
   */
  private void fillStage(
      double[] stage,
      int t,
      int i,
      int at,
      double winter,
      double clover,
      double strength,
      Off rule) {
    int to = t * sums;
    double share = year.winterShare();
    double ofYear = share * (paths.open(at) * winter) + (1 - share) * paths.other(at);
    double taken = paddockWeight[i] * ofYear;
    stage[to + YearSums.WINTER] = paddockWeight[i] * winter;
    stage[to + YearSums.CLOVER] = taken * clover;
    stage[to + YearSums.HELD] = 0;
    stage[to + YearSums.HELD_GREEN] = 0;
    Arrays.fill(stage, to + YearSums.at(0, 0), to + sums, 0);
    addGrazed(stage, to, i, taken, strength, rule);
  }

  /** Net present value of the base with other yearly sums of one paddock, worth as kept at last. */
  double npvOfBaseWith(int paddock, Course course, double[] stage) {
    int first = firstChanged(paddock, course.action(), course.start());
    double npv = resumeFrom(first);
    own.read(paddock);
    for (int t = first; t < years; t++) {
      for (int k = 0; k < sums; k++) {
        int at = t * sums + k;
        exchanged[k] = baseSums[at] + (stage[at] - own.added[at]);
      }
      evaluateYear(t, exchanged, 0, scratch);
      npv += discount[t] * scratch.net(t);
    }
    return npv + baseEnd + endValueChange(paddock, keep);
  }

  /** The sums that a paddock's choice brings in every year: {@code [year * sums + sum]}. */
  public void addYears(int paddock, int action, int start, double[] into) {
    Arrays.fill(into, 0);
    for (int t = 0; t < years; t++) {
      addTo(into, t * sums, t, paddock, action, start);
    }
  }

  /**
   * Strength of what a mob grazes while no rule before joining holds: paddocks of its own, and
   * where they are too few others for the rest.
   */
  private double strength(double[] of, int at, int g) {
    double own = of[at + YearSums.at(g, YearSums.GRAZED)];
    double dose = of[at + YearSums.at(g, YearSums.DOSE)];
    double safe = of[at + YearSums.at(g, YearSums.SAFE_GREEN)];
    return withElse(of, at, g, own, dose, safe, enoughGreen[g], 0);
  }

  /** The same in the weeks before and during joining; with nowhere to go it stays where it was. */
  private double strengthHeld(double[] of, int at, int g, double otherwise) {
    double own = of[at + YearSums.at(g, YearSums.GRAZED_HELD)];
    double dose = of[at + YearSums.at(g, YearSums.DOSE_HELD)];
    double safe = of[at + YearSums.at(g, YearSums.SAFE)];
    return withElse(of, at, g, own, dose, safe, enoughHeld[g], otherwise);
  }

  private double withElse(
      double[] of,
      int at,
      int g,
      double own,
      double dose,
      double feed,
      double enough,
      double otherwise) {
    double others = of[at + YearSums.at(g, YearSums.GRAZED_ELSE)];
    if (feed >= enough || others <= NOTHING_HA) {
      return ratio(dose, own, otherwise);
    }
    double share = feed / enough;
    double strengthElse = of[at + YearSums.at(g, YearSums.DOSE_ELSE)] / others;
    return share * ratio(dose, own, 0) + (1 - share) * strengthElse;
  }

  private static double ratio(double dose, double grazed, double otherwise) {
    return grazed > NOTHING_HA ? dose / grazed : otherwise;
  }

  /** Strength of intake in each half-month: green counts whole, dry feed by its own factor. */
  private void readFeedYear() {
    Arrays.fill(greenShare, 0);
    Arrays.fill(onOffer, 0);
    Arrays.fill(growth, 0);
    Arrays.fill(eaten, 0);
    Arrays.fill(eatenByEwes, 0);
    for (int season = 0; season < farm.feedYear().seasons().size(); season++) {
      FeedResult now = feed.asStated(season);
      double chance = farm.feedYear().seasons().get(season).chance().likely();
      for (int p = 0; p < HalfMonths.COUNT; p++) {
        double green = now.eatenGreenKgDmPerHa[p];
        double dry = now.eatenDryKgDmPerHa[p];
        double all = green + dry;
        greenShareOf[season][p] = all > 0 ? (green + x[dryFactor] * dry) / all : 0;
        greenShare[p] += chance * greenShareOf[season][p];
        onOffer[p] += chance * (now.greenKgDmPerHa[p] + now.dryKgDmPerHa[p]);
        growth[p] += chance * now.growthKgDmPerHa[p];
        eaten[p] += chance * all;
        eatenByEwes[p] += chance * all * feed.eweShareOfAppetite(p);
      }
    }
  }

  /** Feed of the farm in a year, ha of ordinary growth. */
  private double taken(double[] of, int at) {
    double share = year.winterShare();
    return share * of[at + YearSums.WINTER] + (1 - share) * of[at + YearSums.OTHER];
  }

  /** Clover share of it; a farm without feed has the clover of now. */
  private double legume(double[] of, int at) {
    return ratio(of[at + YearSums.CLOVER], taken(of, at), legumeNow);
  }

  /** Feed that is taken from a paddock in the year of a path, ha of ordinary growth. */
  private double taken(int i, int at) {
    double share = year.winterShare();
    return paddockWeight[i] * (share * paths.winter(at) + (1 - share) * paths.other(at));
  }

  /** Where the year of a choice stands among the paths. */
  private int pathYear(int t, int i, int action, int start) {
    return t < start
        ? paths.at(i, keep, 0)
        : paths.at(i, base[action], sowings.failures(i, base[action], start), t - start);
  }

  /**
   * Fills {@code out} with what the plan brings against keeping everything. The plan becomes the
   * base of {@link #npvOfBaseWith} until the next set.
   */
  public void evaluate(Plan of, Outcome out) {
    setBase(of);
    out.copy(baseYears, years);
    out.clearShares();
    for (int i = 0; i < paddockArea.length; i++) {
      addShares(of, i, paddockArea[i] / areaHa, out);
    }
  }

  /** Makes a plan the base of {@link #npvOfBaseWith}, and returns its net present value. */
  public double setBase(Plan of) {
    plan = of;
    own.of = NONE;
    ownOfSecond.of = NONE;
    fillSums(of);
    double end = 0;
    for (int i = 0; i < paddockArea.length; i++) {
      end += endValueNow(i, of.action(i));
    }
    baseEnd = end;
    for (int t = 0; t < years; t++) {
      evaluateYear(t, baseSums, t * sums, baseYears);
      baseNpv[t + 1] = baseNpv[t] + discount[t] * baseYears.net(t);
    }
    for (int g = 0; g < flock.length; g++) {
      flock[g].keepYears();
      dryEweSale[g].keepYears();
    }
    baseYears.setEnd(end / discount[years - 1], baseNpv[years] + end);
    return baseYears.npv();
  }

  /** Years before the first action are as if everything were kept. */
  private void fillSums(Plan of) {
    int first = years;
    for (int i = 0; i < of.places(); i++) {
      first = Math.min(first, begins(i, of.action(i), of.start(i)));
    }
    for (int t = 0; t < first; t++) {
      System.arraycopy(keptSums, 0, baseSums, t * sums, sums);
    }
    Arrays.fill(baseSums, first * sums, baseSums.length, 0);
    for (int i = 0; i < of.places(); i++) {
      for (int t = first; t < years; t++) {
        addTo(baseSums, t * sums, t, i, of.action(i), of.start(i));
      }
    }
  }

  /**
   * Net present value of the base with another choice on one paddock, in money. Years before either
   * choice begins are as they were; in the others what the paddock adds is put in place of what it
   * added, so that the time taken does not grow with the paddocks. A choice that changes nothing
   * gives the base to the last bit.
   */
  public double npvOfBaseWith(int paddock, int action, int start) {
    int first = firstChanged(paddock, action, start);
    return evaluateWith(first, paddock, action, start, scratch)
        + baseEnd
        + endValueChange(paddock, action);
  }

  /** The same, and fills {@code out} with what comes of it, shares of clover with nothing. */
  public double evaluateBaseWith(int paddock, int action, int start, Outcome out) {
    int first = firstChanged(paddock, action, start);
    out.copy(baseYears, first);
    out.clearShares();
    double end = baseEnd + endValueChange(paddock, action);
    double npv = evaluateWith(first, paddock, action, start, out) + end;
    out.setEnd(end / discount[years - 1], npv);
    return npv;
  }

  /** Present value of the years, of which those from the first changed one on are filled in. */
  private double evaluateWith(int first, int paddock, int action, int start, Outcome out) {
    double npv = resumeFrom(first);
    int used = begin(paddock >= paddockArea.length);
    for (int t = first; t < years; t++) {
      System.arraycopy(baseSums, t * sums, exchanged, 0, used);
      exchange(own, t, paddock, action, start, used);
      evaluateYear(t, exchanged, 0, out);
      npv += discount[t] * out.net(t);
    }
    withBins = true;
    return npv;
  }

  /** The same with other choices on two paddocks, which must not be the same one. */
  public double npvOfBaseWith(
      int one, int actionOne, int startOne, int two, int actionTwo, int startTwo) {
    int first =
        Math.min(firstChanged(one, actionOne, startOne), firstChanged(two, actionTwo, startTwo));
    double npv = resumeFrom(first);
    int used = begin(Math.max(one, two) >= paddockArea.length);
    for (int t = first; t < years; t++) {
      System.arraycopy(baseSums, t * sums, exchanged, 0, used);
      exchange(own, t, one, actionOne, startOne, used);
      exchange(ownOfSecond, t, two, actionTwo, startTwo, used);
      evaluateYear(t, exchanged, 0, scratch);
      npv += discount[t] * scratch.net(t);
    }
    withBins = true;
    return npv + baseEnd + endValueChange(one, actionOne) + endValueChange(two, actionTwo);
  }

  /** The first year that another choice on a paddock may change. */
  private int firstChanged(int paddock, int action, int start) {
    return Math.min(
        begins(paddock, action, start), begins(paddock, plan.action(paddock), plan.start(paddock)));
  }

  /** Goes to a year of the base, and gives the value of those before. */
  private double resumeFrom(int year) {
    for (int g = 0; g < flock.length; g++) {
      flock[g].resumeFrom(year);
      dryEweSale[g].resumeFrom(year);
    }
    return baseNpv[year];
  }

  /**
   * How many of a year's sums count for a change: the classes of strength, which stand last, do
   * only where mobs graze in order or may come to.
   */
  private int begin(boolean changesARule) {
    withBins = changesARule || plan.choice(FarmRule.IN_ORDER) > 0;
    return withBins ? sums : YearSums.bins(flock.length);
  }

  /** Puts what a choice adds in a year in place of what the base's own adds. */
  private void exchange(OwnYears own, int t, int paddock, int action, int start, int used) {
    own.read(paddock);
    Arrays.fill(addedThen, 0);
    addTo(addedThen, 0, t, paddock, action, start);
    for (int k = 0; k < used; k++) {
      exchanged[k] += addedThen[k] - own.added[t * sums + k];
    }
  }

  /**
   * What the base's own choice for a paddock adds in every year, kept for the next change of it.
   */
  private final class OwnYears {

    private final double[] added = new double[years * sums];
    private int of = NONE;

    void read(int paddock) {
      if (of != paddock) {
        boolean before = withBins;
        withBins = true;
        addYears(paddock, plan.action(paddock), plan.start(paddock), added);
        withBins = before;
        of = paddock;
      }
    }
  }

  private double endValueChange(int paddock, int action) {
    return endValueNow(paddock, action) - endValueNow(paddock, plan.action(paddock));
  }

  /** The first year that a choice of a place changes; a rule holds from the coming year on. */
  private int begins(int place, int action, int start) {
    if (place >= paddockArea.length) {
      return action > 0 ? 0 : years;
    }
    return action == keep ? years : off[action] != null ? 0 : start;
  }

  /**
   * Fills a year of {@code out} from the year's sums, which stand from {@code at} on. Years must be
   * asked for in rising order from 0, because ewes carry earlier years with them.
   */
  public void evaluateYear(int t, double[] of, int at, Outcome out) {
    double lost = lost(of, at);
    double w = of[at + YearSums.WINTER] / weightSum - lost;
    double o = of[at + YearSums.OTHER] / weightSum - lost;
    out.actionCost[t] = of[at + YearSums.COST];
    out.labourCost[t] = of[at + YearSums.LABOUR];
    out.cropMargin[t] = of[at + YearSums.MARGIN];
    double gain = 0;
    double lambFeed = 0;
    out.lambs[t] = 0;
    out.ewesInLamb[t] = 0;
    boolean ordered = of[at + YearSums.IN_ORDER] > 0;
    int sold = (int) Math.round(of[at + YearSums.SELL_DRY]);
    if (ordered) {
      inOrder.find(of, at + YearSums.bins(flock.length), needed);
    }
    for (int g = 0; g < flock.length; g++) {
      FlockEffect effect = flock[g];
      double strength = strength(of, at, g);
      double held = strengthHeld(of, at, g, strength);
      double best = ordered ? inOrder.strength(g) : Double.NaN;
      if (!Double.isNaN(best)) {
        held += x[reached] * (best - held);
      }
      double share =
          sold > 0
              ? effect.share(t, strength, held, dryEweSale[g], SALE_RULES[sold - 1])
              : effect.share(t, strength, held);
      double more = share - effect.shareNow();
      lambFeed += share * feed.inLambMj(g);
      out.ewesInLamb[t] += more * ewes[g];
      out.lambs[t] += more * ewes[g] * lambsPerEwe[g];
      gain += more * valueOfShare(g);
      gain -= sold > 0 ? ewes[g] * costOfSale(g) : 0;
    }
    out.lambsSaved[t] = gain;
    int season = seasonOfYear[t];
    double inLambNext = ratio(lambFeed, lambFeedNow, 1);
    double legume = legume(of, at);
    boolean carriesMore = carriesMore(w, o);
    double without = carriesMore ? feed.bought(season, w, o) : boughtNowMjPerHa[season];
    double boughtMjPerHa = feed.bought(season, w, o, inLambNext, legume);
    out.supplementSaved[t] = (without - boughtMjPerHa) * areaHa * pricePerMj;
    out.spareFeed[t] =
        (carriesMore ? moreEwes(w, o) : 0) + spareFeedGain(season, w, o, inLambNext, legume);
    if (x[nitrogenPrice] > 0) {
      double moreClover = of[at + YearSums.CLOVER] - keptSums[YearSums.CLOVER];
      out.spareFeed[t] += nitrogenKg(moreClover) * x[nitrogenPrice];
    }
  }

  private double costOfSale(int g) {
    return dryEweSale[g].costPerEwe(lambsPerEwe[g] * x[lambValue], x[dryEweCost]);
  }

  /** Growth that nobody eats because of use rules, as a share of the farm's in a year. */
  private double lost(double[] of, int at) {
    double held = of[at + YearSums.HELD];
    double green = of[at + YearSums.HELD_GREEN];
    double ofAll =
        held + green > 0 ? window.lost(flock.length, held / weightSum, green / weightSum) : 0;
    double ofOne = 0;
    for (int g = 0; g < flock.length; g++) {
      double off = of[at + YearSums.at(g, YearSums.OFF)];
      double offGreen = of[at + YearSums.at(g, YearSums.OFF_GREEN)];
      if (off + offGreen > 0) {
        ofOne = Math.max(ofOne, window.lost(g, off / weightSum, offGreen / weightSum));
      }
    }
    return ofAll + ofOne;
  }

  /**
   * Nitrogen that clover fixes in a year, kg.
   *
   * <pre>
   *   N = clover grown, t DM x 25 (20 to 40) kg N/t        1.5 t of clover: 38 kg
   * </pre>
   *
   * @param clover the clover's part of the feed, ha of ordinary growth
   */
  private double nitrogenKg(double clover) {
    return clover * growthKgDmPerHa / 1000 * x[nitrogenFixed];
  }

  /** Nitrogen that a paddock's clover fixes as it is kept, kg per ha and year. */
  public double nitrogenKgPerHa(int paddock) {
    return nitrogenKgPerHa(paddock, paths.at(paddock, keep, 0));
  }

  /** The same in a year of a plan. */
  public double nitrogenKgPerHa(Plan plan, int paddock, int t) {
    return nitrogenKgPerHa(
        paddock, pathYear(t, paddock, plan.action(paddock), plan.start(paddock)));
  }

  private double nitrogenKgPerHa(int paddock, int at) {
    return nitrogenKg(taken(paddock, at) * paths.cloverShare(at)) / paddockArea[paddock];
  }

  /**
   * More ewes are run on what more growth saves; what the others eat more is bought all the same.
   */
  private boolean carriesMore(double w, double o) {
    return runMoreEwes && feed.bought(w, o) < boughtNowMjPerHa[feed.meanOfSeasons()];
  }

  /** Gain of the further ewes that a growth would carry. */
  private double moreEwes(double w, double o) {
    return gainOfMoreEwes(feed.extraEwes(w, o) * farm.ewesJoined());
  }

  private double spareFeedGain(int season, double w, double o, double inLambNext, double legume) {
    if (x[spareFeedValue] == 0) {
      return 0;
    }
    double more = feed.spare(season, w, o, inLambNext, legume) - feed.spare(season, winterNow, 1);
    return more * areaHa / 1000 * x[spareFeedValue];
  }

  /** Money if all ewes of a mob were in lamb that otherwise none would be. */
  double valueOfShare(int g) {
    return valueOfShare[g];
  }

  /** Lambs marked for each ewe in lamb, as the mob's own figures have it. */
  public static double lambsPerPregnantEwe(Mob mob) {
    return mob.markingPercent().likely() / mob.pregnantPercent().likely();
  }

  /** Value now of what a paddock is worth beyond the horizon for having been sown. */
  public double endValueNow(int paddock, int action) {
    return paddock < paddockArea.length && model.actions().get(action).sows()
        ? paddockArea[paddock] * x[endValue] * discount[years - 1]
        : 0;
  }

  /** Value now of one unit of money in a year. */
  public double discount(int year) {
    return discount[year];
  }

  double weightSum() {
    return weightSum;
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
    return enoughHeld[mob];
  }

  /** The same in winter. */
  public double feedNeededInWinter(int mob) {
    return enoughGreen[mob];
  }

  // What the farm is like now, in this run.

  /** Whether the ground lets an action be done on a paddock. */
  boolean isPossible(int paddock, int action) {
    return paths.allowed(paddock, base[action]);
  }

  /** Whether an action can be done on a paddock at all. */
  public boolean allowed(int paddock, int action) {
    return isPossible(paddock, action) && model.rules().isOpen(paddock, action);
  }

  /** Whether year {@code k} of an action takes the paddock out of grazing. */
  public boolean isShut(int action, int k) {
    return paths.isShut(base[action], k);
  }

  /**
   * Share of each species in the clover by year after a sowing starts; the sown one stands last.
   */
  public double[] plantShares(int paddock, int action) {
    return paths.plantShares(x, paddock, base[action]);
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
    return paths.establishmentInput(base[action]);
  }

  /** Clover share of what the farm's stock eat. */
  public double legumeShareNow() {
    return legumeNow;
  }

  /** Takes the share of each mob's ewes in lamb by which the feed of the farm is reckoned. */
  public void readInLamb(double[] into) {
    System.arraycopy(inLamb, 0, into, 0, inLamb.length);
  }

  /** Winter growth of the farm relative to current cultivars everywhere. */
  public double winterGrowthNow() {
    return winterNow;
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
    return pricePerMj;
  }

  /** Supplement that holds one MJ, t as fed. */
  public double tonnesPerMj() {
    return tonnesPerMj;
  }

  /** Rise in ewe numbers that current cultivars everywhere would carry, ewes. */
  public double extraEwesWithCurrent() {
    return feed.riseAt(x, winterNow, 1) * farm.ewesJoined();
  }

  /** Yearly gain of so many more ewes, supplement and the capital in them paid. */
  public double gainOfMoreEwes(double ewes) {
    if (farm.ewesJoined() == 0) {
      return 0;
    }
    double boughtMj = boughtNowMjPerHa[feed.meanOfSeasons()] * areaHa;
    double supplement = boughtMj * pricePerMj / farm.ewesJoined();
    return ewes * (x[eweMargin] - supplement - x[ewePrice] * x[discountRate]);
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
    return greenShare[halfMonth];
  }

  /** Whether feed is green at all then; dry feed hurts nobody. */
  public boolean isGreen(int halfMonth) {
    return greenShare[halfMonth] > DRY;
  }

  /** The same in the coming year, whose season type a draw tells. */
  public double greenShareOfComingYear(int halfMonth) {
    int season = seasonOfYear[0];
    return season < greenShareOf.length ? greenShareOf[season][halfMonth] : greenShare[halfMonth];
  }

  /** Formononetin of a paddock's green feed so many years after an action starts, % of intake. */
  public double greenDose(int paddock, int action, int yearsOn) {
    return paths.strength(paths.at(paddock, base[action], yearsOn));
  }

  /** Feed that a paddock gives in a year relative to others; its share of the sum is its part. */
  public double feedWeight(int paddock) {
    return taken(paddock, paths.at(paddock, keep, 0));
  }

  /** Lambs that a ewe in lamb brings to marking. */
  public double lambsPerPregnantEwe(int mob) {
    return lambsPerEwe[mob];
  }

  /** Money for one more ewe in lamb: her lambs, and what a dry ewe costs. */
  public double valuePerPregnantEwe(int mob) {
    return lambsPerEwe[mob] * x[lambValue] + x[dryEweCost];
  }

  /** Lambs not marked in a year because of oestrogen, one mob. */
  public double lambsLost(int mob) {
    return shareLost(mob) * ewes[mob] * lambsPerEwe[mob];
  }

  /** Money lost in a year because of oestrogen, one mob. */
  public double lambCost(int mob) {
    return shareLost(mob) * valueOfShare[mob];
  }

  /**
   * Worth of a mob's lambs marked in a year, less what its dry ewes cost, as paddocks are grazed
   * now.
   */
  public double yearOfFlock(int mob) {
    return flock[mob].shareNow() * valueOfShare[mob] - ewes[mob] * x[dryEweCost];
  }

  /** Ewes not in lamb because of oestrogen as paddocks are grazed now, share of those joined. */
  private double shareLost(int mob) {
    return flock[mob].unaffectedShare() - flock[mob].shareNow();
  }

  /** Costs of an action from start to end, own labour among them, undiscounted, per ha. */
  public double costPerHa(int paddock, int action, int start) {
    if (paddock >= paddockArea.length) {
      return action > 0 ? costOfRulePerYear(paddock - paddockArea.length) * years / areaHa : 0;
    }
    double sum = 0;
    for (int t = 0; t < years; t++) {
      boolean isRuled = ruleIn(t, paddock, action, start) != null;
      sum += isRuled ? x[costOfRule] : 0;
    }
    for (int k = 0; k < years - start; k++) {
      int at = pathYear(start + k, paddock, action, start);
      sum += paths.costPerHa(at) + paths.labourPerHa(at);
    }
    return sum;
  }

  /** Share of old cultivars in a paddock's clover in a year of a plan. */
  public double oldShare(Plan plan, int paddock, int t) {
    return paths.oldShare(pathYear(t, paddock, plan.action(paddock), plan.start(paddock)));
  }

  /** Clover as a share of a paddock's green feed in a year of a plan. */
  public double cloverShare(Plan plan, int paddock, int t) {
    return paths.cloverShare(pathYear(t, paddock, plan.action(paddock), plan.start(paddock)));
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
