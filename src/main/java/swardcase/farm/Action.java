package swardcase.farm;

import java.util.Collections;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import swardcase.check.Check;
import swardcase.evidence.Assumption;

/**
 * Something that can be done with a paddock, as a row of the action table or of the user's own.
 *
 * <p>Years count from the action's start. Run-down years come first ({@code runDownYears} of them,
 * none for sowing at once), then the sowing year, then growth year one and two, then the full
 * stand. After crops alone the old stand is back at once: its first year has growth year one. Grass
 * drilled into the stand has growth year one in its first year. Shares of growth are relative to
 * the paddock's normal growth: 0.6 is six tenths.
 *
 * @param key short stable name, such as {@code spray-fallow}
 * @param name what is printed
 * @param kind how it is computed
 * @param needsArable whether the paddock must be arable
 * @param runDownYears years before sowing in which seed set is held down; a crop counts as one
 * @param cropped whether the run-down years are crops, which give a margin and no grazing
 * @param monthsUngrazed months from the autumn break of the sowing year without grazing
 * @param numbers its uncertain numbers, those that do not apply neutral; only {@link
 *     ActionNumber#CLOVER_SHARE} may be missing
 * @param costs cost lines
 * @param use who is kept off the paddock until the action starts and, as long as the clover stays
 *     strong, after it; empty if its use stays as it is
 */
public record Action(
    String key,
    String name,
    ActionKind kind,
    boolean needsArable,
    int runDownYears,
    boolean cropped,
    double monthsUngrazed,
    Map<ActionNumber, Assumption> numbers,
    List<CostLine> costs,
    Optional<UseRule> use) {

  /** Checks ranges. */
  public Action {
    Check.notBlank(key, "key of an action");
    Check.notBlank(name, "name of " + key);
    Check.notNull(kind, "kind of " + key);
    Check.inRange(runDownYears, 0, 5, "run-down years of " + key);
    Check.inRange(monthsUngrazed, 0, 12, "months ungrazed of " + key);
    for (ActionNumber number : ActionNumber.values()) {
      Assumption value = numbers.get(number);
      String what = number.label() + " of " + key;
      if (number != ActionNumber.CLOVER_SHARE || value != null) {
        Check.inRange(
            Check.notNull(value, what).range().low(), number.least(), number.most(), what);
        Check.inRange(value.range().high(), number.least(), number.most(), what);
      }
    }
    numbers = Collections.unmodifiableMap(new EnumMap<>(numbers));
    Check.that(
        kind.sows() || numbers.get(ActionNumber.BURIED_SEED).range().high() == 0,
        "buried seed of %s must be 0, since nothing is sown",
        key);
    Check.that(
        kind != ActionKind.CROP || (cropped && runDownYears > 0),
        "%s must have one crop or more",
        key);
    Check.that(
        kind != ActionKind.THIN || runDownYears == 0,
        "%s must have no run-down years: its grass is drilled at once",
        key);
    costs = List.copyOf(costs);
  }

  /** The same action at other costs. */
  public Action withCosts(List<CostLine> others) {
    return with(key, name, kind, others, use);
  }

  /** The same action with ewes kept off until then; of keeping, that rule alone. */
  public Action with(UseRule rule) {
    boolean alone = kind == ActionKind.KEEP;
    return with(
        alone ? rule.key() : key + "+" + rule.key(),
        "keep " + rule.name() + (alone ? "" : ", then " + name),
        alone ? ActionKind.KEEP_OFF : kind,
        costs,
        Optional.of(rule));
  }

  private Action with(
      String newKey,
      String newName,
      ActionKind newKind,
      List<CostLine> newCosts,
      Optional<UseRule> rule) {
    return new Action(
        newKey,
        newName,
        newKind,
        needsArable,
        runDownYears,
        cropped,
        monthsUngrazed,
        numbers,
        newCosts,
        rule);
  }

  /** One of its numbers; only the clover share may be missing, and then is null. */
  public Assumption number(ActionNumber which) {
    return numbers.get(which);
  }

  /** Whether a plough turns seed under. */
  public boolean buries() {
    return number(ActionNumber.BURIED_SEED).range().high() > 0;
  }

  /** Whether the stand is changed for a time or for good. */
  public boolean changesStand() {
    return kind.changesStand();
  }

  /** Whether clover seed is sown. */
  public boolean sows() {
    return kind.sows();
  }
}
