package swardcase.draws;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.time.MonthDay;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;
import swardcase.chance.CountedRandom;
import swardcase.chance.Sample;
import swardcase.farm.Farm;
import swardcase.farm.FlockRecord;
import swardcase.outcome.Draw;
import swardcase.outcome.FarmModel;
import swardcase.outcome.OutcomeFunction;
import swardcase.tables.ResponseStory;

class WeighingTest {

  private static final Farms FARM = Farms.of("recorded-farm");
  private static final Draws DRAWS = new Draws(FARM.model(), 1, 20, 5);

  private static FarmModel model(List<FlockRecord> records) {
    Farm farm = FARM.model().farm();
    return new FarmModel(farm.withRecords(farm.mobs(), records), FARM.model().tables());
  }

  private static FlockRecord scanned(int year, int joined, int inLamb) {
    return new FlockRecord(
        year,
        FARM.model().farm().mobs().get(0).name(),
        joined,
        OptionalInt.of(inLamb),
        OptionalInt.empty(),
        Optional.empty(),
        List.of(),
        OptionalDouble.empty(),
        Optional.empty());
  }

  private static FlockRecord scanned(int year, Optional<MonthDay> start, List<String> grazed) {
    return new FlockRecord(
        year,
        FARM.model().farm().mobs().get(0).name(),
        100,
        OptionalInt.of(90),
        OptionalInt.empty(),
        start,
        grazed,
        OptionalDouble.empty(),
        Optional.empty());
  }

  private static double[] inLamb(Draws draws) {
    return Simulation.measured(draws, InLamb::new)[0];
  }

  private static final class InLamb implements Measures {
    @Override
    public int size() {
      return 2;
    }

    @Override
    public void read(OutcomeFunction run, double[] numbers, double[] into) {
      into[0] = run.flock(0).shareNow();
      into[1] = numbers[FARM.model().inputs().place(ResponseStory.KEY)];
    }
  }

  @Test
  void draws_ofAFarmWithoutRecords_areNotWeighed_andThoseBeforeTheRecordsAreTheSame() {
    Draws without = new Draws(model(List.of()), 1, 20, 5);
    assertThat(without.weighing()).isEmpty();
    Draw one = new Draw(FARM.model());
    Draw other = new Draw(FARM.model());
    for (int d = 0; d < DRAWS.count(); d++) {
      without.fill(d, 0, new CountedRandom(0), one);
      DRAWS.withoutRecords().fill(d, 0, new CountedRandom(0), other);
      assertThat(other.numbers).isEqualTo(one.numbers);
      assertThat(other.shares).isDeepEqualTo(one.shares);
      assertThat(other.luck).isDeepEqualTo(one.luck);
      assertThat(other.seasons).isEqualTo(one.seasons);
    }
  }

  @Test
  void pools_growUntilEachHasItsEffectiveDraws_orSayThatTheyStopped() {
    Weighing weighing = DRAWS.weighing().orElseThrow();
    assertThat(weighing.stopped()).isFalse();
    assertThat(weighing.effective()).isGreaterThanOrEqualTo(20 * Weighing.EFFECTIVE);
    assertThat(weighing.made()).isGreaterThan((int) weighing.effective());
  }

  @Test
  void goodScanning_onStrongClover_makesAStoryWithoutLossLikelier() {
    double[] before = Simulation.measured(DRAWS.withoutRecords(), InLamb::new)[1];
    double[] after = Simulation.measured(DRAWS, InLamb::new)[1];
    assertThat(Sample.share(after, of -> of == ResponseStory.NONE.ordinal()))
        .isGreaterThan(1.5 * Sample.share(before, of -> of == ResponseStory.NONE.ordinal()));
    assertThat(Sample.share(after, of -> of == ResponseStory.OUTBREAKS.ordinal()))
        .isLessThan(0.5 * Sample.share(before, of -> of == ResponseStory.OUTBREAKS.ordinal()));
  }

  /** 92 of 100 were recorded; what is expected goes there from far below. */
  @Test
  void expectedScanning_goesToWhatWasRecorded() {
    assertThat(Sample.mean(inLamb(DRAWS.withoutRecords()))).isLessThan(0.8);
    assertThat(Sample.mean(inLamb(DRAWS))).isCloseTo(0.92, within(0.01));
  }

  @Test
  void weighedDraws_areTheSameAgain_whateverTheThreads() {
    assertThat(inLamb(new Draws(FARM.model(), 1, 20, 5))).isEqualTo(inLamb(DRAWS));
  }

  /** Hardly any flock on such clover has 999 of 1,000 in lamb. */
  @Test
  void recordThatContradictsTheFarm_lowersTheEffectiveShare() {
    assertThat(share(999)).isLessThan(0.5 * share(900));
  }

  private static double share(int inLamb) {
    FarmModel model = model(List.of(scanned(2024, 1000, inLamb)));
    Weighing weighing = new Draws(model, 1, 20, 5).weighing().orElseThrow();
    return weighing.effective() / weighing.made();
  }

  @Test
  void draws_noneOfWhichFits_stopAtTheLimit() {
    List<FlockRecord> records = new ArrayList<>();
    for (int year = 2005; year < 2025; year++) {
      records.add(scanned(year, 5000, year % 2 == 0 ? 4990 : 4995));
    }
    Weighing weighing = new Draws(model(records), 1, 2, 5).weighing().orElseThrow();
    assertThat(weighing.stopped()).isTrue();
    assertThat(weighing.made()).isEqualTo(2 * Weighing.MOST_IN_POOL);
  }

  /**
   * Before joining on clean clover alone, more ewes are expected in lamb than as they graze now.
   */
  @Test
  void recordOfAnotherPaddockOrDate_isExpectedByIt() {
    FlockRecord now = scanned(2020, 100, 90);
    FlockRecord onTop = scanned(2021, Optional.empty(), List.of("Top"));
    FlockRecord onCreek = scanned(2022, Optional.empty(), List.of("Creek"));
    FlockRecord aDayOn = scanned(2023, Optional.of(MonthDay.of(5, 21)), List.of());
    FlockRecord onDryFeed = scanned(2024, Optional.of(MonthDay.of(3, 20)), List.of());
    FarmModel model = model(List.of(now, onTop, onCreek, aDayOn, onDryFeed));
    RecordsFit fit = new RecordsFit(model);
    OutcomeFunction run = model.newRun();
    fit.logWeight(run);
    assertThat(fit.years().inLamb(0)).isCloseTo(run.flock(0).shareNow(), within(1e-12));
    assertThat(fit.years().inLamb(2)).isLessThan(fit.years().inLamb(1) - 0.005);
    assertThat(fit.years().inLamb(3)).isCloseTo(fit.years().inLamb(0), within(0.01));
    assertThat(fit.years().inLamb(4)).isGreaterThan(fit.years().inLamb(0) + 0.005);
  }
}
