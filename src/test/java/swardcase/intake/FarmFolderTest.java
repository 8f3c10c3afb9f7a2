package swardcase.intake;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Month;
import java.time.MonthDay;
import java.util.List;
import java.util.Optional;
import java.util.stream.DoubleStream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import swardcase.chance.Range;
import swardcase.check.FaultsException;
import swardcase.check.ReadLimits;
import swardcase.evidence.Assumption;
import swardcase.evidence.Evidence;
import swardcase.evidence.SetBy;
import swardcase.farm.Action;
import swardcase.farm.ActionKind;
import swardcase.farm.ActionNumber;
import swardcase.farm.CostLine;
import swardcase.farm.Farm;
import swardcase.farm.Identification;
import swardcase.farm.ScanningBasis;
import swardcase.farm.SeasonGrowth;
import swardcase.tables.Tables;
import swardcase.tables.TablesLoader;

class FarmFolderTest {

  private static final Tables TABLES = TablesLoader.standard().load();

  @TempDir private Path folder;

  @BeforeEach
  void writeSmallestFarm() throws IOException {
    write("farm.yaml", "name: Small Farm\ngrowth: Katanning\n");
    write("paddocks.csv", "paddock,area_ha\nHouse,10\nFlat,20\n");
  }

  private void write(String file, String text) throws IOException {
    Files.writeString(folder.resolve(file), text);
  }

  private LoadedFarm read() {
    return FarmFolder.read(folder, TABLES);
  }

  private void addToYaml(String text) throws IOException {
    write("farm.yaml", "name: Small Farm\ngrowth: Katanning\n" + text);
  }

  @Test
  void tables_atTheLimits_areRead() throws IOException {
    StringBuilder paddocks = new StringBuilder("paddock,area_ha\n");
    StringBuilder plants = new StringBuilder("paddock,cultivar,plants\n");
    for (int p = 0; p < ReadLimits.PADDOCKS; p++) {
      paddocks.append("P").append(p).append(",10\n");
      for (String cultivar : List.of("Yarloop", "Dinninup", "Geraldton", "unidentified")) {
        plants.append("P").append(p).append(",").append(cultivar).append(",20\n");
      }
    }
    write("paddocks.csv", paddocks.toString());
    write("plants.csv", plants.toString());

    assertThat(read().farm().paddocks())
        .hasSize(ReadLimits.PADDOCKS)
        .allMatch(paddock -> paddock.plantsLookedAt() == 80);
  }

  @Test
  void plants_asALinkToNothing_areAFaultAndNotLeftOut() throws IOException {
    Files.createSymbolicLink(folder.resolve("plants.csv"), folder.resolve("gone.csv"));

    assertFaults("plants.csv: must be a file");
  }

  private void assertFaults(String... messages) {
    assertThatThrownBy(this::read)
        .isInstanceOf(FaultsException.class)
        .hasMessage(String.join("\n", messages));
  }

  @Test
  void crops_openTheActionThatOnlyCrops_andNothingElseDoes() throws IOException {
    addToYaml("crops: yes\nfinance: {most_crop_ha: 12.5}\n");
    Farm farm = read().farm();
    assertThat(farm.actions()).isEqualTo(TABLES.actions());
    assertThat(farm.finance().mostCropHa()).hasValue(12.5);

    addToYaml("crops: no\nfinance: {most_crop_ha: -1}\n");
    assertFaults("farm.yaml:4: finance.most_crop_ha: must be from 0 to 1000000000; found '-1'");

    addToYaml("actions:\n  crop-only: {run_down_years: 2}\n");
    assertFaults(
        "farm.yaml:4: actions.crop-only: needs 'crops: yes' in this file, since it only crops; found 'crop-only'");

    addToYaml("crops: yes\nactions:\n  two crops: {like: crop-only, run_down_years: 2}\n");
    assertThat(read().farm().actions())
        .filteredOn(action -> action.kind() == ActionKind.CROP)
        .extracting(Action::runDownYears)
        .containsExactly(3, 2);

    addToYaml("actions:\n  later: {like: thin, run_down_years: 2}\n");
    assertFaults(
        "farm.yaml:4: actions.later: later must have no run-down years: its grass is drilled at once");

    addToYaml("crops: yes\nactions:\n  none: {like: crop-only, run_down_years: 0}\n");
    assertFaults("farm.yaml:5: actions.none: none must have one crop or more");
  }

