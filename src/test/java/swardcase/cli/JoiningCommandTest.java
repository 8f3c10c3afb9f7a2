package swardcase.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The joining command as a user meets it. */
class JoiningCommandTest {

  private static final String DAY = "2026-11-25";

  @TempDir private Path out;

  @Test
  void joining_withAllFileOptions_writesWholeFilesAndNamesThem() throws IOException {
    Path pdf = out.resolve("sheet.pdf");
    Path json = out.resolve("joining.json");
    Path csv = out.resolve("calendar.csv");

    Ran ran =
        Ran.command(
            "joining",
            "demo-data/risky-farm",
            "--date",
            DAY,
            "--draws",
            100,
            "--pdf",
            pdf,
            "--json",
            json,
            "--csv",
            csv);

    assertThat(ran.code()).isZero();
    assertThat(ran.err()).isEmpty();
    assertThat(ran.out()).contains("Written: " + pdf, "Written: " + json, "Written: " + csv);
    assertThat(ran.out()).contains("Keep out of: Swamp");
    JsonNode document = new ObjectMapper().readTree(json.toFile());
    assertThat(document.at("/farm/date").asText()).isEqualTo(DAY);
    assertThat(Files.readAllLines(csv)).hasSize(1 + document.at("/shut").size());
    assertThat(Ran.below(out)).containsExactly("calendar.csv", "joining.json", "sheet.pdf");
  }

  /**
   * Shut are the paddocks, to the ewes and at the times, that the plan begins with, some until work
   * starts there.
   */
  @ParameterizedTest
  @ValueSource(strings = {"mixed-farm", "risky-farm", "northern-farm"})
  void joining_demoFarm_isTheComingYearOfThePlan(String farm) throws IOException {
    JsonNode decided = json(DemoSheets.decided(farm));
    JsonNode joining = json(DemoSheets.joined(farm));
    int year = 1 + Integer.parseInt(DAY.substring(0, 4));
    List<String> planned = new ArrayList<>();
    for (JsonNode paddock : decided.at("/paddocks")) {
      boolean untilStart = paddock.get("action").asText().contains("+");
      if (paddock.hasNonNull("keptOff") && (untilStart || paddock.get("start").asInt() == year)) {
        planned.add(shut(paddock.get("name"), paddock.at("/keptOff/who")));
      }
    }
    List<String> printed = new ArrayList<>();
    for (JsonNode shut : joining.at("/shut")) {
      if (!shut.get("when").asText().equals("out")) {
        printed.add(shut(shut.get("paddock"), shut.get("shutTo")));
      }
    }
    assertThat(printed).containsExactlyInAnyOrderElementsOf(planned);
    assertThat(planned.isEmpty()).isEqualTo(farm.equals("northern-farm"));
  }

  private static String shut(JsonNode paddock, JsonNode who) {
    return paddock.asText() + " to " + who.asText();
  }

  private static JsonNode json(Path made) throws IOException {
    return new ObjectMapper().readTree(made.resolve("result.json").toFile());
  }

  @Test
  void joining_farmWithoutEwes_saysSoAndWritesNothing() throws IOException {
    Path farm = SmallFarm.write(out.resolve("farm"));
    Path yaml = farm.resolve("farm.yaml");
    String text = Files.readString(yaml);
    Files.writeString(yaml, text.replaceAll("(?ms)^mobs:\n.*?(?=^\\S)", "") + "\nmobs: []\n");

    Ran ran = Ran.command("joining", farm, "--pdf", out.resolve("sheet.pdf"));

    assertThat(ran.err()).isEmpty();
    assertThat(ran.code()).isZero();
    assertThat(ran.out())
        .contains("No ewes are joined on this farm")
        .contains("Nothing was written");
    assertThat(out.resolve("sheet.pdf")).doesNotExist();
  }

  @Test
  void joining_folderThatIsNotThere_isRefused() {
    Ran ran = Ran.command("joining", out.resolve("none"));

    assertThat(ran.code()).isEqualTo(ExitCodes.BAD_INPUT);
    assertThat(ran.err()).contains("must be a folder");
  }
}
