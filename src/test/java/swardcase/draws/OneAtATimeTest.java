package swardcase.draws;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import swardcase.chance.Range;
import swardcase.evidence.Assumption;
import swardcase.farm.Supplement;
import swardcase.outcome.FarmModel;
import swardcase.outcome.OutcomeFunction;
import swardcase.search.PlanFarms;

/** On the price of energy, which is known by hand: price / (1000 x energy x dry matter x kept). */
class OneAtATimeTest {

  private static final FarmModel MODEL = PlanFarms.model(PlanFarms.demo("mixed-farm"));
  private static final Supplement GRAIN = MODEL.farm().supplement();

  /** Price of a MJ, and the same turned round, which falls where the first rises. */
  private static final Measures MEASURES =
      new Measures() {
        @Override
        public int size() {
          return 2;
        }

        @Override
        public int kept() {
          return 2;
        }

        @Override
        public void read(OutcomeFunction run, double[] into) {
          into[0] = run.pricePerMj();
          into[1] = 1 - run.pricePerMj();
        }
      };

  private final OneAtATime ends = OneAtATime.of(MODEL, MEASURES);

  private static double price(double perTonne, double energy, double dryMatter, double waste) {
    return perTonne / (1000 * energy * dryMatter * (1 - waste));
  }

  private static double likely() {
    return price(
        GRAIN.pricePerTonne().likely(),
        GRAIN.energyMjPerKgDm().likely(),
        GRAIN.dryMatterFraction().likely(),
        GRAIN.wasteFraction().likely());
  }

  private static int place(Assumption input) {
    return MODEL.inputs().all().indexOf(input);
  }

  /** Down and up by each input alone, as by hand. */
  private static double[][] swings() {
    Range perTonne = GRAIN.pricePerTonne().range();
    Range energy = GRAIN.energyMjPerKgDm().range();
    Range dryMatter = GRAIN.dryMatterFraction().range();
    double e = energy.likely();
    double d = dryMatter.likely();
    double w = GRAIN.wasteFraction().likely();
    double p = perTonne.likely();
    return new double[][] {
      {price(perTonne.low(), e, d, w), price(perTonne.high(), e, d, w)},
      {price(p, energy.high(), d, w), price(p, energy.low(), d, w)},
      {price(p, e, dryMatter.high(), w), price(p, e, dryMatter.low(), w)},
    };
  }

  @Test
  void range_ofSeveralInputs_addsTheirSwingsAsIndependentErrors() {
    double down = 0;
    double up = 0;
    for (double[] swing : swings()) {
      down += Math.pow(swing[0] - likely(), 2);
      up += Math.pow(swing[1] - likely(), 2);
    }
    Range waste = GRAIN.wasteFraction().range();
    assertThat(waste.isExact()).isTrue();
    Range range = ends.range(0);
    assertThat(range.likely()).isCloseTo(likely(), within(1e-12));
    assertThat(range.low()).isCloseTo(likely() - Math.sqrt(down), within(1e-12));
    assertThat(range.high()).isCloseTo(likely() + Math.sqrt(up), within(1e-12));
    assertThat(ends.range(1).high()).isCloseTo(1 - range.low(), within(1e-12));
    assertThat(ends.range(1).low()).isCloseTo(1 - range.high(), within(1e-12));
  }

  @Test
  void range_withinLimits_neverLeavesThem() {
    Range range = ends.range(0);
    double middle = (range.low() + range.likely()) / 2;
    assertThat(ends.range(0, middle, range.likely()))
        .isEqualTo(Range.of(middle, range.likely(), range.likely()));
    assertThat(ends.range(0, 2, 3)).isEqualTo(Range.exactly(2));
    assertThat(ends.range(0, 0, 3)).isEqualTo(range);
  }

  @Test
  void ends_ofOneInput_areTheMeasureThere() {
    int j = place(GRAIN.pricePerTonne());
    assertThat(ends.atLow(j, 0)).isCloseTo(swings()[0][0], within(1e-12));
    assertThat(ends.atHigh(j, 0)).isCloseTo(swings()[0][1], within(1e-12));
    assertThat(ends.likely(0)).isCloseTo(likely(), within(1e-12));
    assertThat(ends.inputs()).isEqualTo(MODEL.inputs().all());
  }

  @Test
  void moving_ofTheMeasure_areItsInputsMostFirst() {
    List<Integer> moving = ends.moving(0);
    assertThat(moving)
        .containsExactlyInAnyOrder(
            place(GRAIN.pricePerTonne()),
            place(GRAIN.energyMjPerKgDm()),
            place(GRAIN.dryMatterFraction()));
    for (int k = 1; k < moving.size(); k++) {
      assertThat(swing(moving.get(k))).isLessThanOrEqualTo(swing(moving.get(k - 1)));
    }
  }

  @Test
  void strongest_ofTheMeasure_isTheFirstOfThoseThatMoveIt() {
    assertThat(ends.strongest(0)).contains(ends.inputs().get(ends.moving(0).get(0)));
  }

  @Test
  void moving_ofAMeasureNotKept_isRefused() {
    OneAtATime few = OneAtATime.of(MODEL, MEASURES, 1);
    assertThat(few.moving(0)).isEqualTo(ends.moving(0));
    assertThat(few.range(1)).isEqualTo(ends.range(1));
    assertThatThrownBy(() -> few.moving(1)).hasMessageContaining("not kept");
  }

  private double swing(int input) {
    return Math.abs(ends.atHigh(input, 0) - ends.atLow(input, 0));
  }
}