  @Test
  void farm_withLeastContent_takesEveryNumberFromTheTablesAndSaysSo() {
    Farm farm = read().farm();

    List<Assumption> numbers =
        List.of(
            farm.paddocks().get(0).cloverShare(),
            farm.paddocks().get(0).growthIndex(),
            farm.prices().netValuePerLamb(),
            farm.prices().costPerDryEwe(),
            farm.prices().replacementEwe(),
            farm.prices().spareFeedPerTonneDm(),
            farm.prices().grossMarginPerEwe(),
            farm.prices().nitrogenPerKg(),
            farm.prices().leafTest(),
            farm.prices().plantIdentification(),
            farm.finance().discountRate(),
            farm.finance().mostOutOfGrazing(),
            farm.finance().endValuePerHa(),
            farm.management().conditionDeficit(),
            farm.management().mostEweIncrease(),
            farm.management().weaningWeeks(),
            farm.management().lossLimit(),
            farm.supplement().pricePerTonne());
    assertThat(numbers).extracting(Assumption::setBy).containsOnly(SetBy.DEFAULT);
    assertThat(numbers).extracting(Assumption::evidence).doesNotContain(Evidence.FARM);
    assertThat(farm.finance().discountRate()).isEqualTo(TABLES.parameter("default.discount-rate"));
    assertThat(farm.feedYear().winterMonths())
        .containsExactly(Month.JUNE, Month.JULY, Month.AUGUST);
    assertThat(farm.actions())
        .isEqualTo(
            TABLES.actions().stream().filter(action -> !action.key().equals("crop-only")).toList());
  }

  @Test
  void farm_withLeastContent_saysWhatToPutIn() {
    assertThat(read().notices())
        .containsExactly(
            "Nobody looked at the clover of House, Flat: what grows there is unknown, not safe.",
            "The clover share of House, Flat is a default: estimate it in the paddock.",
            "No cultivar to sow is chosen: ask an agronomist which suits your rain and soil.",
            "These prices are table defaults, so put in your own: net value of a lamb, further cost"
                + " of a dry ewe, cost of replacing a ewe, yearly margin of a further ewe before"
                + " supplement, price of a leaf test for formononetin, price of identifying one more"
                + " plant, own time for a use rule, price of scanning a ewe, own time for grazing in order, price of barley.",
            "The costs of these actions are table defaults, so get quotes, and put in your own labour:"
                + " 'drill grass in to thin the clover',"
                + " 'spread clover seed over the stand', 'oversow into the stand', 'spray-fallow and resow', 'crop one season, then resow', 'crop two"
                + " seasons, then resow', 'crop three seasons, then resow'.",
            "The crop margins of these actions are table defaults: 'crop one season, then resow',"
                + " 'crop two seasons, then resow', 'crop three seasons, then resow'.",
            "Money is shown in '$', but these table defaults are in A$ and are not converted.",
            "Money is shown in '$', but the risk tolerance that the plan is chosen by, 18000, is a"
                + " table default in A$ and is not converted: write risk_tolerance under finance.");
  }

  @Test
  void riskTolerance_ofTheFarmOrLeftOut_isThatOfTheWholeFarm() {
    Farm northern = FarmFolder.read(Path.of("demo-data/northern-farm"), TABLES).farm();
    assertThat(northern.finance().riskTolerance().range()).isEqualTo(Range.exactly(40_000));
    assertThat(northern.finance().riskTolerance().setBy()).isEqualTo(SetBy.USER);
    assertThat(northern.finance().riskTolerance().unit()).isEqualTo(northern.currency());

    Farm current = FarmFolder.read(Path.of("demo-data/current-farm"), TABLES).farm();
    double area = current.areaHa();
    assertThat(current.finance().riskTolerance().range())
        .isEqualTo(Range.of(300 * area, 600 * area, 1200 * area));
    assertThat(current.finance().riskTolerance().setBy()).isEqualTo(SetBy.DEFAULT);
    assertThat(current.finance().riskTolerance().unit()).isEqualTo("A$");
  }

