package swardcase.sward;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.function.Predicate;
import java.util.function.ToDoubleFunction;
import java.util.random.RandomGenerator;
import java.util.stream.IntStream;
import swardcase.chance.Dirichlet;
import swardcase.chance.Pert;
import swardcase.chance.Proportion;
import swardcase.chance.Range;
import swardcase.check.Check;
import swardcase.evidence.Assumption;
import swardcase.farm.Identification;
import swardcase.farm.Paddock;
import swardcase.tables.Cultivar;
import swardcase.tables.Tables;

/**
 * What the plants looked at say of the cultivar shares of a paddock's clover.
 *
 * <p>The shares have a Dirichlet posterior. Each of the K names, one of them "the rest", starts
 * with 1/K and gains its plants divided by the design effect, because plants along a walked line
 * are clumped: with an effect of 2, a hundred plants count as fifty. Plants that could be any of
 * several cultivars are split evenly between them in the means; in a draw ({@link #sample}) they
 * are all of one of them, since one walker who cannot tell two cultivars apart has met one of the
 * two.
 *
 * <p>The rest, always last, is the table's row {@code unidentified}. If nobody looked at a plant it
 * is the only one.
 */
public final class Composition {

  /** Share of unknown formononetin above which a paddock's dose is called unknown (inferred). */
  public static final double MUCH_UNKNOWN = 0.2;

  /** Name of the table row that stands for the rest. */
  public static final String UNIDENTIFIED = "unidentified";

  private static final int SLICES = 200;

  private final List<Cultivar> cultivars;
  private final Dirichlet shares;
  private final double unknownHighChance;
  private final double designEffect;
  private final boolean lookedAt;
  private final double[] certain;
  private final int[][] candidates;
  private final double[] candidatePlants;

  private Composition(
      List<Cultivar> cultivars,
      double[] alpha,
      double[] certain,
      List<Candidates> unresolved,
      double unknownHighChance,
      double designEffect,
      boolean lookedAt) {
    this.cultivars = List.copyOf(cultivars);
    this.shares = Dirichlet.of(alpha);
    this.unknownHighChance = unknownHighChance;
    this.designEffect = designEffect;
    this.lookedAt = lookedAt;
    this.certain = certain;
    this.candidates = unresolved.stream().map(Candidates::places).toArray(int[][]::new);
    this.candidatePlants = unresolved.stream().mapToDouble(Candidates::plants).toArray();
  }

  /** Plants, divided by the design effect, that are all of one of these places. */
  private record Candidates(int[] places, double plants) {}

  /**
   * The posterior of a paddock.
   *
   * @param designEffect how many plants along the line tell as much as one picked at random, 1 or
   *     more
   */
  public static Composition of(Paddock paddock, Tables tables, double designEffect) {
    Check.that(designEffect >= 1, "design effect must be 1 or more, but was %s", designEffect);
    SortedMap<String, Double> plants = new TreeMap<>();
    double rest = 0;
    boolean lookedAt = paddock.isLookedAt();
    if (lookedAt) {
      for (Identification found : paddock.identifications()) {
        double each = found.plants() / found.candidates().size();
        for (String name : found.candidates()) {
          if (name.equals(UNIDENTIFIED)) {
            rest += each;
          } else {
            plants.merge(name, each, Double::sum);
          }
        }
      }
    }
    int names = plants.size() + 1;
    List<Cultivar> cultivars = new ArrayList<>();
    double[] alpha = new double[names];
    for (var entry : plants.entrySet()) {
      alpha[cultivars.size()] = entry.getValue() / designEffect + 1.0 / names;
      cultivars.add(tables.cultivar(entry.getKey()));
    }
    alpha[names - 1] = rest / designEffect + 1.0 / names;
    cultivars.add(tables.cultivar(UNIDENTIFIED));
    double[] certain = new double[names];
    Arrays.fill(certain, 1.0 / names);
    List<Candidates> unresolved = new ArrayList<>();
    if (lookedAt) {
      List<String> order = cultivars.stream().map(Cultivar::name).toList();
      for (Identification found : paddock.identifications()) {
        double counted = found.plants() / designEffect;
        int[] places = found.candidates().stream().mapToInt(order::indexOf).toArray();
        if (places.length == 1) {
          certain[places[0]] += counted;
        } else {
          unresolved.add(new Candidates(places, counted));
        }
      }
    }
    double unknownHighChance = tables.likely(Tables.UNKNOWN_HIGH_CHANCE);
    return new Composition(
        cultivars, alpha, certain, unresolved, unknownHighChance, designEffect, lookedAt);
  }

