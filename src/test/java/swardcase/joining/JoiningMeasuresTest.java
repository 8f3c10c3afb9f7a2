package swardcase.joining;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import swardcase.RandomFarms;
import swardcase.farm.HalfMonths;
import swardcase.outcome.FarmModel;
import swardcase.outcome.OutcomeFunction;

/** Two mobs, ten paddocks, two ways of grazing, read from a run anywhere in its ranges. */
class JoiningMeasuresTest {

  private final FarmModel model = new FarmModel(RandomFarms.demo("risky-farm"), RandomFarms.TABLES);
  private final JoiningCase setting = setting();
  private final Grazing asNow = new Planner(setting, setting.strength).asNow();
  private final Grazing nothing = new Grazing(new double[4][9][10]);
  private final JoiningMeasures measures = new JoiningMeasures(setting, List.of(asNow, nothing));

  private JoiningCase setting() {
    OutcomeFunction run = model.newRun();
    return new JoiningCase(
        model,
        run,
        JoiningCase.cautiousStrength(model, run),
        0,
        new ComingYear(model, run, model.keepAll()));
  }

  /** 2 x 9 x 10 points, then 10 of barren ewes, 10 doses and three for each of two ways. */
  @Test
  void places_follow_oneAnother() {
    assertThat(setting.halfMonths).hasSize(9).startsWith(4, 5, 6);
    assertThat(measures.points(0, 4, 0)).isZero();
    assertThat(measures.points(1, 6, 3)).isEqualTo(113);
    assertThat(measures.barren(4)).isEqualTo(184);
    assertThat(measures.greenDose(4)).isEqualTo(194);
    assertThat(measures.lambs(0)).isEqualTo(200);
    assertThat(measures.money(0)).isEqualTo(201);
    assertThat(measures.saved(0)).isEqualTo(202);
    assertThat(measures.lambs(1)).isEqualTo(203);
    assertThat(measures.saved(1)).isEqualTo(205);
    assertThat(measures.size()).isEqualTo(206);
  }

  @Test
  void read_fromARun_isWhatTheLossesOfThatRunAre() {
    SplittableRandom random = new SplittableRandom(71);
    OutcomeFunction run = model.newRun();
    double[] numbers = RandomFarms.draw(model.inputs().all(), random);
    numbers[model.inputs().place("oestrogen.story")] = 1;
    run.set(numbers);
    double[] read = new double[measures.size()];
    measures.read(run, model.inputs().likely(), read);
    double[] strength = new double[10];
    for (int i = 0; i < strength.length; i++) {
      strength[i] = run.greenDose(i);
      assertThat(read[measures.greenDose(i)]).isEqualTo(strength[i]).isPositive();
      assertThat(read[measures.barren(i)]).isEqualTo(YoungEwes.barrenPercent(run, i)).isPositive();
    }
    Losses losses = new Losses(run, setting.halfMonths, setting.joiningDay, setting.ewes, strength);
    assertThat(read[measures.lambs(0)]).isEqualTo(losses.lambs(asNow)).isGreaterThan(10);
    assertThat(read[measures.lambs(1)]).isEqualTo(losses.lambs(nothing));
    assertThat(read[measures.money(0)]).isEqualTo(losses.money(asNow)).isGreaterThan(1000);
    assertThat(read[measures.money(1)]).isEqualTo(losses.money(nothing));
    GrazingProblem needs = setting.problem(setting.strength);
    double need = Arrays.stream(needs.pastureNeedMj).flatMapToDouble(Arrays::stream).sum();
    double more = need - needs.boughtMj(asNow);
    double saved = losses.money(asNow) - losses.money(nothing) - more * run.pricePerMj();
    assertThat(read[measures.saved(0)]).isZero();
    assertThat(read[measures.saved(1)]).isNegative().isCloseTo(saved, within(1e-6));
  }

  @Test
  void read_pointsOfAStay_areThoseOfItsDoseAlone() {
    SplittableRandom random = new SplittableRandom(72);
    OutcomeFunction run = model.newRun();
    double[] numbers = RandomFarms.draw(model.inputs().all(), random);
    numbers[model.inputs().place("oestrogen.story")] = 1;
    run.set(numbers);
    double[] read = new double[measures.size()];
    measures.read(run, model.inputs().likely(), read);
    double most = 0;
    for (int g = 0; g < 2; g++) {
      for (int p : setting.halfMonths) {
        for (int i = 0; i < 10; i++) {
          double[] stay = new double[HalfMonths.COUNT];
          stay[p] = run.greenDose(i) * run.greenShare(p);
          double alone = 100 * run.flock(g).lossOfJoining(stay, setting.joiningDay[g]);
          double expected = setting.matters(g, p) ? alone : 0;
          assertThat(read[measures.points(g, p, i)]).isCloseTo(expected, within(1e-9));
          most = Math.max(most, expected);
        }
      }
    }
    assertThat(most).isGreaterThan(3);
  }
}
