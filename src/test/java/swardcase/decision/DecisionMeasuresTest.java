package swardcase.decision;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import swardcase.FarmCopy;
import swardcase.RandomFarms;
import swardcase.decision.DecisionMeasures.OfAction;
import swardcase.decision.DecisionMeasures.OfFarm;
import swardcase.decision.DecisionMeasures.OfMob;
import swardcase.decision.DecisionMeasures.OfPaddock;
import swardcase.farm.Farm;
import swardcase.farm.Mob;
import swardcase.outcome.FarmModel;
import swardcase.outcome.Outcome;
import swardcase.outcome.OutcomeFunction;
import swardcase.outcome.Plan;
import swardcase.search.PlanFarms;

/** Each measure of a decision, put together again from what a run says of paddocks and mobs. */
class DecisionMeasuresTest {

  private static final double ROUNDING = 1e-9;

  private final FarmModel model = PlanFarms.model(PlanFarms.demo("mixed-farm"));
  private final Farm farm = model.farm();
  private final OutcomeFunction run = model.newRun();
  private final List<DecisionMeasures.OnePaddock> options = new ArrayList<>();
  private final Plan plan = plan();
  private final DecisionMeasures measures = new DecisionMeasures(model, plan, options);
  private final double[] read = new double[measures.size()];

  DecisionMeasuresTest() {
    measures.read(model.newRun(), read);
  }

  private Plan plan() {
    SplittableRandom random = new SplittableRandom(3);
    Plan any = model.keepAll();
    for (int i = 0; i < farm.paddocks().size(); i++) {
      for (int a = 0; a < model.actions().size(); a++) {
        if (a != model.keep() && run.allowed(i, a)) {
          options.add(new DecisionMeasures.OnePaddock(i, a, random.nextInt(3)));
          any = random.nextInt(4) == 0 ? any.with(i, a, random.nextInt(3)) : any;
        }
      }
    }
    return any;
  }

  private double of(OfFarm measure) {
    return read[measures.at(measure)];
  }

  private double of(int paddock, OfPaddock measure) {
    return read[measures.at(paddock, measure)];
  }

  private double npv(Plan of) {
    Outcome outcome = model.newOutcome();
    run.evaluate(of, outcome);
    return outcome.npv();
  }

  private static void assertNear(double actual, double expected) {
    assertThat(actual).isCloseTo(expected, within(ROUNDING * Math.max(1, Math.abs(expected))));
  }

  @Test
  void winterFeed_ofTheFarm_isWhatItsPaddocksLose() {
    double loss = 0;
    double shortfall = 0;
    double tonnes = 0;
    double cost = 0;
    for (int i = 0; i < farm.paddocks().size(); i++) {
      double perHa = of(i, OfPaddock.WINTER_LOSS_KG_DM_PER_HA);
      assertNear(perHa, run.winterLossKgDmPerHa(i));
      loss += perHa * farm.paddocks().get(i).areaHa();
      shortfall += of(i, OfPaddock.SHORTFALL_MJ);
      tonnes += of(i, OfPaddock.SUPPLEMENT_TONNES);
      cost += of(i, OfPaddock.SUPPLEMENT_COST);
    }
    assertThat(loss).isPositive();
    assertNear(of(OfFarm.WINTER_LOSS_KG_DM), loss);
    double now = run.winterGrowthNow();
    double more = run.boughtInWinterMj(now) - run.boughtInWinterMj(1);
    assertThat(more).isPositive();
    assertNear(of(OfFarm.WINTER_SHORTFALL_MJ), more);
    assertNear(shortfall, more);
    assertNear(of(OfFarm.WINTER_SUPPLEMENT_TONNES), more * run.tonnesPerMj());
    assertNear(tonnes, more * run.tonnesPerMj());
    assertNear(of(OfFarm.WINTER_SUPPLEMENT_COST), more * run.pricePerMj());
    assertNear(cost, more * run.pricePerMj());
    double year = run.boughtMj(now) - run.boughtMj(1);
    assertNear(of(OfFarm.YEAR_SUPPLEMENT_COST), year * run.pricePerMj());
  }

  @Test
  void supplementNow_perEwe_isTheFarmsOverItsEwes() {
    double tonnes = run.boughtMj(run.winterGrowthNow()) * run.tonnesPerMj();
    assertNear(of(OfFarm.SUPPLEMENT_TONNES_NOW), tonnes);
    assertNear(of(OfFarm.SUPPLEMENT_KG_PER_EWE_NOW), 1000 * tonnes / farm.ewesJoined());
    assertNear(of(OfFarm.EXTRA_EWES), run.extraEwesWithCurrent());
    assertNear(of(OfFarm.MORE_EWES_GAIN), run.gainOfMoreEwes(run.extraEwesWithCurrent()));
  }

