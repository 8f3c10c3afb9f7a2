package swardcase.draws;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.sun.management.ThreadMXBean;
import java.lang.management.ManagementFactory;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;
import swardcase.FarmCopy;
import swardcase.RandomFarms;
import swardcase.chance.CountedRandom;
import swardcase.chance.Range;
import swardcase.chance.Sample;
import swardcase.chance.StraightLine;
import swardcase.evidence.Assumption;
import swardcase.farm.Action;
import swardcase.farm.Farm;
import swardcase.outcome.Draw;
import swardcase.outcome.FarmModel;
import swardcase.outcome.OutcomeFunction;
import swardcase.tables.Cultivar;
import swardcase.tables.ResponseStory;

class DrawsTest {

  private static final Farms FARM = Farms.of("mixed-farm");
  private static final int BLOCKS = 20;
  private static final int PER_BLOCK = 200;

  private final Draws draws = new Draws(FARM.model(), 4, BLOCKS, PER_BLOCK);
  private final CountedRandom random = new CountedRandom(0);
  private final Draw draw = new Draw(FARM.model());
  private final double[] x = draw.numbers;
  private final double[][] shares = draw.shares;
  private final int[] seasons = draw.seasons;

  private double[] column(int input) {
    double[] column = new double[draws.count()];
    for (int d = 0; d < column.length; d++) {
      draws.fill(d, 0, random, draw);
      column[d] = x[input];
    }
    return column;
  }

  @Test
  void fill_everyInput_hasTheMeanOfItsDistributionAndStaysInItsReach() {
    double[] sum = new double[x.length];
    for (int d = 0; d < draws.count(); d++) {
      draws.fill(d, 0, random, draw);
      for (int j = 0; j < x.length; j++) {
        Assumption input = FARM.model().inputs().get(j);
        sum[j] += x[j];
        if (!isOldShare(j)) {
          assertThat(x[j])
              .as(input.name())
              .isBetween(reach(input).low() - 1e-9, reach(input).high() + 1e-9);
        }
      }
    }
    for (int j = 0; j < x.length; j++) {
      Assumption input = FARM.model().inputs().get(j);
      double width = reach(input).high() - reach(input).low();
      // Slices of 1 in 200 leave an error of far less than a thousandth of the width.
      if (j == FARM.model().inputs().place(ResponseStory.KEY)) {
        double[] chances = ResponseStory.chances(FARM.model().tables());
        assertThat(sum[j] / draws.count())
            .isCloseTo(chances[1] + 2 * chances[2], within(2.0 / PER_BLOCK));
      } else if (!isOldShare(j)) {
        assertThat(sum[j] / draws.count())
            .as(input.name())
            .isCloseTo(pertMean(reach(input)), within(error(input) * width + 1e-9));
      }
    }
  }

  /** The price of supplement is tied to that of lambs, so its slices are no longer its own. */
  private double error(Assumption input) {
    boolean tied = input.equals(FARM.model().farm().supplement().pricePerTonne());
    return tied ? 0.2 / Math.sqrt(draws.count()) : 1e-3;
  }

  private static double pertMean(Range range) {
    return (range.low() + 4 * range.likely() + range.high()) / 6;
  }

  private static Range reach(Assumption input) {
    return DrawnReach.of(input);
  }

  private boolean isOldShare(int input) {
    for (int i = 0; i < shares.length; i++) {
      if (draws.oldShareInput(i) == input) {
        return true;
      }
    }
    return false;
  }

  @Test
  void fill_cloverOfAPaddock_sumsToOneWithTheMeansOfItsComposition() {
    double[][] sums = new Draw(FARM.model()).shares;
    for (int d = 0; d < draws.count(); d++) {
      draws.fill(d, 0, random, draw);
      for (int i = 0; i < shares.length; i++) {
        assertThat(Arrays.stream(shares[i]).sum()).isCloseTo(1, within(1e-12));
        double old = 0;
        for (int c = 0; c < shares[i].length; c++) {
          sums[i][c] += shares[i][c] / draws.count();
          old += draws.composition(i).cultivar(c).isOld() ? shares[i][c] : 0;
        }
        assertThat(x[draws.oldShareInput(i)]).isEqualTo(old);
      }
    }
    for (int i = 0; i < shares.length; i++) {
      for (int c = 0; c < shares[i].length; c++) {
        // No share varies by more than 0.25 in standard deviation: four standard errors.
        assertThat(sums[i][c])
            .as("paddock %s, cultivar %s", i, c)
            .isCloseTo(draws.composition(i).meanShare(c), within(1 / Math.sqrt(draws.count())));
      }
    }
  }

  /** Dwalganup or Geraldton: one of the two takes all eight plants, so their shares spread more. */
  @Test
  void fill_plantsThatMayBeEither_spreadWiderThanPlantsSplitEvenly() {
    int paddock = 2;
    var composition = draws.composition(paddock);
    int place = 0;
    while (!composition.cultivar(place).name().equals("Dwalganup")) {
      place++;
    }
    double[] share = new double[draws.count()];
    for (int d = 0; d < share.length; d++) {
      draws.fill(d, 0, random, draw);
      share[d] = shares[paddock][place];
    }
    double mean = composition.meanShare(place);
    double counted = FARM.model().farm().paddocks().get(paddock).plantsLookedAt();
    double effect = FARM.model().tables().parameter("stand.design-effect").likely();
    double evenSplit = Math.sqrt(mean * (1 - mean) / (counted / effect + 2));
    assertThat(Sample.standardDeviation(share)).isGreaterThan(1.1 * evenSplit);
    assertThat(composition.share(Cultivar::isOld).isExact()).isFalse();
  }

