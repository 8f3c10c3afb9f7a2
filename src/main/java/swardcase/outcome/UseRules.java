package swardcase.outcome;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import swardcase.farm.Action;
import swardcase.farm.ActionKind;
import swardcase.farm.Farm;
import swardcase.farm.HalfMonths;
import swardcase.farm.UseRule;
import swardcase.farm.UseRule.When;
import swardcase.tables.Tables;

/**
 * What may be done with a paddock beside the farm's actions: every use rule alone, and before an
 * action that changes the stand the rule that keeps all off, before joining, who graze there now.
 * Which of them a paddock is offered, and how long a rule holds, hangs on likely numbers alone.
 */
final class UseRules {

  private static final String KEEP_OFF_LIMIT = "grazing.keep-off-limit";

  /** Clover that is weaker, % of intake, hurts nobody that could be kept off it. */
  private static final double NOTHING_TO_AVOID = 0.02;

  private final Farm farm;
  private final List<Action> actions;
  private final List<Integer> base = new ArrayList<>();
  private int[][] years;
  private boolean[][] open;

  UseRules(Farm farm, int keep) {
    this.farm = farm;
    actions = new ArrayList<>(farm.actions());
    IntStream.range(0, actions.size()).forEach(base::add);
    List<UseRule> rules = UseRule.of(farm);
    rules.forEach(rule -> enter(keep, rule));
    for (int a = 0; a < farm.actions().size(); a++) {
      for (UseRule rule : rules) {
        if (actions.get(a).changesStand() && rule.when() == When.BEFORE_JOINING) {
          enter(a, rule);
        }
      }
    }
  }

  private void enter(int action, UseRule rule) {
    actions.add(actions.get(action).with(rule));
    base.add(action);
  }

  List<Action> actions() {
    return actions;
  }

  /** Place of what an action does to the stand. */
  int base(int action) {
    return base.get(action);
  }

  /** Looks at a run at likely numbers. */
  void set(OutcomeFunction likely, Tables tables) {
    double limit = tables.parameter(KEEP_OFF_LIMIT).likely();
    int paddocks = farm.paddocks().size();
    years = new int[paddocks][farm.actions().size()];
    open = new boolean[paddocks][actions.size()];
    for (int i = 0; i < paddocks; i++) {
      for (int a = 0; a < years[i].length; a++) {
        int k = likely.isPossible(i, a) ? farm.finance().horizonYears() : 0;
        while (k > 0 && likely.greenDose(i, a, k - 1) < limit) {
          k--;
        }
        years[i][a] = k;
      }
      for (int a = 0; a < actions.size(); a++) {
        Optional<UseRule> rule = actions.get(a).use();
        open[i][a] = rule.isEmpty() || isOpen(likely, i, rule.get(), actions.get(a).kind());
      }
    }
  }

  private boolean isOpen(OutcomeFunction likely, int paddock, UseRule rule, ActionKind kind) {
    List<Integer> grazing =
        IntStream.range(0, farm.mobs().size())
            .filter(g -> farm.paddocks().get(paddock).isGrazedBy(farm.mobs().get(g)))
            .boxed()
            .toList();
    boolean fits =
        kind == ActionKind.KEEP_OFF
            ? grazing.containsAll(rule.mobs())
            : grazing.equals(rule.mobs());
    return fits
        && likely.greenDose(paddock) > NOTHING_TO_AVOID
        && (rule.when() == When.WHILE_GREEN
            || rule.mobs().stream().anyMatch(g -> isGreen(likely, g)));
  }

  /** Whether a mob finds green feed at all in its weeks before joining; dry feed hurts nobody. */
  private static boolean isGreen(OutcomeFunction likely, int mob) {
    return IntStream.range(0, HalfMonths.COUNT)
        .anyMatch(p -> likely.flock(mob).isHeld(p) && likely.isGreen(p));
  }

  /**
   * Years from the start of an action from which its use rule holds no more, because no later
   * year's clover reaches the limit.
   */
  int years(int paddock, int action) {
    return years[paddock][base.get(action)];
  }

  /** Whether an action is offered to a paddock as far as its use rule goes. */
  boolean isOpen(int paddock, int action) {
    return open[paddock][action];
  }
}
