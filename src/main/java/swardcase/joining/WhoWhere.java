package swardcase.joining;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;
import swardcase.farm.Farm;
import swardcase.farm.HalfMonths;
import swardcase.farm.OtherStock;
import swardcase.farm.PaddockUse;
import swardcase.feed.EnergyMethod;
import swardcase.feed.StockDemand;
import swardcase.grazing.GrazingOrder;
import swardcase.grazing.GrazingSeason;
import swardcase.outcome.FarmModel;
import swardcase.outcome.OutcomeFunction;

/**
 * Where each mob is in its weeks before and during joining, by the coming year of the farm's plan,
 * at likely numbers and the mean of season types.
 *
 * <p>A mob keeps to its own paddocks that the plan leaves it; where they give less than it needs,
 * any other that is not shut to it. That is what the plan's figures rest on. Only where it would so
 * lose {@value #WORTH_TELLING} ewe in lamb per 100 or more, or where the plan grazes in order, is
 * it told which paddocks when, by {@link GrazingOrder} over all stock: the cleanest to those whom
 * it helps most, mobs apart. Then
 *
 * <ul>
 *   <li>a paddock in which a mob would be fewer than {@value #FEWEST_DAYS} days of a half-month is
 *       not named;
 *   <li>feed is bought only where the paddocks left to the stock are eaten down to half of what the
 *       feed budget leaves on the average paddock (inferred).
 * </ul>
 *
 * <p>Beyond {@value #MOST_PADDOCKS} paddocks none is named by half-month: a mob that is to be told
 * gets the cleanest of those open to it, by rising strength, until they hold what it needs.
 */
final class WhoWhere {

  static final int MOST_PADDOCKS = 40;
  static final int FEWEST_DAYS = 5;
  static final double WORTH_TELLING = 1;

  private static final double LEAST_LEFT = 0.5;

  /** A green dose from which feed counts as risky for stock with a limit, % of intake. */
  private static final double RISKY_DOSE = 0.15;

  /** Preference for weaker clover, and for a mob's own paddocks, as a share of the feed's price. */
  private static final double TIE = 1e-4;

  private static final double OWN = 1e-2;

  private final Farm farm;
  private final OutcomeFunction run;
  private final ComingYear coming;
  private final double[] strength;
  private final List<Integer> halfMonths;
  private final int mobs;
  private final FeedCourse feed;
  private final StockDemand demand;
  private final double weightOfAll;
  private final List<List<Stay>> stays = new ArrayList<>();
  private final double[][] strengthOf;

  /**
   * @param run a run at likely values
   * @param strength formononetin of each paddock's green feed as it is planned with, % of intake
   * @param halfMonths those of all mobs' weeks, in order
   */
  WhoWhere(
      FarmModel model,
      OutcomeFunction run,
      ComingYear coming,
      double[] strength,
      List<Integer> halfMonths) {
    farm = model.farm();
    this.run = run;
    this.coming = coming;
    this.strength = strength;
    this.halfMonths = halfMonths;
    mobs = farm.mobs().size();
    feed = new FeedCourse(model, run);
    double[] pregnant =
        farm.mobs().stream().mapToDouble(mob -> mob.pregnantPercent().likely() / 100).toArray();
    demand = new StockDemand(farm, model.tables(), EnergyMethod.SCA_1990, pregnant);
    weightOfAll = IntStream.range(0, strength.length).mapToDouble(run::feedWeight).sum();
    strengthOf = new double[mobs][HalfMonths.COUNT];
    List<Integer> told = new ArrayList<>();
    for (int g = 0; g < mobs; g++) {
      List<Integer> own = own(g);
      Arrays.fill(strengthOf[g], spread(g, own));
      stays.add(List.of(stay(g, own)));
      if (coming.inOrder() || lost(g) >= WORTH_TELLING) {
        told.add(g);
      }
    }
    if (!told.isEmpty()) {
      tell(told);
    }
  }

  /** Where a mob is, in order of time. */
  List<Stay> stays(int mob) {
    return stays.get(mob);
  }

  /** Strength of the clover of what a mob eats in a half-month of its weeks, % of green feed. */
  double strength(int mob, int halfMonth) {
    return strengthOf[mob][halfMonth];
  }

  private double lost(int mob) {
    return JoiningPlan.lostPer100(
        run, mob, p -> strengthOf[mob][p], run::greenShare, farm.mobs().get(mob));
  }

  private boolean isHeld(int mob, int p) {
    return run.flock(mob).isHeld(p);
  }

  private boolean isClosed(int mob, int p, int paddock) {
    return coming.isShut(paddock) || coming.isOff(mob, p, isHeld(mob, p), paddock);
  }

  private boolean isOwn(int mob, int paddock) {
    return farm.paddocks().get(paddock).isGrazedBy(farm.mobs().get(mob));
  }

  private boolean isEverClosed(int mob, int paddock) {
    return halfMonths.stream().anyMatch(p -> isHeld(mob, p) && isClosed(mob, p, paddock));
  }

