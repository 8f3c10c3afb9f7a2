package swardcase.report;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import swardcase.farm.Farm;
import swardcase.farm.Mob;
import swardcase.farm.Paddock;
import swardcase.farm.PaddockUse;

/** A group of inputs that is taken from one farm into another, in the order they are taken. */
public enum FarmPart {
  /** What lambs, ewes, tests and plants are worth. */
  PRICES,
  /** The supplement and its price. */
  SUPPLEMENT,
  /** Discount rate, years, budget and loan. */
  FINANCE,
  /** Growth, seasons, quality and climate. */
  SEASONS,
  /** Ewe mobs and other stock. */
  FLOCK,
  /** Choices of management and the use of extra feed. */
  MANAGEMENT,
  /** Actions, their costs and the cultivar to sow. */
  ACTIONS,
  /** Paddocks and the plants counted there. */
  PADDOCKS;

  /**
   * The steps from one farm to another: groups that are alike in both are left out. Flock and
   * paddocks make one step where the first farm's paddocks would leave mobs of the second without
   * ground, or paddocks without their mob.
   */
  static List<Set<FarmPart>> steps(Farm first, Farm second) {
    boolean together = !fits(second.mobs(), first);
    List<Set<FarmPart>> steps = new ArrayList<>();
    for (FarmPart part : values()) {
      Set<FarmPart> step =
          part == PADDOCKS && together ? EnumSet.of(FLOCK, PADDOCKS) : EnumSet.of(part);
      boolean comes = part == FLOCK && together;
      if (!comes && !mix(first, second, step).equals(first)) {
        steps.add(step);
      }
    }
    return steps;
  }

  private static boolean fits(List<Mob> mobs, Farm farm) {
    Predicate<Paddock> namesAMob = paddock -> paddock.mob().isPresent();
    return names(mobs).equals(names(farm.mobs()))
        || farm.paddocks().stream().noneMatch(namesAMob)
            && farm.paddocks().stream().anyMatch(paddock -> paddock.use() == PaddockUse.EWES);
  }

  private static Set<String> names(List<Mob> mobs) {
    return mobs.stream().map(Mob::name).collect(Collectors.toSet());
  }

  /** The first farm with these groups taken from the second. */
  static Farm mix(Farm first, Farm second, Set<FarmPart> taken) {
    Farm prices = taken.contains(PRICES) ? second : first;
    Farm supplement = taken.contains(SUPPLEMENT) ? second : first;
    Farm finance = taken.contains(FINANCE) ? second : first;
    Farm seasons = taken.contains(SEASONS) ? second : first;
    Farm flock = taken.contains(FLOCK) ? second : first;
    Farm management = taken.contains(MANAGEMENT) ? second : first;
    Farm actions = taken.contains(ACTIONS) ? second : first;
    Farm paddocks = taken.contains(PADDOCKS) ? second : first;
    return new Farm(
        first.name(),
        first.currency(),
        seasons.climate(),
        seasons.feedYear(),
        paddocks.paddocks(),
        flock.mobs(),
        flock.otherStock(),
        supplement.supplement(),
        prices.prices(),
        finance.finance(),
        management.extraFeedUse(),
        management.management(),
        actions.actions(),
        actions.sownCultivar());
  }
}
