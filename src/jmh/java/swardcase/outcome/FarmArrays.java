package swardcase.outcome;

import java.util.Arrays;
import java.util.List;
import java.util.function.IntPredicate;
import java.util.function.IntToDoubleFunction;
import java.util.function.ToDoubleBiFunction;
import java.util.function.ToDoubleFunction;
import java.util.stream.IntStream;
import swardcase.bench.NumpyFiles;
import swardcase.evidence.UncertainNumbers;
import swardcase.farm.Action;
import swardcase.farm.ActionKind;
import swardcase.farm.CostLine.Phase;
import swardcase.farm.ExtraFeedUse;
import swardcase.farm.Farm;
import swardcase.farm.HalfMonths;
import swardcase.farm.Mob;
import swardcase.farm.Paddock;
import swardcase.farm.PastureQuality;
import swardcase.farm.ScanningBasis;
import swardcase.farm.SeasonType;
import swardcase.feed.GrowthYear;
import swardcase.feed.StockDemand;
import swardcase.reproduction.FlockEffect;
import swardcase.sward.SeedBank;
import swardcase.sward.SeedKeys;
import swardcase.sward.StandingClover;
import swardcase.tables.Tables;

/**
 * A farm made ready, as plain arrays for a recomputation in another language: what no draw changes,
 * and the place among the drawn numbers of everything that a draw does change. A place of -1 says
 * that the number is not read.
 */
public final class FarmArrays {

  private static final int P = HalfMonths.COUNT;

  private final StockDemand demand;
  private final Farm farm;
  private final Tables tables;
  private final GrowthYear year;
  private final UncertainNumbers inputs;
  private final StandingClover stands;
  private final double[] places;
  private final NumpyFiles files;

  private FarmArrays(FarmModel model, NumpyFiles files) {
    demand = model.demand();
    farm = model.farm();
    tables = model.tables();
    year = model.year();
    inputs = model.inputs();
    stands = new StandingClover(farm, tables, inputs, model.compositions());
    places = IntStream.range(0, inputs.size()).asDoubleStream().toArray();
    this.files = files;
  }

  /** Writes them. Refuses a farm that uses extra feed for more ewes or agistment. */
  public static void write(FarmModel model, NumpyFiles files) {
    Farm farm = model.farm();
    if (farm.extraFeedUse() == ExtraFeedUse.RUN_MORE_EWES
        || farm.prices().spareFeedPerTonneDm().range().high() > 0) {
      throw new IllegalArgumentException("extra feed must save supplement on " + farm.name());
    }
    FarmArrays arrays = new FarmArrays(model, files);
    arrays.scalars();
    arrays.paddocks();
    arrays.actions(model);
    arrays.feed();
    arrays.mobs();
  }

  private void scalars() {
    number("years", farm.finance().horizonYears());
    number("at_discount_rate", inputs.place(OutcomeFunction.DISCOUNT_RATE));
    number("at_end_value", inputs.place("finance.end-value"));
    number("at_supplement_price", inputs.place(OutcomeFunction.SUPPLEMENT_PRICE));
    number("at_supplement_energy", inputs.place("supplement.energy"));
    number("at_supplement_dry_matter", inputs.place("supplement.dry-matter"));
    number("at_supplement_waste", inputs.place("supplement.waste"));
    number("at_lamb_value", inputs.place(OutcomeFunction.LAMB_VALUE));
    number("at_dry_ewe_cost", inputs.place("price.dry-ewe"));
    number("at_condition_deficit", inputs.place("farm.condition-deficit"));
    for (String key :
        List.of(
            "dose.waterlogged-factor",
            "dose.leaf-share",
            "dose.dry-factor",
            "sowing.clover-share",
            "sowing.clover-year-one",
            "sowing.clover-years",
            "feed.leaf-area-penalty",
            "feed.leaf-area-bound",
            "feed.demand-multiplier",
            "feed.dry-loss-multiplier",
            "feed.growth-multiplier",
            "feed.intake-multiplier",
            "feed.green-digestibility",
            "feed.dry-selection",
            "feed.green-dying-multiplier",
            "oestrogen.story",
            "oestrogen.d50",
            "oestrogen.d50-outbreaks",
            "oestrogen.steepness",
            "oestrogen.ramp-days",
            "oestrogen.lag-days",
            "oestrogen.half-life-days",
            "oestrogen.sterility-q",
            "oestrogen.sterility-q-outbreaks",
            "oestrogen.sterility-reference-dose",
            SeedKeys.EMERGENCE,
            SeedKeys.SOWING_YEAR_YIELD,
            SeedKeys.GOOD_SEED_SHARE)) {
      int from = key.startsWith("sowing") ? 0 : key.indexOf('.') + 1;
      String name = key.substring(from).replace('-', '_').replace('.', '_');
      number("at_" + name, inputs.place(key));
    }
    number("at_yield", inputs.place(SeedKeys.yield(farm.climate())));
    number("at_yanninicum_wet", inputs.find(SeedKeys.CROWDING_OF_YANNINICUM_WET).orElse(0));
  }

