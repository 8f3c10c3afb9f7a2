package swardcase.outcome;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import swardcase.RandomFarms;

/** What a plan brings when one paddock adds other sums. */
class PlanChangesTest {

  /** Where every paddock of a mob is held, sums that were exchanged may leave a remainder. */
  @Test
  void npvWith_feedThatIsARemainderOfRounding_isThatOfNone() {
    FarmModel model = new FarmModel(RandomFarms.demo("mixed-farm"), RandomFarms.TABLES);
    OutcomeFunction run = model.newRun();
    run.setBase(model.keepAll());
    double[] none = withHeld(run, 0, 0);
    double[] rounded = withHeld(run, 1e-13, 1e-12);
    double ofNone = run.changes().npvWith(0, none, 0, model.keep());
    assertThat(run.changes().npvWith(0, rounded, 0, model.keep())).isEqualTo(ofNone);
    double[] some = withHeld(run, 1, 10);
    assertThat(run.changes().npvWith(0, some, 0, model.keep())).isNotEqualTo(ofNone);
  }

  /** Sums of the first paddock with which the farm comes to so much feed held for the first mob. */
  private static double[] withHeld(OutcomeFunction run, double grazed, double dose) {
    ChoiceSums choices = run.choices();
    double[] sums = new double[choices.years() * choices.sums()];
    choices.fill(sums, 0, run.keep(), 0);
    for (int t = 0; t < choices.years(); t++) {
      set(sums, t, choices, YearSums.at(0, YearSums.GRAZED_HELD), grazed);
      set(sums, t, choices, YearSums.at(0, YearSums.DOSE_HELD), dose);
    }
    return sums;
  }

  private static void set(double[] sums, int t, ChoiceSums choices, int sum, double whole) {
    sums[t * choices.sums() + sum] += whole - choices.kept()[sum];
  }
}
