package swardcase.intake;

import java.time.Month;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import swardcase.chance.Range;
import swardcase.evidence.Assumption;
import swardcase.evidence.Evidence;
import swardcase.evidence.SetBy;
import swardcase.farm.AutumnBreak;
import swardcase.farm.HalfMonths;
import swardcase.farm.PastureYear;
import swardcase.farm.SeasonGrowth;
import swardcase.farm.SeasonType;
import swardcase.intake.FaultList.Place;
import swardcase.tables.District;
import swardcase.tables.Tables;

/**
 * Reads pasture growth: a district of the tables, or the farm's own twelve numbers.
 *
 * <p>A poor or a good season that is not given is the average one with its break moved, which over
 * the year grows a factor of the average one.
 */
final class GrowthReader {

  private static final double MOST_PER_DAY = 250;
  private static final double MOST_HALF_MONTHS = 6;

  private final Tables tables;
  private final Defaults defaults;

  GrowthReader(Tables tables, Defaults defaults) {
    this.tables = tables;
    this.defaults = defaults;
  }

  /** What {@code growth} gave, before the chances and factors of the seasons. */
  private record Profile(
      String name,
      Map<SeasonType, List<Double>> growth,
      Evidence evidence,
      String source,
      SetBy setBy,
      List<Month> winter,
      String quality) {}

  Optional<PastureYear> find(Fields farm) {
    int before = farm.faults().count();
    Optional<Profile> profile = findProfile(farm);
    List<Assumption> chances = chances(farm.section("season_chances_percent"), farm);
    Map<SeasonType, Assumption> factors = factors(farm.section("season_growth_percent"), farm);
    Map<SeasonType, Range> moves = moves(farm.section("season_break_half_months"), farm, profile);
    return farm.faults()
        .build(
            before,
            farm.place("growth"),
            () -> feedYear(profile.orElseThrow(), chances, factors, moves));
  }

  private PastureYear feedYear(
      Profile profile,
      List<Assumption> chances,
      Map<SeasonType, Assumption> factors,
      Map<SeasonType, Range> moves) {
    List<SeasonGrowth> seasons = new ArrayList<>();
    for (SeasonType type : SeasonType.values()) {
      Assumption chance = chances.get(type.ordinal());
      List<Double> own = profile.growth().get(type);
      seasons.add(
          own != null
              ? new SeasonGrowth(
                  type, chance, own, profile.evidence(), profile.source(), profile.setBy())
              : scaled(type, chance, profile, factors.get(type), breakMoves(type, profile, moves)));
    }
    return new PastureYear(
        profile.name(),
        seasons,
        profile.winter(),
        profile.setBy(),
        profile.quality(),
        tables.pastureQuality().get(profile.quality()));
  }

  /**
   * A season that grows its factor of the average one over the year, with its break where it likely
   * comes.
   */
  private static SeasonGrowth scaled(
      SeasonType type, Assumption chance, Profile profile, Assumption factor, Assumption moves) {
    List<Double> average = profile.growth().get(SeasonType.AVERAGE);
    AutumnBreak usual = new AutumnBreak(average, profile.winter());
    double kept =
        year(usual.growth(average, type.laterBreak() * moves.likely()))
            / year(usual.growth(average, 0));
    double scale = factor.likely() / (kept > 0 ? kept : 1);
    List<Double> growth = average.stream().map(g -> Math.min(MOST_PER_DAY, g * scale)).toList();
    return new SeasonGrowth(
        type,
        chance,
        growth,
        Optional.of(moves),
        factor.evidence(),
        factor.source(),
        factor.setBy());
  }

  private static double year(double[] perDay) {
    double sum = 0;
    for (int p = 0; p < perDay.length; p++) {
      sum += perDay[p] * HalfMonths.days(p);
    }
    return sum;
  }

  /** The farm's own, else that of the district of this name, else the default. */
  private Assumption breakMoves(SeasonType type, Profile profile, Map<SeasonType, Range> moves) {
    String key = "break-" + type.label() + "-season";
    Optional<District> district = Optional.ofNullable(tables.districts().get(profile.name()));
    Optional<Assumption> ofDistrict = district.flatMap(it -> it.breakMoves(type));
    Optional<Range> own = Optional.ofNullable(moves.get(type));
    return own.isEmpty() && ofDistrict.isPresent()
        ? ofDistrict.get()
        : defaults.orUser(key, own, 1);
  }

  private Optional<Profile> findProfile(Fields farm) {
    if (!farm.has("growth")) {
      farm.fault("growth", "must be given: a district of the tables, or your own numbers", "");
      return Optional.empty();
    }
    return farm.isScalar("growth") ? findDistrict(farm) : findOwn(farm.section("growth"));
  }

