package swardcase.tables;

import java.util.Arrays;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Collectors;
import swardcase.farm.ActionKind;

/** The uncertain numbers of an action, as named in {@code action-values.csv}. */
enum ActionValue {
  RUN_DOWN_GROWTH("run-down growth", "-", 1, 1),
  GROWTH_YEAR_ONE("growth year one", "-", 2, 1),
  GROWTH_YEAR_TWO("growth year two", "-", 2, 1),
  SEED_SET("seed set", "-", 1, 1),
  SEEDLING_KILL("seedling kill", "-", 1, 0),
  BURIED_SEED("buried seed", "-", 1, 0),
  SOWN_SEED("sown seed", "kg/ha", 100, 0),
  ESTABLISHMENT_CHANCE("establishment chance", "-", 1, 1),
  /** In whatever currency the unit names. */
  CROP_MARGIN("crop margin", "A$/ha", 100_000, 0);

  static final Map<String, ActionValue> BY_LABEL =
      Arrays.stream(values())
          .collect(Collectors.toUnmodifiableMap(ActionValue::label, Function.identity()));

  private final String label;
  private final String unit;
  private final double most;
  private final double neutral;

  ActionValue(String label, String unit, double most, double neutral) {
    this.label = label;
    this.unit = unit;
    this.most = most;
    this.neutral = neutral;
  }

  String label() {
    return label;
  }

  String unit() {
    return unit;
  }

  double most() {
    return most;
  }

  /** What stands for the number in an action to which it does not apply. */
  double neutral() {
    return neutral;
  }

  /** Whether an action to which the number applies may leave it out, and is then neutral. */
  boolean isOptional() {
    return this == BURIED_SEED;
  }

  /** Whether the number says something about an action. */
  boolean applies(ActionKind kind, boolean runsDown, boolean cropped) {
    return switch (this) {
      case RUN_DOWN_GROWTH, SEED_SET -> runsDown;
      case CROP_MARGIN -> cropped;
      case GROWTH_YEAR_ONE -> kind.changesStand();
      case GROWTH_YEAR_TWO, SEEDLING_KILL, BURIED_SEED, SOWN_SEED, ESTABLISHMENT_CHANCE ->
          kind.sows();
    };
  }
}
