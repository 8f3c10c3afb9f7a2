package swardcase.outcome;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.SplittableRandom;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import swardcase.RandomFarms;
import swardcase.evidence.Assumption;
import swardcase.farm.Farm;
import swardcase.farm.HalfMonths;
import swardcase.farm.Mob;
import swardcase.farm.Paddock;
import swardcase.feed.FeedResult;
import swardcase.feed.FeedSums;
import swardcase.feed.FeedSurface;
import swardcase.feed.SupplementCost;
import swardcase.grazing.JoiningWindow;
import swardcase.reproduction.FlockEffect;
import swardcase.search.PlanFarms;

/** The outcome of plans put together again from the sums of paddocks, feed and ewes. */
class OutcomeFunctionTest {

  private static final double ROUNDING = 1e-9;

  /** A farm at drawn assumptions, with a plan. */
  private static final class Case {

    final FarmModel model;
    final Farm farm;
    final OutcomeFunction run;
    final double[] x;
    final Plan plan;
    final Outcome out;

    Case(Farm farm, SplittableRandom random) {
      this.farm = farm;
      model = PlanFarms.model(farm);
      run = model.newRun();
      x = RandomFarms.draw(model.inputs().all(), random);
      run.set(x);
      Plan any = model.keepAll();
      for (int i = 0; i < any.paddocks(); i++) {
        int action = random.nextInt(model.actions().size());
        if (run.allowed(i, action)) {
          any = any.with(i, action, random.nextInt(Math.min(FarmModel.START_YEARS, model.years())));
        }
      }
      plan = any;
      out = model.newOutcome();
      run.evaluate(plan, out);
    }

    double number(Assumption of) {
      int place = model.inputs().all().indexOf(of);
      assertThat(place).as(of.name()).isNotNegative();
      return x[place];
    }

    Paddock paddock(int i) {
      return farm.paddocks().get(i);
    }

    /** Sums of every year over the paddocks of the plan. */
    double[] sums() {
      int size = YearSums.size(run.mobs());
      double[] all = new double[model.years() * size];
      double[] of = all.clone();
      for (int i = 0; i < plan.paddocks(); i++) {
        run.addYears(i, plan.action(i), plan.start(i), of);
        Arrays.setAll(all, k -> all[k] + of[k]);
      }
      return all;
    }

    double chance(int season) {
      return farm.feedYear().seasons().get(season).chance().likely();
    }

    int seasons() {
      return farm.feedYear().seasons().size();
    }
  }

  private interface Law {
    void check(Case any, SplittableRandom random);
  }

  private static void forAnyFarm(int farms, Law law) {
    for (int k = 0; k < farms; k++) {
      SplittableRandom random = new SplittableRandom(4200 + k);
      law.check(new Case(RandomFarms.any(random), random), random);
    }
  }

  private static void assertNear(double actual, double expected) {
    assertThat(actual).isCloseTo(expected, within(ROUNDING * Math.max(1, Math.abs(expected))));
  }

  @Test
  void outcome_ofAnyPlan_addsUpOverItsYears() {
    forAnyFarm(
        20,
        (any, random) -> {
          double rate = any.farm.finance().discountRate().likely();
          double npv = 0;
          double end = 0;
          for (int i = 0; i < any.plan.paddocks(); i++) {
            boolean sows = any.model.actions().get(any.plan.action(i)).sows();
            end +=
                sows ? any.paddock(i).areaHa() * any.number(any.farm.finance().endValuePerHa()) : 0;
          }
          double[] flows = any.out.cashFlow();
          assertThat(flows).hasSize(any.model.years());
          for (int t = 0; t < any.model.years(); t++) {
            double net =
                any.out.supplementSaved(t)
                    + any.out.lambsSaved(t)
                    + any.out.cropMargin(t)
                    + any.out.spareFeed(t)
                    - any.out.actionCost(t)
                    - any.out.labourCost(t);
            boolean last = t == any.model.years() - 1;
            assertNear(any.out.net(t), net);
            assertNear(any.out.endValue(t), last ? end : 0);
            assertNear(flows[t], net + (last ? end : 0));
            npv += flows[t] / Math.pow(1 + rate, t);
            assertNear(any.run.discount(t), Math.pow(1 + rate, -t));
          }
          assertNear(any.out.npv(), npv);
        });
  }

