package swardcase.farm;

/** The uncertain numbers of an action. Shares of growth are relative to the paddock's normal. */
public enum ActionNumber {
  /** Share of normal growth left for grazing in a run-down year. */
  RUN_DOWN_GROWTH("run-down growth", "run_down_growth_percent", "-", 1, 1),
  /** Share of normal growth in the sowing year, once grazed. */
  GROWTH_YEAR_ONE("growth year one", "growth_year_one_percent", "-", 2, 1),
  /** Share of normal growth in the year after sowing. */
  GROWTH_YEAR_TWO("growth year two", "growth_year_two_percent", "-", 2, 1),
  /** Share of normal seed set in a run-down year. */
  SEED_SET("seed set", "seed_set_percent", "-", 1, 1),
  /** Share of seedlings killed before sowing. */
  SEEDLING_KILL("seedling kill", "seedling_kill_percent", "-", 1, 0),
  /**
   * Share of the seed in the ground that a plough turns under, out of reach, when the action
   * starts; 0 unless the action inverts the soil.
   */
  BURIED_SEED("buried seed", "buried_seed_percent", "-", 1, 0),
  /** Seed sown, kg/ha. */
  SOWN_SEED("sown seed", "sown_kg_per_ha", "kg/ha", 100, 0),
  /**
   * Clover share of green feed that the new stand settles at, where the farm says so; else it
   * follows the clover share that the paddock has.
   */
  CLOVER_SHARE("clover share", "target_clover_percent", "-", 1, Double.NaN),
  /** Chance that the sowing takes; a failure is sown again the next year. */
  ESTABLISHMENT_CHANCE("establishment chance", "establishment_chance_percent", "-", 1, 1),
  /** Margin of a crop year after all its costs, per ha, in whatever currency the unit names. */
  CROP_MARGIN("crop margin", "crop_margin_per_ha", "A$/ha", 1e6, 0);

  private final String label;
  private final String farmKey;
  private final String unit;
  private final double most;
  private final double neutral;

  ActionNumber(String label, String farmKey, String unit, double most, double neutral) {
    this.label = label;
    this.farmKey = farmKey;
    this.unit = unit;
    this.most = most;
    this.neutral = neutral;
  }

  /** Its words in {@code action-values.csv}. */
  public String label() {
    return label;
  }

  /** Its key in {@code farm.yaml}, where shares are in per cent. */
  public String farmKey() {
    return farmKey;
  }

  /** The unit of the tables and the calculators. */
  public String unit() {
    return unit;
  }

  /** The least it may be. */
  public double least() {
    return this == CROP_MARGIN ? -most : 0;
  }

  /** The most it may be. */
  public double most() {
    return most;
  }

  /** What stands for it in an action to which it does not apply; NaN if nothing does. */
  public double neutral() {
    return neutral;
  }

  /** Whether an action to which it applies may leave it out, and is then neutral. */
  public boolean isOptional() {
    return this == BURIED_SEED || this == CLOVER_SHARE;
  }

  /** Whether it says something about an action. */
  public boolean applies(ActionKind kind, boolean runsDown, boolean cropped) {
    return switch (this) {
      case RUN_DOWN_GROWTH, SEED_SET -> runsDown;
      case CROP_MARGIN -> cropped;
      case GROWTH_YEAR_ONE -> kind.changesStand();
      case GROWTH_YEAR_TWO,
          SEEDLING_KILL,
          BURIED_SEED,
          SOWN_SEED,
          CLOVER_SHARE,
          ESTABLISHMENT_CHANCE ->
          kind.sows();
    };
  }
}