  private List<Integer> own(int mob) {
    return paddocks().filter(i -> isOwn(mob, i) && !isEverClosed(mob, i)).boxed().toList();
  }

  private IntStream paddocks() {
    return IntStream.range(0, strength.length);
  }

  private double weight(List<Integer> paddocks) {
    return paddocks.stream().mapToDouble(run::feedWeight).sum();
  }

  private double mean(List<Integer> paddocks) {
    double all = weight(paddocks);
    double sum = paddocks.stream().mapToDouble(i -> run.feedWeight(i) * strength[i]).sum();
    return all > 0 ? sum / all : 0;
  }

  /** Strength of a mob's feed if it spreads over its own paddocks and then over others. */
  private double spread(int mob, List<Integer> own) {
    List<Integer> others =
        paddocks().filter(i -> !isOwn(mob, i) && !isEverClosed(mob, i)).boxed().toList();
    double part = run.feedNeeded(mob) > 0 ? Math.min(1, weight(own) / run.feedNeeded(mob)) : 1;
    return part * mean(own) + (1 - part) * mean(others);
  }

  /** All of a mob's weeks as one stay. */
  private Stay stay(int mob, List<Integer> own) {
    List<Integer> held = halfMonths.stream().filter(p -> isHeld(mob, p)).toList();
    boolean enough = weight(own) >= run.feedNeeded(mob) * (1 - 1e-9);
    boolean asNow = enough && paddocks().filter(i -> isOwn(mob, i)).count() == own.size();
    Stay.Where where =
        asNow
            ? Stay.Where.AS_NOW
            : own.isEmpty()
                ? Stay.Where.ANY_OPEN
                : enough ? Stay.Where.OWN : Stay.Where.OWN_THEN_ANY;
    return new Stay(
        held.get(0),
        held.get(held.size() - 1),
        where,
        where == Stay.Where.ANY_OPEN ? List.of() : own,
        0);
  }

  // Paddocks by half-month.

  private void tell(List<Integer> told) {
    if (strength.length > MOST_PADDOCKS) {
      told.forEach(this::cleanest);
      return;
    }
    GrazingSeason season = season();
    double[][][] eaten = GrazingOrder.eatenApartKg(season);
    told.forEach(g -> tell(g, eaten[g], season));
  }

  private void cleanest(int mob) {
    List<Integer> open =
        paddocks()
            .filter(i -> !isEverClosed(mob, i) && mayUse(mob, i))
            .boxed()
            .sorted((a, b) -> Double.compare(strength[a], strength[b]))
            .toList();
    List<Integer> taken = new ArrayList<>();
    for (int i : open) {
      if (weight(taken) < run.feedNeeded(mob)) {
        taken.add(i);
      }
    }
    Stay all = stays.get(mob).get(0);
    stays.set(mob, List.of(new Stay(all.from(), all.to(), Stay.Where.NAMED, taken, 0)));
    Arrays.fill(strengthOf[mob], mean(taken));
  }

  private void tell(int mob, double[][] eaten, GrazingSeason season) {
    double[] before = strengthOf[mob].clone();
    double lostBefore = lost(mob);
    List<Stay> found = new ArrayList<>();
    for (int k = 0; k < halfMonths.size(); k++) {
      int p = halfMonths.get(k);
      double need = season.needKg()[mob][k];
      if (!isHeld(mob, p) || need <= 0) {
        continue;
      }
      double[] days = Arrays.stream(eaten[k]).map(kg -> kg / need * HalfMonths.days(p)).toArray();
      double dose = 0;
      for (int i = 0; i < days.length; i++) {
        dose += days[i] / HalfMonths.days(p) * strength[i];
      }
      strengthOf[mob][p] = dose;
      double bought = Math.max(0, need - Arrays.stream(eaten[k]).sum()) * feed.energyMjPerKg(p);
      Stay here =
          run.isGreen(p)
              ? new Stay(p, p, Stay.Where.NAMED, named(days), bought)
              : new Stay(p, p, Stay.Where.ANY_OPEN, List.of(), bought);
      int last = found.size() - 1;
      if (last >= 0 && found.get(last).isLike(here)) {
        found.set(last, found.get(last).until(here));
      } else {
        found.add(here);
      }
    }
    if (lostBefore - lost(mob) >= WORTH_TELLING / 2) {
      stays.set(mob, found);
    } else {
      strengthOf[mob] = before;
    }
  }

  /** Paddocks with a stay worth a move; where there is none, all of them in turn. */
  private List<Integer> named(double[] days) {
    List<Integer> named = paddocks().filter(i -> days[i] >= FEWEST_DAYS).boxed().toList();
    return named.isEmpty() ? paddocks().filter(i -> days[i] >= 1).boxed().toList() : named;
  }

  private boolean mayUse(int mob, int paddock) {
    return isOwn(mob, paddock) || farm.mobs().get(mob).mayMove();
  }

