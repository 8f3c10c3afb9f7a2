package swardcase.sward;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.SortedMap;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import swardcase.evidence.Assumption;
import swardcase.farm.Climate;
import swardcase.tables.Cultivar.HardSeed;

/** What the seed bank says with the shipped parameters, against trials and the trade's rules. */
class SeedBankTrialsTest {

  private static final int YEARS = 121;
  private static final SortedMap<String, Assumption> PARAMETERS = StandTables.parameters();

  /** Trade rule: seed sown into a stand with a full old bank changes almost nothing. */
  @Test
  void oversowing_intoAFullOldBank_changesAlmostNothing() {
    SeedBankSettings settings = oldAndNew(Climate.HOT_DRY_SUMMER, 1);
    settings.sownKgPerHa = 10;
    double[] shares = run(settings);
    for (int year = 0; year < 10; year++) {
      assertThat(shares[2 * year]).as("year %s", year + 1).isGreaterThan(0.9);
    }
  }

  /**
   * Trade rule: about three years without seed set, then a clean kill, remove most of the old stand
   * where summers are hot; where they are cool it takes longer (Evans and Hall 1995: about half the
   * rate).
   */
  @Test
  void threeRunDownYears_clearMostInHotSummersOnly() {
    double[] hot = run(runDown(Climate.HOT_DRY_SUMMER, 1));
    double[] cool = run(runDown(Climate.COOL, 1));
    assertThat(hot[2 * 3]).isLessThan(0.3);
    for (int year = 0; year < 10; year++) {
      assertThat(hot[2 * (3 + year)]).as("hot, year %s", year + 1).isLessThan(0.5);
    }
    for (int year = 1; year < 10; year++) {
      assertThat(cool[2 * (3 + year)]).as("cool, year %s", year + 1).isGreaterThan(0.6);
    }
  }

  @Test
  void threeRunDownYears_leaveTwiceAsMuchOldSeedWhereSummersAreCool() {
    SeedBank bank = new SeedBank(2, YEARS);
    double[] shares = new double[2 * YEARS];
    bank.run(runDown(Climate.HOT_DRY_SUMMER, 1), shares);
    double hotLeft = bank.bankKgPerHa(3, 0) / bank.bankKgPerHa(0, 0);
    bank.run(runDown(Climate.COOL, 1), shares);
    double coolLeft = bank.bankKgPerHa(3, 0) / bank.bankKgPerHa(0, 0);
    assertThat(hotLeft).isLessThan(0.25);
    assertThat(coolLeft).isGreaterThan(1.8 * hotLeft);
  }

  /** A current cultivar that crowds the old one keeps gaining; an equal one slowly loses ground. */
  @Test
  void resownStand_afterTenYears_lastsOnlyIfItCrowdsTheOldOne() {
    double[] equal = run(runDown(Climate.HOT_DRY_SUMMER, 1));
    double[] fitter = run(runDown(Climate.HOT_DRY_SUMMER, 1.5));
    assertThat(equal[2 * 12]).isGreaterThan(equal[2 * 3]);
    assertThat(fitter[2 * 12]).isLessThan(fitter[2 * 3]);
  }

  /**
   * Rossiter, Maller and Pakes 1985, from half and half: Daliak (hard) takes over from Dwalganup
   * (moderate) fairly fast, Seaton Park (moderate) from Yarloop (soft) more slowly on drained
   * ground. Direction only: no years were seen.
   */
  @Test
  void mixtures_fromHalfAndHalf_takeOverInThePublishedOrder() {
    int daliak =
        yearsTo(
            0.9,
            HardSeed.MODERATE,
            HardSeed.HARD,
            likely("seed.crowding.daliak") / likely("seed.crowding.dwalganup"));
    int seatonPark =
        yearsTo(
            0.9,
            HardSeed.SOFT,
            HardSeed.MODERATE,
            likely("seed.crowding.seaton-park") / likely("seed.crowding.yarloop"));
    assertThat(daliak).isBetween(3, 20);
    assertThat(seatonPark).isGreaterThan(daliak).isLessThan(YEARS);
  }

  /**
   * Lucas et al. 2015, Lincoln: softer Denmark dominated harder Rosabrook in the second year;
   * Rosabrook had 30 % of the plants in the autumn of the third. That it had less in between does
   * not come out: with hard seed as measured at Hamilton it falls slowly. Full seed set in the
   * sowing year is taken, as of a plot; the rows were fitted with this trial among the data.
   */
  @Test
  void denmarkAndRosabrook_sownTogether_leadAsAtLincoln() {
    double[] rosabrook = rosabrookWithDenmark();
    assertThat(rosabrook[1]).isLessThan(0.40);
    assertThat(rosabrook[2]).isBetween(0.25, 0.35);
  }

  /**
   * Taylor and Ewing 1988: seed at 10 cm is not lost, so inversion hides it and does not kill it.
   */
  @Test
  void inversion_hidesOldSeed_andSavesItForLater() {
    SeedBankSettings settings = runDown(Climate.HOT_DRY_SUMMER, 1);
    SeedBank bank = new SeedBank(2, YEARS);
    double[] shares = new double[2 * YEARS];
    bank.run(settings, shares);
    double oldShare = shares[2 * 3];
    double seedLeft = bank.bankKgPerHa(3, 0);
    settings.buriedShare = likely("seed.buried-share");
    settings.buriedRetention = likely(SeedKeys.BURIED_RETENTION);
    bank.run(settings, shares);
    assertThat(shares[2 * 3]).isLessThan(oldShare);
    assertThat(bank.bankKgPerHa(3, 0)).isGreaterThan(seedLeft);
  }

