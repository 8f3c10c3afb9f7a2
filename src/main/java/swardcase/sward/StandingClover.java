package swardcase.sward;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import swardcase.chance.Range;
import swardcase.evidence.Assumption;
import swardcase.evidence.Evidence;
import swardcase.evidence.SetBy;
import swardcase.evidence.UncertainNumbers;
import swardcase.farm.Farm;
import swardcase.farm.LeafTest;
import swardcase.farm.Paddock;
import swardcase.tables.Cultivar;
import swardcase.tables.Tables;

/**
 * The clover standing in each paddock, as numbers of one run: the share of each cultivar, its
 * winter growth and its formononetin.
 *
 * <p>Species of a paddock are the names in its {@link Composition} and, last, the cultivar that a
 * resowing would sow. Winter growth is one draw for all cultivars of a class, and formononetin one
 * for each cultivar: the doubt is in what is known of them, not from paddock to paddock.
 */
public final class StandingClover {

  /** Key of formononetin where nothing is known of a cultivar, % of leaf dry matter. */
  public static final String UNKNOWN_FORMONONETIN = "dose.unknown-formononetin";

  private static final String CLOVER_SHARE = ".clover-share";
  private static final String GROWTH_INDEX = ".growth-index";
  private static final String OLD_SHARE = ".old-share";
  private static final String LEAF_TEST = ".leaf-test";
  private static final String WINTER_YIELD = "winter-yield.";
  private static final String FORMONONETIN = "formononetin.";

  private final Composition[] composition;
  private final Cultivar[][] species;
  private final int[] cloverShare;
  private final int[] growthIndex;
  private final int[] oldShare;
  private final double[] likelyOldShare;
  private final double[][] weight;
  private final int[] leafTest;
  private final int[][] winterYield;
  private final int[][] formononetin;
  private final double[][] share;
  private final boolean[] allSown;

  /** What stands in each paddock, worked out once for all runs. */
  public static List<Composition> compositions(Farm farm, Tables tables) {
    double designEffect = tables.likely("stand.design-effect");
    return farm.paddocks().stream()
        .map(paddock -> Composition.of(paddock, tables, designEffect))
        .toList();
  }

  /** Enters every uncertain number of what stands in the paddocks of a farm. */
  public static void enter(
      UncertainNumbers.Builder numbers, Farm farm, Tables tables, List<Composition> compositions) {
    for (int i = 0; i < farm.paddocks().size(); i++) {
      Paddock paddock = farm.paddocks().get(i);
      boolean counted = compositions.get(i).lookedAt();
      numbers.addOf(
          i,
          key(paddock, CLOVER_SHARE),
          paddock.cloverShare().named("clover share of green feed: " + paddock.name()));
      numbers.addOf(
          i,
          key(paddock, GROWTH_INDEX),
          paddock.growthIndex().named("growth index: " + paddock.name()));
      numbers.addOf(
          i,
          key(paddock, OLD_SHARE),
          new Assumption(
              "old cultivars, share of clover: " + paddock.name(),
              compositions.get(i).estimate(Cultivar::isOld),
              "fraction",
              counted ? Evidence.FARM : Evidence.INFERRED,
              "",
              counted ? SetBy.USER : SetBy.DEFAULT));
      if (paddock.seedlingsPerM2().isPresent()) {
        Range seedlings = Range.exactly(paddock.seedlingsPerM2().getAsDouble());
        numbers.addOf(
            i,
            keyOfSeedlings(paddock),
            Assumption.ofFarm("clover seedlings: " + paddock.name(), seedlings, "/m2"));
      }
      if (paddock.leafTest().isPresent()) {
        numbers.addOf(i, key(paddock, LEAF_TEST), asInput(paddock, paddock.leafTest().get()));
      }
      for (Cultivar cultivar : species(compositions.get(i), farm, tables)) {
        numbers.add(
            keyOfYield(cultivar),
            cultivar
                .relativeWinterYield()
                .named(
                    "winter growth against current cultivars: class "
                        + cultivar.winterYieldClass()));
        numbers.add(
            keyOfFormononetin(cultivar),
            cultivar
                .formononetin()
                .map(value -> value.named("formononetin of " + cultivar.name()))
                .orElse(tables.parameter(UNKNOWN_FORMONONETIN)));
      }
    }
  }

  /** Key of the seedlings counted in a paddock, per m2; entered only where they were counted. */
  public static String keyOfSeedlings(Paddock paddock) {
    return key(paddock, ".seedlings");
  }

  private static String key(Paddock paddock, String number) {
    return "paddock." + paddock.name() + number;
  }

