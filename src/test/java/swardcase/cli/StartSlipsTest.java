package swardcase.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import swardcase.evidence.SetBy;
import swardcase.farm.Farm;
import swardcase.farm.Mob;
import swardcase.farm.ScanningBasis;
import swardcase.folder.NewFarm;
import swardcase.folder.Question;
import swardcase.intake.FarmFolder;
import swardcase.tables.Tables;
import swardcase.tables.TablesLoader;

/** What people answer to {@code start}, as they would answer over the fence. */
class StartSlipsTest {

  private static final Tables TABLES = TablesLoader.standard().load();

  @TempDir private Path place;
  private Path folder;

  @BeforeEach
  void nameFolder() {
    folder = place.resolve("farm");
  }

  /** Answers to all questions, these in place of the usual ones; a blank line leaves one out. */
  private static String answers(String... keysAndAnswers) {
    StringBuilder typed = new StringBuilder();
    Map<String, String> said = new LinkedHashMap<>();
    said.put("name", "A");
    said.put("growth", "Katanning");
    said.put("paddocks", "House 28");
    for (int i = 0; i < keysAndAnswers.length; i += 2) {
      said.put(keysAndAnswers[i], keysAndAnswers[i + 1]);
    }
    Map<String, String> settled = new LinkedHashMap<>();
    for (Question question : new NewFarm(TABLES).questions()) {
      if (question.asked().test(settled)) {
        String answer = said.getOrDefault(question.key(), "");
        typed.append(answer).append('\n');
        String last = answer.substring(answer.lastIndexOf('\n') + 1);
        settled.put(question.key(), question.settled(last));
      }
    }
    return typed.toString();
  }

  private Farm started(String... keysAndAnswers) {
    Ran ran = Ran.typing(answers(keysAndAnswers), "start", folder);
    assertThat(ran.err()).isEmpty();
    assertThat(ran.code()).isZero();
    return FarmFolder.read(folder, TABLES).farm();
  }

  // Feed.

  @ParameterizedTest
  @CsvSource({"oats", "lupins", "Lucerne Hay"})
  void feed_ofTheTables_isTakenWithThePriceGiven(String feed) {
    Farm farm = started("supplement", feed, "supplement-price", "260, 330, 420");

    assertThat(farm.supplement().name()).isEqualToIgnoringCase(feed);
    assertThat(farm.supplement().pricePerTonne().likely()).isEqualTo(330);
    assertThat(farm.supplement().energyMjPerKgDm().setBy()).isEqualTo(SetBy.DEFAULT);
  }

  @Test
  void feed_ofTheTablesWithoutAPrice_needsOne() {
    Ran ran =
        Ran.typing(
            answers("supplement", "sheep pellets", "supplement-price", "\n330"), "start", folder);

    assertThat(ran.code()).isZero();
    assertThat(ran.out())
        .contains("delivered and fed out:   This one is needed.")
        .doesNotContain("delivered and fed out [leave out]");
  }

  @Test
  void feed_nobodyElseHas_isTakenWithItsEnergyAndPrice() {
    Farm farm =
        started("supplement", "silage", "supplement-energy", "9 10 11", "supplement-price", "90");

    assertThat(farm.supplement().name()).isEqualTo("silage");
    assertThat(farm.supplement().energyMjPerKgDm().likely()).isEqualTo(10);
  }

  @Test
  void feed_mistyped_isSaidAndCanBeTakenBack() {
    String typed = answers("supplement", "barly\nback\nbarley", "supplement-price", "330");
    Ran ran = Ran.typing(typed, "start", folder);

    assertThat(ran.code()).isZero();
    assertThat(ran.out())
        .contains(
            "The tables do not know 'barly', so its energy and price are asked for. If 'barley' is"
                + " meant, write back.");
    assertThat(FarmFolder.read(folder, TABLES).farm().supplement().name()).isEqualTo("barley");
  }

  @Test
  void feed_changedAfterItsEnergyWasGiven_dropsTheEnergy() throws IOException {
    String typed =
        answers("supplement", "silage", "supplement-energy", "9", "supplement-price", "back\nback");
    int stop = typed.indexOf("back\nback") + "back\nback\n".length();

    Ran.typing(typed.substring(0, stop) + "barley\n\n\n\n\nHouse 28\n", "start", folder);

    assertThat(Files.readString(folder.resolve("farm.yaml"))).doesNotContain("energy_mj");
    assertThat(FarmFolder.read(folder, TABLES).farm().supplement().name()).isEqualTo("barley");
  }

  // Mobs.

