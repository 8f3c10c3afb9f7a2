package swardcase.outcome;

import java.util.List;
import java.util.function.IntToDoubleFunction;
import swardcase.evidence.UncertainNumbers;
import swardcase.farm.Farm;
import swardcase.farm.Mob;
import swardcase.feed.FeedSurface;
import swardcase.feed.SupplementCost;
import swardcase.grazing.InOrder;
import swardcase.grazing.JoiningWindow;
import swardcase.reproduction.DryEweSale;
import swardcase.reproduction.FlockEffect;

/**
 * What a year brings, in money, from its {@link YearSums}, in one run: feed and ewes against the
 * farm as it stands.
 */
final class YearMoney {

  static final String SUPPLEMENT_ENERGY = "supplement.energy";
  static final String SUPPLEMENT_DRY_MATTER = "supplement.dry-matter";
  static final String SUPPLEMENT_WASTE = "supplement.waste";
  static final String EWE_MARGIN = "price.ewe-margin";
  static final String EWE_PRICE = "price.ewe";
  static final String SPARE_FEED_VALUE = "price.spare-feed";
  static final String REACHED = "grazing.reached";
  static final String NITROGEN_PRICE = "price.nitrogen";
  static final String NITROGEN_FIXED = "clover.nitrogen-fixed";
  private static final DryEweSale.Rule[] SALE_RULES = DryEweSale.Rule.values();

  /** Less feed than that of a square millimetre is what rounding leaves of none. */
  private static final double NOTHING_HA = 1e-10;

  private final FlockEffect[] flock;
  private final DryEweSale[] dryEweSale;
  private final FeedSurface feed;
  private final JoiningWindow window;
  private final InOrder inOrder;
  private final ChoiceSums choices;
  private final IntToDoubleFunction needed;
  private final int[] seasonOfYear;
  private final int[] ewes;
  private final int ewesJoined;
  private final double areaHa;
  private final double growthKgDmPerHa;
  private final boolean runMoreEwes;
  private final double[] lambsPerEwe;
  private final double[] valueOfShare;
  private final double[] enoughHeld;
  private final double[] enoughGreen;
  private final double[] inLamb;
  private final double[] unaffected;
  private final double[] boughtNowMjPerHa;
  private final double[] spareNowKgDmPerHa;

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
  private final int reached;
  private final int nitrogenFixed;
  private final int nitrogenPrice;

  private double[] x;
  private double legumeNow;
  private double lambFeedNow;
  private double pricePerMj;
  private double tonnesPerMj;

  /**
   * The money of a farm.
   *
   * @param seasonOfYear season type of each year of the run, which is told there
   */
  YearMoney(
      FarmModel model,
      FlockEffect[] flock,
      DryEweSale[] dryEweSale,
      FeedSurface feed,
      JoiningWindow window,
      InOrder inOrder,
      ChoiceSums choices,
      int[] seasonOfYear) {
    this.flock = flock;
    this.dryEweSale = dryEweSale;
    this.feed = feed;
    this.window = window;
    this.inOrder = inOrder;
    this.choices = choices;
    this.seasonOfYear = seasonOfYear;
    needed = window::needed;
    Farm farm = model.farm();
    List<Mob> mobs = farm.mobs();
    ewes = mobs.stream().mapToInt(Mob::ewes).toArray();
    ewesJoined = farm.ewesJoined();
    areaHa = farm.areaHa();
    growthKgDmPerHa = model.year().growthKgDmPerHa();
    runMoreEwes = model.runMoreEwes();
    lambsPerEwe = mobs.stream().mapToDouble(OutcomeFunction::lambsPerPregnantEwe).toArray();
    valueOfShare = new double[flock.length];
    enoughHeld = new double[flock.length];
    enoughGreen = new double[flock.length];
    inLamb = new double[flock.length];
    unaffected = new double[flock.length];
    boughtNowMjPerHa = new double[feed.meanOfSeasons() + 1];
    spareNowKgDmPerHa = new double[boughtNowMjPerHa.length];
    UncertainNumbers numbers = model.inputs();
    discountRate = numbers.place(OutcomeFunction.DISCOUNT_RATE);
    supplementPrice = numbers.place(OutcomeFunction.SUPPLEMENT_PRICE);
    supplementEnergy = numbers.place(SUPPLEMENT_ENERGY);
    supplementDryMatter = numbers.place(SUPPLEMENT_DRY_MATTER);
    supplementWaste = numbers.place(SUPPLEMENT_WASTE);
    lambValue = numbers.place(OutcomeFunction.LAMB_VALUE);
    dryEweCost = numbers.place(OutcomeFunction.DRY_EWE_COST);
    eweMargin = numbers.place(EWE_MARGIN);
    ewePrice = numbers.place(EWE_PRICE);
    spareFeedValue = numbers.place(SPARE_FEED_VALUE);
    reached = numbers.place(REACHED);
    nitrogenFixed = numbers.place(NITROGEN_FIXED);
    nitrogenPrice = numbers.place(NITROGEN_PRICE);
  }

