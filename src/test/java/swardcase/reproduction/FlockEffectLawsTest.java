package swardcase.reproduction;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.time.MonthDay;
import java.util.Arrays;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import swardcase.FarmCopy;
import swardcase.RandomFarms;
import swardcase.evidence.UncertainNumbers;
import swardcase.farm.Farm;
import swardcase.farm.HalfMonths;
import swardcase.farm.Mob;
import swardcase.farm.ScanningBasis;
import swardcase.search.PlanFarms;

/** One mob at strengths that lie on the grid, against the calculators of reproduction. */
class FlockEffectLawsTest {

  private static final double SPACING = 0.01;
  private static final double STRONGEST = SPACING * (StrengthGrid.NODES - 1);
  private static final double WEEKS = 5;
  private static final double TOLD = 0.8;
  private static final double EXACT = 1e-10;

  private UncertainNumbers inputs;
  private final double[] green = new SplittableRandom(5).doubles(24, 0.1, 1).toArray();

  /** Joined from 1 May for five weeks: held from 6 March to 5 June. */
  private FlockEffect effect(ScanningBasis basis) {
    Farm base = PlanFarms.demo("mixed-farm");
    Mob of = base.mobs().get(0);
    Mob mob =
        new Mob(
            "ewes",
            100,
            List.of(0.5, 0.3, 0.2),
            of.agesSetBy(),
            of.liveweightKg(),
            MonthDay.of(5, 1),
            RandomFarms.exactly("length of joining", WEEKS),
            RandomFarms.exactly("ewes in lamb", 100 * TOLD),
            RandomFarms.exactly("lambs scanned", 120),
            RandomFarms.exactly("lambs marked", 100),
            basis,
            true);
    Farm farm = FarmCopy.of(base).mobs(List.of(mob)).build();
    UncertainNumbers.Builder numbers = new UncertainNumbers.Builder();
    FlockEffect.enter(numbers, mob, PlanFarms.TABLES);
    inputs = numbers.build();
    return new FlockEffect(farm, mob, inputs);
  }

  private FlockEffect set(ScanningBasis basis, double now) {
    FlockEffect effect = effect(basis);
    effect.set(inputs.likely(), green, now, STRONGEST);
    return effect;
  }

  private double number(String key) {
    return inputs.likely()[inputs.place("oestrogen." + key)];
  }

  private double[] doses(FlockEffect effect, double strength, double held) {
    double[] doses = new double[HalfMonths.COUNT];
    Arrays.setAll(doses, p -> green[p] * (effect.isHeld(p) ? held : strength));
    return doses;
  }

  private double inLamb(double unaffected, double[] doses, int day, double sterile) {
    double[] left = new double[JoiningWalk.cycles(WEEKS)];
    ByFormula.multipliers(
        doses,
        day,
        WEEKS,
        number("d50"),
        number("steepness"),
        number("ramp-days"),
        number("lag-days"),
        number("half-life-days"),
        left);
    double perCycle = Pregnancy.perCycleConception(unaffected, WEEKS);
    return Pregnancy.pregnantShare(perCycle, WEEKS, left, sterile);
  }

  /** Share of ewes that go barren in a season at these doses. */
  private double barren(double[] doses) {
    double exposure =
        ByFormula.seasonExposure(
            doses, number("d50"), number("steepness"), number("sterility-reference-dose"));
    return ByFormula.sterileShare(exposure, number("sterility-q"));
  }

  private static int day(int month, int day) {
    return HalfMonths.dayOfYear(MonthDay.of(month, day));
  }

  @Test
  void isHeld_eightWeeksBeforeJoiningToItsEnd() {
    FlockEffect effect = effect(ScanningBasis.OBSERVED);
    for (int p = 0; p < HalfMonths.COUNT; p++) {
      boolean marchToEarlyJune = p >= 4 && p <= 10;
      assertThat(effect.isHeld(p)).as("half-month %s", p).isEqualTo(marchToEarlyJune);
    }
  }

  @Test
  void shareNow_ofAnObservedMob_isWhatItsFarmerSaw() {
    for (double now : new double[] {0, 0.05, 0.2}) {
      FlockEffect effect = set(ScanningBasis.OBSERVED, now);
      double spared = 1 - barren(doses(effect, now, now));
      double whole = 0.5 * spared + 0.3 * spared * spared + 0.2 * spared * spared * spared;
      assertThat(effect.sparedNow()).isCloseTo(spared, within(EXACT));
      assertThat(effect.sterileNow()).isCloseTo(1 - whole, within(EXACT));
      assertThat(effect.shareNow()).isCloseTo(TOLD, within(EXACT));
      double seen = inLamb(effect.unaffectedShare(), doses(effect, now, now), day(5, 1), 1 - whole);
      assertThat(seen).isCloseTo(TOLD, within(EXACT));
    }
  }

  @Test
  void shareNow_ofAMobToldWithoutEffect_isBelowIt() {
    ScanningBasis[] all = ScanningBasis.values();
    ScanningBasis told = all[0] == ScanningBasis.OBSERVED ? all[1] : all[0];
    FlockEffect effect = set(told, 0.2);
    double spared = 1 - barren(doses(effect, 0.2, 0.2));
    double whole = 0.5 * spared + 0.3 * spared * spared + 0.2 * spared * spared * spared;
    assertThat(effect.unaffectedShare()).isEqualTo(TOLD);
    assertThat(effect.shareNow())
        .isCloseTo(inLamb(TOLD, doses(effect, 0.2, 0.2), day(5, 1), 1 - whole), within(EXACT));
  }

