package swardcase.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The joining command as a user meets it. */
class JoiningCommandTest {

  @TempDir private Path out;

  @Test
  void joining_withAllFileOptions_writesWholeFilesAndNamesThem() throws IOException {
    Path pdf = out.resolve("sheet.pdf");
    Path json = out.resolve("joining.json");
    Path csv = out.resolve("calendar.csv");

    Ran ran =
        Ran.command(
            "joining",
            "demo-data/northern-farm",
            "--date",
            "2026-11-25",
            "--pdf",
            pdf,
            "--json",
            json,
            "--csv",
            csv);

    assertThat(ran.code()).isZero();
    assertThat(ran.err()).isEmpty();
    assertThat(ran.out()).contains("Written: " + pdf, "Written: " + json, "Written: " + csv);
    assertThat(ran.out()).contains("keep off").contains("Várzea de Baixo");
    JsonNode document = new ObjectMapper().readTree(json.toFile());
    assertThat(document.at("/farm/date").asText()).isEqualTo("2026-11-25");
    assertThat(Files.readAllLines(csv)).hasSizeGreaterThan(6);
    assertThat(Ran.below(out)).containsExactly("calendar.csv", "joining.json", "sheet.pdf");
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
