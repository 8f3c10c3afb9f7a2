package swardcase.joining;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.ojalgo.optimisation.Expression;
import org.ojalgo.optimisation.ExpressionsBasedModel;
import org.ojalgo.optimisation.Optimisation;
import swardcase.joining.LinearProgramme.Solution;
import swardcase.joining.LinearProgramme.Status;

class LinearProgrammeTest {

  private static int[] all(int count) {
    int[] places = new int[count];
    for (int k = 0; k < count; k++) {
      places[k] = k;
    }
    return places;
  }

  private static double[] times(double factor, double... numbers) {
    double[] result = numbers.clone();
    for (int k = 0; k < result.length; k++) {
      result[k] *= factor;
    }
    return result;
  }

  /**
   * Dantzig's transport problem as shipped with GAMS and GLPK. Optimum 153.675 and the duals of
   * demand 0.225, 0.153, 0.126 are published there; the distances are from memory and confirmed by
   * the match. There are two optimal plans, so the plan is not compared.
   */
  @Test
  void transport_ofTwoCanneries_costsWhatIsPublished() {
    double[] cost = times(90.0 / 1000, 2.5, 1.7, 1.8, 2.5, 1.8, 1.4);
    LinearProgramme programme = new LinearProgramme(cost);
    programme.atMost(new int[] {0, 1, 2}, new double[] {1, 1, 1}, 350);
    programme.atMost(new int[] {3, 4, 5}, new double[] {1, 1, 1}, 600);
    double[] demand = {325, 300, 275};
    double[] published = {0.225, 0.153, 0.126};
    int[] row = new int[3];
    for (int j = 0; j < 3; j++) {
      row[j] = programme.atLeast(new int[] {j, 3 + j}, new double[] {1, 1}, demand[j]);
    }
    assertThat(programme.solve().value()).isCloseTo(153.675, within(5e-4));
    for (int j = 0; j < 3; j++) {
      assertThat(programme.shadowPrice(row[j], 1)).hasValueCloseTo(published[j], within(5e-4));
    }
  }

  /**
   * The farmer of the lp_solve manual (section formulation): 6315.625 at (21.875, 53.125); the
   * prices of its rows are reckoned by hand from the two rows that bind: 0, 1.0375, 28.875.
   */
  @Test
  void farmer_wheatAndBarley_earnsWhatIsPublished() {
    LinearProgramme programme = new LinearProgramme(new double[] {-143, -60});
    int money = programme.atMost(all(2), new double[] {120, 210}, 15_000);
    int store = programme.atMost(all(2), new double[] {110, 30}, 4_000);
    int land = programme.atMost(all(2), new double[] {1, 1}, 75);
    Solution solution = programme.solve();
    assertThat(-solution.value()).isCloseTo(6315.625, within(5e-4));
    assertThat(solution.at()).containsExactly(new double[] {21.875, 53.125}, within(5e-4));
    assertThat(programme.shadowPrice(money, 1)).hasValueCloseTo(0d, within(1e-9));
    assertThat(programme.shadowPrice(store, 1)).hasValueCloseTo(-1.0375, within(5e-5));
    assertThat(programme.shadowPrice(land, 0.1)).hasValueCloseTo(-28.875, within(5e-4));
  }

  /**
   * Hazell 1971, "A linear alternative to quadratic and semivariance programming for farm
   * planning", vegetables, as held in the agridat data package: plan 0, 27.45098, 100, 72.54902.
   * The value is the plan times the margins.
   */
  @Test
  void vegetables_ofHazell_giveThePublishedPlan() {
    LinearProgramme programme = new LinearProgramme(new double[] {-253, -443, -284, -516});
    programme.atMost(all(4), new double[] {1, 1, 1, 1}, 200);
    programme.atMost(all(4), new double[] {25, 36, 27, 87}, 10_000);
    programme.atMost(all(4), new double[] {-1, 1, -1, 1}, 0);
    Solution solution = programme.solve();
    assertThat(solution.at())
        .containsExactly(new double[] {0, 27.45098, 100, 72.54902}, within(5e-6));
    assertThat(-solution.value()).isCloseTo(77_996.078, within(5e-4));
  }

  /**
   * A cooperative's three crops' land, chemicals and labour (Harshbarger and Reynolds, textbook
   * exercise, inputs as republished): the optimum is reckoned by hand from the binding rows.
   */
  @Test
  void cooperative_ofTwoCrops_earnsWhatItsBindingRowsGive() {
    LinearProgramme programme = new LinearProgramme(new double[] {-240, -160});
    int land = programme.atMost(all(2), new double[] {1, 1}, 6_000);
    int chemical = programme.atMost(all(2), new double[] {9, 3}, 40_500);
    int labour = programme.atMost(all(2), new double[] {0.75, 1}, 5_250);
    Solution solution = programme.solve();
    assertThat(-solution.value()).isCloseTo(1_260_000, within(1e-3));
    assertThat(solution.at()).containsExactly(new double[] {3_750, 2_250}, within(1e-6));
    assertThat(programme.shadowPrice(land, 1)).hasValueCloseTo(-120d, within(1e-6));
    assertThat(programme.shadowPrice(chemical, 1)).hasValueCloseTo(-40 / 3.0, within(1e-6));
    assertThat(programme.shadowPrice(labour, 1)).hasValueCloseTo(0d, within(1e-9));
  }

