package swardcase.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class CheckCommandTest {

  @TempDir private Path folder;

  @ParameterizedTest
  @ValueSource(strings = {"mixed-farm", "current-farm", "northern-farm"})
  void check_demoFarm_findsNoFault(String farm) {
    Ran ran = Ran.command("check", "demo-data/" + farm);

    assertThat(ran.code()).isZero();
    assertThat(ran.err()).isEmpty();
    assertThat(ran.out()).contains(": no faults. ");
  }

  @Test
  void check_folderWithManyFaults_listsThemAllWithTheirPlaces() {
    Ran ran = Ran.command("check", "src/test/resources/farms/faulty");

    assertThat(ran.code()).isEqualTo(ExitCodes.BAD_INPUT);
    assertThat(ran.out()).isEmpty();
    assertThat(ran.err().lines())
        .hasSize(21)
        .startsWith("Faults")
        .contains(
            "farm.yaml:4: growth: must be a district of the tables; found 'Kataning'; did you mean"
                + " 'Katanning'?",
            "paddocks.csv:2: area_ha: must be more than zero and not above 100000; found '-4'",
            "plants.csv:2: cultivar: must be in the table of cultivars; found 'Yarlop'; did you"
                + " mean 'Yarloop'?",
            "19 faults. Nothing was written.");
    assertThat(ran.err().lines().skip(1).limit(19))
        .allMatch(
            line -> line.matches("(farm\\.yaml|paddocks\\.csv|plants\\.csv):\\d+: .*must .*"));
  }

  @Test
  void check_onADayLongAfterThePrices_doubtsThem() {
    String before = Ran.command("check", "demo-data/mixed-farm", "--date", "2027-09-15").out();
    String after = Ran.command("check", "demo-data/mixed-farm", "--date", "2027-09-16").out();

    assertThat(before).doesNotContain("more than a year");
    assertThat(after)
        .contains(
            "- The prices and quotes were taken on 2026-09-15, more than a year before 2027-09-16.",
            "  If lamb, supplement, seed or work cost something else by now, the gain is another");
  }

  @Test
  void check_withScenarios_listsOnlyTheDoubtsTheyAdd() throws IOException {
    Path file =
        Files.writeString(
            folder.resolve("what-if.yaml"),
            "scenarios:\n  long joining:\n    mobs: [{name: maidens, joining_weeks: 14}]\n"
                + "  cheap lamb:\n    prices: {net_value_per_lamb: -20 %}\n");

    Ran ran = Ran.command("check", "demo-data/mixed-farm", "--scenario", file);

    assertThat(ran.err()).isEmpty();
    assertThat(ran.out().lines().dropWhile(line -> !line.startsWith("Scenario")).limit(5))
        .containsExactly(
            "Scenario 'long joining': no faults. Doubts: check that these are meant",
            "- maidens are joined for up to 14 weeks.",
            "  More than 12 weeks gives ewes many chances to conceive, so that less is seen of the"
                + " effect of oestrogen, and their lambs come over as many weeks.",
            "",
            "Scenario 'cheap lamb': no faults, no further doubts");
  }

  @Test
  void check_folderThatIsNotThere_saysSo() {
    Ran ran = Ran.command("check", folder.resolve("none"));

    assertThat(ran.code()).isEqualTo(ExitCodes.BAD_INPUT);
    assertThat(ran.err())
        .isEqualTo(
            "Faults"
                + System.lineSeparator()
                + folder.resolve("none")
                + ": must be a folder"
                + System.lineSeparator()
                + "1 fault. Nothing was written."
                + System.lineSeparator());
  }

  @Test
  void check_emptyFolder_namesTheFilesThatAreMissing() {
    Ran ran = Ran.command("check", folder);

    assertThat(ran.code()).isEqualTo(ExitCodes.BAD_INPUT);
    assertThat(ran.err()).contains("farm.yaml: ").contains("paddocks.csv: ").contains("2 faults");
  }

  @Test
  void check_namesWithControlCharacters_printsNone() throws IOException {
    SmallFarm.write(folder, "\"Bell\\a \\e[31mred\"", "Fl\u0007at\u001b[2J");
    Files.writeString(folder.resolve("plants.csv"), "paddock,cultivar,plants\nHill,Geraldton,40\n");

    Ran ran = Ran.command("check", folder);

    assertThat(ran.code()).isZero();
    assertThat(ran.out()).contains("[31mred").contains("Nobody looked at the clover of Fl");
    assertThat((ran.out() + ran.err()).replaceAll("\\R", "")).doesNotContainPattern("\\p{Cntrl}");
  }

  @Test
  void check_faultsWithControlCharacters_printsNone() throws IOException {
    SmallFarm.write(folder, "Farm", "Fl\u001b[2Jat");
    Files.writeString(
        folder.resolve("plants.csv"), "paddock,cultivar,plants\nH\u001b[2Jole,Dw\u0007alg,x\n");

    Ran ran = Ran.command("check", folder);

    assertThat(ran.code()).isEqualTo(ExitCodes.BAD_INPUT);
    assertThat(ran.err()).contains("plants.csv:2: ");
    assertThat(ran.err().replaceAll("\\R", "")).doesNotContainPattern("\\p{Cntrl}");
  }

  @Test
  void check_fileThatIsNotText_isRefusedWithoutAStackTrace() throws IOException {
    SmallFarm.write(folder);
    Files.write(
        folder.resolve("paddocks.csv"),
        "paddock,area_ha\nH\u00fcgel,3\n".getBytes(StandardCharsets.ISO_8859_1));

    Ran ran = Ran.command("check", folder);

    assertThat(ran.code()).isEqualTo(ExitCodes.BAD_INPUT);
    assertThat(ran.err().lines().skip(1)).first().asString().startsWith("paddocks.csv");
    assertThat(ran.err()).doesNotContain("Exception");
  }
}