  @Test
  void outcome_ofAYear_isReadFromItsSums() {
    forAnyFarm(
        20,
        (any, random) -> {
          double[] sums = any.sums();
          double weights = any.run.weightSum();
          double perMj = any.run.pricePerMj();
          double area = any.farm.areaHa();
          FeedSurface feed = any.run.feed();
          for (int t = 0; t < any.model.years(); t++) {
            int at = t * YearSums.size(any.run.mobs());
            double lost = lost(any, sums, at);
            double w = sums[at + YearSums.WINTER] / weights - lost;
            double o = sums[at + YearSums.OTHER] / weights - lost;
            double now = any.run.winterGrowthNow();
            double share = any.model.year().winterShare();
            double taken =
                share * sums[at + YearSums.WINTER] + (1 - share) * sums[at + YearSums.OTHER];
            double legume =
                taken > 0 ? sums[at + YearSums.CLOVER] / taken : any.run.legumeShareNow();
            double inLamb = inLamb(any, sums, at, t);
            int mean = feed.meanOfSeasons();
            double grown = (feed.bought(now, 1) - feed.bought(w, o)) * area * perMj;
            double then = feed.bought(mean, w, o, inLamb, legume);
            double saved = (feed.bought(now, 1) - then) * area * perMj;
            double price = any.number(any.farm.prices().spareFeedPerTonneDm());
            double spare =
                (feed.spare(mean, w, o, inLamb, legume) - feed.spare(mean, now, 1))
                    * area
                    / 1000
                    * price;
            boolean more = any.model.runMoreEwes() && grown > 0;
            double nitrogen = 0;
            for (int i = 0; i < any.plan.paddocks(); i++) {
              nitrogen +=
                  any.paddock(i).areaHa()
                      * (any.run.nitrogenKgPerHa(any.plan, i, t) - any.run.nitrogenKgPerHa(i));
            }
            nitrogen *= any.number(any.farm.prices().nitrogenPerKg());
            double further =
                more ? any.run.gainOfMoreEwes(feed.extraEwes(w, o) * any.farm.ewesJoined()) : 0;
            assertNear(any.out.actionCost(t), sums[at + YearSums.COST]);
            assertNear(any.out.labourCost(t), sums[at + YearSums.LABOUR]);
            assertNear(any.out.cropMargin(t), sums[at + YearSums.MARGIN]);
            assertNear(any.out.supplementSaved(t), more ? saved - grown : saved);
            assertNear(any.out.spareFeed(t), further + spare + nitrogen);
          }
        });
  }

  /** What all mobs leave where none may be, and the most of what one leaves where others may. */
  private static double lost(Case any, double[] sums, int at) {
    double weights = any.run.weightSum();
    int mobs = any.run.mobs();
    double lost =
        mobs == 0
            ? 0
            : any.run
                .window()
                .lost(
                    mobs,
                    sums[at + YearSums.HELD] / weights,
                    sums[at + YearSums.HELD_GREEN] / weights);
    double one = 0;
    for (int g = 0; g < mobs; g++) {
      double off = sums[at + YearSums.at(g, YearSums.OFF)] / weights;
      double green = sums[at + YearSums.at(g, YearSums.OFF_GREEN)] / weights;
      one = Math.max(one, any.run.window().lost(g, off, green));
    }
    return lost + one;
  }

  /** Own paddocks as far as their feed goes, others for the rest. */
  private static double strength(
      double dose, double grazed, double feed, double enough, double doseElse, double feedElse) {
    double own = grazed > 0 ? dose / grazed : 0;
    double share = feed >= enough || feedElse <= 0 ? 1 : feed / enough;
    return share < 1 ? share * own + (1 - share) * doseElse / feedElse : own;
  }

  /** Ewes in lamb in a year relative to now, each by the feed it needs. */
  private static double inLamb(Case any, double[] sums, int at, int t) {
    double now = 0;
    double then = 0;
    for (int g = 0; g < any.run.mobs(); g++) {
      double feed = any.run.feed().inLambMj(g);
      now += feed * any.run.flock(g).shareNow();
      then += feed * share(any, sums, at, t, g);
    }
    return now > 0 ? then / now : 1;
  }

