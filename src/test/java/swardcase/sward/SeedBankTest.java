package swardcase.sward;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Laws of the seed bank, and sums that can be done by hand. */
class SeedBankTest {

  private static final int YEARS = 12;

  /**
   * Our arithmetic, in whole per cent, from a rough sum made before this class: half of the seed
   * left germinates, 85 % of sown seed is good, equal plants.
   */
  @ParameterizedTest
  @CsvSource({
    "1100, 10, 98", "440, 10, 96", "110, 10, 87", "11, 10, 39",
    "1100, 20, 97", "440, 20, 93", "110, 20, 76", "11, 20, 24"
  })
  void oldShare_inTheFirstYear_matchesTheRoughSum(double bank, double sown, double percentOld) {
    SeedBankSettings settings = oldAndNew(0.5, 0.5, 0.5, 0.5);
    settings.initialBankKgPerHa = bank;
    settings.sownKgPerHa = sown;
    settings.goodSeedShare = 0.85;
    assertThat(100 * run(settings)[0]).isCloseTo(percentOld, within(0.5));
  }

  /**
   * Hand arithmetic with retentions 0.40, 0.33, 0.75, 0.75 and 600 kg/ha a year: ages 600, 240,
   * 79.2 and 59.4/0.25 = 237.6 add up to 1156.8; without seed set 556.8, 316.8, 237.6 and 178.2
   * follow.
   */
  @Test
  void bank_withoutSeedSet_runsDownAsByHand() {
    SeedBankSettings settings = oldAndNew(0.40, 0.33, 0.75, 0.75);
    settings.initialBankKgPerHa = 1156.8;
    settings.runDownYears = YEARS;
    SeedBank bank = new SeedBank(2, YEARS);
    bank.run(settings, new double[2 * YEARS]);
    double[] expected = {1156.8, 556.8, 316.8, 237.6, 178.2};
    for (int year = 0; year < expected.length; year++) {
      assertThat(bank.bankKgPerHa(year, 0)).isCloseTo(expected[year], within(1e-9));
    }
  }

  @Test
  void bank_ofASteadyStand_staysAsItIs() {
    SeedBankSettings settings = oldAndNew(0.40, 0.33, 0.75, 0.75);
    settings.initialBankKgPerHa = 1156.8;
    SeedBank bank = new SeedBank(2, YEARS);
    bank.run(settings, new double[2 * YEARS]);
    for (int year = 0; year < YEARS; year++) {
      assertThat(bank.bankKgPerHa(year, 0)).isCloseTo(1156.8, within(1e-9));
    }
  }

  /** By hand as above: 1156.8 kg/ha at 600 a year; of bare ground nothing. */
  @Test
  void balance_ofAPureStand_isItsSteadyBank() {
    SeedBankSettings settings = oldAndNew(0.40, 0.33, 0.75, 0.75);
    assertThat(SeedBank.balanceKgPerHa(settings)).isCloseTo(1156.8, within(1e-9));
    settings.initialShare[0] = 0;
    assertThat(SeedBank.balanceKgPerHa(settings)).isZero();
  }

  /** What a mixture in balance loses in its first autumn is what it sets. */
  @Test
  void balance_ofAnyMixture_losesWhatItSets() {
    SplittableRandom random = new SplittableRandom(28);
    for (int i = 0; i < 100; i++) {
      SeedBankSettings settings = any(random, 3);
      settings.buriedShare = 0;
      settings.emergence = 1;
      settings.sownKgPerHa = 0;
      settings.seedlingKill = 0;
      settings.runDownYears = 0;
      settings.initialBankKgPerHa = SeedBank.balanceKgPerHa(settings);
      SeedBank bank = new SeedBank(3, 1);
      bank.run(settings, new double[3]);
      assertThat(bank.germinatedKgPerHa())
          .isCloseTo(settings.seedYieldKgPerHa, within(1e-9 * settings.seedYieldKgPerHa));
    }
  }

