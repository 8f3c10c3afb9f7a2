package swardcase.feed;

import java.nio.file.Path;
import java.time.Month;
import java.time.MonthDay;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.TreeMap;
import swardcase.RandomFarms;
import swardcase.chance.Range;
import swardcase.evaluation.PublishedRows;
import swardcase.evidence.Assumption;
import swardcase.evidence.Evidence;
import swardcase.evidence.SetBy;
import swardcase.farm.Action;
import swardcase.farm.ActionKind;
import swardcase.farm.ActionNumber;
import swardcase.farm.Climate;
import swardcase.farm.ExtraFeedUse;
import swardcase.farm.Farm;
import swardcase.farm.Finance;
import swardcase.farm.Management;
import swardcase.farm.Mob;
import swardcase.farm.OtherStock;
import swardcase.farm.Paddock;
import swardcase.farm.PaddockUse;
import swardcase.farm.PastureQuality;
import swardcase.farm.PastureYear;
import swardcase.farm.Prices;
import swardcase.farm.ScanningBasis;
import swardcase.farm.SeasonGrowth;
import swardcase.farm.SeasonType;
import swardcase.farm.Supplement;
import swardcase.tables.Tables;

/** The feed table as the program ships it, and invented farms on a published growth row. */
final class FeedFixtures {

  /** Katanning, kg DM/ha/day, January to December: DPIRD, annual pasture table 2. */
  static final List<Double> KATANNING = row(0, 0, 0, 1, 11, 15, 16, 28, 51, 45, 15, 0);

  static final double[] ONES = filled(1);

  private FeedFixtures() {}

  static Tables tables() {
    TreeMap<String, Assumption> parameters = new TreeMap<>();
    for (Map<String, String> row : PublishedRows.rows(Path.of("tables/feed-parameters.csv"))) {
      Range range =
          new Range(
              PublishedRows.number(row, "low"),
              PublishedRows.number(row, "likely"),
              PublishedRows.number(row, "high"));
      parameters.put(
          row.get("key"),
          new Assumption(
              row.get("name"),
              range,
              row.get("unit"),
              Evidence.valueOf(row.get("evidence").toUpperCase(Locale.ROOT).replace(' ', '_')),
              row.get("source"),
              SetBy.DEFAULT));
    }
    return new Tables(
        Collections.emptySortedMap(),
        Collections.emptySortedMap(),
        Collections.emptySortedMap(),
        Collections.emptySortedMap(),
        Collections.emptySortedMap(),
        parameters,
        List.of(),
        Collections.emptySortedMap(),
        List.of());
  }

  /** Ewes of 55 kg joined on 30 January on one paddock of 100 ha, Katanning growth. */
  static Farm farm(int ewes) {
    return farm(List.of(paddock("Home", 100, 0.30, 1)), mobs(ewes), List.of());
  }

  static List<Mob> mobs(int ewes) {
    if (ewes == 0) {
      return List.of();
    }
    return List.of(mob(ewes, 55, 92, 120, 95));
  }

  static Mob mob(int ewes, double weight, double pregnant, double scanned, double marked) {
    return new Mob(
        "Merinos",
        ewes,
        List.of(0.25, 0.25, 0.25, 0.25),
        SetBy.USER,
        told(weight),
        MonthDay.of(1, 30),
        told(6),
        told(pregnant),
        told(scanned),
        told(marked),
        ScanningBasis.UNAFFECTED,
        true);
  }

  static OtherStock wethers(int head) {
    return new OtherStock(
        "wethers", head, told(1), Optional.empty(), Arrays.asList(Month.values()), true);
  }

  static Paddock paddock(String name, double areaHa, double clover, double index) {
    return new Paddock(
        name,
        areaHa,
        told(clover),
        told(index),
        false,
        true,
        Optional.empty(),
        PaddockUse.EWES,
        Optional.empty(),
        OptionalDouble.empty(),
        RandomFarms.NO_SIGNS,
        List.of());
  }

  static Farm farm(List<Paddock> paddocks, List<Mob> mobs, List<OtherStock> other) {
    return farm(KATANNING, paddocks, mobs, other);
  }

