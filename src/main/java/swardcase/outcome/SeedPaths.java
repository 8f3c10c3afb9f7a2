package swardcase.outcome;

import swardcase.evidence.UncertainNumbers;
import swardcase.farm.Action;
import swardcase.farm.Farm;
import swardcase.sward.SeedBank;
import swardcase.sward.SeedBankSettings;
import swardcase.sward.SeedKeys;
import swardcase.sward.StandingClover;
import swardcase.tables.Cultivar;
import swardcase.tables.Tables;

/** Runs the seed bank of a paddock through an action, with the numbers of one run. */
final class SeedPaths {

  private final StandingClover stands;
  private final SeedBank[] bank;
  private final SeedBankSettings[] settings;
  private final int[][] retention;
  private final int[][] crowding;
  private final int seedYield;
  private final int initialBank;
  private final int sowingYearYield;
  private final int goodSeedShare;
  private final int buriedRetention;

  SeedPaths(Farm farm, Tables tables, UncertainNumbers inputs, StandingClover stands, int years) {
    this.stands = stands;
    seedYield = inputs.add(tables.parameter(SeedKeys.YIELD));
    initialBank = inputs.add(tables.parameter(SeedKeys.INITIAL_BANK));
    sowingYearYield = inputs.add(tables.parameter(SeedKeys.SOWING_YEAR_YIELD));
    goodSeedShare = inputs.add(tables.parameter(SeedKeys.GOOD_SEED_SHARE));
    // A farm on which nothing is ploughed under has no such number, and its draws stay as they are.
    buriedRetention =
        farm.actions().stream().anyMatch(Action::buries)
            ? inputs.add(tables.parameter(SeedKeys.BURIED_RETENTION))
            : -1;
    int n = stands.size();
    bank = new SeedBank[n];
    settings = new SeedBankSettings[n];
    retention = new int[n][];
    crowding = new int[n][];
    for (int i = 0; i < n; i++) {
      int species = stands.species(i);
      bank[i] = new SeedBank(species, years);
      settings[i] = new SeedBankSettings(species);
      retention[i] = new int[species * SeedBank.AGES];
      crowding[i] = new int[species - 1];
      for (int c = 0; c < species; c++) {
        Cultivar cultivar = stands.cultivar(i, c);
        for (int age = 0; age < SeedBank.AGES; age++) {
          String key = SeedKeys.retention(farm.climate(), cultivar.hardSeed(), age + 1);
          retention[i][c * SeedBank.AGES + age] = inputs.add(tables.parameter(key));
        }
        if (c < species - 1) {
          String key = SeedKeys.crowding(cultivar, farm.paddocks().get(i).waterlogged());
          crowding[i][c] = inputs.add(tables.parameter(key));
        }
      }
    }
  }

  /** Takes what all actions on a paddock share; its stand must have been set before. */
  void set(double[] x, int i) {
    SeedBankSettings s = settings[i];
    int species = stands.species(i);
    for (int c = 0; c < species; c++) {
      s.initialShare[c] = stands.shares(i)[c];
      for (int age = 0; age < SeedBank.AGES; age++) {
        int at = c * SeedBank.AGES + age;
        s.retention[at] = x[retention[i][at]];
      }
      // The tables give the sown cultivar's strength against each one standing.
      s.crowding[c] = c < species - 1 ? 1 / x[crowding[i][c]] : 1;
    }
    s.seedYieldKgPerHa = x[seedYield];
    s.initialBankKgPerHa = x[initialBank];
    s.sowingYearYield = x[sowingYearYield];
    s.goodSeedShare = x[goodSeedShare];
    s.buriedRetention = buriedRetention < 0 ? 1 : x[buriedRetention];
    s.sownSpecies = species - 1;
  }

  /** Writes the share of each species in the clover at {@code [year * species + c]}. */
  void run(double[] x, int paddock, ActionInputs action, double[] plantShare) {
    SeedBankSettings s = settings[paddock];
    s.runDownYears = action.action().runDownYears();
    s.seedSet = action.seedSet(x);
    s.seedlingKill = action.seedlingKill(x);
    s.buriedShare = action.buriedSeed(x);
    s.sownKgPerHa = action.sownKgPerHa(x);
    bank[paddock].run(s, plantShare);
  }
}
