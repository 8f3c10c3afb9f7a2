package swardcase.feed;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.List;
import java.util.SplittableRandom;
import java.util.stream.IntStream;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;
import swardcase.FarmCopy;
import swardcase.RandomFarms;
import swardcase.evidence.UncertainNumbers;
import swardcase.farm.Farm;
import swardcase.farm.HalfMonths;
import swardcase.farm.SeasonType;
import swardcase.outcome.FarmModel;
import swardcase.search.PlanFarms;
import swardcase.tables.Tables;

/** Against the feed budget itself, run for each question from its own start. */
class FeedSurfaceTest {

  private static final Tables TABLES = PlanFarms.TABLES;

  /** Pools of the grid end a year within 0.001 kg of where they began it: some hundredths of MJ. */
  private static final Offset<Double> NEAR = within(0.05);

  /** A farm with a surface and with the budget beside it. */
  private static final class Case {

    final Farm farm;
    final GrowthYear year;
    final UncertainNumbers inputs;
    final StockDemand demand;
    final FeedBudget budget;
    final FeedSurface surface;
    final double[] inLamb;
    double[] x;
    double winterNow;
    double legume = 0.3;

    Case(Farm farm, boolean runMoreEwes) {
      this.farm = farm;
      year = new GrowthYear(farm);
      FarmModel model = PlanFarms.model(farm);
      inputs = model.inputs();
      demand = model.demand();
      budget = model.budget();
      surface = new FeedSurface(farm, model.tables(), year, inputs, demand, budget, runMoreEwes);
      x = inputs.likely();
      inLamb =
          farm.mobs().stream().mapToDouble(mob -> mob.pregnantPercent().likely() / 100).toArray();
    }

    void set(double[] assumptions, double winter) {
      x = assumptions;
      winterNow = winter;
      surface.set(x, winter, legume, inLamb);
    }

    private double number(String key) {
      return x[inputs.place(key)];
    }

    FeedResult run(int season, double w, double o, double ewes) {
      return run(season, w, o, ewes, 1, legume);
    }

    /** The same with so many times the ewes in lamb, and another share of clover. */
    FeedResult run(int season, double w, double o, double ewes, double timesInLamb, double clover) {
      FeedParameters parameters = FeedParameters.likely(farm, TABLES);
      for (FeedNumber number : FeedNumber.values()) {
        parameters.set(number, number(number.key()));
      }
      if (farm.feedYear().seasons().get(season).breakMoves().isPresent()) {
        SeasonType type = SeasonType.values()[season];
        double moves = number("season.break-" + type.label());
        parameters.setBreak(season, type.laterBreak() * moves);
      }
      for (int mob = 0; mob < inLamb.length; mob++) {
        parameters.setInLamb(mob, timesInLamb * inLamb[mob]);
      }
      parameters.setLegumeShare(clover);
      double[] multiplier = new double[HalfMonths.COUNT];
      for (int p = 0; p < multiplier.length; p++) {
        multiplier[p] = year.isWinter(p) ? w : o;
      }
      FeedResult result = new FeedResult();
      budget.run(season, multiplier, budget.rates(parameters, ewes), result);
      return result;
    }

    int seasons() {
      return farm.feedYear().seasons().size();
    }

    double chance(int season) {
      return farm.feedYear().seasons().get(season).chance().likely();
    }

    /** Energy bought for each ewe at a multiple of ewe numbers, MJ a year, mean of seasons. */
    double perEwe(double w, double o, double ewes) {
      double sum = 0;
      for (int season = 0; season < seasons(); season++) {
        sum += chance(season) * FeedSums.bought(run(season, w, o, ewes));
      }
      return sum * farm.areaHa() / (farm.ewesJoined() * ewes);
    }
  }

  private static Case anyCase(SplittableRandom random, boolean runMoreEwes) {
    Case any = new Case(RandomFarms.any(random), runMoreEwes);
    any.legume = random.nextDouble(0.05, 0.7);
    Arrays.setAll(any.inLamb, mob -> random.nextDouble(0.3, 0.95));
    any.set(RandomFarms.draw(any.inputs.all(), random), random.nextDouble(0.6, 1));
    return any;
  }