  /** Pinned: the table of docs/method/seed-bank.md, today's behaviour and no evidence. */
  @ParameterizedTest
  @CsvSource({
    "HOT_DRY_SUMMER, 0, 10, 0, 1.0, 95 98 98 98",
    "HOT_DRY_SUMMER, 0, 10, 0, 1.5, 93 96 91 74",
    "HOT_DRY_SUMMER, 3, 10, 0.95, 1.0, 9 27 33 35",
    "HOT_DRY_SUMMER, 3, 10, 0.95, 1.5, 6 18 13 6",
    "HOT_DRY_SUMMER, 3, 20, 0.97, 1.0, 3 22 28 31",
    "HOT_DRY_SUMMER, 3, 20, 0.97, 1.5, 2 15 11 5",
    "HOT_DRY_SUMMER, 1, 10, 0.95, 1.0, 29 50 57 59",
    "HOT_DRY_SUMMER, 1, 10, 0.95, 1.5, 21 35 25 12",
    "COOL, 3, 10, 0.95, 1.0, 14 75 75 75",
    "COOL, 3, 10, 0.95, 1.5, 10 65 54 39"
  })
  void oldShare_ofTheMethodPage_isAsPrinted(
      Climate climate, int runDown, double sown, double kill, double crowding, String percent) {
    SeedBankSettings settings = oldAndNew(climate, crowding);
    settings.runDownYears = runDown;
    settings.sownKgPerHa = sown;
    settings.seedlingKill = kill;
    double[] shares = run(settings);
    String found =
        IntStream.of(1, 2, 5, 10)
            .mapToObj(year -> Math.round(100 * shares[2 * (runDown + year - 1)]))
            .map(String::valueOf)
            .collect(Collectors.joining(" "));
    assertThat(found).isEqualTo(percent);
  }

  private static SeedBankSettings oldAndNew(Climate climate, double crowding) {
    SeedBankSettings settings = new SeedBankSettings(2);
    settings.initialShare[0] = 1;
    retention(settings, 0, climate, HardSeed.MODERATE);
    retention(settings, 1, climate, HardSeed.MODERATE);
    settings.crowding[1] = crowding;
    settings.sownSpecies = 1;
    settings.seedYieldKgPerHa = likely(SeedKeys.yield(climate));
    settings.initialBankKgPerHa = SeedBank.balanceKgPerHa(settings);
    settings.emergence = likely(SeedKeys.EMERGENCE);
    settings.goodSeedShare = likely(SeedKeys.GOOD_SEED_SHARE);
    settings.sowingYearYield = likely(SeedKeys.SOWING_YEAR_YIELD);
    return settings;
  }

  private static SeedBankSettings runDown(Climate climate, double crowding) {
    SeedBankSettings settings = oldAndNew(climate, crowding);
    settings.runDownYears = 3;
    settings.seedlingKill = 0.95;
    settings.sownKgPerHa = 10;
    return settings;
  }

  private static int yearsTo(double share, HardSeed old, HardSeed newer, double crowding) {
    SeedBankSettings settings = oldAndNew(Climate.HOT_DRY_SUMMER, crowding);
    settings.initialShare[0] = 0.5;
    settings.initialShare[1] = 0.5;
    retention(settings, 0, Climate.HOT_DRY_SUMMER, old);
    retention(settings, 1, Climate.HOT_DRY_SUMMER, newer);
    double[] shares = run(settings);
    for (int year = 0; year < YEARS; year++) {
      if (shares[2 * year + 1] >= share) {
        return year;
      }
    }
    return YEARS;
  }

  /** Rosabrook's share by year in a cool mixture with Denmark; next to no seed but the sown. */
  private static double[] rosabrookWithDenmark() {
    SeedBankSettings settings = oldAndNew(Climate.COOL, 1);
    settings.initialShare[0] = 0.5;
    settings.initialShare[1] = 0.5;
    settings.initialBankKgPerHa = 1e-6;
    settings.crowding[0] = likely("seed.crowding.denmark");
    settings.crowding[1] = likely("seed.crowding.rosabrook");
    retention(settings, 0, Climate.COOL, HardSeed.SOFT);
    double[] shares = run(settings);
    double[] rosabrook = new double[YEARS];
    for (int year = 0; year < YEARS; year++) {
      rosabrook[year] = shares[2 * year + 1];
    }
    return rosabrook;
  }

  private static void retention(
      SeedBankSettings settings, int cultivar, Climate climate, HardSeed hardSeed) {
    Retentions.set(
        settings,
        cultivar,
        likely(SeedKeys.retention(climate, hardSeed, 1)),
        likely(SeedKeys.retention(climate, hardSeed, 2)),
        likely(SeedKeys.retention(climate, hardSeed, 3)),
        likely(SeedKeys.retention(climate, hardSeed, 4)));
  }

  private static double likely(String key) {
    return PARAMETERS.get(key).likely();
  }

  private static double[] run(SeedBankSettings settings) {
    double[] shares = new double[2 * YEARS];
    new SeedBank(2, YEARS).run(settings, shares);
    return shares;
  }
}
