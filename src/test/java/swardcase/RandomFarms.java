package swardcase;

import java.nio.file.Path;
import java.time.Month;
import java.time.MonthDay;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.SplittableRandom;
import java.util.concurrent.ConcurrentHashMap;
import java.util.stream.DoubleStream;
import swardcase.chance.Range;
import swardcase.evidence.Assumption;
import swardcase.evidence.Evidence;
import swardcase.evidence.SetBy;
import swardcase.farm.Action;
import swardcase.farm.ActionKind;
import swardcase.farm.Climate;
import swardcase.farm.ExtraFeedUse;
import swardcase.farm.Farm;
import swardcase.farm.Finance;
import swardcase.farm.Identification;
import swardcase.farm.LeafTest;
import swardcase.farm.Management;
import swardcase.farm.Mob;
import swardcase.farm.OtherStock;
import swardcase.farm.Paddock;
import swardcase.farm.PaddockUse;
import swardcase.farm.PastureYear;
import swardcase.farm.Prices;
import swardcase.farm.ScanningBasis;
import swardcase.farm.SeasonGrowth;
import swardcase.farm.SeasonType;
import swardcase.farm.StandSigns;
import swardcase.farm.Supplement;
import swardcase.intake.FarmFolder;
import swardcase.tables.District;
import swardcase.tables.Tables;
import swardcase.tables.TablesLoader;

/** Invented farms drawn from a seed, so that a law can be tried on many and a failure repeats. */
public final class RandomFarms {

  /** The reference data all of them use. */
  public static final Tables TABLES = TablesLoader.from(Path.of("tables")).load();

  /** Nobody looked at soil, plants or pests. */
  public static final StandSigns NO_SIGNS =
      new StandSigns(
          OptionalDouble.empty(),
          OptionalDouble.empty(),
          OptionalDouble.empty(),
          OptionalDouble.empty(),
          OptionalDouble.empty(),
          Optional.empty(),
          Optional.empty(),
          Optional.empty());

  /** Farms of the demonstration folders that were asked for. */
  private static final Map<String, Farm> READ = new ConcurrentHashMap<>();

  private static final List<Farm> DEMOS =
      List.of(demo("mixed-farm"), demo("current-farm"), demo("northern-farm"), demo("risky-farm"));

  private static final double[] SEASON_FACTORS = {0.7, 1, 1.2};

  private RandomFarms() {}

  /** A farm of the demonstration folders. */
  public static Farm demo(String name) {
    return READ.computeIfAbsent(
        name, of -> FarmFolder.read(Path.of("demo-data", of), TABLES).farm());
  }

  /** The farm as if it said {@code crops: yes}. */
  public static Farm withCropOnly(Farm farm) {
    List<Action> actions = new ArrayList<>(farm.actions());
    TABLES.actions().stream()
        .filter(action -> action.kind() == ActionKind.CROP)
        .forEach(actions::add);
    return FarmCopy.of(farm).actions(actions).build();
  }

  /** Place of an action of a farm. */
  public static int place(Farm farm, String key) {
    return farm.actions().stream().map(Action::key).toList().indexOf(key);
  }

  /** Any farm of one to six paddocks. */
  public static Farm any(SplittableRandom random) {
    return any(random, 1 + random.nextInt(6));
  }

  /**
   * Any farm: any district, cultivars, stock, calendar, prices and limits; about one in twenty has
   * no ewes, one in three no other stock.
   */
  public static Farm any(SplittableRandom random, int paddocks) {
    List<Mob> mobs = mobs(random, 20.0 * paddocks);
    List<Paddock> list = new ArrayList<>();
    for (int i = 0; i < paddocks; i++) {
      list.add(paddock(random, "P" + i, mobs));
    }
    double area = list.stream().mapToDouble(Paddock::areaHa).sum();
    ExtraFeedUse[] uses = ExtraFeedUse.values();
    List<String> sown = List.of("Narrikup", "Coolamon", "Urana", "Napier");
    return FarmCopy.of(DEMOS.get(0))
        .climate(Climate.values()[random.nextInt(2)])
        .feedYear(feedYear(random))
        .paddocks(list)
        .mobs(mobs)
        .otherStock(random.nextInt(3) == 0 ? List.of() : List.of(otherStock(random, area)))
        .supplement(supplement(random))
        .prices(prices(random))
        .finance(finance(random, area))
        .extraFeedUse(uses[random.nextInt(uses.length)])
        .management(management(random))
        .actions(actions(random))
        .sownCultivar(sown.get(random.nextInt(sown.size())))
        .build();
  }