  @Test
  void surface_atItsNodes_isTheBudgetOfTheSeason() {
    SplittableRandom random = new SplittableRandom(71);
    for (int round = 0; round < 6; round++) {
      Case any = anyCase(random, false);
      double[] winter = any.surface.winterNodes();
      double[] other = FeedSurface.otherNodes();
      for (int draw = 0; draw < 12; draw++) {
        int season = random.nextInt(any.seasons());
        double w = draw == 0 ? winter[winter.length - 1] : winter[random.nextInt(winter.length)];
        double o = draw == 1 ? other[other.length - 1] : other[random.nextInt(other.length)];
        FeedResult budget = any.run(season, w, o, 1);
        assertThat(any.surface.bought(season, w, o)).isCloseTo(FeedSums.bought(budget), NEAR);
        assertThat(any.surface.spare(season, w, o)).isCloseTo(FeedSums.uneaten(budget), NEAR);
      }
    }
  }

  @Test
  void surface_asTheFarmStandsAndWithCurrentCultivars_isExact() {
    SplittableRandom random = new SplittableRandom(72);
    for (int round = 0; round < 6; round++) {
      Case any = anyCase(random, false);
      FeedResult result = new FeedResult();
      for (int season = 0; season < any.seasons(); season++) {
        FeedResult asItStands = any.run(season, any.winterNow, 1, 1);
        FeedResult current = any.run(season, 1, 1, 1);
        assertThat(any.surface.bought(season, any.winterNow, 1))
            .isCloseTo(FeedSums.bought(asItStands), NEAR);
        assertThat(any.surface.bought(season, 1, 1)).isCloseTo(FeedSums.bought(current), NEAR);
        FeedResult now = any.surface.now(season);
        for (int p = 0; p < HalfMonths.COUNT; p++) {
          assertThat(now.greenKgDmPerHa[p]).isCloseTo(asItStands.greenKgDmPerHa[p], within(1e-4));
          assertThat(now.dryKgDmPerHa[p]).isCloseTo(asItStands.dryKgDmPerHa[p], within(1e-4));
        }
        double w = random.nextDouble(0.3, 1.2);
        double o = random.nextDouble(0.3, 1.2);
        any.surface.run(season, w, o, result);
        assertThat(result.boughtMjPerHa).isEqualTo(any.run(season, w, o, 1).boughtMjPerHa);
      }
    }
  }

  @Test
  void surface_overSeasons_isTheirMeanByChance() {
    SplittableRandom random = new SplittableRandom(73);
    for (int round = 0; round < 6; round++) {
      Case any = anyCase(random, false);
      FeedSurface surface = any.surface;
      double w = random.nextDouble(0.5, 1.1);
      double o = random.nextDouble(0.5, 1.1);
      double bought = 0;
      double spare = 0;
      for (int season = 0; season < any.seasons(); season++) {
        bought += any.chance(season) * FeedSums.bought(any.run(season, 1, 0.9, 1));
        spare += any.chance(season) * FeedSums.uneaten(any.run(season, 1, 0.9, 1));
      }
      assertThat(surface.spare(surface.meanOfSeasons(), 1, 0.9))
          .as("asked for before what is bought")
          .isCloseTo(spare, NEAR);
      assertThat(surface.bought(1, 0.9)).isCloseTo(bought, NEAR);
      double read = surface.bought(w, o);
      double mean = 0;
      for (int season = 0; season < any.seasons(); season++) {
        mean += any.chance(season) * surface.bought(season, w, o);
      }
      assertThat(read).isCloseTo(mean, within(1e-9 * (1 + mean)));
      assertThat(surface.bought(surface.meanOfSeasons(), w, o)).isEqualTo(read);
    }
  }

  @Test
  void surface_betweenNodes_liesOnStraightLines() {
    SplittableRandom random = new SplittableRandom(74);
    for (int round = 0; round < 4; round++) {
      Case any = anyCase(random, false);
      FeedSurface surface = any.surface;
      double[] winter = surface.winterNodes();
      double[] other = FeedSurface.otherNodes();
      for (int draw = 0; draw < 20; draw++) {
        int season = random.nextInt(any.seasons() + 1);
        int a = random.nextInt(winter.length - 1);
        int b = random.nextInt(other.length - 1);
        double u = random.nextInt(3) == 0 ? random.nextInt(2) : random.nextDouble();
        double v = random.nextInt(3) == 0 ? random.nextInt(2) : random.nextDouble();
        double w = winter[a] + u * (winter[a + 1] - winter[a]);
        double o = other[b] + v * (other[b + 1] - other[b]);
        double read = surface.bought(season, w, o);
        double line =
            (1 - u) * (1 - v) * surface.bought(season, winter[a], other[b])
                + u * (1 - v) * surface.bought(season, winter[a + 1], other[b])
                + (1 - u) * v * surface.bought(season, winter[a], other[b + 1])
                + u * v * surface.bought(season, winter[a + 1], other[b + 1]);
        assertThat(read).isCloseTo(line, within(1e-9 * (1 + line)));
      }
    }
  }