  @Test
  void maidens_joinedApart_areAMobWithFiguresOfTheirOwn() throws IOException {
    Farm farm =
        started(
            "ewes", "901",
            "joining-start", "30 January",
            "in-lamb", "84",
            "maidens", "240",
            "maidens-joining-start", "5 May",
            "maidens-in-lamb", "70",
            "maidens-scanned", "85",
            "maidens-marked", "60",
            "maidens-figures", "no");

    assertThat(farm.mobs()).extracting(Mob::name).containsExactly("mature ewes", "maidens");
    assertThat(farm.mobs()).extracting(Mob::ewes).containsExactly(901, 240);
    assertThat(farm.mobs().get(0).ageShares().get(0)).isZero();
    assertThat(farm.mobs().get(0).ageShares()).hasSize(5);
    assertThat(farm.mobs().get(1).ageShares()).containsExactly(1.0);
    assertThat(farm.mobs().get(1).scanningBasis()).isEqualTo(ScanningBasis.UNAFFECTED);
    assertThat(Files.readString(folder.resolve("farm.yaml")))
        .contains("ages: [0, 226, 225, 225, 225]   # by number of joinings: put in your own");
  }

  @Test
  void mobs_withNamesOfTheirOwn_areAskedForUntilOneIsLeftOut() {
    Farm farm =
        started(
            "ewes", "500",
            "joining-start", "30 January",
            "mob-3", "late joined",
            "mob-3-ewes", "200",
            "mob-3-joining-start", "1 April",
            "mob-4", "lambs",
            "mob-4-ewes", "80",
            "mob-4-joining-start", "1 May");

    assertThat(farm.mobs()).extracting(Mob::name).containsExactly("ewes", "late joined", "lambs");
    assertThat(farm.ewesJoined()).isEqualTo(780);
    assertThat(farm.mobs().get(0).agesSetBy()).isEqualTo(SetBy.DEFAULT);
  }

  // Yes, no, numbers.

  @ParameterizedTest
  @CsvSource({"yes, OBSERVED", "Y, OBSERVED", "'', OBSERVED", "No, UNAFFECTED", "n, UNAFFECTED"})
  void yesOrNo_isAnsweredByYesOrNo(String typed, ScanningBasis basis) {
    Farm farm = started("ewes", "90", "joining-start", "1 Feb", "in-lamb", "84", "figures", typed);

    assertThat(farm.mobs().get(0).scanningBasis()).isEqualTo(basis);
  }

