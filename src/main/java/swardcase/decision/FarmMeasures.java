package swardcase.decision;

import java.time.Month;
import java.util.Arrays;
import java.util.List;
import swardcase.draws.Measures;
import swardcase.farm.HalfMonths;
import swardcase.farm.SeasonGrowth;
import swardcase.feed.EnergyMethod;
import swardcase.feed.FeedBudget;
import swardcase.feed.FeedResult;
import swardcase.feed.FeedSurface;
import swardcase.feed.StockDemand;
import swardcase.outcome.FarmModel;
import swardcase.outcome.FarmRule;
import swardcase.outcome.OutcomeFunction;
import swardcase.outcome.Plan;
import swardcase.reproduction.FlockEffect;

/**
 * Every physical number and cost of a decision that is printed, in one flat order: read in each
 * draw, by one thread.
 */
public final class FarmMeasures implements Measures {

  /** Numbers of the farm as a whole; money and animals by the year, as things stand. */
  public enum OfFarm {
    /** Winter growth lost to outdated cultivars, kg dry matter. */
    WINTER_LOSS_KG_DM,
    /** Energy to be bought in winter because of it, MJ. */
    WINTER_SHORTFALL_MJ,
    /** The same as supplement, t as fed. */
    WINTER_SUPPLEMENT_TONNES,
    /** The same as money. */
    WINTER_SUPPLEMENT_COST,
    /** Money for supplement bought because of it in the whole year. */
    YEAR_SUPPLEMENT_COST,
    /** Supplement needed in a year, t as fed. */
    SUPPLEMENT_TONNES_NOW,
    /** The same per ewe, kg as fed. */
    SUPPLEMENT_KG_PER_EWE_NOW,
    /** Ewes more that current cultivars everywhere would carry. */
    EXTRA_EWES,
    /** Their yearly gain. */
    MORE_EWES_GAIN,
    /** Ewes in lamb per 100 joined, without oestrogen. */
    UNAFFECTED_PERCENT,
    /** The same as paddocks are grazed now. */
    PREGNANT_PERCENT,
    /** Sterile ewes per 100 joined. */
    STERILE_PERCENT,
    /** Lambs not marked because of oestrogen. */
    LAMBS_LOST,
    /** Money lost because of oestrogen. */
    LAMB_COST,
    /** Worth of the lambs marked, less what dry ewes and all supplement bought cost. */
    STANDING_RESULT,
    /** All costs of the plan, own labour among them, not discounted. */
    PLAN_COST,
    /** Those of grazing in order. */
    IN_ORDER_COST,
    /** Those of scanning, where dry ewes are sold. */
    SELL_DRY_COST
  }

  /** Numbers of a mob. */
  public enum OfMob {
    /** Formononetin over joining, per cent of intake. */
    DOSE_AT_JOINING,
    /** Ewes in lamb per 100 joined, without oestrogen. */
    UNAFFECTED_PERCENT,
    /** The same as paddocks are grazed now. */
    PREGNANT_PERCENT,
    /** Lambs not marked in a year because of oestrogen. */
    LAMBS_LOST,
    /** Money lost in a year because of oestrogen. */
    LAMB_COST,
    /** Lambs more in a year if the rams went in on the other date. */
    OTHER_DATE_LAMBS,
    /** Their worth, and that of fewer dry ewes. */
    OTHER_DATE_WORTH
  }