  private void paddocks() {
    List<Paddock> paddocks = farm.paddocks();
    int n = paddocks.size();
    int most = IntStream.range(0, n).map(stands::species).max().orElseThrow();
    double[] winterYield = unread(n * most);
    double[] formononetin = unread(n * most);
    double[] retention = unread(n * most * SeedBank.AGES);
    double[] crowding = unread(n * most);
    double[] likesWater = new double[n * most];
    double[] isSown = new double[n * most];
    for (int i = 0; i < n; i++) {
      int species = stands.species(i);
      for (int c = 0; c < species; c++) {
        boolean sown = c == species - 1;
        int at = i * most + (sown ? most - 1 : c);
        winterYield[at] = stands.winterYield(places, i, c);
        formononetin[at] = stands.formononetin(places, i, c);
        for (int age = 0; age < SeedBank.AGES; age++) {
          String key =
              SeedKeys.retention(farm.climate(), stands.cultivar(i, c).hardSeed(), age + 1);
          retention[at * SeedBank.AGES + age] = inputs.place(key);
        }
        crowding[at] = inputs.place(SeedKeys.crowding(stands.cultivar(i, c)));
        boolean yanninicum = stands.cultivar(i, c).subspecies().equals("yanninicum");
        isSown[at] = !sown && stands.cultivar(i, c).equals(stands.cultivar(i, species - 1)) ? 1 : 0;
        likesWater[at] = yanninicum && paddocks.get(i).waterlogged() ? 1 : 0;
      }
    }
    ofPaddocks("area_ha", Paddock::areaHa);
    ofPaddocks("waterlogged", paddock -> paddock.waterlogged() ? 1 : 0);
    along("at_clover_share", n, i -> stands.cloverShare(places, i));
    along("at_growth_index", n, i -> stands.growthIndex(places, i));
    files.write("at_winter_yield", winterYield, n, most);
    files.write("at_formononetin", formononetin, n, most);
    files.write("at_retention", retention, n, most, SeedBank.AGES);
    files.write("at_crowding", crowding, n, most);
    files.write("likes_water", likesWater, n, most);
    files.write("is_sown", isSown, n, most);
    along(
        "at_leaf_test",
        n,
        i -> paddocks.get(i).leafTest().isPresent() ? stands.formononetin(places, i, 0) : -1);
  }

