package swardcase.outcome;

import java.util.ArrayList;
import java.util.List;
import swardcase.evidence.UncertainNumbers;
import swardcase.farm.Action;
import swardcase.farm.Farm;
import swardcase.sward.Composition;
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
  private final boolean[][] likesWater;
  private final int seedYield;
  private final int emergence;
  private final int yanninicumWet;
  private final int sowingYearYield;
  private final int goodSeedShare;
  private final int buriedRetention;

  /** Enters the uncertain numbers of the seed bank. */
  static void enter(
      UncertainNumbers.Builder numbers, Farm farm, Tables tables, List<Composition> compositions) {
    List<String> keys =
        new ArrayList<>(
            List.of(
                SeedKeys.yield(farm.climate()),
                SeedKeys.EMERGENCE,
                SeedKeys.SOWING_YEAR_YIELD,
                SeedKeys.GOOD_SEED_SHARE));
    // A farm on which nothing is ploughed under has no such number, and its draws stay as they are.
    if (farm.actions().stream().anyMatch(Action::buries)) {
      keys.add(SeedKeys.BURIED_RETENTION);
    }
    for (int i = 0; i < compositions.size(); i++) {
      for (Cultivar cultivar : StandingClover.species(compositions.get(i), farm, tables)) {
        for (int age = 0; age < SeedBank.AGES; age++) {
          keys.add(retention(farm, cultivar, age));
        }
        numbers.add(SeedKeys.crowding(cultivar), SeedKeys.crowding(cultivar, tables));
        if (likesWater(farm, i, cultivar)) {
          keys.add(SeedKeys.CROWDING_OF_YANNINICUM_WET);
        }
      }
    }
    keys.forEach(key -> numbers.add(key, tables.parameter(key)));
  }

  private static String retention(Farm farm, Cultivar cultivar, int age) {
    return SeedKeys.retention(farm.climate(), cultivar.hardSeed(), age + 1);
  }

  private static boolean likesWater(Farm farm, int paddock, Cultivar cultivar) {
    return farm.paddocks().get(paddock).waterlogged() && cultivar.subspecies().equals("yanninicum");
  }

  SeedPaths(Farm farm, UncertainNumbers numbers, StandingClover stands, int years) {
    this.stands = stands;
    seedYield = numbers.place(SeedKeys.yield(farm.climate()));
    emergence = numbers.place(SeedKeys.EMERGENCE);
    yanninicumWet = numbers.find(SeedKeys.CROWDING_OF_YANNINICUM_WET).orElse(-1);
    sowingYearYield = numbers.place(SeedKeys.SOWING_YEAR_YIELD);
    goodSeedShare = numbers.place(SeedKeys.GOOD_SEED_SHARE);
    buriedRetention = numbers.find(SeedKeys.BURIED_RETENTION).orElse(-1);
    int n = stands.size();
    bank = new SeedBank[n];
    settings = new SeedBankSettings[n];
    retention = new int[n][];
    crowding = new int[n][];
    likesWater = new boolean[n][];
    for (int i = 0; i < n; i++) {
      int species = stands.species(i);
      bank[i] = new SeedBank(species, years);
      settings[i] = new SeedBankSettings(species);
      retention[i] = new int[species * SeedBank.AGES];
      crowding[i] = new int[species];
      likesWater[i] = new boolean[species];
      for (int c = 0; c < species; c++) {
        Cultivar cultivar = stands.cultivar(i, c);
        for (int age = 0; age < SeedBank.AGES; age++) {
          retention[i][c * SeedBank.AGES + age] = numbers.place(retention(farm, cultivar, age));
        }
        crowding[i][c] = numbers.place(SeedKeys.crowding(cultivar));
        likesWater[i][c] = likesWater(farm, i, cultivar);
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
      s.crowding[c] = x[crowding[i][c]] * (likesWater[i][c] ? x[yanninicumWet] : 1);
    }
    s.seedYieldKgPerHa = x[seedYield];
    s.initialBankKgPerHa = SeedBank.balanceKgPerHa(s);
    s.emergence = x[emergence];
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

  /** Seedlings of a kept stand, whose seed bank is in balance, as kg/ha of seed. */
  double steadySeedlingsKgPerHa(int paddock) {
    SeedBankSettings s = settings[paddock];
    return s.initialBankKgPerHa > 0 ? s.emergence * s.seedYieldKgPerHa : 0;
  }

  /** Seedlings of a year of the last run, the sown among them, as kg/ha of seed. */
  double seedlingsKgPerHa(int paddock, int year) {
    return bank[paddock].seedlingsKgPerHa(year);
  }

  /** Those of them that were sown. */
  double sownSeedlingsKgPerHa(int paddock, int year) {
    SeedBankSettings s = settings[paddock];
    return year == s.runDownYears ? s.sownKgPerHa * s.goodSeedShare : 0;
  }
}
