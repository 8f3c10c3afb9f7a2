package swardcase.joining;

/**
 * Grazing without a plan: each group spreads over the paddocks open to it by the feed they give,
 * and goes on to the others when one is eaten down. Other stock first take the paddocks that no
 * ewes use.
 */
final class EvenGrazing {

  private static final int ROUNDS = 40;

  private final GrazingProblem problem;
  private final boolean[][][] open;
  private final double[] thereKg;

  private EvenGrazing(GrazingProblem problem, boolean[][][] open) {
    this.problem = problem;
    this.open = open;
    thereKg = new double[problem.paddocks];
  }

  /** The shares; {@code open} by group, half-month and paddock. */
  static Grazing of(GrazingProblem problem, boolean[][][] open) {
    return new EvenGrazing(problem, open).graze();
  }

  private Grazing graze() {
    double[][][] share = new double[problem.groups][problem.halfMonths][problem.paddocks];
    double[] leftKg = problem.startKg.clone();
    for (int p = 0; p < problem.halfMonths; p++) {
      for (int i = 0; i < leftKg.length; i++) {
        leftKg[i] += problem.grownKg[p][i];
        thereKg[i] = Math.max(0, leftKg[i] - problem.leastKg[p][i] / problem.kept[p]);
      }
      double[] hungry = new double[problem.groups];
      for (int g = 0; g < hungry.length; g++) {
        hungry[g] = problem.takenKg(g, p);
      }
      double[] before = thereKg.clone();
      for (int round = 0; round < ROUNDS; round++) {
        round(p, hungry, share, false);
      }
      for (int round = 0; round < ROUNDS; round++) {
        round(p, hungry, share, true);
      }
      for (int i = 0; i < leftKg.length; i++) {
        leftKg[i] = problem.kept[p] * (leftKg[i] - (before[i] - thereKg[i]));
      }
    }
    return new Grazing(share);
  }

  /** One round: every group asks, a paddock gives what it has in proportion. */
  private void round(int p, double[] hungry, double[][][] share, boolean everywhere) {
    double[][] asked = new double[problem.groups][problem.paddocks];
    double[] all = new double[problem.paddocks];
    for (int g = 0; g < problem.groups; g++) {
      double weight = 0;
      for (int i = 0; i < all.length; i++) {
        weight += mayGo(g, p, i, everywhere) ? problem.weight[i] : 0;
      }
      for (int i = 0; i < all.length && weight > 0; i++) {
        if (mayGo(g, p, i, everywhere)) {
          asked[g][i] = hungry[g] * problem.weight[i] / weight;
          all[i] += asked[g][i];
        }
      }
    }
    for (int i = 0; i < all.length; i++) {
      double given = all[i] > 0 ? Math.min(1, thereKg[i] / all[i]) : 0;
      for (int g = 0; g < problem.groups && given > 0; g++) {
        double kg = given * asked[g][i];
        hungry[g] -= kg;
        share[g][p][i] += kg > 0 ? kg / problem.takenKg(g, p) : 0;
      }
      thereKg[i] -= given * all[i];
    }
  }

  private boolean mayGo(int g, int p, int i, boolean everywhere) {
    if (!open[g][p][i] || thereKg[i] <= 1e-6) {
      return false;
    }
    if (g < problem.ewes || everywhere) {
      return true;
    }
    for (int e = 0; e < problem.ewes; e++) {
      if (open[e][p][i]) {
        return false;
      }
    }
    return true;
  }
}
