package swardcase.search;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import swardcase.FarmCopy;
import swardcase.RandomFarms;
import swardcase.evidence.Assumption;
import swardcase.farm.Action;
import swardcase.farm.Farm;
import swardcase.farm.Paddock;
import swardcase.intake.FarmFolder;
import swardcase.outcome.Draw;
import swardcase.outcome.FarmModel;
import swardcase.outcome.Outcome;
import swardcase.outcome.OutcomeFunction;
import swardcase.outcome.Plan;
import swardcase.outcome.YearSums;

/** What must hold for every farm and every draw of its uncertain numbers. */
class PlanLawsTest {

  private static final int FARMS = 100;

  private static double[] draw(FarmModel model, SplittableRandom random) {
    return RandomFarms.draw(model.inputs().all(), random);
  }

  @Test
  void npvOfBaseWith_anyChange_isThatOfThePlanWithThatChange() {
    SplittableRandom random = new SplittableRandom(2611);
    for (int farm = 0; farm < FARMS; farm++) {
      FarmModel model = PlanFarms.model(RandomFarms.any(random));
      OutcomeFunction run = model.newRun();
      OutcomeFunction whole = model.newRun();
      Outcome added = new Outcome(model.years());
      double[] x = draw(model, random);
      run.set(x);
      whole.set(x);
      Plan base = model.keepAll();
      for (int i = 0; i < base.paddocks(); i++) {
        int action = random.nextInt(model.actions().size());
        int start = random.nextInt(Math.min(FarmModel.START_YEARS, model.years()));
        if (!run.allowed(i, action)) {
          continue;
        }
        run.setBase(base);
        whole.evaluate(base, added);
        assertThat(run.npvOfBaseWith(i, base.action(i), base.start(i))).isEqualTo(added.npv());
        double changed = run.npvOfBaseWith(i, action, start);
        base = base.with(i, action, start);
        whole.evaluate(base, added);
        assertThat(changed).isCloseTo(added.npv(), within(1e-6));
      }
    }
  }

