package swardcase.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import swardcase.evidence.Assumption;
import swardcase.farm.Action;
import swardcase.farm.Farm;
import swardcase.farm.Finance;
import swardcase.farm.Identification;
import swardcase.farm.Mob;
import swardcase.farm.OtherStock;
import swardcase.farm.Paddock;
import swardcase.intake.FarmFolder;

/** What must hold for every farm and every draw of its uncertain numbers. */
class PlanLawsTest {

  private static double[] draw(FarmModel model, SplittableRandom random) {
    double[] x = model.inputs().likely();
    for (int j = 0; j < x.length; j++) {
      double low = model.inputs().get(j).range().low();
      double high = model.inputs().get(j).range().high();
      x[j] = low + (high - low) * random.nextDouble();
    }
    return x;
  }

  @Test
  void evaluateBaseWith_anyChange_isThePlanWithThatChange() {
    SplittableRandom random = new SplittableRandom(2611);
    for (String name : List.of("mixed-farm", "risky-farm")) {
      FarmModel model = PlanFarms.model(PlanFarms.demo(name));
      Run run = model.newRun();
      Run whole = model.newRun();
      Outcome changed = new Outcome(model.years());
      Outcome added = new Outcome(model.years());
      for (int round = 0; round < 5; round++) {
        double[] x = draw(model, random);
        run.set(x);
        whole.set(x);
        Plan base = model.keepAll();
        for (int i = 0; i < base.paddocks(); i++) {
          int action = random.nextInt(model.actions().size());
          int start = random.nextInt(model.startYears());
          if (!run.allowed(i, action)) {
            continue;
          }
          run.setBase(base);
          run.evaluateBaseWith(i, base.action(i), base.start(i), changed);
          whole.evaluate(base, added);
          assertThat(changed.npv()).isEqualTo(added.npv());
          run.evaluateBaseWith(i, action, start, changed);
          base = base.with(i, action, start);
          whole.evaluate(base, added);
          assertThat(changed.npv()).isCloseTo(added.npv(), within(1e-6));
          for (int t = 0; t < model.years(); t++) {
            assertThat(changed.lambs(t)).isCloseTo(added.lambs(t), within(1e-8));
            assertThat(changed.oldShare(t)).isCloseTo(added.oldShare(t), within(1e-12));
          }
        }
      }
    }
  }

  @Test
  void plantShares_ofEverySowing_lieInZeroToOneAndAddUpToOne() {
    SplittableRandom random = new SplittableRandom(21);
    for (String name : List.of("mixed-farm", "northern-farm")) {
      FarmModel model = PlanFarms.model(PlanFarms.demo(name));
      Run run = model.newRun();
      for (int round = 0; round < 5; round++) {
        run.set(draw(model, random));
        for (int i = 0; i < model.farm().paddocks().size(); i++) {
          for (int a = 0; a < model.actions().size(); a++) {
            if (!model.actions().get(a).sows()) {
              continue;
            }
            double[] shares = run.plantShares(i, a);
            int species = shares.length / model.years();
            for (int t = 0; t < model.years(); t++) {
              double sum = 0;
              for (int c = 0; c < species; c++) {
                assertThat(shares[t * species + c]).isBetween(0.0, 1.0);
                sum += shares[t * species + c];
              }
              assertThat(sum).isCloseTo(1, within(1e-9));
            }
          }
        }
      }
    }
  }

  @Test
  void oldShare_moreRunDownYears_isNeverHigherAtTheSameAgeOfTheStand() {
    FarmModel model = PlanFarms.model(PlanFarms.demo("mixed-farm"));
    Run run = model.newRun();
    int[] crops = {place(model, "crop-1"), place(model, "crop-2"), place(model, "crop-3")};
    int compared = 0;
    for (int i = 0; i < model.farm().paddocks().size(); i++) {
      for (int more = 1; more < crops.length && run.allowed(i, crops[more]); more++) {
        Plan fewer = model.keepAll().with(i, crops[more - 1], 0);
        Plan longer = model.keepAll().with(i, crops[more], 0);
        for (int age = 0; more + 1 + age < model.years(); age++) {
          double after = run.oldShare(longer, i, more + 1 + age);
          assertThat(after).isLessThanOrEqualTo(run.oldShare(fewer, i, more + age) + 1e-9);
          compared++;
        }
      }
    }
    assertThat(compared).isGreaterThan(50);
  }

