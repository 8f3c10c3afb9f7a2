package swardcase.decision;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import swardcase.chance.Range;
import swardcase.decision.DecisionMeasures.OfAction;
import swardcase.decision.DecisionMeasures.OfFarm;
import swardcase.decision.DecisionMeasures.OfMob;
import swardcase.decision.DecisionMeasures.OfPaddock;
import swardcase.draws.OneAtATime;
import swardcase.evidence.Assumption;
import swardcase.outcome.FarmModel;
import swardcase.outcome.Outcome;
import swardcase.outcome.OutcomeFunction;
import swardcase.outcome.Plan;
import swardcase.search.FixedChoice;
import swardcase.search.PlanLimit;
import swardcase.search.PlanSearch;

/**
 * The answer for a farm, as numbers: the plan, every action on a paddock alone it was weighed
 * against, and the range of each number. The words are made elsewhere.
 */
public final class Decision {

  /**
   * An action on one paddock, everything else kept, started in its best year.
   *
   * @param action place of the action
   * @param start year it starts, 0 for the coming one
   * @param outcome likely outcome
   * @param costPerHa undiscounted, per ha
   * @param npv for the paddock
   */
  public record ActionAlone(int action, int start, Outcome outcome, Range costPerHa, Range npv) {}

  private final FarmModel model;
  private final OutcomeFunction run;
  private final Plan plan;
  private final Outcome outcome;
  private final List<DecisionMeasures.OnePaddock> places = new ArrayList<>();
  private final DecisionMeasures measures;
  private final OneAtATime ranges;
  private final List<List<ActionAlone>> alone = new ArrayList<>();

  private final List<FixedChoice> fixed;
  private final PlanSearch.Found found;
  private final Optional<PlanSearch.Found> nextBest;
  private final double costOfFixing;
  private final Map<PlanLimit, Double> worthOfLifting = new EnumMap<>(PlanLimit.class);

  private Decision(FarmModel model, List<FixedChoice> fixed) {
    this.model = model;
    this.fixed = List.copyOf(fixed);
    run = model.newRun();
    PlanSearch search = new PlanSearch(model);
    PlanSearch chosen = fixed.isEmpty() ? search : new PlanSearch(model, fixed);
    found =
        chosen
            .find()
            .orElseThrow(
                () ->
                    new IllegalArgumentException(
                        "no plan with the choices made beforehand keeps within the limits"));
    plan = found.plan();
    nextBest = chosen.nextBest(plan);
    costOfFixing =
        fixed.isEmpty() ? 0 : Math.max(0, search.find().orElseThrow().value() - found.value());
    for (PlanLimit limit : PlanLimit.values()) {
      worthOfLifting.put(limit, chosen.worthOfLifting(limit, plan));
    }
    outcome = new Outcome(model.years());
    run.evaluate(plan, outcome);
    for (int i = 0; i < plan.paddocks(); i++) {
      for (int a = 0; a < model.actions().size(); a++) {
        if (a != model.keep() && run.allowed(i, a)) {
          places.add(new DecisionMeasures.OnePaddock(i, a, search.bestStart(i, a)));
        }
      }
    }
    measures = new DecisionMeasures(model, plan, places);
    ranges = OneAtATime.of(model, measures);
    collectAlone();
  }

  /** Decides. */
  public static Decision of(FarmModel model) {
    return new Decision(model, List.of());
  }

  /**
   * Decides with some choices made beforehand.
   *
   * @throws IllegalArgumentException if no plan with them keeps within the limits
   */
  public static Decision of(FarmModel model, List<FixedChoice> fixed) {
    return new Decision(model, fixed);
  }

  private void collectAlone() {
    for (int i = 0; i < plan.paddocks(); i++) {
      alone.add(new ArrayList<>());
    }
    for (int k = 0; k < places.size(); k++) {
      DecisionMeasures.OnePaddock place = places.get(k);
      Outcome ofThis = new Outcome(model.years());
      run.evaluate(model.keepAll().with(place.paddock(), place.action(), place.start()), ofThis);
      Range npv = ranges.range(measures.at(k, OfAction.NPV));
      alone
          .get(place.paddock())
          .add(
              new ActionAlone(
                  place.action(),
                  place.start(),
                  ofThis,
                  ranges.range(measures.at(k, OfAction.COST_PER_HA)),
                  npv));
    }
  }

