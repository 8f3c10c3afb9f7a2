package swardcase.reproduction;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import swardcase.RandomFarms;
import swardcase.Records;
import swardcase.evidence.UncertainNumbers;
import swardcase.farm.Farm;
import swardcase.farm.Mob;
import swardcase.outcome.FarmModel;
import swardcase.outcome.OutcomeFunction;
import swardcase.reproduction.DryEweSale.Rule;

class DryEweSaleTest {

  private static final int YEARS = 6;
  private static final Farm FARM = farm();
  private static final UncertainNumbers NUMBERS = numbers();

  private final double[] x = NUMBERS.likely();

  private static Farm farm() {
    Farm farm = RandomFarms.demo("risky-farm");
    return farm.withFinance(farm.finance().withHorizonYears(YEARS));
  }

  private static UncertainNumbers numbers() {
    UncertainNumbers.Builder numbers = new UncertainNumbers.Builder();
    DryEweSale.enter(numbers, FARM, RandomFarms.TABLES);
    numbers.add("price.ewe", FARM.prices().replacementEwe());
    return numbers.build();
  }

  private void put(String key, double value) {
    x[NUMBERS.place(key)] = value;
  }

  private void scan(double inLambRight, double dryRight) {
    put("flock.scan-in-lamb-right", inLambRight);
    put("flock.scan-dry-right", dryRight);
  }

  private DryEweSale sale(double sparedNow, Double... ageShares) {
    Mob mob = Records.with(FARM.mobs().get(0), "ageShares", List.of(ageShares));
    DryEweSale sale = new DryEweSale(FARM, mob, NUMBERS);
    sale.set(x, sparedNow);
    return sale;
  }

  /** The number worked in the javadoc: d 0.96, p 0.98, f 0.9 and 10 of 100 ewes barren. */
  @Test
  void sold_afterOneDryYear_areTheBarrenAndThoseDryByChance() {
    scan(0.98, 0.96);
    DryEweSale sale = sale(0.9, 1.0);
    assertThat(sale.share(0, Rule.AFTER_ONE, 0.9, 0.9)).isCloseTo(0.81, within(1e-12));
    assertThat(sale.sold()).isCloseTo(0.0960 + 0.9 * 0.114, within(1e-12));
    assertThat(sale.soldInLamb()).isCloseTo(0.9 * 0.018, within(1e-12));
    assertThat(sale.replaced()).as("a single age leaves anyway").isZero();
  }

  /**
   * Money by hand beside the scan: three quarters of the price got back, lambs lost, dry cost
   * spared.
   */
  @Test
  void cost_ofSelling_countsEachThingOnce() {
    scan(0.98, 0.96);
    put("flock.dry-ewe-sale", 0.75);
    put("price.ewe", 200);
    DryEweSale sale = sale(0.9, 0.5, 0.5);
    sale.share(0, Rule.AFTER_ONE, 0.9, 0.9);
    double young = 0.1 * 0.96 + 0.9 * 0.114;
    double old = 0.19 * 0.96 + 0.81 * 0.114;
    double inLamb = 0.018 * (0.9 + 0.81) / 2;
    assertThat(sale.replaced()).isCloseTo(young / 2, within(1e-12));
    assertThat(sale.sold()).isCloseTo((young + old) / 2, within(1e-12));
    assertThat(sale.costPerEwe(130, 10))
        .isCloseTo(
            young / 2 * 50 + inLamb * 130 - ((young + old) / 2 - inLamb) * 10, within(1e-12));
  }

  /** One place in a mob, followed through every way its ewe can fare, chance by chance. */
  private final class Ways {

    private final Rule rule;
    private final double[] kept;
    private final double[] fertile;
    private final double[] inLamb = new double[YEARS];
    private final double[] sold = new double[YEARS];

    Ways(Rule rule, double[] kept, double[] fertile) {
      this.rule = rule;
      this.kept = kept;
      this.fertile = fertile;
    }

