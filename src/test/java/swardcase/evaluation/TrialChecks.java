package swardcase.evaluation;

import static swardcase.evaluation.PublishedRows.published;

import java.nio.file.Path;
import java.time.Month;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.function.IntPredicate;
import java.util.function.IntToDoubleFunction;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;
import swardcase.chance.Pert;
import swardcase.evaluation.PublishedCheck.Part;
import swardcase.farm.HalfMonths;
import swardcase.farm.SeasonGrowth;
import swardcase.feed.FeedResult;
import swardcase.intake.FarmFolder;
import swardcase.money.ModifiedRate;
import swardcase.money.NetPresentValue;
import swardcase.outcome.FarmModel;
import swardcase.outcome.OutcomeFunction;
import swardcase.reproduction.FlockEffect;
import swardcase.tables.ResponseStory;
import swardcase.tables.Tables;

/**
 * Results of trials and cases beside what the program gives for a farm like theirs. The farms stand
 * in trial-farms.csv, what was seen in trial-results.csv.
 */
final class TrialChecks {

  private static final List<String> SEASONS = List.of("poor", "average", "good");
  private static final List<Month> AUTUMN = List.of(Month.MARCH, Month.APRIL, Month.MAY);
  private static final List<Month> WINTER = List.of(Month.JULY, Month.AUGUST);
  private static final List<Month> GROWING =
      List.of(Month.JUNE, Month.JULY, Month.AUGUST, Month.SEPTEMBER, Month.OCTOBER, Month.NOVEMBER);
  private static final List<Month> YEAR = List.of(Month.values());

  /** Feed of less energy than a kg of grain to the hectare is none. */
  private static final double NO_FEED_MJ_PER_HA = 10;

  private static final double REAL_RATE = 0.05;
  private static final int LONGEST_LIFE = 20;

  private final Tables tables;
  private final Map<String, Map<String, String>> rows = new HashMap<>();
  private final Map<String, TrialFarm> farms = new HashMap<>();

  TrialChecks(Tables tables) {
    this.tables = tables;
    published("trial-farms.csv").forEach(row -> rows.put(row.get("key"), row));
  }

  /** The checks of a group. */
  List<PublishedCheck> of(String group) {
    return published("trial-results.csv").stream()
        .filter(row -> row.get("group").equals(group))
        .map(row -> PublishedCheck.ofRow(what(row), row, value(row), Part.of(row)))
        .toList();
  }

  private String what(Map<String, String> row) {
    String ours = row.get("farm").isEmpty() ? "" : rows.get(row.get("farm")).get("ours");
    return ours.isEmpty() || ours.equals("as above")
        ? row.get("what")
        : row.get("what") + ". Ours: " + ours;
  }

  private TrialFarm farm(String key) {
    return farms.computeIfAbsent(key, k -> TrialFarm.of(rows.get(k), tables));
  }

  private double value(Map<String, String> row) {
    String argument = row.get("argument");
    return switch (row.get("measure")) {
      case "ahead of" -> aheadOf(argument);
      case "above in a strong cultivar" -> percentAbove(Double.parseDouble(argument));
      case "best life" -> bestLife();
      case "life of 20 over life of 8" -> lifeOfTwentyOverEight();
      case "break-even of establishment" -> breakEvenOfEstablishment();
      default -> {
        double ours = value(farm(row.get("farm")), row.get("measure"), argument);
        String against = row.get("against");
        if (against.isEmpty()) {
          yield ours;
        }
        double theirs = value(farm(against), row.get("measure"), argument);
        yield row.get("measure").equals("winter growth") ? ours / theirs : ours - theirs;
      }
    };
  }

  private static double value(TrialFarm farm, String measure, String argument) {
    FlockEffect flock = farm.run().mobs() > 0 ? farm.run().flock(0) : null;
    return switch (measure) {
      case "seasons fed" -> 100 * chance(farm, season -> boughtMj(farm, season, YEAR) > 0);
      case "fed percent of year" -> 100 * daysFed(farm, argument) / HalfMonths.DAYS;
      case "fed days" -> daysFed(farm, argument);
      case "fed kg a head" -> fedKgAHead(farm, argument, YEAR);
      case "fed kg a head in autumn" -> fedKgAHead(farm, argument, AUTUMN);
      case "fed kg a head in winter" -> fedKgAHead(farm, argument, WINTER);
      case "grown t" -> grownKg(farm, argument, YEAR) / 1000;
      case "grown t in June to November" -> grownKg(farm, argument, GROWING) / 1000;
      case "grown kg a day in June" -> grownKg(farm, argument, List.of(Month.JUNE)) / 30;
      case "grown kg a day at most" -> fastestKgPerDay(farm, argument);
      case "good over poor" -> grownKg(farm, "good", YEAR) / grownKg(farm, "poor", YEAR);
      case "spread of growth" -> spreadPercent(farm);
      case "more winter growth" -> moreWinterKg(farm, SEASONS.indexOf(argument));
      case "seasons with more winter growth" ->
          100 * chance(farm, season -> moreWinterKg(farm, season) > 10);
      case "in lamb" -> 100 * flock.shareNow();
      case "unaffected" -> 100 * flock.unaffectedShare();
      case "in lamb of unaffected" -> inLambOfUnaffected(farm, argument);
      case "not in lamb of unaffected" -> 100 - inLambOfUnaffected(farm, argument);
      case "winter growth" -> farm.run().winterGrowthNow();
      case "sown share" -> sownPercent(farm, Integer.parseInt(argument));
      default -> throw new IllegalArgumentException(measure);
    };
  }

