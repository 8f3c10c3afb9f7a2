package swardcase.tables;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import swardcase.chance.Range;
import swardcase.check.Fault;
import swardcase.check.FaultsException;
import swardcase.evidence.Evidence;
import swardcase.evidence.SetBy;
import swardcase.farm.Action;
import swardcase.farm.SeasonType;
import swardcase.reading.Faults;
import swardcase.reading.Fields;
import swardcase.reading.Table;

/** A user's tables laid over the program's. */
class UserTablesTest {

  private static final Path STANDARD = Path.of("tables");

  @TempDir Path temp;
  private Path mine;

  @BeforeEach
  void makeFolder() throws IOException {
    mine = Files.createDirectory(temp.resolve("mine"));
  }

  private static List<String> faults(TablesLoader loader) {
    FaultsException thrown = catchThrowableOfType(FaultsException.class, loader::load);
    assertThat(thrown).as("must be refused").isNotNull();
    return thrown.faults().stream().map(Fault::message).toList();
  }

  private static String heading(String file) throws IOException {
    return Files.readAllLines(STANDARD.resolve(file)).stream()
        .filter(line -> !line.startsWith("#"))
        .findFirst()
        .orElseThrow();
  }

  private void user(String file, String... rows) throws IOException {
    Files.writeString(mine.resolve(file), heading(file) + "\n" + String.join("\n", rows) + "\n");
  }

  @Test
  void with_usersRow_replacesTheRowWholeAndSaysSo() throws IOException {
    String dinninup =
        Files.readAllLines(STANDARD.resolve("cultivars.csv")).stream()
            .filter(line -> line.startsWith("Dinninup,"))
            .findFirst()
            .orElseThrow();
    user("cultivars.csv", dinninup.replace("0.5,1.0,1.8,inferred", "0.9,1.2,1.5,"));
    Tables standard = TablesLoader.standard().load();
    Tables tables = TablesLoader.standard().with(mine).load();
    assertThat(tables.overridden()).containsExactly("cultivars: Dinninup");
    assertThat(tables.cultivar("Dinninup").formononetin())
        .hasValueSatisfying(
            value -> {
              assertThat(value.range()).isEqualTo(Range.of(0.9, 1.2, 1.5));
              assertThat(value.setBy()).isEqualTo(SetBy.OVERRIDE);
              assertThat(value.evidence()).isEqualTo(Evidence.FARM);
            });
    assertThat(tables.cultivar("Yarloop")).isEqualTo(standard.cultivar("Yarloop"));
    assertThat(tables.cultivars()).hasSameSizeAs(standard.cultivars());
  }

  @Test
  void with_newRowAndOwnSource_addsThem() throws IOException {
    user("sources.csv", "my-cuts,Pasture cuts on the home farm,,own record");
    user(
        "districts.csv",
        "Home,1,1,1,2,10,20,20,30,50,40,20,5,June;July,\"annual clover, southern\",,my-cuts"
            + ",1,2,3,,,,,,,,,,,0.1,0.2,0.3,,,own walk");
    Tables tables = TablesLoader.standard().with(mine).load();
    assertThat(tables.overridden())
        .containsExactly("sources: my-cuts (added)", "districts: Home (added)");
    District home = tables.districts().get("Home");
    assertThat(home.setBy()).isEqualTo(SetBy.OVERRIDE);
    assertThat(home.evidence()).isEqualTo(Evidence.FARM);
    assertThat(home.breakMoves(SeasonType.POOR).orElseThrow().range()).isEqualTo(Range.of(1, 2, 3));
    assertThat(home.breakMoves(SeasonType.POOR).orElseThrow().evidence()).isEqualTo(Evidence.FARM);
    assertThat(home.breakMoves(SeasonType.AVERAGE)).isEmpty();
    assertThat(home.breakMoves(SeasonType.GOOD)).isEmpty();
    assertThat(home.rainMmPerYear()).isEmpty();
    assertThat(home.unknownHighChance().orElseThrow().range()).isEqualTo(Range.of(0.1, 0.2, 0.3));
    assertThat(tables.sourcesOf(home.source()))
        .extracting(Source::read)
        .containsExactly("own record");
  }

