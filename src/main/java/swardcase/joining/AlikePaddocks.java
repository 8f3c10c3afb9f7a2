package swardcase.joining;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * Paddocks with clover of almost the same strength taken together, so that a large farm takes no
 * longer than a middling one.
 *
 * <p>Up to {@value #MOST_ALONE} paddocks each stands for itself. Of more, those are taken together
 * that fall into the same one of {@value #BANDS} bands of strength, of equal width up to the
 * strongest, if the same groups may graze them and they are risky in the same half-months; clover
 * without formononetin has a band of its own. Their feed is added up, a group that takes of it
 * takes of each by the feed it gives, and that costs the mean of their costs by feed. This is exact
 * where paddocks are equally strong, because feed there, growth and what must be left all lie in
 * the same proportion ({@link JoiningCase#problem}). With the strongest at 0.6 % of intake two
 * paddocks of a band differ by 0.025 at most.
 */
final class AlikePaddocks {

  static final int MOST_ALONE = 40;
  static final int BANDS = 24;

  private final GrazingProblem problem;
  private final double[][][] cost;
  private final double[] strength;
  private final int[] together;
  private final double[] part;

  private AlikePaddocks(
      GrazingProblem problem, double[][][] cost, double[] strength, int[] together, double[] part) {
    this.problem = problem;
    this.cost = cost;
    this.strength = strength;
    this.together = together;
    this.part = part;
  }

  /** What makes paddocks alike. */
  private record Mark(int band, List<Boolean> open, List<Boolean> risky) {}

  /**
   * Paddocks as the rule takes them.
   *
   * @param strength formononetin of each paddock's green feed, % of intake
   * @param cost by group, half-month and paddock; infinite where it must not go
   */
  static AlikePaddocks of(GrazingProblem problem, double[] strength, double[][][] cost) {
    int[] together = new int[problem.paddocks];
    double[] part = new double[problem.paddocks];
    if (problem.paddocks <= MOST_ALONE) {
      Arrays.setAll(together, i -> i);
      Arrays.fill(part, 1);
      return new AlikePaddocks(problem, cost, strength, together, part);
    }
    double width = Arrays.stream(strength).max().orElse(0) / BANDS;
    Map<Mark, Integer> places = new LinkedHashMap<>();
    List<Double> weights = new ArrayList<>();
    for (int i = 0; i < together.length; i++) {
      int band = width > 0 ? (int) Math.ceil(strength[i] / width - 1e-9) : 0;
      Mark mark = new Mark(band, open(problem, cost, i), risky(problem, i));
      together[i] = places.computeIfAbsent(mark, any -> places.size());
      if (together[i] == weights.size()) {
        weights.add(0.0);
      }
      weights.set(together[i], weights.get(together[i]) + problem.weight[i]);
    }
    for (int i = 0; i < part.length; i++) {
      double all = weights.get(together[i]);
      part[i] = all > 0 ? problem.weight[i] / all : 0;
    }
    return joined(problem, cost, strength, together, part, weights.size());
  }

  private static List<Boolean> open(GrazingProblem problem, double[][][] cost, int paddock) {
    List<Boolean> open = new ArrayList<>();
    for (int g = 0; g < problem.groups; g++) {
      for (int p = 0; p < problem.halfMonths; p++) {
        open.add(Double.isFinite(cost[g][p][paddock]));
      }
    }
    return open;
  }

  private static List<Boolean> risky(GrazingProblem problem, int paddock) {
    return Arrays.stream(problem.riskyDays).map(days -> days[paddock] > 0).toList();
  }

  private static AlikePaddocks joined(
      GrazingProblem problem,
      double[][][] cost,
      double[] strength,
      int[] together,
      double[] part,
      int count) {
    double[][][] mean = new double[problem.groups][problem.halfMonths][];
    for (int g = 0; g < problem.groups; g++) {
      for (int p = 0; p < problem.halfMonths; p++) {
        mean[g][p] = sums(cost[g][p], part, together, count);
      }
    }
    return new AlikePaddocks(
        problem.joined(together, count),
        mean,
        sums(strength, part, together, count),
        together,
        part);
  }

  private static double[] sums(double[] numbers, double[] times, int[] together, int count) {
    double[] sums = new double[count];
    for (int i = 0; i < numbers.length; i++) {
      sums[together[i]] += times[i] > 0 ? numbers[i] * times[i] : 0;
    }
    return sums;
  }

  /** The problem with paddocks taken together. */
  GrazingProblem problem() {
    return problem;
  }

  /** Its costs. */
  double[][][] cost() {
    return cost;
  }

  /** The strength of its paddocks. */
  double[] strength() {
    return strength;
  }

  /** A way of grazing of that problem, told for every paddock. */
  Grazing ofEach(Grazing grazing) {
    double[][][] share = new double[problem.groups][problem.halfMonths][together.length];
    for (int g = 0; g < problem.groups; g++) {
      for (int p = 0; p < problem.halfMonths; p++) {
        for (int i = 0; i < together.length; i++) {
          share[g][p][i] = grazing.share(g, p, together[i]) * part[i];
        }
      }
    }
    return new Grazing(share);
  }
}