  /** In a story of how ewes respond; that of the dosed trial where none is named. */
  private static double inLambOfUnaffected(TrialFarm farm, String story) {
    OutcomeFunction run =
        story.isEmpty()
            ? farm.run()
            : farm.run(ResponseStory.valueOf(story.toUpperCase(Locale.ROOT)));
    return 100 * run.flock(0).shareNow() / run.flock(0).unaffectedShare();
  }

  // Feed.

  private static double chance(TrialFarm farm, IntPredicate season) {
    List<SeasonGrowth> seasons = farm.model().farm().feedYear().seasons();
    return IntStream.range(0, seasons.size())
        .filter(season::test)
        .mapToDouble(s -> seasons.get(s).chance().likely())
        .sum();
  }

  private static double sum(double[] halfMonths, List<Month> months) {
    return IntStream.range(0, HalfMonths.COUNT)
        .filter(p -> months.contains(HalfMonths.month(p)))
        .mapToDouble(p -> halfMonths[p])
        .sum();
  }

  /** Energy bought in a season of these months, MJ/ha; none if it is next to none. */
  private static double boughtMj(TrialFarm farm, int season, List<Month> months) {
    double bought = sum(farm.run().feedNow(season).boughtMjPerHa, months);
    return bought < NO_FEED_MJ_PER_HA ? 0 : bought;
  }

  private static double fedKgAHead(TrialFarm farm, String season, List<Month> months) {
    double mj =
        season.equals("mean")
            ? mean(farm, s -> boughtMj(farm, s, months))
            : boughtMj(farm, SEASONS.indexOf(season), months);
    return 1000 * mj * farm.run().tonnesPerMj() / farm.headPerHa();
  }

  private static double mean(TrialFarm farm, IntToDoubleFunction ofSeason) {
    List<SeasonGrowth> seasons = farm.model().farm().feedYear().seasons();
    return IntStream.range(0, seasons.size())
        .mapToDouble(s -> seasons.get(s).chance().likely() * ofSeason.applyAsDouble(s))
        .sum();
  }

  private static double daysFed(TrialFarm farm, String season) {
    double[] bought = farm.run().feedNow(SEASONS.indexOf(season)).boughtMjPerHa;
    return IntStream.range(0, HalfMonths.COUNT)
        .filter(p -> bought[p] > 0)
        .mapToDouble(HalfMonths::days)
        .sum();
  }

  // Growth.

  private static double grownKg(TrialFarm farm, String season, List<Month> months) {
    return sum(farm.run().feedNow(SEASONS.indexOf(season)).growthKgDmPerHa, months);
  }

  private static double fastestKgPerDay(TrialFarm farm, String season) {
    double[] grown = farm.run().feedNow(SEASONS.indexOf(season)).growthKgDmPerHa;
    return IntStream.range(0, HalfMonths.COUNT)
        .mapToDouble(p -> grown[p] / HalfMonths.days(p))
        .max()
        .orElseThrow();
  }

  /** Standard deviation of a year's growth over season types, per cent of its mean. */
  private static double spreadPercent(TrialFarm farm) {
    double mean = mean(farm, s -> grownKg(farm, SEASONS.get(s), YEAR));
    double square = mean(farm, s -> Math.pow(grownKg(farm, SEASONS.get(s), YEAR) - mean, 2));
    return 100 * Math.sqrt(square) / mean;
  }

  /** Growth of a season that current cultivars would add in the winter months, kg DM/ha. */
  private static double moreWinterKg(TrialFarm farm, int season) {
    List<Month> winter = farm.model().farm().feedYear().winterMonths();
    double now = sum(farm.run().feedNow(season).growthKgDmPerHa, winter);
    FeedResult current = new FeedResult();
    farm.run().feedYear(season, 1, current);
    return sum(current.growthKgDmPerHa, winter) - now;
  }

  // Clover.

  private static double sownPercent(TrialFarm farm, int year) {
    double[] shares = farm.run().plantShares(0, action(farm.model(), "spray-fallow"));
    int species = shares.length / farm.model().years();
    return 100 * shares[year * species - 1];
  }

  private static int action(FarmModel model, String key) {
    return IntStream.range(0, model.actions().size())
        .filter(a -> model.actions().get(a).key().equals(key))
        .findFirst()
        .orElseThrow();
  }