  @Test
  void defaults_ofTheUsersTables_replaceTheProgramsAndAreMarked(@TempDir Path own)
      throws IOException {
    Files.writeString(
        own.resolve("farm-defaults.csv"),
        "key,name,low,likely,high,unit,evidence,source,note\n"
            + "default.leaf-test-price,price of a leaf test,80,90,95,A$/test,,,our laboratory\n"
            + "default.horizon-years,years counted,12,12,12,years,,,ours\n");

    LoadedFarm loaded = FarmFolder.read(folder, TablesLoader.standard().with(own).load());

    assertThat(loaded.farm().prices().leafTest().range()).isEqualTo(Range.of(80, 90, 95));
    assertThat(loaded.farm().prices().leafTest().setBy()).isEqualTo(SetBy.OVERRIDE);
    assertThat(loaded.farm().finance().horizonYears()).isEqualTo(12);
    assertThat(loaded.notices()).noneMatch(notice -> notice.contains("leaf test"));
  }

  @Test
  void mob_withOneFigureOfItsOwn_keepsTheOthersMarkedAsDefaults() throws IOException {
    addToYaml(
        """
        mobs:
          - name: ewes
            ewes: 100
            ages: [40, 60]
            joining_start: 2027-02-15
            scanning_percent: [100, 120, 130]
            figures: observed on these paddocks
        """);

    var mob = read().farm().mobs().get(0);

    assertThat(mob.scanningPercent().range()).isEqualTo(Range.of(100, 120, 130));
    assertThat(mob.scanningPercent().setBy()).isEqualTo(SetBy.USER);
    assertThat(mob.scanningPercent().evidence()).isEqualTo(Evidence.FARM);
    assertThat(mob.pregnantPercent().setBy()).isEqualTo(SetBy.DEFAULT);
    assertThat(mob.ageShares()).containsExactly(0.4, 0.6);
    assertThat(mob.joiningStart()).isEqualTo(MonthDay.of(2, 15));
    assertThat(mob.scanningBasis()).isEqualTo(ScanningBasis.OBSERVED);
  }

  @Test
  void mob_withFiguresThatContradict_isRefusedAndToldWhichIsADefault() throws IOException {
    addToYaml(
        """
        mobs:
          - {name: ewes, ewes: 100, joining_start: 1 Feb, scanning_percent: 80, figures: unaffected}
          - {name: maidens, ewes: 50, ages: [40], joining_start: 1 Feb}
        """);

    assertFaults(
        "farm.yaml:4: mobs[1].marking_percent: must not be above scanning_percent, which is 80;"
            + " found '102 by default: give your own'",
        "farm.yaml:4: mobs[1].scanning_percent: must not be below pregnant_percent, which is 89 by"
            + " default: give your own; found '80'",
        "farm.yaml:5: mobs[2].ages: must add up to the ewes of the mob, 50; found '40'");
  }

