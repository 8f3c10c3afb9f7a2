package swardcase.draws;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalInt;
import java.util.function.Predicate;
import swardcase.outcome.Course;
import swardcase.outcome.FarmModel;
import swardcase.outcome.Plan;

/**
 * The plans that are weighed against one another: the plan, keeping everything, and the plan with
 * any one paddock kept or given another action, whether or not that keeps within the limits of the
 * farm.
 */
public final class Alternatives {

  /** Place of the plan itself. */
  public static final int PLAN = 0;

  /** Place of keeping everything. */
  public static final int KEEP_ALL = 1;

  private final List<Plan> plans = new ArrayList<>();
  private final List<Boolean> fits = new ArrayList<>();
  private final Map<Plan, Integer> placeOf = new HashMap<>();
  private final List<Integer> changed = new ArrayList<>();
  private final List<List<Course>> choices = new ArrayList<>();
  private final List<List<Integer>> places = new ArrayList<>();

  /**
   * The alternatives around a plan.
   *
   * @param options for each paddock, and behind them each rule of the farm, the choices to look at,
   *     keeping aside
   * @param feasible whether a plan keeps within the limits of the farm
   */
  public Alternatives(
      FarmModel model, Plan plan, List<List<Course>> options, Predicate<Plan> feasible) {
    enter(0, plan, true);
    enter(0, model.keepAll(), true);
    int keep = model.keep();
    for (int i = 0; i < plan.places(); i++) {
      int none = i < plan.paddocks() ? keep : 0;
      Course planned = new Course(plan.action(i), plan.start(i));
      choices.add(new ArrayList<>());
      places.add(new ArrayList<>());
      add(i, new Course(none, 0), plan.with(i, none, 0), feasible);
      if (planned.action() != none) {
        add(i, planned, plan, feasible);
      }
      for (Course option : options.get(i)) {
        if (isOther(model, i < plan.paddocks(), option.action(), planned.action())) {
          add(i, option, plan.with(i, option.action(), option.start()), feasible);
        }
      }
    }
  }

  private static boolean isOther(FarmModel model, boolean isPaddock, int option, int planned) {
    return isPaddock ? model.group(option) != model.group(planned) : option != planned;
  }

  private void add(int paddock, Course choice, Plan plan, Predicate<Plan> feasible) {
    if (!placeOf.containsKey(plan)) {
      enter(paddock, plan, feasible.test(plan));
    }
    choices.get(paddock).add(choice);
    places.get(paddock).add(placeOf.get(plan));
  }

  private void enter(int paddock, Plan plan, boolean isWithinLimits) {
    placeOf.putIfAbsent(plan, plans.size());
    plans.add(plan);
    fits.add(isWithinLimits);
    changed.add(paddock);
  }

  /** How many plans there are. */
  public int size() {
    return plans.size();
  }

  /** The plan at a place, {@link #PLAN} and {@link #KEEP_ALL} first. */
  public Plan plan(int place) {
    return plans.get(place);
  }

  /** Whether the plan at a place keeps within the limits of the farm. */
  public boolean fits(int place) {
    return fits.get(place);
  }

  /**
   * The paddock, or behind the paddocks the rule of the farm, in which a plan differs from the plan
   * itself; empty for that and for {@link #KEEP_ALL}.
   */
  public OptionalInt changed(int place) {
    return place > KEEP_ALL ? OptionalInt.of(changed.get(place)) : OptionalInt.empty();
  }

  /** Whether the plan does anything with a paddock. */
  public boolean isActedOn(int paddock) {
    return plans.get(PLAN).action(paddock) != plans.get(KEEP_ALL).action(paddock);
  }

  /** How many paddocks the farm has. */
  public int paddocks() {
    return plans.get(PLAN).paddocks();
  }

  /** Its paddocks, and behind them the rules of the farm, which have choices as they have. */
  public int places() {
    return choices.size();
  }

  /** Choices of a paddock, keeping first, then the planned action if it has one. */
  public List<Course> choices(int paddock) {
    return choices.get(paddock);
  }

  /** Place of the plan that has this choice. */
  public int place(int paddock, int choice) {
    return places.get(paddock).get(choice);
  }
}
