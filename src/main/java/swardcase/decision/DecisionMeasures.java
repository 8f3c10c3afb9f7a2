package swardcase.decision;

import java.util.List;
import swardcase.draws.Measures;
import swardcase.outcome.FarmModel;
import swardcase.outcome.Outcome;
import swardcase.outcome.OutcomeFunction;
import swardcase.outcome.Plan;
import swardcase.reproduction.FlockEffect;

/** Every number of a decision whose range is printed, in one flat order. */
final class DecisionMeasures implements Measures {

  /** Numbers of the farm as a whole. */
  enum OfFarm {
    WINTER_LOSS_KG_DM,
    WINTER_SHORTFALL_MJ,
    WINTER_SUPPLEMENT_TONNES,
    WINTER_SUPPLEMENT_COST,
    YEAR_SUPPLEMENT_COST,
    SUPPLEMENT_TONNES_NOW,
    SUPPLEMENT_KG_PER_EWE_NOW,
    EXTRA_EWES,
    MORE_EWES_GAIN,
    UNAFFECTED_PERCENT,
    PREGNANT_PERCENT,
    STERILE_PERCENT,
    LAMBS_LOST,
    LAMB_COST,
    PLAN_COST,
    PLAN_NPV
  }

  /** Numbers of a mob. */
  enum OfMob {
    DOSE_AT_JOINING,
    UNAFFECTED_PERCENT,
    PREGNANT_PERCENT
  }

  /** Numbers of a paddock. */
  enum OfPaddock {
    WINTER_LOSS_KG_DM_PER_HA,
    SHORTFALL_MJ,
    SUPPLEMENT_TONNES,
    SUPPLEMENT_COST,
    LEAF_FORMONONETIN,
    GREEN_DOSE,
    PLAN_COST,
    PLAN_NPV
  }

  /** Numbers of an action on one paddock alone. */
  enum OfAction {
    COST_PER_HA,
    NPV
  }

  /** An action on one paddock alone. */
  record OnePaddock(int paddock, int action, int start) {}

  private static final int MONTHS = 12;
  private static final int OF_FARM = OfFarm.values().length;
  private static final int OF_MOB = OfMob.values().length;
  private static final int OF_PADDOCK = OfPaddock.values().length;
  private static final int OF_ACTION = OfAction.values().length;

  private final FarmModel model;
  private final Plan plan;
  private final List<OnePaddock> actions;
  private final int firstOfPaddocks;
  private final int firstOfActions;

  DecisionMeasures(FarmModel model, Plan plan, List<OnePaddock> actions) {
    this.model = model;
    this.plan = plan;
    this.actions = List.copyOf(actions);
    firstOfPaddocks = doseOfMonth(MONTHS);
    firstOfActions = at(model.farm().paddocks().size(), OfPaddock.WINTER_LOSS_KG_DM_PER_HA);
  }

  int at(OfFarm measure) {
    return measure.ordinal();
  }

  int at(int mob, OfMob measure) {
    return OF_FARM + mob * OF_MOB + measure.ordinal();
  }

  /** Dose of the ewes in a month, mean of its halves. */
  int doseOfMonth(int month) {
    return at(model.farm().mobs().size(), OfMob.DOSE_AT_JOINING) + month;
  }

  int at(int paddock, OfPaddock measure) {
    return firstOfPaddocks + paddock * OF_PADDOCK + measure.ordinal();
  }

  int at(int place, OfAction measure) {
    return firstOfActions + place * OF_ACTION + measure.ordinal();
  }

  @Override
  public int size() {
    return at(actions.size(), OfAction.COST_PER_HA);
  }

  /** Numbers of the farm, of its mobs and its months: everybody asks what moves them. */
  @Override
  public int kept() {
    return firstOfPaddocks;
  }

  @Override
  public void read(OutcomeFunction run, double[] into) {
    Outcome outcome = new Outcome(model.years());
    readFarm(run, into);
    readFlock(run, into);
    run.evaluate(plan, outcome);
    double cost = 0;
    for (int t = 0; t < model.years(); t++) {
      cost += outcome.actionCost(t);
    }
    into[at(OfFarm.PLAN_COST)] = cost;
    double npv = outcome.npv();
    into[at(OfFarm.PLAN_NPV)] = npv;
    readPaddocks(run, into, npv);
    run.setBase(model.keepAll());
    for (int k = 0; k < actions.size(); k++) {
      OnePaddock one = actions.get(k);
      into[at(k, OfAction.COST_PER_HA)] = run.costPerHa(one.paddock(), one.action(), one.start());
      into[at(k, OfAction.NPV)] = run.npvOfBaseWith(one.paddock(), one.action(), one.start());
    }
  }