  /** Taylor and Ewing 1988: seed at 10 cm keeps, so that inversion hides it. */
  @Test
  void oldShare_afterAPloughThatInverts_isLowerAndNothingElseOfTheFarmChanges(@TempDir Path folder)
      throws IOException {
    Path demo = Path.of("demo-data", "risky-farm");
    for (String file : List.of("paddocks.csv", "plants.csv")) {
      Files.copy(demo.resolve(file), folder.resolve(file));
    }
    String text = Files.readString(demo.resolve("farm.yaml"));
    String own =
        "\nactions:\n  ploughed:\n    like: crop-1\n    buried_seed_percent: [50, 80, 95]\n";
    Files.writeString(folder.resolve("farm.yaml"), text + own);
    FarmModel without = PlanFarms.model(PlanFarms.demo("risky-farm"));
    FarmModel with = PlanFarms.model(FarmFolder.read(folder, PlanFarms.TABLES).farm());
    assertThat(with.inputs().all().stream().map(Assumption::name))
        .contains("share of buried seed still there a year later");
    assertThat(without.inputs().all().stream().map(Assumption::name))
        .doesNotContain("share of buried seed still there a year later");
    Run run = with.newRun();
    Outcome before = without.newOutcome();
    Outcome after = with.newOutcome();
    int compared = 0;
    for (int i = 0; i < with.farm().paddocks().size(); i++) {
      if (!run.allowed(i, place(with, "ploughed"))) {
        continue;
      }
      Plan cropped = with.keepAll().with(i, place(with, "crop-1"), 0);
      Plan ploughed = with.keepAll().with(i, place(with, "ploughed"), 0);
      assertThat(run.oldShare(ploughed, i, 2)).isLessThanOrEqualTo(run.oldShare(cropped, i, 2));
      compared += run.oldShare(ploughed, i, 2) < run.oldShare(cropped, i, 2) ? 1 : 0;
      run.evaluate(cropped, after);
      without.newRun().evaluate(without.keepAll().with(i, place(without, "crop-1"), 0), before);
      assertThat(after.npv()).isEqualTo(before.npv());
    }
    assertThat(compared).isPositive();
  }

  private static int place(FarmModel model, String key) {
    return model.actions().stream().map(Action::key).toList().indexOf(key);
  }

  @Test
  void oversowing_intoAFullOldBank_hardlyChangesStrengthAndGrowth() {
    FarmModel model = PlanFarms.model(PlanFarms.demo("mixed-farm"));
    Run run = model.newRun();
    int paddock =
        model.farm().paddocks().stream().map(Paddock::name).toList().indexOf("Bottom Flat");
    int oversow = place(model, "oversow");
    double[] sums = new double[model.years() * YearSums.size(run.mobs())];
    double[] kept = sums.clone();
    run.addYears(paddock, oversow, 0, sums);
    run.addYears(paddock, model.keep(), 0, kept);
    int maidens = 1; // they alone graze Bottom Flat
    int strength = YearSums.size(run.mobs()) + YearSums.at(maidens, YearSums.DOSE);
    int feed = YearSums.size(run.mobs()) + YearSums.at(maidens, YearSums.GRAZED);
    assertThat(sums[strength] / sums[feed])
        .isCloseTo(kept[strength] / kept[feed], within(0.1 * kept[strength] / kept[feed]));
  }

  @Test
  void outcome_areasAndStockDoubled_isDoubled() {
    SplittableRandom random = new SplittableRandom(22);
    Farm farm = PlanFarms.demo("mixed-farm");
    FarmModel model = PlanFarms.model(farm);
    FarmModel twice = PlanFarms.model(doubled(farm));
    Outcome one = new Outcome(model.years());
    Outcome two = new Outcome(model.years());
    Run run = model.newRun();
    Run runTwice = twice.newRun();
    for (int round = 0; round < 20; round++) {
      Plan plan = model.keepAll();
      for (int i = 0; i < plan.paddocks(); i++) {
        int a = random.nextInt(model.actions().size());
        plan = run.allowed(i, a) ? plan.with(i, a, random.nextInt(6)) : plan;
      }
      run.evaluate(plan, one);
      runTwice.evaluate(plan, two);
      assertThat(two.npv())
          .isCloseTo(2 * one.npv(), within(1e-6 * Math.max(1, Math.abs(one.npv()))));
    }
  }

