package swardcase.decision;

import java.util.ArrayList;
import java.util.List;
import swardcase.farm.Action;
import swardcase.farm.Paddock;
import swardcase.outcome.FarmModel;
import swardcase.outcome.FarmRule;
import swardcase.outcome.Plan;
import swardcase.search.LikelySearch;

/**
 * The plan of one farm, held on another: on each paddock of the same name what the plan does with
 * it, in the same year. Where the other farm has no such paddock, or the action cannot be done or
 * seen through there, nothing is done.
 *
 * @param plan on the other farm
 * @param notHeld paddocks of the first farm on which something is planned that is not held
 * @param withinLimits whether it keeps within the limits of the other farm
 */
record HeldPlan(Plan plan, List<String> notHeld, boolean withinLimits) {

  /** Copies the list. */
  HeldPlan {
    notHeld = List.copyOf(notHeld);
  }

  /** The plan of the first farm on the other. */
  static HeldPlan of(Decision first, Decision other) {
    FarmModel there = other.model();
    List<String> names = there.farm().paddocks().stream().map(Paddock::name).toList();
    List<String> keys = there.actions().stream().map(Action::key).toList();
    Plan held = there.keepAll();
    List<String> notHeld = new ArrayList<>();
    for (int i = 0; i < first.plan().paddocks(); i++) {
      if (first.isActedOn(i)) {
        String name = first.model().farm().paddocks().get(i).name();
        int place = names.indexOf(name);
        int action = keys.indexOf(first.model().actions().get(first.plan().action(i)).key());
        int start = first.plan().start(i);
        if (place >= 0
            && action >= 0
            && other.likely().allowed(place, action)
            && start < there.startYears(action)) {
          held = held.with(place, action, start);
        } else {
          notHeld.add(name);
        }
      }
    }
    for (FarmRule rule : FarmRule.values()) {
      if (first.plan().choice(rule) < there.choices(rule)) {
        held = held.with(names.size() + rule.ordinal(), first.plan().choice(rule), 0);
      }
    }
    return new HeldPlan(held, notHeld, new LikelySearch(there, List.of()).feasible(held));
  }
}
