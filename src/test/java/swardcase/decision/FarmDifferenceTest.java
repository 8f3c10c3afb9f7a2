package swardcase.decision;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import swardcase.FarmCopy;
import swardcase.chance.Drawn;
import swardcase.decision.FarmMeasures.OfMob;
import swardcase.draws.Spread;
import swardcase.evidence.Assumption;
import swardcase.farm.Farm;
import swardcase.farm.Mob;
import swardcase.farm.Prices;
import swardcase.outcome.FarmModel;
import swardcase.outcome.OutcomeFunction;
import swardcase.search.PlanFarms;

/** The difference between two farms, by laws that hold for any two. */
class FarmDifferenceTest {

  private static final double MILLIONTH = 1e-6;

  private static final Farm FARM = PlanFarms.demo("mixed-farm");
  private static Decision now;
  private static Decision cheaper;

  /** Not while the class is being loaded: other threads would wait for it for ever. */
  @BeforeAll
  static void decide() {
    now = decide(FARM, 1);
    cheaper = decide(lambs(0.8), 1);
  }

  private static Decision decide(Farm farm, long seed) {
    FarmModel model = PlanFarms.model(farm);
    return Decision.of(Decision.draws(model, seed, 400), List.of(), done -> {});
  }

  /** The farm with lambs worth so many times as much. */
  private static Farm lambs(double times) {
    Prices prices = FARM.prices();
    Assumption worth = prices.netValuePerLamb();
    return FarmCopy.of(FARM)
        .prices(
            new Prices(
                Assumption.ofFarm(worth.name(), worth.range().times(times), worth.unit()),
                prices.costPerDryEwe(),
                prices.replacementEwe(),
                prices.spareFeedPerTonneDm(),
                prices.grossMarginPerEwe(),
                prices.nitrogenPerKg(),
                prices.leafTest(),
                prices.plantIdentification(),
                prices.priceCorrelation()))
        .build();
  }

  @Test
  void difference_ofAFarmDecidedTwice_isExactlyNothing() {
    FarmDifference none = FarmDifference.of(now, decide(FARM, 1));

    for (Spread part : List.of(none.byItself(), none.planAdds(), none.together())) {
      assertThat(part.drawn()).isEqualTo(Drawn.exactly(0));
      assertThat(part.standardDeviation()).isZero();
    }
  }

  @Test
  void difference_theOtherWayRound_hasTheOtherSign() {
    FarmDifference there = FarmDifference.of(now, cheaper);
    FarmDifference back = FarmDifference.of(cheaper, now);

    assertOpposite(there.byItself(), back.byItself());
    assertOpposite(there.planAdds(), back.planAdds());
    assertOpposite(there.together(), back.together());
  }

  /** Quantiles lie between two draws, and are worked from the lower one on either way. */
  private static void assertOpposite(Spread there, Spread back) {
    assertThat(there.mean()).isNotZero().isEqualTo(-back.mean());
    assertThat(there.standardError()).isEqualTo(back.standardError());
    assertThat(there.low()).isCloseTo(-back.high(), within(MILLIONTH));
    assertThat(there.high()).isCloseTo(-back.low(), within(MILLIONTH));
  }

  @Test
  void parts_ofADifference_addUp() {
    FarmDifference difference = FarmDifference.of(now, cheaper);

    assertThat(difference.byItself().mean() + difference.planAdds().mean())
        .isCloseTo(difference.together().mean(), within(MILLIONTH));
    assertThat(difference.planAdds().mean())
        .isCloseTo(cheaper.gain().mean() - now.gain().mean(), within(MILLIONTH));
  }

  /** A fifth off what each lamb marked is worth, year by year; what dry ewes cost stays. */
  @Test
  void byItself_ofCheaperLambs_isAFifthOfTheWorthOfThoseMarked() {
    double[] worth =
        now.simulation().drawn(now.model().inputs().find(OutcomeFunction.LAMB_VALUE).orElseThrow());
    double years = 0;
    for (int t = 0; t < now.model().years(); t++) {
      years += Math.pow(1 + FARM.finance().discountRate().likely(), -t);
    }
    FarmMeasures places = new FarmMeasures(now.model(), now.plan());
    double[] marked = new double[worth.length];
    for (int g = 0; g < FARM.mobs().size(); g++) {
      Mob mob = FARM.mobs().get(g);
      double[] percent = now.simulation().measured(places.at(g, OfMob.PREGNANT_PERCENT));
      for (int d = 0; d < marked.length; d++) {
        marked[d] += mob.ewes() * percent[d] / 100 * OutcomeFunction.lambsPerPregnantEwe(mob);
      }
    }
    double sum = 0;
    for (int d = 0; d < marked.length; d++) {
      sum -= 0.2 * worth[d] * marked[d] * years;
    }

    assertThat(sum).isLessThan(-1000);
    assertThat(FarmDifference.of(now, cheaper).byItself().mean() * marked.length)
        .isCloseTo(sum, within(1e-9 * -sum));
  }

  /**
   * What both share falls out: a thousandth off lambs is told though what a year brings spreads
   * widely.
   */
  @Test
  void spread_ofASmallChange_isFarBelowThatOfAYearsResult() {
    FarmDifference small = FarmDifference.of(now, decide(lambs(0.999), 1));

    double ofYear = now.spread(now.drawn(FarmMeasures.OfFarm.STANDING_RESULT)).standardDeviation();
    assertThat(small.together().standardDeviation()).isPositive().isLessThan(0.05 * ofYear);
    assertThat(Math.abs(small.byItself().mean()))
        .isGreaterThan(4 * small.byItself().standardError());
  }

  @Test
  void farms_drawnFromTwoSeeds_areRefused() {
    Decision other = decide(FARM, 2);

    assertThatThrownBy(() -> FarmDifference.of(now, other))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("400 from seed 1 and 400 from seed 2");
  }
}