  /** Feed and needs of all stock; see {@link GrazingSeason}. */
  private GrazingSeason season() {
    int count = halfMonths.size();
    List<OtherStock> others = farm.otherStock();
    int groups = mobs + others.size();
    double[][] left = new double[strength.length][count];
    double[][] kept = new double[strength.length][count];
    double[][] risk = new double[count][strength.length];
    for (int i = 0; i < strength.length; i++) {
      feedAtStart(i, left[i], kept[i]);
    }
    double[][] need = new double[groups][count];
    double[] price = new double[count];
    for (int k = 0; k < count; k++) {
      int p = halfMonths.get(k);
      double energy = feed.energyMjPerKg(p);
      price[k] = energy * run.pricePerMj();
      for (int i = 0; i < strength.length; i++) {
        risk[k][i] = strength[i] * run.greenShare(p) >= RISKY_DOSE ? HalfMonths.days(p) : 0;
      }
      for (int g = 0; g < groups && energy > 0; g++) {
        need[g][k] = feed.pastureShare(p) * HalfMonths.days(p) * needMjPerDay(g, p) / energy;
      }
    }
    double[] mostShare = new double[groups];
    Arrays.fill(mostShare, Double.POSITIVE_INFINITY);
    for (int o = 0; o < others.size(); o++) {
      int group = mobs + o;
      others.get(o).mostRiskyDays().ifPresent(days -> mostShare[group] = days.likely());
    }
    return new GrazingSeason(
        left, kept, need, losses(need, price), price, strength, mostShare, risk);
  }

  /** Feed of one paddock at the measure of the first half-month, and what decay leaves of a kg. */
  private void feedAtStart(int i, double[] into, double[] keptSince) {
    double part = farm.areaHa() * run.feedWeight(i) / weightOfAll;
    double left = part * feed.endKg(Math.floorMod(halfMonths.get(0) - 1, HalfMonths.COUNT));
    double decayed = 1;
    for (int k = 0; k < into.length; k++) {
      int p = halfMonths.get(k);
      keptSince[k] = decayed;
      decayed *= feed.kept(p);
      left = feed.kept(p) * (left + part * feed.grownKg(p));
      into[k] = Math.max(0, left - LEAST_LEFT * part * feed.endKg(p)) / decayed;
    }
  }

  /** Money lost by a kg eaten there, below the price of feed, so that feed is bought last. */
  private double[][][] losses(double[][] need, double[] price) {
    double[][][] loss = new double[need.length][price.length][strength.length];
    double strongest = Math.max(1e-9, Arrays.stream(strength).max().orElse(0));
    double most = 0;
    for (int g = 0; g < mobs; g++) {
      for (int k = 0; k < price.length; k++) {
        chords(g, k, need[g][k], loss[g][k]);
        most = Math.max(most, Arrays.stream(loss[g][k]).max().orElse(0) / price[k]);
      }
    }
    double scale = most > 0 ? Math.min(1, (1 - 2 * OWN) / most) : 1;
    for (int g = 0; g < need.length; g++) {
      for (int k = 0; k < price.length; k++) {
        for (int i = 0; i < strength.length; i++) {
          double tie = g < mobs ? TIE * strength[i] / strongest + (isOwn(g, i) ? 0 : OWN) : 0;
          boolean open = isOpenTo(g, halfMonths.get(k), i);
          loss[g][k][i] = open ? scale * loss[g][k][i] + price[k] * tie : Double.POSITIVE_INFINITY;
        }
      }
    }
    return loss;
  }

  /** Money a kg that a mob eats in one paddock costs, on safe feed at all other times. */
  private void chords(int mob, int k, double needKg, double[] into) {
    int p = halfMonths.get(k);
    if (!isHeld(mob, p) || needKg <= 0) {
      return;
    }
    double[] doses = new double[HalfMonths.COUNT];
    int day = HalfMonths.dayOfYear(farm.mobs().get(mob).joiningStart());
    double worth = farm.mobs().get(mob).ewes() * run.valuePerPregnantEwe(mob) / needKg;
    for (int i = 0; i < into.length; i++) {
      doses[p] = strength[i] * run.greenShare(p);
      into[i] = worth * run.flock(mob).lossOfJoining(doses, day);
    }
  }

  private boolean isOpenTo(int group, int p, int paddock) {
    if (group < mobs) {
      return !isClosed(group, p, paddock) && mayUse(group, paddock);
    }
    boolean ofOthers = farm.paddocks().get(paddock).use() == PaddockUse.OTHER_STOCK;
    return !coming.isShut(paddock) && (ofOthers || farm.otherStock().get(group - mobs).mayMove());
  }

  private double needMjPerDay(int group, int p) {
    if (group < mobs) {
      return demand.mobMjPerDay(group, p);
    }
    OtherStock stock = farm.otherStock().get(group - mobs);
    double all = 0;
    for (OtherStock other : farm.otherStock()) {
      all += other.months().contains(HalfMonths.month(p)) ? units(other) : 0;
    }
    return stock.months().contains(HalfMonths.month(p)) && all > 0
        ? demand.otherMjPerDay(p) * units(stock) / all
        : 0;
  }

  private static double units(OtherStock stock) {
    return stock.head() * stock.dsePerHead().likely();
  }
}