  /** The glass works of Hillier and Lieberman's textbook, from memory: 36 at (2, 6). */
  @Test
  void glassWorks_ofTwoProducts_earnsWhatIsPublished() {
    LinearProgramme programme = new LinearProgramme(new double[] {-3, -5});
    int one = programme.atMost(new int[] {0}, new double[] {1}, 4);
    int two = programme.atMost(new int[] {1}, new double[] {2}, 12);
    int three = programme.atMost(all(2), new double[] {3, 2}, 18);
    Solution solution = programme.solve();
    assertThat(-solution.value()).isCloseTo(36, within(1e-9));
    assertThat(solution.at()).containsExactly(new double[] {2, 6}, within(1e-9));
    assertThat(programme.shadowPrice(one, 0.5)).hasValueCloseTo(0d, within(1e-9));
    assertThat(programme.shadowPrice(two, 0.5)).hasValueCloseTo(-1.5, within(1e-9));
    assertThat(programme.shadowPrice(three, 0.5)).hasValueCloseTo(-1d, within(1e-9));
  }

  @Test
  void solve_ofRowsThatContradict_saysInfeasible() {
    LinearProgramme programme = new LinearProgramme(new double[] {1});
    programme.atLeast(all(1), new double[] {1}, 5);
    int row = programme.atMost(all(1), new double[] {1}, 4);
    assertThat(programme.solve().status()).isEqualTo(Status.INFEASIBLE);
    assertThat(programme.shadowPrice(row, 1)).isEmpty();
  }

  @Test
  void solve_ofACostWithoutFloor_saysUnbounded() {
    LinearProgramme programme = new LinearProgramme(new double[] {-1, 0});
    programme.atMost(all(2), new double[] {-1, 1}, 4);
    assertThat(programme.solve().status()).isEqualTo(Status.UNBOUNDED);
  }

  /** By hand: four of the cheap one and six of the dear one, and one more would be a dear one. */
  @Test
  void row_thatIsExact_hasThePriceOfOneMore() {
    LinearProgramme programme = new LinearProgramme(new double[] {2, 3});
    programme.atMost(new int[] {0}, new double[] {1}, 4);
    int sum = programme.exactly(all(2), new double[] {1, 1}, 10);
    assertThat(programme.solve().value()).isCloseTo(26, within(1e-9));
    assertThat(programme.shadowPrice(sum, 1)).hasValueCloseTo(3d, within(1e-9));
    assertThat(programme.rows()).isEqualTo(2);
  }

  @Test
  void rows_withNumbersThatAreNone_areRefused() {
    LinearProgramme programme = new LinearProgramme(new double[] {1});
    assertThatThrownBy(() -> programme.atMost(all(1), new double[] {1, 2}, 1))
        .hasMessageContaining("a place for each number");
    assertThatThrownBy(() -> programme.atMost(all(1), new double[] {Double.NaN}, 1))
        .hasMessageContaining("coefficient must be a number");
    assertThatThrownBy(() -> programme.atMost(all(1), new double[] {1}, Double.NaN))
        .hasMessageContaining("right side");
    assertThatThrownBy(() -> programme.atMost(new int[] {1}, new double[] {1}, 1))
        .hasMessageContaining("no variable 1");
  }

  /** Rows of sizes from a thousandth to a thousand, equalities and many ties among them. */
  @Test
  void solve_ofRandomProgrammes_agreesWithASecondSolver() {
    SplittableRandom random = new SplittableRandom(41);
    for (int trial = 0; trial < 120; trial++) {
      int n = random.nextInt(4, 40);
      int m = random.nextInt(3, 50);
      double[] inside = new double[n];
      double[] cost = new double[n];
      for (int k = 0; k < n; k++) {
        inside[k] = random.nextInt(3) == 0 ? 0 : random.nextInt(1, 10);
        cost[k] = random.nextInt(0, 20);
      }
      LinearProgramme programme = new LinearProgramme(cost);
      ExpressionsBasedModel model = new ExpressionsBasedModel();
      for (int k = 0; k < n; k++) {
        model.addVariable("x" + k).lower(0).weight(cost[k]);
      }
      for (int r = 0; r < m; r++) {
        double size = Math.pow(10, random.nextInt(-3, 4));
        double[] row = new double[n];
        double sum = 0;
        for (int k = 0; k < n; k++) {
          row[k] = random.nextInt(3) > 0 ? 0 : size * random.nextInt(-2, 8);
          sum += row[k] * inside[k];
        }
        Expression expression = model.newExpression("r" + r);
        for (int k = 0; k < n; k++) {
          expression.set(k, row[k]);
        }
        int kind = random.nextInt(5);
        double slack = size * random.nextInt(4);
        if (kind == 0) {
          programme.exactly(all(n), row, sum);
          expression.level(sum);
        } else if (kind < 3) {
          programme.atMost(all(n), row, sum + slack);
          expression.upper(sum + slack);
        } else {
          programme.atLeast(all(n), row, sum - slack);
          expression.lower(sum - slack);
        }
      }
      Solution ours = programme.solve();
      Optimisation.Result theirs = model.minimise();
      assertThat(ours.status()).as("trial %s", trial).isEqualTo(Status.OPTIMAL);
      if (theirs.getState().isOptimal()) {
        assertThat(ours.value())
            .as("trial %s", trial)
            .isCloseTo(theirs.getValue(), within(1e-6 * Math.max(1, ours.value())));
      }
    }
  }
}
