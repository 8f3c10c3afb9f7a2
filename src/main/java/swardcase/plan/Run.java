package swardcase.plan;

import java.util.Arrays;
import java.util.List;
import swardcase.farm.Farm;
import swardcase.farm.HalfMonths;
import swardcase.farm.Mob;
import swardcase.farm.Paddock;
import swardcase.feed.FeedResult;
import swardcase.feed.SupplementCost;
import swardcase.sward.Composition;

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
public final class Run {

  private final FarmModel model;
  private final Farm farm;
  private final Inputs inputs = new Inputs();
  private final Stands stands;
  private final ActionPaths paths;
  private final FeedSurface feed;
  private final FlockEffect[] flock;
  private final GrowthYear year;
  private final int years;
  private final double areaHa;
  private final double[] paddockArea;
  private final double[] paddockWeight;
  private final boolean[][] grazes;
  private final double[] dose;
  private final double[] grazed;
  private final double[] doseHeld;
  private final double[] grazedHeld;
  private final double[] greenShare = new double[HalfMonths.COUNT];
  private final FeedResult feedNow = new FeedResult();

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

  private double[] x;
  private double weightSum;
  private double winterNow;
  private double boughtNowMjPerHa;
  private double pricePerMj;

  Run(FarmModel model) {
    this.model = model;
    farm = model.farm();
    year = model.year();
    years = farm.finance().horizonYears();
    areaHa = farm.areaHa();
    paddockArea = farm.paddocks().stream().mapToDouble(Paddock::areaHa).toArray();
    paddockWeight = new double[paddockArea.length];
    stands = new Stands(farm, model.tables(), inputs);
    paths = new ActionPaths(farm, model.tables(), inputs, stands, year);
    feed = new FeedSurface(farm, model.tables(), inputs, year, model.runMoreEwes());
    List<Mob> mobs = farm.mobs();
    flock = new FlockEffect[mobs.size()];
    for (int g = 0; g < flock.length; g++) {
      flock[g] = new FlockEffect(farm, mobs.get(g), model.tables(), inputs);
    }
    grazes = new boolean[flock.length][paddockArea.length];
    for (int g = 0; g < flock.length; g++) {
      for (int i = 0; i < paddockArea.length; i++) {
        grazes[g][i] = farm.paddocks().get(i).isGrazedBy(mobs.get(g));
      }
    }
    dose = new double[flock.length];
    grazed = new double[flock.length];
    doseHeld = new double[flock.length];
    grazedHeld = new double[flock.length];
    discountRate = inputs.add(farm.finance().discountRate());
    supplementPrice = inputs.add(farm.supplement().pricePerTonne());
    supplementEnergy = inputs.add(farm.supplement().energyMjPerKgDm());
    supplementDryMatter = inputs.add(farm.supplement().dryMatterFraction());
    supplementWaste = inputs.add(farm.supplement().wasteFraction());
    lambValue = inputs.add(farm.prices().netValuePerLamb());
    dryEweCost = inputs.add(farm.prices().costPerDryEwe());
    eweMargin = inputs.add(farm.prices().grossMarginPerEwe());
    ewePrice = inputs.add(farm.prices().replacementEwe());
    spareFeedValue = inputs.add(farm.prices().spareFeedPerTonneDm());
    endValue = inputs.add(farm.finance().endValuePerHa());
    dryFactor = inputs.add(model.tables().parameter("dose.dry-factor"));
    set(inputs.likely());
  }

  Inputs inputs() {
    return inputs;
  }

  /** Takes one array of assumptions, in the order of {@link FarmModel#inputs()}. */
  public void set(double[] assumptions) {
    x = assumptions;
    stands.set(x);
    paths.set(x);
    weightSum = 0;
    double grown = 0;
    int keep = model.keep();
    for (int i = 0; i < paddockArea.length; i++) {
      paddockWeight[i] = paddockArea[i] * stands.growthIndex(x, i);
      weightSum += paddockWeight[i];
      grown += paddockWeight[i] * paths.winter(i, keep, 0);
    }
    winterNow = grown / weightSum;
    pricePerMj =
        new SupplementCost(
                x[supplementPrice], x[supplementEnergy], x[supplementDryMatter], x[supplementWaste])
            .cost(1);
    feed.set(x, winterNow);
    boughtNowMjPerHa = feed.bought(winterNow, 1);
    setGreenShare();
    double strongest = paths.strongest();
    for (int g = 0; g < flock.length; g++) {
      clearStrengths();
      for (int i = 0; i < paddockArea.length; i++) {
        addStrength(i, keep, 0);
      }
      flock[g].set(x, greenShare, strength(g), strongest);
    }
  }

