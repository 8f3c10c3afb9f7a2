package swardcase.grazing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.ojalgo.optimisation.Expression;
import org.ojalgo.optimisation.ExpressionsBasedModel;
import org.ojalgo.optimisation.Variable;
import swardcase.FarmCopy;
import swardcase.RandomFarms;
import swardcase.farm.Farm;
import swardcase.farm.Mob;

/** The order of one time against a linear programme, and the laws it keeps. */
class InOrderTest {

  private static final Farm FARM = RandomFarms.demo("risky-farm");
  private static final double STRONGEST = 0.8;

  private static List<Mob> mobs(int count) {
    List<Mob> mobs = new ArrayList<>();
    for (int g = 0; g < count; g++) {
      mobs.add(FarmCopy.named(FARM.mobs().get(0), "mob " + g));
    }
    return mobs;
  }

  private record Case(double[] feed, double[] dose, double[] need) {}

  /** Each class of strength is one paddock; mobs need less than there is. */
  private static Case any(SplittableRandom random, int mobs) {
    double[] feed = new double[InOrder.BINS];
    double[] dose = new double[InOrder.BINS];
    double all = 0;
    for (int k = 0; k < InOrder.BINS; k++) {
      feed[k] = random.nextInt(4) == 0 ? 0 : random.nextDouble(1, 20);
      dose[k] = feed[k] * STRONGEST * (k + random.nextDouble()) / InOrder.BINS;
      all += feed[k];
    }
    double[] need = new double[mobs];
    for (int g = 0; g < mobs; g++) {
      need[g] = all / mobs * random.nextDouble(0.1, 1);
    }
    return new Case(feed, dose, need);
  }

  private static double[] strengths(Case of) {
    double[] sums = new double[2 * InOrder.BINS];
    System.arraycopy(of.feed, 0, sums, 0, InOrder.BINS);
    System.arraycopy(of.dose, 0, sums, InOrder.BINS, InOrder.BINS);
    InOrder order = new InOrder(mobs(of.need.length));
    order.set(STRONGEST);
    order.find(sums, 0, g -> of.need[g]);
    double[] strength = new double[of.need.length];
    for (int g = 0; g < strength.length; g++) {
      strength[g] = order.strength(g);
    }
    return strength;
  }

  /** Where the mob served first is hurt most, no way of sharing the paddocks costs less. */
  @Test
  void find_anyFarm_isAsCheapAsTheProgramme() {
    SplittableRandom random = new SplittableRandom(5);
    for (int round = 0; round < 100; round++) {
      int mobs = 1 + round % 4;
      Case any = any(random, mobs);
      double[] harm = new double[mobs];
      double last = 10;
      for (int g = 0; g < mobs; g++) {
        last *= random.nextDouble(0.3, 1);
        harm[g] = last;
      }
      double cost = 0;
      double[] strength = strengths(any);
      for (int g = 0; g < mobs; g++) {
        cost += harm[g] * any.need[g] * strength[g];
      }
      assertThat(cost).isCloseTo(programme(any, harm), within(1e-6 * Math.max(1, cost)));
    }
  }

  private static double programme(Case of, double[] harm) {
    ExpressionsBasedModel model = new ExpressionsBasedModel();
    Expression[] feed = new Expression[of.feed.length];
    for (int k = 0; k < feed.length; k++) {
      feed[k] = model.addExpression("feed " + k).upper(of.feed[k]);
    }
    for (int g = 0; g < of.need.length; g++) {
      Expression need = model.addExpression("need " + g).level(of.need[g]);
      for (int k = 0; k < feed.length; k++) {
        if (of.feed[k] == 0) {
          continue;
        }
        double strength = of.dose[k] / of.feed[k];
        Variable eaten =
            model.addVariable("eaten " + g + " " + k).lower(0).weight(harm[g] * strength);
        need.set(eaten, 1);
        feed[k].set(eaten, 1);
      }
    }
    return model.minimise().getValue();
  }

  @Test
  void find_moreCleanFeed_neverRaisesAStrength() {
    SplittableRandom random = new SplittableRandom(6);
    for (int round = 0; round < 200; round++) {
      Case any = any(random, 1 + round % 3);
      double[] before = strengths(any);
      double[] more = any.feed.clone();
      double[] dose = any.dose.clone();
      dose[0] = 0;
      more[0] += random.nextDouble(0, 10);
      double[] after = strengths(new Case(more, dose, any.need));
      for (int g = 0; g < before.length; g++) {
        assertThat(after[g]).isLessThanOrEqualTo(before[g] + 1e-12);
      }
    }
  }

  @Test
  void bin_ofStrengths_coversThemAll() {
    InOrder order = new InOrder(mobs(1));
    order.set(STRONGEST);
    assertThat(order.bin(0)).isZero();
    assertThat(order.bin(STRONGEST)).isEqualTo(InOrder.BINS - 1);
    assertThat(order.bin(STRONGEST / 2)).isEqualTo(InOrder.BINS / 2);
    order.set(0);
    assertThat(order.bin(0)).isZero();
  }

  /** A mob that may not move is left out, and young ewes are served first. */
  @Test
  void find_servesTheYoungFirstAndLeavesOutWhoMayNotMove() {
    Mob mature = FARM.mobs().get(0);
    Mob maidens = FARM.mobs().get(1);
    double[] sums = new double[2 * InOrder.BINS];
    sums[0] = 10;
    sums[4] = 20;
    sums[InOrder.BINS + 4] = 20 * 0.5;
    InOrder order = new InOrder(List.of(mature, maidens));
    order.set(STRONGEST);
    order.find(sums, 0, g -> 10);
    assertThat(order.strength(1)).isZero();
    assertThat(order.strength(0)).isEqualTo(0.5);
    InOrder staying = new InOrder(List.of(mature, FarmCopy.staying(maidens)));
    staying.set(STRONGEST);
    staying.find(sums, 0, g -> 10);
    assertThat(staying.strength(1)).isNaN();
    assertThat(staying.strength(0)).isZero();
  }
}