    void follow(int year, int last, boolean barren, boolean wasDry, double chance) {
      if (year > last || chance == 0) {
        return;
      }
      if (!barren) {
        season(year, last, wasDry, chance);
        return;
      }
      scanned(year, last, true, false, wasDry, chance);
    }

    private void season(int year, int last, boolean wasDry, double chance) {
      double stays = chance * kept[year];
      scanned(year, last, true, false, wasDry, chance - stays);
      inLamb[year] += stays * fertile[year];
      scanned(year, last, false, true, wasDry, stays * fertile[year]);
      scanned(year, last, false, false, wasDry, stays * (1 - fertile[year]));
    }

    private void scanned(
        int year, int last, boolean barren, boolean pregnant, boolean wasDry, double chance) {
      double right =
          x[NUMBERS.place(pregnant ? "flock.scan-in-lamb-right" : "flock.scan-dry-right")];
      double dry = chance * (pregnant ? 1 - right : right);
      follow(year + 1, last, barren, false, chance - dry);
      boolean goes = rule == Rule.AFTER_ONE || wasDry;
      if (goes) {
        sold[year] += dry;
      }
      follow(year + 1, last, !goes && barren, !goes, dry);
    }
  }

  @ParameterizedTest
  @EnumSource(Rule.class)
  void years_ofAMobOfOneJoiningAge_agreeWithEveryWayAEweCanFare(Rule rule) {
    SplittableRandom random = new SplittableRandom(7);
    for (int round = 0; round < 20; round++) {
      scan(0.9 + 0.1 * random.nextDouble(), 0.8 + 0.2 * random.nextDouble());
      double now = random.nextDouble();
      double[] kept = new double[YEARS];
      double[] fertile = new double[YEARS];
      for (int t = 0; t < YEARS; t++) {
        kept[t] = t == 0 ? now : 0.5 + 0.5 * random.nextDouble();
        fertile[t] = random.nextDouble();
      }
      // Those of the first age enter each year: the place that enters in year 0 is asked for alone.
      for (int age = 0; age < YEARS; age++) {
        Double[] ages = new Double[YEARS];
        Arrays.fill(ages, 0.0);
        ages[age] = 1.0;
        DryEweSale sale = sale(now, ages);
        double share = 0;
        for (int t = 0; t <= age; t++) {
          share = sale.share(t, rule, kept[t], fertile[t]);
        }
        Ways ways = new Ways(rule, kept, fertile);
        ways.follow(0, age, false, false, 1);
        assertThat(share).isCloseTo(ways.inLamb[age], within(1e-12));
        assertThat(sale.sold()).isCloseTo(ways.sold[age], within(1e-12));
      }
    }
  }

  /** Laws on any mob and years; what is sold is summed over the years. */
  @Test
  void years_ofAnyMob_keepTheLaws() {
    SplittableRandom random = new SplittableRandom(11);
    for (int round = 0; round < 200; round++) {
      boolean exact = random.nextInt(4) == 0;
      scan(exact ? 1 : 0.9 + 0.1 * random.nextDouble(), exact ? 1 : random.nextDouble());
      double now = random.nextDouble();
      DryEweSale one = sale(now, 0.3, 0.3, 0.2, 0.2);
      DryEweSale two = sale(now, 0.3, 0.3, 0.2, 0.2);
      double[] spared = new double[YEARS];
      double soldAfterOne = 0;
      double soldAfterTwo = 0;
      for (int t = 0; t < YEARS; t++) {
        spared[t] = random.nextDouble();
        double before = t == 0 ? now : spared[t - 1];
        double fertile = random.nextDouble();
        double none = fertile * whole(t, now, spared, 0.3, 0.3, 0.2, 0.2);
        double byOne = one.share(t, Rule.AFTER_ONE, before, fertile);
        double byTwo = two.share(t, Rule.AFTER_TWO, before, fertile);
        assertThat(byTwo).isGreaterThanOrEqualTo(none - 1e-12);
        assertThat(byOne).isGreaterThanOrEqualTo(byTwo - 1e-12).isLessThanOrEqualTo(fertile);
        soldAfterOne += one.sold();
        soldAfterTwo += two.sold();
        assertThat(soldAfterOne).isGreaterThanOrEqualTo(soldAfterTwo - 1e-12);
        for (DryEweSale sale : List.of(one, two)) {
          assertThat(sale.sold()).isBetween(0.0, 1.0);
          assertThat(sale.replaced()).isBetween(0.0, sale.sold());
          assertThat(sale.soldInLamb()).isBetween(0.0, exact ? 0.0 : sale.sold());
        }
      }
    }
  }