  private Optional<Profile> findDistrict(Fields farm) {
    Optional<String> name =
        farm.findName("growth", "a district of the tables", tables.districts().keySet());
    if (name.isEmpty()) {
      return Optional.empty();
    }
    District district = tables.districts().get(name.get());
    return Optional.of(
        new Profile(
            district.name(),
            Map.of(SeasonType.AVERAGE, district.growthKgDmPerHaPerDay()),
            district.evidence(),
            district.source(),
            district.setBy(),
            district.winterMonths(),
            district.quality()));
  }

  private Optional<Profile> findOwn(Fields own) {
    int before = own.faults().count();
    String name = own.findText("name").orElse("own numbers");
    List<Month> winter = months(own, "winter_months");
    if (winter.isEmpty() && own.faults().count() == before) {
      own.fault("winter_months", "must be given, such as [June, July, August]", "");
    }
    Optional<String> quality =
        own.findName(
            "pasture_quality",
            "a pasture quality profile of the tables",
            tables.pastureQuality().keySet());
    if (!own.has("pasture_quality")) {
      own.fault(
          "pasture_quality",
          "must name one of these profiles: " + String.join(", ", tables.pastureQuality().keySet()),
          "");
    }
    Map<SeasonType, List<Double>> growth = new EnumMap<>(SeasonType.class);
    Fields seasons = own.section("kg_dm_per_ha_per_day");
    for (SeasonType type : SeasonType.values()) {
      boolean given = seasons.has(type.label());
      int sound = own.faults().count();
      List<Double> twelve = seasons.numbers(type.label(), 0, MOST_PER_DAY);
      if (given && twelve.size() != 12 && own.faults().count() == sound) {
        seasons.fault(
            type.label(),
            "must be twelve numbers, January to December",
            twelve.size() + " numbers");
      }
      if (given) {
        growth.put(type, twelve);
      } else if (type == SeasonType.AVERAGE) {
        seasons.fault(type.label(), "must be given: twelve numbers, January to December", "");
      }
    }
    seasons.finish();
    own.finish();
    return own.faults()
        .build(
            before,
            own.place(),
            () ->
                new Profile(
                    name, growth, Evidence.FARM, "", SetBy.USER, winter, quality.orElseThrow()));
  }

  private List<Assumption> chances(Fields chances, Fields farm) {
    List<Assumption> three = new ArrayList<>();
    int given = 0;
    double sum = 0;
    for (SeasonType type : SeasonType.values()) {
      Optional<Range> user =
          chances.findNumber(type.label(), 0, 100).stream().mapToObj(Range::exactly).findFirst();
      given += chances.has(type.label()) ? 1 : 0;
      sum += user.map(Range::likely).orElse(0d);
      three.add(defaults.orUser("chance-" + type.label() + "-season", user, 100));
    }
    chances.finish();
    if (farm.has("season_chances_percent") && (given < 3 || Math.abs(sum - 100) > 0.1)) {
      chances
          .faults()
          .add(
              farm.place("season_chances_percent"),
              "must give poor, average and good, and they must add up to 100",
              given < 3 ? "" : NumberText.plain(sum));
    }
    return three;
  }

  private Map<SeasonType, Assumption> factors(Fields factors, Fields farm) {
    farm.has("season_growth_percent");
    Map<SeasonType, Assumption> two = new EnumMap<>(SeasonType.class);
    for (SeasonType type : List.of(SeasonType.POOR, SeasonType.GOOD)) {
      two.put(
          type,
          defaults.orUser(
              type.label() + "-season-growth", factors.findRange(type.label(), 0, 300), 100));
    }
    factors.finish();
    return two;
  }

  private Map<SeasonType, Range> moves(Fields moves, Fields farm, Optional<Profile> profile) {
    farm.has("season_break_half_months");
    Map<SeasonType, Range> own = new EnumMap<>(SeasonType.class);
    for (SeasonType type : List.of(SeasonType.POOR, SeasonType.GOOD)) {
      moves.findRange(type.label(), 0, MOST_HALF_MONTHS).ifPresent(range -> own.put(type, range));
      if (moves.has(type.label())
          && profile.filter(it -> it.growth().containsKey(type)).isPresent()) {
        moves.fault(
            type.label(), "must not be given for a season with twelve numbers of its own", "");
      }
    }
    moves.finish();
    return own;
  }

  /** The months below a key, in the order of the calendar; empty if there are none. */
  static List<Month> months(Fields fields, String key) {
    List<Month> months = new ArrayList<>();
    for (Map.Entry<Place, String> text : fields.texts(key)) {
      Optional<Month> month = CalendarText.findMonth(text.getValue());
      month.ifPresentOrElse(
          months::add,
          () ->
              fields
                  .faults()
                  .add(
                      text.getKey(),
                      "must be a month such as June",
                      text.getValue(),
                      CalendarText.monthNames()));
    }
    return months.stream().distinct().sorted().toList();
  }
}
