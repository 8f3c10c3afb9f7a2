package swardcase.outcome;

import java.util.Arrays;
import java.util.List;
import swardcase.evidence.UncertainNumbers;
import swardcase.farm.Action;
import swardcase.farm.Farm;
import swardcase.feed.GrowthYear;
import swardcase.sward.StandingClover;

/**
 * What every action does to every paddock, year by year from its start: growth in winter and in the
 * other months relative to a current stand, strength of the clover, cost, own labour and margin per
 * ha, and the share of old cultivars.
 *
 * <p>A sowing that fails is sown again the year after and then takes. In a draw each number of
 * failures has a path of its own, and the year of sowing says which it is. Without draws a path is
 * the mean of the two, weighted by the chance of establishment.
 */
final class ActionPaths {

  /** Most times that a sowing fails in a row. */
  static final int MOST_FAILURES = 1;

  /** Years after sowing from which on a stand that took grows in full. */
  static final int YEARS_TO_FULL = 2;

  // Numbers of a year stand side by side.
  static final int NUMBERS = 13;
  static final int WINTER = 0;
  static final int OTHER = 1;
  static final int STRENGTH = 2;
  static final int COST = 3;
  static final int LABOUR = 4;
  private static final int MARGIN = 5;
  static final int OLD_SHARE = 6;
  static final int CLOVER = 7;
  static final int CULTIVARS = 8;
  static final int DENSITY = 9;
  static final int OPEN = 10;
  static final int OWN_CULTIVARS = 11;
  static final int OWN_STRENGTH = 12;

  private final StandingClover stands;
  private final ActionInputs[] actions;
  private final StandYears standYears;
  private final boolean[] allowed;
  private final int years;
  private final double[] path;
  private final double[] strongestOf;
  private final boolean[] shut;
  private final boolean[] crop;
  private final boolean[] ready;
  private double[] x;
  private boolean drawn;

  ActionPaths(Farm farm, UncertainNumbers numbers, StandingClover stands, GrowthYear year) {
    this.stands = stands;
    years = farm.finance().horizonYears();
    List<Action> list = farm.actions();
    actions = list.stream().map(a -> new ActionInputs(a, numbers)).toArray(ActionInputs[]::new);
    standYears = new StandYears(this, farm, numbers, stands, year, actions);
    int paths = stands.size() * actions.length;
    allowed = new boolean[paths];
    ready = new boolean[paths];
    for (int i = 0; i < stands.size(); i++) {
      for (int a = 0; a < actions.length; a++) {
        allowed[i * actions.length + a] = farm.allows(farm.paddocks().get(i), list.get(a));
      }
    }
    path = new double[paths * (MOST_FAILURES + 1) * years * NUMBERS];
    strongestOf = new double[stands.size()];
    shut = new boolean[actions.length * years];
    crop = new boolean[actions.length * years];
    for (int a = 0; a < actions.length; a++) {
      for (int k = 0; k < years; k++) {
        crop[a * years + k] = list.get(a).cropped() && k < list.get(a).runDownYears();
        shut[a * years + k] =
            crop[a * years + k] || (list.get(a).kind().seeds() && k == list.get(a).runDownYears());
      }
    }
  }

  /**
   * Takes the numbers of a run; the stands must have been set before, and both must stay as they
   * are until the next call. A path is worked out when it is first asked for.
   *
   * @param drawn whether each number of failures is to have a path of its own; else {@link #at}
   *     must be asked for none, which gives the mean
   */
  void set(double[] x, boolean drawn) {
    this.x = x;
    this.drawn = drawn;
    Arrays.fill(ready, false);
    standYears.set(x);
    for (int i = 0; i < strongestOf.length; i++) {
      strongestOf[i] = standYears.strongest(x, i);
    }
  }

  /** A year that is alike however often a sowing fails. */
  void put(int i, int a, int k, double o, double s, double c, double l, double m, double old) {
    for (int slot = 0; slot < slots(a); slot++) {
      int at = place(i, a, slot, k);
      path[at + OTHER] = o;
      path[at + STRENGTH] = s;
      path[at + OWN_STRENGTH] = s;
      path[at + COST] = c;
      path[at + LABOUR] = l;
      path[at + MARGIN] = m;
      path[at + OLD_SHARE] = old;
      path[at + CLOVER] = stands.cloverShare(x, i);
    }
  }