  private void clearStrengths() {
    Arrays.fill(dose, 0);
    Arrays.fill(grazed, 0);
    Arrays.fill(doseHeld, 0);
    Arrays.fill(grazedHeld, 0);
  }

  /** Adds what a paddock gives to each mob that grazes it, by feed taken. */
  private void addStrength(int i, int a, int k) {
    double taken = paddockWeight[i] * wholeYear(i, a, k);
    double strong = taken * paths.strength(i, a, k);
    for (int g = 0; g < flock.length; g++) {
      if (!grazes[g][i]) {
        continue;
      }
      dose[g] += strong;
      grazed[g] += taken;
      if (!paths.holdsOff(a)) {
        doseHeld[g] += strong;
        grazedHeld[g] += taken;
      }
    }
  }

  private double strength(int g) {
    return grazed[g] > 0 ? dose[g] / grazed[g] : 0;
  }

  /** A mob with nowhere left to go in the held weeks stays where it was. */
  private double strengthHeld(int g) {
    return grazedHeld[g] > 0 ? doseHeld[g] / grazedHeld[g] : strength(g);
  }

  /** Strength of intake in each half-month: green counts whole, dry feed by its own factor. */
  private void setGreenShare() {
    Arrays.fill(greenShare, 0);
    for (int season = 0; season < farm.feedYear().seasons().size(); season++) {
      feed.run(season, winterNow, 1, 1, feedNow);
      double chance = farm.feedYear().seasons().get(season).chance().likely();
      for (int p = 0; p < HalfMonths.COUNT; p++) {
        double green = feedNow.eatenGreenKgDmPerHa[p];
        double dry = feedNow.eatenDryKgDmPerHa[p];
        if (green + dry > 0) {
          greenShare[p] += chance * (green + x[dryFactor] * dry) / (green + dry);
        }
      }
    }
  }

  private double wholeYear(int i, int a, int k) {
    double share = year.winterShare();
    return share * paths.winter(i, a, k) + (1 - share) * paths.other(i, a, k);
  }

  /** Fills {@code out} with what the plan brings against keeping everything. */
  public void evaluate(Plan plan, Outcome out) {
    double factor = 1;
    double npv = 0;
    for (int t = 0; t < years; t++) {
      evaluateYear(plan, t, out);
      npv += factor * out.net(t);
      factor /= 1 + x[discountRate];
    }
    out.npv = npv + endValue(plan) * factor * (1 + x[discountRate]);
  }

  private void evaluateYear(Plan plan, int t, Outcome out) {
    double winter = 0;
    double other = 0;
    double held = 0;
    clearStrengths();
    double old = 0;
    double cost = 0;
    double margin = 0;
    for (int i = 0; i < paddockArea.length; i++) {
      int chosen = plan.action(i);
      int k = t - plan.start(i);
      int a = k < 0 ? model.keep() : chosen;
      int slot = Math.max(0, k);
      double weight = paddockWeight[i];
      winter += weight * paths.winter(i, a, slot);
      other += weight * paths.other(i, a, slot);
      addStrength(i, a, slot);
      held += paths.holdsOff(a) ? weight * wholeYear(i, a, slot) : 0;
      cost += paddockArea[i] * paths.costPerHa(i, a, slot);
      margin += paddockArea[i] * paths.marginPerHa(i, a, slot);
      old += paddockArea[i] * paths.oldShare(i, a, slot);
    }
    double lost = lostWhereHeld(held);
    double w = winter / weightSum - lost;
    double o = other / weightSum - lost;
    out.winterGrowth[t] = winter / weightSum;
    out.oldShare[t] = old / areaHa;
    out.actionCost[t] = cost;
    out.cropMargin[t] = margin;
    double bought = feed.bought(w, o);
    out.spareFeed[t] = 0;
    if (model.runMoreEwes() && bought < boughtNowMjPerHa) {
      out.supplementSaved[t] = 0;
      out.spareFeed[t] = gainOfMoreEwes(feed.extraEwes(w, o) * farm.ewesJoined());
    } else {
      out.supplementSaved[t] = (boughtNowMjPerHa - bought) * areaHa * pricePerMj;
    }
    out.spareFeed[t] += spareFeedGain(w, o);
    lambs(t, out);
  }

