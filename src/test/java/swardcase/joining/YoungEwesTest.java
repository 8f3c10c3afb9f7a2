package swardcase.joining;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import swardcase.RandomFarms;
import swardcase.evidence.Assumption;
import swardcase.farm.HalfMonths;
import swardcase.outcome.FarmModel;
import swardcase.outcome.OutcomeFunction;
import swardcase.reproduction.ByFormula;

class YoungEwesTest {

  private final FarmModel model = new FarmModel(RandomFarms.demo("risky-farm"), RandomFarms.TABLES);
  private final OutcomeFunction run = model.newRun();

  private double likely(String parameter) {
    Assumption assumption = RandomFarms.TABLES.parameter(parameter);
    return assumption.likely();
  }

  @Test
  void greenDays_areDaysByHowGreenTheyAre() {
    double sum = 0;
    for (int p = 0; p < HalfMonths.COUNT; p++) {
      assertThat(run.greenShare(p)).isBetween(0.0, 1.0);
      sum += HalfMonths.days(p) * run.greenShare(p);
    }
    assertThat(YoungEwes.greenDays(run)).isCloseTo(sum, within(1e-9)).isBetween(100.0, 365.0);
  }

  @Test
  void barrenPercent_isWhatAYearOnThePaddocksGreenFeedDoes() {
    double most = 0;
    for (int i = 0; i < model.farm().paddocks().size(); i++) {
      double[] year = new double[HalfMonths.COUNT];
      for (int p = 0; p < year.length; p++) {
        year[p] = run.greenDose(i) * run.greenShare(p);
      }
      double exposure =
          ByFormula.seasonExposure(
              year,
              likely("oestrogen.d50"),
              likely("oestrogen.steepness"),
              likely("oestrogen.sterility-reference-dose"));
      double expected = 100 * ByFormula.sterileShare(exposure, likely("oestrogen.sterility-q"));
      double barren = YoungEwes.barrenPercent(run, i);
      assertThat(barren).isCloseTo(expected, within(1e-9));
      most = Math.max(most, barren);
    }
    assertThat(most).isGreaterThan(1);
  }

  /** ln(1 - 0.03) / ln(1 - 0.12) x 180 = 42.9, by hand. */
  @Test
  void daysAllowed_followTheirEquation() {
    assertThat(YoungEwes.daysAllowed(12, 180, 3)).isCloseTo(42.9, within(0.05));
    assertThat(YoungEwes.daysAllowed(3, 180, 3)).isEqualTo(180);
    assertThat(YoungEwes.daysAllowed(1, 180, 3)).isEqualTo(180);
    assertThat(YoungEwes.daysAllowed(100, 180, 3)).isZero();
  }
}