  private void actions(FarmModel model) {
    number("keep", model.keep());
    ofActions("sows", action -> action.sows() ? 1 : 0);
    ofActions("run_down_years", action -> action.sows() ? action.runDownYears() : 0);
    ofActions("cropped", action -> action.cropped() ? 1 : 0);
    List<Action> actions = farm.actions();
    ActionPaths paths = new ActionPaths(farm, inputs, stands, year);
    along("holds_off", actions.size(), a -> 0);
    files.write(
        "allowed",
        IntStream.range(0, stands.size() * actions.size())
            .mapToDouble(k -> paths.allowed(k / actions.size(), k % actions.size()) ? 1 : 0)
            .toArray(),
        stands.size(),
        actions.size());
    along("oversows", actions.size(), a -> isOversown(actions.get(a)) ? 1 : 0);
    ofActions("winter_open", action -> 1 - year.winterShareAfterBreak(action.monthsUngrazed()));
    ofActions("other_open", action -> 1 - year.otherShareAfterBreak(action.monthsUngrazed()));
    ActionInputs[] numbers =
        actions.stream().map(a -> new ActionInputs(a, inputs)).toArray(ActionInputs[]::new);
    IntPredicate sows = a -> actions.get(a).sows();
    IntPredicate runsDown = sows.and(a -> actions.get(a).runDownYears() > 0);
    IntPredicate crops = runsDown.and(a -> actions.get(a).cropped());
    IntPredicate grazed = runsDown.and(crops.negate());
    where(numbers, grazed, "at_run_down_growth", ActionInputs::runDownGrowth);
    where(numbers, sows, "at_growth_year_one", ActionInputs::growthYearOne);
    where(numbers, sows, "at_growth_year_two", ActionInputs::growthYearTwo);
    where(numbers, runsDown, "at_seed_set", ActionInputs::seedSet);
    where(numbers, sows, "at_seedling_kill", ActionInputs::seedlingKill);
    where(numbers, sows, "at_sown_kg", ActionInputs::sownKgPerHa);
    where(numbers, sows, "at_target_clover_share", (a, x) -> a.targetCloverShare(x, -1));
    where(numbers, sows, "at_establishment_chance", ActionInputs::establishmentChance);
    where(numbers, crops, "at_crop_margin", ActionInputs::cropMarginPerHa);
    Phase[] phases = Phase.values();
    double[] lines = new double[numbers.length * phases.length * places.length];
    double[] one = new double[places.length];
    for (int j = 0; j < places.length; j++) {
      one[j] = 1;
      for (int k = 0; k < numbers.length * phases.length; k++) {
        ActionInputs action = numbers[k / phases.length];
        Phase phase = phases[k % phases.length];
        lines[k * places.length + j] =
            action.costPerHa(one, phase, false) + action.costPerHa(one, phase, true);
      }
      one[j] = 0;
    }
    files.write("cost_lines", lines, numbers.length, phases.length, places.length);
  }

  private static boolean isOversown(Action action) {
    return action.kind() == ActionKind.OVERSOW;
  }

  private void feed() {
    double areaHa = farm.areaHa();
    double index = 0;
    double clover = 0;
    for (Paddock paddock : farm.paddocks()) {
      index += paddock.areaHa() / areaHa * paddock.growthIndex().likely();
      clover += paddock.areaHa() / areaHa * paddock.cloverShare().likely();
    }
    double farmIndex = index;
    double farmClover = Math.min(1, clover);
    int seasons = farm.feedYear().seasons().size();
    double[] growth = new double[seasons * P];
    for (int k = 0; k < growth.length; k++) {
      int month = k % P / 2;
      growth[k] = farm.feedYear().seasons().get(k / P).growthKgDmPerHaPerDay().get(month);
    }
    files.write("growth_per_day", growth, seasons, P);
    number("farm_index", farmIndex);
    number("break_half_month", farm.feedYear().usualBreak().halfMonth());
    number("to_end_of_winter", farm.feedYear().usualBreak().toEndOfWinter());
    along("later_break", seasons, s -> SeasonType.values()[s].laterBreak());
    along(
        "at_break",
        seasons,
        s -> inputs.find("season.break-" + SeasonType.values()[s].label()).orElse(-1));
    along("season_chance", seasons, s -> farm.feedYear().seasons().get(s).chance().likely());
    along("days", P, HalfMonths::days);
    halfMonths("ewe_mj", demand::eweMjPerDay);
    halfMonths("other_mj", demand::otherMjPerDay);
    halfMonths("ewe_kg", demand::eweAppetiteKgDmPerDay);
    halfMonths("other_kg", demand::otherAppetiteKgDmPerDay);
    quality("green_eaten_digestibility", PastureQuality::greenDigestibility);
    quality("dry_standing_digestibility", PastureQuality::dryDigestibility);
    number("farm_clover", farmClover);
    for (String key :
        List.of(
            "intake-quality-full",
            "intake-quality-slope",
            "intake-legume",
            "forage-energy-slope",
            "forage-energy-intercept")) {
      number(key.replace('-', '_'), tables.parameter("feed." + key).likely());
    }
    quality("dying_per_month", PastureQuality::greenDyingPerMonth);
    quality("dry_lost_per_month", PastureQuality::dryLostPerMonth);
    number("availability_per_kg", tables.parameter("feed.intake-availability").likely());
    number("availability_rise", tables.parameter("feed.intake-availability-rise").likely());
    along("winter", P, p -> year.isWinter(p) ? 1 : 0);
    along("profile", P, year::growthKgDmPerHa);
    number("winter_share", year.winterShare());
  }

