package swardcase.joining;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import swardcase.RandomFarms;
import swardcase.farm.HalfMonths;
import swardcase.outcome.FarmModel;
import swardcase.outcome.OutcomeFunction;

/** Losses of a way of grazing, put together again from the doses of each half-month. */
class LossesTest {

  private final FarmModel model = new FarmModel(RandomFarms.demo("risky-farm"), RandomFarms.TABLES);
  private final OutcomeFunction run = model.newRun();
  private final JoiningCase setting =
      new JoiningCase(
          model,
          run,
          JoiningCase.cautiousStrength(model, run),
          0,
          new ComingYear(model, run, model.keepAll()));
  private final Losses losses = setting.losses(setting.strength);

  private Grazing anyGrazing() {
    SplittableRandom random = new SplittableRandom(5);
    double[][][] share = new double[setting.mobs()][setting.halfMonths.size()][setting.paddocks()];
    for (double[][] ofMob : share) {
      for (double[] ofHalf : ofMob) {
        Arrays.setAll(ofHalf, i -> random.nextDouble() / ofHalf.length);
      }
    }
    return new Grazing(share);
  }

  @Test
  void doses_inTheWeeksOfThePlan_areThoseOfThePaddocksAndElsewhereAsNow() {
    Grazing grazing = anyGrazing();
    for (int g = 0; g < setting.mobs(); g++) {
      double[] doses = losses.doses(g, grazing);
      double[] safe = losses.safe(g);
      for (int p = 0; p < HalfMonths.COUNT; p++) {
        int k = setting.halfMonths.indexOf(p);
        double expected = run.flock(g).doseNow(p);
        if (k >= 0) {
          expected = 0;
          for (int i = 0; i < setting.paddocks(); i++) {
            expected += grazing.share(g, k, i) * setting.strength[i] * run.greenShare(p);
          }
        }
        assertThat(doses[p]).isCloseTo(expected, within(1e-12));
        assertThat(safe[p]).isEqualTo(k >= 0 ? 0 : run.flock(g).doseNow(p));
      }
    }
  }

  @Test
  void lambsAndMoney_ofAWayOfGrazing_areThoseOfItsEwes() {
    Grazing grazing = anyGrazing();
    double lambs = 0;
    double money = 0;
    for (int g = 0; g < setting.mobs(); g++) {
      double[] doses = losses.doses(g, grazing);
      double share = run.flock(g).lossOfJoining(doses, setting.joiningDay[g]);
      double ewes = setting.ewes[g] * share;
      assertThat(losses.ewesNotInLamb(g, grazing)).isCloseTo(ewes, within(1e-9));
      assertThat(Losses.points(run, g, doses, setting.joiningDay[g]))
          .isCloseTo(100 * share, within(1e-9));
      lambs += ewes * run.lambsPerPregnantEwe(g);
      money += ewes * run.valuePerPregnantEwe(g);
    }
    assertThat(lambs).isGreaterThan(1);
    assertThat(losses.lambs(grazing)).isCloseTo(lambs, within(1e-9));
    assertThat(losses.money(grazing)).isCloseTo(money, within(1e-6));
  }

  @Test
  void chords_ofAHalfMonth_areWhatGrazingOnePaddockThenCosts() {
    double most = 0;
    for (int g = 0; g < setting.mobs(); g++) {
      double[] base = losses.doses(g, anyGrazing());
      double[][] chords = losses.chords(g, base);
      for (int k = 0; k < chords.length; k++) {
        int p = setting.halfMonths.get(k);
        for (int i = 0; i < setting.paddocks(); i++) {
          double lost = lost(g, base, p, setting.strength[i]) - lost(g, base, p, 0);
          assertThat(chords[k][i]).isCloseTo(Math.max(0, lost), within(1e-6));
          most = Math.max(most, chords[k][i]);
        }
      }
    }
    assertThat(most).isGreaterThan(100);
  }

  /** Money lost by a mob with the clover of one half-month at this strength. */
  private double lost(int mob, double[] base, int halfMonth, double strength) {
    double[] doses = base.clone();
    doses[halfMonth] = strength * run.greenShare(halfMonth);
    return setting.ewes[mob]
        * run.valuePerPregnantEwe(mob)
        * run.flock(mob).lossOfJoining(doses, setting.joiningDay[mob]);
  }
}