  private void readFarm(OutcomeFunction run, double[] into) {
    double now = run.winterGrowthNow();
    double loss = 0;
    for (int i = 0; i < plan.paddocks(); i++) {
      loss += run.winterLossKgDmPerHa(i) * model.farm().paddocks().get(i).areaHa();
    }
    double shortfall = Math.max(0, run.boughtInWinterMj(now) - run.boughtInWinterMj(1));
    double boughtNow = run.boughtMj(now);
    into[at(OfFarm.WINTER_LOSS_KG_DM)] = loss;
    into[at(OfFarm.WINTER_SHORTFALL_MJ)] = shortfall;
    into[at(OfFarm.WINTER_SUPPLEMENT_TONNES)] = shortfall * run.tonnesPerMj();
    into[at(OfFarm.WINTER_SUPPLEMENT_COST)] = shortfall * run.pricePerMj();
    into[at(OfFarm.YEAR_SUPPLEMENT_COST)] =
        Math.max(0, boughtNow - run.boughtMj(1)) * run.pricePerMj();
    double tonnes = boughtNow * run.tonnesPerMj();
    int ewes = model.farm().ewesJoined();
    into[at(OfFarm.SUPPLEMENT_TONNES_NOW)] = tonnes;
    into[at(OfFarm.SUPPLEMENT_KG_PER_EWE_NOW)] = ewes > 0 ? 1000 * tonnes / ewes : 0;
    double extra = run.extraEwesWithCurrent();
    into[at(OfFarm.EXTRA_EWES)] = extra;
    into[at(OfFarm.MORE_EWES_GAIN)] = run.gainOfMoreEwes(extra);
  }

  private void readFlock(OutcomeFunction run, double[] into) {
    double unaffected = 0;
    double pregnant = 0;
    double sterile = 0;
    double lambs = 0;
    double cost = 0;
    for (int g = 0; g < model.farm().mobs().size(); g++) {
      FlockEffect mob = run.flock(g);
      double share = (double) model.farm().mobs().get(g).ewes() / model.farm().ewesJoined() * 100;
      into[at(g, OfMob.DOSE_AT_JOINING)] = mob.doseAtJoining();
      into[at(g, OfMob.UNAFFECTED_PERCENT)] = 100 * mob.unaffectedShare();
      into[at(g, OfMob.PREGNANT_PERCENT)] = 100 * mob.shareNow();
      unaffected += share * mob.unaffectedShare();
      pregnant += share * mob.shareNow();
      sterile += share * mob.sterileNow();
      lambs += run.lambsLost(g);
      cost += run.lambCost(g);
    }
    into[at(OfFarm.UNAFFECTED_PERCENT)] = unaffected;
    into[at(OfFarm.PREGNANT_PERCENT)] = pregnant;
    into[at(OfFarm.STERILE_PERCENT)] = sterile;
    into[at(OfFarm.LAMBS_LOST)] = lambs;
    into[at(OfFarm.LAMB_COST)] = cost;
    for (int month = 0; month < MONTHS; month++) {
      into[doseOfMonth(month)] = (run.dose(2 * month) + run.dose(2 * month + 1)) / 2;
    }
  }

  /** The farm's shortfall is shared out by the growth each paddock loses, so that it adds up. */
  private void readPaddocks(OutcomeFunction run, double[] into, double planNpv) {
    double loss = into[at(OfFarm.WINTER_LOSS_KG_DM)];
    for (int i = 0; i < plan.paddocks(); i++) {
      double area = model.farm().paddocks().get(i).areaHa();
      double perHa = run.winterLossKgDmPerHa(i);
      double part = loss > 0 ? perHa * area / loss : 0;
      into[at(i, OfPaddock.WINTER_LOSS_KG_DM_PER_HA)] = perHa;
      into[at(i, OfPaddock.SHORTFALL_MJ)] = part * into[at(OfFarm.WINTER_SHORTFALL_MJ)];
      into[at(i, OfPaddock.SUPPLEMENT_TONNES)] = part * into[at(OfFarm.WINTER_SUPPLEMENT_TONNES)];
      into[at(i, OfPaddock.SUPPLEMENT_COST)] = part * into[at(OfFarm.WINTER_SUPPLEMENT_COST)];
      into[at(i, OfPaddock.LEAF_FORMONONETIN)] = run.leafFormononetin(i);
      into[at(i, OfPaddock.GREEN_DOSE)] = run.greenDose(i);
      into[at(i, OfPaddock.PLAN_COST)] = area * run.costPerHa(i, plan.action(i), plan.start(i));
      if (plan.action(i) == model.keep()) {
        into[at(i, OfPaddock.PLAN_NPV)] = 0;
      } else {
        into[at(i, OfPaddock.PLAN_NPV)] = planNpv - run.npvOfBaseWith(i, model.keep(), 0);
      }
    }
  }
}
