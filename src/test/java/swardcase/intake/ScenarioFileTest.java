package swardcase.intake;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import swardcase.chance.Range;
import swardcase.check.FaultsException;
import swardcase.farm.Farm;
import swardcase.farm.Mob;
import swardcase.farm.OtherStock;
import swardcase.farm.Paddock;
import swardcase.tables.Tables;
import swardcase.tables.TablesLoader;

/** What a scenario changes in a farm, and what it may not. */
class ScenarioFileTest {

  private static final Tables TABLES = TablesLoader.standard().load();
  private static final Path MIXED = Path.of("demo-data/mixed-farm");
  private static final Path NORTHERN = Path.of("demo-data/northern-farm");

  @TempDir private Path folder;

  private List<Scenario> scenarios(String text) throws IOException {
    return ScenarioFile.read(Files.writeString(folder.resolve("what-if.yaml"), text));
  }

  /** The farm with the keys of one scenario, in YAML's short form. */
  private Farm with(Path farm, String keys) throws IOException {
    Scenario scenario = scenarios("scenarios:\n  one: {" + keys + "}\n").get(0);
    return FarmFolder.read(farm, TABLES, scenario).farm();
  }

  private static Farm asItIs(Path farm) {
    return FarmFolder.read(farm, TABLES).farm();
  }

  @Test
  void perCent_ofARange_changesItsThreeNumbersExactly() throws IOException {
    Farm farm = with(MIXED, "prices: {net_value_per_lamb: -20 %}");

    assertThat(farm.prices().netValuePerLamb().range()).isEqualTo(Range.of(64, 96, 144));
    assertThat(farm.prices().replacementEwe()).isEqualTo(asItIs(MIXED).prices().replacementEwe());
    assertThat(farm.mobs()).isEqualTo(asItIs(MIXED).mobs());
  }

  @Test
  void perCent_ofOneNumber_keepsItsDecimals() throws IOException {
    Farm farm = with(MIXED, "mobs: [{name: maidens, liveweight_kg: +0.5%}]");

    assertThat(farm.mobs().get(1).liveweightKg().range()).isEqualTo(Range.exactly(50.25));
  }

  @Test
  void listItem_ofAKnownName_keepsItsOtherKeys() throws IOException {
    Farm farm = with(MIXED, "other_stock: [{name: Wethers, head: 450}]");

    OtherStock was = asItIs(MIXED).otherStock().get(0);
    assertThat(farm.otherStock()).hasSize(1);
    assertThat(farm.otherStock().get(0).head()).isEqualTo(450);
    assertThat(farm.otherStock().get(0).dsePerHead()).isEqualTo(was.dsePerHead());
  }

  @Test
  void listItem_ofANewName_isAdded() throws IOException {
    Farm farm = with(MIXED, "mobs: [{name: bought, ewes: 90, joining_start: 1 Feb}]");

    assertThat(farm.mobs())
        .extracting(Mob::name)
        .containsExactly("mature ewes", "maidens", "bought");
  }

  @Test
  void keyWithoutValue_takesTheFarmsValueAway() throws IOException {
    Farm farm = with(MIXED, "finance: {budget_per_year: }, other_stock: ");

    assertThat(farm.finance().budgetPerYear()).isEmpty();
    assertThat(farm.otherStock()).isEmpty();
    assertThat(farm.finance().horizonYears()).isEqualTo(12);
  }

  @Test
  void supplement_thatStandsAsANameAlone_takesKeysOfItsOwn() throws IOException {
    copy(MIXED);
    Path yaml = folder.resolve("farm.yaml");
    String text = Files.readString(yaml);
    int from = text.indexOf("supplement:\n");
    int to = text.indexOf("prices:\n");
    Files.writeString(yaml, text.substring(0, from) + "supplement: oats\n" + text.substring(to));

    Farm farm = with(folder, "supplement: {price_per_tonne: 300}");

    assertThat(farm.supplement().name()).isEqualTo("oats");
    assertThat(farm.supplement().pricePerTonne().range()).isEqualTo(Range.exactly(300));
  }

  @Test
  void cells_ofAPaddock_changeAloneAndInAnyColumn() throws IOException {
    Farm farm =
        with(MIXED, "paddocks: {' house': {clover_percent: 50, area_ha: -50 %, use: other stock}}");

    Paddock house = farm.paddocks().get(0);
    assertThat(house.areaHa()).isEqualTo(14);
    assertThat(house.cloverShare().range()).isEqualTo(Range.of(0.3, 0.5, 0.6));
    assertThat(house.mob()).isEmpty();
    assertThat(house.identifications())
        .isEqualTo(asItIs(MIXED).paddocks().get(0).identifications());
    assertThat(farm.paddocks().subList(1, 12)).isEqualTo(asItIs(MIXED).paddocks().subList(1, 12));
  }

  @Test
  void cells_withADecimalComma_areChangedByPerCent() throws IOException {
    Paddock was = asItIs(NORTHERN).paddocks().get(0);

    Farm farm = with(NORTHERN, "paddocks: {" + was.name() + ": {area_ha: +10 %}}");

    assertThat(farm.paddocks().get(0).areaHa()).isEqualTo(Math.rint(was.areaHa() * 110) / 100);
  }

