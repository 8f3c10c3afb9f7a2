package swardcase.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** No result may be written where it is an input, or would be one the next time. */
class InputsTest {

  private static final String NEXT_TIME = "a file of that name there would be read the next time";
  private static final String ONE_READ = "it is one of the files that were read";

  @TempDir private Path folder;
  private Path farm;
  private Path other;
  private Path tables;

  @BeforeEach
  void writeFolders() throws IOException {
    farm = SmallFarm.write(folder.resolve("farm"));
    other = SmallFarm.write(folder.resolve("other"));
    tables = Files.createDirectory(folder.resolve("tables"));
    Files.copy(Path.of("tables/districts.csv"), tables.resolve("districts.csv"));
    Files.createDirectory(folder.resolve("out"));
    Files.createSymbolicLink(folder.resolve("alias"), Path.of("farm"));
    Files.createSymbolicLink(folder.resolve("out/link.xlsx"), Path.of("../alias/farm.xlsx"));
  }

  private void assertRefused(String reason, Object... command) {
    List<String> before = Ran.below(folder);

    Ran ran =
        Ran.command(
            Stream.concat(Stream.of(command), Stream.of("--date=2026-03-01", "--draws=100"))
                .toArray());

    assertThat(ran.err())
        .startsWith("Cannot write ")
        .contains(": " + reason + ". What stood there");
    assertThat(ran.code()).isEqualTo(ExitCodes.BAD_INPUT);
    assertThat(ran.out()).isEmpty();
    assertThat(Ran.below(folder)).isEqualTo(before);
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "farm/farm.xlsx",
        "farm/../alias/./farm.xlsx",
        "out/../none/../farm/farm.xlsx",
        "out/link.xlsx",
        "farm/Farm.XLSX"
      })
  void workbook_whereTheFarmsOwnWouldBeRead_isRefusedBeforeItExists(String place) {
    assertRefused(NEXT_TIME, "decide", farm, "--xlsx", folder.resolve(place));
  }

  @Test
  void workbook_besideTheFarmsOwnFiles_isWritten() {
    Path workbook = farm.resolve("budget.xlsx");

    assertThat(Ran.command("decide", farm, "--draws=100", "--xlsx", workbook).code()).isZero();

    assertThat(workbook).isNotEmptyFile();
  }

  /** A link to nothing is refused when the farm is read, before anything is written. */
  @Test
  void workbook_thatTheFarmsOwnLeadsTo_isNotWritten() throws IOException {
    Path elsewhere = folder.resolve("out/budget.xlsx");
    Files.createSymbolicLink(farm.resolve("farm.xlsx"), elsewhere);

    Ran ran = Ran.command("decide", farm, "--xlsx", elsewhere, "--date=2026-03-01");

    assertThat(ran.err()).startsWith("farm.xlsx: must be a file");
    assertThat(ran.code()).isEqualTo(ExitCodes.BAD_INPUT);
    assertThat(elsewhere).doesNotExist();
  }

  @ParameterizedTest
  @CsvSource({
    "actions.csv,   a file of that name there would be read the next time",
    "districts.csv, it is one of the files that were read",
    "Results.csv,   it would be read as one of your own tables"
  })
  void document_amongTheUsersTables_isRefused(String name, String reason) {
    assertRefused(reason, "decide", farm, "--tables", tables, "--json", tables.resolve(name));

    assertThat(tables.resolve("districts.csv"))
        .hasSameBinaryContentAs(Path.of("tables/districts.csv"));
  }

  @Test
  void csvFiles_amongTheUsersTables_areRefused() {
    assertRefused(
        "it would be read as one of your own tables",
        "decide",
        farm,
        "--tables",
        tables,
        "--csv",
        tables);
  }

  @Test
  void calendar_whereCountsOfPlantsWouldBeRead_isRefused() throws IOException {
    Files.delete(farm.resolve("plants.csv"));

    assertRefused(NEXT_TIME, "joining", farm, "--csv", folder.resolve("alias/plants.csv"));
  }

  @Test
  void comparison_whereAnyFarmOrTheScenariosAreRead_isRefused() throws IOException {
    Path scenarios = folder.resolve("cheap.yaml");
    Files.writeString(
        scenarios, "scenarios:\n  cheap lamb:\n    prices:\n      net_value_per_lamb: 90\n");
    Files.createLink(folder.resolve("second-name.yaml"), scenarios);

    assertRefused(NEXT_TIME, "compare", farm, other, "--json", other.resolve("farm.xlsx"));
    assertRefused(
        ONE_READ,
        "compare",
        farm,
        "--scenario",
        scenarios,
        "--json",
        folder.resolve("second-name.yaml"));
  }
}
