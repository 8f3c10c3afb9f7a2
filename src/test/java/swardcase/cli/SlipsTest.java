package swardcase.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Slips of a hand that fills in the files, each as its maker would make it: what cannot be meant is
 * a fault with the right word beside it, what can be meant but is odd is a doubt.
 */
class SlipsTest {

  private static final String YAML =
      """
      name: A
      growth: Katanning
      mobs:
        - {name: ewes, ewes: 90, joining_start: 1 Feb}
      """;
  private static final String PADDOCKS =
      "paddock,area_ha,clover_percent_low,clover_percent,clover_percent_high,growth_index,"
          + "waterlogged,formononetin_percent,formononetin_standard_error,use\n";
  private static final String PLANTS = "paddock,cultivar,plants,percent,plants_looked_at\n";

  @TempDir private Path folder;

  @BeforeEach
  void writeSoundFarm() throws IOException {
    yaml("");
    paddocks("Hill,20,30,45,60,,,,,");
    plants("Hill,Dinninup,40,,");
    assertThat(check().out()).contains("Doubts: none");
  }

  private void yaml(String more) throws IOException {
    Files.writeString(folder.resolve("farm.yaml"), YAML + more);
  }

  private void paddocks(String... rows) throws IOException {
    Files.writeString(folder.resolve("paddocks.csv"), PADDOCKS + String.join("\n", rows));
  }

  private void plants(String... rows) throws IOException {
    Files.writeString(folder.resolve("plants.csv"), PLANTS + String.join("\n", rows));
  }

  private Ran check() {
    return Ran.command("check", folder);
  }

  private void assertFault(String message) {
    Ran ran = check();
    assertThat(ran.err().lines()).contains(message);
    assertThat(ran.code()).isEqualTo(ExitCodes.BAD_INPUT);
  }

  private void assertDoubt(String what, String consequence) {
    Ran ran = check();
    assertThat(ran.err()).isEmpty();
    assertThat(ran.out()).contains("- " + what + "\n  " + consequence);
    assertThat(ran.code()).isZero();
  }

  private void assertNoDoubt() {
    assertThat(check().out()).contains("Doubts: none");
  }

  // Counts.

  @Test
  void plants_countedInHalves_areAFault() throws IOException {
    plants("Hill,Dinninup,12.5,,");

    assertFault("plants.csv:2: plants: must be a whole number; found '12.5'");
  }

  @Test
  void plantsLookedAt_inHalves_areAFault() throws IOException {
    plants("Hill,Dinninup,,80,40.5");

    assertFault("plants.csv:2: plants_looked_at: must be a whole number; found '40.5'");
  }

  @Test
  void percent_asAFraction_isAFault() throws IOException {
    plants("Hill,Dinninup,,0.88,50", "Hill,Riverina,,0.12,50");

    assertFault(
        "plants.csv:2: percent: must be in per cent, 88 and not 0.88: those of the paddock add up to"
            + " 1; if so little was named, give the rest as unidentified; found '0.88'");
  }

  @Test
  void percent_trulySmall_isReadWhenTheRestIsGiven() throws IOException {
    plants("Hill,Dinninup,,0.88,500", "Hill,unidentified,,99.12,500");

    assertNoDoubt();
  }

  @Test
  void plants_allCountedAsNone_areADoubt() throws IOException {
    plants("Hill,Dinninup,0,,", "Hill,Yarloop,0,,");

    assertDoubt(
        "All names given for Hill have 0 plants.",
        "What does grow there is not said, so that its clover counts as unknown: add the plants that"
            + " were found, named or not.");
  }

  @Test
  void riskTolerance_belowOneOrMisspelt_isRefused() throws IOException {
    yaml("finance: {risk_tolerance: -5}\n");
    assertFault("farm.yaml:5: finance.risk_tolerance: must be from 1 to 1000000000; found '-5'");
    yaml("finance: {risk_tolerence: 50000}\n");
    assertFault(
        "farm.yaml:5: finance: must be one of the known keys; found 'risk_tolerence'; did you mean"
            + " 'risk_tolerance'?");
    yaml("finance: {risk_tolerance: 50000}\n");
    assertNoDoubt();
  }

  // Names.

