package swardcase.intake;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import swardcase.tables.Tables;
import swardcase.tables.TablesLoader;

class DoubtsTest {

  private static final Tables TABLES = TablesLoader.standard().load();

  private static final String MOB =
      "mobs:\n  - {name: Ewes, ewes: %s, joining_start: 1 Feb, joining_weeks: %s}\n";

  @TempDir private Path folder;

  @BeforeEach
  void writeSoundFarm() throws IOException {
    yaml(String.format(MOB, 90, 6));
    paddocks("House,20,30,45,60");
    plants("House,Dinninup,40");
  }

  private void yaml(String text) throws IOException {
    Files.writeString(folder.resolve("farm.yaml"), "name: A\ngrowth: Katanning\n" + text);
  }

  private void paddocks(String rows) throws IOException {
    Files.writeString(
        folder.resolve("paddocks.csv"),
        "paddock,area_ha,clover_percent_low,clover_percent,clover_percent_high\n" + rows);
  }

  private void plants(String rows) throws IOException {
    Files.writeString(folder.resolve("plants.csv"), "paddock,cultivar,plants\n" + rows);
  }

  private List<String> doubts() {
    return FarmFolder.read(folder, TABLES).doubts().stream().map(Doubt::what).toList();
  }

  @Test
  void farm_withoutOddities_raisesNone() {
    assertThat(doubts()).isEmpty();
  }

  /** Limits of our own, which change nothing but what is said. */
  @Test
  void signsOfTheStand_hardlyPossible_areDoubted() throws IOException {
    String columns =
        "paddock,area_ha,ph_cacl2,colwell_p_mg_per_kg,nodules_per_plant,seedlings_per_m2\n";
    Files.writeString(folder.resolve("paddocks.csv"), columns + "House,20,9.2,300,250,3\n");
    assertThat(doubts())
        .containsExactly(
            "ph_cacl2 of House is given as 9.2.",
            "colwell_p_mg_per_kg of House is given as 300.",
            "nodules_per_plant of House is given as 250.",
            "seedlings_per_m2 of House is given as 3.");
    Files.writeString(folder.resolve("paddocks.csv"), columns + "House,20,5.2,30,12,800\n");
    assertThat(doubts()).isEmpty();
  }

  @Test
  void doubts_ofAllKinds_areEachSaidOnceInOrder() throws IOException {
    paddocks("House,20,90,95,99\nFlat,80,20,30,40\nTiny,5,0,0.3,1\n");
    plants("House,Dinninup,12\nFlat,Dinninup,40\nTiny,Dinninup,40\n");
    yaml("sow: Dinninup\n" + String.format(MOB, 90, 20));

    assertThat(doubts())
        .containsExactly(
            "Only 12 plants were looked at in House.",
            "Clover is given as 95 % of the green feed in House.",
            "40 plants were looked at on the 80 ha of Flat.",
            "Clover is given as 0.3 % of the green feed in Tiny.",
            "Ewes are joined for up to 20 weeks.",
            "Dinninup is to be sown, and it is not a current cultivar of the table.");
  }

  @Test
  void fewPlants_ofOne_areSaidInTheSingular() throws IOException {
    paddocks("House,20,20,30,40\nFlat,20,20,30,40\n");
    plants("House,Dinninup,1\nFlat,Dinninup,2\n");
    yaml(String.format(MOB, 90, 6));

    assertThat(doubts())
        .containsExactly(
            "Only 1 plant was looked at in House.", "Only 2 plants were looked at in Flat.");
  }

  /** Narrikup is of subspecies subterraneum, Riverina of yanninicum, in the cultivar table. */
  @Test
  void sowing_onWetGround_isDoubtedUntilTheCultivarOrTheFarmSaysThatItStands() throws IOException {
    String columns = "paddock,area_ha,waterlogged,wet_ground\n";
    Files.writeString(
        folder.resolve("paddocks.csv"), columns + "House,20,yes,\nFlat,20,yes,\nHill,20,no,\n");
    yaml("sow: Narrikup\n" + String.format(MOB, 90, 6));
    assertThat(doubts())
        .containsExactly(
            "Narrikup is to be sown, and is not known to stand the wet ground of House, Flat.");
    Files.writeString(
        folder.resolve("paddocks.csv"), columns + "House,20,yes,good\nFlat,20,yes,poor\n");
    assertThat(doubts()).isEmpty();
    Files.writeString(folder.resolve("paddocks.csv"), columns + "House,20,yes,\n");
    yaml("sow: Riverina\n" + String.format(MOB, 90, 6));
    assertThat(doubts()).isEmpty();
    yaml(String.format(MOB, 90, 6));
    assertThat(doubts()).isEmpty();
  }

  @Test
  void doubt_aboutAFractionForPerCent_saysWhatFollows() throws IOException {
    paddocks("House,20,0.2,0.3,0.4");

    assertThat(FarmFolder.read(folder, TABLES).doubts())
        .extracting(Doubt::consequence)
        .containsExactly(
            "The column is in per cent: if 30 % is meant, all that rests on the clover is a hundred"
                + " times too small.");
  }

  @Test
  void farm_withoutStock_isDoubted() throws IOException {
    yaml("");
    assertThat(doubts()).containsExactly("The farm has no stock at all.");

    yaml("other_stock:\n  - {name: wethers, head: 10, dse_per_head: 1}\n");
    assertThat(doubts()).containsExactly("The farm has no ewes.");
  }

  @Test
  void stocking_aboveAllThatGrows_isDoubtedAndBelowIsNot() throws IOException {
    // Katanning grows about 5.5 t DM/ha; a dry sheep needs about 0.3 t of green feed a year.
    yaml(String.format(MOB, 20 * 15, 6));
    assertThat(doubts()).isEmpty();

    yaml(String.format(MOB, 20 * 30, 6));
    assertThat(doubts())
        .singleElement()
        .asString()
        .startsWith("The stock are at least 30.0 dry sheep equivalents a hectare");
  }
}
