package swardcase.evidence;

import swardcase.chance.Range;
import swardcase.check.Check;

/**
 * One number the answer rests on, with everything needed to judge it.
 *
 * @param name what it is, in the trade's words, such as {@code price of barley}
 * @param range low, likely and high, in {@code unit}
 * @param unit the unit, such as {@code kg DM/ha}; {@code -} for a ratio
 * @param evidence how well it is supported
 * @param source key into {@code tables/sources.csv}; blank where there is none
 * @param setBy who set it
 * @param doubt the group of numbers that share one doubt and so are drawn together, in words, such
 *     as {@code cost of seed}; blank for a number that stands alone
 */
public record Assumption(
    String name,
    Range range,
    String unit,
    Evidence evidence,
    String source,
    SetBy setBy,
    String doubt) {

  /** Checks that nothing is missing; {@code source} may be blank. */
  public Assumption {
    Check.notBlank(name, "name of an assumption");
    Check.notNull(range, name);
    Check.notBlank(unit, "unit of " + name);
    Check.notNull(evidence, "evidence of " + name);
    Check.notNull(source, "source of " + name);
    Check.notNull(setBy, "origin of " + name);
    Check.notNull(doubt, "doubt of " + name);
  }

  /** A number that shares its doubt with no other. */
  public Assumption(
      String name, Range range, String unit, Evidence evidence, String source, SetBy setBy) {
    this(name, range, unit, evidence, source, setBy, "");
  }

  /** A number told by the farm. */
  public static Assumption ofFarm(String name, Range range, String unit) {
    return new Assumption(name, range, unit, Evidence.FARM, "", SetBy.USER);
  }

  /** The likely value. */
  public double likely() {
    return range.likely();
  }

  /** The same number under another name, for a row used in a particular place. */
  public Assumption named(String newName) {
    return new Assumption(newName, range, unit, evidence, source, setBy, doubt);
  }

  /** So many times the number. */
  public Assumption times(double factor) {
    return new Assumption(name, range.times(factor), unit, evidence, source, setBy, doubt);
  }

  /** The same number as a choice that no draw moves: its likely value, exactly. */
  public Assumption chosen() {
    Range exact = Range.exactly(range.likely());
    return new Assumption(name, exact, unit, evidence, source, setBy, doubt);
  }

  /** The same number as one of a group that share a doubt. */
  public Assumption withDoubt(String group) {
    return new Assumption(name, range, unit, evidence, source, setBy, group);
  }
}