  /** Numbers of a paddock. */
  public enum OfPaddock {
    /** Winter growth lost to outdated cultivars and thin clover, kg dry matter per ha and year. */
    WINTER_LOSS_KG_DM_PER_HA,
    /** Nitrogen that its clover fixes as it stands, kg per ha and year. */
    NITROGEN_KG_PER_HA,
    /** The same in the last year counted of what is planned there. */
    NITROGEN_PLANNED_KG_PER_HA,
    /** The part lost to the cultivars. */
    LOST_TO_CULTIVAR_KG_DM_PER_HA,
    /** The part lost because the clover is thin. */
    LOST_TO_THIN_STAND_KG_DM_PER_HA,
    /** The paddock's part of the farm's winter shortfall, MJ. */
    SHORTFALL_MJ,
    /** The same as supplement, t as fed. */
    SUPPLEMENT_TONNES,
    /** The same as money. */
    SUPPLEMENT_COST,
    /** Formononetin of the clover, per cent of leaf dry matter. */
    LEAF_FORMONONETIN,
    /** Formononetin, per cent of intake, of a ewe on green feed of this paddock only. */
    GREEN_DOSE,
    /** What the planned action costs, own labour with it, not discounted. */
    PLAN_COST
  }

  /** Numbers of a month, mean over season types, per hectare of farm but the dose. */
  public enum OfMonth {
    /** Energy the stock need, MJ. */
    DEMAND_MJ,
    /** Energy they find as the stands are, MJ. */
    EATEN_MJ,
    /** Energy bought as the stands are, MJ. */
    BOUGHT_MJ,
    /** The same with current cultivars in the same paddocks, MJ. */
    BOUGHT_WITH_CURRENT_MJ,
    /** Energy bought as the stands are by the second energy method, MJ. */
    BOUGHT_AFRC_MJ,
    /** Pasture grown as the stands are, kg dry matter. */
    GROWTH_KG_DM,
    /** The same with current cultivars, kg dry matter. */
    GROWTH_WITH_CURRENT_KG_DM,
    /** Green feed on offer at the end of the month, kg dry matter. */
    GREEN_KG_DM,
    /** Dry feed on offer at the end of the month, kg dry matter. */
    DRY_KG_DM,
    /** Dose of the ewes, formononetin, per cent of intake. */
    DOSE
  }

  private static final int MONTHS = 12;
  private static final int OF_MONTH = OfMonth.values().length;
  private static final int OF_FARM = OfFarm.values().length;
  private static final int OF_MOB = OfMob.values().length;
  private static final int OF_PADDOCK = OfPaddock.values().length;

  private final FarmModel model;
  private final Plan plan;
  private final OtherDates dates;
  private final FeedSurface afrc;
  private final FeedResult withCurrent = new FeedResult();
  private final double[] inLamb;

  FarmMeasures(FarmModel model, Plan plan, OtherDates dates) {
    this.model = model;
    this.plan = plan;
    this.dates = dates;
    inLamb = new double[model.farm().mobs().size()];
    StockDemand need = model.demand(EnergyMethod.AFRC_1993);
    FeedBudget budget = new FeedBudget(model.farm(), need, model.tables());
    afrc =
        new FeedSurface(
            model.farm(), model.tables(), model.year(), model.inputs(), need, budget, false);
  }

  /** What a rule of the plan costs in all. */
  static OfFarm costOf(FarmRule rule) {
    return OfFarm.valueOf(rule.name() + "_COST");
  }

  int at(OfFarm measure) {
    return measure.ordinal();
  }

  int at(int mob, OfMob measure) {
    return OF_FARM + mob * OF_MOB + measure.ordinal();
  }

  /** Place of a number of a month from 0, January. */
  int ofMonth(int month, OfMonth measure) {
    return at(model.farm().mobs().size(), OfMob.DOSE_AT_JOINING)
        + month * OF_MONTH
        + measure.ordinal();
  }

  int at(int paddock, OfPaddock measure) {
    return ofMonth(MONTHS, OfMonth.DEMAND_MJ) + paddock * OF_PADDOCK + measure.ordinal();
  }

  @Override
  public int size() {
    return at(plan.paddocks(), OfPaddock.WINTER_LOSS_KG_DM_PER_HA);
  }

  @Override
  public void read(OutcomeFunction run, double[] numbers, double[] into) {
    readMonths(run, numbers, into);
    readFarm(run, into);
    readFlock(run, into);
    readPaddocks(run, into);
  }

