package swardcase.draws;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import swardcase.chance.CountedRandom;
import swardcase.chance.LatinHypercube;
import swardcase.chance.PairedUniforms;
import swardcase.chance.Pert;
import swardcase.chance.Range;
import swardcase.chance.SideBySide;
import swardcase.evidence.Assumption;
import swardcase.farm.Paddock;
import swardcase.outcome.Draw;
import swardcase.outcome.FarmModel;
import swardcase.outcome.OutcomeFunction;
import swardcase.sward.Composition;
import swardcase.tables.ResponseStory;

/**
 * The drawn assumptions of a farm. Draw 17 is the same whatever was drawn before it, by whichever
 * thread, and for whichever plan: differences between plans are never differences of luck.
 *
 * <p>Every uncertain number follows a {@link Pert} distribution and has one uniform number a draw,
 * spread by {@link LatinHypercube}. Shared errors are one number each: the winter growth of a class
 * of cultivars, the formononetin of a cultivar, a price, and what different actions have in common,
 * such as the margin of a crop year. The price of lambs and that of supplement are tied to each
 * other ({@link PairedUniforms}). The clover of a paddock is drawn from its {@link Composition},
 * and its share of old cultivars follows from that. The season type of each year has a uniform
 * number of its own, as any input has.
 *
 * <p>A draw with which an observed figure of a mob could not have come about is thrown away and
 * drawn anew from streams of its own, by {@link DrawnFarm}.
 */
public final class Draws {

  private static final int NONE = -1;

  /** Keys of numbers that bear on no figure of a flock as its paddocks are grazed now. */
  private static final List<String> BESIDE_THE_FLOCK =
      List.of("action.", "price.", "finance.", "supplement.");

  /** The same of numbers that bear on no record: supplement fed hangs on what is in it. */
  private static final List<String> BESIDE_THE_RECORDS = List.of("action.", "price.", "finance.");

  /** Streams of a draw that is made anew lie beyond those of any draw or block. */
  private static final int ANEW = 32;

  private final FarmModel model;
  private final long seed;
  private final List<String> keys;
  private final LatinHypercube uniforms;
  private final int[] dimension;
  private final double[] low;
  private final double[] width;
  private final Pert[] shape;
  private final Map<Double, Pert> shapeOfMode;
  private final int story;
  private final double[] chanceOfStory;
  private final boolean[] bearsOnFlock;
  private final int lambPrice;
  private final int supplementPrice;
  private final double[] supplementUniform;
  private final Composition[] composition;
  private final int[] oldShareInput;
  private final boolean[][] isOld;
  private final int firstSeason;
  private final long[] part;
  private final long[] partOf;
  private final double[] chanceOfSeason;
  private final OutcomeFunction run;
  private Optional<Weighing> weighing = Optional.empty();

  /**
   * The draws of a farm: so many blocks of so many draws each, all from one seed. Those of a farm
   * with records are weighed by them, each block by itself.
   */
  public Draws(FarmModel model, long seed, int blocks, int perBlock) {
    this(model, seed, blocks, perBlock, model.newRun(), Map.of());
    weigh(blocks);
  }

