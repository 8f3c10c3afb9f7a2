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
 * cultivars everywhere, {@code w} in the winter months and {@code o} in the others; of how many
 * ewes are in lamb relative to now; and of the clover in what is eaten.
 *
 * <p>The feed budget is solved on a grid, each node when it is first asked for in a run, and read
 * between its nodes by straight lines, because a plan asks for it in every year. As it stands
 * ({@code w = now, o = 1}) and with current cultivars ({@code 1, 1}) are nodes, so these two are
 * exact; outside the grid the edge holds. Each node is solved for one season type or for all, whose
 * mean by chance is the answer where none is named.
 *
 * <p>Ewes in lamb and clover bear on it by slopes, which follow from how much is bought:
 *
 * <pre>
 *   bought = g + a(g) (ewes in lamb - 1) + b(g) (clover - clover now)     g = grid(w, o), never below 0
 * </pre>
 *
 * {@code a} is the slope from the farm as it stands to the same farm without oestrogen, or with a
 * tenth more ewes in lamb where that is more or not known; {@code b} that to a tenth less clover in
 * what is eaten. Each is solved for every season type, and read between them by straight lines: the
 * shorter the year, the more of what is needed has to be bought. In an average year of 870 MJ/ha
 * bought, a tenth more ewes in lamb may add 90.
 *
 * <p>Every solution starts from the year as the farm stands in the same run, and that from the
 * likely year, so that few years repeat it; nothing depends on which node was asked for first.
 */
public final class FeedSurface {

  private static final FeedNumber[] NUMBERS = FeedNumber.values();
  private static final String MOST_EWE_INCREASE = "farm.most-ewe-increase";
  private static final int USUAL = -1;
  private static final double STEP_IN_LAMB = 0.1;
  private static final double LEAST_RISE = 0.001;
  private static final double STEP_OF_CLOVER = 0.1;
  private static final double[] OTHER = {0.4, 0.7, 0.85, 0.9, 0.95, 0.975, 1.0, 1.05};
  private static final double[] BELOW = {0.35, 0.6, 0.75, 0.87, 0.94, 0.97};

  /** The node of a farm as it stands, if it does not grow more than current cultivars would. */
  private static final int AS_IT_STANDS =
      BELOW.length * OTHER.length + Arrays.binarySearch(OTHER, 1);

  private final FeedBudget budget;
  private final StockDemand demand;
  private final double areaHa;
  private final double[] chance;
  private final GrowthYear year;
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
  private final double[] inLambMj;
  private final ShortageSlope ofEwesInLamb;
  private final ShortageSlope ofClover;
  private final FeedRates rates;
  private final RepeatingYear result = new RepeatingYear();
  private final double[] key;
  private final double[] lastKey;
  private final FeedParameters parameters;
  private final FeedResult[] usual;
  private final FeedResult[] asStated;
  private final FeedResult[] settled;
  private FeedResult[] now;
  private final double[] inLambNow;
  private double winterNow;
  private double legumeNow;
  private double stepInLamb;
  private boolean isStatedMost;
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
    this.year = year;
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
    inLambNow = new double[farm.mobs().size()];
    inLambMj = new double[inLambNow.length];
    for (int mob = 0; mob < inLambMj.length; mob++) {
      for (int p = 0; p < HalfMonths.COUNT; p++) {
        inLambMj[mob] += demand.inLambMjPerDay(mob, p) * HalfMonths.days(p);
      }
    }
    key = new double[NUMBERS.length + 3 + chance.length + inLambNow.length];
    lastKey = new double[key.length];
    lastKey[0] = Double.NaN;
    parameters = FeedParameters.likely(farm, tables);
    // A table for each season type and, last, one for their mean.
    bought = new double[chance.length + 1][extraEwes.length];
    spare = new double[chance.length + 1][extraEwes.length];
    usual = results(chance.length);
    asStated = results(chance.length);
    settled = results(chance.length);
    now = asStated;
    ofEwesInLamb = new ShortageSlope(chance.length);
    ofClover = new ShortageSlope(chance.length);
    rates = budget.rates(parameters, 1);
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