  @Test
  void surface_ofOtherEwesInLambOrOtherClover_isTheBudgetsAtTheEndOfItsLines() {
    SplittableRandom random = new SplittableRandom(78);
    int alike = 0;
    for (int round = 0; round < 8; round++) {
      Case any = anyCase(random, false);
      FeedSurface surface = any.surface;
      double now = any.winterNow;
      double most = random.nextDouble(1.1, 1.8);
      boolean anyEwes = any.farm.ewesJoined() > 0;
      surface.settle(any.inLamb, times(most, any.inLamb));
      double less = any.legume < 0.1 ? any.legume + 0.1 : any.legume - 0.1;
      for (int season = 0; season < any.seasons(); season++) {
        double bought = surface.bought(season, now, 1);
        int of = season;
        if (IntStream.range(0, any.seasons())
            .anyMatch(other -> other != of && surface.bought(other, now, 1) == bought)) {
          alike++;
          continue;
        }
        FeedResult more = any.run(season, now, 1, 1, anyEwes ? most : 1, any.legume);
        FeedResult poorer = any.run(season, now, 1, 1, 1, less);
        assertThat(surface.bought(season, now, 1, anyEwes ? most : 1, any.legume))
            .isCloseTo(FeedSums.bought(more), NEAR);
        assertThat(surface.spare(season, now, 1, anyEwes ? most : 1, any.legume))
            .isCloseTo(FeedSums.uneaten(more), NEAR);
        assertThat(surface.bought(season, now, 1, 1, less))
            .isCloseTo(FeedSums.bought(poorer), NEAR);
        assertThat(surface.spare(season, now, 1, 1, less))
            .isCloseTo(FeedSums.uneaten(poorer), NEAR);
        assertThat(surface.bought(season, 0.8, 0.9, 1, any.legume))
            .isEqualTo(surface.bought(season, 0.8, 0.9));
      }
    }
    assertThat(alike).as("seasons in which nothing is bought share one slope").isLessThan(8);
  }

  @Test
  void surface_settledAtOtherShares_isThatOfAFarmThatGivesThem() {
    SplittableRandom random = new SplittableRandom(79);
    int alone = 0;
    for (int round = 0; round < 6; round++) {
      Case any = anyCase(random, false);
      double before = any.surface.bought(0.9, 0.95);
      any.surface.settle(times(0.8, any.inLamb), any.inLamb);
      for (int season = 0; season < any.seasons(); season++) {
        FeedResult budget = any.run(season, any.winterNow, 1, 1, 0.8, any.legume);
        FeedResult most = any.run(season, any.winterNow, 1, 1, 1, any.legume);
        boolean anyEwes = any.farm.ewesJoined() > 0;
        int of = season;
        double bought = any.surface.bought(season, any.winterNow, 1);
        boolean isAlone =
            IntStream.range(0, any.seasons())
                .noneMatch(o -> o != of && any.surface.bought(o, any.winterNow, 1) == bought);
        if (isAlone) {
          alone++;
          assertThat(any.surface.bought(season, any.winterNow, 1, anyEwes ? 1.25 : 1, any.legume))
              .isCloseTo(FeedSums.bought(most), NEAR);
        }
        assertThat(any.surface.bought(season, any.winterNow, 1))
            .isCloseTo(FeedSums.bought(budget), NEAR);
        assertThat(FeedSums.bought(any.surface.now(season)))
            .isCloseTo(FeedSums.bought(budget), within(1e-4));
      }
      any.set(any.x, any.winterNow);
      assertThat(any.surface.bought(0.9, 0.95)).as("set anew").isEqualTo(before);
    }
    assertThat(alone).as("seasons that share their slope with no other").isGreaterThan(6);
  }

  @Test
  void surface_ofMoreEwesInLamb_neverBuysLess() {
    SplittableRandom random = new SplittableRandom(81);
    for (int round = 0; round < 20; round++) {
      Case any = anyCase(random, false);
      any.surface.settle(any.inLamb, times(random.nextDouble(1, 1.5), any.inLamb));
      for (int draw = 0; draw < 10; draw++) {
        int season = random.nextInt(any.seasons() + 1);
        double w = random.nextDouble(0.5, 1.1);
        double o = random.nextDouble(0.5, 1.05);
        double few = random.nextDouble(0.5, 1.3);
        double more = random.nextDouble(few, 1.5);
        assertThat(any.surface.bought(season, w, o, more, any.legume))
            .isGreaterThanOrEqualTo(any.surface.bought(season, w, o, few, any.legume) - 0.05);
      }
    }
  }