  /** Key of winter growth, one number for all cultivars of a class. */
  public static String keyOfYield(Cultivar cultivar) {
    return WINTER_YIELD + cultivar.winterYieldClass();
  }

  private static String keyOfFormononetin(Cultivar cultivar) {
    return cultivar.formononetin().isPresent()
        ? FORMONONETIN + cultivar.name()
        : UNKNOWN_FORMONONETIN;
  }

  /**
   * Places of the numbers of clover that nobody would look up to settle the answer of a paddock:
   * those of names that are not in it, and those that a walk or a leaf test there would tell.
   *
   * @param sown the cultivar that is sown there, whose winter growth then counts; empty if none is
   */
  public static Set<Integer> beside(
      UncertainNumbers numbers, Paddock paddock, Composition clover, Optional<Cultivar> sown) {
    Set<Integer> beside = new HashSet<>(numbers.placesOf(FORMONONETIN));
    beside.addAll(numbers.placesOf(WINTER_YIELD));
    for (int c = 0; c < clover.size() && clover.lookedAt(); c++) {
      if (clover.likelyShare(c) > 0) {
        beside.remove(numbers.place(keyOfFormononetin(clover.cultivar(c))));
        beside.remove(numbers.place(keyOfYield(clover.cultivar(c))));
      }
    }
    sown.ifPresent(cultivar -> beside.remove(numbers.place(keyOfYield(cultivar))));
    Stream.of(UNKNOWN_FORMONONETIN, key(paddock, OLD_SHARE), key(paddock, LEAF_TEST))
        .flatMapToInt(key -> numbers.find(key).stream())
        .forEach(beside::add);
    return beside;
  }

  /** Names in a paddock's clover and, last, the cultivar that a resowing would sow. */
  public static List<Cultivar> species(Composition composition, Farm farm, Tables tables) {
    List<Cultivar> species = new ArrayList<>();
    for (int c = 0; c < composition.size(); c++) {
      species.add(composition.cultivar(c));
    }
    species.add(tables.cultivar(farm.sownCultivar()));
    return species;
  }

  /** The clover of a farm, whose numbers stand in the register. */
  public StandingClover(
      Farm farm, Tables tables, UncertainNumbers numbers, List<Composition> compositions) {
    int n = farm.paddocks().size();
    composition = compositions.toArray(Composition[]::new);
    species = new Cultivar[n][];
    cloverShare = new int[n];
    growthIndex = new int[n];
    oldShare = new int[n];
    likelyOldShare = new double[n];
    weight = new double[n][];
    leafTest = new int[n];
    winterYield = new int[n][];
    formononetin = new int[n][];
    share = new double[n][];
    allSown = new boolean[n];
    for (int i = 0; i < n; i++) {
      Paddock paddock = farm.paddocks().get(i);
      species[i] = species(composition[i], farm, tables).toArray(Cultivar[]::new);
      Cultivar sown = species[i][species[i].length - 1];
      allSown[i] = composition[i].estimate(sown::equals).likely() == 1;
      cloverShare[i] = numbers.place(key(paddock, CLOVER_SHARE));
      growthIndex[i] = numbers.place(key(paddock, GROWTH_INDEX));
      oldShare[i] = numbers.place(key(paddock, OLD_SHARE));
      likelyOldShare[i] = numbers.get(oldShare[i]).likely();
      weight[i] = weights(composition[i], likelyOldShare[i]);
      leafTest[i] = numbers.find(key(paddock, LEAF_TEST)).orElse(-1);
      winterYield[i] = new int[species[i].length];
      formononetin[i] = new int[species[i].length];
      share[i] = new double[species[i].length];
      for (int c = 0; c < species[i].length; c++) {
        winterYield[i][c] = numbers.place(keyOfYield(species[i][c]));
        formononetin[i][c] = numbers.place(keyOfFormononetin(species[i][c]));
      }
    }
  }

  /**
   * What the names of a group, the old cultivars or all others, stand in proportion to: the plants
   * counted; where none of the group was counted, the small mean shares that the count leaves to
   * what was looked for and not found, as parts of the group.
   */
  private static double[] weights(Composition composition, double likelyOld) {
    double[] weights = new double[composition.size()];
    double meanOld = 0;
    double meanOthers = 0;
    for (int c = 0; c < weights.length; c++) {
      meanOld += composition.cultivar(c).isOld() ? composition.meanShare(c) : 0;
      meanOthers += composition.cultivar(c).isOld() ? 0 : composition.meanShare(c);
    }
    for (int c = 0; c < weights.length; c++) {
      boolean old = composition.cultivar(c).isOld();
      boolean counted = old ? likelyOld > 0 : likelyOld < 1;
      weights[c] =
          counted
              ? composition.likelyShare(c)
              : composition.meanShare(c) / (old ? meanOld : meanOthers);
    }
    return weights;
  }

