package swardcase.outcome;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import swardcase.FarmCopy;
import swardcase.RandomFarms;
import swardcase.evidence.Assumption;
import swardcase.evidence.UncertainNumbers;
import swardcase.farm.Action;
import swardcase.farm.ActionKind;
import swardcase.farm.ActionNumber;
import swardcase.farm.CostLine;
import swardcase.farm.CostLine.Phase;
import swardcase.farm.Farm;
import swardcase.farm.Paddock;
import swardcase.feed.GrowthYear;
import swardcase.search.PlanFarms;
import swardcase.sward.StandingClover;

/**
 * Actions with round numbers on the mixed farm, followed by hand: a year of run-down with 0.7 of
 * the growth, then a sowing that takes in 0.8 of cases and grows 0.6 and 0.9 at first. Costs are 10
 * in a run-down year, 100 at sowing, 3 every year.
 */
class ActionPathsTest {

  private static final int KEEP = 0;
  private static final int RESOW = 1;
  private static final int CROP = 2;
  private static final int OVERSOW = 3;
  private static final int HOLD = 4;
  private static final int CROP_ONLY = 5;
  private static final int THIN = 6;
  private static final double TAKES = 0.8;
  private static final double TARGET = 0.5;
  static final int YEARS = 8;

  private final Farm farm = farm(PlanFarms.demo("mixed-farm"), Optional.of(TARGET));
  private final UncertainNumbers inputs = new FarmModel(farm, RandomFarms.TABLES).inputs();
  private final GrowthYear year = new GrowthYear(farm);
  private final StandingClover stands =
      new StandingClover(
          farm, RandomFarms.TABLES, inputs, StandingClover.compositions(farm, RandomFarms.TABLES));
  private final ActionPaths paths = new ActionPaths(farm, inputs, stands, year);
  private final double[] x = inputs.likely();

  ActionPathsTest() {
    stands.set(x);
    paths.set(x, false);
  }

  /** A farm with these actions, counted over some years. */
  static Farm farm(Farm base, Optional<Double> target) {
    List<Action> actions = new ArrayList<>();
    actions.add(action("keep", ActionKind.KEEP, 0, false, target));
    actions.add(action("resow", ActionKind.RESOW, 1, false, target));
    actions.add(action("crop", ActionKind.RESOW, 1, true, target));
    actions.add(action("oversow", ActionKind.OVERSOW, 0, false, target));
    actions.add(action("hold", ActionKind.KEEP_OFF, 0, false, target));
    actions.add(action("crop only", ActionKind.CROP, 2, true, target));
    actions.add(action("thin", ActionKind.THIN, 0, false, target));
    Farm farm = FarmCopy.of(base).actions(actions).build();
    return farm.withFinance(farm.finance().withHorizonYears(YEARS));
  }

  private static Action action(
      String key, ActionKind kind, int runDown, boolean cropped, Optional<Double> target) {
    boolean sows = kind.seeds();
    List<CostLine> costs = new ArrayList<>();
    if (kind != ActionKind.KEEP) {
      costs.add(cost("fence", Phase.YEARLY, 1));
      costs.add(labour(Phase.YEARLY, 4));
      costs.add(cost("water", Phase.YEARLY, 2));
    }
    if (sows) {
      costs.add(cost("spray", Phase.RUN_DOWN, 10));
      costs.add(cost("seed", Phase.SOWING, 60));
      costs.add(cost("drill", Phase.SOWING, 40));
      costs.add(labour(Phase.RUN_DOWN, 7));
      costs.add(labour(Phase.SOWING, 30));
    }
    Map<ActionNumber, Assumption> numbers = new EnumMap<>(ActionNumber.class);
    numbers.put(ActionNumber.RUN_DOWN_GROWTH, value("left", 0.7));
    numbers.put(ActionNumber.GROWTH_YEAR_ONE, value("one", 0.6));
    numbers.put(ActionNumber.GROWTH_YEAR_TWO, value("two", 0.9));
    numbers.put(ActionNumber.SEED_SET, value("set", 0.1));
    numbers.put(ActionNumber.SEEDLING_KILL, value("kill", 0.95));
    numbers.put(ActionNumber.BURIED_SEED, value("buried", 0));
    numbers.put(ActionNumber.SOWN_SEED, value("sown", 10));
    target.ifPresent(share -> numbers.put(ActionNumber.CLOVER_SHARE, value("target", share)));
    numbers.put(ActionNumber.ESTABLISHMENT_CHANCE, value("takes", TAKES));
    numbers.put(ActionNumber.CROP_MARGIN, value("margin", 150));
    return new Action(
        key,
        key,
        kind,
        kind == ActionKind.RESOW || kind == ActionKind.CROP,
        runDown,
        cropped,
        2,
        numbers,
        costs,
        Optional.empty());
  }