  @Test
  void flock_ofSeveralMobs_isTheirMeanByEwes() {
    double unaffected = 0;
    double pregnant = 0;
    double sterile = 0;
    double lambs = 0;
    double cost = 0;
    for (int g = 0; g < farm.mobs().size(); g++) {
      Mob mob = farm.mobs().get(g);
      unaffected += mob.ewes() * run.flock(g).unaffectedShare();
      pregnant += mob.ewes() * run.flock(g).shareNow();
      sterile += mob.ewes() * run.flock(g).sterileNow();
      lambs += run.lambsLost(g);
      cost += run.lambCost(g);
      assertNear(read[measures.at(g, OfMob.DOSE_AT_JOINING)], run.flock(g).doseAtJoining());
      assertNear(
          read[measures.at(g, OfMob.UNAFFECTED_PERCENT)], 100 * run.flock(g).unaffectedShare());
      assertNear(read[measures.at(g, OfMob.PREGNANT_PERCENT)], 100 * run.flock(g).shareNow());
    }
    double ewes = farm.ewesJoined();
    assertNear(of(OfFarm.UNAFFECTED_PERCENT), 100 * unaffected / ewes);
    assertNear(of(OfFarm.PREGNANT_PERCENT), 100 * pregnant / ewes);
    assertNear(of(OfFarm.STERILE_PERCENT), 100 * sterile / ewes);
    assertThat(lambs).isPositive();
    assertNear(of(OfFarm.LAMBS_LOST), lambs);
    assertNear(of(OfFarm.LAMB_COST), cost);
    for (int month = 0; month < 12; month++) {
      assertNear(
          read[measures.doseOfMonth(month)], (run.dose(2 * month) + run.dose(2 * month + 1)) / 2);
    }
  }

  @Test
  void plan_byPaddock_isWhatThePlanWouldLoseWithoutIt() {
    double cost = 0;
    double whole = npv(plan);
    assertNear(of(OfFarm.PLAN_NPV), whole);
    int changed = 0;
    for (int i = 0; i < farm.paddocks().size(); i++) {
      boolean kept = plan.action(i) == model.keep();
      double without = npv(plan.with(i, model.keep(), 0));
      assertThat(of(i, OfPaddock.PLAN_NPV)).isCloseTo(whole - without, within(1e-5));
      assertNear(of(i, OfPaddock.LEAF_FORMONONETIN), run.leafFormononetin(i));
      assertNear(of(i, OfPaddock.GREEN_DOSE), run.greenDose(i));
      double own =
          farm.paddocks().get(i).areaHa() * run.costPerHa(i, plan.action(i), plan.start(i));
      assertNear(of(i, OfPaddock.PLAN_COST), own);
      cost += own;
      changed += kept ? 0 : 1;
    }
    assertThat(changed).isBetween(2, farm.paddocks().size());
    assertNear(of(OfFarm.PLAN_COST), cost);
  }

  @Test
  void option_onItsOwn_isThePlanWithNothingElse() {
    for (int k = 0; k < options.size(); k++) {
      DecisionMeasures.OnePaddock option = options.get(k);
      Plan alone = model.keepAll().with(option.paddock(), option.action(), option.start());
      assertThat(read[measures.at(k, OfAction.NPV)]).isCloseTo(npv(alone), within(1e-5));
      assertNear(
          read[measures.at(k, OfAction.COST_PER_HA)],
          run.costPerHa(option.paddock(), option.action(), option.start()));
    }
  }

  /** Every number is read into a place of its own. */
  @Test
  void places_ofAllMeasures_areAllDifferent() {
    List<Integer> places = new ArrayList<>();
    for (OfFarm measure : OfFarm.values()) {
      places.add(measures.at(measure));
    }
    for (int g = 0; g < farm.mobs().size(); g++) {
      for (OfMob measure : OfMob.values()) {
        places.add(measures.at(g, measure));
      }
    }
    for (int month = 0; month < 12; month++) {
      places.add(measures.doseOfMonth(month));
    }
    for (int i = 0; i < farm.paddocks().size(); i++) {
      for (OfPaddock measure : OfPaddock.values()) {
        places.add(measures.at(i, measure));
      }
    }
    for (int k = 0; k < options.size(); k++) {
      for (OfAction measure : OfAction.values()) {
        places.add(measures.at(k, measure));
      }
    }
    assertThat(places).doesNotHaveDuplicates().hasSize(measures.size());
    assertThat(places).allMatch(place -> place >= 0 && place < measures.size());
  }

  @Test
  void farm_withoutEwes_hasNoneOfTheirNumbers() {
    Farm none =
        FarmCopy.of(RandomFarms.demo("mixed-farm"))
            .mobs(List.of())
            .paddocks(farm.paddocks().stream().map(FarmCopy::ofNoMob).toList())
            .build();
    FarmModel empty = PlanFarms.model(none);
    DecisionMeasures of = new DecisionMeasures(empty, empty.keepAll(), List.of());
    double[] into = new double[of.size()];
    of.read(empty.newRun(), into);
    assertThat(into[of.at(OfFarm.SUPPLEMENT_KG_PER_EWE_NOW)]).isZero();
    assertThat(into[of.at(OfFarm.LAMBS_LOST)]).isZero();
    assertThat(into[of.at(OfFarm.PREGNANT_PERCENT)]).isZero();
    assertThat(into).doesNotContain(Double.NaN);
  }
}
