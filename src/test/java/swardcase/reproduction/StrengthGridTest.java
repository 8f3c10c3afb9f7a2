package swardcase.reproduction;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import swardcase.farm.HalfMonths;

/** The grid at its nodes and between them, against the calculators of reproduction. */
class StrengthGridTest {

  private static final double WEEKS = 6;
  private static final double PER_CYCLE = 0.6;
  private static final int JOINING_DAY = 120;

  private final double[] green = new SplittableRandom(7).doubles(24, 0.1, 1).toArray();

  private StrengthGrid grid(boolean[] held, double sterilityQ, double strongest) {
    JoiningWalk walk = new JoiningWalk(JOINING_DAY, WEEKS, HalfMonths.COUNT);
    walk.set(14, 17, 7);
    StrengthGrid grid = new StrengthGrid(walk, WEEKS, JoiningWalk.cycles(WEEKS), held);
    grid.set(green, 0.41, 3, 0.5, sterilityQ, strongest);
    grid.setPerCycle(PER_CYCLE);
    return grid;
  }

  private static boolean[] heldWeeks() {
    boolean[] held = new boolean[HalfMonths.COUNT];
    Arrays.fill(held, 4, 11, true);
    return held;
  }

  /** With few steps to a wide range e^-d of a cell is not small, and is not taken from a series. */
  @Test
  void sound_betweenNodes_isThatOfTheDecay() {
    SplittableRandom random = new SplittableRandom(1);
    for (double q : new double[] {0.02, 0.3, 0.95}) {
      for (double strongest : new double[] {0.3, 4}) {
        StrengthGrid grid = grid(heldWeeks(), q, strongest);
        for (int i = 0; i < 200; i++) {
          grid.find(random.nextDouble(strongest), random.nextDouble(strongest));
          assertThat(grid.sound()).isCloseTo(Math.exp(-grid.decay()), within(2e-12));
        }
      }
    }
  }

  @Test
  void sound_atANode_isThatOfTheSeason() {
    StrengthGrid grid = grid(heldWeeks(), 0.1, 0.96);
    for (int node = 0; node < StrengthGrid.NODES; node++) {
      double strength = node * grid.spacing();
      grid.find(strength, strength);
      assertThat(grid.sound()).isCloseTo(grid.soundAt(grid.power(strength)), within(1e-12));
    }
  }

  /** A mob held all year has no stride that is the same for every strength in the held weeks. */
  @Test
  void fertile_atANode_isThatOfTheWalk_howeverLongTheHeldWeeksAre() {
    boolean[] always = new boolean[HalfMonths.COUNT];
    Arrays.fill(always, true);
    for (boolean[] held : new boolean[][] {heldWeeks(), always, new boolean[HalfMonths.COUNT]}) {
      StrengthGrid grid = grid(held, 0.1, 0.96);
      for (int node = 0; node < StrengthGrid.NODES; node += 3) {
        double strength = node * grid.spacing();
        grid.find(strength, strength);
        double read = grid.fertile();
        double[] multipliers = grid.multipliersAt(grid.power(strength));
        assertThat(read)
            .isCloseTo(Pregnancy.pregnantShare(PER_CYCLE, WEEKS, multipliers, 0), within(1e-12));
      }
    }
  }

  /** Straight along either strength; halfway the mean of the ends. */
  @Test
  void fertile_halfwayAlongACell_isTheMeanOfItsEnds() {
    StrengthGrid grid = grid(heldWeeks(), 0.1, 0.96);
    double a = 10 * grid.spacing();
    double b = 20 * grid.spacing();
    double half = grid.spacing() / 2;
    double low = fertile(grid, a, b);
    double high = fertile(grid, a + 2 * half, b);
    double lowHeld = fertile(grid, a, b + 2 * half);
    double highHeld = fertile(grid, a + 2 * half, b + 2 * half);
    assertThat(fertile(grid, a + half, b)).isCloseTo((low + high) / 2, within(1e-12));
    assertThat(fertile(grid, a, b + half)).isCloseTo((low + lowHeld) / 2, within(1e-12));
    assertThat(fertile(grid, a + half, b + half))
        .isCloseTo((low + high + lowHeld + highHeld) / 4, within(1e-12));
    assertThat(lowHeld).isLessThan(low);
  }

  private static double fertile(StrengthGrid grid, double strength, double held) {
    grid.find(strength, held);
    return grid.fertile();
  }

  @Test
  void grid_setAgain_forgetsWhatWasSolved() {
    boolean[] held = heldWeeks();
    JoiningWalk walk = new JoiningWalk(JOINING_DAY, WEEKS, HalfMonths.COUNT);
    walk.set(14, 17, 7);
    StrengthGrid used = new StrengthGrid(walk, WEEKS, JoiningWalk.cycles(WEEKS), held);
    used.set(green, 0.2, 2, 0.5, 0.3, 0.96);
    used.setPerCycle(0.3);
    double before = fertile(used, 0.31, 0.22);
    used.set(green, 0.41, 3, 0.5, 0.1, 0.96);
    used.setPerCycle(PER_CYCLE);
    StrengthGrid fresh = grid(held, 0.1, 0.96);
    assertThat(fertile(used, 0.31, 0.22))
        .isEqualTo(fertile(fresh, 0.31, 0.22))
        .isNotEqualTo(before);
    assertThat(used.sound()).isEqualTo(fresh.sound());
  }
}
