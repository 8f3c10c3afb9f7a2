package swardcase.decision;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import swardcase.FarmCopy;
import swardcase.chance.Drawn;
import swardcase.chance.Sample;
import swardcase.chance.Spread;
import swardcase.decision.FarmMeasures.OfMob;
import swardcase.draws.Measures;
import swardcase.draws.Simulation;
import swardcase.evidence.Assumption;
import swardcase.farm.Farm;
import swardcase.farm.Mob;
import swardcase.farm.Paddock;
import swardcase.outcome.FarmModel;
import swardcase.outcome.OutcomeFunction;
import swardcase.outcome.Plan;
import swardcase.search.PlanFarms;

/** The difference between two farms, by laws that hold for any two. */
class FarmDifferenceTest {

  private static final double MILLIONTH = 1e-6;

  private static final Farm FARM = PlanFarms.demo("mixed-farm");
  private static Decision now;
  private static Decision cheaper;
  private static Decision dearer;
  private static Decision slightly;

  /** Not while the class is being loaded: other threads would wait for it for ever. */
  @BeforeAll
  static void decide() {
    now = decide(FARM, 1);
    cheaper = decide(lambs(FARM, 0.8), 1);
    dearer = decide(lambs(FARM, 3), 1);
    slightly = decide(lambs(FARM, 0.999), 1);
  }

  private static Decision decide(Farm farm, long seed) {
    FarmModel model = PlanFarms.model(farm);
    return Decision.rough(Decision.draws(model, seed, 200), List.of(), done -> {});
  }

  /** The farm with lambs worth so many times as much. */
  private static Farm lambs(Farm farm, double times) {
    Assumption worth = farm.prices().netValuePerLamb();
    return FarmCopy.of(farm)
        .netValuePerLamb(Assumption.ofFarm(worth.name(), worth.range().times(times), worth.unit()))
        .build();
  }

  @Test
  void difference_ofAFarmDecidedTwice_isExactlyNothing() {
    FarmDifference none = FarmDifference.of(now, decide(FARM, 1));

    for (Spread part : List.of(none.byItself(), none.planAdds(), none.together())) {
      assertThat(part).isEqualTo(Spread.NOTHING);
    }
  }

  @Test
  void difference_theOtherWayRound_hasTheOtherSign() {
    FarmDifference there = FarmDifference.of(now, cheaper);
    FarmDifference back = FarmDifference.of(cheaper, now);

    assertOpposite(there.together(), back.together());
  }

  /** Quantiles lie between two draws, and are worked from the lower one on either way. */
  private static void assertOpposite(Spread there, Spread back) {
    assertThat(there.mean()).isNotZero().isEqualTo(-back.mean());
    assertThat(there.standardError()).isCloseTo(back.standardError(), within(MILLIONTH));
    assertThat(there.low()).isCloseTo(-back.high(), within(MILLIONTH));
    assertThat(there.high()).isCloseTo(-back.low(), within(MILLIONTH));
  }

  @Test
  void parts_ofADifference_addUp() {
    FarmDifference difference = FarmDifference.of(now, cheaper);

    assertThat(difference.byItself().mean() + difference.planAdds().mean())
        .isCloseTo(difference.together().mean(), within(MILLIONTH));
    double standing =
        years(FARM)
            * (cheaper.of(FarmMeasures.OfFarm.STANDING_RESULT).mean()
                - now.of(FarmMeasures.OfFarm.STANDING_RESULT).mean());
    assertThat(difference.together().mean())
        .isCloseTo(standing + cheaper.gain().mean() - now.gain().mean(), within(MILLIONTH));
    assertThat(difference.notHeld()).isEmpty();
  }

  private static double years(Farm farm) {
    double years = 0;
    for (int t = 0; t < farm.finance().horizonYears(); t++) {
      years += Math.pow(1 + farm.finance().discountRate().likely(), -t);
    }
    return years;
  }

