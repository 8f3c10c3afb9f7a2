package swardcase.report;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalInt;
import java.util.stream.IntStream;
import swardcase.decision.BetterOnAverage;
import swardcase.decision.Decision;
import swardcase.decision.HowSure;
import swardcase.farm.Action;
import swardcase.farm.Farm;
import swardcase.farm.Paddock;
import swardcase.outcome.FarmModel;
import swardcase.outcome.Plan;
import swardcase.report.HowFound.Better;
import swardcase.report.HowFound.Choice;
import swardcase.report.HowFound.LiftedLimit;
import swardcase.report.HowFound.Limit;
import swardcase.report.HowFound.NextBest;
import swardcase.search.PlanLimit;
import swardcase.search.PlanSearch.Found;

/** How the plan was found: how good it is, what hems it in, what comes next. */
final class HowFoundBuilder {

  private final Decision decision;
  private final HowSure howSure;
  private final FarmModel model;
  private final Farm farm;
  private final int firstYear;

  HowFoundBuilder(Decision decision, HowSure howSure, int firstYear) {
    this.decision = decision;
    this.howSure = howSure;
    this.firstYear = firstYear;
    model = decision.model();
    farm = model.farm();
  }

  HowFound result() {
    Found found = decision.found();
    double mostOut = farm.finance().mostOutOfGrazing().likely() * farm.areaHa();
    return new HowFound(
        model.leastGainPerHa(),
        1 + found.others().size(),
        found.value(),
        found.mostBehind(),
        notSure(),
        howSure.better().map(this::better),
        mostOut,
        farm.paddocks().stream()
            .filter(paddock -> paddock.areaHa() > mostOut)
            .map(Paddock::name)
            .toList(),
        limits(),
        decision.nextBest().map(this::nextBest),
        decision.fixed().stream().map(fixed -> choice(decision.plan(), fixed.paddock())).toList(),
        decision.costOfFixing());
  }

  /** Paddocks that the plan acts on, but which the draws do not speak for. */
  private List<String> notSure() {
    return IntStream.range(0, farm.paddocks().size())
        .filter(i -> decision.plan().action(i) != model.keep())
        .filter(i -> !howSure.paddock(i).verdict().acts())
        .mapToObj(i -> farm.paddocks().get(i).name())
        .toList();
  }

  private Better better(BetterOnAverage better) {
    return new Better(
        choice(better.paddock(), better.course().action(), better.course().start()), better.gain());
  }

  private List<LiftedLimit> limits() {
    List<LiftedLimit> limits = new ArrayList<>();
    for (PlanLimit limit : PlanLimit.values()) {
      double worth = decision.worthOfLifting(limit);
      if (worth > 1) {
        limits.add(new LiftedLimit(Limit.valueOf(limit.name()), worth));
      }
    }
    return limits;
  }

  private NextBest nextBest(Found next) {
    Plan other = next.plan();
    return new NextBest(
        IntStream.range(0, other.paddocks())
            .filter(i -> other.action(i) != decision.plan().action(i))
            .mapToObj(i -> choice(other, i))
            .toList(),
        Math.max(0, decision.found().value() - next.value()));
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