  /**
   * Draws shares into {@code into}: for plants that may be any of several cultivars one of these is
   * picked, each with the same chance, and takes them all; then the shares follow the Dirichlet
   * distribution of the counts. Their means over many draws are those of {@link #meanShare}.
   * Allocates nothing.
   *
   * @param into as long as {@link #size()}
   */
  public void sample(RandomGenerator random, double[] into) {
    System.arraycopy(certain, 0, into, 0, certain.length);
    for (int k = 0; k < candidates.length; k++) {
      int[] places = candidates[k];
      into[places[(int) (random.nextDouble() * places.length)]] += candidatePlants[k];
    }
    Dirichlet.sampleInPlace(random, into);
  }

  /**
   * The most likely share: that of the plants counted. A cultivar that nobody found has none,
   * though {@link #meanShare} leaves it a little; a paddock nobody walked has its mean.
   */
  public double likelyShare(int i) {
    return lookedAt ? (alpha(i) - 1.0 / size()) / (shares.total() - 1) : meanShare(i);
  }

  /** The likely share of a name with its interval. */
  public Range estimate(int i) {
    return about(likelyShare(i), share(i));
  }

  /** The likely share of a group with its interval. */
  public Range estimate(Predicate<Cultivar> of) {
    double likely = 0;
    for (int i = 0; i < size(); i++) {
      likely += of.test(cultivar(i)) ? likelyShare(i) : 0;
    }
    return about(likely > 1 - 1e-9 ? 1 : likely, share(of));
  }

  private static Range about(double likely, Range interval) {
    return Range.of(Math.min(likely, interval.low()), likely, Math.max(likely, interval.high()));
  }

  /** How many plants along the line tell as much as one picked at random. */
  public double designEffect() {
    return designEffect;
  }

  /** Whether anybody looked at a plant. */
  public boolean lookedAt() {
    return lookedAt;
  }

  /** How many names there are, the rest included. */
  public int size() {
    return cultivars.size();
  }

  /** The cultivar at {@code i}; the last one is the rest. */
  public Cultivar cultivar(int i) {
    return cultivars.get(i);
  }

  /** The Dirichlet parameter of the cultivar at {@code i}. */
  public double alpha(int i) {
    return shares.alpha(i);
  }

  /** The mean share of the cultivar at {@code i} in the clover. */
  public double meanShare(int i) {
    return shares.mean(i);
  }

  /** 5 % quantile, mean and 95 % quantile of the share of the cultivar at {@code i}. */
  public Range share(int i) {
    return shares.interval(shares.alpha(i));
  }

  /** 5 % quantile, mean and 95 % quantile of the share of all these cultivars together. */
  public Range share(Predicate<Cultivar> of) {
    return shares.interval(alphaOf(of));
  }

  /**
   * Formononetin that the clover can have if the names are right, % of leaf dry matter.
   *
   * <p>The low end takes the lowest value of the table for each name, and as much of the names
   * poorest in it as the 90 % interval of each share allows; plants that may be several are taken
   * for the poorest of them. The high end mirrors it. 40 Dinninup of 40 plants (0.5 to 1.8 % in the
   * table) can have 0.47 to 1.8 %, because a fifteenth may be something else.
   *
   * @param unknown of cultivars whose formononetin the table does not know
   */
  public Range formononetinOfNames(Range unknown) {
    double low = least(c -> content(c, unknown).low());
    double high = -least(c -> -content(c, unknown).high());
    double likely = 0;
    for (int i = 0; i < size(); i++) {
      likely += likelyShare(i) * content(cultivar(i), unknown).likely();
    }
    return Range.of(Math.min(low, likely), likely, Math.max(high, likely));
  }

