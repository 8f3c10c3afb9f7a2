package swardcase.decision;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.OptionalDouble;
import swardcase.chance.Sample;
import swardcase.chance.StraightLine;
import swardcase.draws.Alternatives;
import swardcase.draws.Simulation;
import swardcase.outcome.OutcomeFunction;

/** Break-even values of the inputs people ask about, read from the draws. */
final class BreakEvens {

  /** An input to be looked at, for the gain of one paddock or, below 0, of the plan. */
  private record Question(int input, int paddock) {}

  private final Decision decision;
  private final Simulation simulation;

  private BreakEvens(Decision decision) {
    this.decision = decision;
    simulation = decision.simulation();
  }

  /**
   * Of the plan: lamb price, supplement price. Of each paddock the plan acts on: its clover share,
   * its share of old cultivars, and the chance that the sowing takes.
   */
  static List<BreakEvenValue> of(Decision decision) {
    BreakEvens breakEvens = new BreakEvens(decision);
    List<Question> questions = breakEvens.questions();
    return questions.stream().map(each -> breakEvens.answer(each, questions.size())).toList();
  }

  private List<Question> questions() {
    OutcomeFunction run = decision.likely();
    var inputs = decision.model().inputs();
    List<Question> questions = new ArrayList<>();
    questions.add(new Question(inputs.place(OutcomeFunction.LAMB_VALUE), -1));
    questions.add(new Question(inputs.place(OutcomeFunction.SUPPLEMENT_PRICE), -1));
    for (int i = 0; i < decision.plan().paddocks(); i++) {
      if (decision.isActedOn(i)) {
        int action = decision.plan().action(i);
        questions.add(new Question(run.cloverShareInput(i), i));
        questions.add(new Question(run.oldShareInput(i), i));
        if (decision.model().actions().get(action).sows()) {
          questions.add(new Question(run.establishmentInput(action), i));
        }
      }
    }
    questions.removeIf(question -> inputs.get(question.input()).range().isExact());
    return questions;
  }

  private BreakEvenValue answer(Question question, int tried) {
    double[] drawn = simulation.drawn(question.input());
    double low = Arrays.stream(drawn).min().orElseThrow();
    double high = Arrays.stream(drawn).max().orElseThrow();
    StraightLine line = StraightLine.of(drawn, gain(question.paddock()));
    return new BreakEvenValue(
        decision.model().inputs().get(question.input()),
        question.paddock(),
        low,
        high,
        line.differsFromNothing(tried) ? line.crossesZero(low, high) : OptionalDouble.empty());
  }

  private double[] gain(int paddock) {
    double[] plan = simulation.npv(Alternatives.PLAN);
    return paddock < 0
        ? plan
        : Sample.difference(plan, simulation.npv(simulation.alternatives().place(paddock, 0)));
  }
}