  /** Takes the numbers of a run, and the sums of growth with every paddock kept. */
  void set(double[] assumptions, double[] grown) {
    x = assumptions;
    tonnesPerMj =
        1
            / SupplementCost.energyMjPerTonne(
                x[supplementEnergy], x[supplementDryMatter], x[supplementWaste]);
    pricePerMj = tonnesPerMj * x[supplementPrice];
    legumeNow = legume(grown, 0);
  }

  /** Takes the ewes as paddocks are grazed now, and their feed, which hangs on it. */
  void setEwes(double[] kept, double[] greenShare, double strongest) {
    for (int g = 0; g < flock.length; g++) {
      enoughHeld[g] = Math.min(kept[YearSums.at(g, YearSums.SAFE)], window.needed(g));
      enoughGreen[g] = window.usedInWinter() * kept[YearSums.at(g, YearSums.SAFE_GREEN)];
      valueOfShare[g] = ewes[g] * valuePerPregnantEwe(g);
      flock[g].set(x, greenShare, strength(kept, 0, g), strongest);
      dryEweSale[g].set(x, flock[g].sparedNow());
    }
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
      boughtNowMjPerHa[season] = feed.bought(season, choices.winterNow(), 1);
      spareNowKgDmPerHa[season] = feed.spare(season, choices.winterNow(), 1);
    }
  }

  /** Share of each mob's ewes in lamb as the farm states it. */
  double[] statedInLamb() {
    for (int g = 0; g < flock.length; g++) {
      inLamb[g] = flock[g].statedShare(x);
    }
    return inLamb;
  }

  /** Takes the share of each mob's ewes in lamb by which the feed of the farm is reckoned. */
  void readInLamb(double[] into) {
    System.arraycopy(inLamb, 0, into, 0, inLamb.length);
  }

  /**
   * Fills a year of {@code out} from the year's sums, which stand from {@code at} on. Years must be
   * asked for in rising order from 0, because ewes carry earlier years with them.
   */
  void evaluate(int t, double[] of, int at, Outcome out) {
    double lost = lost(of, at);
    double w = of[at + YearSums.WINTER] / choices.weightSum() - lost;
    double o = of[at + YearSums.OTHER] / choices.weightSum() - lost;
    out.actionCost[t] = of[at + YearSums.COST];
    out.labourCost[t] = of[at + YearSums.LABOUR];
    out.cropMargin[t] = of[at + YearSums.MARGIN];
    double inLambNext = ratio(evaluateEwes(t, of, at, out), lambFeedNow, 1);
    evaluateFeed(t, w, o, inLambNext, legume(of, at), out);
    if (x[nitrogenPrice] > 0) {
      double moreClover = of[at + YearSums.CLOVER] - choices.kept()[YearSums.CLOVER];
      out.spareFeed[t] += nitrogenKg(moreClover) * x[nitrogenPrice];
    }
  }

  /** Gives the feed that ewes need for being in lamb. */
  private double evaluateEwes(int t, double[] of, int at, Outcome out) {
    double gain = 0;
    double lambFeed = 0;
    double lambs = 0;
    double ewesInLamb = 0;
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
      ewesInLamb += more * ewes[g];
      lambs += more * ewes[g] * lambsPerEwe[g];
      gain += more * valueOfShare[g];
      gain -= sold > 0 ? ewes[g] * costOfSale(g) : 0;
    }
    out.ewesInLamb[t] = ewesInLamb;
    out.lambs[t] = lambs;
    out.lambsSaved[t] = gain;
    return lambFeed;
  }

  private double costOfSale(int g) {
    return dryEweSale[g].costPerEwe(lambsPerEwe[g] * x[lambValue], x[dryEweCost]);
  }

  /**
   * More ewes are run on what more growth saves; what the others eat more is bought all the same.
   */
  private void evaluateFeed(
      int t, double w, double o, double inLambNext, double legume, Outcome out) {
    int season = seasonOfYear[t];
    boolean carriesMore = runMoreEwes && feed.bought(w, o) < boughtNowMjPerHa[feed.meanOfSeasons()];
    double without = carriesMore ? feed.bought(season, w, o) : boughtNowMjPerHa[season];
    double boughtMjPerHa = feed.bought(season, w, o, inLambNext, legume);
    out.supplementSaved[t] = (without - boughtMjPerHa) * areaHa * pricePerMj;
    double ofMoreEwes = carriesMore ? gainOfMoreEwes(feed.extraEwes(w, o) * ewesJoined) : 0;
    double ofSpareFeed = 0;
    if (x[spareFeedValue] != 0) {
      double more = feed.spare(season, w, o, inLambNext, legume) - spareNowKgDmPerHa[season];
      ofSpareFeed = more * areaHa / 1000 * x[spareFeedValue];
    }
    out.spareFeed[t] = ofMoreEwes + ofSpareFeed;
  }

  /** Yearly gain of so many more ewes, supplement and the capital in them paid. */
  double gainOfMoreEwes(double more) {
    if (ewesJoined == 0) {
      return 0;
    }
    double boughtMj = boughtNowMjPerHa[feed.meanOfSeasons()] * areaHa;
    double supplement = boughtMj * pricePerMj / ewesJoined;
    return more * (x[eweMargin] - supplement - x[ewePrice] * x[discountRate]);
  }

  /** Growth that nobody eats because of use rules, as a share of the farm's in a year. */
  private double lost(double[] of, int at) {
    double weightSum = choices.weightSum();
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

  private static double withElse(
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

  /** Clover share of the farm's feed; a farm without feed has the clover of now. */
  private double legume(double[] of, int at) {
    return ratio(of[at + YearSums.CLOVER], choices.taken(of, at), legumeNow);
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
  double nitrogenKg(double clover) {
    return clover * growthKgDmPerHa / 1000 * x[nitrogenFixed];
  }

  /** Clover share of what the farm's stock eat now. */
  double legumeNow() {
    return legumeNow;
  }

  double pricePerMj() {
    return pricePerMj;
  }

  double tonnesPerMj() {
    return tonnesPerMj;
  }

  /** Money if all ewes of a mob were in lamb that otherwise none would be. */
  double valueOfShare(int g) {
    return valueOfShare[g];
  }

  double lambsPerPregnantEwe(int g) {
    return lambsPerEwe[g];
  }

  /** Money for one more ewe in lamb: her lambs, and what a dry ewe costs. */
  double valuePerPregnantEwe(int g) {
    return lambsPerEwe[g] * x[lambValue] + x[dryEweCost];
  }

  /** Money that a mob's dry ewes cost in a year if none is in lamb. */
  double costIfAllDry(int g) {
    return ewes[g] * x[dryEweCost];
  }

  int ewes(int g) {
    return ewes[g];
  }

  /** Feed that a mob must find in its weeks before joining, in the unit of its sums. */
  double enoughHeld(int g) {
    return enoughHeld[g];
  }

  /** The same in winter. */
  double enoughGreen(int g) {
    return enoughGreen[g];
  }
}
