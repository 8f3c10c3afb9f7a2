package swardcase.decision;

import swardcase.decision.Explanation.Joined;

/**
 * What a number that can be explained is, its unit, and how its parts make it. What it is called
 * and its formula stand among the words, under the same names.
 */
public enum Quantity {
  WINTER_FEED("t as fed", Joined.QUOTIENT),
  WINTER_FEED_COST(Quantity.MONEY, Joined.PRODUCT),
  WINTER_SHORTFALL("MJ", Joined.EXCESS),
  BOUGHT_NOW("MJ", Joined.MODEL),
  BOUGHT_WITH_CURRENT("MJ", Joined.MODEL),
  WINTER_GROWTH("", Joined.MODEL),
  ENERGY_PER_TONNE("MJ/t", Joined.MODEL),
  GROWTH_LOST_OF_PADDOCK("kg DM", Joined.PRODUCT),
  AREA("ha", Joined.MODEL),
  WINTER_GROWTH_LOST("kg DM", Joined.SUM),
  LAMBS_LOST("lambs", Joined.SUM),
  LAMBS_LOST_OF_MOB("lambs", Joined.PRODUCT),
  LAMBS_PER_EWE_IN_LAMB("lambs", Joined.QUOTIENT),
  EWES_FEWER_IN_LAMB("ewes", Joined.PRODUCT),
  EWES_JOINED("ewes", Joined.MODEL),
  SHARE_LOST("", Joined.DIFFERENCE),
  IN_LAMB_WITHOUT_OESTROGEN("", Joined.MODEL),
  IN_LAMB_NOW("", Joined.MODEL),
  DOSE_OVER_JOINING("% of intake", Joined.MODEL),
  LAMB_COST_OF_MOB(Quantity.MONEY, Joined.SUM),
  LAMB_VALUE(Quantity.MONEY, Joined.PRODUCT),
  DRY_EWE_COST(Quantity.MONEY, Joined.PRODUCT),
  LAMB_COST(Quantity.MONEY, Joined.SUM),
  PLAN_COST(Quantity.MONEY, Joined.SUM),
  IN_ORDER_COST(Quantity.MONEY, Joined.MODEL),
  SELL_DRY_COST(Quantity.MONEY, Joined.MODEL),
  PLAN_GAIN(Quantity.MONEY, Joined.SUM),
  YEAR(Quantity.MONEY, Joined.PRODUCT),
  NET_OF_YEAR(Quantity.MONEY, Joined.SUM),
  SUPPLEMENT_SAVED(Quantity.MONEY, Joined.MODEL),
  LAMBS_SAVED(Quantity.MONEY, Joined.MODEL),
  CROP_MARGINS(Quantity.MONEY, Joined.MODEL),
  SPARE_FEED(Quantity.MONEY, Joined.MODEL),
  WORK_COSTS(Quantity.MONEY, Joined.MODEL),
  OWN_LABOUR(Quantity.MONEY, Joined.MODEL),
  DISCOUNT_FACTOR("", Joined.MODEL),
  END_VALUE(Quantity.MONEY, Joined.PRODUCT),
  HECTARES_SOWN("ha", Joined.MODEL),
  AREA_OF_PADDOCK("ha", Joined.MODEL),
  COST(Quantity.MONEY, Joined.PRODUCT),
  COST_PER_HA("money/ha", Joined.MODEL),
  GAIN_OF_KEEPING(Quantity.MONEY, Joined.DIFFERENCE),
  GAIN(Quantity.MONEY, Joined.DIFFERENCE),
  GAIN_OF_PLAN(Quantity.MONEY, Joined.MODEL),
  GAIN_OF_PLAN_WITHOUT(Quantity.MONEY, Joined.MODEL),
  CREDIT(Quantity.MONEY, Joined.SUM),
  CREDIT_WHO_GRAZES_IT(Quantity.MONEY, Joined.MODEL),
  CREDIT_LESS_CLOVER(Quantity.MONEY, Joined.MODEL),
  CREDIT_OTHER_CULTIVAR(Quantity.MONEY, Joined.MODEL),
  CREDIT_DENSER_STAND(Quantity.MONEY, Joined.MODEL),
  CREDIT_CROPS(Quantity.MONEY, Joined.MODEL),
  CREDIT_FEED(Quantity.MONEY, Joined.MODEL),
  CREDIT_COSTS(Quantity.MONEY, Joined.MODEL),
  GROWTH_LOST("kg DM/ha", Joined.SUM),
  LOST_TO_CULTIVAR("kg DM/ha", Joined.PRODUCT),
  LOST_TO_THIN_STAND("kg DM/ha", Joined.MODEL),
  GROWTH_OF_PROFILE("kg DM/ha", Joined.MODEL),
  NITROGEN_FIXED("kg N/ha", Joined.PRODUCT),
  CLOVER_GROWN("t DM/ha", Joined.PRODUCT),
  GROWTH_OF_YEAR("t DM/ha", Joined.MODEL),
  RELATIVE_GROWTH("", Joined.MODEL),
  SHORTFALL_OF_CULTIVAR("", Joined.PRODUCT),
  SHORT_OF_CURRENT("", Joined.MODEL),
  SHORTFALL("", Joined.SUM),
  SHARE_OF_CLOVER("", Joined.MODEL),
  SHARE_ASSUMED("", Joined.MODEL),
  SUPPLEMENT("t as fed", Joined.PRODUCT),
  PART_OF_GROWTH_LOST("", Joined.MODEL),
  SUPPLEMENT_COST(Quantity.MONEY, Joined.PRODUCT),
  FORMONONETIN_OF_CULTIVAR("% of leaf", Joined.PRODUCT),
  FORMONONETIN_TESTED("% of leaf", Joined.MODEL),
  FORMONONETIN("% of leaf", Joined.SUM),
  DOSE_ON_WET_GROUND("% of intake", Joined.PRODUCT),
  DOSE("% of intake", Joined.PRODUCT),
  OLD_SHARE("", Joined.SUM),
  OLD_SHARE_ASSUMED("", Joined.SUM),
  /** A number of the farm folder or of a table, in the unit that it has there. */
  INPUT("", Joined.INPUT);

  private static final String MONEY = "money";

  private final String unit;
  private final Joined joined;

  Quantity(String unit, Joined joined) {
    this.unit = unit;
    this.joined = joined;
  }

  /** Its unit; {@code money} for a sum in the farm's currency. */
  String unit() {
    return unit;
  }

  /** How its parts make it. */
  Joined joined() {
    return joined;
  }
}