  /**
   * Takes the numbers of a run.
   *
   * @param winter {@code w} of the farm as it stands
   * @param legume clover share of what is eaten as it stands
   * @param inLamb share of each mob's ewes in lamb, as far as it is known before the feed is
   */
  public void set(double[] x, double winter, double legume, double[] inLamb) {
    for (FeedNumber number : NUMBERS) {
      int of = number.ordinal();
      key[of] = x[places[of]];
      parameters.set(number, key[of]);
    }
    key[NUMBERS.length] = winter;
    key[NUMBERS.length + 1] = x[mostEweIncrease];
    key[NUMBERS.length + 2] = legume;
    int at = NUMBERS.length + 3;
    for (int season = 0; season < breakMoves.length; season++) {
      int place = breakMoves[season];
      double later = place == USUAL ? 0 : laterBreak[season] * x[place];
      parameters.setBreak(season, later);
      key[at++] = later;
    }
    System.arraycopy(inLamb, 0, key, at, inLamb.length);
    if (Arrays.equals(key, lastKey)) {
      if (now != asStated) {
        setInLamb(inLamb, 1);
        budget.setEaters(rates, parameters, 1);
        begin(asStated);
      }
      return;
    }
    System.arraycopy(key, 0, lastKey, 0, key.length);
    winterNow = winter;
    legumeNow = legume;
    mostRise = x[mostEweIncrease];
    parameters.setLegumeShare(legume);
    setInLamb(inLamb, 1);
    placeWinterNodes(winter);
    budget.set(rates, parameters, 1);
    run(asStated, usual);
    begin(asStated);
  }

  private void setInLamb(double[] shares, double times) {
    for (int mob = 0; mob < shares.length; mob++) {
      parameters.setInLamb(mob, times * shares[mob]);
    }
  }

  private void run(FeedResult[] into, FeedResult[] near) {
    setMultiplier(winterNow, 1);
    for (int season = 0; season < chance.length; season++) {
      budget.runFrom(near[season], season, multiplier, rates, into[season]);
    }
  }

  /** Takes the farm as it stands, and forgets what was solved for another. */
  private void begin(FeedResult[] asItStands) {
    now = asItStands;
    parameters.keepInLamb(inLambNow);
    for (int season = 0; season < bought.length; season++) {
      Arrays.fill(bought[season], Double.NaN);
      Arrays.fill(spare[season], Double.NaN);
    }
    ofEwesInLamb.forget();
    ofClover.forget();
    Arrays.fill(extraEwes, Double.NaN);
    if (winterNow <= 1) {
      for (int season = 0; season < chance.length; season++) {
        bought[season][AS_IT_STANDS] = now[season].year.boughtMjPerHa();
        spare[season][AS_IT_STANDS] = now[season].year.uneatenKgDmPerHa();
      }
    }
    stepInLamb = STEP_IN_LAMB;
    isStatedMost = false;
    nowMjPerEwe = runMoreEwes ? perEwe(winterNow, 1, 0) : 0;
  }

  /**
   * Takes the shares of ewes in lamb as they are, once the feed has told them.
   *
   * @param inLamb share of each mob's ewes in lamb as paddocks are grazed now
   * @param most the shares without oestrogen
   */
  public void settle(double[] inLamb, double[] most) {
    if (!Arrays.equals(inLamb, inLambNow)) {
      setInLamb(inLamb, 1);
      budget.setEaters(rates, parameters, 1);
      run(settled, asStated);
      begin(settled);
    }
    double now = lambFeedMj(inLamb);
    double rise = now > 0 ? lambFeedMj(most) / now - 1 : 0;
    isStatedMost = rise > LEAST_RISE && this.now == settled && isStated(most);
    stepInLamb = isStatedMost ? rise : Math.max(STEP_IN_LAMB, rise);
    ofEwesInLamb.forget();
  }

  private double lambFeedMj(double[] shares) {
    double sum = 0;
    for (int mob = 0; mob < shares.length; mob++) {
      sum += shares[mob] * inLambMj[mob];
    }
    return sum;
  }

  private boolean isStated(double[] shares) {
    int from = lastKey.length - shares.length;
    return Arrays.equals(shares, 0, shares.length, lastKey, from, lastKey.length);
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
    budget.setEaters(rates, parameters, ewes);
    setMultiplier(w, o);
    double sum = 0;
    for (int season = 0; season < chance.length; season++) {
      budget.runNear(now[season], season, multiplier, rates, result);
      sum += chance[season] * result.boughtMjPerHa();
    }
    budget.setEaters(rates, parameters, 1);
    return sum;
  }

  /** One season of the budget itself, not read from the grid. */
  public void run(int season, double w, double o, FeedResult into) {
    setMultiplier(w, o);
    budget.run(season, multiplier, rates, into);
  }