  private static double share(Case any, double[] sums, int at, int t, int g) {
    double[] of = Arrays.copyOfRange(sums, at + YearSums.at(g, 0), sums.length);
    double strength =
        strength(
            of[YearSums.DOSE],
            of[YearSums.GRAZED],
            of[YearSums.SAFE_GREEN],
            any.run.feedNeededInWinter(g),
            of[YearSums.DOSE_ELSE],
            of[YearSums.GRAZED_ELSE]);
    double held =
        strength(
            of[YearSums.DOSE_HELD],
            of[YearSums.GRAZED_HELD],
            of[YearSums.SAFE],
            any.run.feedNeeded(g),
            of[YearSums.DOSE_ELSE],
            of[YearSums.GRAZED_ELSE]);
    if (of[YearSums.GRAZED_HELD] <= 0 && of[YearSums.GRAZED_ELSE] <= 0) {
      held = strength;
    }
    return any.run.flock(g).share(t, strength, held);
  }

  @Test
  void outcome_ofEwes_isThatOfEachMobAtItsStrengths() {
    forAnyFarm(
        20,
        (any, random) -> {
          double[] sums = any.sums();
          for (int t = 0; t < any.model.years(); t++) {
            int at = t * YearSums.size(any.run.mobs());
            double lambs = 0;
            double inLamb = 0;
            double money = 0;
            for (int g = 0; g < any.run.mobs(); g++) {
              Mob mob = any.farm.mobs().get(g);
              double more = (share(any, sums, at, t, g) - any.run.flock(g).shareNow()) * mob.ewes();
              inLamb += more;
              lambs += more * any.run.lambsPerPregnantEwe(g);
              money += more * any.run.valuePerPregnantEwe(g);
            }
            assertNear(any.out.ewesInLamb(t), inLamb);
            assertNear(any.out.lambs(t), lambs);
            assertNear(any.out.lambsSaved(t), money);
          }
        });
  }

  @Test
  void sums_ofAPaddock_areItsAreaGrowthAndStrengthWhereTheMobGrazes() {
    forAnyFarm(
        12,
        (any, random) -> {
          int size = YearSums.size(any.run.mobs());
          double[] of = new double[any.model.years() * size];
          for (int i = 0; i < any.plan.paddocks(); i++) {
            double area = any.paddock(i).areaHa();
            for (int a = 0; a < any.farm.actions().size(); a++) {
              int start = random.nextInt(Math.min(FarmModel.START_YEARS, any.model.years()));
              any.run.addYears(i, a, start, of);
              double cost = 0;
              for (int t = 0; t < any.model.years(); t++) {
                int at = t * size;
                int k = t - start;
                boolean acted = k >= 0;
                boolean shut = acted && any.run.isShut(a, k);
                double w = of[at + YearSums.WINTER];
                double o = of[at + YearSums.OTHER];
                double share = any.model.year().winterShare();
                double taken = share * w + (1 - share) * o;
                double strength = acted ? any.run.greenDose(i, a, k) : any.run.greenDose(i);
                cost += of[at + YearSums.COST] + of[at + YearSums.LABOUR];
                assertNear(of[at + YearSums.OUT], shut ? area : 0);
                assertNear(of[at + YearSums.HELD], 0);
                for (int g = 0; g < any.run.mobs(); g++) {
                  boolean grazes = any.paddock(i).isGrazedBy(any.farm.mobs().get(g));
                  double grazed = grazes ? taken : 0;
                  assertNear(of[at + YearSums.at(g, YearSums.GRAZED)], grazed);
                  assertNear(of[at + YearSums.at(g, YearSums.DOSE)], grazed * strength);
                  assertNear(of[at + YearSums.at(g, YearSums.GRAZED_HELD)], grazed);
                  assertNear(of[at + YearSums.at(g, YearSums.DOSE_HELD)], grazed * strength);
                  assertNear(of[at + YearSums.at(g, YearSums.SAFE)], grazed * part(any, g, i));
                }
              }
              assertNear(cost, area * any.run.costPerHa(i, a, start));
            }
          }
        });
  }

  /** Weight of the mob's ewes among the mobs that graze the paddock. */
  private static double part(Case any, int mob, int paddock) {
    double all = 0;
    for (Mob other : any.farm.mobs()) {
      all += any.paddock(paddock).isGrazedBy(other) ? weight(other) : 0;
    }
    return all > 0 ? weight(any.farm.mobs().get(mob)) / all : 0;
  }

  private static double weight(Mob mob) {
    return mob.ewes() * mob.liveweightKg().likely();
  }

