package swardcase.feed;

import java.util.Arrays;
import java.util.List;
import swardcase.evidence.Assumption;
import swardcase.evidence.UncertainNumbers;
import swardcase.farm.Farm;
import swardcase.farm.HalfMonths;
import swardcase.farm.SeasonGrowth;
import swardcase.tables.Tables;

/**
 * What the farm has to buy in a year, as a function of how its pasture grows relative to current
 * cultivars everywhere: {@code w} in the winter months and {@code o} in the others.
 *
 * <p>The feed budget is solved on a grid, each node when it is first asked for in a run, and read
 * between its nodes by straight lines, because a plan asks for it in every year. As it stands
 * ({@code w = now, o = 1}) and with current cultivars ({@code 1, 1}) are nodes, so these two are
 * exact; outside the grid the edge holds. Each node is solved for one season type or for all, whose
 * mean by chance is the answer where none is named.
 *
 * <p>Every solution starts from the year as the farm stands in the same run, and that from the
 * likely year, so that few years repeat it; nothing depends on which node was asked for first.
 */
public final class FeedSurface {

  private static final FeedNumber[] NUMBERS = FeedNumber.values();
  private static final String MOST_EWE_INCREASE = "farm.most-ewe-increase";
  private static final int USUAL = -1;
  private static final double[] OTHER = {0.4, 0.7, 0.85, 0.9, 0.95, 0.975, 1.0, 1.05};
  private static final double[] BELOW = {0.35, 0.6, 0.75, 0.87, 0.94, 0.97};

  private final FeedBudget budget;
  private final StockDemand demand;
  private final double areaHa;
  private final double[] chance;
  private final boolean[] winterMask;
  private final double ewesPerHa;
  private final int[] places = new int[NUMBERS.length];
  private final int mostEweIncrease;
  private final int[] breakMoves;
  private final int[] laterBreak;
  private final boolean runMoreEwes;

  private final double[] winterNodes = new double[BELOW.length + 4];
  private final double[][] bought;
  private final double[][] spare;
  private final double[] extraEwes = new double[winterNodes.length * OTHER.length];
  private final double[] multiplier = new double[HalfMonths.COUNT];
  private final FeedRates rates;
  private final FeedRates ratesOfMore;
  private final RepeatingYear result = new RepeatingYear();
  private final double[] key;
  private final double[] lastKey;
  private final FeedParameters parameters;
  private final FeedResult[] usual;
  private final FeedResult[] now;
  private int winterCell;
  private int otherCell;
  private double mostRise;
  private double nowMjPerEwe;

  /** Enters the uncertain numbers of the feed budget. */
  public static void enter(UncertainNumbers.Builder numbers, Farm farm, Tables tables) {
    for (FeedNumber number : NUMBERS) {
      numbers.add(
          number.key(),
          number == FeedNumber.CONDITION_DEFICIT
              ? farm.management().conditionDeficit()
              : tables.parameter(number.key()));
    }
    numbers.add(MOST_EWE_INCREASE, farm.management().mostEweIncrease());
    for (SeasonGrowth season : farm.feedYear().seasons()) {
      season.breakMoves().ifPresent(moves -> numbers.add(keyOfBreak(season), moves));
    }
  }

  private static String keyOfBreak(SeasonGrowth season) {
    return "season.break-" + season.type().label();
  }

  /** The surface of a farm, by its own need and budget or by those of another energy method. */
  public FeedSurface(
      Farm farm,
      Tables tables,
      GrowthYear year,
      UncertainNumbers numbers,
      StockDemand demand,
      FeedBudget budget,
      boolean runMoreEwes) {
    this.demand = demand;
    this.budget = budget;
    areaHa = farm.areaHa();
    chance =
        farm.feedYear().seasons().stream()
            .map(SeasonGrowth::chance)
            .mapToDouble(Assumption::likely)
            .toArray();
    winterMask = year.winterMask();
    ewesPerHa = farm.ewesJoined() / areaHa;
    for (FeedNumber number : NUMBERS) {
      places[number.ordinal()] = numbers.place(number.key());
    }
    mostEweIncrease = numbers.place(MOST_EWE_INCREASE);
    List<SeasonGrowth> seasons = farm.feedYear().seasons();
    breakMoves =
        seasons.stream()
            .mapToInt(
                season ->
                    season.breakMoves().isPresent() ? numbers.place(keyOfBreak(season)) : USUAL)
            .toArray();
    laterBreak = seasons.stream().mapToInt(season -> season.type().laterBreak()).toArray();
    this.runMoreEwes = runMoreEwes && farm.ewesJoined() > 0;
    key = new double[NUMBERS.length + 2 + chance.length];
    lastKey = new double[key.length];
    lastKey[0] = Double.NaN;
    parameters = FeedParameters.likely(farm, tables);
    // A table for each season type and, last, one for their mean.
    bought = new double[chance.length + 1][extraEwes.length];
    spare = new double[chance.length + 1][extraEwes.length];
    usual = results(chance.length);
    now = results(chance.length);
    rates = budget.rates(parameters, 1);
    ratesOfMore = budget.rates(parameters, 1);
    Arrays.fill(multiplier, 1);
    for (int season = 0; season < chance.length; season++) {
      budget.run(season, multiplier, rates, usual[season]);
    }
  }

