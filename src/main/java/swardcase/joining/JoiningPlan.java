package swardcase.joining;

import java.time.MonthDay;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.ForkJoinTask;
import swardcase.chance.Drawn;
import swardcase.chance.Sample;
import swardcase.draws.Draws;
import swardcase.draws.Simulation;
import swardcase.draws.Spread;
import swardcase.farm.Farm;
import swardcase.farm.HalfMonths;
import swardcase.outcome.FarmModel;
import swardcase.outcome.OutcomeFunction;
import swardcase.outcome.Plan;

/**
 * The joining plan of a farm as numbers: the calendar of paddocks, three ways of grazing compared,
 * what is missing of safe feed and the ways out, and the loss by date of joining.
 *
 * <p>Only the coming joining is counted, and of it only what wears off; ewes barren for good are
 * barren in every plan. A farm without ewes has no plan.
 */
public final class JoiningPlan {

  /** Ways of grazing that are compared. */
  public enum Policy {
    /** Each mob on the paddocks it grazes now. */
    AS_NOW,
    /** Ewes off the paddocks rated keep off, evenly over all others. */
    AVOID,
    /** The plan. */
    PLAN
  }

  /**
   * Joining at another time, at which safe feed is not short.
   *
   * @param daysLater days later than written; negative is earlier
   * @param cost lambs lost and feed bought under the plan made for that date, money
   */
  public record Shift(int daysLater, double cost) {}

  /**
   * A paddock resown.
   *
   * @param paddock its place
   * @param action place of the action that leaves the weakest clover
   * @param freed what the plan's cost falls by, money a year, once the new stand is there
   */
  public record Resown(int paddock, int action, double freed) {}

  /** Years after the start of an action at which the new stand is looked at. */
  public static final int YEARS_TO_NEW_STAND = 4;

  /** Weeks by which joining is moved at most to find enough safe feed. */
  public static final int MOST_WEEKS_MOVED = 8;

  private static final double SHORT_ENOUGH_TO_SAY = 0.01;

  private final FarmModel model;
  private final JoiningCase setting;
  private final JoiningCalendar calendar;
  private final Planner planner;
  private final List<Grazing> policies = new ArrayList<>();
  private final Grazing cheapest;
  private final JoiningMeasures measures;
  private final Draws draws;
  private final double[][] drawn;
  private final double[] shortMj;
  private final List<Shift> shifts;
  private final List<Resown> resown;
  private final double[] worthOfSafeMj;

  private JoiningPlan(Draws draws, Plan ofFarm) {
    this.draws = draws;
    model = draws.model();
    OutcomeFunction likely = model.newRun();
    ComingYear coming = new ComingYear(model, likely, ofFarm);
    setting =
        new JoiningCase(model, likely, JoiningCase.cautiousStrength(model, likely), 0, coming);
    calendar = new JoiningCalendar(setting);
    planner = new Planner(setting, setting.strength);
    Grazing asNow = planner.asNow();
    Grazing avoiding = planner.avoiding(calendar);
    policies.add(asNow);
    policies.add(avoiding);
    cheapest = planner.plan(asNow, avoiding);
    policies.add(planner.practical(calendar, cheapest, asNow));
    shortMj = planner.shortMj(calendar, asNow);
    WaysOut waysOut = new WaysOut(setting, calendar, planner, cheapest);
    ForkJoinTask<List<Shift>> otherDates =
        ForkJoinTask.adapt(() -> isShort() ? waysOut.otherDates(shortMj()) : List.<Shift>of())
            .fork();
    worthOfSafeMj = worth();
    measures = new JoiningMeasures(setting, policies);
    drawn = Simulation.measured(draws, () -> new JoiningMeasures(setting, policies));
    resown = waysOut.resown();
    shifts = otherDates.join();
  }