  /**
   * How far the surface is from the budget where ewes in lamb, clover and growth differ together,
   * as they do in the years of a plan: printed in docs/method/feed-budget.md.
   */
  @Test
  void surface_whereAllDiffer_errsByLittle() {
    SplittableRandom random = new SplittableRandom(80);
    double[] growth = new double[3];
    double[] slopes = new double[3];
    for (String name :
        List.of("mixed-farm", "risky-farm", "large-farm", "northern-farm", "current-farm")) {
      Case demo = new Case(PlanFarms.demo(name), false);
      for (int draw = 0; draw < 40; draw++) {
        demo.legume = random.nextDouble(0.15, 0.5);
        Arrays.setAll(demo.inLamb, mob -> random.nextDouble(0.6, 0.9));
        demo.set(RandomFarms.draw(demo.inputs.all(), random), random.nextDouble(0.8, 1));
        double most = random.nextDouble(1.02, 1.3);
        demo.surface.settle(demo.inLamb, times(most, demo.inLamb));
        for (int year = 0; year < 6; year++) {
          int season = random.nextInt(demo.seasons());
          double w = random.nextDouble(0.7, 1) * (year < 3 ? demo.winterNow : 1);
          double o = random.nextDouble(0.8, 1);
          double lambs = random.nextDouble(0.97, most);
          double clover = demo.legume + random.nextDouble(-0.1, 0.1);
          double now = FeedSums.bought(demo.surface.now(season));
          FeedResult plain = demo.run(season, w, o, 1);
          FeedResult then = demo.run(season, w, o, 1, lambs, clover);
          double read = demo.surface.bought(season, w, o);
          double more = demo.surface.bought(season, w, o, lambs, clover) - read;
          add(growth, read - now, FeedSums.bought(plain) - now);
          add(slopes, more, FeedSums.bought(then) - FeedSums.bought(plain));
        }
      }
    }
    assertThat(growth[0]).as("mean error of growth, MJ/ha").isLessThan(7);
    assertThat(growth[2]).as("of a mean effect").isGreaterThan(400);
    assertThat(slopes[0]).as("of ewes in lamb and clover, MJ/ha").isLessThan(12);
    assertThat(slopes[2]).as("of a mean effect").isGreaterThan(110);
    assertThat(Math.abs(slopes[1])).as("on one side, MJ/ha").isLessThan(7);
  }

  private static double[] times(double times, double[] shares) {
    return Arrays.stream(shares).map(share -> times * share).toArray();
  }

  /** Means of 1,200: of the error, of the error with its sign, and of the effect. */
  private static void add(double[] means, double read, double budget) {
    means[0] += Math.abs(read - budget) / 1200;
    means[1] += (read - budget) / 1200;
    means[2] += Math.abs(budget) / 1200;
  }

  @Test
  void surface_outsideItsNodes_holdsTheEdge() {
    Case any = anyCase(new SplittableRandom(75), false);
    FeedSurface surface = any.surface;
    double[] winter = surface.winterNodes();
    double[] other = FeedSurface.otherNodes();
    double least = winter[0];
    double most = winter[winter.length - 1];
    assertThat(surface.bought(0.1, 0.9)).isEqualTo(surface.bought(least, 0.9));
    assertThat(surface.bought(1.9, 0.9)).isEqualTo(surface.bought(most, 0.9));
    assertThat(surface.bought(0.8, 0.1)).isEqualTo(surface.bought(0.8, other[0]));
    assertThat(surface.bought(0.8, 1.9)).isEqualTo(surface.bought(0.8, other[other.length - 1]));
  }

  @Test
  void winterNodes_ofAnyFarm_riseAndHoldItsOwnGrowthAndTheFullOne() {
    Case any = new Case(PlanFarms.demo("mixed-farm"), false);
    for (double now : new double[] {0.3, 0.8, 0.9999, 1, 1.03, 1.4}) {
      any.set(any.x, now);
      double[] nodes = any.surface.winterNodes();
      assertThat(nodes).contains(Math.min(now, 1), 1);
      for (int k = 1; k < nodes.length; k++) {
        assertThat(nodes[k]).isGreaterThan(nodes[k - 1]);
      }
      assertThat(nodes[0]).isCloseTo(0.35 * Math.min(now, 1), within(1e-12));
      assertThat(nodes[nodes.length - 1]).isGreaterThanOrEqualTo(Math.max(1.05, now));
    }
    any.set(any.x, 0.8);
    assertThat(any.surface.winterNodes()).contains(new double[] {0.9}, within(1e-12));
  }

