package swardcase.search;

import java.util.Arrays;
import java.util.EnumSet;
import java.util.List;
import java.util.OptionalInt;
import java.util.Set;
import java.util.stream.IntStream;
import swardcase.check.Check;
import swardcase.farm.Finance;
import swardcase.outcome.FarmModel;
import swardcase.outcome.FarmRule;
import swardcase.outcome.OutcomeFunction;
import swardcase.outcome.Plan;
import swardcase.outcome.YearSums;

/**
 * What every choice for every paddock adds to the sums of every year, so that a change of one
 * paddock is an addition and not a new run over the farm.
 *
 * <p>A choice is an action with its start year, or that of a rule of the farm, which stands behind
 * the paddocks like one more of them. A pick holds the place of one choice for each.
 */
final class PlanTable {

  private static final double CLOSE = 1e-6;

  private final FarmModel model;
  private final OutcomeFunction run;
  private final int years;
  private final int sums;
  private final int paddocks;
  private final int[] first;
  private final int[] paddock;
  private final int[] action;
  private final int[] start;
  private final double[] added;
  private final double[] most;
  private final double[] least;

  /** The table at the assumptions the run was last set to. */
  PlanTable(FarmModel model, OutcomeFunction run, List<FixedChoice> fixed) {
    this.model = model;
    this.run = run;
    years = model.years();
    sums = YearSums.size(run.mobs());
    paddocks = model.farm().paddocks().size();
    int n = model.keepAll().places();
    int room = (paddocks * model.actions().size() + 10) * FarmModel.START_YEARS;
    first = new int[n + 1];
    int[] places = new int[room];
    int[] actions = new int[room];
    int[] starts = new int[room];
    int count = 0;
    for (int i = 0; i < n; i++) {
      first[i] = count;
      int ofRule = i < paddocks ? 0 : model.choices(FarmRule.values()[i - paddocks]);
      for (int a = 0; a < ofRule; a++) {
        places[count] = i;
        actions[count++] = a;
      }
      for (int a : i < paddocks ? keepFirst() : new int[0]) {
        int choices = a == model.keep() ? 1 : model.startYears(a);
        for (int s = model.firstStart(a); s < choices && run.allowed(i, a); s++) {
          if (isOpen(fixed, i, a, s)) {
            places[count] = i;
            actions[count] = a;
            starts[count++] = s;
          }
        }
      }
      Check.that(count > first[i], "the choice made beforehand for paddock %s is not open", i);
    }
    first[n] = count;
    paddock = Arrays.copyOf(places, count);
    action = Arrays.copyOf(actions, count);
    start = Arrays.copyOf(starts, count);
    added = new double[count * years * sums];
    double[] one = new double[years * sums];
    for (int c = 0; c < count; c++) {
      run.addYears(paddock[c], action[c], start[c], one);
      System.arraycopy(one, 0, added, c * one.length, one.length);
    }
    most = new double[years * sums];
    least = new double[years * sums];
    setLimits(model.farm().finance());
  }

  private int[] keepFirst() {
    int[] order = new int[model.actions().size()];
    order[0] = model.keep();
    for (int a = 0, at = 1; a < order.length; a++) {
      if (a != model.keep()) {
        order[at++] = a;
      }
    }
    return order;
  }

  private boolean isOpen(List<FixedChoice> fixed, int i, int a, int s) {
    for (FixedChoice choice : fixed) {
      OptionalInt year = choice.start();
      if (choice.paddock() == i
          && (choice.action() != a
              || (a != model.keep() && year.isPresent() && year.getAsInt() != s))) {
        return false;
      }
    }
    return true;
  }

