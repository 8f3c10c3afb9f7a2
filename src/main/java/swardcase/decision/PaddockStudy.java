package swardcase.decision;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import swardcase.chance.Dominance;
import swardcase.chance.LatinHypercube;
import swardcase.chance.Payoffs;
import swardcase.chance.Sample;
import swardcase.draws.Alternatives;
import swardcase.draws.Annuities;
import swardcase.draws.Simulation;
import swardcase.draws.Spread;
import swardcase.farm.Action;
import swardcase.farm.ActionKind;
import swardcase.outcome.FarmModel;

/** Works out the findings of one paddock from the draws. */
final class PaddockStudy {

  private static final Comparator<CourseFindings> LIKELIER_TO_PAY =
      Comparator.comparingDouble((CourseFindings course) -> course.judgement().chanceItPays())
          .thenComparingDouble(course -> course.gain().mean());

  private final FarmModel model;
  private final Simulation simulation;
  private final Alternatives alternatives;
  private final Annuities annuities;
  private final Purchases purchases;
  private final double lossLimit;

  PaddockStudy(Simulation simulation, Alternatives alternatives) {
    this.simulation = simulation;
    this.alternatives = alternatives;
    model = simulation.draws().model();
    annuities = new Annuities(simulation);
    purchases = new Purchases(simulation);
    lossLimit = model.farm().management().lossLimit().likely();
  }

  PaddockFindings of(int paddock) {
    double[][] payoff = payoff(paddock);
    Payoffs payoffs = new Payoffs(payoff);
    double[][] gain = new double[payoff.length][];
    double[][] sorted = new double[payoff.length][];
    for (int c = 0; c < payoff.length; c++) {
      gain[c] = Sample.difference(payoff[c], payoff[0]);
      sorted[c] = gain[c].clone();
      Arrays.sort(sorted[c]);
    }
    double[] regret = payoffs.expectedRegret();
    double effort = model.effort(paddock);
    LatinHypercube uniforms = simulation.draws().uniforms();
    List<CourseFindings> courses = new ArrayList<>();
    for (int c = 0; c < payoff.length; c++) {
      courses.add(
          new CourseFindings(
              alternatives.choices(paddock).get(c),
              Spread.of(gain[c], sorted[c], uniforms),
              Spread.of(annuities.of(gain[c]), uniforms),
              Sample.share(gain[c], value -> value < -lossLimit),
              Judgement.of(c == 0 ? gain[c] : less(gain[c], effort)),
              regret[c],
              beaten(sorted, c, true),
              beaten(sorted, c, false)));
    }
    int weighed = weighed(paddock, courses);
    return new PaddockFindings(
        verdict(paddock, courses, weighed),
        courses,
        weighed,
        Spread.of(
            Sample.difference(simulation.alone(paddock), simulation.npv(Alternatives.KEEP_ALL)),
            uniforms),
        payoffs.perfect(),
        purchases.leafTest(paddock, payoffs),
        purchases.plants(paddock, payoffs));
  }

  private static double[] less(double[] gain, double effort) {
    return Arrays.stream(gain).map(value -> value - effort).toArray();
  }

  private double[][] payoff(int paddock) {
    double[][] payoff = new double[alternatives.choices(paddock).size()][];
    for (int c = 0; c < payoff.length; c++) {
      payoff[c] = simulation.npv(alternatives.place(paddock, c));
    }
    return payoff;
  }

  private static List<Integer> beaten(double[][] sorted, int c, boolean firstDegree) {
    List<Integer> beaten = new ArrayList<>();
    for (int other = 0; other < sorted.length; other++) {
      boolean beats =
          firstDegree
              ? Dominance.firstDegree(sorted[c], sorted[other])
              : Dominance.secondDegree(sorted[c], sorted[other]);
      if (other != c && beats) {
        beaten.add(other);
      }
    }
    return beaten;
  }

  /**
   * The planned action stands behind keeping; a kept paddock is judged by the course likeliest to
   * pay, the better one on average of two alike.
   */
  private int weighed(int paddock, List<CourseFindings> courses) {
    if (courses.size() == 1 || alternatives.isActedOn(paddock)) {
      return courses.size() == 1 ? 0 : 1;
    }
    int best = 1;
    for (int c = 2; c < courses.size(); c++) {
      best = LIKELIER_TO_PAY.compare(courses.get(c), courses.get(best)) > 0 ? c : best;
    }
    return best;
  }

  private Verdict verdict(int paddock, List<CourseFindings> courses, int weighed) {
    if (courses.stream().skip(1).allMatch(course -> course.judgement().speaksForKeeping())) {
      return Verdict.KEEP;
    }
    CourseFindings planned = courses.get(weighed);
    if (!alternatives.isActedOn(paddock) || !planned.judgement().speaksForActing()) {
      return Verdict.TOO_CLOSE;
    }
    Action action = model.actions().get(planned.choice().action());
    return action.kind() == ActionKind.HOLD_OFF ? Verdict.HOLD_OFF : Verdict.ACT;
  }
}