  /** The farm made ready. */
  public FarmModel model() {
    return model;
  }

  /** A run at likely values; the caller may ask it, but must not set it. */
  public OutcomeFunction likely() {
    return run;
  }

  /** Choices that were made beforehand. */
  public List<FixedChoice> fixed() {
    return fixed;
  }

  /** What these choices cost: the value of the best plan found without them less this one's. */
  public double costOfFixing() {
    return costOfFixing;
  }

  /**
   * The plan's value, which is its net present value less effort, and how near other starts of the
   * search came.
   */
  public PlanSearch.Found found() {
    return found;
  }

  /** The best plan found that has another action for some paddock. */
  public Optional<PlanSearch.Found> nextBest() {
    return nextBest;
  }

  /**
   * What the plan's value would rise by if a limit were lifted, at least; 0 if it does not bind.
   */
  public double worthOfLifting(PlanLimit limit) {
    return worthOfLifting.get(limit);
  }

  DecisionMeasures measures() {
    return measures;
  }

  /** The low and high run once more, every measure kept at each end. */
  OneAtATime everyEnd() {
    return OneAtATime.of(model, measures, measures.size());
  }

  /** The plan. */
  public Plan plan() {
    return plan;
  }

  /** Its likely outcome. */
  public Outcome outcome() {
    return outcome;
  }

  /** Every action that can be done on a paddock, in the order of the actions, keeping aside. */
  public List<ActionAlone> alone(int paddock) {
    return List.copyOf(alone.get(paddock));
  }

  /** What a change of a paddock must be worth to be made. */
  public double effort(int paddock) {
    return model.effort(paddock);
  }

  /** The input that moves the plan's gain on a paddock, or its best action's alone, most. */
  public Optional<Assumption> deciding(int paddock) {
    int measure = measures.at(paddock, OfPaddock.PLAN_NPV);
    if (plan.action(paddock) == model.keep()) {
      int best = -1;
      for (int k = 0; k < places.size(); k++) {
        int candidate = measures.at(k, OfAction.NPV);
        if (places.get(k).paddock() == paddock
            && (best < 0 || ranges.likely(candidate) > ranges.likely(best))) {
          best = candidate;
        }
      }
      measure = best;
    }
    return measure < 0 ? Optional.empty() : ranges.strongest(measure);
  }

  // Ranges of what is printed.

  /** Winter growth lost to outdated cultivars, kg dry matter, whole farm and year. */
  public Range winterLossKgDm() {
    return amount(OfFarm.WINTER_LOSS_KG_DM);
  }

  /** Energy to be bought in winter because of it, MJ. */
  public Range winterShortfallMj() {
    return amount(OfFarm.WINTER_SHORTFALL_MJ);
  }

  /** The same as supplement, t as fed. */
  public Range winterSupplementTonnes() {
    return amount(OfFarm.WINTER_SUPPLEMENT_TONNES);
  }

  /** The same as money. */
  public Range winterSupplementCost() {
    return amount(OfFarm.WINTER_SUPPLEMENT_COST);
  }

  /** Money for supplement bought because of it in the whole year. */
  public Range yearSupplementCost() {
    return amount(OfFarm.YEAR_SUPPLEMENT_COST);
  }

  /** Supplement the farm needs in a year as it stands, t as fed. */
  public Range supplementTonnesNow() {
    return amount(OfFarm.SUPPLEMENT_TONNES_NOW);
  }

  /** The same per ewe, kg as fed. */
  public Range supplementKgPerEweNow() {
    return amount(OfFarm.SUPPLEMENT_KG_PER_EWE_NOW);
  }

  /** Ewes more that current cultivars everywhere would carry. */
  public Range extraEwes() {
    return amount(OfFarm.EXTRA_EWES);
  }

  /** Their yearly gain. */
  public Range moreEwesGain() {
    return ranges.range(measures.at(OfFarm.MORE_EWES_GAIN));
  }

  /** Ewes in lamb per 100 joined, without oestrogen. */
  public Range unaffectedPercent() {
    return ranges.range(measures.at(OfFarm.UNAFFECTED_PERCENT), 0, 100);
  }