  private void mobs() {
    List<Mob> mobs = farm.mobs();
    int ages = mobs.stream().mapToInt(mob -> mob.ageShares().size()).max().orElse(0);
    double[] ageShares = new double[mobs.size() * ages];
    double[] held = new double[mobs.size() * P];
    double[] grazes = new double[mobs.size() * farm.paddocks().size()];
    double[] pregnant = new double[mobs.size()];
    for (int g = 0; g < mobs.size(); g++) {
      Mob mob = mobs.get(g);
      for (int age = 0; age < mob.ageShares().size(); age++) {
        ageShares[g * ages + age] = mob.ageShares().get(age);
      }
      FlockEffect effect = new FlockEffect(farm, mob, inputs);
      for (int p = 0; p < P; p++) {
        held[g * P + p] = effect.isHeld(p) ? 1 : 0;
      }
      for (int i = 0; i < farm.paddocks().size(); i++) {
        grazes[g * farm.paddocks().size() + i] = farm.paddocks().get(i).isGrazedBy(mob) ? 1 : 0;
      }
      pregnant[g] = inputs.place("mob." + mob.name() + ".pregnant-percent");
    }
    files.write("age_shares", ageShares, mobs.size(), ages);
    files.write("held", held, mobs.size(), P);
    files.write("grazes", grazes, mobs.size(), farm.paddocks().size());
    files.write("at_pregnant_percent", pregnant, mobs.size());
    ofMobs("ewes", Mob::ewes);
    ofMobs("joining_day", mob -> HalfMonths.dayOfYear(mob.joiningStart()));
    ofMobs("joining_weeks", mob -> mob.joiningWeeks().likely());
    ofMobs("lambs_per_pregnant", OutcomeFunction::lambsPerPregnantEwe);
    ofMobs("observed", mob -> mob.scanningBasis() == ScanningBasis.OBSERVED ? 1 : 0);
  }

  private static double[] unread(int length) {
    double[] places = new double[length];
    Arrays.fill(places, -1);
    return places;
  }

  private void number(String name, double value) {
    files.write(name, new double[] {value});
  }

  private void along(String name, int length, IntToDoubleFunction value) {
    files.write(name, IntStream.range(0, length).mapToDouble(value).toArray(), length);
  }

  private void halfMonths(String name, IntToDoubleFunction perDay) {
    along(name, P, p -> perDay.applyAsDouble(p) * HalfMonths.days(p) / farm.areaHa());
  }

  private void quality(String name, ToDoubleFunction<PastureQuality> value) {
    along(name, P, p -> value.applyAsDouble(farm.feedYear().quality().get(p / 2)));
  }

  private void ofPaddocks(String name, ToDoubleFunction<Paddock> value) {
    along(name, farm.paddocks().size(), i -> value.applyAsDouble(farm.paddocks().get(i)));
  }

  private void ofActions(String name, ToDoubleFunction<Action> value) {
    along(name, farm.actions().size(), a -> value.applyAsDouble(farm.actions().get(a)));
  }

  private void ofMobs(String name, ToDoubleFunction<Mob> value) {
    along(name, farm.mobs().size(), g -> value.applyAsDouble(farm.mobs().get(g)));
  }

  private void where(
      ActionInputs[] actions,
      IntPredicate read,
      String name,
      ToDoubleBiFunction<ActionInputs, double[]> value) {
    along(name, actions.length, a -> read.test(a) ? value.applyAsDouble(actions[a], places) : -1);
  }
}
