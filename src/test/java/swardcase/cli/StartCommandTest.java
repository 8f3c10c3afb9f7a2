package swardcase.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import swardcase.farm.Farm;
import swardcase.intake.FarmFolder;
import swardcase.tables.Tables;
import swardcase.tables.TablesLoader;

class StartCommandTest {

  private static final Tables TABLES = TablesLoader.standard().load();
  private static final String ALL =
      String.join(
          "\n",
          "Hill's End: \"no\" #1",
          "", // A$
          "katanning",
          "900",
          "30 January",
          "", // weeks
          "84",
          "100 122 130",
          "92",
          "", // figures
          "", // maidens
          "", // another mob
          "150",
          "barley",
          "260, 330, 420",
          "105",
          "40000",
          "Narrikup",
          "House 28, Bottom Flat 46.5 ha, Long 62",
          "");

  /** What is needed, and no more. */
  private static final String LEAST = "Flats\n\nEsperance\n\n\n\n\n\n\n\nOne 20\n";

  @TempDir private Path place;
  private Path folder;

  @BeforeEach
  void nameFolder() {
    folder = place.resolve("farm");
  }

  @Test
  void start_everyQuestionAnswered_writesAFarmThatReadsAsTyped() {
    Ran ran = Ran.typing(ALL, "start", folder);

    assertThat(ran.err()).isEmpty();
    assertThat(ran.code()).isZero();
    assertThat(Ran.below(folder)).containsExactly("farm.yaml", "paddocks.csv", "plants.csv");
    Farm farm = FarmFolder.read(folder, TABLES).farm();
    assertThat(farm.name()).isEqualTo("Hill's End: \"no\" #1");
    assertThat(farm.currency()).isEqualTo("A$");
    assertThat(farm.feedYear().growthName()).isEqualTo("Katanning");
    assertThat(farm.ewesJoined()).isEqualTo(900);
    assertThat(farm.mobs().get(0).scanningPercent().range().high()).isEqualTo(130);
    assertThat(farm.otherStock().get(0).head()).isEqualTo(150);
    assertThat(farm.supplement().pricePerTonne().range().low()).isEqualTo(260);
    assertThat(farm.finance().budgetPerYear()).hasValue(40000);
    assertThat(farm.sownCultivar()).isEqualTo("Narrikup");
    assertThat(farm.paddocks()).extracting("name").containsExactly("House", "Bottom Flat", "Long");
    assertThat(farm.areaHa()).isEqualTo(136.5);
    assertThat(Ran.command("check", folder).code()).isZero();
  }

  @Test
  void start_withPrices_writesTheDayTheyWereTaken() throws IOException {
    Ran.typing(ALL, "start", folder, "--date", "2026-11-25");
    assertThat(FarmFolder.read(folder, TABLES).priceDate()).hasValue(LocalDate.of(2026, 11, 25));

    Path blank = place.resolve("blank");
    Ran.command("start", blank, "--blank", "--date", "2026-11-25");
    assertThat(Files.readString(blank.resolve("farm.yaml")))
        .contains("# price_date: 2026-11-25 ")
        .doesNotContain("{");
  }

  @Test
  void start_withoutPrices_leavesTheirDayOut() {
    assertThat(Ran.typing(LEAST, "start", folder).code()).isZero();
    assertThat(FarmFolder.read(folder, TABLES).priceDate()).isEmpty();
  }

  @Test
  void start_onlyWhatIsNeeded_takesDefaultsForTheRest() {
    Ran ran = Ran.typing(LEAST, "start", folder);

    assertThat(ran.code()).isZero();
    Farm farm = FarmFolder.read(folder, TABLES).farm();
    assertThat(farm.mobs()).isEmpty();
    assertThat(farm.sownCultivar()).isEqualTo("current cultivar");
    assertThat(Ran.command("check", folder).code()).isZero();
  }

  @Test
  void start_answerThatCannotBe_isAskedAgainWithTheReason() {
    Ran ran = Ran.typing(ALL.replace("katanning", "Kataning\nkatanning"), "start", folder);

    assertThat(ran.code()).isZero();
    assertThat(ran.out())
        .contains(
            "It must be a district of the tables; found 'Kataning'; did you mean 'Katanning'?");
  }

  @Test
  void start_lowFigures_areNotHeldAgainstDefaultsThatAreStillToBeAsked() {
    String typed = ALL.replace("84\n100 122 130\n92", "60\n80\n\n70");

    Ran ran = Ran.typing(typed, "start", folder);

    assertThat(ran.code()).isZero();
    assertThat(ran.out()).contains("It must not be above scanning_percent, which is 80");
    assertThat(FarmFolder.read(folder, TABLES).farm().mobs().get(0).markingPercent().likely())
        .isEqualTo(70);
  }

  @Test
  void start_savedAnswersDamaged_keepsThoseThatCanBe() throws IOException {
    Files.createDirectories(folder);
    Files.write(
        folder.resolve(Interview.FILE),
        "name: Flats\ngrowth: Nowhere\newes: many\n\u0000\n: x\nnonsense: 3\ncurrency: NZ$\n"
            .getBytes(StandardCharsets.UTF_16BE));
    Ran broken = Ran.typing("", "start", folder);
    Files.writeString(
        folder.resolve(Interview.FILE),
        "name: Flats\ngrowth: Nowhere\newes: many\nnonsense: 3\ncurrency: NZ$\n");
    Ran ran = Ran.typing("", "start", folder);

    assertThat(broken.code()).isEqualTo(ExitCodes.BAD_INPUT);
    assertThat(broken.out()).startsWith("Name of the farm");
    assertThat(ran.code()).isEqualTo(ExitCodes.BAD_INPUT);
    assertThat(ran.out()).startsWith("District whose pasture growth");
  }