  @ParameterizedTest
  @CsvSource(
      quoteCharacter = '`',
      value = {
        "?, unidentified",
        "sub clover, unidentified",
        "Sub Clover, unidentified",
        "unknown, unidentified",
        "don't know, unidentified",
        "old, unidentified old",
        "Old clover, unidentified old",
        "new, current cultivar",
        "current, current cultivar",
        "Barker, Mount Barker",
        "Narr, Narrikup",
        "Dininup, Dinninup",
        "Eden Vally, Eden Valley",
        "Bookbook, Book Book",
        "unnamed, unidentified",
        "unnamed old, unidentified old",
        "strong, unnamed high oestrogen",
        "high oestrogen, unnamed high oestrogen",
        "old high oestrogen, unnamed old high oestrogen",
        "unnamed high estrogen, unnamed high oestrogen",
        "unamed low oestrogen, unnamed low oestrogen",
        "unnamed old hihg oestrogen, unnamed old high oestrogen",
        "unnamed old low-oestrogen, unnamed old low oestrogen",
      })
  void cultivar_asPeopleSay_getsTheRightWord(String written, String meant) throws IOException {
    plants("Hill," + written + ",40,,");

    assertFault(
        "plants.csv:2: cultivar: must be in the table of cultivars; found '%s'; did you mean '%s'?"
            .formatted(written, meant));
  }

  @Test
  void cultivar_oneOfTwoAsPeopleSay_getsTheRightWord() throws IOException {
    plants("Hill,old or Dinninup,40,,");

    assertFault(
        "plants.csv:2: cultivar: must be in the table of cultivars: 'old' is nearest to"
            + " 'unidentified old'; found 'old or Dinninup'");
  }

  @ParameterizedTest
  @CsvSource({"Y, yes", "y, yes", "Ye, yes", "N, no", "n, no"})
  void yesOrNo_inOneLetter_getsTheWord(String written, String meant) throws IOException {
    paddocks("Hill,20,30,45,60,," + written + ",,,");

    assertFault(
        "paddocks.csv:2: waterlogged: must be one of: no, yes; found '%s'; did you mean '%s'?"
            .formatted(written, meant));
  }

  @ParameterizedTest
  @CsvSource({"#3", "#Back", "#Ärger", "' #Back'"})
  void paddock_beginningWithAHash_doesNotVanish(String name) throws IOException {
    paddocks("Hill,20,30,45,60,,,,,", name + ",20,30,45,60,,,,,");

    Ran ran = check();

    assertThat(ran.code()).isEqualTo(ExitCodes.BAD_INPUT);
    assertThat(ran.err())
        .contains(
            "paddocks.csv:3: must not start with # and a letter or digit: put a name in quotation"
                + " marks, or a space after the # of a comment; found '"
                + name.strip());
  }

  @Test
  void paddock_beginningWithAHashInQuotationMarks_isRead() throws IOException {
    paddocks("\"#Back\",20,30,45,60,,,,,", "# Front is left out");
    plants("\"#Back\",Dinninup,40,,");

    assertThat(check().out()).contains("1 paddocks").contains("Doubts: none");
  }

  // Stock.

  @Test
  void mob_onASinglePaddock_isADoubt() throws IOException {
    yaml("  - {name: maidens, ewes: 40, joining_start: 1 Feb}\n");
    paddocks("Hill,20,30,45,60,,,,,", "Flat,20,30,45,60,,,,,maidens", "Dam,20,30,45,60,,,,,ewes");
    plants("Hill,Dinninup,40,,", "Flat,Dinninup,40,,", "Dam,Dinninup,40,,");
    assertNoDoubt();

    paddocks("Hill,20,30,45,60,,,,,other stock", "Flat,20,30,45,60,,,,,maidens");
    plants("Hill,Dinninup,40,,", "Flat,Dinninup,40,,");
    assertDoubt(
        "maidens graze a single paddock, Flat.",
        "Its clover alone decides what oestrogen they meet, all year: if they go elsewhere too, write"
            + " ewes or their name in the column use of those paddocks.");
    assertDoubt(
        "No paddock is grazed by ewes.",
        "They count as meeting no oestrogen on this farm: if they graze here, say where in the column"
            + " use.");
  }

  @Test
  void figures_asLambsForEachEwe_areADoubt() throws IOException {
    yaml(
        "  - {name: maidens, ewes: 40, joining_start: 1 Feb, marking_percent: 0.92, figures:"
            + " unaffected}\n");

    assertDoubt(
        "marking_percent of maidens is given as 0.92.",
        "It counts lambs for 100 ewes: if 92 is meant, almost all lambs are left out.");
  }