  /** By hand: growth of the year x clover share, in tonnes, x nitrogen of a tonne. */
  @Test
  void nitrogen_ofAPaddock_followsTheCloverThatGrowsThere() {
    forAnyFarm(
        12,
        (any, random) -> {
          double perTonne = any.number(PlanFarms.TABLES.parameter("clover.nitrogen-fixed"));
          double grown = 0;
          for (int p = 0; p < HalfMonths.COUNT; p++) {
            grown += any.model.year().growthKgDmPerHa(p);
          }
          for (int i = 0; i < any.plan.paddocks(); i++) {
            double clover = any.run.cloverShare(any.model.keepAll(), i, 0);
            double here = any.run.feedWeight(i) / any.paddock(i).areaHa() * grown;
            assertNear(any.run.nitrogenKgPerHa(i), here * clover / 1000 * perTonne);
            assertNear(
                any.run.nitrogenKgPerHa(any.model.keepAll(), i, any.model.years() - 1),
                any.run.nitrogenKgPerHa(i));
          }
        });
  }

  @Test
  void growth_ofTheFarm_isThatOfItsPaddocksByAreaAndIndex() {
    forAnyFarm(
        12,
        (any, random) -> {
          double weights = 0;
          double grown = 0;
          double feed = 0;
          for (int i = 0; i < any.plan.paddocks(); i++) {
            double weight = any.paddock(i).areaHa() * growthIndex(any, i);
            double winter = any.run.winterFactorNow(i);
            weights += weight;
            grown += weight * winter;
            double share = any.model.year().winterShare();
            assertNear(any.run.feedWeight(i), weight * (1 - share * (1 - winter)));
            assertNear(
                any.run.winterLossKgDmPerHa(i),
                (1 - winter)
                    * weight
                    / any.paddock(i).areaHa()
                    * any.model.year().winterGrowthKgDmPerHa());
          }
          assertNear(any.run.weightSum(), weights);
          assertNear(any.run.winterGrowthNow(), grown / weights);
        });
  }

  private static double growthIndex(Case any, int paddock) {
    Paddock of = any.paddock(paddock);
    return any.number(of.growthIndex().named("growth index: " + of.name()));
  }

  @Test
  void oldShare_ofTheFarm_isTheMeanByArea() {
    forAnyFarm(
        12,
        (any, random) -> {
          any.run.evaluate(any.plan, any.out);
          for (int t = 0; t < any.model.years(); t++) {
            double old = 0;
            for (int i = 0; i < any.plan.paddocks(); i++) {
              double of = any.run.oldShare(any.plan, i, t);
              old += of * any.paddock(i).areaHa();
              if (t < any.plan.start(i)) {
                assertThat(of).isEqualTo(any.run.oldShare(any.model.keepAll(), i, 0));
              }
            }
            assertNear(any.out.oldShare(t), old / any.farm.areaHa());
          }
        });
  }

  @Test
  void supplement_ofTheYear_isThatOfItsSeasons() {
    forAnyFarm(
        8,
        (any, random) -> {
          double perTonne =
              SupplementCost.energyMjPerTonne(
                  any.number(any.farm.supplement().energyMjPerKgDm()),
                  any.number(any.farm.supplement().dryMatterFraction()),
                  any.number(any.farm.supplement().wasteFraction()));
          assertNear(any.run.tonnesPerMj() * perTonne, 1);
          assertNear(
              any.run.pricePerMj() * perTonne, any.number(any.farm.supplement().pricePerTonne()));
          double bought = 0;
          FeedResult result = new FeedResult();
          for (int season = 0; season < any.seasons(); season++) {
            any.run.feedYear(season, 1, result);
            bought += any.chance(season) * FeedSums.bought(result);
          }
          assertThat(any.run.boughtMj(1) / any.farm.areaHa()).isCloseTo(bought, within(0.05));
        });
  }

