package swardcase.report;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalInt;
import java.util.stream.IntStream;
import swardcase.decision.Decision;
import swardcase.farm.Action;
import swardcase.farm.Farm;
import swardcase.farm.Paddock;
import swardcase.outcome.Course;
import swardcase.outcome.FarmModel;
import swardcase.outcome.Plan;
import swardcase.report.HowFound.Choice;
import swardcase.report.HowFound.LiftedLimit;
import swardcase.report.HowFound.Limit;
import swardcase.report.HowFound.NearEqual;
import swardcase.search.Found;
import swardcase.search.PlanLimit;

/** How the plan was found: how good it is, what hems it in, what is as good. */
final class HowFoundBuilder {

  /** More plans as good as the plan would only blur it. */
  private static final int NEAR_EQUAL = 6;

  private final Decision decision;
  private final FarmModel model;
  private final Farm farm;
  private final int firstYear;

  HowFoundBuilder(Decision decision, int firstYear) {
    this.decision = decision;
    this.firstYear = firstYear;
    model = decision.model();
    farm = model.farm();
  }

  HowFound result() {
    Found found = decision.found();
    double mostOut = farm.finance().mostOutOfGrazing().likely() * farm.areaHa();
    return new HowFound(
        found.others().size(),
        found.stillToFind().mean(),
        found.stillToFind().error(),
        found.nearEqual().stream().limit(NEAR_EQUAL).map(this::nearEqual).toList(),
        mostOut,
        farm.paddocks().stream()
            .filter(paddock -> paddock.areaHa() > mostOut)
            .map(Paddock::name)
            .toList(),
        limits(),
        decision.fixed().stream().map(fixed -> choice(decision.plan(), fixed.paddock())).toList(),
        decision.costOfFixing());
  }

  private NearEqual nearEqual(Found.NearEqual near) {
    Course course = near.course();
    return new NearEqual(choice(near.paddock(), course.action(), course.start()), near.behind());
  }

  private List<LiftedLimit> limits() {
    List<LiftedLimit> limits = new ArrayList<>();
    for (PlanLimit limit : PlanLimit.values()) {
      double worth = decision.found().worthOfLifting().getOrDefault(limit, 0.0);
      if (worth > 1) {
        limits.add(new LiftedLimit(Limit.valueOf(limit.name()), worth));
      }
    }
    return limits;
  }

  /** Where another plan differs from the plan. */
  List<Choice> changes(Plan other) {
    return IntStream.range(0, other.paddocks())
        .filter(i -> !other.course(i).equals(decision.plan().course(i)))
        .mapToObj(i -> choice(other, i))
        .toList();
  }

  private Choice choice(Plan of, int paddock) {
    return choice(paddock, of.action(paddock), of.start(paddock));
  }

  private Choice choice(int paddock, int action, int start) {
    Action of = model.actions().get(action);
    return new Choice(
        farm.paddocks().get(paddock).name(),
        of.key(),
        of.name(),
        action == model.keep() ? OptionalInt.empty() : OptionalInt.of(firstYear + start));
  }
}