  /** Ages of one, two and three joinings carry the seasons before the year with them. */
  @Test
  void share_ofYearsInTurn_carriesTheSeasonsOfEachAge() {
    FlockEffect effect = set(ScanningBasis.OBSERVED, 0.2);
    double[] strength = {0.3, 0.1, 0, STRONGEST, 0.25};
    double[] held = {0.1, 0.1, 0.05, STRONGEST, 0};
    double[] spared = new double[strength.length];
    double[] share = new double[strength.length];
    for (int t = 0; t < strength.length; t++) {
      double[] doses = doses(effect, strength[t], held[t]);
      spared[t] = 1 - barren(doses);
      double one = t >= 1 ? spared[t - 1] : effect.sparedNow();
      double two = one * (t >= 2 ? spared[t - 2] : effect.sparedNow());
      double three = two * (t >= 3 ? spared[t - 3] : effect.sparedNow());
      double sterile = 1 - (0.5 * one + 0.3 * two + 0.2 * three);
      share[t] = effect.share(t, strength[t], held[t]);
      assertThat(share[t])
          .isCloseTo(inLamb(effect.unaffectedShare(), doses, day(5, 1), sterile), within(EXACT));
    }
    effect.keepYears();
    for (int t = 0; t < 4; t++) {
      effect.share(t, 0, 0);
    }
    assertThat(effect.share(4, strength[4], held[4])).isGreaterThan(share[4]);
    effect.resumeFrom(4);
    assertThat(effect.share(4, strength[4], held[4])).isEqualTo(share[4]);
  }

  /** Nodes are solved where a strength between them is asked for first. */
  @Test
  void fertileAndSeason_betweenNodes_areReadByStraightLines() {
    double a = 0.2;
    double b = 0.1;
    double[][] shares = {{0.3, 0.8}, {0, 0.8}, {0.3, 0}};
    for (double[] share : shares) {
      FlockEffect effect = set(ScanningBasis.OBSERVED, 0.5);
      double u = share[0];
      double v = share[1];
      double fertile = effect.fertile(a + u * SPACING, b + v * SPACING);
      double season = effect.decay(a + u * SPACING, b + v * SPACING);
      double fertileLine =
          (1 - u) * (1 - v) * effect.fertile(a, b)
              + u * (1 - v) * effect.fertile(a + SPACING, b)
              + (1 - u) * v * effect.fertile(a, b + SPACING)
              + u * v * effect.fertile(a + SPACING, b + SPACING);
      double seasonLine =
          (1 - u) * (1 - v) * effect.decay(a, b)
              + u * (1 - v) * effect.decay(a + SPACING, b)
              + (1 - u) * v * effect.decay(a, b + SPACING)
              + u * v * effect.decay(a + SPACING, b + SPACING);
      assertThat(fertile).isCloseTo(fertileLine, within(EXACT));
      assertThat(season).isPositive().isCloseTo(seasonLine, within(EXACT));
    }
  }

  @Test
  void lossOfJoining_onAnyDay_isTheEwesNotInLambForTheTimeBeing() {
    FlockEffect effect = set(ScanningBasis.OBSERVED, 0.2);
    double[] doses = doses(effect, 0.4, 0.3);
    for (int day : new int[] {day(5, 1), day(2, 10), day(2, 10), day(11, 20)}) {
      double lost = effect.unaffectedShare() - inLamb(effect.unaffectedShare(), doses, day, 0);
      assertThat(lost).isPositive();
      assertThat(effect.lossOfJoining(doses, day))
          .isCloseTo((1 - effect.sterileNow()) * lost, within(EXACT));
    }
  }

  @Test
  void barrenAfterYearOn_aStrength_isTheShareOfItsSeason() {
    FlockEffect effect = set(ScanningBasis.OBSERVED, 0.2);
    assertThat(effect.barrenAfterYearOn(effect.power(0.5)))
        .isCloseTo(barren(doses(effect, 0.5, 0.5)), within(EXACT));
  }

  @Test
  void doseAtJoining_isTheMeanOfItsDays() {
    FlockEffect effect = set(ScanningBasis.OBSERVED, 0.2);
    double sum = 0;
    for (int day = 0; day < 35; day++) {
      sum += effect.doseNow(HalfMonths.ofDay(day(5, 1) + day));
    }
    assertThat(effect.doseAtJoining()).isCloseTo(sum / 35, within(EXACT));
    assertThat(effect.doseNow(3)).isCloseTo(0.2 * green[3], within(EXACT));
  }

  @Test
  void set_again_forgetsTheNodes() {
    FlockEffect effect = set(ScanningBasis.OBSERVED, 0.2);
    double before = effect.fertile(0.4, 0.3);
    double[] x = inputs.likely();
    x[inputs.place("oestrogen.d50")] *= 0.9;
    effect.set(x, green, 0.2, STRONGEST);
    double after = effect.fertile(0.4, 0.3);
    assertThat(after).isNotEqualTo(before);
    FlockEffect fresh = effect(ScanningBasis.OBSERVED);
    fresh.set(x, green, 0.2, STRONGEST);
    assertThat(fresh.fertile(0.4, 0.3)).isEqualTo(after);
  }
}
