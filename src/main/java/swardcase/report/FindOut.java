package swardcase.report;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.IntFunction;
import swardcase.decision.Decision;
import swardcase.decision.Enquiry;
import swardcase.decision.Enquiry.Advice;
import swardcase.decision.Enquiry.Kind;
import swardcase.decision.Unknown;
import swardcase.farm.Farm;
import swardcase.farm.Paddock;
import swardcase.outcome.Course;
import swardcase.outcome.FarmModel;
import swardcase.outcome.FarmRule;

/**
 * Something that can be found out before money is spent.
 *
 * @param kind which kind of thing
 * @param paddock that is walked or sampled; empty for a number or a scan
 * @param mob that is scanned; empty for anything else
 * @param input name of the number that would be known; empty for a walk, plants, a leaf test or a
 *     scan
 * @param plants how many plants to identify; 0 for anything else
 * @param worth what knowing it is worth on average, present value
 * @param price what it costs; empty where it cannot simply be bought
 * @param advice whether to do it; without a price, who could tell
 * @param changes answers that its result would change, the likeliest first; none if it is worth
 *     nothing
 * @param settles names of paddocks whose answer is open, and which nothing else would settle sooner
 */
public record FindOut(
    Kind kind,
    Optional<String> paddock,
    Optional<String> mob,
    Optional<String> input,
    int plants,
    double worth,
    OptionalDouble price,
    Advice advice,
    List<Change> changes,
    List<String> settles) {

  /**
   * An answer that a result would change.
   *
   * @param paddock whose answer; empty for a rule of the farm or the whole plan
   * @param rule of the farm that is then made or dropped; empty for a paddock or the whole plan
   * @param from name of what is planned there; empty where no paddock is meant
   * @param to name of what is chosen then
   * @param chance that the result comes out so, 0 to 1
   * @param ifHigh whether that is when it comes out high rather than low
   */
  public record Change(
      Optional<String> paddock,
      Optional<PlanResult.Rule> rule,
      Optional<String> from,
      Optional<String> to,
      double chance,
      boolean ifHigh) {}

  /** Fewer results of a hundred are not worth a word. */
  private static final double SELDOM = 0.05;

  static FindOut of(Decision decision, Enquiry of) {
    Farm farm = decision.model().farm();
    return new FindOut(
        of.kind(),
        of.paddock().stream().mapToObj(i -> farm.paddocks().get(i).name()).findFirst(),
        of.mob().stream().mapToObj(g -> farm.mobs().get(g).name()).findFirst(),
        of.number().map(Unknown::name),
        of.plants(),
        of.worth().value(),
        of.price(),
        of.advice(),
        of.changes().stream()
            .filter(to -> to.chance() >= SELDOM)
            .map(to -> change(decision, to))
            .toList(),
        of.settles().stream().map(i -> farm.paddocks().get(i).name()).toList());
  }

  private static Change change(Decision decision, Enquiry.Change of) {
    FarmModel model = decision.model();
    List<Paddock> paddocks = model.farm().paddocks();
    int place = of.place().orElse(-1);
    boolean isPaddock = place >= 0 && place < paddocks.size();
    boolean isRule = place >= paddocks.size();
    IntFunction<String> action = a -> model.actions().get(a).name();
    return new Change(
        isPaddock ? Optional.of(paddocks.get(place).name()) : Optional.empty(),
        of.to().filter(to -> isRule).map(to -> rule(decision, place - paddocks.size(), to)),
        isPaddock ? Optional.of(action.apply(decision.plan().action(place))) : Optional.empty(),
        of.to().filter(to -> isPaddock).map(to -> action.apply(to.action())),
        of.chance(),
        of.ifHigh());
  }

  /** The rule that is made, or that which is dropped where none is made. */
  private static PlanResult.Rule rule(Decision decision, int place, Course to) {
    FarmRule rule = FarmRule.values()[place];
    return PlanResult.Rule.of(rule, to.action() > 0 ? to.action() : decision.plan().choice(rule));
  }

  /** Whether it is worth more than it costs, as far as it can be bought. */
  public boolean isWorthKnowing() {
    return advice.isWorthKnowing();
  }

  /** Whether it is found in a paddock, by its plants or its leaf. */
  public boolean isTest() {
    return kind != Kind.NUMBER && kind != Kind.SCAN;
  }
}
