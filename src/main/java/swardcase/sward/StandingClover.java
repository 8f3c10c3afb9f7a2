package swardcase.sward;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
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

  private static final double NORMAL_90 = 1.645;

  private final List<Paddock> paddocks;
  private final Composition[] composition;
  private final Cultivar[][] species;
  private final int[] cloverShare;
  private final int[] growthIndex;
  private final int[] oldShare;
  private final double[] likelyOldShare;
  private final int[] leafTest;
  private final int[][] winterYield;
  private final int[][] formononetin;
  private final double[][] share;

  /** What stands in each paddock, worked out once for all runs. */
  public static List<Composition> compositions(Farm farm, Tables tables) {
    double designEffect = tables.parameter("stand.design-effect").likely();
    return farm.paddocks().stream()
        .map(paddock -> Composition.of(paddock, tables, designEffect))
        .toList();
  }

  public StandingClover(
      Farm farm, Tables tables, UncertainNumbers inputs, List<Composition> compositions) {
    paddocks = farm.paddocks();
    int n = paddocks.size();
    composition = new Composition[n];
    species = new Cultivar[n][];
    cloverShare = new int[n];
    growthIndex = new int[n];
    oldShare = new int[n];
    likelyOldShare = new double[n];
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
      oldShare[i] =
          inputs.addOf(
              i,
              new Assumption(
                  "old cultivars, share of clover: " + paddock.name(),
                  old,
                  "fraction",
                  paddock.identifications().isEmpty() ? Evidence.INFERRED : Evidence.FARM,
                  "",
                  paddock.identifications().isEmpty() ? SetBy.DEFAULT : SetBy.USER));
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

  private int leafTest(UncertainNumbers inputs, int i) {
    Paddock paddock = paddocks.get(i);
    return paddock.leafTest().map(test -> inputs.addOf(i, asInput(paddock, test))).orElse(-1);
  }

  private static Assumption asInput(Paddock paddock, LeafTest test) {
    double half = NORMAL_90 * test.standardErrorPercent();
    double mean = test.formononetinPercentOfLeaf();
    return Assumption.ofFarm(
        "formononetin, leaf test: " + paddock.name(),
        Range.of(Math.max(0, mean - half), mean, mean + half),
        "% of leaf dry matter");
  }

  /**
   * Takes the shares for a run: the likely ones of the composition, with the old cultivars as a
   * group moved to the share in {@code x} and the rest filling up, each group in its own
   * proportions.
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
    int present = species[i].length - 1;
    for (int c = 0; c < present; c++) {
      double likely = composition[i].likelyShare(c);
      if (species[i][c].isOld()) {
        share[i][c] = usual > 0 ? Math.min(1, likely * old / usual) : 0;
      } else {
        share[i][c] = usual < 1 ? Math.min(1, likely * (1 - old) / (1 - usual)) : 0;
      }
    }
    if (usual == 1) {
      share[i][present - 1] = Math.max(0, 1 - old); // nothing else was counted: what was missed
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

  public int size() {
    return species.length;
  }

  public Composition composition(int paddock) {
    return composition[paddock];
  }

  /** Species of a paddock, the sown one last. */
  public int species(int paddock) {
    return species[paddock].length;
  }

  public Cultivar cultivar(int paddock, int c) {
    return species[paddock][c];
  }

  /** Share of each species in the clover as it stands, in this run; the caller must not write. */
  public double[] shares(int paddock) {
    return share[paddock];
  }

  public double cloverShare(double[] x, int paddock) {
    return x[cloverShare[paddock]];
  }

  public double growthIndex(double[] x, int paddock) {
    return x[growthIndex[paddock]];
  }

  public double winterYield(double[] x, int paddock, int c) {
    return x[winterYield[paddock][c]];
  }

  /**
   * Formononetin of a species, per cent of leaf. A leaf test speaks for all clover standing in the
   * paddock, so it replaces the table for every species but the sown one.
   */
  public double formononetin(double[] x, int paddock, int c) {
    boolean sown = c == species[paddock].length - 1;
    return leafTest[paddock] >= 0 && !sown ? x[leafTest[paddock]] : x[formononetin[paddock][c]];
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
