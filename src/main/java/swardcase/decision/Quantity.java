package swardcase.decision;

/** What a number that can be explained is; its name and formula in words are made last. */
public enum Quantity {
  /** Supplement bought in winter because of outdated clover. */
  WINTER_FEED,
  /** Cost of that supplement. */
  WINTER_FEED_COST,
  /** Energy short in winter because of outdated clover. */
  WINTER_SHORTFALL,
  /** Energy bought in winter, stands as they are. */
  BOUGHT_NOW,
  /** Energy bought in winter, current cultivars. */
  BOUGHT_WITH_CURRENT,
  /** Winter growth of the farm against current cultivars everywhere. */
  WINTER_GROWTH,
  /** Energy in a tonne of supplement. */
  ENERGY_PER_TONNE,
  /** Winter growth lost on one paddock. */
  GROWTH_LOST_OF_PADDOCK,
  /** Area. */
  AREA,
  /** Winter growth lost to outdated clover, whole farm. */
  WINTER_GROWTH_LOST,
  /** Lambs not marked because of oestrogenic clover. */
  LAMBS_LOST,
  /** Lambs lost by one mob. */
  LAMBS_LOST_OF_MOB,
  /** Lambs marked for each ewe in lamb. */
  LAMBS_PER_EWE_IN_LAMB,
  /** Ewes fewer in lamb. */
  EWES_FEWER_IN_LAMB,
  /** Ewes joined. */
  EWES_JOINED,
  /** Share of ewes in lamb that is lost. */
  SHARE_LOST,
  /** In lamb without oestrogen. */
  IN_LAMB_WITHOUT_OESTROGEN,
  /** In lamb as paddocks are grazed now. */
  IN_LAMB_NOW,
  /** Formononetin over joining. */
  DOSE_OVER_JOINING,
  /** Money lost by one mob. */
  LAMB_COST_OF_MOB,
  /** Value of the lambs lost. */
  LAMB_VALUE,
  /** Further costs of dry ewes. */
  DRY_EWE_COST,
  /** Money lost because of oestrogenic clover. */
  LAMB_COST,
  /** Cost of the plan, not discounted. */
  PLAN_COST,
  /** Of it what grazing in order takes. */
  IN_ORDER_COST,
  /** Of it what scanning costs, where dry ewes are sold. */
  SELL_DRY_COST,
  /** Gain of the plan: net present value against keeping every paddock. */
  PLAN_GAIN,
  /** One year of the plan, discounted. */
  YEAR,
  /** One year of the plan. */
  NET_OF_YEAR,
  /** Supplement not bought. */
  SUPPLEMENT_SAVED,
  /** Lambs not lost. */
  LAMBS_SAVED,
  /** Crop margins. */
  CROP_MARGINS,
  /** Spare feed or more ewes. */
  SPARE_FEED,
  /** Costs of the work. */
  WORK_COSTS,
  OWN_LABOUR,
  /** Discount factor. */
  DISCOUNT_FACTOR,
  /** End value, discounted as the last year. */
  END_VALUE,
  /** Hectares sown. */
  HECTARES_SOWN,
  /** Area of a named paddock. */
  AREA_OF_PADDOCK,
  /** Cost of the planned action on a paddock. */
  COST,
  /** Cost per ha. */
  COST_PER_HA,
  /** Gain of a paddock that is kept: nothing. */
  GAIN_OF_KEEPING,
  /** Gain of the planned action on a paddock. */
  GAIN,
  /** Gain of the plan. */
  GAIN_OF_PLAN,
  /** Gain of the plan with this paddock kept. */
  GAIN_OF_PLAN_WITHOUT,
  /** Where the gain of a paddock's planned action comes from. */
  CREDIT,
  /** Of that, from who grazes it. */
  CREDIT_WHO_GRAZES_IT,
  /** From less clover. */
  CREDIT_LESS_CLOVER,
  /** From another cultivar. */
  CREDIT_OTHER_CULTIVAR,
  /** From a denser stand. */
  CREDIT_DENSER_STAND,
  /** From crop margins. */
  CREDIT_CROPS,
  /** From feed. */
  CREDIT_FEED,
  /** From costs. */
  CREDIT_COSTS,
  /** Winter growth lost. */
  GROWTH_LOST,
  /** Of that, what is lost to the cultivars. */
  LOST_TO_CULTIVAR,
  /** And what is lost because the clover is thin. */
  LOST_TO_THIN_STAND,
  /** Winter growth of the farm's profile. */
  GROWTH_OF_PROFILE,
  /** Nitrogen that the clover fixes. */
  NITROGEN_FIXED,
  /** Clover grown in a year. */
  CLOVER_GROWN,
  /** Growth of the year of the farm's profile. */
  GROWTH_OF_YEAR,
  /** Growth of the year relative to current cultivars. */
  RELATIVE_GROWTH,
  /** What one cultivar takes from the winter growth of the clover. */
  SHORTFALL_OF_CULTIVAR,
  /** Winter growth short of a current cultivar. */
  SHORT_OF_CURRENT,
  /** Winter growth that the clover falls short by. */
  SHORTFALL,
  /** Share of the clover of one cultivar. */
  SHARE_OF_CLOVER,
  /** The same where nobody looked at the clover. */
  SHARE_ASSUMED,
  /** Supplement because of outdated clover. */
  SUPPLEMENT,
  /** Part of the growth lost on the farm. */
  PART_OF_GROWTH_LOST,
  /** Cost of supplement because of outdated clover. */
  SUPPLEMENT_COST,
  /** What one cultivar brings to the formononetin of the leaf. */
  FORMONONETIN_OF_CULTIVAR,
  /** Formononetin in the clover leaf by a leaf test. */
  FORMONONETIN_TESTED,
  /** Formononetin in the clover leaf. */
  FORMONONETIN,
  /** Formononetin in the diet on green feed of wet ground. */
  DOSE_ON_WET_GROUND,
  /** Formononetin in the diet on green feed. */
  DOSE,
  /** Old cultivars, share of the clover. */
  OLD_SHARE,
  /** The same where nobody looked at the clover. */
  OLD_SHARE_ASSUMED,
  /** A number of the farm folder or of a table. */
  INPUT
}