  @Test
  void growth_withOwnNumbers_keepsThemAndScalesTheSeasonsThatAreMissing() throws IOException {
    write(
        "farm.yaml",
        """
        name: Own
        growth:
          winter_months: [Dec, january, February]
          pasture_quality: annual clover, northern
          kg_dm_per_ha_per_day:
            average: [10, 20, 30, 40, 30, 5, 0, 0, 0, 5, 10, 10]
            poor: [5, 10, 20, 30, 10, 0, 0, 0, 0, 0, 5, 5]
        season_growth_percent: {good: 110}
        season_chances_percent: {poor: 20, average: 60, good: 20}
        """);

    var year = read().farm().feedYear();

    assertThat(year.winterMonths()).containsExactly(Month.JANUARY, Month.FEBRUARY, Month.DECEMBER);
    assertThat(year.seasons()).extracting(s -> s.chance().likely()).containsExactly(0.2, 0.6, 0.2);
    assertThat(year.seasons().get(0).growthKgDmPerHaPerDay()).startsWith(5d, 10d, 20d);
    assertThat(year.seasons().get(1).evidence()).isEqualTo(Evidence.FARM);
    // The whole year of a good season is 110 % of an average one, its early break included.
    SeasonGrowth good = year.seasons().get(2);
    double usual = DoubleStream.of(year.growthKgDmPerHa(year.seasons().get(1))).sum();
    assertThat(DoubleStream.of(year.growthKgDmPerHa(good)).sum())
        .isCloseTo(1.1 * usual, within(1e-9));
    assertThat(good.breakMoves().orElseThrow().range()).isEqualTo(Range.of(0.5, 1, 1.5));
    assertThat(good.growthKgDmPerHaPerDay().get(2) / good.growthKgDmPerHaPerDay().get(1))
        .isCloseTo(1.5, within(1e-12));
    // A season with twelve numbers of its own has its break where they say.
    assertThat(year.seasons().get(0).breakMoves()).isEmpty();
  }

  @Test
  void break_ofTheFarm_ofItsDistrict_andByDefault_isTakenInThisOrder() throws IOException {
    String own =
        """
        name: Own
        growth:
          name: %s
          winter_months: [Jun, Jul, Aug]
          pasture_quality: annual clover, southern
          kg_dm_per_ha_per_day: {average: [0, 0, 0, 1, 10, 10, 10, 20, 40, 40, 10, 0]}
        """;
    write("farm.yaml", own.formatted("Home"));
    assertThat(breaks()).containsExactly(Range.of(0.5, 1, 2), Range.of(0.5, 1, 1.5));

    write("farm.yaml", own.formatted("Sierra foothills California"));
    assertThat(breaks()).containsExactly(Range.of(0, 0.5, 1.5), Range.of(0, 0.5, 1.5));

    write(
        "farm.yaml",
        "name: Own\ngrowth: Katanning\nseason_break_half_months: {poor: [1, 2, 3], good: 0}\n");
    assertThat(breaks()).containsExactly(Range.of(1, 2, 3), Range.of(0, 0, 0));
    assertThat(read().farm().feedYear().seasons().get(0).breakLater()).isEqualTo(2);
    assertThat(read().farm().feedYear().seasons().get(2).breakLater()).isZero();
  }

  private List<Range> breaks() throws IOException {
    return read().farm().feedYear().seasons().stream()
        .flatMap(season -> season.breakMoves().stream())
        .map(Assumption::range)
        .toList();
  }

  @Test
  void break_outOfReachOrOfASeasonWithItsOwnNumbers_isRefused() throws IOException {
    write(
        "farm.yaml",
        """
        name: Own
        growth:
          winter_months: [Jun, Jul, Aug]
          pasture_quality: annual clover, southern
          kg_dm_per_ha_per_day:
            average: [0, 0, 0, 1, 10, 10, 10, 20, 40, 40, 10, 0]
            poor: [0, 0, 0, 0, 5, 10, 10, 20, 40, 40, 10, 0]
        season_break_half_months: {poor: 2, good: 9, late: 1}
        """);

    assertFaults(
        "farm.yaml:8: season_break_half_months: must be one of the known keys: poor, good; found"
            + " 'late'",
        "farm.yaml:8: season_break_half_months.good: must be from 0 to 6; found '9'",
        "farm.yaml:8: season_break_half_months.poor: must not be given for a season with twelve"
            + " numbers of its own");
  }

  @Test
  void growth_withoutWinterAndQuality_isToldWhatToGive() throws IOException {
    write("farm.yaml", "name: Own\ngrowth:\n  kg_dm_per_ha_per_day:\n    average: [1, 2]\n");

    assertFaults(
        "farm.yaml:2: growth.pasture_quality: must name one of these profiles: annual clover,"
            + " northern, annual clover, southern",
        "farm.yaml:2: growth.winter_months: must be given, such as [June, July, August]",
        "farm.yaml:4: growth.kg_dm_per_ha_per_day.average: must be twelve numbers, January to"
            + " December; found '2 numbers'");
  }