  private static CostLine cost(String name, Phase phase, double perHa) {
    return new CostLine(name, phase, false, value(name, perHa));
  }

  private static CostLine labour(Phase phase, double perHa) {
    String name = "labour, " + phase.label();
    return new CostLine(name, phase, true, value(name, perHa));
  }

  private static Assumption value(String name, double value) {
    return RandomFarms.exactly(name, value);
  }

  private List<Integer> arable() {
    List<Integer> arable = new ArrayList<>();
    for (int i = 0; i < farm.paddocks().size(); i++) {
      if (farm.paddocks().get(i).arable()) {
        arable.add(i);
      }
    }
    assertThat(arable).hasSizeBetween(1, farm.paddocks().size() - 1);
    return arable;
  }

  @Test
  void labour_ofAResowing_standsApartInTheSameYears() {
    for (int i : arable()) {
      assertThat(paths.labourPerHa(paths.at(i, RESOW, 0))).isCloseTo(11, within(1e-9));
      assertThat(paths.labourPerHa(paths.at(i, RESOW, 1))).isCloseTo(34, within(1e-9));
      assertThat(paths.labourPerHa(paths.at(i, RESOW, 2))).isCloseTo(4 + 0.2 * 30, within(1e-9));
      assertThat(paths.labourPerHa(paths.at(i, RESOW, 3))).isCloseTo(4, within(1e-9));
      assertThat(paths.labourPerHa(paths.at(i, KEEP, 0))).isZero();
      assertThat(paths.labourPerHa(paths.at(i, HOLD, 5))).isCloseTo(4, within(1e-9));
      assertThat(paths.labourPerHa(paths.at(i, OVERSOW, 0))).isCloseTo(34, within(1e-9));
    }
  }

  @Test
  void costs_ofAResowing_comeInTheirYearsAndAgainIfItFails() {
    for (int i : arable()) {
      assertThat(paths.costPerHa(paths.at(i, RESOW, 0))).isCloseTo(13, within(1e-9));
      assertThat(paths.costPerHa(paths.at(i, RESOW, 1))).isCloseTo(103, within(1e-9));
      assertThat(paths.costPerHa(paths.at(i, RESOW, 2))).isCloseTo(3 + 0.2 * 100, within(1e-9));
      assertThat(paths.costPerHa(paths.at(i, RESOW, 3))).isCloseTo(3, within(1e-9));
      assertThat(paths.costPerHa(paths.at(i, KEEP, 0))).isZero();
      assertThat(paths.costPerHa(paths.at(i, HOLD, 5))).isCloseTo(3, within(1e-9));
      assertThat(paths.costPerHa(paths.at(i, OVERSOW, 0))).isCloseTo(103, within(1e-9));
      assertThat(paths.costPerHa(paths.at(i, OVERSOW, 1))).isCloseTo(23, within(1e-9));
    }
  }

  @Test
  void margin_ofACropYear_isEarnedInItOnly() {
    for (int i : arable()) {
      double wet = RandomFarms.TABLES.parameter("crop.waterlogged-factor").likely();
      double margin = 150 * (farm.paddocks().get(i).waterlogged() ? wet : 1);
      assertThat(paths.marginPerHa(paths.at(i, CROP, 0))).isCloseTo(margin, within(1e-9));
      assertThat(paths.marginPerHa(paths.at(i, CROP, 1))).isZero();
      assertThat(paths.marginPerHa(paths.at(i, RESOW, 0))).isZero();
      assertThat(paths.other(paths.at(i, CROP, 0))).as("nothing to graze").isZero();
      assertThat(paths.winter(paths.at(i, CROP, 0))).isZero();
    }
  }

