package swardcase.farm;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
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
 * @param mob name of the one mob that grazes it; empty if all ewes do, or none
 * @param seedlingsPerM2 clover seedlings after the break, per square metre; empty if not counted
 * @param signs what else is known of its soil and plants
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
    Optional<String> mob,
    OptionalDouble seedlingsPerM2,
    StandSigns signs,
    List<Identification> identifications) {

  /** Checks ranges. */
  public Paddock {
    Check.notBlank(name, "name of the paddock");
    Check.positive(areaHa, "area of " + name);
    Check.inRange(cloverShare.range().low(), 0, 1, "low clover share of " + name);
    Check.inRange(cloverShare.range().high(), 0, 1, "high clover share of " + name);
    Check.inRange(growthIndex.likely(), 0, 5, "growth index of " + name);
    Check.notNegative(seedlingsPerM2.orElse(0), "seedlings of " + name);
    Check.that(mob.isEmpty() || use == PaddockUse.EWES, "only ewes can be the one mob in %s", name);
    identifications = List.copyOf(identifications);
  }

  /** Plants looked at in this paddock. */
  public double plantsLookedAt() {
    return identifications.stream().mapToDouble(Identification::plants).sum();
  }

  /** Whether anybody identified a plant here. */
  public boolean isLookedAt() {
    return plantsLookedAt() > 0;
  }

  /** Whether a mob of ewes grazes it. */
  public boolean isGrazedBy(Mob ewes) {
    return use == PaddockUse.EWES && mob.map(name -> name.equals(ewes.name())).orElse(true);
  }
}