  /** The same as paddocks are grazed now. */
  public Range pregnantPercent() {
    return ranges.range(measures.at(OfFarm.PREGNANT_PERCENT), 0, 100);
  }

  /** Sterile ewes per 100 joined. */
  public Range sterilePercent() {
    return ranges.range(measures.at(OfFarm.STERILE_PERCENT), 0, 100);
  }

  /** Lambs not marked in a year because of oestrogen. */
  public Range lambsLost() {
    return amount(OfFarm.LAMBS_LOST);
  }

  /** Money lost in a year because of oestrogen. */
  public Range lambCost() {
    return amount(OfFarm.LAMB_COST);
  }

  /** All costs of the plan, undiscounted. */
  public Range planCost() {
    return amount(OfFarm.PLAN_COST);
  }

  /** Net present value of the plan. */
  public Range planNpv() {
    return ranges.range(measures.at(OfFarm.PLAN_NPV));
  }

  /** Dose of a mob over joining, per cent of intake. */
  public Range doseAtJoining(int mob) {
    return ranges.range(measures.at(mob, OfMob.DOSE_AT_JOINING), 0, 100);
  }

  /** Ewes of a mob in lamb per 100 joined, without oestrogen. */
  public Range unaffectedPercent(int mob) {
    return ranges.range(measures.at(mob, OfMob.UNAFFECTED_PERCENT), 0, 100);
  }

  /** The same as paddocks are grazed now. */
  public Range pregnantPercent(int mob) {
    return ranges.range(measures.at(mob, OfMob.PREGNANT_PERCENT), 0, 100);
  }

  /** Dose of the ewes in a month from 0, January, per cent of intake. */
  public Range doseOfMonth(int month) {
    return ranges.range(measures.doseOfMonth(month), 0, 100);
  }

  /** Winter growth a paddock loses, kg dry matter per ha and year. */
  public Range winterLossKgDmPerHa(int paddock) {
    return amount(paddock, OfPaddock.WINTER_LOSS_KG_DM_PER_HA);
  }

  /** The paddock's part of the farm's winter shortfall, MJ. */
  public Range shortfallMj(int paddock) {
    return amount(paddock, OfPaddock.SHORTFALL_MJ);
  }

  /** The same as supplement, t as fed. */
  public Range supplementTonnes(int paddock) {
    return amount(paddock, OfPaddock.SUPPLEMENT_TONNES);
  }

  /** The same as money. */
  public Range supplementCost(int paddock) {
    return amount(paddock, OfPaddock.SUPPLEMENT_COST);
  }

  /** Formononetin of a paddock's clover, per cent of leaf dry matter. */
  public Range leafFormononetin(int paddock) {
    return ranges.range(measures.at(paddock, OfPaddock.LEAF_FORMONONETIN), 0, 100);
  }

  /** Formononetin, per cent of intake, of a ewe on green feed of this paddock only. */
  public Range greenDose(int paddock) {
    return ranges.range(measures.at(paddock, OfPaddock.GREEN_DOSE), 0, 100);
  }

  /** What the planned action costs on a paddock, undiscounted. */
  public Range planCost(int paddock) {
    return amount(paddock, OfPaddock.PLAN_COST);
  }

  /** What the plan would lose without its action on a paddock. */
  public Range planNpv(int paddock) {
    return ranges.range(measures.at(paddock, OfPaddock.PLAN_NPV));
  }

  /** Places of the inputs that move the plan's net present value, most first. */
  public List<Integer> movingInputs() {
    return ranges.moving(measures.at(OfFarm.PLAN_NPV));
  }

  /** The plan's net present value with one input at its low end. */
  public double planNpvAtLow(int input) {
    return ranges.atLow(input, measures.at(OfFarm.PLAN_NPV));
  }

  /** The plan's net present value with one input at its high end. */
  public double planNpvAtHigh(int input) {
    return ranges.atHigh(input, measures.at(OfFarm.PLAN_NPV));
  }

  private Range amount(OfFarm measure) {
    return ranges.range(measures.at(measure), 0, Double.MAX_VALUE);
  }

  private Range amount(int paddock, OfPaddock measure) {
    return ranges.range(measures.at(paddock, measure), 0, Double.MAX_VALUE);
  }
}