  /**
   * Every uncertain number of a farm somewhere in its range. Moves of the break follow from the
   * first number, so that a farm draws the same of the others whether its break moves or not.
   */
  public static double[] draw(List<Assumption> inputs, SplittableRandom random) {
    double[] x = new double[inputs.size()];
    for (int j = 0; j < x.length; j++) {
      x[j] = isBreak(inputs.get(j)) ? 0 : within(inputs.get(j), random);
    }
    SplittableRandom ofBreak = new SplittableRandom(Double.doubleToLongBits(x[0]));
    for (int j = 0; j < x.length; j++) {
      x[j] = isBreak(inputs.get(j)) ? within(inputs.get(j), ofBreak) : x[j];
    }
    return x;
  }

  private static boolean isBreak(Assumption input) {
    return input.unit().equals("half-months");
  }

  private static double within(Assumption input, SplittableRandom random) {
    double width = input.range().high() - input.range().low();
    return input.range().low() + width * random.nextDouble();
  }

  /** A paddock of the farm's ewes, of any of these mobs, or of other stock. */
  static Paddock paddock(SplittableRandom random, String name, List<Mob> mobs) {
    PaddockUse use = random.nextInt(6) == 0 ? PaddockUse.OTHER_STOCK : PaddockUse.EWES;
    boolean oneMob = use == PaddockUse.EWES && mobs.size() > 1 && random.nextInt(3) == 0;
    LeafTest test = new LeafTest(random.nextDouble(0, 1.6), random.nextDouble(0, 0.3));
    return new Paddock(
        name,
        random.nextDouble(2, 60),
        between("clover share of green feed", random, 0.02, 0.9),
        between("growth index of the paddock", random, 0.5, 1.5),
        random.nextInt(4) == 0,
        random.nextInt(5) > 0,
        random.nextInt(5) == 0 ? Optional.of(test) : Optional.empty(),
        use,
        oneMob ? Optional.of(mobs.get(random.nextInt(mobs.size())).name()) : Optional.empty(),
        OptionalDouble.empty(),
        NO_SIGNS,
        plants(random, List.copyOf(TABLES.cultivars().keySet())));
  }

  /** Up to four kinds of plants with these names; some could be told apart no further. */
  public static List<Identification> plants(SplittableRandom random, List<String> names) {
    List<Identification> plants = new ArrayList<>();
    for (int kind = random.nextInt(5); kind > 0; kind--) {
      List<String> candidates = new ArrayList<>();
      for (int k = random.nextInt(6) == 0 ? 2 : 1; k > 0; k--) {
        String name = names.get(random.nextInt(names.size()));
        if (!candidates.contains(name)) {
          candidates.add(name);
        }
      }
      plants.add(new Identification(candidates, 1 + random.nextInt(60)));
    }
    return plants;
  }

  private static List<Mob> mobs(SplittableRandom random, double area) {
    List<Mob> mobs = new ArrayList<>();
    int count = random.nextInt(20) == 0 ? 0 : 1 + random.nextInt(3);
    for (int g = 0; g < count; g++) {
      double[] ages =
          DoubleStream.generate(random::nextDouble).limit(1 + random.nextInt(6)).toArray();
      double sum = Arrays.stream(ages).sum();
      double pregnant = random.nextDouble(55, 97);
      double scanning = pregnant * random.nextDouble(1, 1.7);
      mobs.add(
          new Mob(
              "mob " + g,
              1 + (int) (area * random.nextDouble(0.3, 8) / count),
              Arrays.stream(ages).map(age -> age / sum).boxed().toList(),
              SetBy.USER,
              exactly("liveweight", random.nextDouble(40, 75)),
              MonthDay.of(1 + random.nextInt(12), 1 + random.nextInt(28)),
              exactly("length of joining", 3 + random.nextInt(10)),
              exactly("ewes in lamb", pregnant),
              exactly("lambs scanned", scanning),
              exactly("lambs marked", scanning * random.nextDouble(0.5, 1)),
              ScanningBasis.values()[random.nextInt(2)],
              true));
    }
    return mobs;
  }

