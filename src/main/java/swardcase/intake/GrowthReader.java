package swardcase.intake;

import java.time.Month;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import swardcase.chance.Range;
import swardcase.check.NumberText;
import swardcase.evidence.Assumption;
import swardcase.evidence.Evidence;
import swardcase.evidence.SetBy;
import swardcase.farm.AutumnBreak;
import swardcase.farm.HalfMonths;
import swardcase.farm.PastureYear;
import swardcase.farm.SeasonGrowth;
import swardcase.farm.SeasonType;
import swardcase.reading.Fields;
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
  private static final List<SeasonType> MOVED = List.of(SeasonType.POOR, SeasonType.GOOD);

  private final Tables tables;
  private final Defaults defaults;

  GrowthReader(Tables tables, Defaults defaults) {
    this.tables = tables;
    this.defaults = defaults;
  }

  /** The growth of the farm; null after a fault. */
  PastureYear read(Fields farm) {
    return farm.faults().make(farm.at("growth"), "growth", () -> year(farm)).orElse(null);
  }

  private PastureYear year(Fields farm) {
    Optional<District> profile = profile(farm);
    List<Assumption> chances = chances(farm);
    Map<SeasonType, Range> factors = ofSeasons(farm, "season_growth_percent", 300);
    Map<SeasonType, Range> moves = ofSeasons(farm, "season_break_half_months", MOST_HALF_MONTHS);
    for (SeasonType type : moves.keySet()) {
      if (profile.filter(it -> it.seasons().containsKey(type)).isPresent()) {
        Fields section = farm.section("season_break_half_months");
        String rule = "must not be given for a season with twelve numbers of its own";
        section.found(type.label(), rule, "");
      }
    }
    return year(profile.orElseThrow(), chances, factors, moves);
  }

  private PastureYear year(
      District profile,
      List<Assumption> chances,
      Map<SeasonType, Range> factors,
      Map<SeasonType, Range> moves) {
    List<SeasonGrowth> seasons = new ArrayList<>();
    for (SeasonType type : SeasonType.values()) {
      Assumption chance = chances.get(type.ordinal());
      List<Double> own = profile.seasons().get(type);
      if (own != null) {
        seasons.add(
            new SeasonGrowth(
                type,
                chance,
                own,
                Optional.empty(),
                profile.evidence(),
                profile.source(),
                profile.setBy()));
      } else {
        Optional<Range> user = Optional.ofNullable(factors.get(type));
        Assumption factor = defaults.orPercent(type.label() + "-season-growth", user);
        seasons.add(scaled(type, chance, profile, factor, breakMoves(type, profile, moves)));
      }
    }
    return new PastureYear(
        profile.name(),
        seasons,
        profile.winterMonths(),
        tables.pastureQuality().get(profile.quality()));
  }

  /**
   * A season that grows its factor of the average one over the year, with its break where it likely
   * comes.
   */
  private static SeasonGrowth scaled(
      SeasonType type, Assumption chance, District profile, Assumption factor, Assumption moves) {
    List<Double> average = profile.growthKgDmPerHaPerDay();
    AutumnBreak usual = new AutumnBreak(average, profile.winterMonths());
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

  /** The farm's own, else that of the district, else the default. */
  private Assumption breakMoves(SeasonType type, District profile, Map<SeasonType, Range> moves) {
    Optional<Range> own = Optional.ofNullable(moves.get(type));
    return profile
        .breakMoves(type)
        .filter(ofDistrict -> own.isEmpty())
        .orElseGet(() -> defaults.orUser("break-" + type.label() + "-season", own));
  }

  private Optional<District> profile(Fields farm) {
    Set<String> districts = tables.districts().keySet();
    if (!farm.has("growth")) {
      farm.fault("growth", "must be given: a district of the tables, or your own numbers");
    } else if (farm.isScalar("growth")) {
      return farm.findName("growth", "a district of the tables", districts)
          .map(tables.districts()::get);
    }
    Fields own = farm.section("growth");
    return farm.has("growth") ? own.make(() -> own(own)) : Optional.empty();
  }

  /** The farm's own numbers; under the name of a district they have the moves of its break. */
  private District own(Fields own) {
    List<Month> winter = own.months("winter_months");
    if (!own.has("winter_months")) {
      own.fault("winter_months", "must be given, such as [June, July, August]");
    }
    Set<String> profiles = tables.pastureQuality().keySet();
    Optional<String> quality =
        own.findName("pasture_quality", "a pasture quality profile of the tables", profiles);
    if (!own.has("pasture_quality")) {
      String rule = "must name one of these profiles: " + String.join(", ", profiles);
      own.fault("pasture_quality", rule);
    }
    Fields seasons = own.section("kg_dm_per_ha_per_day");
    Map<SeasonType, List<Double>> growth = seasons.make(() -> seasons(seasons)).orElse(Map.of());
    String name = own.findText("name").orElse("own numbers");
    return new District(
        name,
        growth,
        winter,
        quality.orElse(""),
        Evidence.FARM,
        "",
        SetBy.USER,
        Optional.ofNullable(tables.districts().get(name))
            .map(District::breakMoves)
            .orElse(Map.of()),
        OptionalInt.empty(),
        OptionalInt.empty(),
        Optional.empty());
  }

  private static Map<SeasonType, List<Double>> seasons(Fields seasons) {
    Map<SeasonType, List<Double>> growth = new EnumMap<>(SeasonType.class);
    for (SeasonType type : SeasonType.values()) {
      int before = seasons.faults().count();
      List<Double> twelve = seasons.numbers(type.label(), 0, MOST_PER_DAY);
      boolean sound = seasons.faults().count() == before;
      String rule = "twelve numbers, January to December";
      if (seasons.has(type.label())) {
        growth.put(type, twelve);
        if (sound && twelve.size() != 12) {
          seasons.found(type.label(), "must be " + rule, twelve.size() + " numbers");
        }
      } else if (type == SeasonType.AVERAGE) {
        seasons.fault(type.label(), "must be given: " + rule);
      }
    }
    return growth;
  }

  private List<Assumption> chances(Fields farm) {
    String key = "season_chances_percent";
    Fields chances = farm.section(key);
    List<Assumption> three = new ArrayList<>();
    double sum = 0;
    for (SeasonType type : SeasonType.values()) {
      Optional<Range> user = chances.findExact(type.label(), 0, 100);
      sum += user.map(Range::likely).orElse(0d);
      three.add(defaults.orPercent("chance-" + type.label() + "-season", user));
    }
    chances.make(() -> three);
    boolean all = chances.keys().size() >= 3;
    if (farm.has(key) && (!all || Math.abs(sum - 100) > 0.1)) {
      String rule = "must give poor, average and good, and they must add up to 100";
      farm.found(key, rule, all ? NumberText.plain(sum) : "");
    }
    return three;
  }

  /** What a section says of poor and good seasons. */
  private static Map<SeasonType, Range> ofSeasons(Fields farm, String key, double most) {
    Fields section = farm.section(key);
    Map<SeasonType, Range> own = new EnumMap<>(SeasonType.class);
    for (SeasonType type : MOVED) {
      section.findRange(type.label(), 0, most).ifPresent(range -> own.put(type, range));
    }
    section.make(() -> own);
    return own;
  }
}