  @Test
  void stock_fromOneMonthToAnother_goesOverTheNewYear() throws IOException {
    addToYaml(
        "other_stock:\n  - {name: steers, dse_per_head: 8, head: 40, from: Nov, to: February}\n");

    assertThat(read().farm().otherStock().get(0).months())
        .containsExactly(Month.JANUARY, Month.FEBRUARY, Month.NOVEMBER, Month.DECEMBER);
  }

  /** 28 days for wethers are those of the table: our judgement, marked inferred. */
  @Test
  void riskyDays_areThoseOfTheKindUnlessTheFarmSaysOthers() throws IOException {
    addToYaml(
        "other_stock:\n  - {name: boys, kind: wether 60 kg, head: 40}\n"
            + "  - {name: old boys, kind: wether 60 kg, head: 40, most_risky_days: 10}\n"
            + "  - {name: hoggets, dse_per_head: 1, head: 40, most_risky_days: 0}\n"
            + "  - {name: wethers by weight, dse_per_head: 1, head: 40}\n"
            + "  - {name: steers, kind: steer 450 kg, head: 40}\n");

    assertThat(read().farm().otherStock())
        .extracting(stock -> stock.mostRiskyDays().map(Assumption::likely))
        .containsExactly(
            Optional.of(28.0),
            Optional.of(10.0),
            Optional.of(0.0),
            Optional.empty(),
            Optional.empty());
    assertThat(read().farm().otherStock().get(0).mostRiskyDays().orElseThrow().evidence())
        .isEqualTo(Evidence.INFERRED);
  }

  @Test
  void riskyDays_inPartsOfADay_areRefused() throws IOException {
    addToYaml(
        "other_stock:\n" + "  - {name: steers, dse_per_head: 8, head: 40, most_risky_days: 2.5}\n");

    assertFaults(
        "farm.yaml:4: other_stock[1].most_risky_days: must be a whole number; found '2.5'");
  }

  @Test
  void supplement_withoutPriceInTheTables_asksForOne() throws IOException {
    addToYaml("supplement: sheep pellets\n");

    assertFaults(
        "farm.yaml:3: supplement: has no price in the tables: write 'name: sheep pellets' and"
            + " price_per_tonne below it; found 'sheep pellets'");
  }

  @Test
  void supplement_ofTheTablesWithOwnPrice_keepsTheTablesEnergy() throws IOException {
    addToYaml("currency: €\nsupplement: {name: Oats, price_per_tonne: 200, waste_percent: 10}\n");

    var oats = read().farm().supplement();

    assertThat(oats.name()).isEqualTo("oats");
    assertThat(oats.pricePerTonne().unit()).startsWith("€/t");
    assertThat(oats.wasteFraction().likely()).isEqualTo(0.1);
    assertThat(oats.energyMjPerKgDm())
        .isEqualTo(TABLES.supplements().get("oats").energyMjPerKgDm());
  }

  @Test
  void costs_ofTheUser_replaceTheTablesLinesAndAddOwnOnes() throws IOException {
    addToYaml(
        """
        currency: €
        costs:
          oversow:
            seed: [70, 90, 110]
            fence:
              phase: every year
              cost_per_ha: 3
            mending:
              phase: every year
              cost_per_ha: 4
              own_labour: yes
            labour: 12
        """);

    List<CostLine> lines = action("oversow").costs();

    CostLine seed = lines.stream().filter(line -> line.name().equals("seed")).findFirst().get();
    assertThat(seed.costPerHa().range()).isEqualTo(Range.of(70, 90, 110));
    assertThat(seed.costPerHa().unit()).isEqualTo("€/ha");
    assertThat(seed.costPerHa().setBy()).isEqualTo(SetBy.USER);
    assertThat(lines.get(lines.size() - 1).phase()).isEqualTo(CostLine.Phase.YEARLY);
    assertThat(lines).filteredOn(line -> line.costPerHa().unit().equals("A$/ha")).isNotEmpty();
    assertThat(lines)
        .filteredOn(CostLine::ownLabour)
        .extracting(CostLine::name)
        .containsExactly("labour", "mending");
  }