  /** Its winter: growth as of a full current stand, times what its cultivars and density make. */
  void putWinter(int i, int a, int k, double growth, double cultivars, double density) {
    for (int slot = 0; slot < slots(a); slot++) {
      int at = place(i, a, slot, k);
      path[at + WINTER] = growth * cultivars * density;
      path[at + CULTIVARS] = cultivars;
      path[at + DENSITY] = density;
      path[at + OPEN] = growth;
      path[at + OWN_CULTIVARS] = cultivars;
    }
  }

  /** Its clover share, where that is not the paddock's own. */
  void putClover(int i, int a, int k, double clover) {
    path[place(i, a, 0, k) + CLOVER] = clover;
  }

  /** Adds numbers to those of a year that stands in a slot, or begins it anew with them. */
  void add(int i, int a, int slot, int k, double[] numbers, boolean anew) {
    int at = place(i, a, slot, k);
    if (anew) {
      Arrays.fill(path, at, at + NUMBERS, 0);
    }
    for (int n = 0; n < NUMBERS; n++) {
      path[at + n] += numbers[n];
    }
  }

  /** Whether each number of failures has a path of its own. */
  boolean isDrawn() {
    return drawn;
  }

  private int slots(int a) {
    return drawn && actions[a].action().sows() ? MOST_FAILURES + 1 : 1;
  }

  /** Where year {@code k} of an action on a paddock stands whose sowing fails so often. */
  int at(int i, int a, int failures, int k) {
    if (!ready[i * actions.length + a]) {
      standYears.fill(x, i, a);
      ready[i * actions.length + a] = true;
    }
    return place(i, a, failures, k);
  }

  private int place(int i, int a, int failures, int k) {
    return (((i * actions.length + a) * (MOST_FAILURES + 1) + failures) * years + k) * NUMBERS;
  }

  /** The same of an action that does not sow. */
  int at(int i, int a, int k) {
    return at(i, a, 0, k);
  }

  /** The chance that a sowing takes, mean over seasons, 0 to 1. */
  double establishmentChance(double[] x, int a) {
    return actions[a].establishmentChance(x);
  }

  /** Whether the action can be done on the paddock at all. */
  boolean allowed(int i, int a) {
    return allowed[i * actions.length + a];
  }

  int establishmentInput(int a) {
    return actions[a].establishmentInput();
  }

  /** Whether the paddock is out of grazing for a part of year {@code k} or all of it. */
  boolean isShut(int a, int k) {
    return shut[a * years + k];
  }

  /** Whether the paddock is in crop in year {@code k}. */
  boolean isCrop(int a, int k) {
    return crop[a * years + k];
  }

  /** Growth in the winter months relative to a current stand, of the year that stands there. */
  double winter(int at) {
    return path[at + WINTER];
  }

  /** The same in the other months. */
  double other(int at) {
    return path[at + OTHER];
  }

  /** What of the growth in winter the cultivars make. */
  double cultivars(int at) {
    return path[at + CULTIVARS];
  }

  /** And what the density of the clover makes of it. */
  double density(int at) {
    return path[at + DENSITY];
  }

  /** The rest: what is open to grazing, as of a full current stand. */
  double open(int at) {
    return path[at + OPEN];
  }

  /** {@link #cultivars} had the seed sown been the paddock's own present mix. */
  double ownCultivars(int at) {
    return path[at + OWN_CULTIVARS];
  }

  /** {@link #strength} had the seed sown been that mix. */
  double ownStrength(int at) {
    return path[at + OWN_STRENGTH];
  }

  /** Formononetin, per cent of intake, if all that is eaten were this paddock's green feed. */
  double strength(int at) {
    return path[at + STRENGTH];
  }

  /** Shares of the species of a paddock in each year of a sowing, at {@code year * species + c}. */
  double[] plantShares(int i, int a) {
    return standYears.plantShares(x, i, a);
  }

  /** No path has stronger clover. */
  double strongest() {
    double strongest = 0;
    for (double value : strongestOf) {
      strongest = Math.max(strongest, value);
    }
    return strongest;
  }

  /** Paid for the action, own labour aside. */
  double costPerHa(int at) {
    return path[at + COST];
  }

  double labourPerHa(int at) {
    return path[at + LABOUR];
  }

  double marginPerHa(int at) {
    return path[at + MARGIN];
  }

  double oldShare(int at) {
    return path[at + OLD_SHARE];
  }

  /** Clover as a share of the green feed; of a crop year, that of the paddock before. */
  double cloverShare(int at) {
    return path[at + CLOVER];
  }
}