  @Test
  void dose_ofAHalfMonth_isStrengthTimesTheGreenShareOfIntake() {
    forAnyFarm(
        12,
        (any, random) -> {
          double dry = any.number(PlanFarms.TABLES.parameter("dose.dry-factor"));
          for (int p = 0; p < HalfMonths.COUNT; p++) {
            double share = 0;
            for (int season = 0; season < any.seasons(); season++) {
              FeedResult now = any.run.feed().asStated(season);
              double eaten = now.eatenGreenKgDmPerHa[p] + now.eatenDryKgDmPerHa[p];
              share +=
                  eaten == 0
                      ? 0
                      : any.chance(season)
                          * (now.eatenGreenKgDmPerHa[p] + dry * now.eatenDryKgDmPerHa[p])
                          / eaten;
            }
            assertNear(any.run.greenShare(p), share);
            double mean = 0;
            for (int g = 0; g < any.run.mobs(); g++) {
              double taken = 0;
              double strength = 0;
              for (int i = 0; i < any.plan.paddocks(); i++) {
                if (any.paddock(i).isGrazedBy(any.farm.mobs().get(g))) {
                  taken += any.run.feedWeight(i);
                  strength += any.run.feedWeight(i) * any.run.greenDose(i);
                }
              }
              double dose = taken > 0 ? share * strength / taken : 0;
              assertNear(any.run.flock(g).doseNow(p), dose);
              mean += dose * any.farm.mobs().get(g).ewes();
            }
            int ewes = any.farm.ewesJoined();
            assertNear(any.run.dose(p), ewes > 0 ? mean / ewes : 0);
          }
        });
  }

  @Test
  void loss_ofAMob_isItsEwesNotInLambTimesTheirWorth() {
    forAnyFarm(
        12,
        (any, random) -> {
          for (int g = 0; g < any.run.mobs(); g++) {
            Mob mob = any.farm.mobs().get(g);
            double perEwe = mob.markingPercent().likely() / mob.pregnantPercent().likely();
            double worth =
                perEwe * any.number(any.farm.prices().netValuePerLamb())
                    + any.number(any.farm.prices().costPerDryEwe());
            double fewer =
                (any.run.flock(g).unaffectedShare() - any.run.flock(g).shareNow()) * mob.ewes();
            assertThat(fewer).isGreaterThanOrEqualTo(-1e-9);
            assertNear(any.run.lambsPerPregnantEwe(g), perEwe);
            assertNear(any.run.valuePerPregnantEwe(g), worth);
            assertNear(any.run.valueOfShare(g), worth * mob.ewes());
            assertNear(any.run.lambsLost(g), fewer * perEwe);
            assertNear(any.run.lambCost(g), fewer * worth);
          }
        });
  }

  @Test
  void gainOfMoreEwes_paysTheirSupplementAndTheCapitalInThem() {
    forAnyFarm(
        12,
        (any, random) -> {
          double gain = any.run.gainOfMoreEwes(10);
          int ewes = any.farm.ewesJoined();
          if (ewes == 0) {
            assertThat(gain).isZero();
            return;
          }
          double supplement =
              any.run.boughtMj(any.run.winterGrowthNow()) * any.run.pricePerMj() / ewes;
          double capital =
              any.number(any.farm.prices().replacementEwe())
                  * any.farm.finance().discountRate().likely();
          double margin = any.number(any.farm.prices().grossMarginPerEwe());
          assertNear(gain, 10 * (margin - supplement - capital));
          double rise = any.run.feed().riseAt(any.x, any.run.winterGrowthNow(), 1);
          assertNear(any.run.extraEwesWithCurrent(), rise * ewes);
        });
  }

  @Test
  void set_withSeasonsApart_isTheirMeanWhereNoEwesAreAdded() {
    forAnyFarm(
        12,
        (any, random) -> {
          int years = any.model.years();
          Draw draw = new Draw(any.model);
          System.arraycopy(any.x, 0, draw.numbers, 0, any.x.length);
          double[][] shares = draw.shares;
          for (int i = 0; i < shares.length; i++) {
            int size = any.run.composition(i).size();
            double left = 1;
            for (int c = 0; c < size; c++) {
              shares[i][c] = c == size - 1 ? left : left * random.nextDouble();
              left -= shares[i][c];
            }
          }
          OutcomeFunction apart = any.model.newRun();
          Outcome of = any.model.newOutcome();
          Outcome mean = any.model.newOutcome();
          Arrays.fill(draw.seasons, any.seasons());
          apart.set(draw);
          apart.evaluate(any.plan, mean);
          double[] saved = new double[years];
          double[] spare = new double[years];
          for (int season = 0; season < any.seasons(); season++) {
            Arrays.fill(draw.seasons, season);
            apart.set(draw);
            apart.evaluate(any.plan, of);
            for (int t = 0; t < years; t++) {
              saved[t] += any.chance(season) * of.supplementSaved(t);
              spare[t] += any.chance(season) * of.spareFeed(t);
              assertThat(of.lambsSaved(t)).isEqualTo(mean.lambsSaved(t));
            }
          }
          for (int t = 0; t < years; t++) {
            assertThat(saved[t])
                .isCloseTo(mean.supplementSaved(t), within(1e-7 * scale(mean.supplementSaved(t))));
            assertThat(spare[t])
                .isCloseTo(mean.spareFeed(t), within(1e-7 * scale(mean.spareFeed(t))));
          }
        });
  }

