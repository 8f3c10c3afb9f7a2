package swardcase.decision;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.OptionalDouble;
import swardcase.chance.StraightLine;
import swardcase.draws.Alternatives;
import swardcase.draws.Simulation;
import swardcase.evidence.Assumption;
import swardcase.outcome.OutcomeFunction;

/**
 * The value of one input at which a gain turns into a loss, by the straight line through the draws.
 *
 * @param input the number
 * @param paddock place of the paddock whose gain is meant; -1 for the whole plan
 * @param low lowest that was drawn
 * @param high highest that was drawn
 * @param value the crossing; empty if the line does not cross nothing in between, or if its slope
 *     may be luck
 */
public record BreakEvenValue(
    Assumption input, int paddock, double low, double high, OptionalDouble value) {

  private static final int PLAN = -1;

  /** An input that people ask about, for the gain of one paddock or of the plan. */
  private record Question(int input, int paddock) {}

  /**
   * Of the plan: lamb price, supplement price. Of each paddock the plan acts on: its clover share,
   * its share of old cultivars, and the chance that the sowing takes.
   */
  static List<BreakEvenValue> of(Decision decision) {
    OutcomeFunction run = decision.likely();
    var inputs = decision.model().inputs();
    List<Question> questions = new ArrayList<>();
    questions.add(new Question(inputs.place(OutcomeFunction.LAMB_VALUE), PLAN));
    questions.add(new Question(inputs.place(OutcomeFunction.SUPPLEMENT_PRICE), PLAN));
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
    return questions.stream().map(each -> of(decision, each, questions.size())).toList();
  }

  private static BreakEvenValue of(Decision decision, Question question, int tried) {
    Simulation simulation = decision.simulation();
    double[] drawn = simulation.drawn(question.input());
    double low = Arrays.stream(drawn).min().orElseThrow();
    double high = Arrays.stream(drawn).max().orElseThrow();
    double[] gain =
        question.paddock() == PLAN
            ? simulation.npv(Alternatives.PLAN)
            : decision.gain(question.paddock());
    StraightLine line = StraightLine.of(drawn, gain);
    return new BreakEvenValue(
        decision.model().inputs().get(question.input()),
        question.paddock(),
        low,
        high,
        line.differsFromNothing(tried) ? line.crossesZero(low, high) : OptionalDouble.empty());
  }

  /** Whether the crossing lies between the input's own low and high end: it may well happen. */
  public boolean isWithinRange() {
    return value.isPresent()
        && value.getAsDouble() >= input.range().low()
        && value.getAsDouble() <= input.range().high();
  }
}