  private void setLimits(Finance finance) {
    Arrays.fill(most, Double.POSITIVE_INFINITY);
    Arrays.fill(least, Double.NEGATIVE_INFINITY);
    double outHa = finance.mostOutOfGrazing().likely() * model.farm().areaHa();
    for (int t = 0; t < years; t++) {
      most[t * sums + YearSums.COST] =
          finance.budgetPerYear().orElse(Double.POSITIVE_INFINITY) + CLOSE;
      most[t * sums + YearSums.OUT] = outHa + CLOSE;
      most[t * sums + YearSums.CROP] =
          finance.mostCropHa().orElse(Double.POSITIVE_INFINITY) + CLOSE;
      for (int g = 0; g < run.mobs(); g++) {
        least[t * sums + YearSums.at(g, YearSums.OPEN)] = run.feedNeeded(g) - CLOSE;
        least[t * sums + YearSums.at(g, YearSums.OPEN_GREEN)] = run.feedNeededInWinter(g) - CLOSE;
      }
    }
  }

  /** Lifts one of the limits of the farm, for what that would be worth. */
  void lift(PlanLimit limit) {
    for (int t = 0; t < years; t++) {
      int at = t * sums;
      switch (limit) {
        case MONEY -> most[at + YearSums.COST] = Double.POSITIVE_INFINITY;
        case OUT_OF_GRAZING -> most[at + YearSums.OUT] = Double.POSITIVE_INFINITY;
        case CROP -> most[at + YearSums.CROP] = Double.POSITIVE_INFINITY;
        case FEED_AT_JOINING -> {
          for (int g = 0; g < run.mobs(); g++) {
            least[at + YearSums.at(g, YearSums.OPEN)] = Double.NEGATIVE_INFINITY;
            least[at + YearSums.at(g, YearSums.OPEN_GREEN)] = Double.NEGATIVE_INFINITY;
          }
        }
      }
    }
  }

  /** Puts every limit back. */
  void restoreLimits() {
    setLimits(model.farm().finance());
  }

  int paddocks() {
    return paddocks;
  }

  /** Places of a pick: the paddocks, then the rules of the farm. */
  int places() {
    return first.length - 1;
  }

  int choices() {
    return action.length;
  }

  int years() {
    return years;
  }

  /** Sums of a year. */
  int sums() {
    return sums;
  }

  /** Place of a paddock's first choice; its last one stands before the next paddock's first. */
  int first(int i) {
    return first[i];
  }

  int paddock(int choice) {
    return paddock[choice];
  }

  int action(int choice) {
    return action[choice];
  }

  int start(int choice) {
    return start[choice];
  }

  boolean keeps(int choice) {
    return action[choice] == (paddock[choice] < paddocks ? model.keep() : 0);
  }

  /** Whether a choice is a use rule and nothing else. */
  boolean isRuleAlone(int choice) {
    return isUseRule(choice) && !model.actions().get(action[choice]).changesStand();
  }

  /** Whether a choice is a use rule until an action starts. */
  boolean isRuleBefore(int choice) {
    return isUseRule(choice) && model.actions().get(action[choice]).changesStand();
  }

  private boolean isUseRule(int choice) {
    return paddock[choice] < paddocks && model.actions().get(action[choice]).use().isPresent();
  }

  /** Choices of one place and group are told by their best; see {@link FarmModel#group}. */
  int group(int choice) {
    return paddock[choice] < paddocks ? model.group(action[choice]) : action[choice];
  }

  /** How many paddocks a pick does not keep. */
  int changed(int[] pick) {
    return (int) Arrays.stream(pick).filter(c -> !keeps(c)).count();
  }

  /** How many more paddocks are not kept after a change of a pick. */
  int moreChanged(int[] pick, Change change) {
    return moreChanged(pick, change.one())
        + (change.isPair() ? moreChanged(pick, change.two()) : 0);
  }

  private int moreChanged(int[] pick, int choice) {
    return (keeps(choice) ? 0 : 1) - (keeps(pick[paddock[choice]]) ? 0 : 1);
  }

  /** What a choice adds, at {@code year * sums + sum}. */
  double added(int choice, int at) {
    return added[choice * years * sums + at];
  }

  /** Upper limit of a sum, infinite where there is none. */
  double most(int at) {
    return most[at];
  }

  /** Lower limit of a sum. */
  double least(int at) {
    return least[at];
  }

  /** A pick with the last choice of every rule of the farm. */
  int[] withRules(int[] pick) {
    int[] with = pick.clone();
    for (int i = paddocks; i < with.length; i++) {
      with[i] = first[i + 1] - 1;
    }
    return with;
  }