  @Test
  void yesOrNo_otherwise_isAskedAgain() {
    String typed =
        answers("ewes", "90", "joining-start", "1 Feb", "in-lamb", "84", "figures", "maybe\nno");
    Ran ran = Ran.typing(typed, "start", folder);

    assertThat(ran.code()).isZero();
    assertThat(ran.out()).contains("yes or no [yes]:   It must be yes or no.");
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "ewes             | 1,900       | It can be read in two ways: write 1900 without a comma.",
        "ewes             | 1900 sheep  | It must be one number, without words (head).",
        "ewes             | 400, 500    | It must be one number, without words (head).",
        "joining-weeks    | 2 months    | It must be one number, or low, likely and high with commas"
            + " between, as 2, 3, 5, without words (weeks).",
        "joining-weeks    | 5,5         | It must have a decimal point: write 5.5.",
        "joining-weeks    | 5-7         | It must be one number, or low, likely and high with commas",
        "joining-weeks    | six         | It must be one number, or low, likely and high with commas",
        "supplement-price | 1,900       | It can be read in two ways: write 1900 without a comma, or"
            + " several numbers with a space behind each comma.",
        "budget           | 40k         | It must be one number, without words (money).",
        "budget           | 40,000      | It can be read in two ways: write 40000 without a comma.",
        "lamb-value       | 60 to 170   | It must be one number, or low, likely and high with commas",
      })
  void number_thatCannotBeTaken_isToldPlainlyAndAskedAgain(String key, String typed, String told) {
    String all = answers("ewes", "900", "joining-start", "1 Feb", key, typed + "\n9");
    Ran ran = Ran.typing(all, "start", folder);

    assertThat(ran.out()).contains(told).doesNotContain("[1, 900]");
    assertThat(ran.code()).isZero();
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "900 ewes  | 6 weeks     | 84 %            | $ 105",
        "900 head  | 6 Weeks     | 84 ewes         | A$105",
        "900       | 6           | 84              | 105",
      })
  void number_withTheUnitThatWasAskedFor_isTaken(
      String ewes, String weeks, String inLamb, String lamb) {
    Farm farm =
        started(
            "ewes", ewes,
            "joining-start", "1 Feb",
            "joining-weeks", weeks,
            "in-lamb", inLamb,
            "lamb-value", lamb);

    assertThat(farm.ewesJoined()).isEqualTo(900);
    assertThat(farm.mobs().get(0).joiningWeeks().likely()).isEqualTo(6);
    assertThat(farm.mobs().get(0).pregnantPercent().likely()).isEqualTo(84);
    assertThat(farm.prices().netValuePerLamb().likely()).isEqualTo(105);
  }

  @Test
  void number_threeWithoutSpaces_isLowLikelyAndHigh() {
    Farm farm = started("supplement-price", "260,330,420");

    assertThat(farm.supplement().pricePerTonne().range().high()).isEqualTo(420);
  }

  @Test
  void paddock_withoutHectares_isNamed() {
    Ran ran =
        Ran.typing(answers("paddocks", "House 28, Flat\nHouse, 28\nHouse 28"), "start", folder);

    assertThat(ran.out())
        .contains("It must have hectares behind each name, as House 28: 'Flat' has none.")
        .contains("It must have hectares behind each name, as House 28: 'House' has none.");
    assertThat(ran.code()).isZero();
  }

  // Going back, going on, ending.

  @Test
  void back_afterResuming_goesToTheLastAnswerOfTheRunBefore() {
    Ran.typing("A\n\nKatanning\n900\n1 Feb\n", "start", folder);

    Ran ran = Ran.typing("back\n2 March\n", "start", folder);

    assertThat(ran.out())
        .startsWith(
            "How long the rams stay, weeks [5]: Day the rams go in: How long the rams stay");
    assertThat(place.resolve("farm/start-answers.txt"))
        .content()
        .contains("joining-start: 2 March");
  }

  @Test
  void back_afterResumingAllTheWay_reachesTheFirstQuestionAndSaysSo() {
    Ran.typing("A\n\nKatanning\n", "start", folder);

    Ran ran = Ran.typing("back\nback\nback\nback\nB\n", "start", folder);

    assertThat(ran.out()).contains("Name of the farm:   This is the first question.\n");
    assertThat(place.resolve("farm/start-answers.txt")).content().startsWith("name: B");
  }

  @Test
  void input_thatIsNoneOrNotTyped_endsAtOnceAndSaysWhatToDo() {
    for (String input : List.of("", "PK\u0003\u0004\0\0\n\0\n")) {
      Ran ran = Ran.typing(input, "start", folder);

      assertThat(ran.code()).isEqualTo(ExitCodes.BAD_INPUT);
      assertThat(ran.out()).isEqualTo("Name of the farm: \n");
      assertThat(ran.err())
          .isEqualTo("Nothing was typed. Run it at a terminal, or take --blank.\n");
      assertThat(folder).doesNotExist();
    }
  }

  // Files and words.

  @Test
  void files_haveTheColumnsOfTheTutorial() throws IOException {
    String tutorial = Files.readString(Path.of("docs/tutorial.md"));
    Path asked = place.resolve("asked");
    Path blank = place.resolve("blank");
    Ran.typing(answers(), "start", asked);
    Ran.command("start", blank, "--blank");
    for (Path made : List.of(asked, blank)) {
      for (String file : List.of("paddocks.csv", "plants.csv")) {
        Matcher block = Pattern.compile("```" + Pattern.quote(file) + "\n(.*)\n").matcher(tutorial);
        assertThat(block.find()).isTrue();
        assertThat(Files.readAllLines(made.resolve(file))).contains(block.group(1));
      }
    }
  }

  /** What start calls current is what check calls current. */
  @Test
  void sow_currentCultivars_areThoseThatCheckDoesNotDoubt() {
    String help =
        new NewFarm(TABLES)
            .questions().stream()
                .filter(question -> question.key().equals("sow"))
                .findFirst()
                .orElseThrow()
                .help();
    List<String> listed =
        List.of(help.replaceFirst(".*: ", "").replaceFirst("\\.$", "").split(", "));
    assertThat(listed).contains("Narrikup").doesNotContain("Seaton Park", "Dalkeith", "Yarloop");
    TABLES
        .cultivars()
        .values()
        .forEach(
            cultivar -> {
              boolean current = cultivar.isCurrent() && !cultivar.name().equals("current cultivar");
              assertThat(listed.contains(cultivar.name())).as(cultivar.name()).isEqualTo(current);
            });
    Ran ran = Ran.typing(answers("sow", "Dalkeith"), "start", folder);
    assertThat(ran.out()).contains("'Dalkeith' is not a current cultivar of the tables.");
    assertThat(Ran.command("check", folder).out())
        .contains("Dalkeith is to be sown, and it is not a current cultivar of the table.");
  }
}
