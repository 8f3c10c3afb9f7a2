package swardcase.intake;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.MonthDay;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import swardcase.check.FaultsException;
import swardcase.farm.Farm;
import swardcase.farm.FlockRecord;
import swardcase.farm.ScanningBasis;
import swardcase.farm.SeasonType;
import swardcase.tables.Tables;
import swardcase.tables.TablesLoader;

class RecordsCsvTest {

  private static final Tables TABLES = TablesLoader.standard().load();
  private static final String HEAD =
      "year,mob,ewes_joined,in_lamb,dry,lambs_marked,joining_start,grazed_before_joining,"
          + "supplement_t,season\n";

  @TempDir private Path folder;

  @BeforeEach
  void writeFarm() throws IOException {
    mob("");
    Files.writeString(folder.resolve("paddocks.csv"), "paddock,area_ha\nHouse,20\nCreek Flat,30\n");
  }

  private void mob(String more) throws IOException {
    Files.writeString(
        folder.resolve("farm.yaml"),
        "name: A\ngrowth: Katanning\nmobs:\n"
            + "  - {name: Old ewes, ewes: 90, ages: [10, 80], joining_start: 1 Feb"
            + more
            + "}\n");
  }

  private LoadedFarm read(String rows) throws IOException {
    Files.writeString(folder.resolve("records.csv"), HEAD + rows);
    return FarmFolder.read(folder, TABLES);
  }

  private void assertFaults(String rows, String... messages) {
    assertThatThrownBy(() -> read(rows))
        .isInstanceOf(FaultsException.class)
        .hasMessage(String.join("\n", messages));
  }

  @Test
  void record_withEverything_isReadAsWritten_andWhatIsBlankStaysUnknown() throws IOException {
    Farm farm =
        read("2024,old  EWES,88,,9,101,3 March,creek flat; House,12.5,poor\n2023,Old ewes,90,80,,,,,,")
            .farm();

    assertThat(farm.records())
        .containsExactly(
            new FlockRecord(
                2023,
                "Old ewes",
                90,
                OptionalInt.of(80),
                OptionalInt.empty(),
                Optional.empty(),
                List.of(),
                OptionalDouble.empty(),
                Optional.empty()),
            new FlockRecord(
                2024,
                "Old ewes",
                88,
                OptionalInt.of(79),
                OptionalInt.of(101),
                Optional.of(MonthDay.of(3, 3)),
                List.of("Creek Flat", "House"),
                OptionalDouble.of(12.5),
                Optional.of(SeasonType.POOR)));
  }

  @Test
  void rows_inAnyOrder_areTheSameFarm() throws IOException {
    String first = "2023,Old ewes,90,80,,,,,,\n";
    String second = "2024,Old ewes,88,,9,101,,,12.5,poor\n";
    assertThat(read(first + second).farm()).isEqualTo(read(second + first).farm());
  }

  @Test
  void faults_areAllToldAtOnce_withTheirPlaces() {
    assertFaults(
        "2024,Old ewe,88,99,,,,,,\n"
            + "2024,Old ewes,88,70,9,,31 Feb,Hose,12,dry\n"
            + "2024,old ewes,88,80,,,,,13,poor\n"
            + "1024,Old ewes,0,,,,,,,",
        "records.csv:2: in_lamb: must be from 0 to 88; found '99'",
        "records.csv:2: mob: must be a mob of farm.yaml; found 'Old ewe'; did you mean 'Old ewes'?",
        "records.csv:3: dry: must not stand beside in_lamb: the rest of the ewes joined are the"
            + " others; found '9'",
        "records.csv:3: grazed_before_joining: must be paddocks of the farm, with semicolons"
            + " between; found 'Hose'; did you mean 'House'?",
        "records.csv:3: joining_start: must be a day such as 30 January or 2024-01-30; found '31"
            + " Feb'",
        "records.csv:3: season: must be one of: average, good, poor; found 'dry'",
        "records.csv:4: season: must be that of the whole farm, the same in all rows of a year;"
            + " line 3 has dry; found 'poor'",
        "records.csv:4: supplement_t: must be that of the whole farm, the same in all rows of a"
            + " year; line 3 has 12; found '13'",
        "records.csv:4: year / mob: must not be given twice; it stands in line 3 already; found"
            + " '2024 / old ewes'",
        "records.csv:5: ewes_joined: must be from 1 to 1000000; found '0'",
        "records.csv:5: in_lamb: must be given, or one of dry, lambs_marked and supplement_t",
        "records.csv:5: year: must be from 1950 to 2200; found '1024'");
  }

  @Test
  void figure_thatIsARecordAndInTheFarmFile_isAFault() throws IOException {
    mob(", pregnant_percent: 85, figures: unaffected");
    assertFaults(
        "2023,Old ewes,90,80,,,,,,\n2024,Old ewes,90,80,,,,,,",
        "records.csv:2: in_lamb: must not stand beside pregnant_percent of this mob in farm.yaml: a"
            + " figure enters once, so delete one of them; found '80'");
    mob(", marking_percent: 85, figures: unaffected");
    assertFaults(
        "2023,Old ewes,90,,,80,,,,",
        "records.csv:2: lambs_marked: must come with in_lamb or dry in a year at least, or without"
            + " marking_percent of this mob in farm.yaml: a figure enters once; found '80'");
    assertThat(read("2023,Old ewes,90,,,80,,,,\n2024,Old ewes,90,80,,,,,,").farm().records())
        .hasSize(2);
  }

  /** 85 lambs marked beside 80 of 100 ewes in lamb are 85/80 of a lamb for each. */
  @Test
  void figuresObserved_besideRecords_keepTheLambsOfAEweInLamb() throws IOException {
    mob(", marking_percent: 85, scanning_percent: 100, figures: observed on these paddocks");

    var mob = read("2023,Old ewes,100,80,,,,,,").farm().mobs().get(0);

    assertThat(mob.scanningBasis()).isEqualTo(ScanningBasis.UNAFFECTED);
    assertThat(mob.markingPercent().likely() / mob.pregnantPercent().likely())
        .isCloseTo(85 / 80.0, within(1e-12));
    assertThat(mob.scanningPercent().likely() / mob.pregnantPercent().likely())
        .isCloseTo(100 / 80.0, within(1e-12));
  }

  @Test
  void recordsThatDoNotFit_areDoubted() throws IOException {
    LoadedFarm loaded =
        read("2025,Old ewes,70,0,,,,,,\n2024,Old ewes,90,40,,120,,,,").on(LocalDate.of(2024, 6, 1));

    assertThat(loaded.doubts().stream().map(Doubt::what))
        .contains(
            "No ewe of Old ewes is recorded in lamb in 2025.",
            "120 lambs are recorded as marked from 40 ewes of Old ewes in 2024.",
            "80 of today's ewes have been joined before, but only 70 are recorded as joined in"
                + " 2025.",
            "There are records of 2025, which is after 2024-06-01.");
  }
}
