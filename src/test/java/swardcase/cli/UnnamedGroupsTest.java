package swardcase.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Plants known by their group and not by their name, from the file to the rating. */
class UnnamedGroupsTest {

  @TempDir private Path folder;

  /**
   * Clover of 45 % (30 to 60) with 1.0 % (0.5 to 1.8) makes a dose of about 0.47 %, marked, as that
   * of Dinninup; with 0.12 % (0.01 to 0.30) about 0.06 %, little, as that of Mount Barker.
   */
  @Test
  void paddocks_ofOneGroup_areRatedByItsRangeAndNotUnknown() throws IOException {
    Files.writeString(
        folder.resolve("farm.yaml"),
        """
        name: A
        growth: Katanning
        mobs:
          - {name: ewes, ewes: 90, joining_start: 1 Feb}
        """);
    Files.writeString(
        folder.resolve("paddocks.csv"),
        """
        paddock,area_ha,clover_percent_low,clover_percent,clover_percent_high
        High,20,30,45,60
        Low,20,30,45,60
        Old high,20,30,45,60
        Old low,20,30,45,60
        Nameless,20,30,45,60
        Both,20,30,45,60
        Named high,20,30,45,60
        Named low,20,30,45,60
        """);
    Files.writeString(
        folder.resolve("plants.csv"),
        """
        paddock,cultivar,plants
        High,unnamed high oestrogen,60
        Low,unnamed low oestrogen,60
        Old high,Unnamed old high oestrogen,60
        Old low,unnamed old low oestrogen,60
        Nameless,unidentified,60
        Both,unnamed high oestrogen,30
        Both,unnamed low oestrogen,30
        Named high,Dinninup,60
        Named low,Mount Barker,60
        """);
    Path json = folder.resolve("result.json");

    Ran ran =
        Ran.command(
            "decide", folder, "--date=2026-03-01", "--draws=200", "--json", json.toString());

    assertThat(ran.code()).as(ran.err()).isZero();
    JsonNode paddocks = new ObjectMapper().readTree(json.toFile()).get("paddocks");
    assertThat(paddocks.findValuesAsText("oestrogenRating"))
        .containsExactly(
            "marked", "little", "marked", "little", "unknown", "marked", "marked", "little");
    for (JsonNode paddock : paddocks) {
      double sum = 0;
      for (JsonNode share : paddock.at("/clover/found")) {
        sum += share.at("/share/likely").asDouble();
      }
      assertThat(sum).as(paddock.get("name").asText()).isCloseTo(1, within(1e-9));
    }
  }
}
