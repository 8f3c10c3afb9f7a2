package swardcase.outcome;

import java.util.Collections;
import java.util.List;
import swardcase.evidence.UncertainNumbers;
import swardcase.farm.Action;
import swardcase.farm.ActionKind;
import swardcase.farm.CostLine;
import swardcase.farm.ExtraFeedUse;
import swardcase.farm.Farm;
import swardcase.farm.Mob;
import swardcase.feed.EnergyMethod;
import swardcase.feed.FeedBudget;
import swardcase.feed.GrowthYear;
import swardcase.feed.StockDemand;
import swardcase.reproduction.DryEweSale;
import swardcase.sward.Composition;
import swardcase.sward.StandingClover;
import swardcase.tables.Tables;

/**
 * A farm made ready for calculation: the register of its uncertain numbers, and the start of runs.
 * Immutable once built; a {@link OutcomeFunction} is the workspace of one thread.
 */
public final class FarmModel {

  /** Years ahead in which an action may start: the coming year and five more. */
  public static final int START_YEARS = 6;

  private final Farm farm;
  private final Tables tables;
  private final GrowthYear year;
  private final int keep;
  private final UseRules rules;
  private final List<Composition> compositions;
  private final StockDemand demand;
  private final FeedBudget budget;
  private final UncertainNumbers inputs;

  /** Prepares the farm. */
  public FarmModel(Farm farm, Tables ofAnyFarm) {
    this.farm = farm;
    tables = ofAnyFarm.in(farm);
    year = new GrowthYear(farm);
    keep = farm.actions().stream().map(Action::kind).toList().indexOf(ActionKind.KEEP);
    rules = new UseRules(farm, keep);
    compositions = StandingClover.compositions(farm, tables);
    demand = demand(EnergyMethod.SCA_1990);
    budget = new FeedBudget(farm, demand, tables);
    inputs = OutcomeFunction.numbers(farm, tables, compositions);
    rules.set(new OutcomeFunction(this), tables);
  }

  /** A workspace with every number at its likely value. */
  public OutcomeFunction newRun() {
    return new OutcomeFunction(this);
  }

  /** A workspace that takes what a plan brings. */
  public Outcome newOutcome() {
    return new Outcome(years());
  }

  /** The farm. */
  public Farm farm() {
    return farm;
  }

  /** The reference data. */
  public Tables tables() {
    return tables;
  }

  /** The register of uncertain numbers. */
  public UncertainNumbers inputs() {
    return inputs;
  }

  /** Place of the action that keeps a paddock as it is. */
  public int keep() {
    return keep;
  }

  /** The plan that keeps everything. */
  public Plan keepAll() {
    return Plan.keepAll(farm.paddocks().size(), keep);
  }

  /** Years counted. */
  public int years() {
    return farm.finance().horizonYears();
  }

  /**
   * Years from the start of an action to its last change of a paddock, at likely numbers: the
   * sowing with its expected repeat, the years shut and those until the stand grows in full.
   */
  public int lastChange(int action) {
    return LastChange.of(actions().get(action), tables);
  }

  /**
   * Start years worth looking at: what is begun must have its last change within the years counted.
   * 0 if the action cannot be seen through at all. A use rule alone holds from the coming year.
   */
  public int startYears(int action) {
    return actions().get(action).kind() == ActionKind.KEEP_OFF
        ? 1
        : Math.max(0, Math.min(START_YEARS, years() - lastChange(action)));
  }

  /** First start year worth looking at: a rule before an action needs a year to hold in. */
  public int firstStart(int action) {
    Action of = actions().get(action);
    return of.use().isPresent() && of.changesStand() && of.runDownYears() == 0 ? 1 : 0;
  }

  /**
   * What may be done with a paddock, in the order of the places: the farm's actions, then each with
   * the use rules that may go with it.
   */
  public List<Action> actions() {
    return Collections.unmodifiableList(rules.actions());
  }

  /** Place of the action that an action with a use rule does beside the rule, else its own. */
  public int base(int action) {
    return rules.base(action);
  }

  /** Place among the inputs of a cost line of an action. */
  public int costInput(int action, CostLine line) {
    return inputs.place(ActionInputs.costKey(actions().get(base(action)), line));
  }

  /**
   * Actions of one group are told by their best: those that do one thing to the stand, with or
   * without a rule before, and rules alone that hold at one time of the year.
   */
  public int group(int action) {
    Action of = actions().get(action);
    return of.kind() == ActionKind.KEEP_OFF
        ? -1 - of.use().orElseThrow().when().ordinal()
        : rules.base(action);
  }

  UseRules rules() {
    return rules;
  }

  /** How many choices a rule of the farm has; 1 where there is nothing to choose. */
  public int choices(FarmRule rule) {
    boolean moves = farm.mobs().stream().anyMatch(Mob::mayMove) && farm.paddocks().size() > 1;
    return switch (rule) {
      case IN_ORDER -> moves ? 2 : 1;
      case SELL_DRY -> farm.mobs().isEmpty() ? 1 : 1 + DryEweSale.Rule.values().length;
    };
  }

  /** What the stock need by an energy method, with the mobs' own shares of ewes in lamb. */
  public StockDemand demand(EnergyMethod method) {
    double[] pregnant =
        farm.mobs().stream().mapToDouble(mob -> mob.pregnantPercent().likely() / 100).toArray();
    return new StockDemand(farm, tables, method, pregnant);
  }

  /** When in the year the pasture grows. */
  public GrowthYear year() {
    return year;
  }

  List<Composition> compositions() {
    return compositions;
  }

  /** What the stock need at the likely shares of ewes in lamb, by the usual energy method. */
  public StockDemand demand() {
    return demand;
  }

  /** The feed budget at that need. */
  public FeedBudget budget() {
    return budget;
  }

  boolean runMoreEwes() {
    return farm.extraFeedUse() == ExtraFeedUse.RUN_MORE_EWES;
  }
}
