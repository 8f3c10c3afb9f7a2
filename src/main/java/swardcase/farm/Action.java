package swardcase.farm;

import java.util.List;
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
 * @param runDownGrowth share of normal growth left for grazing in a run-down year
 * @param growthYearOne share of normal growth in the sowing year, once grazed
 * @param growthYearTwo share of normal growth in the year after sowing
 * @param seedSet share of normal seed set in a run-down year
 * @param seedlingKill share of seedlings killed before sowing
 * @param buriedSeed share of the seed in the ground that a plough turns under, out of reach, when
 *     the action starts; 0 unless the action inverts the soil
 * @param sownKgPerHa seed sown, kg/ha
 * @param targetCloverShare clover share of green feed that the new stand settles at, where the farm
 *     says so; else it follows the clover share that the paddock has
 * @param establishmentChance chance that the sowing takes; a failure is sown again the next year
 * @param cropMarginPerHa margin of a crop year after all its costs, per ha
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
    Assumption runDownGrowth,
    Assumption growthYearOne,
    Assumption growthYearTwo,
    Assumption seedSet,
    Assumption seedlingKill,
    Assumption buriedSeed,
    Assumption sownKgPerHa,
    Optional<Assumption> targetCloverShare,
    Assumption establishmentChance,
    Assumption cropMarginPerHa,
    List<CostLine> costs,
    Optional<UseRule> use) {

  /** Checks ranges. */
  public Action {
    Check.notBlank(key, "key of an action");
    Check.notBlank(name, "name of " + key);
    Check.notNull(kind, "kind of " + key);
    Check.inRange(runDownYears, 0, 5, "run-down years of " + key);
    Check.inRange(monthsUngrazed, 0, 12, "months ungrazed of " + key);
    fraction(runDownGrowth, "growth in a run-down year of " + key);
    Check.inRange(growthYearOne.range().high(), 0, 2, "growth in year one of " + key);
    Check.inRange(growthYearTwo.range().high(), 0, 2, "growth in year two of " + key);
    fraction(seedSet, "seed set of " + key);
    fraction(seedlingKill, "seedling kill of " + key);
    fraction(buriedSeed, "buried seed of " + key);
    Check.inRange(sownKgPerHa.range().low(), 0, 100, "seed sown of " + key);
    targetCloverShare.ifPresent(share -> fraction(share, "clover share of " + key));
    fraction(establishmentChance, "chance of establishment of " + key);
    Check.that(
        kind.sows() || buriedSeed.range().high() == 0,
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
    Check.notNull(use, "use rule of " + key);
  }

  private static void fraction(Assumption value, String name) {
    Check.inRange(value.range().low(), 0, 1, name);
    Check.inRange(value.range().high(), 0, 1, name);
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
        runDownGrowth,
        growthYearOne,
        growthYearTwo,
        seedSet,
        seedlingKill,
        buriedSeed,
        sownKgPerHa,
        targetCloverShare,
        establishmentChance,
        cropMarginPerHa,
        newCosts,
        rule);
  }

  /** Whether a plough turns seed under. */
  public boolean buries() {
    return buriedSeed.range().high() > 0;
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
