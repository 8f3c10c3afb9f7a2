package swardcase.feed;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.time.Month;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import swardcase.FarmCopy;
import swardcase.OtherHemisphere;
import swardcase.farm.Farm;
import swardcase.farm.PastureYear;
import swardcase.farm.SeasonGrowth;
import swardcase.search.PlanFarms;

class GrowthYearTest {

  /** Katanning, kg DM/ha/day, January to December: DPIRD, annual pasture table 2. */
  private static final List<Double> KATANNING =
      List.of(0d, 0d, 0d, 1d, 11d, 15d, 16d, 28d, 51d, 45d, 15d, 0d);

  private static final Farm FARM = farm();
  private final GrowthYear year = new GrowthYear(FARM);

  private static Farm farm() {
    Farm base = PlanFarms.demo("mixed-farm");
    PastureYear was = base.feedYear();
    List<SeasonGrowth> alike =
        was.seasons().stream()
            .map(
                season ->
                    new SeasonGrowth(
                        season.type(),
                        season.chance(),
                        KATANNING,
                        Optional.empty(),
                        season.evidence(),
                        season.source(),
                        season.setBy()))
            .toList();
    PastureYear feedYear =
        new PastureYear(
            "Katanning", alike, List.of(Month.JUNE, Month.JULY, Month.AUGUST), was.quality());
    return FarmCopy.of(base).feedYear(feedYear).build();
  }

  /** 450 x 10/12 + 496 x 6/12 + 868 x 2/12 = 767.67 of 1814 kg, by hand. */
  @Test
  void earlyWinterShare_ofKatanning_fadesFromTheFirstHalfMonthToTheLast() {
    assertThat(year.earlyWinterShare())
        .isCloseTo((450 * 10 + 496 * 6 + 868 * 2) / 12.0 / 1814, within(1e-12));
  }

  /** 30 x 15 + 31 x 16 + 31 x 28 = 1814 of 5560 kg, by hand. */
  @Test
  void winter_ofKatanning_givesAThirdOfTheGrowth() {
    assertThat(year.winterGrowthKgDmPerHa()).isCloseTo(1814, within(1e-9));
    assertThat(year.winterShare()).isCloseTo(1814.0 / 5560, within(1e-12));
    assertThat(year.growthKgDmPerHa(16)).isCloseTo(51 * 15, within(1e-9));
    assertThat(year.isWinter(10)).isTrue();
    assertThat(year.isWinter(15)).isTrue();
    assertThat(year.isWinter(9)).isFalse();
    assertThat(year.isWinter(16)).isFalse();
  }

  /** April grows 15 kg in half a month, less than a twentieth of September's 765. */
  @Test
  void autumnBreak_ofKatanning_isTheFirstOfMay() {
    assertThat(year.breakHalfMonth()).isEqualTo(8);
  }

  @Test
  void sharesAfterTheBreak_ofWholeAndHalfMonths_areThoseOfTheirGrowth() {
    assertThat(year.winterShareAfterBreak(1)).isZero();
    assertThat(year.winterShareAfterBreak(1.5)).isCloseTo(225.0 / 1814, within(1e-12));
    assertThat(year.winterShareAfterBreak(2)).isCloseTo(450.0 / 1814, within(1e-12));
    assertThat(year.winterShareAfterBreak(4)).isCloseTo(1, within(1e-12));
    assertThat(year.otherShareAfterBreak(2)).isCloseTo(341.0 / 3746, within(1e-12));
    assertThat(year.otherShareAfterBreak(0)).isZero();
    assertThat(year.otherShareAfterBreak(12)).isCloseTo(1, within(1e-12));
  }

  /** The run back from winter goes over the turn of the year. */
  @Test
  void autumnBreak_halfAYearLater_isHalfAYearLater() {
    GrowthYear later = new GrowthYear(OtherHemisphere.of(FARM));
    assertThat(later.breakHalfMonth()).isEqualTo(20);
    assertThat(later.isWinter(22)).isTrue();
    assertThat(later.isWinter(3)).isTrue();
    assertThat(later.winterShareAfterBreak(2))
        .isCloseTo(15 * 31.0 / (15 * 31 + 16 * 31 + 28 * 28), within(1e-12));
  }
}
