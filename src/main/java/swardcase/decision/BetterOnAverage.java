package swardcase.decision;

import java.util.Optional;
import swardcase.chance.Sample;
import swardcase.draws.Alternatives;
import swardcase.draws.Simulation;
import swardcase.outcome.Course;
import swardcase.outcome.FarmModel;

/**
 * The one change of the plan that gains most on average over the draws, if any gains beyond its
 * effort and beyond the luck of the draws. The plan is chosen at likely values, and lopsided ranges
 * can make another choice better on average. The best of many is somewhat flattered.
 *
 * @param paddock whose choice is changed
 * @param course the other choice
 * @param gain mean over the draws of what the plan with the change brings more, effort counted
 * @param standardError of it
 */
public record BetterOnAverage(int paddock, Course course, double gain, double standardError) {

  /** A gain of fewer standard errors may be luck. */
  private static final double ERRORS = 3;

  static Optional<BetterOnAverage> of(Simulation simulation, Alternatives alternatives) {
    FarmModel model = simulation.draws().model();
    Optional<BetterOnAverage> best = Optional.empty();
    for (int i = 0; i < alternatives.paddocks(); i++) {
      double effort = model.effort(i);
      double saved = alternatives.isActedOn(i) ? effort : 0;
      for (int c = 0; c < alternatives.choices(i).size(); c++) {
        Course course = alternatives.choices(i).get(c);
        double spent = course.action() == model.keep() ? 0 : effort;
        double[] npv = simulation.npv(alternatives.place(i, c));
        double[] gain = Sample.difference(npv, simulation.npv(Alternatives.PLAN));
        double mean = Sample.mean(gain) + saved - spent;
        double error = simulation.draws().uniforms().standardError(gain);
        if (mean > ERRORS * error && (best.isEmpty() || mean > best.get().gain())) {
          best = Optional.of(new BetterOnAverage(i, course, mean, error));
        }
      }
    }
    return best;
  }
}
