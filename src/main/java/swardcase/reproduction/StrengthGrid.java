package swardcase.reproduction;

import java.util.Arrays;
import swardcase.farm.HalfMonths;

/**
 * What a year does to the ewes of one mob, as a function of two strengths of the clover: that of
 * the paddocks they graze, and that of those they graze in the held weeks.
 *
 * <p>Ewes in lamb are worked out at the nodes of a grid where they are first asked for, and read
 * between by straight lines in both directions; the error is tested. Exposure is a sum over
 * half-months, so what each strength adds to it is worked out alone. What is carried into the held
 * weeks is the same for all strengths in them and is walked to once.
 */
final class StrengthGrid {

  /** Strengths on each side of the grid. */
  static final int NODES = 49;

  /** Below this five terms of the series of e^-d are right within 1e-12. */
  private static final double SMALL = 0.01;

  // Numbers of a cell stand side by side, with one place free: they fill a line of memory.
  private static final int CELLS = NODES - 1;
  private static final int NUMBERS = 8;
  private static final int RISE = 1;
  private static final int RISE_HELD = 2;
  private static final int TWIST = 3;
  private static final int SOUND = 4;
  private static final int DECAY = 5;
  private static final int DECAY_HELD = 6;

  private final double joiningWeeks;
  private final boolean[] held;
  private final JoiningWalk walk;
  private final double[] greenPower = new double[HalfMonths.COUNT];
  private final double[] effect = new double[HalfMonths.COUNT];
  private final double[] multiplier;
  private final double[] effectOfNode = new double[NODES * HalfMonths.COUNT];
  private final double[] decay = new double[NODES];
  private final double[] decayHeld = new double[NODES];
  private final double[] carried = new double[NODES];
  private final double[] fertile = new double[NODES * NODES];
  private final int[] solvedNodes = new int[NODES * NODES];
  private final double[] cells = new double[CELLS * CELLS * NUMBERS];
  private final int[] solvedCells = new int[CELLS * CELLS];

  private int nodeCount;
  private int cellCount;
  private int stridesBefore;
  private double d50;
  private double steepness;
  private double referenceEffect;
  private double logSoundPerUnit;
  private double perCycle;
  private double spacing;
  private double perSpacing;
  private int found;
  private double along;
  private double alongHeld;

  /**
   * The grid of a mob.
   *
   * @param held half-months in which the mob is kept off held paddocks
   */
  StrengthGrid(JoiningWalk walk, double joiningWeeks, int cycles, boolean[] held) {
    this.walk = walk;
    this.joiningWeeks = joiningWeeks;
    this.held = held;
    multiplier = new double[cycles];
    Arrays.fill(fertile, Double.NaN);
    Arrays.fill(cells, Double.NaN);
  }

  /**
   * Takes the numbers of a run; the walk must have been set before.
   *
   * @param green strength of intake in each half-month relative to green feed
   * @param d50 dose that halves conception, %; without limit where no dose does anything
   * @param sterilityQ share of ewes that one unit of exposure leaves barren for good
   * @param strongest no strength asked for later is above this
   */
  void set(
      double[] green,
      double d50,
      double steepness,
      double referenceDose,
      double sterilityQ,
      double strongest) {
    this.d50 = d50;
    this.steepness = steepness;
    logSoundPerUnit = Math.log(1 - sterilityQ);
    for (int p = 0; p < greenPower.length; p++) {
      greenPower[p] = Math.pow(green[p], steepness);
    }
    // Where no dose does anything there are no days in full effect to be weighed by it.
    referenceEffect =
        Double.isInfinite(d50) ? 1 : DoseResponse.effect(referenceDose, d50, steepness);
    spacing = Math.max(1e-6, strongest) / (NODES - 1);
    perSpacing = 1 / spacing;
    stridesBefore = walk.stridesWithout(held);
    for (int k = 0; k < nodeCount; k++) {
      fertile[solvedNodes[k]] = Double.NaN;
    }
    nodeCount = 0;
    for (int k = 0; k < cellCount; k++) {
      cells[solvedCells[k]] = Double.NaN;
    }
    cellCount = 0;
    Arrays.fill(decay, Double.NaN);
  }

  /** Takes the chance of conceiving in a cycle without oestrogen. */
  void setPerCycle(double chance) {
    perCycle = chance;
  }

  /** Strengths lie this far apart on the grid, the first at 0. */
  double spacing() {
    return spacing;
  }

  /** Strength of clover over the dose that halves conception, to the power of the steepness. */
  double power(double strength) {
    return Math.pow(strength / d50, steepness);
  }

  /** Share of conceptions lost to the dose of a half-month; {@code power} of the strength. */
  double effect(int halfMonth, double power) {
    return DoseResponse.effectOfPower(greenPower[halfMonth] * power);
  }