  @Test
  void with_laterFolder_winsOverEarlier() throws IOException {
    Path later = Files.createDirectory(temp.resolve("later"));
    user("dry-stock.csv", "wether 50 kg,1.1,1.1,1.1,farm,,28,farm,");
    Files.writeString(
        later.resolve("dry-stock.csv"),
        heading("dry-stock.csv") + "\nWether 50 kg,1.2,1.2,1.2,,,,,\n");
    Tables tables = TablesLoader.standard().with(mine).with(later).load();
    assertThat(tables.dryStock().entrySet())
        .filteredOn(row -> row.getKey().equalsIgnoreCase("wether 50 kg"))
        .extracting(row -> row.getValue().dsePerHead().likely())
        .containsExactly(1.2);
  }

  @Test
  void with_semicolonsAndDecimalCommas_readsTheSame() throws IOException {
    user("dry-stock.csv", "wether 50 kg,1.1,1.15,1.2,,,,,");
    Tables commas = TablesLoader.standard().with(mine).load();
    Files.writeString(
        mine.resolve("dry-stock.csv"),
        "\uFEFF"
            + heading("dry-stock.csv").replace(',', ';')
            + "\r\nwether 50 kg;1,1;1,15;1,2;;;;;\r\n");
    assertThat(TablesLoader.standard().with(mine).load()).isEqualTo(commas);
  }

  @Test
  void with_misnamedFileOrNoFolder_isRefused() throws IOException {
    Files.writeString(mine.resolve("cultivar.csv"), "name\n");
    assertThat(faults(TablesLoader.standard().with(mine)))
        .containsExactly(
            "mine/cultivar.csv: is not the name of a table; found 'cultivar.csv'; did you mean"
                + " 'cultivars.csv'?");
    assertThat(faults(TablesLoader.standard().with(temp.resolve("nowhere"))))
        .singleElement()
        .asString()
        .endsWith("nowhere: must be a folder with tables");
  }

  @Test
  void with_faultInUsersFile_namesTheUsersFile() throws IOException {
    user("dry-stock.csv", "wether 50 kg,1.2,1.1,1.3,guess,,,,");
    assertThat(faults(TablesLoader.standard().with(mine)))
        .hasSize(2)
        .allSatisfy(message -> assertThat(message).startsWith("mine/dry-stock.csv:2: "));
  }

  /** Burfitt, Guilfoyle and Keys 1986: the itemised lines sum to A$251.13/ha, to the cent. */
  @Test
  void costs_ofAPublishedBudget_addUp() throws IOException {
    Faults faults = new Faults();
    Path file = Path.of("src/test/resources/published/cost-lines-1986.csv");
    List<Fields> lines = Table.of("1986", Files.readString(file), faults).rows();
    assertThat(faults.all()).isEmpty();
    List<String> rows = new ArrayList<>();
    for (Fields line : lines) {
      double cost = line.number("cost_per_ha", -1e12, 1e12);
      assertThat(line.number("quantity", -1e12, 1e12) * line.number("price", -1e12, 1e12))
          .isCloseTo(cost, within(0.0051));
      rows.add(
          "keep,%1$s,sowing year,no,%2$s,%2$s,%2$s,A$,1986,,published,burfitt-1986,"
              .formatted(line.text("name"), cost));
    }
    user("action-costs.csv", rows.toArray(String[]::new));
    Action action =
        TablesLoader.standard().with(mine).load().actions().stream()
            .filter(candidate -> candidate.key().equals("keep"))
            .findFirst()
            .orElseThrow();
    double sum = action.costs().stream().mapToDouble(line -> line.costPerHa().likely()).sum();
    assertThat(sum).isCloseTo(251.13, within(0.005));
  }
}