  private static Farm doubled(Farm farm) {
    List<Paddock> paddocks =
        farm.paddocks().stream().map(paddock -> withArea(paddock, 2 * paddock.areaHa())).toList();
    List<Mob> mobs =
        farm.mobs().stream().map(mob -> PlanFarms.withEwes(mob, 2 * mob.ewes())).toList();
    List<OtherStock> others =
        farm.otherStock().stream()
            .map(
                stock ->
                    new OtherStock(
                        stock.name(), 2 * stock.head(), stock.dsePerHead(), stock.months()))
            .toList();
    return new Farm(
        farm.name(),
        farm.currency(),
        farm.climate(),
        farm.feedYear(),
        paddocks,
        mobs,
        others,
        farm.supplement(),
        farm.prices(),
        farm.finance(),
        farm.extraFeedUse(),
        farm.management(),
        farm.actions(),
        farm.sownCultivar());
  }

  private static Paddock withArea(Paddock paddock, double areaHa) {
    return new Paddock(
        paddock.name(),
        areaHa,
        paddock.cloverShare(),
        paddock.growthIndex(),
        paddock.waterlogged(),
        paddock.arable(),
        paddock.leafTest(),
        paddock.use(),
        paddock.mob(),
        paddock.identifications());
  }

  @Test
  void outcome_noEwes_hasNoLossOfLambs() {
    Farm farm = PlanFarms.withMobs(PlanFarms.demo("mixed-farm"), List.of());
    FarmModel model = PlanFarms.model(farm);
    Outcome outcome = new Outcome(model.years());
    model.newRun().evaluate(model.keepAll().with(1, place(model, "spray-fallow"), 0), outcome);
    for (int t = 0; t < model.years(); t++) {
      assertThat(outcome.lambsSaved(t)).isZero();
      assertThat(outcome.pregnantShare(t)).isZero();
    }
    assertThat(new PlanSearch(model).find()).isPresent();
  }

  @Test
  void winterGrowth_worseCultivarInAPaddock_isNeverHigher() {
    Farm farm = PlanFarms.demo("current-farm");
    FarmModel current = PlanFarms.model(farm);
    Run now = current.newRun();
    for (int i = 0; i < farm.paddocks().size(); i++) {
      List<Paddock> paddocks = new ArrayList<>(farm.paddocks());
      Paddock was = paddocks.get(i);
      paddocks.set(
          i,
          new Paddock(
              was.name(),
              was.areaHa(),
              was.cloverShare(),
              was.growthIndex(),
              was.waterlogged(),
              was.arable(),
              was.leafTest(),
              was.use(),
              was.mob(),
              List.of(new Identification(List.of("Dwalganup"), 40))));
      FarmModel worse = PlanFarms.model(PlanFarms.withPaddocks(farm, paddocks));
      Run then = worse.newRun();
      assertThat(then.winterFactorNow(i)).isLessThan(now.winterFactorNow(i));
      assertThat(then.winterGrowthNow()).isLessThanOrEqualTo(now.winterGrowthNow());
      assertThat(then.boughtMj(then.winterGrowthNow()))
          .isGreaterThanOrEqualTo(now.boughtMj(now.winterGrowthNow()) - 1e-6);
    }
  }

  @Test
  void keepAll_underAnyDraw_isWorthNothing() {
    SplittableRandom random = new SplittableRandom(23);
    FarmModel model = PlanFarms.model(PlanFarms.demo("mixed-farm"));
    Run run = model.newRun();
    Outcome outcome = new Outcome(model.years());
    for (int round = 0; round < 20; round++) {
      run.set(draw(model, random));
      run.evaluate(model.keepAll(), outcome);
      assertThat(outcome.npv()).isZero();
    }
  }

  @Test
  void effortPerHa_ofTwoAYear_isTheSumNow() {
    Farm farm = PlanFarms.demo("mixed-farm");
    Finance finance =
        farm.finance()
            .withHorizonYears(10)
            .withDiscountRate(PlanFarms.exactly(farm.finance().discountRate(), 0.07));
    // 2 x (1 - 1.07^-10) / (1 - 1 / 1.07)
    double byFormula = 2 * (1 - Math.pow(1.07, -10)) / (1 - 1 / 1.07);
    assertThat(PlanFarms.model(farm.withFinance(finance)).effortPerHa())
        .isCloseTo(byFormula, within(1e-9));
    assertThat(byFormula).isCloseTo(15.03, within(0.005));
  }
}
