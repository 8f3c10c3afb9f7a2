package swardcase.sward;

import java.util.Locale;
import swardcase.farm.Climate;
import swardcase.tables.Cultivar;

/** Keys of the seed bank's rows in the parameter table. */
public final class SeedKeys {

  /** Seed in the ground under the present stand in autumn, before it germinates, kg/ha. */
  public static final String INITIAL_BANK = "seed.initial-bank";

  /** Seed set by a full stand in a year, kg/ha. */
  public static final String YIELD = "seed.yield";

  /** Seed set in the sowing year as a fraction of that of a full stand. */
  public static final String SOWING_YEAR_YIELD = "seed.sowing-year-yield";

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
    String weather =
        switch (climate) {
          case HOT_DRY_SUMMER -> "hot";
          case COOL -> "cool";
        };
    return "seed.retention."
        + weather
        + "."
        + hardSeed.name().toLowerCase(Locale.ROOT)
        + ".age-"
        + summer;
  }

  /**
   * Key of the crowding coefficient of an adapted current cultivar against {@code standing}: seed
   * set per plant relative to it, in a mixture.
   *
   * @param waterlogged whether the paddock stands in water in winter, where Yarloop is at home
   */
  public static String crowding(Cultivar standing, boolean waterlogged) {
    return switch (standing.name()) {
      case "Dwalganup" -> "seed.crowding.v-dwalganup";
      case "Yarloop" ->
          waterlogged ? "seed.crowding.v-yarloop-wet" : "seed.crowding.v-yarloop-drained";
      default -> "seed.crowding.default";
    };
  }
}