  private void setMultiplier(double w, double o) {
    for (int p = 0; p < multiplier.length; p++) {
      multiplier[p] = year.isWinter(p) ? w : o;
    }
  }

  /** One season with the ewes in lamb that the farm states; the next run overwrites it. */
  public FeedResult asStated(int season) {
    return asStated[season];
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

  /**
   * The same with other ewes and other clover.
   *
   * @param inLamb ewes in lamb relative to now, by the feed they need ({@link #inLambMj})
   * @param legume clover share of what is eaten
   */
  public double bought(int season, double w, double o, double inLamb, double legume) {
    if (inLamb == 1 && legume == legumeNow) {
      return bought(season, w, o);
    }
    if (season < chance.length) {
      return boughtBy(bought(season, w, o), inLamb, legume);
    }
    double mean = 0;
    for (int each = 0; each < chance.length; each++) {
      mean += chance[each] * boughtBy(bought(each, w, o), inLamb, legume);
    }
    return mean;
  }

  private double boughtBy(double boughtMj, double inLamb, double legume) {
    double more = inLamb == 1 ? 0 : slopeOfEwesInLamb().at(boughtMj) * (inLamb - 1);
    double poorer = legume == legumeNow ? 0 : slopeOfClover().at(boughtMj) * (legume - legumeNow);
    return Math.max(0, boughtMj + more + poorer);
  }

  /** Feed that nobody ate, kg dry matter per ha and year, with other ewes and other clover. */
  public double spare(int season, double w, double o, double inLamb, double legume) {
    double more = inLamb == 1 ? 0 : slopeOfEwesInLamb().spare(season) * (inLamb - 1);
    double poorer = legume == legumeNow ? 0 : slopeOfClover().spare(season) * (legume - legumeNow);
    return Math.max(0, spare(season, w, o) + more + poorer);
  }

  /** What a mob's ewes need in a year for being in lamb and in milk, if all are, MJ. */
  public double inLambMj(int mob) {
    return inLambMj[mob];
  }

  private ShortageSlope slopeOfEwesInLamb() {
    if (!ofEwesInLamb.isKnown()) {
      if (isStatedMost) {
        for (int season = 0; season < chance.length; season++) {
          add(ofEwesInLamb, season, asStated[season].year, stepInLamb);
        }
        ofEwesInLamb.finish(chance);
      } else {
        setInLamb(inLambNow, 1 + stepInLamb);
        solve(ofEwesInLamb, stepInLamb);
        setInLamb(inLambNow, 1);
        budget.setEaters(rates, parameters, 1);
      }
    }
    return ofEwesInLamb;
  }

  private ShortageSlope slopeOfClover() {
    if (!ofClover.isKnown()) {
      double step = legumeNow < STEP_OF_CLOVER ? STEP_OF_CLOVER : -STEP_OF_CLOVER;
      parameters.setLegumeShare(legumeNow + step);
      solve(ofClover, step);
      parameters.setLegumeShare(legumeNow);
      budget.setEaters(rates, parameters, 1);
    }
    return ofClover;
  }

  /** What the parameters that were set add to the farm as it stands, for each unit of a step. */
  private void solve(ShortageSlope slope, double step) {
    budget.setEaters(rates, parameters, 1);
    setMultiplier(winterNow, 1);
    for (int season = 0; season < chance.length; season++) {
      budget.runNear(now[season], season, multiplier, rates, result);
      add(slope, season, result, step);
    }
    slope.finish(chance);
  }

  private void add(ShortageSlope slope, int season, RepeatingYear then, double step) {
    RepeatingYear standing = now[season].year;
    double bought = standing.boughtMjPerHa();
    double spare = standing.uneatenKgDmPerHa();
    slope.put(
        season,
        bought,
        (then.boughtMjPerHa() - bought) / step,
        (then.uneatenKgDmPerHa() - spare) / step);
  }

  /** Rise in ewe numbers that the feed would carry; 0 unless more ewes are to be run. */
  public double extraEwes(double w, double o) {
    return runMoreEwes ? read(extraEwes, chance.length, w, o) : 0;
  }

  /** The rise that current cultivars everywhere would carry, whatever extra feed is used for. */
  public double riseAt(double[] x, double winterNow, double o) {
    return ewesPerHa == 0 ? 0 : extraEwes(1, o, perEwe(winterNow, 1, 0), x[mostEweIncrease]);
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
