package swardcase.wording;

import java.util.Arrays;
import java.util.List;
import java.util.stream.DoubleStream;
import java.util.stream.Stream;
import swardcase.chance.Drawn;
import swardcase.chance.Spread;
import swardcase.report.Credit;
import swardcase.report.GainPart;
import swardcase.report.PaddockResult;
import swardcase.report.PaddockResult.OptionResult;
import swardcase.report.PlanResult;
import swardcase.report.PlanResult.FarmRule;
import swardcase.report.PlanResult.PlanYear;
import swardcase.report.Report;

/**
 * How the money of a farm is printed: by one unit, rounded from the top down, so that every sum
 * that is printed is true to its last digit, and one number reads the same wherever it stands.
 */
public final class MoneyFaces {

  private final String currency;
  private final double unit;
  private final PlanResult plan;
  private final List<PaddockResult> paddocks;
  private final double gain;
  private final double[] gains;
  private final double[] years;
  private final double cost;
  private final double[] costs;

  /** The faces of a report's money. */
  public MoneyFaces(Report report) {
    currency = report.farm().currency();
    plan = report.plan();
    paddocks = report.paddocks();
    unit = MoneyUnit.of(sums());
    gain = RoundedSums.total(plan.gain().mean(), unit);
    List<FarmRule> rules = plan.farmWide();
    gains =
        parts(
            gain,
            Stream.of(
                    paddocks.stream().map(paddock -> paddock.gain().mean()),
                    rules.stream().map(rule -> rule.gain().mean()),
                    Stream.of(plan.shared().mean()))
                .flatMap(each -> each));
    years = parts(gain, plan.years().stream().map(PlanYear::mean));
    cost = RoundedSums.total(plan.cost().mean(), unit);
    costs =
        parts(
            cost,
            Stream.concat(
                paddocks.stream().map(paddock -> paddock.cost().mean()),
                rules.stream().map(rule -> rule.cost().mean())));
  }

  private double[] parts(double total, Stream<Double> parts) {
    return RoundedSums.parts(total, parts.mapToDouble(each -> each).toArray(), unit);
  }

  /** Costs and gains of what is done, or of what was looked at where nothing is. */
  private DoubleStream sums() {
    return plan.keepsAll()
        ? paddocks.stream()
            .flatMap(paddock -> paddock.options().stream())
            .mapToDouble(option -> option.gain().mean())
        : paddocks.stream()
            .flatMapToDouble(
                paddock -> DoubleStream.of(paddock.gain().mean(), paddock.cost().mean()));
  }

  /** The unit of all money. */
  public double unit() {
    return unit;
  }

  /** Rounded mean gain of the plan. */
  public double gain() {
    return gain;
  }

  /** Rounded mean gain of a paddock's choice. */
  public double gain(int paddock) {
    return gains[paddock];
  }

  /** Rounded mean gain of a farm-wide rule. */
  public double farmWide(int rule) {
    return gains[paddocks.size() + rule];
  }

  /** Rounded mean cost of a farm-wide rule. */
  public double farmWideCost(int rule) {
    return costs[paddocks.size() + rule];
  }

  /** Rounded mean of what the changes share. */
  public double shared() {
    return gains[gains.length - 1];
  }

  /** Rounded discounted mean of a year. */
  public double year(int place) {
    return years[place];
  }

  /**
   * The undiscounted lines of a year: costs with own labour, below nothing; supplement; lambs;
   * other; and last their sum.
   */
  public double[] flows(int place) {
    PlanYear year = plan.years().get(place);
    double net = rounded(year.net());
    double[] lines = {
      0 - year.cost() - year.labour(), year.supplementSaved(), year.lambsSaved(), year.other()
    };
    double[] flows = Arrays.copyOf(RoundedSums.parts(net, lines, unit), lines.length + 1);
    flows[lines.length] = net;
    return flows;
  }

  /** The lines of a year that are below nothing, those above, and the sum of both: its net. */
  public double[] outAndIn(int place) {
    double[] sums = new double[3];
    double[] flows = flows(place);
    for (int k = 0; k < flows.length - 1; k++) {
      sums[flows[k] < 0 ? 0 : 1] += flows[k];
    }
    sums[2] = flows[flows.length - 1];
    return sums;
  }

  /** The sum of the rounded undiscounted years up to one. */
  public double cumulative(int place) {
    double sum = 0;
    for (int t = 0; t <= place; t++) {
      sum += rounded(plan.years().get(t).net());
    }
    return sum;
  }

  /** What a year brings with the plan: its rounded parts without it and by it. */
  public double with(int place) {
    PlanYear year = plan.years().get(place);
    return rounded(year.without()) + rounded(year.net());
  }

  /** Rounded mean cost of the plan. */
  public double cost() {
    return cost;
  }

  /** Rounded mean cost of a paddock's choice. */
  public double cost(int paddock) {
    return costs[paddock];
  }

  /** Rounded parts of the gain of a paddock's choice, which add up to it. */
  public double[] parts(int paddock) {
    return parts(gain(paddock), paddocks.get(paddock).parts().stream().map(GainPart::mean));
  }

  /** Where the gain of a paddock's choice comes from, rounded; together it is the gain. */
  public double[] credit(int paddock) {
    return parts(gain(paddock), paddocks.get(paddock).credit().stream().map(Credit::mean));
  }

  /**
   * The gain of an option, rounded: that of the chosen one as the paddock has it, that of another
   * never on the wrong side of it.
   */
  public double option(int paddock, OptionResult option) {
    PaddockResult result = paddocks.get(paddock);
    double value = option.gain().mean();
    if (option.chosen()) {
      return gain(paddock);
    }
    if (!result.isInPlan()) {
      return rounded(value);
    }
    return value <= result.option(result.action()).orElseThrow().gain().mean()
        ? Math.min(rounded(value), gain(paddock))
        : Math.max(rounded(value), gain(paddock));
  }

  /** By one of three keys: of a gain, of a loss, and of what rounds to nothing. */
  String signed(String key, double rounded) {
    String sign = rounded > 0 ? "" : rounded < 0 ? ".less" : ".none";
    return Texts.get(key + sign, money(Math.abs(rounded)));
  }

  /** An end of a gain: {@code a loss of A$ 3,000}. */
  String end(double end) {
    return signed("reason.aGain", rounded(end));
  }

  /** Any other money, rounded. */
  public double rounded(double value) {
    return RoundedSums.total(value, unit);
  }

  /** A rounded mean with its ends: {@code 24,000 (8,000 to 41,000)}. */
  public String withEnds(double rounded, Spread gain) {
    return Words.range(Drawn.of(rounded, gain.low(), gain.high()), unit);
  }

  /** The same of a result that is no gain. */
  public String withEnds(double rounded, Drawn of) {
    return Words.range(Drawn.of(rounded, of.low(), of.high()), unit);
  }

  /** The same with the currency before it: {@code A$ 24,000 (8,000 to 41,000)}. */
  public String moneyWithEnds(double rounded, Drawn of) {
    return currency + " " + withEnds(rounded, of);
  }

  /** Rounded money as a number alone: {@code 24,000}. */
  public String number(double rounded) {
    return Words.rounded(rounded, unit);
  }

  /** The same with the currency before it: {@code A$ 24,000}. */
  public String money(double rounded) {
    return currency + " " + number(rounded);
  }

  /** A sum that stands in no other, to two significant figures: {@code A$ 12,000}. */
  public String about(double value) {
    return Words.aboutMoney(currency, value);
  }
}