  private static FeedResult[] results(int count) {
    FeedResult[] results = new FeedResult[count];
    Arrays.setAll(results, season -> new FeedResult());
    return results;
  }

  /** Takes the numbers of a run; {@code winterNow} is {@code w} of the farm as it stands. */
  public void set(double[] x, double winterNow) {
    for (FeedNumber number : NUMBERS) {
      int of = number.ordinal();
      key[of] = x[places[of]];
      parameters.set(number, key[of]);
    }
    key[NUMBERS.length] = winterNow;
    key[NUMBERS.length + 1] = x[mostEweIncrease];
    for (int season = 0; season < breakMoves.length; season++) {
      int place = breakMoves[season];
      double later = place == USUAL ? 0 : laterBreak[season] * x[place];
      parameters.setBreak(season, later);
      key[NUMBERS.length + 2 + season] = later;
    }
    if (Arrays.equals(key, lastKey)) {
      return;
    }
    System.arraycopy(key, 0, lastKey, 0, key.length);
    placeWinterNodes(winterNow);
    for (int season = 0; season < bought.length; season++) {
      Arrays.fill(bought[season], Double.NaN);
      Arrays.fill(spare[season], Double.NaN);
    }
    setMultiplier(winterNow, 1);
    budget.set(rates, parameters, 1);
    for (int season = 0; season < chance.length; season++) {
      budget.runFrom(usual[season], season, multiplier, rates, now[season]);
    }
    Arrays.fill(extraEwes, Double.NaN);
    mostRise = x[mostEweIncrease];
    nowMjPerEwe = runMoreEwes ? bought(winterNow, 1) / ewesPerHa : 0;
  }

  private void placeWinterNodes(double winterNow) {
    double low = Math.min(winterNow, 1);
    for (int k = 0; k < BELOW.length; k++) {
      winterNodes[k] = BELOW[k] * low;
    }
    winterNodes[BELOW.length] = low;
    winterNodes[BELOW.length + 1] = low < 1 ? (low + 1) / 2 : 1.005;
    winterNodes[BELOW.length + 2] = low < 1 ? 1 : 1.01;
    winterNodes[BELOW.length + 3] = Math.max(1.05, winterNow + 0.05);
  }

  /** Energy bought, MJ per ha and year, mean over season types, at a multiple of ewe numbers. */
  private double solve(double w, double o, double ewes) {
    budget.set(ratesOfMore, parameters, ewes);
    setMultiplier(w, o);
    double sum = 0;
    for (int season = 0; season < chance.length; season++) {
      budget.runNear(now[season], season, multiplier, ratesOfMore, result);
      sum += chance[season] * result.boughtMjPerHa();
    }
    return sum;
  }

  /** One season of the budget itself, not read from the grid. */
  public void run(int season, double w, double o, FeedResult into) {
    setMultiplier(w, o);
    budget.run(season, multiplier, rates, into);
  }

  private void setMultiplier(double w, double o) {
    for (int p = 0; p < multiplier.length; p++) {
      multiplier[p] = winterMask[p] ? w : o;
    }
  }

  /** One season as the farm stands; the next run overwrites it. */
  public FeedResult now(int season) {
    return now[season];
  }

  /** How many season types there are; in place of one it stands for their mean. */
  public int meanOfSeasons() {
    return chance.length;
  }

  /**
   * Rise in ewe numbers at which each ewe needs as much supplement as now, as a share of today's
   * number: at least 0, at most {@code most}. Found by halving, since supplement per ewe rises with
   * numbers.
   */
  private double extraEwes(double w, double o, double nowMjPerEwe, double most) {
    if (perEwe(w, o, 0) >= nowMjPerEwe) {
      return 0;
    }
    if (perEwe(w, o, most) <= nowMjPerEwe) {
      return most;
    }
    double low = 0;
    double high = most;
    for (int step = 0; step < 12; step++) {
      double middle = (low + high) / 2;
      if (perEwe(w, o, middle) < nowMjPerEwe) {
        low = middle;
      } else {
        high = middle;
      }
    }
    return (low + high) / 2;
  }

  private double perEwe(double w, double o, double rise) {
    return solve(w, o, 1 + rise) / (ewesPerHa * (1 + rise));
  }

  /** Energy bought, MJ per ha and year, mean over season types. */
  public double bought(double w, double o) {
    return bought(chance.length, w, o);
  }