  @Test
  void fill_withAnActionMore_drawsEveryOtherNumberAsBefore() {
    Farm farm = FARM.model().farm();
    List<Action> fewer =
        farm.actions().stream().filter(action -> !action.key().equals("crop-3")).toList();
    FarmModel less = new FarmModel(FarmCopy.of(farm).actions(fewer).build(), RandomFarms.TABLES);
    Draws ofLess = new Draws(less, 4, BLOCKS, PER_BLOCK);
    Draw drawOfLess = new Draw(less);
    List<String> keys =
        List.of(
            OutcomeFunction.LAMB_VALUE,
            OutcomeFunction.SUPPLEMENT_PRICE,
            "oestrogen.d50",
            "action.spray-fallow.seed-set",
            "action.crop-2.crop-margin",
            "paddock." + farm.paddocks().get(1).name() + ".clover-share");
    for (int d = 0; d < 50; d++) {
      draws.fill(d, 0, random, draw);
      ofLess.fill(d, 0, random, drawOfLess);
      for (String key : keys) {
        assertThat(drawOfLess.numbers[less.inputs().place(key)])
            .as(key)
            .isEqualTo(x[FARM.model().inputs().place(key)]);
      }
      assertThat(drawOfLess.shares).isDeepEqualTo(shares);
      assertThat(drawOfLess.seasons).isEqualTo(seasons);
      assertThat(drawOfLess.luck).isDeepEqualTo(draw.luck);
    }
    assertThat(less.inputs().size()).isLessThanOrEqualTo(FARM.model().inputs().size());
  }

  @Test
  void fill_priceCorrelationAroundZero_leavesPricesUncorrelated() {
    var inputs = FARM.model().inputs().all();
    double[] lamb = column(inputs.indexOf(FARM.model().farm().prices().netValuePerLamb()));
    double[] feed = column(inputs.indexOf(FARM.model().farm().supplement().pricePerTonne()));
    // Four standard errors of a correlation from the draws.
    assertThat(StraightLine.of(lamb, feed).varianceShare()).isLessThan(16.0 / draws.count());
  }

  @Test
  void fill_numbersThatActionsShare_moveTogether() {
    var inputs = FARM.model().inputs().all();
    int pairs = 0;
    for (int j = 0; j < inputs.size(); j++) {
      int first = draws.dimension(j);
      if (first != j && !inputs.get(j).range().isExact()) {
        pairs++;
        draws.fill(3, 0, random, draw);
        double u = place(inputs.get(j), x[j]);
        if (sameShape(inputs.get(j), inputs.get(first))) {
          assertThat(u).isCloseTo(place(inputs.get(first), x[first]), within(1e-9));
        }
      }
    }
    assertThat(pairs).isGreaterThan(3);
  }

  private static double place(Assumption input, double value) {
    return (value - input.range().low()) / (input.range().high() - input.range().low());
  }

  private static boolean sameShape(Assumption a, Assumption b) {
    return Math.abs(place(a, a.likely()) - place(b, b.likely())) < 1e-12;
  }

  /** A block's slices leave at most one draw of each block on the wrong side of a limit. */
  @Test
  void fill_seasonOfAnyYear_comesAsOftenAsItsChance() {
    var types = FARM.model().farm().feedYear().seasons();
    int[][] count = new int[seasons.length][types.size()];
    for (int d = 0; d < draws.count(); d++) {
      draws.fill(d, 0, random, draw);
      for (int t = 0; t < seasons.length; t++) {
        count[t][seasons[t]]++;
      }
    }
    for (int[] ofYear : count) {
      for (int season = 0; season < ofYear.length; season++) {
        assertThat((double) ofYear[season] / draws.count())
            .isCloseTo(types.get(season).chance().likely(), within(2.0 / PER_BLOCK));
      }
    }
  }

  @Test
  void anew_ofAnotherSeed_isAsIfDrawnFirst() {
    FarmModel model = Farms.of("mixed-farm").model();
    Draws anew = new Draws(model, 1, 4, 5).anew(9, 8, 3);
    Draws first = new Draws(model, 9, 8, 3);
    DrawnFarm one = new DrawnFarm(model);
    DrawnFarm other = new DrawnFarm(model);
    assertThat(anew.count()).isEqualTo(24);
    for (int d = 23; d >= 0; d--) {
      one.set(anew, d);
      other.set(first, d);
      assertThat(one.draw().numbers).isEqualTo(other.draw().numbers);
      assertThat(one.draw().shares[0]).isEqualTo(other.draw().shares[0]);
    }
  }

  @Test
  void fill_afterWarmingUp_allocatesNothing() {
    ThreadMXBean threads = (ThreadMXBean) ManagementFactory.getThreadMXBean();
    for (int d = 0; d < draws.count(); d++) {
      draws.fill(d, 0, random, draw);
    }
    long before = threads.getCurrentThreadAllocatedBytes();
    for (int d = 0; d < 1000; d++) {
      draws.fill(d, 0, random, draw);
    }
    long bytes = threads.getCurrentThreadAllocatedBytes() - before;
    // The reading itself allocates a little once.
    assertThat(bytes).isLessThan(1000);
  }
}