  Plan plan(int[] pick) {
    Plan plan = model.keepAll();
    for (int i = 0; i < pick.length; i++) {
      plan = plan.with(i, action[pick[i]], start[pick[i]]);
    }
    return plan;
  }

  /** A plan after a change. */
  Plan with(Plan plan, Change change) {
    Plan with = plan.with(paddock[change.one()], action[change.one()], start[change.one()]);
    return change.isPair() ? with(with, Change.of(change.two())) : with;
  }

  /** Adds up a pick, from nothing and in the order of the paddocks. */
  void sum(int[] pick, double[] into) {
    Arrays.fill(into, 0);
    for (int c : pick) {
      int from = c * years * sums;
      for (int k = 0; k < into.length; k++) {
        into[k] += added[from + k];
      }
    }
  }

  /** Puts one choice in place of another; both arrays may be the same. */
  void exchange(int before, int after, double[] from, double[] into) {
    int out = before * years * sums;
    int in = after * years * sums;
    for (int k = 0; k < into.length; k++) {
      into[k] = from[k] + (added[in + k] - added[out + k]);
    }
  }

  /** The pick of a plan, all of whose choices must be in the table. */
  int[] pick(Plan plan) {
    int[] pick = new int[plan.places()];
    for (int i = 0; i < pick.length; i++) {
      pick[i] = find(i, plan.action(i), plan.start(i)).orElse(-1);
      Check.that(pick[i] >= 0, "the plan has a choice for paddock %s that is not open", i);
    }
    return pick;
  }

  /** Place of a choice; empty if it is not open. The start of keeping does not matter. */
  OptionalInt find(int i, int ofAction, int ofStart) {
    return IntStream.range(first[i], first[i + 1])
        .filter(c -> action[c] == ofAction && (keeps(c) || start[c] == ofStart))
        .findFirst();
  }

  /** How far sums lie outside the limits, each as a share of its limit; 0 inside. */
  double excess(double[] of) {
    double excess = 0;
    for (int t = 0; t < years; t++) {
      int at = t * sums;
      excess += over(of[at + YearSums.COST], most[at + YearSums.COST]);
      excess += over(of[at + YearSums.OUT], most[at + YearSums.OUT]);
      excess += over(of[at + YearSums.CROP], most[at + YearSums.CROP]);
      for (int g = 0; g < run.mobs(); g++) {
        int open = at + YearSums.at(g, YearSums.OPEN);
        excess += over(least[open], of[open]);
        int green = at + YearSums.at(g, YearSums.OPEN_GREEN);
        excess += over(least[green], of[green]);
      }
    }
    return excess;
  }

  /** Whether a plan keeps within the limits of the farm. */
  boolean fits(Plan plan) {
    double[] of = new double[years * sums];
    sum(pick(plan), of);
    return excess(of) == 0;
  }

  /** The limits that sums lie outside of. */
  Set<PlanLimit> passed(double[] of) {
    EnumSet<PlanLimit> passed = EnumSet.noneOf(PlanLimit.class);
    for (int t = 0; t < years; t++) {
      int at = t * sums;
      if (of[at + YearSums.COST] > most[at + YearSums.COST]) {
        passed.add(PlanLimit.MONEY);
      }
      if (of[at + YearSums.OUT] > most[at + YearSums.OUT]) {
        passed.add(PlanLimit.OUT_OF_GRAZING);
      }
      if (of[at + YearSums.CROP] > most[at + YearSums.CROP]) {
        passed.add(PlanLimit.CROP);
      }
      for (int g = 0; g < run.mobs(); g++) {
        int open = at + YearSums.at(g, YearSums.OPEN);
        int green = at + YearSums.at(g, YearSums.OPEN_GREEN);
        if (of[open] < least[open] || of[green] < least[green]) {
          passed.add(PlanLimit.FEED_AT_JOINING);
        }
      }
    }
    return passed;
  }

  private static double over(double value, double limit) {
    return value > limit ? (value - limit) / Math.max(1, Math.abs(limit)) : 0;
  }
}