  /** Ewes in lamb without a sale, as a share of sound ewes' own. */
  private static double whole(int year, double now, double[] spared, double... ageShares) {
    double whole = 0;
    double product = 1;
    for (int age = 0; age < ageShares.length; age++) {
      int before = year - 1 - age;
      product *= before >= 0 ? spared[before] : now;
      whole += ageShares[age] * product;
    }
    return whole;
  }

  /**
   * Without oestrogen nobody is barren: selling changes no share (an ordinary flock gained about
   * 0.01 lamb a ewe and year by it, South African Journal of Animal Science, which is not counted),
   * and where no ewe is dry and the scan is right nothing is sold.
   */
  @Test
  void mob_withoutOestrogen_gainsNothing_andWithoutDryEwesSellsNothing() {
    scan(1, 1);
    DryEweSale sale = sale(1, 0.4, 0.3, 0.3);
    for (int t = 0; t < YEARS; t++) {
      double fertile = t < 3 ? 1 : 0.9;
      assertThat(sale.share(t, Rule.AFTER_ONE, 1, fertile)).isCloseTo(fertile, within(1e-12));
      assertThat(sale.sold()).isCloseTo(1 - fertile, within(1e-12));
      assertThat(sale.soldInLamb()).isZero();
    }
  }

  @Test
  void years_goneOnFromThoseKept_areTheSame() {
    DryEweSale sale = sale(0.9, 0.4, 0.3, 0.3);
    double[] shares = new double[YEARS];
    for (int t = 0; t < YEARS; t++) {
      shares[t] = sale.share(t, Rule.AFTER_TWO, 0.8 + 0.02 * t, 0.9);
    }
    sale.keepYears();
    for (int from = 1; from < YEARS; from++) {
      sale.share(0, Rule.AFTER_ONE, 0.2, 0.3);
      sale.resumeFrom(from);
      for (int t = from; t < YEARS; t++) {
        assertThat(sale.share(t, Rule.AFTER_TWO, 0.8 + 0.02 * t, 0.9)).isEqualTo(shares[t]);
      }
    }
  }

  /** A mob of the demo farm with the most oestrogen, its paddocks as they are. */
  @Test
  void mob_onOestrogenicClover_recoversAYearAfterTheFirstSale() {
    OutcomeFunction run = new FarmModel(FARM, RandomFarms.TABLES).newRun();
    FlockEffect effect = run.flock(0);
    double strength = run.greenDose(0);
    DryEweSale sale = new DryEweSale(FARM, effect.mob(), NUMBERS);
    sale.set(x, effect.sparedNow());
    double[] kept = new double[YEARS];
    for (int t = 0; t < YEARS; t++) {
      kept[t] = effect.share(t, strength, strength);
    }
    for (int t = 0; t < YEARS; t++) {
      double sold = effect.share(t, strength, strength, sale, Rule.AFTER_ONE);
      if (t == 0) {
        assertThat(sold).isCloseTo(kept[0], within(1e-12));
      } else {
        assertThat(sold).isGreaterThan(kept[t] + 0.01);
      }
    }
  }
}
