package swardcase.sward;

import java.util.Arrays;
import swardcase.check.Check;

/**
 * What a {@link SeedBank} runs on. Reusable: fill it anew for each draw. All shares are fractions.
 */
public final class SeedBankSettings {

  /** Share of each cultivar in the clover as it stands; adds up to 1. */
  public final double[] initialShare;

  /**
   * Share of hard seed that stays hard through a summer, at [cultivar × 4 + summer − 1]; the fourth
   * value holds for all later summers and must be below 1.
   */
  public final double[] retention;

  /** Crowding coefficient of each cultivar: seed set per plant relative to the others; above 0. */
  public final double[] crowding;

  /** Seed set by a full stand in a year and not eaten, kg/ha. */
  public double seedYieldKgPerHa;

  /** Seed in the ground in the first autumn, before it germinates, kg/ha. */
  public double initialBankKgPerHa;

  /** Years before sowing in which seed set is held down. */
  public int runDownYears;

  /** Seed set in a run-down year as a share of a full stand's. */
  public double seedSet;

  /** Share of the seedlings standing in the sowing year that is killed before sowing. */
  public double seedlingKill;

  /** Which cultivar is sown; of no account if nothing is. */
  public int sownSpecies;

  /** Seed sown, kg/ha; 0 if nothing is sown. */
  public double sownKgPerHa;

  /** Share of the seed in the ground that softens which gives a seedling; the rest is lost. */
  public double emergence = 1;

  /** Share of sown seed that gives a seedling. */
  public double goodSeedShare = 1;

  /** Seed set in the sowing year as a share of a full stand's. */
  public double sowingYearYield = 1;

  /** Share of the seed in the ground that is turned under, out of reach, at the start. */
  public double buriedShare;

  /** Share of buried seed still there a year later. */
  public double buriedRetention = 1;

  /** Settings for so many cultivars, all of crowding 1 and none standing. */
  public SeedBankSettings(int species) {
    initialShare = new double[species];
    retention = new double[species * SeedBank.AGES];
    crowding = new double[species];
    Arrays.fill(crowding, 1);
  }

  /** Refuses values out of range; allocates nothing if all is well. */
  void refuseBad(int species) {
    if (initialShare.length != species) {
      Check.that(false, "settings must be for %s cultivars, not %s", species, initialShare.length);
    }
    double sum = 0;
    for (int c = 0; c < species; c++) {
      Check.inRange(initialShare[c], 0, 1, "share of a cultivar");
      sum += initialShare[c];
      Check.positive(crowding[c], "crowding coefficient");
      for (int age = 0; age < SeedBank.AGES; age++) {
        Check.inRange(retention[c * SeedBank.AGES + age], 0, 1, "retention of hard seed");
      }
      if (retention[c * SeedBank.AGES + SeedBank.AGES - 1] == 1) {
        Check.that(false, "retention of old hard seed must be below 1");
      }
    }
    if (sum != 0 && Math.abs(sum - 1) > 1e-9) {
      Check.that(false, "shares of the cultivars must add up to 1, but add up to %s", sum);
    }
    Check.notNegative(seedYieldKgPerHa, "seed yield");
    Check.notNegative(initialBankKgPerHa, "seed bank");
    Check.notNegative(sownKgPerHa, "seed sown");
    Check.inRange(seedSet, 0, 1, "seed set");
    Check.inRange(seedlingKill, 0, 1, "seedling kill");
    Check.inRange(emergence, 0, 1, "emergence");
    Check.inRange(goodSeedShare, 0, 1, "share of good seed");
    Check.inRange(sowingYearYield, 0, 1, "seed set in the sowing year");
    Check.inRange(buriedShare, 0, 1, "share of buried seed");
    Check.inRange(buriedRetention, 0, 1, "retention of buried seed");
    if (runDownYears < 0 || sownSpecies < 0 || sownSpecies >= species) {
      Check.that(
          false,
          "run-down years must be 0 or more and the sown cultivar one of %s, but were %s and %s",
          species,
          runDownYears,
          sownSpecies);
    }
  }
}