  /** Growth of the months outside winter, in which cultivars do not differ. */
  @Test
  void otherGrowth_ofAResowing_followsTheYearsOfBothStands() {
    double open = 1 - year.otherShareAfterBreak(2);
    assertThat(open).isBetween(0.1, 0.95);
    for (int i : arable()) {
      assertThat(paths.other(paths.at(i, RESOW, 0))).isCloseTo(0.7, within(1e-9));
      assertThat(paths.other(paths.at(i, RESOW, 1))).isCloseTo(0.6 * open, within(1e-9));
      assertThat(paths.other(paths.at(i, RESOW, 2)))
          .isCloseTo(0.8 * 0.9 + 0.2 * 0.6 * open, within(1e-9));
      assertThat(paths.other(paths.at(i, RESOW, 3))).isCloseTo(0.8 + 0.2 * 0.9, within(1e-9));
      assertThat(paths.other(paths.at(i, RESOW, 4))).isCloseTo(1, within(1e-9));
      assertThat(paths.other(paths.at(i, KEEP, 3))).isEqualTo(1);
    }
  }

  /** Clover share in a year of the path of a sowing after one year of run-down, docs/method. */
  private double sownClover(int k) {
    double first = RandomFarms.TABLES.parameter("sowing.clover-year-one").likely();
    double years = RandomFarms.TABLES.parameter("sowing.clover-years").likely();
    return TARGET * (1 - (1 - first) * Math.exp(-(k - 1) / years));
  }

  /** With a profile of one plant per m2, so that no stand is thin. */
  @Test
  void winterGrowth_ofAResowing_countsTheCloverOfEachYear() {
    x[inputs.place("density.reference")] = 1;
    paths.set(x, false);
    double open = 1 - year.winterShareAfterBreak(2);
    for (int i : arable()) {
      double now = x[stands.cloverShareInput(i)];
      double[] plants = paths.plantShares(i, RESOW);
      assertThat(paths.winter(paths.at(i, KEEP, 0)))
          .isCloseTo(factor(i, now, stands.shares(i), 0), within(1e-9));
      assertThat(paths.winter(paths.at(i, RESOW, 0)))
          .isCloseTo(0.7 * factor(i, now, stands.shares(i), 0), within(1e-9));
      assertThat(paths.winter(paths.at(i, RESOW, 1)))
          .isCloseTo(0.6 * open * factor(i, sownClover(1), plants, 1), within(1e-9));
      assertThat(paths.winter(paths.at(i, RESOW, 2)))
          .isCloseTo(
              TAKES * 0.9 * factor(i, sownClover(2), plants, 2)
                  + (1 - TAKES) * 0.6 * open * factor(i, sownClover(1), plants, 1),
              within(1e-9));
      assertThat(paths.winter(paths.at(i, RESOW, 5)))
          .isCloseTo(
              TAKES * factor(i, sownClover(5), plants, 5)
                  + (1 - TAKES) * factor(i, sownClover(4), plants, 4),
              within(1e-9));
    }
  }

  private double factor(int i, double clover, double[] shares, int k) {
    double yield = 0;
    int n = stands.species(i);
    for (int c = 0; c < n; c++) {
      yield += shares[k * n + c] * stands.cultivar(i, c).relativeWinterYield().likely();
    }
    return 1 - clover * (1 - yield);
  }

  @Test
  void strengthAndOldShare_ofAPath_areThoseOfItsClover() {
    double leaf = RandomFarms.TABLES.parameter("dose.leaf-share").likely();
    double wet = RandomFarms.TABLES.parameter("dose.waterlogged-factor").likely();
    double strongest = 0;
    for (int i = 0; i < farm.paddocks().size(); i++) {
      Paddock paddock = farm.paddocks().get(i);
      double scale = leaf * (paddock.waterlogged() ? wet : 1);
      double now = paddock.cloverShare().likely();
      double[] standing = stands.shares(i);
      assertThat(paths.strength(paths.at(i, KEEP, 3)))
          .isCloseTo(scale * now * percent(i, standing, 0), within(1e-9));
      assertThat(paths.oldShare(paths.at(i, HOLD, 3))).isCloseTo(old(i, standing, 0), within(1e-9));
      if (paddock.arable()) {
        double[] plants = paths.plantShares(i, RESOW);
        assertThat(paths.strength(paths.at(i, RESOW, 0)))
            .isCloseTo(scale * now * percent(i, standing, 0), within(1e-9));
        assertThat(paths.strength(paths.at(i, RESOW, 4)))
            .isCloseTo(
                scale
                    * (TAKES * sownClover(4) * percent(i, plants, 4)
                        + 0.2 * sownClover(3) * percent(i, plants, 3)),
                within(1e-9));
        assertThat(paths.cloverShare(paths.at(i, RESOW, 0))).isEqualTo(now);
        assertThat(paths.cloverShare(paths.at(i, RESOW, 4)))
            .isCloseTo(TAKES * sownClover(4) + 0.2 * sownClover(3), within(1e-9));
        assertThat(paths.oldShare(paths.at(i, RESOW, 4)))
            .isCloseTo(TAKES * old(i, plants, 4) + 0.2 * old(i, plants, 3), within(1e-9));
      }
      for (int a = 0; a < farm.actions().size(); a++) {
        for (int k = 0; k < YEARS; k++) {
          strongest =
              Math.max(strongest, paths.allowed(i, a) ? paths.strength(paths.at(i, a, k)) : 0);
        }
      }
    }
    // A bound, worked out before the paths: no weaker than any, no stronger than half as much
    // again.
    assertThat(paths.strongest()).isBetween(strongest, 1.5 * strongest);
  }