  private void lambs(int t, Outcome out) {
    double gain = 0;
    double pregnant = 0;
    int ewes = 0;
    for (int g = 0; g < flock.length; g++) {
      FlockEffect effect = flock[g];
      Mob mob = effect.mob();
      double share = effect.share(t, strength(g), strengthHeld(g));
      double more = share - effect.shareNow();
      gain += more * mob.ewes() * (lambsPerPregnantEwe(mob) * x[lambValue] + x[dryEweCost]);
      pregnant += share * mob.ewes();
      ewes += mob.ewes();
    }
    out.lambsSaved[t] = gain;
    out.pregnantShare[t] = ewes > 0 ? pregnant / ewes : 0;
  }

  /** Lambs marked for each ewe in lamb, as the mob's own figures have it. */
  static double lambsPerPregnantEwe(Mob mob) {
    return mob.markingPercent().likely() / mob.pregnantPercent().likely();
  }

  /**
   * Growth lost, as a share of the farm's, where ewes are held off and other stock cannot take the
   * feed. Other stock are taken to eat their appetite from held paddocks in the held weeks.
   */
  private double lostWhereHeld(double heldWeight) {
    if (heldWeight == 0 || flock.length == 0) {
      return 0;
    }
    double grown = 0;
    double all = 0;
    double appetite = 0;
    for (int p = 0; p < HalfMonths.COUNT; p++) {
      all += year.growthKgDmPerHa(p);
      if (flock[0].isHeld(p)) {
        grown += year.growthKgDmPerHa(p);
        appetite += feed.otherAppetiteKgDmPerHa(p);
      }
    }
    double heldShare = heldWeight / weightSum;
    return Math.max(0, heldShare * grown - appetite) / all;
  }

  private double spareFeedGain(double w, double o) {
    if (x[spareFeedValue] == 0) {
      return 0;
    }
    double more = feed.spare(w, o) - feed.spare(winterNow, 1);
    return more * areaHa / 1000 * x[spareFeedValue];
  }

  private double endValue(Plan plan) {
    double sum = 0;
    for (int i = 0; i < paddockArea.length; i++) {
      if (model.actions().get(plan.action(i)).sows() && plan.start(i) < years) {
        sum += paddockArea[i] * x[endValue];
      }
    }
    return sum;
  }

  // What the farm is like now, in this run.

  /** Whether an action can be done on a paddock at all. */
  public boolean allowed(int paddock, int action) {
    return paths.allowed(paddock, action);
  }

  /** Names and shares of the clover in a paddock. */
  public Composition composition(int paddock) {
    return stands.composition(paddock);
  }

  /** Winter growth of the farm relative to current cultivars everywhere. */
  public double winterGrowthNow() {
    return winterNow;
  }

  /** Winter growth that a paddock loses to its cultivars, kg dry matter per ha and year. */
  public double winterLossKgDmPerHa(int paddock) {
    return (1 - paths.winter(paddock, model.keep(), 0))
        * stands.growthIndex(x, paddock)
        * year.winterGrowthKgDmPerHa();
  }

  /** Energy bought, MJ for the whole farm and year, at a winter growth. */
  public double boughtMj(double winterGrowth) {
    return feed.bought(winterGrowth, 1) * areaHa;
  }

  /** The same in the winter months only. */
  public double boughtInWinterMj(double winterGrowth) {
    double sum = 0;
    for (int season = 0; season < farm.feedYear().seasons().size(); season++) {
      feed.run(season, winterGrowth, 1, 1, feedNow);
      double chance = farm.feedYear().seasons().get(season).chance().likely();
      for (int p = 0; p < HalfMonths.COUNT; p++) {
        sum += year.isWinter(p) ? chance * feedNow.boughtMjPerHa[p] * areaHa : 0;
      }
    }
    return sum;
  }