  @Test
  void shares_ofAnyRun_addUpToOneAndSeedIsConserved() {
    SplittableRandom random = new SplittableRandom(21);
    for (int i = 0; i < 400; i++) {
      SeedBankSettings settings = any(random, 4);
      double[] shares = new double[4 * YEARS];
      SeedBank bank = new SeedBank(4, YEARS);
      bank.run(settings, shares);
      for (int year = 0; year < YEARS; year++) {
        double sum = 0;
        for (int c = 0; c < 4; c++) {
          assertThat(shares[year * 4 + c]).as("run %s", i).isBetween(0d, 1d);
          sum += shares[year * 4 + c];
        }
        assertThat(sum).as("run %s, year %s", i, year).isCloseTo(1, within(1e-12));
      }
      double in = bank.initialKgPerHa() + bank.sownKgPerHa() + bank.setKgPerHa();
      double out = bank.finalKgPerHa() + bank.germinatedKgPerHa() + bank.diedKgPerHa();
      assertThat(out).as("run %s", i).isCloseTo(in, within(1e-9 * in));
      assertThat(bank.initialKgPerHa())
          .isCloseTo(settings.initialBankKgPerHa, within(1e-9 * settings.initialBankKgPerHa));
    }
  }

  @Test
  void shares_inTheFirstYearOfAStandLeftAlone_areTheSharesCounted() {
    SplittableRandom random = new SplittableRandom(22);
    for (int i = 0; i < 200; i++) {
      SeedBankSettings settings = any(random, 4);
      settings.runDownYears = 1;
      double[] shares = new double[4 * YEARS];
      new SeedBank(4, YEARS).run(settings, shares);
      for (int c = 0; c < 4; c++) {
        assertThat(shares[c]).isCloseTo(settings.initialShare[c], within(1e-12));
      }
    }
  }

  @Test
  void shares_ofEqualCultivars_stayAsTheyAre() {
    SplittableRandom random = new SplittableRandom(23);
    for (int i = 0; i < 200; i++) {
      SeedBankSettings settings = any(random, 3);
      for (int c = 0; c < 3; c++) {
        settings.crowding[c] = 1.3;
        Retentions.set(settings, c, 0.6, 0.4, 0.7, 0.8);
      }
      settings.sownKgPerHa = 0;
      double[] shares = new double[3 * YEARS];
      new SeedBank(3, YEARS).run(settings, shares);
      for (int year = 0; year < YEARS; year++) {
        for (int c = 0; c < 3; c++) {
          assertThat(shares[year * 3 + c]).isCloseTo(settings.initialShare[c], within(1e-10));
        }
      }
    }
  }

  /** Holds for a bank no smaller than steady seed set leaves, as under any old stand. */
  @Test
  void oldShare_afterMoreRunDownYears_isNeverHigher() {
    SplittableRandom random = new SplittableRandom(24);
    for (int i = 0; i < 200; i++) {
      SeedBankSettings settings = anyOldAndNew(random);
      for (int runDown = 0; runDown < 4; runDown++) {
        settings.runDownYears = runDown;
        double[] fewer = run(settings);
        settings.runDownYears = runDown + 1;
        double[] more = run(settings);
        for (int year = 0; year < YEARS - 5; year++) {
          assertThat(more[2 * (year + runDown + 1)])
              .as("run %s: %s years after sowing, %s run-down years", i, year, runDown + 1)
              .isLessThanOrEqualTo(fewer[2 * (year + runDown)] + 1e-12);
        }
      }
    }
  }

