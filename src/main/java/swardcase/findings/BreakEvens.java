package swardcase.findings;

import java.util.ArrayList;
import java.util.List;
import java.util.function.DoubleUnaryOperator;
import swardcase.chance.BreakEven;
import swardcase.evidence.Assumption;
import swardcase.farm.Farm;
import swardcase.plan.FarmModel;
import swardcase.plan.Outcome;
import swardcase.plan.Plan;
import swardcase.plan.Run;

/** Break-even values of the inputs people ask about, the other inputs staying likely. */
final class BreakEvens {

  private static final double MOST_PRICE = 4;
  private static final double MOST_RATE = 0.5;

  /** An input to be looked at between two limits, for one paddock or, below 0, for the plan. */
  private record Question(int input, int paddock, double low, double high) {}

  private final FarmModel model;
  private final Plan plan;
  private final ThreadLocal<Run> runs;
  private final List<Question> questions = new ArrayList<>();

  private BreakEvens(FarmModel model, Plan plan) {
    this.model = model;
    this.plan = plan;
    runs = ThreadLocal.withInitial(model::newRun);
  }

  /**
   * Of the plan: lamb price, supplement price, discount rate. Of each paddock the plan acts on: its
   * clover share, its share of old cultivars, and the chance that the sowing takes. The answers
   * stand in that order, whatever the number of threads.
   */
  static List<BreakEvenValue> of(FarmModel model, Plan plan) {
    BreakEvens breakEvens = new BreakEvens(model, plan);
    breakEvens.ask();
    return breakEvens.questions.parallelStream().map(breakEvens::answer).toList();
  }

  private void ask() {
    Run run = runs.get();
    Farm farm = model.farm();
    List<Assumption> inputs = model.inputs().all();
    addPrice(inputs.indexOf(farm.prices().netValuePerLamb()));
    addPrice(inputs.indexOf(farm.supplement().pricePerTonne()));
    add(inputs.indexOf(farm.finance().discountRate()), -1, 0, MOST_RATE);
    for (int i = 0; i < plan.paddocks(); i++) {
      if (plan.action(i) == model.keep()) {
        continue;
      }
      add(run.cloverShareInput(i), i, 0, 1);
      add(run.oldShareInput(i), i, 0, 1);
      if (model.actions().get(plan.action(i)).sows()) {
        add(run.establishmentInput(plan.action(i)), i, 0, 1);
      }
    }
  }

  private void addPrice(int input) {
    double likely = model.inputs().get(input).likely();
    if (likely > 0) {
      add(input, -1, 0, MOST_PRICE * likely);
    }
  }

  /** A number without doubt has no break-even worth printing. */
  private void add(int input, int paddock, double low, double high) {
    if (model.inputs().get(input).range().isExact()) {
      return;
    }
    questions.add(new Question(input, paddock, low, high));
  }

  private BreakEvenValue answer(Question question) {
    Run run = runs.get();
    Outcome outcome = model.newOutcome();
    int paddock = question.paddock();
    double[] x = model.inputs().likely();
    double likely = x[question.input()];
    DoubleUnaryOperator gain =
        value -> {
          x[question.input()] = value;
          run.set(x);
          run.evaluate(model.keepAll(), outcome);
          double keptAll = outcome.npv();
          run.evaluate(plan, outcome);
          double kept = paddock < 0 ? keptAll : run.npvOfBaseWith(paddock, model.keep(), 0);
          return outcome.npv() - kept;
        };
    return new BreakEvenValue(
        model.inputs().get(question.input()),
        paddock,
        question.low(),
        question.high(),
        BreakEven.find(gain, question.low(), question.high(), likely),
        gain.applyAsDouble(likely));
  }
}