  /**
   * The coming year of a farm's plan, told by these draws; empty for a farm that joins no ewes.
   *
   * @param plan what is done with the paddocks of the farm
   */
  public static Optional<JoiningPlan> of(Draws draws, Plan plan) {
    return draws.model().farm().ewesJoined() == 0
        ? Optional.empty()
        : Optional.of(new JoiningPlan(draws, plan));
  }

  /** The same of a farm that goes on as now. */
  public static Optional<JoiningPlan> of(Draws draws) {
    return of(draws, draws.model().keepAll());
  }

  private Drawn drawn(int measure) {
    return Spread.of(drawn[measure], draws.uniforms()).drawn();
  }

  private double[] worth() {
    Grazing plan = policies.get(Policy.PLAN.ordinal());
    double[] worth = new double[setting.halfMonths.size()];
    for (int k = 0; k < worth.length; k++) {
      for (int g = 0; g < setting.mobs(); g++) {
        if (planner.isAtStake(g, k, plan)) {
          worth[k] = Math.max(worth[k], planner.worthOfSafeMj(g, k, plan));
        }
      }
    }
    return worth;
  }

  // What the plan stands on.

  /** The farm. */
  public Farm farm() {
    return setting.farm;
  }

  /** The model. */
  public FarmModel model() {
    return model;
  }

  /** The run at likely values. */
  public OutcomeFunction likely() {
    return setting.run;
  }

  /** Half-months of the plan, in order, over the turn of the year if need be. */
  public List<Integer> halfMonths() {
    return setting.halfMonths;
  }

  /** Groups of the plan: ewe mobs, then other stock, as in the farm's lists. */
  public int groups() {
    return planner.problem().groups;
  }

  /** Formononetin of a paddock's green feed, % of intake. */
  public Drawn greenDose(int paddock) {
    return drawn(measures.greenDose(paddock));
  }

  /**
   * Whether too much of a paddock's clover has a formononetin nobody knows. Such a paddock is
   * planned with as if it held the most that is likely, until its leaf has been tested.
   */
  public boolean isUnknown(int paddock) {
    return JoiningCase.isUnknown(model, setting.run, paddock);
  }

  /** What the plan of the farm says of its coming year. */
  public List<ComingYear.Instruction> instructions() {
    return setting.coming.instructions();
  }

  /** Whether the plan of the farm closes a paddock to a group in a half-month. */
  public boolean isClosed(int group, int halfMonth, int paddock) {
    return setting.isClosed(group, halfMonth, paddock);
  }

  // The calendar.

  /** Whether a half-month matters for a mob's joining. */
  public boolean isRated(int mob, int halfMonth) {
    return calendar.isRated(mob, halfMonth);
  }

  /** Whole days of a half-month. */
  public int daysIn(int halfMonth) {
    return JoiningCalendar.firstDay(halfMonth + 1) - JoiningCalendar.firstDay(halfMonth);
  }

  /** Days the mob may graze a paddock in a half-month; 0 is keep off. */
  public int daysAllowed(int mob, int halfMonth, int paddock) {
    return calendar.daysAllowed(mob, halfMonth, paddock);
  }

  /** Ewes in lamb lost per 100 joined if the mob spends all the half-month there. */
  public Drawn points(int mob, int halfMonth, int paddock) {
    return drawn(measures.points(mob, halfMonth, paddock));
  }

  /** Chance that a paddock rated open is open, or that one not open is not. */
  public double chanceRight(int mob, int halfMonth, int paddock) {
    double most = calendar.tolerance(mob, paddock);
    double above =
        Sample.share(drawn[measures.points(mob, halfMonth, paddock)], points -> points > most);
    return calendar.isOpen(mob, halfMonth, paddock) ? 1 - above : above;
  }

  /** Young ewes barren for good per 100 after a green season in a paddock alone. */
  public Drawn barrenPercent(int paddock) {
    return drawn(measures.barren(paddock));
  }