  private static double scale(double of) {
    return Math.max(1, Math.abs(of));
  }

  @Test
  void npvOfBaseWith_anotherChoice_isThatOfThePlanWithIt() {
    forAnyFarm(
        15,
        (any, random) -> {
          OutcomeFunction whole = any.model.newRun();
          whole.set(any.x);
          whole.evaluate(any.plan, any.out);
          assertThat(any.run.setBase(any.plan)).isEqualTo(any.out.npv());
          for (int i = 0; i < any.plan.paddocks(); i++) {
            int start = random.nextInt(Math.min(FarmModel.START_YEARS, any.model.years()));
            for (int a = 0; a < any.model.actions().size(); a++) {
              whole.evaluate(any.plan.with(i, a, start), any.out);
              assertThat(any.run.npvOfBaseWith(i, a, start)).isCloseTo(any.out.npv(), within(1e-6));
            }
          }
        });
  }

  @Test
  void npvOfBaseWith_otherChoicesOfTwoPaddocks_isThatOfThePlanWithBoth() {
    forAnyFarm(
        15,
        (any, random) -> {
          OutcomeFunction whole = any.model.newRun();
          whole.set(any.x);
          any.run.setBase(any.plan);
          for (int one = 0; one + 1 < any.plan.paddocks(); one++) {
            int two = random.nextInt(one + 1, any.plan.paddocks());
            int actionOne = random.nextInt(any.model.actions().size());
            int actionTwo = random.nextInt(any.model.actions().size());
            int startOne = random.nextInt(Math.min(FarmModel.START_YEARS, any.model.years()));
            int startTwo = random.nextInt(Math.min(FarmModel.START_YEARS, any.model.years()));
            whole.evaluate(
                any.plan.with(one, actionOne, startOne).with(two, actionTwo, startTwo), any.out);
            assertThat(any.run.npvOfBaseWith(one, actionOne, startOne, two, actionTwo, startTwo))
                .isCloseTo(any.out.npv(), within(1e-6));
          }
        });
  }

  /** Set twice: nothing of the feed year read first may be left. */
  @Test
  void safeFeedNeeded_isThatOfTheFeedYearAsItStands() {
    forAnyFarm(
        30,
        (any, random) -> {
          any.run.set(any.model.inputs().likely());
          any.run.set(any.x);
          double[] onOffer = new double[HalfMonths.COUNT];
          double[] growth = new double[HalfMonths.COUNT];
          double[] eaten = new double[HalfMonths.COUNT];
          double[] byEwes = new double[HalfMonths.COUNT];
          for (int season = 0; season < any.seasons(); season++) {
            FeedResult now = any.run.feed().asStated(season);
            for (int p = 0; p < HalfMonths.COUNT; p++) {
              double ofEwes = any.run.feed().eweShareOfAppetite(p);
              double grazed = now.eatenGreenKgDmPerHa[p] + now.eatenDryKgDmPerHa[p];
              onOffer[p] += any.chance(season) * (now.greenKgDmPerHa[p] + now.dryKgDmPerHa[p]);
              growth[p] += any.chance(season) * now.growthKgDmPerHa[p];
              eaten[p] += any.chance(season) * grazed;
              byEwes[p] += any.chance(season) * ofEwes * grazed;
            }
          }
          FlockEffect[] flock =
              IntStream.range(0, any.run.mobs())
                  .mapToObj(any.run::flock)
                  .toArray(FlockEffect[]::new);
          JoiningWindow expected =
              new JoiningWindow(any.farm, any.model.year(), any.run.feed(), flock);
          double taken = 0;
          for (int i = 0; i < any.plan.paddocks(); i++) {
            taken += any.run.feedWeight(i);
          }
          expected.set(flock, onOffer, growth, eaten, byEwes, taken);
          for (int g = 0; g < flock.length; g++) {
            double open = 0;
            for (int i = 0; i < any.plan.paddocks(); i++) {
              boolean grazes = any.paddock(i).isGrazedBy(any.farm.mobs().get(g));
              open += grazes ? any.run.feedWeight(i) * part(any, g, i) : 0;
            }
            assertNear(any.run.feedNeeded(g), Math.min(open, expected.needed(g)));
          }
        });
  }
}
