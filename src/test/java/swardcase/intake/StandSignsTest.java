package swardcase.intake;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import swardcase.RandomFarms;
import swardcase.check.FaultsException;
import swardcase.farm.Paddock;
import swardcase.farm.StandSigns;

/** The columns of paddocks.csv that say what holds clover back whatever its cultivar. */
class StandSignsTest {

  @TempDir private Path folder;

  private void paddocks(String text) throws IOException {
    Files.writeString(
        folder.resolve("farm.yaml"),
        "name: A\ngrowth: Katanning\nmobs:\n  - {name: Ewes, ewes: 90, joining_start: 1 Feb}\n");
    Files.writeString(folder.resolve("paddocks.csv"), text);
  }

  private Paddock first() {
    return FarmFolder.read(folder, RandomFarms.TABLES).farm().paddocks().get(0);
  }

  @Test
  void columns_allGiven_areRead() throws IOException {
    paddocks(
        "paddock,area_ha,waterlogged,seedlings_per_m2,colwell_p_mg_per_kg,"
            + "phosphorus_buffering_index,ph_cacl2,nodules_per_plant,mites,roots,wet_ground\n"
            + "House,20,yes,640,31,60,5.2,14,good,Poor,good\n");
    assertThat(first().seedlingsPerM2()).hasValue(640);
    assertThat(first().signs())
        .isEqualTo(
            new StandSigns(
                OptionalDouble.of(31),
                OptionalDouble.of(60),
                OptionalDouble.empty(),
                OptionalDouble.of(5.2),
                OptionalDouble.of(14),
                Optional.of(true),
                Optional.of(false),
                Optional.of(true)));
  }

  @Test
  void columns_blankOrMissing_areUnknown() throws IOException {
    paddocks("paddock,area_ha,olsen_p_mg_per_kg,mites\nHouse,20,,\n");
    assertThat(first().signs()).isEqualTo(RandomFarms.NO_SIGNS);
    assertThat(first().seedlingsPerM2()).isEmpty();
  }

  @Test
  void columns_atFault_areAllReportedWithTheirPlace() throws IOException {
    paddocks(
        "paddock,area_ha,waterlogged,seedlings_per_m2,colwell_p_mg_per_kg,olsen_p_mg_per_kg,"
            + "phosphorus_buffering_index,ph_cacl2,nodules_per_plant,mites,roots,wet_ground\n"
            + "House,20,no,-1,30,12,,55,few,goood,yes,poor\n"
            + "Hill,20,no,,,,60,1.5,,,,\n");
    FaultsException thrown =
        catchThrowableOfType(
            FaultsException.class, () -> FarmFolder.read(folder, RandomFarms.TABLES));
    assertThat(thrown.getMessage().lines())
        .containsExactlyInAnyOrder(
            "paddocks.csv:2: seedlings_per_m2: must be from 0 to 100000; found '-1'",
            "paddocks.csv:2: ph_cacl2: must be from 2 to 11; found '55'",
            "paddocks.csv:2: nodules_per_plant: must be a number; found 'few'",
            "paddocks.csv:2: mites: must be one of: good, poor; found 'goood'; did you mean 'good'?",
            "paddocks.csv:2: roots: must be one of: good, poor; found 'yes'",
            "paddocks.csv:2: olsen_p_mg_per_kg: must not stand beside colwell_p_mg_per_kg: give one"
                + " test; found '12'",
            "paddocks.csv:2: wet_ground: must come with yes in waterlogged; found 'poor'",
            "paddocks.csv:3: ph_cacl2: must be from 2 to 11; found '1.5'",
            "paddocks.csv:3: phosphorus_buffering_index: must come with colwell_p_mg_per_kg; found"
                + " '60'");
  }

  @Test
  void column_misspelt_isToldWithTheNearest() throws IOException {
    paddocks("paddock,area_ha,ph_cacl\nHouse,20,5.2\n");
    FaultsException thrown =
        catchThrowableOfType(
            FaultsException.class, () -> FarmFolder.read(folder, RandomFarms.TABLES));
    assertThat(thrown.getMessage()).contains("ph_cacl").contains("did you mean 'ph_cacl2'?");
  }
}