  @Test
  void costs_ownLabourThatIsNoYesOrNo_isRefused() throws IOException {
    addToYaml(
        """
        costs:
          oversow:
            gates:
              phase: every year
              cost_per_ha: 3
              own_labour: perhaps
        """);

    assertFaults(
        "farm.yaml:8: costs.oversow.gates.own_labour: must be one of: no, yes; found 'perhaps'");
  }

  @Test
  void actions_ofTheUser_changeAddAndLeaveOut() throws IOException {
    addToYaml(
        """
        actions:
          spray-fallow:
            establishment_chance_percent: [50, 70, 90]
          two sprays:
            like: spray-fallow
            run_down_years: 2
            buried_seed_percent: [50, 80, 95]
          crop-3:
            considered: no
        """);

    assertThat(action("spray-fallow").number(ActionNumber.ESTABLISHMENT_CHANCE).range())
        .isEqualTo(Range.of(0.5, 0.7, 0.9));
    assertThat(action("two sprays").runDownYears()).isEqualTo(2);
    assertThat(action("two sprays").number(ActionNumber.BURIED_SEED).range())
        .isEqualTo(Range.of(0.5, 0.8, 0.95));
    assertThat(action("two sprays").buries()).isTrue();
    assertThat(action("spray-fallow").buries()).isFalse();
    assertThat(action("two sprays").kind()).isEqualTo(ActionKind.RESOW);
    assertThat(read().farm().actions()).extracting(Action::key).doesNotContain("crop-3");
  }

  @Test
  void actions_thatAreUnknownOrDropKeeping_areRefused() throws IOException {
    addToYaml(
        "actions:\n  keep:\n    considered: no\n  spray-falow:\n    months_ungrazed: 2\n"
            + "costs:\n  oversow:\n    sead: 3\n");

    assertFaults(
        "farm.yaml:4: actions.keep: must stay: keeping the paddock is what all else is compared"
            + " with; found 'keep'",
        "farm.yaml:6: actions.spray-falow: must be an action of the tables, or say with 'like:'"
            + " which one it resembles; found 'spray-falow'; did you mean 'spray-fallow'?",
        "farm.yaml:10: costs.oversow.sead: must be a cost line of this action, or have 'phase:' and"
            + " 'cost_per_ha:' below it; found 'sead'; did you mean 'seed'?");
  }

  @Test
  void actions_seedBuriedWhereNothingIsSown_isRefused() throws IOException {
    addToYaml("actions:\n  keep:\n    buried_seed_percent: 80\n");
    assertThatThrownBy(this::read)
        .hasMessageContaining("buried seed of keep must be 0, since nothing is sown");
  }

  private Action action(String key) {
    return read().farm().actions().stream().filter(a -> a.key().equals(key)).findFirst().get();
  }

  @Test
  void plants_inPercent_becomePlantsAndLeaveTheRestUnidentified() throws IOException {
    write(
        "plants.csv",
        "paddock,cultivar,percent,plants_looked_at\nHOUSE,dinninup or Yarloop,60,50\n"
            + "House,Clare / yarloop,30,50\n");

    List<Identification> found = read().farm().paddocks().get(0).identifications();

    assertThat(found)
        .extracting(Identification::candidates)
        .containsExactly(
            List.of("Dinninup", "Yarloop"), List.of("Clare", "Yarloop"), List.of("unidentified"));
    // 60, 30 and the remaining 10 % of 50 plants.
    assertThat(found).extracting(i -> Math.round(i.plants())).containsExactly(30L, 15L, 5L);
  }

  @Test
  void leafTest_withoutStandardError_takesAShareOfItsValue() throws IOException {
    write("paddocks.csv", "paddock,area_ha,formononetin_percent\nHouse,10,0.8\n");

    var test = read().farm().paddocks().get(0).leafTest().get();

    // 0.2 of 0.8 by the defaults.
    assertThat(test.standardErrorPercent()).isCloseTo(0.16, within(1e-12));
  }