  /** Share of ewes that a season at one strength leaves sound, not read from the grid. */
  double soundAt(double power) {
    fillEffects(power);
    return Math.exp(-decay(Sterility.daysInFullEffect(effect)));
  }

  /** Of a season of so many days in full effect, -ln of the share of ewes it leaves sound. */
  private double decay(double days) {
    return -logSoundPerUnit * Sterility.exposureOfDays(days, referenceEffect);
  }

  /** Multipliers of conception at one strength, not read from the grid; overwritten by the next. */
  double[] multipliersAt(double power) {
    fillEffects(power);
    walk.multipliers(effect, multiplier);
    return multiplier;
  }

  /** The dose is green share x strength, so its power in the dose-response is a product too. */
  private void fillEffects(double power) {
    for (int p = 0; p < HalfMonths.COUNT; p++) {
      effect[p] = effect(p, power);
    }
  }

  /** Finds two strengths, for {@link #sound} and {@link #fertile}. */
  void find(double strength, double strengthHeld) {
    double position = strength * perSpacing;
    double positionHeld = strengthHeld * perSpacing;
    int a = cell(position);
    int b = cell(positionHeld);
    along = along(position, a);
    alongHeld = along(positionHeld, b);
    found = (a * CELLS + b) * NUMBERS;
    if (Double.isNaN(cells[found])) {
      solveCell(a, b, found);
    }
  }

  /** Ewes in lamb at the strengths found, share of those that are not barren for good. */
  double fertile() {
    return cells[found]
        + along * cells[found + RISE]
        + alongHeld * (cells[found + RISE_HELD] + along * cells[found + TWIST]);
  }

  /** Share of ewes that a season at the strengths found leaves sound. */
  double sound() {
    double d = decayInCell();
    double dd = d * d;
    double rest =
        d < SMALL ? 1 - d + dd * (1.0 / 2 - d * (1.0 / 6) + dd * (1.0 / 24)) : Math.exp(-d);
    return cells[found + SOUND] * rest;
  }

  /** The same as -ln of the share. */
  double decay() {
    return decayInCell() - Math.log(cells[found + SOUND]);
  }

  private double decayInCell() {
    return along * cells[found + DECAY] + alongHeld * cells[found + DECAY_HELD];
  }

  private static int cell(double position) {
    int cell = (int) position;
    return cell < 0 ? 0 : cell > NODES - 2 ? NODES - 2 : cell;
  }

  /** A strength is at most the strongest, but for rounding. */
  private static double along(double position, int cell) {
    double along = position - cell;
    return along < 1 ? along : 1;
  }

  private void solveCell(int a, int b, int into) {
    double low = fertile(a, b);
    double lowHeld = fertile(a, b + 1);
    double high = fertile(a + 1, b);
    cells[into] = low;
    cells[into + RISE] = high - low;
    cells[into + RISE_HELD] = lowHeld - low;
    cells[into + TWIST] = fertile(a + 1, b + 1) - high - (lowHeld - low);
    cells[into + SOUND] = Math.exp(-decay[a] - decayHeld[b]);
    cells[into + DECAY] = decay[a + 1] - decay[a];
    cells[into + DECAY_HELD] = decayHeld[b + 1] - decayHeld[b];
    solvedCells[cellCount++] = into;
  }

  /** Ewes in lamb at a node. */
  private double fertile(int a, int b) {
    int node = a * NODES + b;
    if (Double.isNaN(fertile[node])) {
      solveRow(a);
      solveRow(b);
      for (int p = 0; p < HalfMonths.COUNT; p++) {
        effect[p] = effectOfNode[(held[p] ? b : a) * HalfMonths.COUNT + p];
      }
      if (stridesBefore > 0) {
        walk.multipliersFrom(stridesBefore, carried[a], effect, multiplier);
      } else {
        walk.multipliers(effect, multiplier);
      }
      solvedNodes[nodeCount++] = node;
      fertile[node] = Pregnancy.pregnantShare(perCycle, joiningWeeks, multiplier, 0);
    }
    return fertile[node];
  }

  /** Works out what hangs on one strength. */
  private void solveRow(int row) {
    if (Double.isNaN(decay[row])) {
      fillEffects(power(row * spacing));
      System.arraycopy(effect, 0, effectOfNode, row * HalfMonths.COUNT, HalfMonths.COUNT);
      carried[row] = walk.carriedAfter(stridesBefore, effect);
      double days = Sterility.daysInFullEffect(effect);
      for (int p = 0; p < HalfMonths.COUNT; p++) {
        effect[p] = held[p] ? effect[p] : 0;
      }
      double daysHeld = Sterility.daysInFullEffect(effect);
      decay[row] = decay(days - daysHeld);
      decayHeld[row] = decay(daysHeld);
    }
  }
}
