package swardcase.decision;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.DoubleUnaryOperator;
import swardcase.chance.BreakEven;
import swardcase.chance.SideBySide;
import swardcase.chance.Workspaces;
import swardcase.evidence.UncertainNumbers;
import swardcase.farm.Farm;
import swardcase.outcome.FarmModel;
import swardcase.outcome.OutcomeFunction;
import swardcase.outcome.Plan;

/** Break-even values of the inputs people ask about, the other inputs staying likely. */
final class BreakEvens {

  private static final double MOST_PRICE = 4;
  private static final double MOST_RATE = 0.5;

  /** An input to be looked at between two limits, for one paddock or, below 0, for the plan. */
  private record Question(int input, int paddock, double low, double high) {}

  /** An input of the whole farm at a value. */
  private record Moved(int input, double value) {}

  private final FarmModel model;
  private final Plan plan;
  private final Workspaces<Workspace> workspaces = new Workspaces<>(Workspace::new);
  private final Map<Moved, double[]> gains = new ConcurrentHashMap<>();
  private final List<Question> questions = new ArrayList<>();

  private BreakEvens(FarmModel model, Plan plan) {
    this.model = model;
    this.plan = plan;
  }

  /**
   * Of the plan: lamb price, supplement price, discount rate. Of each paddock the plan acts on: its
   * clover share, its share of old cultivars, and the chance that the sowing takes. The answers
   * stand in that order, whatever the number of threads.
   */
  static List<BreakEvenValue> of(FarmModel model, Plan plan) {
    BreakEvens breakEvens = new BreakEvens(model, plan);
    breakEvens.ask();
    return SideBySide.of(breakEvens.questions.stream()).map(breakEvens::answer).toList();
  }

  private void ask() {
    OutcomeFunction run = model.newRun();
    Farm farm = model.farm();
    UncertainNumbers inputs = model.inputs();
    addPrice(inputs.place(OutcomeFunction.LAMB_VALUE));
    addPrice(inputs.place(OutcomeFunction.SUPPLEMENT_PRICE));
    add(inputs.place(OutcomeFunction.DISCOUNT_RATE), -1, 0, MOST_RATE);
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
    double likely = model.inputs().get(question.input()).likely();
    DoubleUnaryOperator gain = value -> gain(question, value);
    return new BreakEvenValue(
        model.inputs().get(question.input()),
        question.paddock(),
        question.low(),
        question.high(),
        BreakEven.find(gain, question.low(), question.high(), likely),
        gain.applyAsDouble(likely));
  }

  /**
   * What the plan, or the plan's action on one paddock, gains with an input at a value. A number of
   * the whole farm is often asked about at the same value for many paddocks.
   */
  private double gain(Question question, double value) {
    int paddock = question.paddock();
    if (paddock >= 0 && model.inputs().isOf(paddock, question.input())) {
      return workspaces.with(one -> one.gain(question.input(), value, paddock));
    }
    double[] all =
        gains.computeIfAbsent(
            new Moved(question.input(), value), moved -> workspaces.with(one -> one.gains(moved)));
    return all[paddock < 0 ? plan.paddocks() : paddock];
  }

  /** What one question needs at a time. */
  private final class Workspace {

    private final OutcomeFunction ofFarm = model.newRun();
    private final OutcomeFunction ofPaddocks = model.newRun();

    private double[] likelyBut(int input, double value) {
      double[] x = model.inputs().likely();
      x[input] = value;
      return x;
    }

    double gain(int input, double value, int paddock) {
      ofPaddocks.setPaddock(paddock, likelyBut(input, value));
      return ofPaddocks.setBase(plan) - ofPaddocks.npvOfBaseWith(paddock, model.keep(), 0);
    }

    /** Of each paddock that is acted on and, last, of the plan. */
    double[] gains(Moved moved) {
      ofFarm.set(likelyBut(moved.input(), moved.value()));
      double[] gains = new double[plan.paddocks() + 1];
      double kept = ofFarm.setBase(model.keepAll());
      double done = ofFarm.setBase(plan);
      for (int i = 0; i < plan.paddocks(); i++) {
        gains[i] =
            plan.action(i) == model.keep() ? 0 : done - ofFarm.npvOfBaseWith(i, model.keep(), 0);
      }
      gains[plan.paddocks()] = done - kept;
      return gains;
    }
  }
}