  private static OtherStock otherStock(SplittableRandom random, double area) {
    List<Month> months =
        Arrays.stream(Month.values()).filter(month -> random.nextInt(4) > 0).toList();
    int head = (int) (area * random.nextDouble(0, 3));
    return new OtherStock(
        "wethers",
        head,
        exactly("dry sheep equivalents", 1.2),
        Optional.of(exactly("most days on risky green feed", 28)),
        months,
        true);
  }

  private static PastureYear feedYear(SplittableRandom random) {
    List<District> districts = List.copyOf(TABLES.districts().values());
    District district = districts.get(random.nextInt(districts.size()));
    List<SeasonGrowth> seasons = new ArrayList<>();
    for (SeasonType type : SeasonType.values()) {
      double factor = SEASON_FACTORS[type.ordinal()] * random.nextDouble(0.9, 1.1);
      seasons.add(
          new SeasonGrowth(
              type,
              exactly("chance of a season", type == SeasonType.AVERAGE ? 0.5 : 0.25),
              district.growthKgDmPerHaPerDay().stream().map(growth -> growth * factor).toList(),
              district.breakMoves(type),
              Evidence.FARM,
              "",
              SetBy.USER));
    }
    List<String> profiles = List.copyOf(TABLES.pastureQuality().keySet());
    String profile = profiles.get(random.nextInt(profiles.size()));
    return new PastureYear(
        district.name(), seasons, district.winterMonths(), TABLES.pastureQuality().get(profile));
  }

  private static Supplement supplement(SplittableRandom random) {
    return new Supplement(
        "grain",
        between("price of grain", random, 150, 600),
        between("energy of grain", random, 9, 13),
        between("dry matter of grain", random, 0.86, 0.92),
        between("waste of grain", random, 0, 0.2));
  }

  private static Prices prices(SplittableRandom random) {
    boolean sells = random.nextInt(3) == 0;
    return new Prices(
        between("net value of a lamb", random, 30, 400),
        between("cost of a dry ewe", random, 0, 30),
        between("replacement ewe", random, 80, 320),
        sells ? between("spare feed", random, 10, 80) : exactly("spare feed", 0),
        between("margin of a further ewe", random, 0, 140),
        exactly("nitrogen", sells ? 1.5 : 0),
        between("price of a leaf test", random, 50, 400),
        between("price of a plant", random, 0.5, 5),
        exactly("correlation of prices", random.nextDouble(-0.5, 0.5)));
  }

  private static Finance finance(SplittableRandom random, double area) {
    boolean limited = random.nextBoolean();
    double budget = area * random.nextDouble(0, 200);
    return new Finance(
        between("discount rate", random, 0.01, 0.12),
        1 + random.nextInt(12),
        limited ? OptionalDouble.of(budget) : OptionalDouble.empty(),
        exactly("most out of grazing", random.nextDouble(0, 1)),
        OptionalDouble.empty(),
        exactly("end value", random.nextInt(3) == 0 ? random.nextInt(300) : 0),
        exactly("risk tolerance", 600 * area),
        Optional.empty());
  }

  private static Management management(SplittableRandom random) {
    return new Management(
        between("deficit", random, 0, 0.2),
        exactly("largest rise in ewe numbers", random.nextDouble(0, 0.4)),
        exactly("weeks to weaning", 8 + random.nextInt(10)),
        exactly("loss not to be borne", random.nextInt(20_000)),
        exactly("own time for a use rule", 0.6),
        exactly("price of scanning", 0.9),
        exactly("own time for grazing in order", 0.25));
  }

  private static List<Action> actions(SplittableRandom random) {
    return DEMOS.get(random.nextInt(DEMOS.size())).actions().stream()
        .filter(action -> action.kind() == ActionKind.KEEP || random.nextInt(3) > 0)
        .toList();
  }

  /** A number known exactly, told by the farm. */
  public static Assumption exactly(String name, double value) {
    return Assumption.ofFarm(name, Range.exactly(value), "-");
  }

  private static Assumption between(String name, SplittableRandom random, double from, double to) {
    double[] ends = {
      random.nextDouble(from, to), random.nextDouble(from, to), random.nextDouble(from, to)
    };
    Arrays.sort(ends);
    return Assumption.ofFarm(name, Range.of(ends[0], ends[1], ends[2]), "-");
  }
}
