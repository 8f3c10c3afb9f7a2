package swardcase.sward;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Map;
import java.util.SortedMap;
import java.util.function.ToDoubleFunction;
import org.junit.jupiter.api.Test;
import swardcase.chance.Range;
import swardcase.evidence.Assumption;
import swardcase.farm.Climate;
import swardcase.tables.Cultivar;
import swardcase.tables.Cultivar.HardSeed;
import swardcase.tables.Tables;

class SeedKeysTest {

  private static final SortedMap<String, Assumption> PARAMETERS = StandTables.parameters();

  @Test
  void retention_everyClimateClassAndSummer_hasARow() {
    for (Climate climate : Climate.values()) {
      for (HardSeed hardSeed : HardSeed.values()) {
        for (int summer = 1; summer <= SeedBank.AGES; summer++) {
          String key = SeedKeys.retention(climate, hardSeed, summer);
          assertThat(PARAMETERS).containsKey(key);
          assertThat(PARAMETERS.get(key).range().low()).isPositive();
          assertThat(PARAMETERS.get(key).range().high()).isLessThan(1);
        }
      }
    }
    assertThat(SeedKeys.retention(Climate.HOT_DRY_SUMMER, HardSeed.MODERATE, 1))
        .isEqualTo("seed.retention.hot.moderate.age-1");
  }

  @Test
  void scalars_ofTheSeedBank_haveRows() {
    assertThat(PARAMETERS)
        .containsKeys(
            SeedKeys.yield(Climate.HOT_DRY_SUMMER),
            SeedKeys.yield(Climate.COOL),
            SeedKeys.EMERGENCE,
            SeedKeys.CROWDING_OF_YANNINICUM_WET,
            SeedKeys.SOWING_YEAR_YIELD,
            SeedKeys.GOOD_SEED_SHARE,
            SeedKeys.BURIED_RETENTION,
            Tables.UNKNOWN_HIGH_CHANCE);
  }

  @Test
  void crowding_ofCultivars_isTheirOwnRowOrTheDefaultUnderTheirName() {
    assertThat(SeedKeys.crowding(cultivar("Mount Barker"))).isEqualTo("seed.crowding.mount-barker");
    Tables tables = StandTables.tables();
    assertThat(SeedKeys.crowding(cultivar("Mount Barker"), tables))
        .isEqualTo(PARAMETERS.get("seed.crowding.mount-barker"));
    assertThat(SeedKeys.crowding(cultivar("Dinninup"), tables).range())
        .isEqualTo(PARAMETERS.get("seed.crowding.default").range());
    assertThat(SeedKeys.crowding(cultivar("Dinninup"), tables).name())
        .isEqualTo("crowding strength of Dinninup");
  }

  private static Cultivar cultivar(String name) {
    return StandTables.cultivar(name, Cultivar.Era.OLD, HardSeed.MODERATE, true, 1.0);
  }

  /** The likely path of each class lies in the range its source prints. */
  @Test
  void retention_ofASingleSeedCrop_keepsToThePublishedDecay() {
    for (Map<String, String> row : StandTables.rows("/published/seed-decay.csv")) {
      double left =
          100
              * left(
                  row.get("climate"),
                  row.get("hard_seed"),
                  Integer.parseInt(row.get("summers")),
                  Range::likely);
      assertThat(left)
          .as("%s", row)
          .isBetween(
              Double.parseDouble(row.get("low_percent")),
              Double.parseDouble(row.get("high_percent")));
    }
  }

  /** Bolland and Collins 1987, Esperance: 100, 40, 13, 10 %; half of the last printed digit. */
  @Test
  void retention_ofModerateSeedInHotSummers_followsEsperance() {
    assertThat(100 * left("hot", "moderate", 1, Range::likely)).isCloseTo(40, within(0.5));
    assertThat(100 * left("hot", "moderate", 2, Range::likely)).isCloseTo(13, within(0.5));
    assertThat(100 * left("hot", "moderate", 3, Range::likely)).isCloseTo(10, within(0.5));
  }

  /**
   * Norman et al. 2006: 5.3 % of Nungarin and 3.9 % of Izmir hard after 30 months, three summers.
   * Its 0.9 % of Dalkeith lies below the hard class and inside the soft one.
   */
  @Test
  void retention_ofHardSeedInHotSummers_reachesDownToTheFasterTrial() {
    double low = 100 * left("hot", "hard", 3, Range::low);
    double high = 100 * left("hot", "hard", 3, Range::high);
    assertThat(5.3).isBetween(low, high);
    assertThat(3.9).isBetween(low, high);
    assertThat(0.9).isLessThan(low);
    assertThat(0.9).isGreaterThan(100 * left("hot", "soft", 3, Range::low));
  }

  /**
   * Evans and Hall 1995: 12 to 31 % left, which over five or six summers is 0.654 to 0.823 a year.
   */
  @Test
  void retention_ofLaterCoolSummers_liesInsideThePublishedRates() {
    for (HardSeed hardSeed : HardSeed.values()) {
      Range range = PARAMETERS.get(SeedKeys.retention(Climate.COOL, hardSeed, 4)).range();
      assertThat(range.low()).isGreaterThan(Math.pow(0.12, 1 / 5d));
      assertThat(range.high()).isLessThan(Math.pow(0.31, 1 / 6d));
    }
  }

  private static double left(
      String climate, String hardSeed, int summers, ToDoubleFunction<Range> which) {
    double left = 1;
    for (int summer = 1; summer <= summers; summer++) {
      String key =
          "seed.retention." + climate + "." + hardSeed + ".age-" + Math.min(summer, SeedBank.AGES);
      left *= which.applyAsDouble(PARAMETERS.get(key).range());
    }
    return left;
  }
}