  @ParameterizedTest
  @CsvSource({
    "finance, discount_rate_percent, 0.07, 7",
    "finance, most_out_of_grazing_percent, 0.2, 20",
    "management, condition_deficit_percent, 0.1, 10",
    "management, most_ewe_increase_percent, 0.2, 20",
    "supplement, waste_percent, 0.08, 8",
  })
  void perCentKey_asAFraction_isADoubt(String part, String key, String written, String meant)
      throws IOException {
    String name = part.equals("supplement") ? "  name: barley\n" : "";
    yaml(part + ":\n" + name + "  " + key + ": " + written + "\n");

    assertDoubt(
        key + " is given as " + written + ".",
        "It is in per cent: if %s %% is meant, write %1$s.".formatted(meant));
  }

  @Test
  void rate_asAFractionOnTheCommandLine_isAskedAbout() {
    Ran ran = Ran.command("decide", folder, "--rate", "0.07");

    assertThat(ran.code()).isEqualTo(ExitCodes.BAD_INPUT);
    assertThat(ran.err())
        .startsWith(
            "--rate: must be in per cent a year: 0, or from 0.5 to 100; found '0.07'; did you mean"
                + " '7'?");
  }

  // Pasture.

  @Test
  void growthIndex_noneOnAllPaddocks_isAFault() throws IOException {
    paddocks("Hill,20,30,45,60,0,,,,", "Flat,20,30,45,60,0,,,,");

    assertFault(
        "paddocks.csv:2: growth_index: must be more than 0 in at least one paddock; found '0'");
  }

  @Test
  void growth_noneInAllMonths_isAFault() throws IOException {
    Files.writeString(
        folder.resolve("farm.yaml"),
        """
        name: A
        growth:
          winter_months: [June]
          pasture_quality: annual clover, southern
          kg_dm_per_ha_per_day:
            average: [0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0]
        """);

    assertFault(
        "farm.yaml:2: growth: pasture must grow in at least one month of a season that comes");
  }

  // Letters.

  @Test
  void name_inAScriptTheSheetLacks_isADoubt() throws IOException {
    paddocks("\u7267\u5834,20,30,45,60,,,,,");
    plants("\u7267\u5834,Dinninup,40,,");

    assertDoubt(
        "The sheet cannot print \u7267 \u5834 in: \u7267\u5834.",
        "It prints question marks there. The terminal and the files for other programs keep the"
            + " names, and on the sheet paddocks can be told apart by their numbers.");
  }

  // Leaf tests. The cultivar table has 0.5 to 1.8 % for Dinninup, 0.02 to 0.30 % for Riverina.

  @Test
  void leafTest_farBelowTheNames_isSaidByCheckAndSampling() throws IOException {
    paddocks("Hill,20,30,45,60,,,0.1,0.02,");

    assertDoubt(
        "The leaf test of Hill, 0.1 %, is far below the 0.47 to 1.8 % that the cultivars named there"
            + " can have.",
        "The test counts and not the names, so that a wrong test hides what is there: is the result"
            + " in per cent of leaf dry matter? Have the names and a second sample looked at before"
            + " money is spent.");
    String sampling = sampling();
    assertThat(sampling).containsPattern("(?m)^Hill .* leaf tested ");
    assertThat(sampling.replaceAll("\\s+", " "))
        .contains("Hill: leaf test 0.10 (0.07 to 0.13) %, far below the 0.47 to 1.8 % that");
  }

  @Test
  void leafTest_farAboveTheNames_isSaidByCheckAndSampling() throws IOException {
    paddocks("Hill,20,30,45,60,,,0.9,0.1,");
    plants("Hill,Riverina,40,,");

    Ran ran = check();
    assertThat(ran.out())
        .contains("- The leaf test of Hill, 0.9 %, is far above the 0.02 to ")
        .contains("oestrogenic plants may have been missed or misnamed");
    assertThat(sampling().replaceAll("\\s+", " "))
        .contains("Hill: leaf test 0.9 (0.7 to 1.1) %, far above the ");
  }

  @Test
  void leafTest_inLineWithTheNames_isNoDoubt() throws IOException {
    paddocks("Hill,20,30,45,60,,,0.9,0.1,");

    assertNoDoubt();
    assertThat(sampling()).containsPattern("(?m)^Hill .* leaf tested ");
  }

  private String sampling() {
    Ran ran = Ran.command("sampling", folder, "--draws=100", "--date=2026-11-25");
    assertThat(ran.code()).as(ran.err()).isZero();
    return ran.out();
  }

  @Test
  void leafTest_wherePlantsHaveNoNames_contradictsNothing() throws IOException {
    paddocks("Hill,20,30,45,60,,,0.05,0.01,");
    plants("Hill,unidentified old,40,,");
    assertNoDoubt();

    paddocks("Hill,20,30,45,60,,,0.05,0.01,");
    plants("Hill,Dinninup or Riverina,40,,");
    assertNoDoubt();
  }
}
