package swardcase.plan;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import swardcase.chance.Range;
import swardcase.evidence.Assumption;
import swardcase.evidence.Evidence;
import swardcase.evidence.SetBy;
import swardcase.farm.Farm;
import swardcase.farm.LeafTest;
import swardcase.farm.Paddock;
import swardcase.sward.Composition;
import swardcase.sward.LeafAgreement;
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
final class Stands {

  private final List<Paddock> paddocks;
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

  /** What stands in each paddock, worked out once for all runs. */
  static List<Composition> compositions(Farm farm, Tables tables) {
    double designEffect = tables.parameter("stand.design-effect").likely();
    return farm.paddocks().stream()
        .map(paddock -> Composition.of(paddock, tables, designEffect))
        .toList();
  }

  Stands(Farm farm, Tables tables, Inputs inputs, List<Composition> compositions) {
    paddocks = farm.paddocks();
    int n = paddocks.size();
    composition = new Composition[n];
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
    Map<String, Integer> yieldOfClass = new LinkedHashMap<>();
    Map<String, Integer> formononetinOf = new LinkedHashMap<>();
    for (int i = 0; i < n; i++) {
      Paddock paddock = paddocks.get(i);
      composition[i] = compositions.get(i);
      List<Cultivar> names = new ArrayList<>();
      for (int c = 0; c < composition[i].size(); c++) {
        names.add(composition[i].cultivar(c));
      }
      names.add(tables.cultivar(farm.sownCultivar()));
      species[i] = names.toArray(Cultivar[]::new);
      cloverShare[i] =
          inputs.addOf(
              i, paddock.cloverShare().named("clover share of green feed: " + paddock.name()));
      growthIndex[i] =
          inputs.addOf(i, paddock.growthIndex().named("growth index: " + paddock.name()));
      Range old = composition[i].estimate(Cultivar::isOld);
      likelyOldShare[i] = old.likely();
      weight[i] = weights(composition[i], old.likely());
      oldShare[i] =
          inputs.addOf(
              i,
              new Assumption(
                  "old cultivars, share of clover: " + paddock.name(),
                  old,
                  "fraction",
                  composition[i].lookedAt() ? Evidence.FARM : Evidence.INFERRED,
                  "",
                  composition[i].lookedAt() ? SetBy.USER : SetBy.DEFAULT));
      leafTest[i] = leafTest(inputs, i);
      winterYield[i] = new int[species[i].length];
      formononetin[i] = new int[species[i].length];
      share[i] = new double[species[i].length];
      for (int c = 0; c < species[i].length; c++) {
        Cultivar cultivar = species[i][c];
        winterYield[i][c] =
            yieldOfClass.computeIfAbsent(
                cultivar.winterYieldClass(),
                name ->
                    inputs.add(
                        cultivar
                            .relativeWinterYield()
                            .named("winter growth against current cultivars: class " + name)));
        formononetin[i][c] =
            formononetinOf.computeIfAbsent(
                cultivar.formononetin().isPresent() ? cultivar.name() : "",
                name ->
                    inputs.add(
                        cultivar
                            .formononetin()
                            .map(value -> value.named("formononetin of " + name))
                            .orElse(tables.parameter("dose.unknown-formononetin"))));
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

  private int leafTest(Inputs inputs, int i) {
    Paddock paddock = paddocks.get(i);
    return paddock.leafTest().map(test -> inputs.addOf(i, asInput(paddock, test))).orElse(-1);
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
  void set(double[] x) {
    for (int i = 0; i < species.length; i++) {
      set(x, i);
    }
  }

  /** The same for one paddock. */
  void set(double[] x, int i) {
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
  void set(double[][] drawn) {
    for (int i = 0; i < species.length; i++) {
      int present = species[i].length - 1;
      System.arraycopy(drawn[i], 0, share[i], 0, present);
      share[i][present] = 0;
    }
  }

  int size() {
    return species.length;
  }

  Composition composition(int paddock) {
    return composition[paddock];
  }

  /** Species of a paddock, the sown one last. */
  int species(int paddock) {
    return species[paddock].length;
  }

  Cultivar cultivar(int paddock, int c) {
    return species[paddock][c];
  }

  /** Share of each species in the clover as it stands, in this run; the caller must not write. */
  double[] shares(int paddock) {
    return share[paddock];
  }

  double cloverShare(double[] x, int paddock) {
    return x[cloverShare[paddock]];
  }

  double growthIndex(double[] x, int paddock) {
    return x[growthIndex[paddock]];
  }

  double winterYield(double[] x, int paddock, int c) {
    return x[winterYield[paddock][c]];
  }

  /**
   * Formononetin of a species, per cent of leaf. A leaf test speaks for all clover standing in the
   * paddock, so it replaces the table for every species but the sown one.
   */
  double formononetin(double[] x, int paddock, int c) {
    boolean sown = c == species[paddock].length - 1;
    return leafTest[paddock] >= 0 && !sown ? x[leafTest[paddock]] : x[formononetin[paddock][c]];
  }

  /** Place of the paddock's old share in the inputs. */
  int oldShareInput(int paddock) {
    return oldShare[paddock];
  }

  /** Place of the paddock's clover share in the inputs. */
  int cloverShareInput(int paddock) {
    return cloverShare[paddock];
  }
}