  private Draws(
      FarmModel model,
      long seed,
      int blocks,
      int perBlock,
      OutcomeFunction run,
      Map<Double, Pert> knownShapes) {
    this.model = model;
    this.run = run;
    this.seed = seed;
    List<Assumption> inputs = new ArrayList<>(model.inputs().all());
    inputs.add(model.farm().prices().priceCorrelation());
    dimension = dimensions(inputs);
    firstSeason = inputs.size();
    keys = new ArrayList<>();
    for (int j = 0; j < firstSeason; j++) {
      keys.add(j < model.inputs().size() ? model.inputs().doubt(j) : inputs.get(j).name());
    }
    for (int t = 0; t < model.years(); t++) {
      keys.add("season of year " + t);
    }
    partOf = keys.stream().mapToLong(CountedRandom::part).toArray();
    uniforms = LatinHypercube.of(seed, blocks, perBlock, keys);
    chanceOfSeason =
        model.farm().feedYear().seasons().stream()
            .mapToDouble(season -> season.chance().likely())
            .toArray();
    List<Range> reach = inputs.stream().map(DrawnReach::of).toList();
    low = reach.stream().mapToDouble(Range::low).toArray();
    width = reach.stream().mapToDouble(range -> range.high() - range.low()).toArray();
    shapeOfMode = shapes(reach, knownShapes);
    shape = reach.stream().map(range -> shapeOfMode.get(mode(range))).toArray(Pert[]::new);
    story = model.inputs().find(ResponseStory.KEY).orElse(NONE);
    chanceOfStory = ResponseStory.chances(model.tables());
    bearsOnFlock = new boolean[inputs.size()];
    Arrays.fill(bearsOnFlock, 0, model.inputs().size(), true);
    boolean hasRecords = !model.farm().records().isEmpty();
    for (String prefix : hasRecords ? BESIDE_THE_RECORDS : BESIDE_THE_FLOCK) {
      model.inputs().placesOf(prefix).forEach(j -> bearsOnFlock[dimension[j]] = false);
    }
    lambPrice = model.inputs().place(OutcomeFunction.LAMB_VALUE);
    supplementPrice = model.inputs().place(OutcomeFunction.SUPPLEMENT_PRICE);
    supplementUniform = pairedWithLambs();
    List<Paddock> paddocks = model.farm().paddocks();
    part =
        paddocks.stream()
            .mapToLong(paddock -> CountedRandom.part("clover of " + paddock.name()))
            .toArray();
    composition = new Composition[paddocks.size()];
    oldShareInput = new int[composition.length];
    isOld = new boolean[composition.length][];
    for (int i = 0; i < composition.length; i++) {
      composition[i] = run.composition(i);
      oldShareInput[i] = run.oldShareInput(i);
      isOld[i] = new boolean[composition[i].size()];
      for (int c = 0; c < isOld[i].length; c++) {
        isOld[i][c] = composition[i].cultivar(c).isOld();
      }
    }
  }

  /**
   * Other draws of the same farm: what does not hang on the seed is not worked out again. They are
   * weighed by the farm's records, all in one pool, if these are.
   */
  public Draws anew(long otherSeed, int blocks, int perBlock) {
    Draws other = new Draws(model, otherSeed, blocks, perBlock, run, shapeOfMode);
    if (weighing.isPresent()) {
      int effective = Math.max(Weighing.EFFECTIVE, other.count());
      other.weighing = Optional.of(Weighing.of(other, 1, effective, Weighing.MOST_IN_SEARCH));
    }
    return other;
  }

  /** As many draws from the same seed that no record has weighed. */
  public Draws withoutRecords() {
    int blocks = uniforms.blocks();
    return new Draws(model, seed, blocks, count() / blocks, run, shapeOfMode);
  }

  private void weigh(int pools) {
    if (!model.farm().records().isEmpty()) {
      weighing = Optional.of(Weighing.of(this, pools, Weighing.EFFECTIVE, Weighing.MOST_IN_POOL));
    }
  }

  /** How the farm's records weighed the draws; empty if it has none. */
  public Optional<Weighing> weighing() {
    return weighing;
  }

  /**
   * Draws of the same seed for the farm at other numbers; shapes that are known already need not be
   * worked out again.
   */
  public Draws at(FarmModel other, int blocks, int perBlock) {
    Draws there = new Draws(other, seed, blocks, perBlock, other.newRun(), shapeOfMode);
    there.weigh(blocks);
    return there;
  }

  private double[] pairedWithLambs() {
    int correlation = model.inputs().size();
    double[] uniform = new double[uniforms.draws()];
    for (int d = 0; d < uniform.length; d++) {
      uniform[d] =
          PairedUniforms.second(
              uniforms.uniform(d, dimension[lambPrice]),
              uniforms.uniform(d, dimension[supplementPrice]),
              value(correlation, uniforms.uniform(d, correlation)));
    }
    return uniform;
  }

  /** Numbers of different actions that stand for the same thing rise and fall together. */
  private int[] dimensions(List<Assumption> inputs) {
    Map<String, Integer> ofName = new HashMap<>();
    int[] dimensions = new int[inputs.size()];
    for (int j = 0; j < dimensions.length; j++) {
      boolean ofModel = j < model.inputs().size();
      String name = ofModel ? model.inputs().doubt(j) : inputs.get(j).name();
      Integer first = ofName.putIfAbsent(name, j);
      dimensions[j] = first == null ? j : first;
    }
    return dimensions;
  }

