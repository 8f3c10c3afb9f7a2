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
import swardcase.outcome.FarmModel;
import swardcase.reproduction.FlockEffect;
import swardcase.search.PlanFarms;

/** Two mobs, of 100 ewes of 50 kg and of 50 ewes of 60 kg: 5000 and 3000 kg of ewes. */
class JoiningFeedTest {

  private static final boolean[][] GRAZES = {{true, true}, {true, false}};

  private final Farm farm = farm();
  private final JoiningFeed feed = new JoiningFeed(farm, GRAZES);

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
        of.scanningBasis());
  }

  @Test
  void part_ofAPaddockThatBothGraze_isByWeightOfTheMobs() {
    assertThat(feed.part(0, 0)).isCloseTo(5000.0 / 8000, within(1e-12));
    assertThat(feed.part(1, 0)).isCloseTo(3000.0 / 8000, within(1e-12));
    assertThat(feed.part(0, 1)).isEqualTo(1);
    assertThat(feed.part(1, 1)).isZero();
  }

  /**
   * Seven half-months from March to early June grow 10 each and stand after 90 on offer: 160 are
   * there. Ewes eat 4 in each, 28, the second mob three eighths: 10.5 of 160 of what is taken.
   */
  @Test
  void needed_ofAMob_isItsPartOfWhatIsEatenInTheHeldWeeks() {
    FlockEffect effect =
        new FlockEffect(farm, farm.mobs().get(1), new FarmModel(farm, RandomFarms.TABLES).inputs());
    double[] onOffer = new double[HalfMonths.COUNT];
    double[] growth = new double[HalfMonths.COUNT];
    double[] eaten = new double[HalfMonths.COUNT];
    Arrays.fill(onOffer, 7);
    onOffer[3] = 90; // the second half of February, before the weeks start
    Arrays.fill(growth, 10);
    Arrays.fill(eaten, 4);
    feed.set(1, effect, onOffer, growth, eaten, 1000, 900);
    assertThat(feed.needed(1)).isCloseTo(1000 * 10.5 / 160, within(1e-9));
    feed.set(1, effect, onOffer, growth, eaten, 1000, 20);
    assertThat(feed.needed(1)).as("no more than it finds now").isEqualTo(20);
    double[] none = new double[HalfMonths.COUNT];
    feed.set(1, effect, none, none, eaten, 1000, 20);
    assertThat(feed.needed(1)).isZero();
  }
}
