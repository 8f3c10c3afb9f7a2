package swardcase.joining;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.ojalgo.optimisation.Expression;
import org.ojalgo.optimisation.ExpressionsBasedModel;
import org.ojalgo.optimisation.Optimisation;
import org.ojalgo.optimisation.Variable;
import swardcase.joining.LinearProgramme.Solution;

class GrazingPlanTest {

  private static final int TRIALS = 60;

  /** A farm of the trial's own: feed, needs and what must be left are drawn, some of them zero. */
  private static GrazingProblem random(SplittableRandom random, int paddocks) {
    int groups = random.nextInt(1, 4);
    int halves = random.nextInt(1, 8);
    double[] weight = new double[paddocks];
    double[] start = new double[paddocks];
    double[][] grown = new double[halves][paddocks];
    double[][] least = new double[halves][paddocks];
    double[][] risky = new double[halves][paddocks];
    double[] kept = new double[halves];
    double[] energy = new double[halves];
    double[][] need = new double[groups][halves];
    for (int i = 0; i < paddocks; i++) {
      weight[i] = random.nextDouble(0.5, 2);
      start[i] = random.nextInt(4) == 0 ? 0 : random.nextDouble(0, 60_000);
    }
    for (int p = 0; p < halves; p++) {
      kept[p] = random.nextDouble(0.8, 1);
      energy[p] = random.nextDouble(6, 11);
      for (int i = 0; i < paddocks; i++) {
        grown[p][i] = random.nextDouble(0, 20_000);
        least[p][i] = random.nextDouble(0, 8_000);
        risky[p][i] = random.nextBoolean() ? 15 : 0;
      }
      for (int g = 0; g < groups; g++) {
        need[g][p] = random.nextInt(5) == 0 ? 0 : random.nextDouble(0, 400_000);
      }
    }
    double[] mostRiskyDays = new double[groups];
    Arrays.fill(mostRiskyDays, Double.POSITIVE_INFINITY);
    if (groups > 1) {
      mostRiskyDays[groups - 1] = 20;
    }
    return new GrazingProblem(
        Math.max(1, groups - 1),
        weight,
        start,
        grown,
        least,
        kept,
        energy,
        need,
        0.03,
        risky,
        mostRiskyDays);
  }

  private static double[][][] costs(SplittableRandom random, GrazingProblem problem) {
    double[][][] cost = new double[problem.groups][problem.halfMonths][problem.paddocks];
    for (double[][] ofGroup : cost) {
      for (double[] ofHalf : ofGroup) {
        Arrays.setAll(ofHalf, i -> random.nextInt(3) == 0 ? 0 : random.nextDouble(0, 9_000));
      }
    }
    return cost;
  }

  private static Solution solve(GrazingProblem problem, double[][][] cost) {
    return new GrazingPlan(problem, cost).solve();
  }

  @Test
  void plan_ofAnyFarm_agreesWithASecondSolverAndAnotherWayOfWritingFeedLeft() {
    SplittableRandom random = new SplittableRandom(7);
    for (int trial = 0; trial < TRIALS; trial++) {
      GrazingProblem problem = random(random, random.nextInt(1, 7));
      double[][][] cost = costs(random, problem);
      Solution ours = solve(problem, cost);
      assertThat(ours.isOptimal()).as("trial %s", trial).isTrue();
      double theirs = withStocks(problem, cost);
      assertThat(ours.value())
          .as("trial %s", trial)
          .isCloseTo(theirs, within(1e-5 * Math.max(100, theirs)));
    }
  }

  /** The same farm with feed left as variables, for the other solver. */
  private static double withStocks(GrazingProblem problem, double[][][] cost) {
    ExpressionsBasedModel model = new ExpressionsBasedModel();
    Variable[][][] share = new Variable[problem.groups][problem.halfMonths][problem.paddocks];
    Variable[][] left = new Variable[problem.halfMonths][problem.paddocks];
    double tonne = 1000;
    for (int p = 0; p < problem.halfMonths; p++) {
      for (int i = 0; i < problem.paddocks; i++) {
        left[p][i] = model.addVariable("left" + p + "." + i).lower(0);
      }
    }
    for (int g = 0; g < problem.groups; g++) {
      Expression days = model.newExpression("days" + g);
      for (int p = 0; p < problem.halfMonths; p++) {
        Variable bought =
            model
                .addVariable("bought" + g + "." + p)
                .lower(0)
                .weight(problem.pricePerMj * problem.pastureNeedMj[g][p]);
        Expression need = model.newExpression("need" + g + "." + p).level(1).set(bought, 1);
        for (int i = 0; i < problem.paddocks; i++) {
          share[g][p][i] =
              model.addVariable("share" + g + "." + p + "." + i).lower(0).weight(cost[g][p][i]);
          need.set(share[g][p][i], 1);
          days.set(share[g][p][i], problem.riskyDays[p][i]);
        }
      }
      if (problem.isLimited(g)) {
        days.upper(problem.mostRiskyDays[g]);
      }
    }
    for (int i = 0; i < problem.paddocks; i++) {
      double most = problem.startKg[i];
      for (int p = 0; p < problem.halfMonths; p++) {
        most = problem.kept[p] * (most + problem.grownKg[p][i]);
        double before = p == 0 ? problem.startKg[i] : 0;
        Expression balance =
            model
                .newExpression("feed" + p + "." + i)
                .level(problem.kept[p] * (before + problem.grownKg[p][i]) / tonne)
                .set(left[p][i], 1);
        if (p > 0) {
          balance.set(left[p - 1][i], -problem.kept[p]);
        }
        for (int g = 0; g < problem.groups; g++) {
          balance.set(share[g][p][i], problem.kept[p] * problem.takenKg(g, p) / tonne);
        }
        left[p][i].lower(Math.min(problem.leastKg[p][i], most) / tonne);
      }
    }
    Optimisation.Result result = model.minimise();
    assertThat(result.getState().isOptimal()).isTrue();
    return result.getValue();
  }