  /** Green days of a year, each counted by how green the feed is. */
  public double greenDays() {
    return YoungEwes.greenDays(setting.run);
  }

  /** Green days a season that young ewes may spend in a paddock. */
  public double youngDaysAllowed(int paddock) {
    return YoungEwes.daysAllowed(barrenPercent(paddock).mean(), greenDays(), tellablePoints());
  }

  /** What cannot be told from normal variation, per 100. */
  public double tellablePoints() {
    return model.tables().parameter("oestrogen.distinguishable-points").likely();
  }

  // The ways of grazing.

  /** Lambs not marked because of the coming joining. */
  public Drawn lambs(Policy policy) {
    return drawn(measures.lambs(policy.ordinal()));
  }

  /** Their worth. */
  public Drawn lambMoney(Policy policy) {
    return drawn(measures.money(policy.ordinal()));
  }

  /** What a policy gains against grazing as now, lambs and feed. */
  public Drawn saved(Policy policy) {
    return drawn(measures.saved(policy.ordinal()));
  }

  /** Energy bought because of the way of grazing, MJ. */
  public double boughtMj(Policy policy) {
    return planner.problem().boughtMj(policies.get(policy.ordinal()));
  }

  /** Energy bought for a group in a half-month of the plan, MJ. */
  public double boughtMj(int group, int k) {
    double share = policies.get(Policy.PLAN.ordinal()).bought(group, k);
    return share * planner.problem().pastureNeedMj[group][k];
  }

  /** Ewes of a mob not in lamb, likely. */
  public double ewesNotInLamb(Policy policy, int mob) {
    return planner.losses().ewesNotInLamb(mob, policies.get(policy.ordinal()));
  }

  /** Share of a group's pasture that comes from a paddock; {@code k} counts the plan's halves. */
  public double share(Policy policy, int group, int k, int paddock) {
    return policies.get(policy.ordinal()).share(group, k, paddock);
  }

  /** Whether a group needs anything in a half-month of the plan. */
  public boolean isThere(int group, int k) {
    return planner.problem().pastureNeedMj[group][k] > 0;
  }

  // Missing safe feed.

  /** Safe feed short, MJ, by half-month of the plan. */
  public double shortMj(int k) {
    return shortMj[k];
  }

  /** Safe feed short in all, MJ. */
  public double shortMj() {
    return Arrays.stream(shortMj).sum();
  }

  /** Whether it is short by more than a hundredth of what the ewes need from pasture. */
  public boolean isShort() {
    double need = 0;
    for (int g = 0; g < setting.mobs(); g++) {
      need += Arrays.stream(planner.problem().pastureNeedMj[g]).sum();
    }
    return shortMj() > SHORT_ENOUGH_TO_SAY * need;
  }

  /** Worth of one more MJ of safe feed in a half-month of the plan, for the mob it helps most. */
  public double worthOfSafeMj(int k) {
    return worthOfSafeMj[k];
  }

  /** The nearest later and earlier dates with enough safe feed; empty unless it is short. */
  public List<Shift> shifts() {
    return List.copyOf(shifts);
  }

  /** What the cheapest way of grazing costs, whether it keeps groups apart or not, money. */
  public double leastCost() {
    return planner.cost(cheapest);
  }

  /** The largest risky paddocks that could be resown to weaker clover, in the farm's order. */
  public List<Resown> resown() {
    return List.copyOf(resown);
  }

  // Other dates.

  /** Date {@code k} of 24 looked at. */
  public MonthDay date(int k) {
    return HalfMonths.start(k);
  }

  /** Ewes in lamb lost per 100 joined if a mob is joined from date {@code k}, grazed as now. */
  public double pointsAtDate(int mob, int k) {
    return JoiningDates.points(setting.run, mob, k);
  }

  /** What a day of a half-month needs, to say how long a share of it lasts. */
  public double days(int k) {
    return HalfMonths.days(setting.halfMonths.get(k));
  }
}