  @Test
  void folder_withoutFiles_namesThem() throws IOException {
    Files.delete(folder.resolve("farm.yaml"));
    Files.delete(folder.resolve("paddocks.csv"));

    assertFaults("farm.yaml: must be there", "paddocks.csv: must be there");
  }

  @Test
  void file_inLatin1_isRefusedAtTheLineWithAdvice() throws IOException {
    Charset latin1 = StandardCharsets.ISO_8859_1;
    Files.write(folder.resolve("paddocks.csv"), "paddock,area_ha\nVárzea,10\n".getBytes(latin1));

    assertFaults(
        "paddocks.csv:2: must be UTF-8 text: save it again as UTF-8 (in a spreadsheet, 'CSV"
            + " UTF-8')");
  }

  @Test
  void file_thatIsHuge_isRefused() throws IOException {
    write("plants.csv", "x".repeat(1_000_001));

    assertFaults("plants.csv: must not be larger than 1 MB");
  }

  @Test
  void numbers_thatYamlWouldTurnIntoOthers_areRefused() throws IOException {
    addToYaml(
        "prices:\n  leaf_test: 1_000\n  replacement_ewe: .nan\n  cost_per_dry_ewe: 0x10\n"
            + "  spare_feed_per_tonne_dm: 1,200\n  gross_margin_per_ewe: yes\n"
            + "  net_value_per_lamb: 1e2\n  nitrogen_per_kg: 1_5\n");

    assertThatThrownBy(this::read)
        .isInstanceOfSatisfying(
            FaultsException.class,
            thrown ->
                assertThat(thrown.faults())
                    .hasSize(7)
                    .allMatch(
                        fault -> fault.rule().equals("must be a number such as 1250 or 0.5")));
  }

  @Test
  void yaml_withAnchorsTypesOrTwoDocuments_isRefused() throws IOException {
    addToYaml("sow: &a Narrikup\ncurrency: !!str A$\nclimate: *a\n");
    assertThatThrownBy(this::read)
        .hasMessageContaining("farm.yaml:3: sow: must be written out: no '&' and no '*' names")
        .hasMessageContaining("farm.yaml:4: currency: must not have a type")
        .hasMessageContaining("farm.yaml:5: climate: must be written out: no '&' and no '*' names");

    addToYaml("---\nname: Another\n");
    assertFaults("farm.yaml:4: must hold one document: remove this '---'");
  }

  @Test
  void fractionsOfPercent_fromTheDemoFarms_areExact() {
    Farm farm = FarmFolder.read(Path.of("demo-data/mixed-farm"), TABLES).farm();

    assertThat(farm.finance().discountRate().range()).isEqualTo(Range.of(0.05, 0.07, 0.10));
    assertThat(farm.paddocks().get(0).cloverShare().range()).isEqualTo(Range.of(0.3, 0.45, 0.6));
  }

  @Test
  void demoFarms_areAsTheirCommentsSay() {
    Farm mixed = FarmFolder.read(Path.of("demo-data/mixed-farm"), TABLES).farm();
    LoadedFarm northern = FarmFolder.read(Path.of("demo-data/northern-farm"), TABLES);
    Farm current = FarmFolder.read(Path.of("demo-data/current-farm"), TABLES).farm();

    assertThat(mixed.paddocks()).hasSize(12);
    assertThat(mixed.ewesJoined() / mixed.areaHa()).isCloseTo(3.3, within(0.05));
    assertThat(northern.notices()).isEmpty();
    assertThat(northern.doubts())
        .extracting(Doubt::what)
        .containsExactly(
            "Losa is to be sown, and is not known to stand the wet ground of Várzea de Baixo.");
    assertThat(northern.farm().paddocks()).extracting(p -> p.name()).contains("Pā Tārare");
    assertThat(current.paddocks())
        .flatExtracting(paddock -> paddock.identifications())
        .flatExtracting(Identification::candidates)
        .allMatch(name -> !TABLES.cultivar(name).isOld());
  }
}