  @Test
  void start_questionMark_helpsAndAsksAgain() {
    Ran ran = Ran.typing(ALL.replace("katanning", "?\nkatanning"), "start", folder);

    assertThat(ran.code()).isZero();
    assertThat(ran.out()).contains("Katanning (480 mm a year, 7 green months), Northam (");
  }

  @Test
  void start_back_asksTheQuestionBeforeAgain() {
    Ran ran = Ran.typing(ALL.replace("katanning", "back\nNZ$\nkatanning"), "start", folder);

    assertThat(ran.code()).isZero();
    assertThat(FarmFolder.read(folder, TABLES).farm().currency()).isEqualTo("NZ$");
  }

  @Test
  void start_backOverSkippedQuestions_landsOnTheLastOneAsked() {
    String typed = "Flats\n\nKatanning\n0\nback\n200\n1 Feb\n\n\n\n\n\n\n\n\n\n\n\n\nOne 20\n";

    Ran ran = Ran.typing(typed, "start", folder);

    assertThat(ran.code()).isZero();
    assertThat(FarmFolder.read(folder, TABLES).farm().ewesJoined()).isEqualTo(200);
  }

  @Test
  void start_stoppedAtOnce_leavesNothing() {
    assertThat(Ran.typing("", "start", folder).code()).isEqualTo(ExitCodes.BAD_INPUT);

    assertThat(folder).doesNotExist();
  }

  @Test
  void start_stoppedHalfway_goesOnWhereItWas() {
    int half = ALL.indexOf("84");

    Ran stopped = Ran.typing(ALL.substring(0, half), "start", folder);

    assertThat(stopped.code()).isEqualTo(ExitCodes.BAD_INPUT);
    assertThat(stopped.err()).startsWith("Stopped. To go on, run it again: swardcase start ");
    assertThat(Ran.below(folder)).containsExactly(Interview.FILE);

    Ran ended = Ran.typing(ALL.substring(half), "start", folder);

    assertThat(ended.code()).isZero();
    assertThat(ended.out()).doesNotContain("Ewes joined");
    assertThat(Ran.below(folder)).containsExactly("farm.yaml", "paddocks.csv", "plants.csv");
    assertThat(FarmFolder.read(folder, TABLES).farm().ewesJoined()).isEqualTo(900);
  }

  @Test
  void start_folderThatHoldsAFarm_isLeftAsItIs() throws IOException {
    Files.createDirectories(folder);
    Files.writeString(folder.resolve("plants.csv"), "mine");

    for (Ran ran :
        List.of(Ran.command("start", folder, "--blank"), Ran.typing(LEAST, "start", folder))) {

      assertThat(ran.code()).isEqualTo(ExitCodes.BAD_INPUT);
      assertThat(ran.err()).contains("already holds plants.csv: nothing is overwritten");
    }
    assertThat(Ran.below(folder)).containsExactly("plants.csv");
    assertThat(folder.resolve("plants.csv")).hasContent("mine");
  }

  @Test
  void start_blank_leavesOpenOnlyWhatMustBeGiven() {
    assertThat(Ran.command("start", folder, "--blank").code()).isZero();

    Ran check = Ran.command("check", folder);

    assertThat(check.code()).isEqualTo(ExitCodes.BAD_INPUT);
    assertThat(check.err().lines().filter(line -> line.contains(": ")))
        .hasSize(3)
        .anyMatch(line -> line.contains("name: must be given"))
        .anyMatch(line -> line.contains("growth: must be given"))
        .anyMatch(line -> line.contains("paddocks.csv: must have a paddock"));
  }

  @Test
  void blankFile_withEveryNoteTakenUp_isAFarm() throws IOException {
    Ran.command("start", folder, "--blank");
    String yaml = Files.readString(folder.resolve("farm.yaml"));
    String used =
        yaml.lines()
            .filter(line -> !line.matches("# [A-Z].*"))
            .map(line -> line.replaceFirst("^# ?", line.startsWith("#  ") ? " " : ""))
            .map(line -> line.equals("name:") ? "name: Used" : line)
            .reduce("", (text, line) -> text + line + "\n");
    Files.writeString(folder.resolve("farm.yaml"), used);
    Files.writeString(
        folder.resolve("paddocks.csv"),
        Files.readString(folder.resolve("paddocks.csv")) + "House,28,30,45,60,,,,,,\n");

    Ran check = Ran.command("check", folder);

    assertThat(check.err()).isEmpty();
    assertThat(check.code()).isZero();
  }

  @Test
  void start_hostileAnswers_stayText() {
    String typed =
        ALL.replace("Hill's End: \"no\" #1", "\u001b[31m'}: &a *b !!int {name}")
            .replace("House 28", "=cmd|' \"x\" 28");

    Ran ran = Ran.typing(typed, "start", folder);

    assertThat(ran.code()).isZero();
    Farm farm = FarmFolder.read(folder, TABLES).farm();
    assertThat(farm.name()).isEqualTo("[31m'}: &a *b !!int {name}");
    assertThat(farm.paddocks().get(0).name()).isEqualTo("=cmd|' \"x\"");
  }
}
