package swardcase.sward;

import java.util.Locale;
import swardcase.evidence.Assumption;
import swardcase.farm.Climate;
import swardcase.tables.Cultivar;
import swardcase.tables.Tables;

/** Keys of the seed bank's rows in the parameter table. */
public final class SeedKeys {

  /** Seed set in the sowing year as a fraction of that of a full stand. */
  public static final String SOWING_YEAR_YIELD = "seed.sowing-year-yield";

  /** Share of the seed that softens which gives a seedling. */
  public static final String EMERGENCE = "seed.emergence";

  /** Crowding strength of yanninicum on waterlogged ground, relative to drained ground. */
  public static final String CROWDING_OF_YANNINICUM_WET = "seed.crowding.yanninicum-wet";

  /** Share of sown seed that gives a seedling. */
  public static final String GOOD_SEED_SHARE = "seed.good-seed-share";

  /** Share of buried seed still alive and hard after a year. */
  public static final String BURIED_RETENTION = "seed.buried-retention";

  private SeedKeys() {}

  /**
   * Key of the share of hard seed that stays hard through one summer, such as {@code
   * seed.retention.hot.moderate.age-1}.
   *
   * @param summer which summer of the seed's life: 1 is the one after it was set; 4 stands for the
   *     fourth and all later ones
   */
  public static String retention(Climate climate, Cultivar.HardSeed hardSeed, int summer) {
    return "seed.retention."
        + weather(climate)
        + "."
        + hardSeed.name().toLowerCase(Locale.ROOT)
        + ".age-"
        + summer;
  }

  /** Key of the seed set by a full stand in a year and not eaten, kg/ha: {@code seed.yield.hot}. */
  public static String yield(Climate climate) {
    return "seed.yield." + weather(climate);
  }

  private static String weather(Climate climate) {
    return switch (climate) {
      case HOT_DRY_SUMMER -> "hot";
      case COOL -> "cool";
    };
  }

  /**
   * Key of a cultivar's crowding strength, such as {@code seed.crowding.mount-barker}: seed set per
   * plant in a mixture, relative to an adapted current cultivar. Each cultivar has a number of its
   * own, so against itself it counts exactly 1.
   */
  public static String crowding(Cultivar cultivar) {
    return "seed.crowding." + cultivar.name().toLowerCase(Locale.ROOT).replace(' ', '-');
  }

  /** The row of that number, or the row for cultivars without a trial. */
  public static Assumption crowding(Cultivar cultivar, Tables tables) {
    Assumption row = tables.parameters().get(crowding(cultivar));
    return row != null
        ? row
        : tables
            .parameter("seed.crowding.default")
            .named("crowding strength of " + cultivar.name());
  }
}