  @Test
  void oldShare_withMoreSeedSownOrMoreKilled_isNeverHigher() {
    SplittableRandom random = new SplittableRandom(25);
    for (int i = 0; i < 200; i++) {
      SeedBankSettings settings = anyOldAndNew(random);
      settings.runDownYears = 1;
      double[] before = run(settings);
      settings.sownKgPerHa *= 1.5;
      double[] moreSown = run(settings);
      settings.seedlingKill = (1 + settings.seedlingKill) / 2;
      double[] moreKilled = run(settings);
      settings.crowding[1] *= 1.2;
      double[] fitter = run(settings);
      for (int year = 1; year < YEARS; year++) {
        assertThat(moreSown[2 * year]).isLessThanOrEqualTo(before[2 * year] + 1e-12);
        assertThat(moreKilled[2 * year]).isLessThanOrEqualTo(moreSown[2 * year] + 1e-12);
        assertThat(fitter[2 * year]).isLessThanOrEqualTo(moreKilled[2 * year] + 1e-12);
      }
    }
  }

  @Test
  void shares_inAnotherOrderOfCultivars_areTheSame() {
    SplittableRandom random = new SplittableRandom(26);
    for (int i = 0; i < 100; i++) {
      SeedBankSettings settings = any(random, 3);
      SeedBankSettings turned = new SeedBankSettings(3);
      copyScalars(settings, turned);
      for (int c = 0; c < 3; c++) {
        int to = 2 - c;
        turned.initialShare[to] = settings.initialShare[c];
        turned.crowding[to] = settings.crowding[c];
        System.arraycopy(settings.retention, c * 4, turned.retention, to * 4, 4);
      }
      turned.sownSpecies = 2 - settings.sownSpecies;
      double[] one = new double[3 * YEARS];
      double[] two = new double[3 * YEARS];
      new SeedBank(3, YEARS).run(settings, one);
      new SeedBank(3, YEARS).run(turned, two);
      for (int year = 0; year < YEARS; year++) {
        for (int c = 0; c < 3; c++) {
          assertThat(two[year * 3 + 2 - c]).isCloseTo(one[year * 3 + c], within(1e-12));
        }
      }
    }
  }

  @Test
  void bank_usedAgain_remembersNothing() {
    SplittableRandom random = new SplittableRandom(27);
    SeedBank bank = new SeedBank(3, YEARS);
    for (int i = 0; i < 50; i++) {
      SeedBankSettings settings = any(random, 3);
      double[] again = new double[3 * YEARS];
      double[] fresh = new double[3 * YEARS];
      bank.run(settings, again);
      new SeedBank(3, YEARS).run(settings, fresh);
      assertThat(again).isEqualTo(fresh);
    }
  }

  @Test
  void shares_ofBareGroundWithNothingSown_areZero() {
    SeedBankSettings settings = oldAndNew(0.4, 0.33, 0.75, 0.75);
    settings.initialBankKgPerHa = 0;
    assertThat(run(settings)).containsOnly(0d);
  }

  /** Turned-under seed neither germinates nor softens: 0.97 a year for eleven years. */
  @Test
  void bank_turnedUnder_staysInTheGround() {
    SeedBankSettings settings = oldAndNew(0.40, 0.33, 0.75, 0.75);
    settings.initialBankKgPerHa = 1000;
    settings.buriedShare = 1;
    settings.buriedRetention = 0.97;
    settings.sownKgPerHa = 10;
    SeedBank bank = new SeedBank(2, YEARS);
    double[] shares = new double[2 * YEARS];
    bank.run(settings, shares);
    assertThat(shares[0]).isZero();
    assertThat(bank.bankKgPerHa(YEARS - 1, 0))
        .isCloseTo(1000 * Math.pow(0.97, YEARS - 1), within(1e-9));
  }

