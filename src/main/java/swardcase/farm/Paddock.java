package swardcase.farm;

import java.util.List;
import java.util.Optional;
import swardcase.check.Check;
import swardcase.evidence.Assumption;

/**
 * One paddock.
 *
 * @param name unique on the farm
 * @param areaHa hectares, more than zero
 * @param cloverShare clover as a fraction of green dry matter: 30 % is 0.30
 * @param growthIndex growth relative to the district profile; 1 is the profile itself
 * @param waterlogged stands in water in winter, which raises formononetin
 * @param arable can be cultivated or drilled
 * @param leafTest laboratory formononetin of this paddock's clover leaf, if there is one
 * @param use what grazes it now
 * @param identifications what was found on the walk; empty if nobody looked
 */
public record Paddock(
    String name,
    double areaHa,
    Assumption cloverShare,
    Assumption growthIndex,
    boolean waterlogged,
    boolean arable,
    Optional<LeafTest> leafTest,
    PaddockUse use,
    List<Identification> identifications) {

  /** Checks ranges. */
  public Paddock {
    Check.notBlank(name, "name of the paddock");
    Check.positive(areaHa, "area of " + name);
    Check.inRange(cloverShare.range().low(), 0, 1, "low clover share of " + name);
    Check.inRange(cloverShare.range().high(), 0, 1, "high clover share of " + name);
    Check.inRange(growthIndex.likely(), 0, 5, "growth index of " + name);
    Check.notNull(leafTest, "leaf test");
    Check.notNull(use, "use of " + name);
    identifications = List.copyOf(identifications);
  }

  /** Plants looked at in this paddock. */
  public double plantsLookedAt() {
    return identifications.stream().mapToDouble(Identification::plants).sum();
  }
}
