package swardcase.grazing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.time.MonthDay;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;
import swardcase.FarmCopy;
import swardcase.RandomFarms;
import swardcase.farm.Farm;
import swardcase.farm.HalfMonths;
import swardcase.farm.Mob;
import swardcase.feed.FeedSurface;
import swardcase.outcome.FarmModel;
import swardcase.reproduction.FlockEffect;
import swardcase.search.PlanFarms;

/** Two mobs, of 100 ewes of 50 kg and of 50 ewes of 60 kg: 5000 and 3000 kg of ewes. */
class JoiningWindowTest {

  private final Farm farm = farm();
  private final FarmModel model = new FarmModel(farm, RandomFarms.TABLES);
  private final FlockEffect[] flock = {flock(0), flock(1)};
  private final FeedSurface feed =
      new FeedSurface(
          farm,
          RandomFarms.TABLES,
          model.year(),
          model.inputs(),
          model.demand(),
          model.budget(),
          false);
  private final JoiningWindow window = new JoiningWindow(farm, model.year(), feed, flock);

  private FlockEffect flock(int mob) {
    return new FlockEffect(farm, farm.mobs().get(mob), model.inputs());
  }

  private static Farm farm() {
    Farm base = PlanFarms.demo("mixed-farm");
    Mob mob = base.mobs().get(0);
    return FarmCopy.of(base)
        .mobs(List.of(mob(mob, "first", 100, 50), mob(mob, "second", 50, 60)))
        .build();
  }

  /** Joined from 1 May for five weeks: held from 6 March to 5 June, eight weeks before included. */
  private static Mob mob(Mob of, String name, int ewes, double weightKg) {
    return new Mob(
        name,
        ewes,
        of.ageShares(),
        of.agesSetBy(),
        RandomFarms.exactly("liveweight", weightKg),
        MonthDay.of(5, 1),
        RandomFarms.exactly("length of joining", 5),
        of.pregnantPercent(),
        of.scanningPercent(),
        of.markingPercent(),
        of.scanningBasis(),
        true);
  }

  @Test
  void part_ofWhatEwesEat_isByWeightOfTheMobs() {
    assertThat(window.part(0)).isCloseTo(5000.0 / 8000, within(1e-12));
    assertThat(window.part(1)).isCloseTo(3000.0 / 8000, within(1e-12));
  }

  /**
   * Seven half-months from March to early June grow 10 each and stand after 90 on offer: 160 are
   * there. Ewes eat 4 in each, 28, the second mob three eighths: 10.5 of 160 of what is taken. All
   * stock eat 5 in each: 35 of 160 are used, and the second mob's part of the rest is to spare.
   */
  @Test
  void needed_ofAMob_isItsPartOfWhatIsEatenInItsWeeks() {
    double[] onOffer = filled(7);
    onOffer[3] = 90; // the second half of February, before the weeks start
    window.set(flock, onOffer, filled(10), filled(5), filled(4), 1000);
    assertThat(window.needed(1)).isCloseTo(1000 * 10.5 / 160, within(1e-9));
    assertThat(window.used(1)).isCloseTo(35.0 / 160, within(1e-12));
    assertThat(window.spare(1)).isCloseTo(125.0 / 160 * 3 / 8, within(1e-12));
    window.set(flock, filled(0), filled(0), filled(5), filled(4), 1000);
    assertThat(window.needed(1)).isZero();
    assertThat(window.spare(1)).isZero();
  }

  /** What is closed to a mob is eaten by the others, and to all by other stock. */
  @Test
  void lost_whereAMobIsOff_isWhatTheOthersHaveNoAppetiteFor() {
    double grown = 0;
    double inWeeks = 0;
    double others = 0;
    double first = 0;
    for (int p = 0; p < HalfMonths.COUNT; p++) {
      grown += model.year().growthKgDmPerHa(p);
      if (flock[0].isHeld(p)) {
        inWeeks += model.year().growthKgDmPerHa(p);
        others += feed.otherAppetiteKgDmPerHa(p);
        first += feed.eweAppetiteKgDmPerHa(p) * 5 / 8;
      }
    }
    for (double share : new double[] {0, 0.2, 0.6, 1}) {
      assertThat(window.lost(2, share, 0))
          .isCloseTo(Math.max(0, share * inWeeks - others) / grown, within(1e-12));
      assertThat(window.lost(1, share, 0))
          .isCloseTo(Math.max(0, share * inWeeks - others - first) / grown, within(1e-12));
      assertThat(window.lost(1, share, 0)).isLessThanOrEqualTo(window.lost(2, share, 0));
    }
    assertThat(window.lost(2, 0, 1)).isPositive();
  }

  private static double[] filled(double value) {
    double[] of = new double[HalfMonths.COUNT];
    Arrays.fill(of, value);
    return of;
  }
}
