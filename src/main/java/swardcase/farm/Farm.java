package swardcase.farm;

import java.util.List;
import swardcase.check.Check;

/**
 * A farm as the program works on it: every number is there, and each says who set it.
 *
 * @param name the farm's name as the user wrote it
 * @param currency sign printed before money, such as {@code A$}
 * @param climate decides how fast buried seed softens
 * @param feedYear pasture growth and quality through the year
 * @param paddocks at least one, names unique
 * @param mobs ewe mobs; empty for a farm without ewes
 * @param otherStock stock other than ewes; may be empty
 * @param supplement what is bought when pasture is short
 * @param prices what things are worth
 * @param finance rate, horizon and limits
 * @param extraFeedUse what extra winter feed is for
 * @param management choices of the flock's manager that are numbers
 * @param actions what may be done with a paddock; {@link ActionKind#KEEP} is always among them
 * @param sownCultivar name, in the cultivar table, of what a resowing sows
 * @param records what the farm wrote down in past years; may be empty
 */
public record Farm(
    String name,
    String currency,
    Climate climate,
    PastureYear feedYear,
    List<Paddock> paddocks,
    List<Mob> mobs,
    List<OtherStock> otherStock,
    Supplement supplement,
    Prices prices,
    Finance finance,
    ExtraFeedUse extraFeedUse,
    Management management,
    List<Action> actions,
    String sownCultivar,
    List<FlockRecord> records) {

  /** Checks what concerns the farm as a whole. */
  public Farm {
    Check.notBlank(name, "name of the farm");
    paddocks = List.copyOf(paddocks);
    mobs = List.copyOf(mobs);
    otherStock = List.copyOf(otherStock);
    actions = List.copyOf(actions);
    Check.notBlank(sownCultivar, "cultivar to sow");
    records = List.copyOf(records);
    Check.that(!paddocks.isEmpty(), "a farm must have a paddock");
    Check.that(
        paddocks.stream().map(Paddock::name).distinct().count() == paddocks.size(),
        "names of paddocks must differ");
    Check.that(
        actions.stream().filter(action -> action.kind() == ActionKind.KEEP).count() == 1,
        "the actions must hold exactly one that keeps the paddock as it is");
  }

  /** Total area of the paddocks, ha. */
  public double areaHa() {
    return paddocks.stream().mapToDouble(Paddock::areaHa).sum();
  }

  /** Ewes joined in all mobs together. */
  public int ewesJoined() {
    return mobs.stream().mapToInt(Mob::ewes).sum();
  }

  /** The same farm with another sign before money; nothing is converted. */
  public Farm withCurrency(String sign) {
    return with(sign, mobs, finance, records);
  }

  /** The same farm with another rate, horizon or limit. */
  public Farm withFinance(Finance other) {
    return with(currency, mobs, other, records);
  }

  /** The same farm with other records of past years, and mobs whose figures stand beside them. */
  public Farm withRecords(List<Mob> otherMobs, List<FlockRecord> otherRecords) {
    return with(currency, otherMobs, finance, otherRecords);
  }

  private Farm with(
      String sign, List<Mob> otherMobs, Finance otherFinance, List<FlockRecord> otherRecords) {
    return new Farm(
        name,
        sign,
        climate,
        feedYear,
        paddocks,
        otherMobs,
        otherStock,
        supplement,
        prices,
        otherFinance,
        extraFeedUse,
        management,
        actions,
        sownCultivar,
        otherRecords);
  }

  /**
   * Whether an action can be done on a paddock. What is drilled or cropped needs ground that can
   * be; clover seed is spread over a stand only where the farm cannot drill it in.
   */
  public boolean allows(Paddock paddock, Action action) {
    if (!paddock.arable()) {
      return !action.needsArable();
    }
    boolean spread = action.kind() == ActionKind.OVERSOW && !action.needsArable();
    return !spread
        || actions.stream()
            .noneMatch(other -> other.kind() == ActionKind.OVERSOW && other.needsArable());
  }
}