  private double percent(int i, double[] shares, int k) {
    double sum = 0;
    int n = stands.species(i);
    for (int c = 0; c < n; c++) {
      sum += shares[k * n + c] * stands.formononetin(x, i, c);
    }
    return sum;
  }

  private double old(int i, double[] shares, int k) {
    double sum = 0;
    int n = stands.species(i);
    for (int c = 0; c < n; c++) {
      sum += stands.cultivar(i, c).isOld() ? shares[k * n + c] : 0;
    }
    return sum;
  }

  /** Two in a hundred won bring 30 % clover to 0.98 x 30 + 0.02 x 50, as the method page says. */
  @Test
  void cloverShare_ofAnOversowing_movesOnlyWithWhatTheNewcomerWon() {
    double leaf = RandomFarms.TABLES.parameter("dose.leaf-share").likely();
    double wet = RandomFarms.TABLES.parameter("dose.waterlogged-factor").likely();
    for (int i = 0; i < farm.paddocks().size(); i++) {
      double scale = leaf * (farm.paddocks().get(i).waterlogged() ? wet : 1);
      double now = farm.paddocks().get(i).cloverShare().likely();
      double[] plants = paths.plantShares(i, OVERSOW);
      int n = stands.species(i);
      double won = plants[5 * n + n - 1];
      double wonBefore = plants[4 * n + n - 1];
      assertThat(paths.strength(paths.at(i, OVERSOW, 5)))
          .isCloseTo(
              scale
                  * (TAKES * (now + (TARGET - now) * won) * percent(i, plants, 5)
                      + 0.2 * (now + (TARGET - now) * wonBefore) * percent(i, plants, 4)),
              within(1e-9));
    }
  }

  @Test
  void paddock_underAnAction_isShutWhileSownOrCropped() {
    assertThat(paths.isShut(RESOW, 0)).isFalse();
    assertThat(paths.isShut(RESOW, 1)).isTrue();
    assertThat(paths.isShut(RESOW, 2)).isFalse();
    assertThat(paths.isShut(CROP, 0)).isTrue();
    assertThat(paths.isShut(CROP, 1)).isTrue();
    assertThat(paths.isShut(CROP, 2)).isFalse();
    assertThat(paths.isShut(OVERSOW, 0)).isTrue();
    assertThat(paths.isShut(KEEP, 0)).isFalse();
    assertThat(paths.isShut(HOLD, 0)).isFalse();
  }

  @Test
  void actions_thatNeedThePlough_areForArablePaddocksOnly() {
    for (int i = 0; i < farm.paddocks().size(); i++) {
      boolean arable = farm.paddocks().get(i).arable();
      assertThat(paths.allowed(i, RESOW)).isEqualTo(arable);
      assertThat(paths.allowed(i, OVERSOW)).isTrue();
      assertThat(paths.allowed(i, HOLD)).isTrue();
    }
    assertThat(inputs.get(paths.establishmentInput(RESOW)).likely()).isEqualTo(TAKES);
    assertThat(paths.establishmentInput(HOLD)).isEqualTo(-1);
  }