  @Test
  void plan_withASaferPaddock_neverCostsMore() {
    SplittableRandom random = new SplittableRandom(8);
    for (int trial = 0; trial < TRIALS; trial++) {
      GrazingProblem problem = random(random, random.nextInt(1, 6));
      double[][][] cost = costs(random, problem);
      double before = solve(problem, cost).value();
      int safer = random.nextInt(problem.paddocks);
      for (double[][] ofGroup : cost) {
        for (double[] ofHalf : ofGroup) {
          ofHalf[safer] *= random.nextDouble();
        }
      }
      assertThat(solve(problem, cost).value())
          .as("trial %s", trial)
          .isLessThanOrEqualTo(before + 1e-6 * Math.max(1, before));
    }
  }

  @Test
  void plan_withOneMoreSafePaddock_neverCostsMore() {
    SplittableRandom random = new SplittableRandom(9);
    for (int trial = 0; trial < TRIALS; trial++) {
      GrazingProblem with = random(random, random.nextInt(2, 7));
      double[][][] cost = costs(random, with);
      double[][][] without = new double[with.groups][with.halfMonths][];
      for (int g = 0; g < with.groups; g++) {
        for (int p = 0; p < with.halfMonths; p++) {
          cost[g][p][0] = 0;
          without[g][p] = cost[g][p].clone();
          without[g][p][0] = Double.POSITIVE_INFINITY;
        }
      }
      double value = solve(with, without).value();
      assertThat(solve(with, cost).value())
          .as("trial %s", trial)
          .isLessThanOrEqualTo(value + 1e-6 * Math.max(1, value));
    }
  }

  @Test
  void grazing_planned_leavesWhatMustBeLeft() {
    SplittableRandom random = new SplittableRandom(10);
    for (int trial = 0; trial < TRIALS; trial++) {
      GrazingProblem problem = random(random, random.nextInt(1, 7));
      GrazingPlan plan = new GrazingPlan(problem, costs(random, problem));
      assertLeft(problem, plan.grazing(plan.solve()), trial, true);
    }
  }

  @Test
  void grazing_spreadEvenly_leavesWhatMustBeLeftAndBuysOnlyWhenAllIsEaten() {
    SplittableRandom random = new SplittableRandom(11);
    for (int trial = 0; trial < TRIALS; trial++) {
      GrazingProblem problem = random(random, random.nextInt(1, 7));
      boolean[][][] open = new boolean[problem.groups][problem.halfMonths][problem.paddocks];
      for (boolean[][] ofGroup : open) {
        for (boolean[] ofHalf : ofGroup) {
          Arrays.fill(ofHalf, true);
        }
      }
      Grazing grazing = EvenGrazing.of(problem, open);
      double[] left = assertLeft(problem, grazing, trial, false);
      int last = problem.halfMonths - 1;
      if (problem.boughtMj(grazing, last) > 1) {
        for (int i = 0; i < problem.paddocks; i++) {
          assertThat(left[i])
              .as("trial %s", trial)
              .isLessThanOrEqualTo(problem.leastKg[last][i] * (1 + 1e-6) + 1);
        }
      }
    }
  }

  /**
   * Walks the feed forward; what must be left is left. Grazing without a plan does not look ahead:
   * of it only half-months in which the paddock was grazed are asked.
   */
  private static double[] assertLeft(
      GrazingProblem problem, Grazing grazing, int trial, boolean planned) {
    double[] left = problem.startKg.clone();
    double[] untouched = problem.startKg.clone();
    for (int p = 0; p < problem.halfMonths; p++) {
      for (int i = 0; i < problem.paddocks; i++) {
        double taken = 0;
        for (int g = 0; g < problem.groups; g++) {
          taken += grazing.share(g, p, i) * problem.takenKg(g, p);
          assertThat(grazing.share(g, p, i)).isBetween(0.0, 1 + 1e-9);
        }
        left[i] = problem.kept[p] * (left[i] + problem.grownKg[p][i] - taken);
        untouched[i] = problem.kept[p] * (untouched[i] + problem.grownKg[p][i]);
        boolean asked = planned || taken > 0;
        double least = asked ? Math.min(problem.leastKg[p][i], untouched[i]) : 0;
        assertThat(left[i]).as("trial %s", trial).isGreaterThanOrEqualTo(least - 0.1);
      }
    }
    return left;
  }

  @Test
  void plan_whereNothingMayBeGrazed_buysEverything() {
    GrazingProblem problem = random(new SplittableRandom(12), 3);
    double[][][] barred = new double[problem.groups][problem.halfMonths][problem.paddocks];
    for (double[][] ofGroup : barred) {
      for (double[] ofHalf : ofGroup) {
        Arrays.fill(ofHalf, Double.POSITIVE_INFINITY);
      }
    }
    GrazingPlan plan = new GrazingPlan(problem, barred);
    double need = Arrays.stream(problem.pastureNeedMj).flatMapToDouble(Arrays::stream).sum();
    Solution solution = plan.solve();
    assertThat(solution.value()).isCloseTo(0.03 * need, within(1e-6 * need));
    assertThat(problem.boughtMj(plan.grazing(solution))).isCloseTo(need, within(1e-6 * need));
  }
}