  @Test
  void scenario_ofTheFarmsOwnValues_isTheFarm() throws IOException {
    Farm farm =
        with(
            MIXED,
            "prices: {net_value_per_lamb: [80, 120, 180]}, sow: narrikup,"
                + " paddocks: {Long: {area_ha: 62}}");

    assertThat(farm).isEqualTo(asItIs(MIXED));
  }

  @Test
  void demoScenarios_layOverTheirFarm() {
    List<Scenario> scenarios = ScenarioFile.read(Path.of("demo-data/mixed-scenarios.yaml"));

    assertThat(scenarios).hasSize(6);
    for (Scenario scenario : scenarios) {
      assertThat(FarmFolder.read(MIXED, TABLES, scenario).farm())
          .as(scenario.name())
          .isNotEqualTo(asItIs(MIXED));
    }
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '"',
      value = {
        "prises: {leaf_test: 1}      | :2: must be one of the known keys; found 'prises'; did you"
            + " mean 'prices'?",
        "prices: {leaf_test: many}   | :2: prices.leaf_test: must be a number such as 1250 or 0.5;"
            + " found 'many'",
        "prices: {leaf_test: +10 %}  | :2: prices.leaf_test: must be the value itself: the farm"
            + " gives no number here to be changed by per cent; found '+10 %'",
        "prices: {leaf_test: 10 %}   | :2: prices.leaf_test: must be a number such as 1250 or 0.5;"
            + " found '10 %'",
        "sow: -10 %                  | :2: sow: must be the value itself: the farm gives no number"
            + " here to be changed by per cent; found '-10 %'",
        "mobs: [{name: maidens, ewes: 300}] | :2: one: mobs[2].ages: must add up to the ewes of"
            + " the mob, 300; found '450'",
        "mobs: [{ewes: 300}]         | :2: mobs[1].name: must be given",
        "mobs: 3                     | :2: mobs: must be a list, each item such as '- name: Ewes';"
            + " found '3'",
        "paddocks: {Huse: {use: ewes}}    | :2: paddocks: must be a paddock of the farm; found"
            + " 'Huse'; did you mean 'House'?",
        "paddocks: {House: {clover: 3}}   | :2: clover: is not a column of this table",
        "paddocks: {House: {area_ha: -9}} | :2: area_ha: must be more than zero and not above"
            + " 100000; found '-9'",
        "paddocks: {House: {area_ha: [1]}} | :2: paddocks.House.area_ha: must be one value, as in a"
            + " cell",
        "paddocks: {House: 30}            | :2: paddocks.House: must have columns below it, such as"
            + " 'clover_percent: 40'",
        "paddocks: {House: {formononetin_percent: -9 %}} | :2: paddocks.House.formononetin_percent:"
            + " must be the value itself: the paddock has no number here to be changed by per cent;"
            + " found '-9 %'",
        "paddocks: [House]                | :2: paddocks: must have names of paddocks below it"
      })
  void changes_thatDoNotFitTheFarm_areRefusedInTheScenarioFile(String keys, String message) {
    assertThatThrownBy(() -> with(MIXED, keys))
        .isInstanceOf(FaultsException.class)
        .hasMessageContaining(folder.resolve("what-if.yaml") + message);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '"',
      value = {
        "''                        | : must not be empty",
        "prices: {leaf_test: 1}    | :1: must stand below 'scenarios:' and the name of a scenario",
        "scenario: {a: {sow: x}}   | :1: must stand below 'scenarios:' and the name of a scenario;"
            + " found 'scenario'; did you mean 'scenarios'?",
        "scenarios:                | :1: scenarios: must have 'scenarios:' with a name for each",
        "scenarios: {a: }          | :1: scenarios: must have below it what it changes",
        "scenarios: {a: {}}        | :1: scenarios: must have below it what it changes",
        "scenarios: {}             | :1: scenarios: must have 'scenarios:' with a name for each",
        "'scenarios: {a b: {sow: x}, A  b: {sow: x}}' | :1: scenarios: must be given once; found"
            + " 'A b'",
        "scenarios: {a: &x {sow: x}} | :1: scenarios.a: must be written out: no '&' and no '*'"
      })
  void file_thatIsNoListOfScenarios_isRefused(String text, String message) {
    String unquoted = text.replaceAll("^'|'$", "");

    assertThatThrownBy(() -> scenarios(unquoted))
        .isInstanceOf(FaultsException.class)
        .hasMessageContaining(folder.resolve("what-if.yaml") + message);
  }

  @Test
  void file_thatIsNotThere_isRefused() {
    Path none = folder.resolve("none.yaml");

    assertThatThrownBy(() -> ScenarioFile.read(none))
        .hasMessage(none + ": must be a file of scenarios");
  }

  private void copy(Path farm) throws IOException {
    for (String file : List.of("farm.yaml", "paddocks.csv", "plants.csv")) {
      Files.copy(farm.resolve(file), folder.resolve(file));
    }
  }
}