  /** Money for one MJ of supplement, dry matter, energy and waste counted. */
  public double pricePerMj() {
    return pricePerMj;
  }

  /** Supplement that holds one MJ, t as fed. */
  public double tonnesPerMj() {
    return pricePerMj == 0 ? 0 : pricePerMj / x[supplementPrice];
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
    double supplement = boughtNowMjPerHa * areaHa * pricePerMj / farm.ewesJoined();
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
    return paths.strength(paddock, model.keep(), 0);
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

  /** Dose of one mob in a half-month as paddocks are grazed now, per cent of intake. */
  public double dose(int mob, int halfMonth) {
    return flock[mob].doseNow(halfMonth);
  }

  /** Formononetin of a paddock's green feed so many years after an action starts, % of intake. */
  public double greenDose(int paddock, int action, int yearsOn) {
    return paths.strength(paddock, action, yearsOn);
  }

  /** Feed that a paddock gives in a year relative to others; its share of the sum is its part. */
  public double feedWeight(int paddock) {
    return paddockWeight[paddock] * wholeYear(paddock, model.keep(), 0);
  }

  /**
   * Ewes of a mob that are not in lamb for the time being because of these doses, as a share of
   * those joined. Ewes barren for good are left out.
   *
   * @param doses % of dry matter eaten, by half-month (24) or by day (365)
   * @param joiningDay the day of the year the rams go in, from 0
   */
  public double lossOfJoining(int mob, double[] doses, int joiningDay) {
    return flock[mob].lossOfJoining(doses, joiningDay);
  }

  /** Ewes barren for good after one year at these doses by half-month, share of sound ewes. */
  public double barrenAfter(int mob, double[] doses) {
    return flock[mob].barrenAfter(doses);
  }

  /** Lambs that a ewe in lamb brings to marking. */
  public double lambsPerPregnantEwe(int mob) {
    return lambsPerPregnantEwe(farm.mobs().get(mob));
  }

  /** Money for one more ewe in lamb: her lambs, and what a dry ewe costs. */
  public double valuePerPregnantEwe(int mob) {
    return lambsPerPregnantEwe(mob) * x[lambValue] + x[dryEweCost];
  }

  /** Dose of a mob over its joining as paddocks are grazed now, per cent of intake. */
  public double doseAtJoining(int mob) {
    return flock[mob].doseAtJoining();
  }

  /** Ewes in lamb as a share of those joined, without oestrogen. */
  public double unaffectedShare(int mob) {
    return flock[mob].unaffectedShare();
  }

  /** The same as paddocks are grazed now. */
  public double pregnantShareNow(int mob) {
    return flock[mob].shareNow();
  }

  /** Sterile ewes as a share of those joined, as paddocks are grazed now. */
  public double sterileShareNow(int mob) {
    return flock[mob].sterileNow();
  }

  /** Lambs not marked in a year because of oestrogen, one mob. */
  public double lambsLost(int mob) {
    Mob of = farm.mobs().get(mob);
    double fewer = flock[mob].unaffectedShare() - flock[mob].shareNow();
    return fewer * of.ewes() * lambsPerPregnantEwe(of);
  }

  /** Money lost in a year because of oestrogen, one mob. */
  public double lambCost(int mob) {
    Mob of = farm.mobs().get(mob);
    double fewer = flock[mob].unaffectedShare() - flock[mob].shareNow();
    return fewer * of.ewes() * (lambsPerPregnantEwe(of) * x[lambValue] + x[dryEweCost]);
  }

  /** Costs of an action from start to end, undiscounted, per ha. */
  public double costPerHa(int paddock, int action, int start) {
    double sum = 0;
    for (int k = 0; k < years - start; k++) {
      sum += paths.costPerHa(paddock, action, k);
    }
    return sum;
  }

  /** Share of old cultivars in a paddock's clover in a year of a plan. */
  public double oldShare(Plan plan, int paddock, int t) {
    int k = t - plan.start(paddock);
    return k < 0
        ? paths.oldShare(paddock, model.keep(), 0)
        : paths.oldShare(paddock, plan.action(paddock), k);
  }

  /** One season of the feed budget at a winter growth. */
  public void feedYear(int season, double winterGrowth, FeedResult into) {
    feed.run(season, winterGrowth, 1, 1, into);
  }
}