  @Test
  void plantShares_ofEverySowing_lieInZeroToOneAndAddUpToOne() {
    SplittableRandom random = new SplittableRandom(21);
    for (int farm = 0; farm < FARMS; farm++) {
      FarmModel model = PlanFarms.model(RandomFarms.any(random));
      OutcomeFunction run = model.newRun();
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

  /** A cultivar that neither stands in the paddock nor is sown never comes up. */
  @Test
  void plantShares_ofACultivarThatIsNotThere_stayNothing() {
    SplittableRandom random = new SplittableRandom(24);
    int absent = 0;
    for (int farm = 0; farm < FARMS; farm++) {
      FarmModel model = PlanFarms.model(RandomFarms.any(random));
      OutcomeFunction run = model.newRun();
      int paddocks = model.farm().paddocks().size();
      Draw draw = new Draw(model);
      System.arraycopy(draw(model, random), 0, draw.numbers, 0, draw.numbers.length);
      double[][] standing = draw.shares;
      for (int i = 0; i < paddocks; i++) {
        standing[i][random.nextInt(standing[i].length)] = 1;
      }
      run.set(draw);
      for (int i = 0; i < paddocks; i++) {
        for (int a = 0; a < model.actions().size(); a++) {
          int species = standing[i].length + 1;
          double[] shares = model.actions().get(a).sows() ? run.plantShares(i, a) : new double[0];
          for (int k = 0; k < shares.length; k++) {
            int c = k % species;
            if (c < standing[i].length && standing[i][c] == 0) {
              assertThat(shares[k]).isZero();
              absent++;
            }
          }
        }
      }
    }
    assertThat(absent).isGreaterThan(FARMS);
  }

  /**
   * Of all that stood before, where no cultivar crowds out another. Old cultivars by themselves may
   * take a larger share where they are harder-seeded than the cultivars beside them, since those
   * die out first; so may all of them, where those that are left crowd more.
   */
  @Test
  void shareOfTheStandBefore_moreRunDownYears_isNeverHigherAtTheSameAgeOfTheStand() {
    SplittableRandom random = new SplittableRandom(25);
    List<Action> all = PlanFarms.demo("mixed-farm").actions();
    Action crop = all.get(place(all, "crop-1"));
    List<Action> actions = new ArrayList<>(List.of(all.get(place(all, "keep"))));
    for (int years = 0; years < 5; years++) {
      actions.add(withRunDownYears(crop, years));
    }
    int compared = 0;
    for (int farm = 0; farm < FARMS; farm++) {
      Farm any = FarmCopy.of(RandomFarms.any(random)).actions(actions).build();
      FarmModel model = PlanFarms.model(any);
      OutcomeFunction run = model.newRun();
      double[] numbers = draw(model, random);
      for (String key : model.tables().parameters().keySet()) {
        if (key.startsWith("seed.crowding.")) {
          model.inputs().find(key).ifPresent(place -> numbers[place] = 1);
        }
      }
      run.set(numbers);
      for (int i = 0; i < any.paddocks().size(); i++) {
        for (int years = 1; years < 5 && run.allowed(i, 1); years++) {
          double[] fewer = run.plantShares(i, years);
          double[] longer = run.plantShares(i, years + 1);
          int species = run.composition(i).size() + 1;
          for (int t = years; t < model.years(); t++) {
            double before = 1 - fewer[(t - 1) * species + species - 1];
            double after = 1 - longer[t * species + species - 1];
            assertThat(after).isLessThanOrEqualTo(before + 1e-9);
            compared++;
          }
        }
      }
    }
    assertThat(compared).isGreaterThan(FARMS);
  }

  private static Action withRunDownYears(Action crop, int years) {
    return new Action(
        "crop-" + years,
        crop.name(),
        crop.kind(),
        crop.needsArable(),
        years,
        crop.cropped(),
        crop.monthsUngrazed(),
        crop.numbers(),
        crop.costs(),
        Optional.empty());
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
    OutcomeFunction run = with.newRun();
    Outcome before = without.newOutcome();
    Outcome after = with.newOutcome();
    int compared = 0;
    for (int i = 0; i < with.farm().paddocks().size(); i++) {
      if (!run.allowed(i, place(with.actions(), "ploughed"))) {
        continue;
      }
      Plan cropped = with.keepAll().with(i, place(with.actions(), "crop-1"), 0);
      Plan ploughed = with.keepAll().with(i, place(with.actions(), "ploughed"), 0);
      assertThat(run.oldShare(ploughed, i, 2)).isLessThanOrEqualTo(run.oldShare(cropped, i, 2));
      compared += run.oldShare(ploughed, i, 2) < run.oldShare(cropped, i, 2) ? 1 : 0;
      run.evaluate(cropped, after);
      without
          .newRun()
          .evaluate(without.keepAll().with(i, place(without.actions(), "crop-1"), 0), before);
      assertThat(after.npv()).isEqualTo(before.npv());
    }
    assertThat(compared).isPositive();
  }

  private static int place(List<Action> actions, String key) {
    return actions.stream().map(Action::key).toList().indexOf(key);
  }

  @Test
  void oversowing_intoAFullOldBank_hardlyChangesStrengthAndGrowth() {
    FarmModel model = PlanFarms.model(PlanFarms.demo("mixed-farm"));
    OutcomeFunction run = model.newRun();
    int paddock =
        model.farm().paddocks().stream().map(Paddock::name).toList().indexOf("Bottom Flat");
    int oversow = place(model.actions(), "oversow");
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

  /** Own labour is not paid, so no money is needed for it. */
  @Test
  void feasible_withoutMoney_allowsOwnLabourAlone() {
    Farm farm = PlanFarms.demo("mixed-farm");
    FarmModel model = PlanFarms.model(farm.withFinance(farm.finance().withBudgetPerYear(0)));
    LikelySearch search = new LikelySearch(model);
    int paddock = farm.paddocks().stream().map(Paddock::name).toList().indexOf("Bottom Flat");
    Plan held =
        model.keepAll().with(paddock, place(model.actions(), "keep-off-maidens-before-joining"), 0);
    Outcome outcome = new Outcome(model.years());
    model.newRun().evaluate(held, outcome);
    assertThat(outcome.labourCost(0))
        .isCloseTo(0.6 * farm.paddocks().get(paddock).areaHa(), within(1e-9));
    assertThat(outcome.actionCost(0)).isZero();
    assertThat(search.feasible(held)).isTrue();
    assertThat(search.feasible(model.keepAll().with(paddock, place(model.actions(), "oversow"), 0)))
        .isFalse();
  }
}