  private static Range content(Cultivar cultivar, Range unknown) {
    return cultivar.formononetin().map(Assumption::range).orElse(unknown);
  }

  /** The least mean of a content over all shares inside their intervals. */
  private double least(ToDoubleFunction<Cultivar> content) {
    Comparator<Integer> byContent =
        Comparator.comparingDouble(i -> content.applyAsDouble(cultivar(i)));
    double[] counted = certain.clone();
    for (int k = 0; k < candidates.length; k++) {
      int poorest = Arrays.stream(candidates[k]).boxed().min(byContent).orElseThrow();
      counted[poorest] += candidatePlants[k];
    }
    Dirichlet posterior = Dirichlet.of(counted);
    Range[] interval = Arrays.stream(counted).mapToObj(posterior::interval).toArray(Range[]::new);
    double left = 1 - Arrays.stream(interval).mapToDouble(Range::low).sum();
    double mean = 0;
    for (int i : IntStream.range(0, size()).boxed().sorted(byContent).toList()) {
      double more = Math.min(left, interval[i].high() - interval[i].low());
      left -= more;
      mean += (interval[i].low() + more) * content.applyAsDouble(cultivar(i));
    }
    return mean;
  }

  /** Whether too much of a paddock's clover has a formononetin nobody knows, and no test tells. */
  public boolean isOestrogenUnknown(Paddock paddock) {
    return paddock.leafTest().isEmpty() && unknownShare() > MUCH_UNKNOWN;
  }

  /** Share of the clover whose formononetin the table does not know. */
  public double unknownShare() {
    double unknown = 0;
    for (int c = 0; c < size(); c++) {
      unknown += cultivar(c).formononetin().isEmpty() ? meanShare(c) : 0;
    }
    return unknown;
  }

  /**
   * The probability that high-oestrogen clover makes up more than {@code shareOfSward} of the
   * sward: clover share × high-oestrogen share of the clover above, say, 0.20.
   *
   * <p>Integrates over the PERT distribution of the clover share in equal slices of probability.
   * Cultivars of unknown formononetin are high together or not at all; the chance that they are is
   * the district's or the table's {@code stand.unknown-high-chance}. A paddock nobody looked at is
   * therefore never called safe.
   *
   * @param cloverShare clover as a fraction of green dry matter
   */
  public double chanceHighOestrogenAbove(double shareOfSward, Range cloverShare) {
    return chanceAbove(
        shareOfSward,
        Pert.of(cloverShare),
        alphaOf(Cultivar::highOestrogen),
        alphaOf(Composition::isUnknown),
        alphaOf(Composition::isLow));
  }

  private static boolean isUnknown(Cultivar cultivar) {
    return cultivar.formononetin().isEmpty() && !cultivar.highOestrogen();
  }

  private static boolean isLow(Cultivar cultivar) {
    return !cultivar.highOestrogen() && !isUnknown(cultivar);
  }

  private double alphaOf(Predicate<Cultivar> of) {
    double sum = 0;
    for (int i = 0; i < size(); i++) {
      if (of.test(cultivars.get(i))) {
        sum += shares.alpha(i);
      }
    }
    return sum;
  }

  private double chanceAbove(
      double shareOfSward, Pert clover, double high, double unknown, double low) {
    double ifUnknownIsLow = chanceAbove(shareOfSward, clover, high, unknown + low);
    return unknown == 0
        ? ifUnknownIsLow
        : unknownHighChance * chanceAbove(shareOfSward, clover, high + unknown, low)
            + (1 - unknownHighChance) * ifUnknownIsLow;
  }

  private static double chanceAbove(double shareOfSward, Pert clover, double high, double rest) {
    double sum = 0;
    for (int i = 0; i < SLICES; i++) {
      double cloverShare = clover.quantile((i + 0.5) / SLICES);
      sum += cloverShare > 0 ? Proportion.betaAbove(shareOfSward / cloverShare, high, rest) : 0;
    }
    return sum / SLICES;
  }
}
