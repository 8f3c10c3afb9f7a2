package swardcase.draws;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.Predicate;
import swardcase.chance.BetaBinomial;
import swardcase.chance.CountedRandom;
import swardcase.chance.SharedError;
import swardcase.evidence.Assumption;
import swardcase.farm.Farm;
import swardcase.farm.FlockRecord;
import swardcase.farm.Mob;
import swardcase.farm.SeasonGrowth;
import swardcase.farm.SeasonType;
import swardcase.outcome.FarmModel;
import swardcase.outcome.OutcomeFunction;
import swardcase.outcome.RecordedYears;

/**
 * How well a run explains the farm's own records: the workspace of one thread.
 *
 * <pre>
 * ln w = ln Σ_ρ c_ρ Π BB(in lamb of joined; expected share, ρ)
 *        + Σ mobs ln N(ln lambs marked/expected) + ln N(ln supplement fed/expected)
 * </pre>
 *
 * <p>BB is {@link BetaBinomial}; its correlation ρ is one for the farm, low, likely or high with c
 * = 1/6, 4/6, 1/6. Lambs marked count where ewes in lamb are not told; they and the supplement err
 * by {@link SharedError}. Supplement is told once a year, for the whole farm; where the season is
 * not known, its mean and its variance over the season types are taken.
 */
public final class RecordsFit {

  /** Parts of the low, likely and high value in the mean of a PERT distribution. */
  private static final double[] PARTS = {1 / 6.0, 4 / 6.0, 1 / 6.0};

  /** An expected share is kept this far from 0 and 1, where nothing else could be seen. */
  private static final double EDGE = 1e-4;

  private final Farm farm;
  private final List<FlockRecord> records;
  private final RecordedYears years;
  private final double[] correlation;
  private final int[] scanned;
  private final int[][] marked;
  private final int[] fed;
  private final double[] lambsPerEwe;
  private final SharedError markedError;
  private final double markedVariance;
  private final SharedError fedError;
  private final double fedVariance;
  private final double toldApartTonnes;
  private final SeasonType[] season;
  private final double[] chance;
  private final double[] logTonnes;

  /** A workspace for the records of a farm. */
  public RecordsFit(FarmModel model) {
    farm = model.farm();
    records = farm.records();
    years = new RecordedYears(farm);
    var ofTable = parameter(model, "records.conceiving-alike").range();
    correlation = new double[] {ofTable.low(), ofTable.likely(), ofTable.high()};
    scanned = places(records, r -> r.inLamb().isPresent());
    marked = new int[farm.mobs().size()][];
    lambsPerEwe = new double[marked.length];
    for (int g = 0; g < marked.length; g++) {
      Mob mob = farm.mobs().get(g);
      marked[g] = places(records, r -> isMarkedOnly(r) && r.mob().equals(mob.name()));
      lambsPerEwe[g] = OutcomeFunction.lambsPerPregnantEwe(mob);
    }
    Map<Integer, Integer> firstOfYear = new TreeMap<>();
    for (int r = 0; r < records.size(); r++) {
      if (records.get(r).supplementTonnes().isPresent()) {
        firstOfYear.putIfAbsent(records.get(r).year(), r);
      }
    }
    fed = firstOfYear.values().stream().mapToInt(Integer::intValue).toArray();
    markedError = new SharedError(parameter(model, "records.marked-error-shared").likely());
    markedVariance = squared(parameter(model, "records.marked-error-yearly").likely());
    fedError = new SharedError(parameter(model, "records.supplement-error-shared").likely());
    fedVariance = squared(parameter(model, "records.supplement-error-yearly").likely());
    toldApartTonnes =
        parameter(model, "records.supplement-told-apart").likely() * farm.ewesJoined() / 1000;
    List<SeasonGrowth> seasons = farm.feedYear().seasons();
    season = seasons.stream().map(SeasonGrowth::type).toArray(SeasonType[]::new);
    chance = seasons.stream().mapToDouble(of -> of.chance().likely()).toArray();
    logTonnes = new double[season.length];
  }

  private static boolean isMarkedOnly(FlockRecord record) {
    return record.inLamb().isEmpty() && record.lambsMarked().orElse(0) > 0;
  }