  /** Distributions of one shape share one table. */
  private static Map<Double, Pert> shapes(List<Range> ranges, Map<Double, Pert> known) {
    return SideBySide.of(ranges.stream().map(Draws::mode).distinct())
        .collect(
            Collectors.toConcurrentMap(
                mode -> mode,
                mode -> known.containsKey(mode) ? known.get(mode) : Pert.of(Range.of(0, mode, 1))));
  }

  private static double mode(Range range) {
    return range.isExact() ? 0.5 : (range.likely() - range.low()) / (range.high() - range.low());
  }

  private double value(int input, double uniform) {
    return width[input] == 0
        ? low[input]
        : low[input] + width[input] * shape[input].quantile(uniform);
  }

  /** How many draws there are. */
  public int count() {
    return uniforms.draws();
  }

  /** The farm. */
  public FarmModel model() {
    return model;
  }

  /** The seed that every stream starts from. */
  public long seed() {
    return seed;
  }

  /** Inputs with the same dimension move together. */
  public int dimension(int input) {
    return dimension[input];
  }

  /** The uniform numbers, which know the standard error of a mean over the draws. */
  public LatinHypercube uniforms() {
    return uniforms;
  }

  /** What the clover of a paddock is drawn from. */
  public Composition composition(int paddock) {
    return composition[paddock];
  }

  int oldShareInput(int paddock) {
    return oldShareInput[paddock];
  }

  /**
   * Fills in a draw. Allocates nothing.
   *
   * @param thrownAway how many times the draw was thrown away before, from 0; what is drawn anew is
   *     all but seasons, actions and money, which bear on no figure of the flock
   * @param random a stream of the caller's own, which is started anew
   */
  public void fill(int number, int thrownAway, CountedRandom random, Draw draw) {
    if (weighing.isPresent() && thrownAway == 0) {
      Weighing picked = weighing.get();
      fillFrom(number, picked.number(number), picked.tries(number), random, draw);
      for (int i = 0; i < draw.luck.length; i++) {
        random.restart(seed, number, ~part[i]);
        luck(random, draw.luck[i]);
      }
    } else {
      fillFrom(number, number, thrownAway, random, draw);
    }
  }

  /**
   * The same with what bears on the flock from another draw.
   *
   * @param number whose seasons, actions and money are taken
   * @param flock whose other numbers are taken, as drawn the {@code thrownAway}th time anew
   */
  void fillFrom(int number, int flock, int thrownAway, CountedRandom random, Draw draw) {
    long stream = flock + ((long) thrownAway << ANEW);
    double[] x = draw.numbers;
    for (int j = 0; j < x.length; j++) {
      x[j] = value(j, uniform(number, flock, thrownAway, stream, dimension[j], random));
    }
    if (story != NONE) {
      double uniform = uniform(number, flock, thrownAway, stream, dimension[story], random);
      x[story] = ResponseStory.of(uniform, chanceOfStory).ordinal();
    }
    x[supplementPrice] = value(supplementPrice, supplementUniform[number]);
    for (int i = 0; i < draw.shares.length; i++) {
      double[] shares = draw.shares[i];
      random.restart(seed, stream, part[i]);
      composition[i].sample(random, shares);
      double old = 0;
      for (int c = 0; c < shares.length; c++) {
        old += isOld[i][c] ? shares[c] : 0;
      }
      x[oldShareInput[i]] = old;
      luck(random, draw.luck[i]);
    }
    for (int t = 0; t < draw.seasons.length; t++) {
      draw.seasons[t] = season(uniforms.uniform(number, firstSeason + t));
    }
  }

  private static void luck(CountedRandom random, double[] into) {
    for (int t = 0; t < into.length; t++) {
      into[t] = random.nextDouble();
    }
  }

  private double uniform(
      int number, int flock, int thrownAway, long stream, int dimension, CountedRandom random) {
    if (!bearsOnFlock[dimension]) {
      return uniforms.uniform(number, dimension);
    }
    if (thrownAway == 0) {
      return uniforms.uniform(flock, dimension);
    }
    random.restart(seed, stream, partOf[dimension]);
    return random.nextDouble();
  }

  private int season(double uniform) {
    double below = chanceOfSeason[0];
    int season = 0;
    while (uniform >= below && season < chanceOfSeason.length - 1) {
      season++;
      below += chanceOfSeason[season];
    }
    return season;
  }
}