  private void readMonths(OutcomeFunction run, double[] numbers, double[] into) {
    Arrays.fill(into, ofMonth(0, OfMonth.DEMAND_MJ), ofMonth(MONTHS, OfMonth.DEMAND_MJ), 0);
    run.readInLamb(inLamb);
    afrc.set(numbers, run.winterGrowthNow(), run.legumeShareNow(), inLamb);
    List<SeasonGrowth> seasons = model.farm().feedYear().seasons();
    for (int season = 0; season < seasons.size(); season++) {
      double chance = seasons.get(season).chance().likely();
      FeedResult now = run.feedNow(season);
      add(OfMonth.DEMAND_MJ, now.demandMjPerHa, chance, into);
      add(OfMonth.EATEN_MJ, now.eatenMjPerHa, chance, into);
      add(OfMonth.BOUGHT_MJ, now.boughtMjPerHa, chance, into);
      add(OfMonth.GROWTH_KG_DM, now.growthKgDmPerHa, chance, into);
      addEnds(OfMonth.GREEN_KG_DM, now.greenKgDmPerHa, chance, into);
      addEnds(OfMonth.DRY_KG_DM, now.dryKgDmPerHa, chance, into);
      run.feedYear(season, 1, withCurrent);
      add(OfMonth.BOUGHT_WITH_CURRENT_MJ, withCurrent.boughtMjPerHa, chance, into);
      add(OfMonth.GROWTH_WITH_CURRENT_KG_DM, withCurrent.growthKgDmPerHa, chance, into);
      add(OfMonth.BOUGHT_AFRC_MJ, afrc.now(season).boughtMjPerHa, chance, into);
    }
  }

  private void add(OfMonth measure, double[] halfMonths, double chance, double[] into) {
    for (int p = 0; p < HalfMonths.COUNT; p++) {
      into[ofMonth(p / 2, measure)] += chance * halfMonths[p];
    }
  }

  private void addEnds(OfMonth measure, double[] halfMonths, double chance, double[] into) {
    for (int month = 0; month < MONTHS; month++) {
      into[ofMonth(month, measure)] += chance * halfMonths[2 * month + 1];
    }
  }

  /** Of the whole farm. */
  private double boughtInWinterMj(OfMonth measure, double[] of) {
    double sum = 0;
    for (Month month : model.farm().feedYear().winterMonths()) {
      sum += of[ofMonth(month.ordinal(), measure)] * model.farm().areaHa();
    }
    return sum;
  }

  private void readFarm(OutcomeFunction run, double[] into) {
    double now = run.winterGrowthNow();
    double loss = 0;
    for (int i = 0; i < plan.paddocks(); i++) {
      loss += run.winterLossKgDmPerHa(i) * model.farm().paddocks().get(i).areaHa();
    }
    double shortfall =
        Math.max(
            0,
            boughtInWinterMj(OfMonth.BOUGHT_MJ, into)
                - boughtInWinterMj(OfMonth.BOUGHT_WITH_CURRENT_MJ, into));
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
    into[at(OfFarm.STANDING_RESULT)] = -boughtNow * run.pricePerMj();
  }

