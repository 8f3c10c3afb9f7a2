package swardcase.report;

import java.util.List;
import java.util.Optional;
import swardcase.decision.Decision;
import swardcase.decision.Enquiry;
import swardcase.decision.Unknown;
import swardcase.farm.Action;
import swardcase.farm.Paddock;
import swardcase.outcome.FarmRule;

/** Makes the records of what can be found out. */
final class FindOutBuilder {

  /** Fewer results of a hundred are not worth a word. */
  private static final double SELDOM = 0.05;

  private final Decision decision;
  private final List<Paddock> paddocks;

  FindOutBuilder(Decision decision) {
    this.decision = decision;
    paddocks = decision.model().farm().paddocks();
  }

  List<FindOut> all(List<Enquiry> enquiries) {
    return enquiries.stream().map(this::of).toList();
  }

  private FindOut of(Enquiry of) {
    return new FindOut(
        of.kind(),
        of.paddock().stream().mapToObj(i -> paddocks.get(i).name()).findFirst(),
        of.mob().stream().mapToObj(g -> decision.model().farm().mobs().get(g).name()).findFirst(),
        of.number().map(Unknown::name),
        of.plants(),
        of.worth().value(),
        of.price(),
        of.advice(),
        of.changes().stream().filter(to -> to.chance() >= SELDOM).map(this::change).toList(),
        of.settles().stream().map(i -> paddocks.get(i).name()).toList());
  }

  private FindOut.Change change(Enquiry.Change of) {
    int place = of.place().orElse(-1);
    boolean isPaddock = place >= 0 && place < paddocks.size();
    return new FindOut.Change(
        isPaddock ? Optional.of(paddocks.get(place).name()) : Optional.empty(),
        place < paddocks.size() ? Optional.empty() : rule(place, of.to().orElseThrow().action()),
        isPaddock ? Optional.of(action(decision.plan().action(place)).name()) : Optional.empty(),
        of.to().filter(course -> isPaddock).map(course -> action(course.action()).name()),
        of.chance(),
        of.ifHigh());
  }

  /** The rule that is made, or that which is dropped where none is made. */
  private Optional<PlanResult.Rule> rule(int place, int choice) {
    FarmRule rule = FarmRule.values()[place - paddocks.size()];
    return Optional.of(
        PlanResult.Rule.of(rule, choice > 0 ? choice : decision.plan().choice(rule)));
  }

  private Action action(int action) {
    return decision.model().actions().get(action);
  }
}