  @Test
  void run_badSettings_areRefused() {
    SeedBank bank = new SeedBank(2, YEARS);
    double[] into = new double[2 * YEARS];
    SeedBankSettings kill = oldAndNew(0.4, 0.3, 0.7, 0.7);
    kill.seedlingKill = Double.NaN;
    assertThatThrownBy(() -> bank.run(kill, into))
        .hasMessage("seedling kill must be from 0 to 1, but was NaN");
    assertThatThrownBy(() -> bank.run(oldAndNew(0.4, 0.3, 0.7, 1), into))
        .hasMessage("retention of old hard seed must be below 1");
    SeedBankSettings shares = oldAndNew(0.4, 0.3, 0.7, 0.7);
    shares.initialShare[1] = 0.5;
    assertThatThrownBy(() -> bank.run(shares, into))
        .hasMessage("shares of the cultivars must add up to 1, but add up to 1.5");
    assertThatThrownBy(() -> bank.run(new SeedBankSettings(3), into))
        .hasMessage("settings must be for 2 cultivars, not 3");
    SeedBankSettings sown = oldAndNew(0.4, 0.3, 0.7, 0.7);
    sown.sownSpecies = 2;
    assertThatThrownBy(() -> bank.run(sown, into))
        .hasMessageStartingWith("run-down years must be 0 or more");
  }

  private static double[] run(SeedBankSettings settings) {
    double[] shares = new double[2 * YEARS];
    new SeedBank(2, YEARS).run(settings, shares);
    return shares;
  }

  /** An old stand alone, cultivar 1 to be sown; 600 kg/ha of seed a year, both alike. */
  private static SeedBankSettings oldAndNew(double r1, double r2, double r3, double r4) {
    SeedBankSettings settings = new SeedBankSettings(2);
    settings.initialShare[0] = 1;
    Retentions.set(settings, 0, r1, r2, r3, r4);
    Retentions.set(settings, 1, r1, r2, r3, r4);
    settings.sownSpecies = 1;
    settings.seedYieldKgPerHa = 600;
    settings.initialBankKgPerHa = 1100;
    return settings;
  }

  private static SeedBankSettings anyOldAndNew(SplittableRandom random) {
    SeedBankSettings settings = any(random, 2);
    settings.initialShare[0] = 1;
    settings.initialShare[1] = 0;
    settings.sownSpecies = 1;
    settings.sownKgPerHa = random.nextDouble(2, 30);
    settings.buriedShare = 0;
    settings.initialBankKgPerHa = SeedBank.balanceKgPerHa(settings);
    return settings;
  }

  private static SeedBankSettings any(SplittableRandom random, int species) {
    SeedBankSettings settings = new SeedBankSettings(species);
    double sum = 0;
    for (int c = 0; c < species; c++) {
      settings.initialShare[c] = random.nextDouble();
      sum += settings.initialShare[c];
      settings.crowding[c] = random.nextDouble(0.5, 2);
      Retentions.set(
          settings,
          c,
          random.nextDouble(),
          random.nextDouble(),
          random.nextDouble(),
          random.nextDouble(0, 0.95));
    }
    for (int c = 0; c < species; c++) {
      settings.initialShare[c] /= sum;
    }
    settings.seedYieldKgPerHa = random.nextDouble(100, 1000);
    settings.initialBankKgPerHa = random.nextDouble(10, 1500);
    settings.runDownYears = random.nextInt(5);
    settings.seedSet = random.nextDouble();
    settings.seedlingKill = random.nextDouble();
    settings.sownSpecies = random.nextInt(species);
    settings.sownKgPerHa = random.nextDouble(30);
    settings.emergence = random.nextDouble(0.1, 1);
    settings.goodSeedShare = random.nextDouble(0.5, 1);
    settings.sowingYearYield = random.nextDouble();
    settings.buriedShare = random.nextDouble(0.9);
    settings.buriedRetention = random.nextDouble(0.8, 1);
    return settings;
  }

  private static void copyScalars(SeedBankSettings from, SeedBankSettings to) {
    to.seedYieldKgPerHa = from.seedYieldKgPerHa;
    to.initialBankKgPerHa = from.initialBankKgPerHa;
    to.runDownYears = from.runDownYears;
    to.seedSet = from.seedSet;
    to.seedlingKill = from.seedlingKill;
    to.sownKgPerHa = from.sownKgPerHa;
    to.emergence = from.emergence;
    to.goodSeedShare = from.goodSeedShare;
    to.sowingYearYield = from.sowingYearYield;
    to.buriedShare = from.buriedShare;
    to.buriedRetention = from.buriedRetention;
  }
}