  /** How many cultivars of a list one has a higher relative winter yield than. */
  private double aheadOf(String names) {
    String[] parts = names.split(":");
    double one = winterYield(parts[0]);
    return Arrays.stream(parts[1].split("; "))
        .mapToDouble(this::winterYield)
        .filter(other -> one > other)
        .count();
  }

  private double winterYield(String cultivar) {
    return tables.cultivar(cultivar).relativeWinterYield().likely();
  }

  private double percentAbove(double percentOfLeaf) {
    Pert leaf = Pert.of(tables.cultivar("Dinninup").formononetin().orElseThrow().range());
    double low = 0;
    double high = 1;
    while (high - low > 1e-6) {
      double middle = (low + high) / 2;
      if (leaf.quantile(middle) > percentOfLeaf) {
        high = middle;
      } else {
        low = middle;
      }
    }
    return 100 * (1 - high);
  }

  // Money.

  /**
   * Extra stock of a sown pasture, dry sheep equivalents a hectare in each year from the first: 6
   * before, 21 at a growth of 11 t in years 4 to 7, in proportion to growth, which falls in a
   * straight line to a share of its peak in year 11.
   */
  private static double[] extraStock(double lastShare) {
    return IntStream.rangeClosed(1, LONGEST_LIFE)
        .mapToDouble(
            year -> {
              if (year <= 7) {
                return 15 * Math.min(1, year / 4.0);
              }
              double share = Math.max(lastShare, 1 - (1 - lastShare) * (year - 7) / 4);
              return 21 * share - 6;
            })
        .toArray();
  }

  /** Yearly worth of sowing again after so many years, in margins of one dry sheep equivalent. */
  private static double yearlyWorth(double lastShare, int life) {
    double[] flows = flows(lastShare, life, outlay());
    return NetPresentValue.annuity(NetPresentValue.of(REAL_RATE, flows), REAL_RATE, life);
  }

  private static double[] flows(double lastShare, int life, double outlay) {
    return DoubleStream.concat(
            DoubleStream.of(-outlay), Arrays.stream(extraStock(lastShare)).limit(life))
        .toArray();
  }

  /** The outlay that makes the published modified rate of 12 % over twenty years. */
  private static double outlay() {
    double low = 1;
    double high = 1000;
    while (high - low > 1e-9) {
      double middle = (low + high) / 2;
      double[] flows = flows(0.5, LONGEST_LIFE, middle);
      if (ModifiedRate.of(flows, REAL_RATE, REAL_RATE).orElseThrow() > 0.12) {
        low = middle;
      } else {
        high = middle;
      }
    }
    return low;
  }

  private static double bestLife() {
    return IntStream.rangeClosed(1, LONGEST_LIFE)
        .boxed()
        .max((a, b) -> Double.compare(yearlyWorth(0.5, a), yearlyWorth(0.5, b)))
        .orElseThrow();
  }

  private static double lifeOfTwentyOverEight() {
    return yearlyWorth(0.65, LONGEST_LIFE) / yearlyWorth(0.65, 8);
  }

  /**
   * Chance of a stand from which sowing a paddock pays, per cent: the median over those paddocks
   * and actions of the demonstration farms for which it pays at a chance of 1, alone and beside
   * nothing else.
   */
  private double breakEvenOfEstablishment() {
    double[] chances =
        Lever.FARMS.stream()
            .map(farm -> FarmFolder.read(Path.of("demo-data", farm), tables).farm())
            .map(farm -> new FarmModel(farm, tables))
            .flatMapToDouble(TrialChecks::breakEvens)
            .sorted()
            .toArray();
    int n = chances.length;
    return 100 * (chances[(n - 1) / 2] + chances[n / 2]) / 2;
  }

  private static DoubleStream breakEvens(FarmModel model) {
    OutcomeFunction run = model.newRun();
    return IntStream.range(0, model.farm().paddocks().size())
        .boxed()
        .flatMapToDouble(
            paddock ->
                IntStream.range(0, model.actions().size())
                    .filter(a -> model.actions().get(a).sows() && run.allowed(paddock, a))
                    .filter(a -> worth(model, paddock, a, 1) > 0)
                    .mapToDouble(a -> breakEven(model, paddock, a)));
  }

  private static double breakEven(FarmModel model, int paddock, int action) {
    double low = 0.01;
    double high = 1;
    while (high - low > 1e-4) {
      double middle = (low + high) / 2;
      if (worth(model, paddock, action, middle) > 0) {
        high = middle;
      } else {
        low = middle;
      }
    }
    return high;
  }

  /** Net present value of an action that starts when it is best, at a chance of establishment. */
  private static double worth(FarmModel model, int paddock, int action, double chance) {
    OutcomeFunction run = model.newRun();
    double[] numbers = model.inputs().likely();
    numbers[run.establishmentInput(action)] = chance;
    run.set(numbers);
    run.setBase(model.keepAll());
    return IntStream.range(0, model.startYears(action))
        .mapToDouble(start -> run.npvOfBaseWith(paddock, action, start))
        .max()
        .orElseThrow();
  }
}