  private static Assumption asInput(Paddock paddock, LeafTest test) {
    return Assumption.ofFarm(
        "formononetin, leaf test: " + paddock.name(),
        LeafAgreement.interval(test),
        "% of leaf dry matter");
  }

  /**
   * Takes the shares for a run: the likely ones of the composition, with the old cultivars as a
   * group moved to the share in {@code x} and the rest filling up, each group in its own
   * proportions. They add up to one, also where none of a group was counted.
   */
  public void set(double[] x) {
    for (int i = 0; i < species.length; i++) {
      set(x, i);
    }
  }

  /** The same for one paddock. */
  public void set(double[] x, int i) {
    double old = x[oldShare[i]];
    double usual = likelyOldShare[i];
    double ofOld = usual > 0 ? usual : 1;
    double ofOthers = usual < 1 ? 1 - usual : 1;
    int present = species[i].length - 1;
    for (int c = 0; c < present; c++) {
      share[i][c] =
          species[i][c].isOld()
              ? Math.min(1, weight[i][c] * old / ofOld)
              : Math.min(1, weight[i][c] * Math.max(0, 1 - old) / ofOthers);
    }
    share[i][present] = 0;
  }

  /** Takes drawn shares for a run: for each paddock that of each name in its composition. */
  public void set(double[][] drawn) {
    for (int i = 0; i < species.length; i++) {
      int present = species[i].length - 1;
      System.arraycopy(drawn[i], 0, share[i], 0, present);
      share[i][present] = 0;
    }
  }

  /** How many paddocks there are. */
  public int size() {
    return species.length;
  }

  /** Names and shares of the clover in a paddock, with their doubt. */
  public Composition composition(int paddock) {
    return composition[paddock];
  }

  /** Species of a paddock, the sown one last. */
  public int species(int paddock) {
    return species[paddock].length;
  }

  /** A species of a paddock, from 0; the sown one stands last. */
  public Cultivar cultivar(int paddock, int c) {
    return species[paddock][c];
  }

  /** Share of each species in the clover as it stands, in this run; the caller must not write. */
  public double[] shares(int paddock) {
    return share[paddock];
  }

  /** How much of the standing clover is, in this run, the cultivar that would be sown, 0 to 1. */
  public double alreadySown(int paddock) {
    Cultivar[] of = species[paddock];
    double sum = 0;
    for (int c = 0; c < of.length - 1; c++) {
      sum += of[c].equals(of[of.length - 1]) ? share[paddock][c] : 0;
    }
    return sum;
  }

  /** Whether all clover plants looked at are the cultivar that would be sown. */
  public boolean isAllSown(int paddock) {
    return allSown[paddock];
  }

  /** Clover as a share of the green feed, 0 to 1. */
  public double cloverShare(double[] x, int paddock) {
    return x[cloverShare[paddock]];
  }

  /** Growth of a paddock relative to the district's profile: 1.2 grows a fifth more. */
  public double growthIndex(double[] x, int paddock) {
    return x[growthIndex[paddock]];
  }

  /** Winter growth of a species relative to a current cultivar: 0.9 grows a tenth less. */
  public double winterYield(double[] x, int paddock, int c) {
    return x[winterYield[paddock][c]];
  }

  /**
   * Formononetin of a species, per cent of leaf. A leaf test speaks for all clover standing in the
   * paddock, so it replaces the table for every species but the sown one. For that one it speaks as
   * far as the standing clover is of the same cultivar (inferred): tested at 1.2 %, 0.8 in the
   * table and half of the clover, it is taken to have 1.0 %.
   */
  public double formononetin(double[] x, int paddock, int c) {
    double ofTable = x[formononetin[paddock][c]];
    if (leafTest[paddock] < 0) {
      return ofTable;
    }
    double tested = x[leafTest[paddock]];
    boolean sown = c == species[paddock].length - 1;
    double weight = sown ? alreadySown(paddock) : 1;
    return weight * tested + (1 - weight) * ofTable;
  }

  /** Place of the paddock's old share in the inputs. */
  public int oldShareInput(int paddock) {
    return oldShare[paddock];
  }

  /** Place of the paddock's clover share in the inputs. */
  public int cloverShareInput(int paddock) {
    return cloverShare[paddock];
  }
}