  /** Two crops, then the old stand: in year one back thinner and with less clover, then in full. */
  @Test
  void cropOnly_bringsMarginsWithoutCosts_andTheOldStandComesBack() {
    double wet = RandomFarms.TABLES.parameter("crop.waterlogged-factor").likely();
    double first = RandomFarms.TABLES.parameter("crop.clover-first-year").likely();
    for (int i : arable()) {
      double onGround = farm.paddocks().get(i).waterlogged() ? wet : 1;
      for (int k = 0; k < 2; k++) {
        int at = paths.at(i, CROP_ONLY, k);
        assertThat(paths.isCrop(CROP_ONLY, k) && paths.isShut(CROP_ONLY, k)).isTrue();
        assertThat(paths.marginPerHa(at)).isCloseTo(150 * onGround, within(1e-9));
        assertThat(paths.winter(at) + paths.other(at)).isZero();
      }
      assertThat(paths.marginPerHa(paths.at(i, CROP, 0))).isCloseTo(150 * onGround, within(1e-9));
      assertThat(paths.isCrop(CROP, 1)).isFalse();
      assertThat(paths.other(paths.at(i, CROP_ONLY, 2))).isCloseTo(0.6, within(1e-9));
      int keep = paths.at(i, KEEP, 0);
      double[] back = paths.plantShares(i, CROP_ONLY);
      for (int k = 2; k < YEARS; k++) {
        int at = paths.at(i, CROP_ONLY, k);
        assertThat(paths.isShut(CROP_ONLY, k) || paths.isCrop(CROP_ONLY, k)).isFalse();
        assertThat(paths.marginPerHa(at)).isZero();
        // Yearly lines alone: fence and water.
        assertThat(paths.costPerHa(at)).isCloseTo(3, within(1e-9));
        if (k > 2) {
          assertThat(paths.other(at)).isEqualTo(1);
        }
        double[] standing = stands.shares(i);
        double clover = k == 2 ? first : 1;
        assertThat(paths.strength(at) * percent(i, standing, 0))
            .isCloseTo(clover * paths.strength(keep) * percent(i, back, k), within(1e-9));
        assertThat(paths.oldShare(at)).isCloseTo(old(i, back, k), within(1e-9));
        int sown = stands.species(i) - 1;
        assertThat(back[k * (sown + 1) + sown] > 0).isEqualTo(standing[sown] > 0);
      }
    }
  }

  /**
   * Grass drilled in: the names stay; clover, and its strength with it, falls to s of what it was
   * and is back as the grass goes, with what the grass adds to growth. Equations of ActionPaths,
   * worked anew from the table.
   */
  @Test
  void thin_keepsTheNames_andItsCloverComesBack() {
    double share = RandomFarms.TABLES.parameter("thin.clover-share").likely();
    double time = RandomFarms.TABLES.parameter("thin.clover-years").likely();
    double adds = RandomFarms.TABLES.parameter("thin.other-growth").likely() - 1;
    for (int i : arable()) {
      int keep = paths.at(i, KEEP, 0);
      double now = paths.cloverShare(keep);
      double before = 0;
      for (int k = 0; k < YEARS; k++) {
        int at = paths.at(i, THIN, k);
        double grass = Math.exp(-k / time);
        double clover = 1 - grass * (1 - share);
        assertThat(paths.oldShare(at)).isEqualTo(paths.oldShare(keep));
        assertThat(paths.cloverShare(at)).isCloseTo(now * clover, within(1e-12));
        assertThat(paths.strength(at))
            .isCloseTo(clover * paths.strength(keep), within(1e-12))
            .isGreaterThanOrEqualTo(before);
        before = paths.strength(at);
        if (k > 0) {
          assertThat(paths.other(at)).isCloseTo(1 + grass * adds, within(1e-12));
        }
        // Fence and water each year, seed and drill in the first; own labour 4 and 30.
        assertThat(paths.costPerHa(at)).isCloseTo(k == 0 ? 103 : 3, within(1e-9));
        assertThat(paths.labourPerHa(at)).isCloseTo(k == 0 ? 34 : 4, within(1e-9));
        assertThat(paths.isShut(THIN, k)).isEqualTo(k == 0);
      }
      assertThat(paths.other(paths.at(i, THIN, 0))).isLessThan(0.6 * (1 + adds));
    }
    assertThat(paths.establishmentInput(THIN)).isEqualTo(-1);
  }
}