  /** Every number of the run on its own: what was solved for another is forgotten. */
  @Test
  void set_anotherNumber_forgetsWhatWasSolved() {
    Case used = new Case(PlanFarms.demo("mixed-farm"), true);
    for (int k = -1; k < used.inputs.size(); k++) {
      used.set(used.inputs.likely(), 0.8);
      assertThat(used.surface.bought(1, 0.9)).isPositive();
      assertThat(used.surface.extraEwes(1, 1)).isPositive();
      double[] x = used.inputs.likely();
      if (k >= 0) {
        x[k] *= 0.9;
      }
      double now = k < 0 ? 0.85 : 0.8;
      used.set(x, now);
      Case fresh = new Case(used.farm, true);
      fresh.set(x, now);
      assertThat(used.surface.spare(0, 1, 0.9)).isEqualTo(fresh.surface.spare(0, 1, 0.9));
      assertThat(used.surface.bought(1, 0.9)).isEqualTo(fresh.surface.bought(1, 0.9));
      assertThat(used.surface.bought(now, 1)).isEqualTo(fresh.surface.bought(now, 1));
      assertThat(used.surface.extraEwes(1, 1)).isEqualTo(fresh.surface.extraEwes(1, 1));
    }
  }

  /** Halved twelve times, the rise is known to 1/8192 of the most that is allowed. */
  @Test
  void extraEwes_ofMoreFeed_areThoseAtWhichEachNeedsAsMuchSupplementAsNow() {
    SplittableRandom random = new SplittableRandom(76);
    int between = 0;
    int most = 0;
    for (int round = 0; round < 40; round++) {
      Case any = anyCase(random, true);
      if (any.farm.ewesJoined() == 0) {
        assertThat(any.surface.extraEwes(1, 1)).isZero();
        assertThat(any.surface.riseAt(any.x, any.winterNow, 1)).isZero();
        continue;
      }
      double limit = any.x[any.inputs.place("farm.most-ewe-increase")];
      double rise = any.surface.extraEwes(1, 1);
      double now = any.perEwe(any.winterNow, 1, 1);
      double close = limit / 4096;
      double slack = 1e-4 * (1 + now);
      assertThat(rise).isBetween(0.0, limit);
      if (rise > close) {
        most += rise == limit ? 1 : 0;
        assertThat(any.perEwe(1, 1, 1 + rise - close)).isLessThan(now + slack);
      }
      if (rise > close && rise < limit - close) {
        between++;
        assertThat(any.perEwe(1, 1, 1 + rise + close)).isGreaterThan(now - slack);
      }
      assertThat(any.surface.riseAt(any.x, any.winterNow, 1)).isEqualTo(rise);
      assertThat(any.surface.extraEwes(any.winterNow, 1)).isZero();
      assertThat(any.surface.extraEwes(any.winterNow, 0.9)).isZero();
    }
    assertThat(between).isGreaterThan(5);
    assertThat(most).isGreaterThan(2);
  }

  @Test
  void extraEwes_ofAFarmThatRunsNoMore_areNoneButTheRiseIsStillKnown() {
    Case without = new Case(PlanFarms.demo("mixed-farm"), false);
    Case with = new Case(without.farm, true);
    without.set(without.x, 0.8);
    with.set(with.x, 0.8);
    assertThat(without.surface.extraEwes(1, 1)).isZero();
    assertThat(with.surface.extraEwes(1, 1)).isPositive();
    assertThat(without.surface.riseAt(without.x, 0.8, 1)).isEqualTo(with.surface.extraEwes(1, 1));
  }

  @Test
  void appetite_ofStock_isPartOfTheDemand() {
    SplittableRandom random = new SplittableRandom(77);
    for (int round = 0; round < 10; round++) {
      Case any = anyCase(random, false);
      for (int p = 0; p < HalfMonths.COUNT; p++) {
        double ewes = any.demand.eweAppetiteKgDmPerDay(p);
        double other = any.demand.otherAppetiteKgDmPerDay(p);
        assertThat(any.surface.eweShareOfAppetite(p) * (ewes + other))
            .isCloseTo(ewes, within(1e-9 * (1 + ewes)));
        assertThat(any.surface.otherAppetiteKgDmPerHa(p) * any.farm.areaHa())
            .isCloseTo(other * HalfMonths.days(p), within(1e-9 * (1 + other * 16)));
      }
    }
    Farm bare =
        FarmCopy.of(PlanFarms.demo("mixed-farm")).mobs(List.of()).otherStock(List.of()).build();
    FeedSurface none = new Case(bare, true).surface;
    assertThat(Arrays.stream(new int[] {0, 12, 23}).mapToDouble(none::eweShareOfAppetite).sum())
        .isZero();
  }
}