  private void readFlock(OutcomeFunction run, double[] into) {
    double unaffected = 0;
    double pregnant = 0;
    double sterile = 0;
    double lambs = 0;
    double cost = 0;
    double result = 0;
    for (int g = 0; g < model.farm().mobs().size(); g++) {
      FlockEffect mob = run.flock(g);
      double share = (double) model.farm().mobs().get(g).ewes() / model.farm().ewesJoined() * 100;
      into[at(g, OfMob.DOSE_AT_JOINING)] = mob.doseAtJoining();
      into[at(g, OfMob.UNAFFECTED_PERCENT)] = 100 * mob.unaffectedShare();
      into[at(g, OfMob.PREGNANT_PERCENT)] = 100 * mob.shareNow();
      into[at(g, OfMob.LAMBS_LOST)] = run.lambsLost(g);
      into[at(g, OfMob.LAMB_COST)] = run.lambCost(g);
      double saved = dates.saved(run, g) * model.farm().mobs().get(g).ewes();
      into[at(g, OfMob.OTHER_DATE_LAMBS)] = saved * run.lambsPerPregnantEwe(g);
      into[at(g, OfMob.OTHER_DATE_WORTH)] = saved * run.valuePerPregnantEwe(g);
      unaffected += share * mob.unaffectedShare();
      pregnant += share * mob.shareNow();
      sterile += share * mob.sterileNow();
      lambs += run.lambsLost(g);
      cost += run.lambCost(g);
      result += run.yearOfFlock(g);
    }
    into[at(OfFarm.UNAFFECTED_PERCENT)] = unaffected;
    into[at(OfFarm.PREGNANT_PERCENT)] = pregnant;
    into[at(OfFarm.STERILE_PERCENT)] = sterile;
    into[at(OfFarm.LAMBS_LOST)] = lambs;
    into[at(OfFarm.LAMB_COST)] = cost;
    into[at(OfFarm.STANDING_RESULT)] += result;
    for (int month = 0; month < MONTHS; month++) {
      into[ofMonth(month, OfMonth.DOSE)] = (run.dose(2 * month) + run.dose(2 * month + 1)) / 2;
    }
  }

  /** The farm's shortfall is shared out by the growth each paddock loses, so that it adds up. */
  private void readPaddocks(OutcomeFunction run, double[] into) {
    double loss = into[at(OfFarm.WINTER_LOSS_KG_DM)];
    double cost = 0;
    for (int i = 0; i < plan.paddocks(); i++) {
      double area = model.farm().paddocks().get(i).areaHa();
      double perHa = run.winterLossKgDmPerHa(i);
      double part = loss > 0 ? perHa * area / loss : 0;
      double thin = run.thinLossKgDmPerHa(i);
      into[at(i, OfPaddock.WINTER_LOSS_KG_DM_PER_HA)] = perHa;
      into[at(i, OfPaddock.NITROGEN_KG_PER_HA)] = run.nitrogenKgPerHa(i);
      into[at(i, OfPaddock.NITROGEN_PLANNED_KG_PER_HA)] =
          run.nitrogenKgPerHa(plan, i, model.years() - 1);
      into[at(i, OfPaddock.LOST_TO_CULTIVAR_KG_DM_PER_HA)] = perHa - thin;
      into[at(i, OfPaddock.LOST_TO_THIN_STAND_KG_DM_PER_HA)] = thin;
      into[at(i, OfPaddock.SHORTFALL_MJ)] = part * into[at(OfFarm.WINTER_SHORTFALL_MJ)];
      into[at(i, OfPaddock.SUPPLEMENT_TONNES)] = part * into[at(OfFarm.WINTER_SUPPLEMENT_TONNES)];
      into[at(i, OfPaddock.SUPPLEMENT_COST)] = part * into[at(OfFarm.WINTER_SUPPLEMENT_COST)];
      into[at(i, OfPaddock.LEAF_FORMONONETIN)] = run.leafFormononetin(i);
      into[at(i, OfPaddock.GREEN_DOSE)] = run.greenDose(i);
      double planned = area * run.costPerHa(i, plan.action(i), plan.start(i));
      into[at(i, OfPaddock.PLAN_COST)] = planned;
      cost += planned;
    }
    for (FarmRule rule : FarmRule.values()) {
      double ofRule =
          model.farm().areaHa()
              * run.costPerHa(plan.paddocks() + rule.ordinal(), plan.choice(rule), 0);
      into[at(costOf(rule))] = ofRule;
      cost += ofRule;
    }
    into[at(OfFarm.PLAN_COST)] = cost;
  }
}