  /** The same in one season type, or in {@link #meanOfSeasons}. */
  public double bought(int season, double w, double o) {
    return read(bought[season], season, w, o);
  }

  /** Rise in ewe numbers that the feed would carry; 0 unless more ewes are to be run. */
  public double extraEwes(double w, double o) {
    return runMoreEwes ? read(extraEwes, chance.length, w, o) : 0;
  }

  /** The rise that current cultivars everywhere would carry, whatever extra feed is used for. */
  public double riseAt(double[] x, double winterNow, double o) {
    return ewesPerHa == 0
        ? 0
        : extraEwes(1, o, bought(winterNow, 1) / ewesPerHa, x[mostEweIncrease]);
  }

  /** Feed that nobody ate in a season type, kg dry matter per ha and year. */
  public double spare(int season, double w, double o) {
    return read(spare[season], season, w, o);
  }

  /** Values of {@code w} between which every answer is read by straight lines. */
  double[] winterNodes() {
    return winterNodes.clone();
  }

  /** The same of {@code o}. */
  static double[] otherNodes() {
    return OTHER.clone();
  }

  /** Ewes' part of what all stock would eat in a half-month. */
  public double eweShareOfAppetite(int halfMonth) {
    double ewes = demand.eweAppetiteKgDmPerDay(halfMonth);
    double all = ewes + demand.otherAppetiteKgDmPerDay(halfMonth);
    return all > 0 ? ewes / all : 0;
  }

  /** What the ewes would eat in a half-month, kg dry matter per ha of farm. */
  public double eweAppetiteKgDmPerHa(int halfMonth) {
    return demand.eweAppetiteKgDmPerDay(halfMonth) * HalfMonths.days(halfMonth) / areaHa;
  }

  /** What stock other than ewes would eat in a half-month, kg dry matter per ha of farm. */
  public double otherAppetiteKgDmPerHa(int halfMonth) {
    return demand.otherAppetiteKgDmPerDay(halfMonth) * HalfMonths.days(halfMonth) / areaHa;
  }

  private double read(double[] table, int season, double w, double o) {
    winterCell = cell(winterNodes, w, winterCell);
    otherCell = cell(OTHER, o, otherCell);
    double u = within(winterNodes, winterCell, w);
    double v = within(OTHER, otherCell, o);
    // Where one end of a line has no weight the other stands for both.
    int left = (u < 1 ? winterCell : winterCell + 1) * OTHER.length;
    int right = (u > 0 ? winterCell + 1 : winterCell) * OTHER.length;
    int low = v < 1 ? otherCell : otherCell + 1;
    int high = v > 0 ? otherCell + 1 : otherCell;
    double leftLow = table[left + low];
    double leftHigh = table[left + high];
    double rightLow = table[right + low];
    double rightHigh = table[right + high];
    if (Double.isNaN(leftLow + leftHigh + rightLow + rightHigh)) {
      leftLow = solved(table, season, left + low);
      leftHigh = solved(table, season, left + high);
      rightLow = solved(table, season, right + low);
      rightHigh = solved(table, season, right + high);
    }
    double atLeft = leftLow * (1 - v) + leftHigh * v;
    double atRight = rightLow * (1 - v) + rightHigh * v;
    return atLeft * (1 - u) + atRight * u;
  }

  private double solved(double[] table, int season, int node) {
    if (Double.isNaN(table[node])) {
      solve(table, season, node);
    }
    return table[node];
  }

  private void solve(double[] table, int season, int node) {
    double w = winterNodes[node / OTHER.length];
    double o = OTHER[node % OTHER.length];
    if (table == extraEwes) {
      extraEwes[node] = extraEwes(w, o, nowMjPerEwe, mostRise);
    } else if (season < chance.length) {
      setMultiplier(w, o);
      budget.runNear(now[season], season, multiplier, rates, result);
      bought[season][node] = result.boughtMjPerHa();
      spare[season][node] = result.uneatenKgDmPerHa();
    } else {
      double meanBought = 0;
      double meanSpare = 0;
      for (int each = 0; each < chance.length; each++) {
        meanBought += chance[each] * solved(bought[each], each, node);
        meanSpare += chance[each] * spare[each][node];
      }
      bought[season][node] = meanBought;
      spare[season][node] = meanSpare;
    }
  }

  /** Looked for from the cell that was found last, because years of a plan lie close together. */
  private static int cell(double[] nodes, double at, int last) {
    int cell = last;
    while (cell > 0 && at < nodes[cell]) {
      cell--;
    }
    while (cell < nodes.length - 2 && at >= nodes[cell + 1]) {
      cell++;
    }
    return cell;
  }

  private static double within(double[] nodes, int cell, double at) {
    double share = (at - nodes[cell]) / (nodes[cell + 1] - nodes[cell]);
    return share > 0 ? share < 1 ? share : 1 : 0;
  }
}