  private static Assumption parameter(FarmModel model, String key) {
    return model.tables().parameter(key);
  }

  private static double squared(double value) {
    return value * value;
  }

  private static int[] places(List<FlockRecord> records, Predicate<FlockRecord> which) {
    List<Integer> places = new ArrayList<>();
    for (int r = 0; r < records.size(); r++) {
      if (which.test(records.get(r))) {
        places.add(r);
      }
    }
    return places.stream().mapToInt(Integer::intValue).toArray();
  }

  /** The logarithm of the weight of a run that has just been set. */
  public double logWeight(OutcomeFunction run) {
    years.read(run);
    return ofScanning() + ofMarking() + ofSupplement();
  }

  /** What the run last weighed would have the farm write down. */
  public RecordedYears years() {
    return years;
  }

  /** The correlations that are tried, each with its part in {@link #part}. */
  public double correlation(int k) {
    return correlation[k];
  }

  /** The correlation that a uniform number picks by these parts. */
  public double correlationAt(double uniform) {
    return correlation[uniform < PARTS[0] ? 0 : uniform < PARTS[0] + PARTS[1] ? 1 : 2];
  }

  /**
   * The share in lamb that a year shows of so many ewes, chance counted in.
   *
   * @param expected the share expected, 0 to 1
   * @param random gives two numbers: one picks the correlation by its part
   */
  public double seen(int joined, double expected, CountedRandom random) {
    double picked = correlationAt(random.nextDouble());
    double u = Math.max(Double.MIN_NORMAL, random.nextDouble());
    return BetaBinomial.shareAt(u, joined, expected, picked);
  }

  /** The part of a correlation; together they are 1. */
  public static double part(int k) {
    return PARTS[k];
  }

  /** How many correlations there are. */
  public static int correlations() {
    return PARTS.length;
  }

  private double expected(int record) {
    return Math.max(EDGE, Math.min(1 - EDGE, years.inLamb(record)));
  }

  private double ofScanning() {
    if (scanned.length == 0) {
      return 0;
    }
    double[] log = new double[PARTS.length];
    double most = Double.NEGATIVE_INFINITY;
    for (int k = 0; k < log.length; k++) {
      log[k] = Math.log(PARTS[k]);
      for (int r : scanned) {
        FlockRecord record = records.get(r);
        log[k] +=
            BetaBinomial.logProbability(
                record.inLamb().getAsInt(), record.ewesJoined(), expected(r), correlation[k]);
      }
      most = Math.max(most, log[k]);
    }
    double sum = 0;
    for (double each : log) {
      sum += Math.exp(each - most);
    }
    return most + Math.log(sum);
  }

  private double ofMarking() {
    double sum = 0;
    for (int g = 0; g < marked.length; g++) {
      if (marked[g].length == 0) {
        continue;
      }
      markedError.clear();
      for (int r : marked[g]) {
        double lambs = records.get(r).ewesJoined() * expected(r) * lambsPerEwe[g];
        markedError.add(Math.log(records.get(r).lambsMarked().getAsInt() / lambs), markedVariance);
      }
      sum += markedError.logDensity();
    }
    return sum;
  }

  private double ofSupplement() {
    if (fed.length == 0) {
      return 0;
    }
    double mean = 0;
    double square = 0;
    for (int s = 0; s < logTonnes.length; s++) {
      logTonnes[s] = Math.log(years.supplementTonnes(s) + toldApartTonnes);
      mean += chance[s] * logTonnes[s];
      square += chance[s] * logTonnes[s] * logTonnes[s];
    }
    double ofSeasons = Math.max(0, square - mean * mean);
    fedError.clear();
    for (int r : fed) {
      double told = Math.log(records.get(r).supplementTonnes().getAsDouble() + toldApartTonnes);
      int known = place(records.get(r));
      double expected = known < 0 ? mean : logTonnes[known];
      fedError.add(told - expected, known < 0 ? fedVariance + ofSeasons : fedVariance);
    }
    return fedError.logDensity();
  }

  private int place(FlockRecord record) {
    for (int s = 0; s < season.length; s++) {
      if (record.season().isPresent() && record.season().get() == season[s]) {
        return s;
      }
    }
    return -1;
  }
}