  /** Where the same plan is made, all comes from the change. */
  @Test
  void planAdds_whereTheSamePlanIsMade_isExactlyNothing() {
    assertThat(slightly.plan()).isEqualTo(now.plan()).isNotEqualTo(now.model().keepAll());

    FarmDifference difference = FarmDifference.of(now, slightly);

    assertThat(difference.planAdds().drawn()).isEqualTo(Drawn.exactly(0));
    assertThat(difference.byItself().drawn()).isEqualTo(difference.together().drawn());
  }

  private record GainOf(Plan plan) implements Measures {

    @Override
    public int size() {
      return 1;
    }

    @Override
    public void read(OutcomeFunction run, double[] numbers, double[] into) {
      into[0] = run.setBase(plan);
    }
  }

  /** The plan of today, worked out once more on the changed farm, draw by draw. */
  @Test
  void byItself_holdsThePlanOfTodayOnTheChangedFarm() {
    FarmDifference difference = FarmDifference.of(now, dearer);

    assertThat(dearer.plan()).isNotEqualTo(now.plan());
    double held =
        Sample.mean(
            Simulation.measured(dearer.simulation().draws(), () -> new GainOf(now.plan()))[0]);
    assertThat(difference.planAdds().mean())
        .isCloseTo(dearer.gain().mean() - held, within(MILLIONTH))
        .isPositive();
  }

  @Test
  void plan_ofAFarmWithAPaddockMore_isHeldOnTheOthersAndSaidNotToBeHeldThere() {
    int acted =
        IntStream.range(0, now.plan().paddocks()).filter(now::isActedOn).findFirst().orElseThrow();
    List<Paddock> others = new ArrayList<>(FARM.paddocks());
    String gone = others.remove(acted).name();

    List<String> notHeld = new ArrayList<>();
    Decision fewer = decide(FarmCopy.of(FARM).paddocks(others).build(), 1);
    Plan held = FarmDifference.held(now, fewer, notHeld);

    assertThat(notHeld).containsExactly(gone);
    for (int i = 0; i < others.size(); i++) {
      assertThat(held.course(i)).isEqualTo(now.plan().course(i < acted ? i : i + 1));
    }
  }

  /**
   * A fifth off what each lamb marked is worth, year by year; what dry ewes cost stays. On a farm
   * that keeps everything nothing else moves by itself.
   */
  @Test
  void byItself_ofCheaperLambs_isAFifthOfTheWorthOfThoseMarked() {
    Farm farm = PlanFarms.demo("current-farm");
    Decision now = decide(farm, 1);
    assertThat(now.plan()).isEqualTo(now.model().keepAll());
    double[] worth =
        now.simulation().drawn(now.model().inputs().find(OutcomeFunction.LAMB_VALUE).orElseThrow());
    double years = years(farm);
    FarmMeasures places = now.measures();
    double[] marked = new double[worth.length];
    for (int g = 0; g < farm.mobs().size(); g++) {
      Mob mob = farm.mobs().get(g);
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
    assertThat(
            FarmDifference.of(now, decide(lambs(farm, 0.8), 1)).byItself().mean() * marked.length)
        .isCloseTo(sum, within(1e-9 * -sum));
  }

  private static double width(Drawn of) {
    return of.high() - of.low();
  }

  /**
   * What both share falls out: a thousandth off lambs is told though what a year brings spreads
   * widely.
   */
  @Test
  void spread_ofASmallChange_isFarBelowThatOfAYearsResult() {
    FarmDifference small = FarmDifference.of(now, slightly);

    double ofYear = width(now.of(FarmMeasures.OfFarm.STANDING_RESULT));
    assertThat(width(small.together().drawn())).isPositive().isLessThan(0.05 * ofYear);
    assertThat(Math.abs(small.byItself().mean()))
        .isGreaterThan(4 * small.byItself().standardError());
  }

  @Test
  void farms_drawnFromTwoSeeds_areRefused() {
    Decision other = decide(FARM, 2);

    assertThatThrownBy(() -> FarmDifference.of(now, other))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("200 from seed 1 and 200 from seed 2");
  }
}
