package swardcase.tables;

import java.util.Optional;
import swardcase.check.Check;
import swardcase.evidence.Assumption;

/**
 * A row of the cultivar table.
 *
 * @param name the key, as the trade writes it
 * @param subspecies subterraneum, yanninicum or brachycalycinum; blank if unknown
 * @param era when it was bred: old, transition (between old and current) or current
 * @param hardSeed hard seed class, which is the key of the seed decay table
 * @param formononetin per cent of leaf dry matter; empty if unknown, never zero for unknown
 * @param highOestrogen whether it is one of the cultivars named as high in formononetin
 * @param relativeWinterYield winter growth relative to a current cultivar: 0.9 is a tenth less
 * @param winterYieldClass cultivars of one class share one error in {@code relativeWinterYield}
 */
public record Cultivar(
    String name,
    String subspecies,
    Era era,
    HardSeed hardSeed,
    Optional<Assumption> formononetin,
    boolean highOestrogen,
    Assumption relativeWinterYield,
    String winterYieldClass) {

  /** When a cultivar was bred. */
  public enum Era {
    /** Before about 1965. */
    OLD,
    /** About 1965 to 1990. */
    TRANSITION,
    /** Since about 1990. */
    CURRENT
  }

  /** How hard its seed is. */
  public enum HardSeed {
    /** Most seed softens in the first summer. */
    SOFT,
    /** Between soft and hard; also taken where the table does not know. */
    MODERATE,
    /** Much seed lasts beyond two summers. */
    HARD
  }

  /** Checks ranges. */
  public Cultivar {
    Check.notBlank(name, "name of a cultivar");
    Check.notNull(era, "era of " + name);
    Check.notNull(hardSeed, "hard seed class of " + name);
    formononetin.ifPresent(
        value -> Check.inRange(value.range().high(), 0, 5, "formononetin of " + name));
    Check.inRange(relativeWinterYield.range().low(), 0, 2, "relative winter yield of " + name);
    Check.inRange(relativeWinterYield.range().high(), 0, 2, "relative winter yield of " + name);
    Check.notBlank(winterYieldClass, "winter yield class of " + name);
  }

  /** Whether it is old: bred before about 1965, or the row of an old kind nobody could name. */
  public boolean isOld() {
    return era == Era.OLD;
  }

  /** Whether it is current: bred since about 1990. It need not suit the farm's rain and soil. */
  public boolean isCurrent() {
    return era == Era.CURRENT;
  }

  /**
   * Whether it is outdated, whatever its age: a current cultivar that suits the same rain probably
   * outgrows it in winter. Old cultivars need not be (Yarloop), those from between old and current
   * mostly are, and a plant nobody could name counts as one.
   */
  public boolean isOutdated() {
    return relativeWinterYield.likely() < 1;
  }
}