  static Farm farm(
      List<Double> averageGrowth, List<Paddock> paddocks, List<Mob> mobs, List<OtherStock> other) {
    List<SeasonGrowth> seasons = new ArrayList<>();
    for (SeasonType type : SeasonType.values()) {
      double factor = 0.7 + 0.3 * type.ordinal();
      seasons.add(
          new SeasonGrowth(
              type,
              told(type == SeasonType.AVERAGE ? 0.5 : 0.25),
              averageGrowth.stream().map(growth -> growth * factor).toList(),
              Optional.empty(),
              Evidence.INFERRED,
              "",
              SetBy.USER));
    }
    return new Farm(
        "Invented",
        "A$",
        Climate.HOT_DRY_SUMMER,
        new PastureYear(
            "Katanning", seasons, List.of(Month.JUNE, Month.JULY, Month.AUGUST), quality()),
        paddocks,
        mobs,
        other,
        new Supplement("barley", told(300), told(13), told(0.9), told(0.05)),
        new Prices(
            told(80), told(0), told(150), told(0), told(90), told(0), told(60), told(1), told(0)),
        new Finance(
            told(0.07),
            10,
            OptionalDouble.empty(),
            told(0.2),
            OptionalDouble.empty(),
            told(0),
            told(60_000),
            Optional.empty()),
        ExtraFeedUse.HOLD_NUMBERS,
        new Management(told(0.1), told(0.2), told(12), told(0), told(0), told(1), told(0)),
        List.of(keep()),
        "Any",
        List.of());
  }

  /** The monthly profile proposed for an annual sub-clover pasture; inferred, not published. */
  private static List<PastureQuality> quality() {
    double[] green = {65, 65, 65, 72, 77, 77, 77, 77, 75, 70, 62, 60};
    double[] dry = {55, 52, 50, 48, 45, 42, 40, 40, 40, 58, 57, 56};
    double[] dying = {90, 90, 90, 30, 2, 2, 2, 2, 3, 15, 60, 90};
    double[] lost = {12, 12, 15, 25, 50, 50, 40, 30, 20, 10, 10, 10};
    List<PastureQuality> months = new ArrayList<>();
    for (int m = 0; m < 12; m++) {
      months.add(
          new PastureQuality(
              Month.of(m + 1),
              green[m] / 100,
              dry[m] / 100,
              dying[m] / 100,
              lost[m] / 100,
              Evidence.INFERRED,
              ""));
    }
    return months;
  }

  private static Action keep() {
    Map<ActionNumber, Assumption> numbers = new EnumMap<>(ActionNumber.class);
    for (ActionNumber number : ActionNumber.values()) {
      if (number != ActionNumber.CLOVER_SHARE) {
        numbers.put(number, told(number.neutral()));
      }
    }
    return new Action(
        "keep",
        "keep as it is",
        ActionKind.KEEP,
        false,
        0,
        false,
        0,
        numbers,
        List.of(),
        Optional.empty());
  }

  static Assumption told(double value) {
    return Assumption.ofFarm("invented", Range.exactly(value), "-");
  }

  static double[] filled(double value) {
    double[] values = new double[24];
    Arrays.fill(values, value);
    return values;
  }

  /** The default method's demand with the mobs' own shares of ewes in lamb. */
  static StockDemand demand(Farm farm, Tables tables) {
    double[] pregnant =
        farm.mobs().stream().mapToDouble(mob -> mob.pregnantPercent().likely() / 100).toArray();
    return new StockDemand(farm, tables, EnergyMethod.SCA_1990, pregnant);
  }

  /** Five numbers of a run; what is eaten and grown is as the tables have it. */
  static FeedParameters parameters(
      double conditionDeficit,
      double leafAreaPenalty,
      double leafAreaBoundKg,
      double demand,
      double dryLoss) {
    return set(
        FeedParameters.likely(farm(330), tables()),
        conditionDeficit,
        leafAreaPenalty,
        leafAreaBoundKg,
        demand,
        dryLoss);
  }

  static FeedParameters set(
      FeedParameters likely,
      double conditionDeficit,
      double leafAreaPenalty,
      double leafAreaBoundKg,
      double demand,
      double dryLoss) {
    return likely
        .set(FeedNumber.CONDITION_DEFICIT, conditionDeficit)
        .set(FeedNumber.LEAF_AREA_PENALTY, leafAreaPenalty)
        .set(FeedNumber.LEAF_AREA_BOUND, leafAreaBoundKg)
        .set(FeedNumber.DEMAND, demand)
        .set(FeedNumber.DRY_LOSS, dryLoss)
        .set(FeedNumber.DRY_SELECTION, 0);
  }

  static FeedResult run(Farm farm, double[] growthMultiplier, double eweMultiplier) {
    Tables tables = tables();
    FeedResult result = new FeedResult();
    FeedBudget budget = new FeedBudget(farm, demand(farm, tables), tables);
    FeedRates rates = budget.rates(FeedParameters.likely(farm, tables), eweMultiplier);
    budget.run(1, growthMultiplier, rates, result);
    return result;
  }

  static FeedResult[] everySeason(FeedBudget budget, double[] growthMultiplier, FeedRates rates) {
    FeedResult[] results = new FeedResult[3];
    for (int season = 0; season < results.length; season++) {
      results[season] = new FeedResult();
      budget.run(season, growthMultiplier, rates, results[season]);
    }
    return results;
  }

  private static List<Double> row(double... values) {
    return Arrays.stream(values).boxed().toList();
  }
}
