package swardcase.tables;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.SplittableRandom;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import swardcase.chance.Range;
import swardcase.check.Fault;
import swardcase.check.FaultsException;
import swardcase.evidence.SetBy;
import swardcase.farm.Action;
import swardcase.farm.ActionNumber;
import swardcase.farm.CostLine;

class TablesLoaderTest {

  private static final Path STANDARD = Path.of("tables");

  @TempDir Path temp;
  private Path base;

  @BeforeEach
  void copyTables() throws IOException {
    base = Files.createDirectory(temp.resolve("base"));
    try (Stream<Path> files = Files.list(STANDARD)) {
      for (Path file : files.toList()) {
        Files.copy(file, base.resolve(file.getFileName()));
      }
    }
  }

  private void replace(String file, String from, String to) throws IOException {
    String text = Files.readString(base.resolve(file));
    assertThat(text).contains(from);
    Files.writeString(base.resolve(file), text.replaceFirst(Pattern.quote(from), to));
  }

  private List<String> faults(TablesLoader loader) {
    FaultsException thrown = catchThrowableOfType(FaultsException.class, loader::load);
    assertThat(thrown).as("must be refused").isNotNull();
    return thrown.faults().stream().map(Fault::message).toList();
  }

  private String heading(String file) throws IOException {
    return Files.readAllLines(STANDARD.resolve(file)).stream()
        .filter(line -> !line.startsWith("#"))
        .findFirst()
        .orElseThrow();
  }

  @Test
  void from_copyOfTheTables_equalsStandard() {
    assertThat(TablesLoader.from(base).load()).isEqualTo(TablesLoader.standard().load());
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          cultivars.csv|,era,|,aera,|tables/cultivars.csv: aera: is not a column of this table; did you mean 'era'?
          cultivars.csv|,note\\n|\\n|must have as many cells as there are headings
          cultivars.csv|Dinninup,|Dwalganup,|name: must not be given twice; it stands in line 4 already; found 'Dwalganup'
          cultivars.csv|0.5,1.0,1.8|0.5,0.1,1.8|formononetin_likely_percent_dm: formononetin_low_percent_dm, formononetin_likely_percent_dm and formononetin_high_percent_dm must be in rising order; found '[0.5, 0.1, 1.8]'
          cultivars.csv|0.5,1.0,1.8|0.5,NaN,1.8|formononetin_likely_percent_dm: must be a number; found 'NaN'
          cultivars.csv|0.5,1.0,1.8|0.5,,1.8|formononetin_likely_percent_dm: must be given
          cultivars.csv|0.5,1.0,1.8|0.5,1.0,18|formononetin_high_percent_dm: must be from 0 to 5; found '18'
          cultivars.csv|,memory,old,|,memory,antique,|era: must be one of: current, old, transition; found 'antique'
          cultivars.csv|,memory,old,1929|,memry,old,1929|subspecies_evidence: must be one of: common practice, inferred, memory, published; found 'memry'; did you mean 'memory'?
          cultivars.csv|,memory,old,1929|,farm,old,1929|subspecies_evidence: must be one of: common practice, inferred, memory, published; found 'farm'
          cultivars.csv|leaf-survey-2024;|leaf-survey-2042;|must name a key of sources.csv, which has no leaf-survey-2042
          cultivars.csv|old,inferred,|old,,|winter_yield_evidence: must be given
          districts.csv|0,0,0,2,15|0,0,none,2,15|tables/districts.csv:4: march_kg_dm_per_ha_day: must be a number; found 'none'
          districts.csv|0,0,0,2,15|0,0,0,-2,15|april_kg_dm_per_ha_day: must be from 0 to 250; found '-2'
          districts.csv|June;July|Juni;July|winter_months: must be a month such as June; found 'Juni'; did you mean 'June'?
          districts.csv|annual clover, southern|annual clover, suthern|quality_profile: must name a profile of pasture-quality.csv; found 'annual clover, suthern'; did you mean 'annual clover, southern'?
          districts.csv|published,dpird-annual-pasture|published,|source: must be given for a published number
          districts.csv|0.5,1,2,0.5,1,1.5|0.5,0.4,2,0.5,1,1.5|break_later_in_poor_high_half_months must be in rising order; found '[0.5, 0.4, 2]'
          districts.csv|0.5,1,2,0.5,1,1.5|0.5,1,2,0.5,1,7|break_earlier_in_good_high_half_months: must be from 0 to 6; found '7'
          districts.csv|0.5,1,2,0.5,1,1.5|0.5,1,2,-0.5,1,1.5|break_earlier_in_good_low_half_months: must be from 0 to 6; found '-0.5'
          districts.csv|1.5,inferred,|1.5,,|break_evidence: must be given
          districts.csv|1.5,inferred,bom-wheatbelt-guide;|1.5,inferred,bom-wheatbelt;|must name a key of sources.csv, which has no bom-wheatbelt; found
          districts.csv|published,great-southern-herald-2019|published,|rain_source: must be given for a published number
          districts.csv|,7,inferred,|,7.5,inferred,|green_months: must be a whole number; found '7.5'
          districts.csv|,0.25,0.40,0.65,|,0.25,0.40,1.65,|unknown_high_chance_high: must be from 0 to 1; found '1.65'
          districts.csv|,0.25,0.40,0.65,|,,,,|unknown_high_chance_evidence: must be blank where unknown_high_chance_likely is blank
          pasture-quality.csv|southern",June|southern",July|profile / month: must not be given twice
          pasture-quality.csv|"annual clover, southern",June,77,42,2,50,inferred,ridley-1986;devenish-hyder;vic-pasture-tables|# left out|month: profile 'annual clover, southern' must have all 12 months, but lacks june
          pasture-quality.csv|June,77,|June,7,|digestibility of green feed must be from 0.3 to 0.9, but was 0.07
          supplements.csv|barley,11,13,13|barley,1,13,13|energy_low_mj_per_kg_dm: must be from 3 to 20; found '1'
          supplements.csv|475,A$,|475,,|the price of barley must have a currency and a date
          dry-stock.csv|,1,1,1,|,1,one,1,|dse_likely_per_head: must be a number; found 'one'
          actions.csv|keep as it is,keep,|keep as it is,kep,|kind: must be one of: crop, keep, oversow, resow, thin; found 'kep'; did you mean 'keep'?
          actions.csv|oversow,yes,0|oversow,maybe,0|needs_arable: must be one of: no, yes; found 'maybe'
          actions.csv|resow,yes,1,no|resow,yes,0,yes|cropped: must be no where there is no run-down year; found 'yes'
          action-values.csv|oversow,seedling kill,0,0,0,-,seedlings killed before sowing,inferred,,Nothing is sprayed out.|# left out|key: must have a row for seedling kill in action-values.csv; found 'oversow'
          action-values.csv|oversow,seedling kill|oversow,seed kill|value: must be one of:
          action-values.csv|oversow,sown seed,7,10,10,kg/ha|oversow,sown seed,7,10,10,lb/acre|unit: must be kg/ha for sown seed; found 'lb/acre'
          action-values.csv|oversow,sown seed|oversow,crop margin|crop margin must not be given
          action-values.csv|oversow,growth|oversew,growth|action: must be a key of actions.csv; found 'oversew'; did you mean 'oversow'?
          action-costs.csv|sowing year|some time|phase: must be one of: every year, run-down year, sowing year; found 'some time'
          action-costs.csv|sowing year,yes|sowing year,maybe|own_labour: must be one of: no, yes; found 'maybe'
          action-costs.csv|45,80,110|-45,80,110|low_per_ha: must be from 0 to 100000; found '-45'
          sources.csv|\\nafrc-1993,|\\nAFRC 1993,|key: must be small letters and digits with single hyphens; found 'AFRC 1993'
          feed-parameters.csv|evidence,source,doubt,note|evidence,source,doubt,remark|remark: is not a column of this table
          """)
  void load_withOneFault_refusesAllAndNamesIt(String file, String from, String to, String message)
      throws IOException {
    String unescapedFrom = from.replace("\\n", "\n");
    replace(
        file, unescapedFrom, to == null ? "" : Matcher.quoteReplacement(to.replace("\\n", "\n")));
    assertThat(faults(TablesLoader.from(base))).anySatisfy(m -> assertThat(m).contains(message));
  }

  @Test
  void load_withSeveralFaults_reportsThemTogetherInOrder() throws IOException {
    replace("cultivars.csv", "0.5,1.0,1.8", "0.5,x,1.8");
    replace("cultivars.csv", ",hard,memory,", ",stone,memory,");
    replace("districts.csv", "0,0,0,2,15", "0,0,0,2,y");
    assertThat(faults(TablesLoader.from(base)))
        .containsExactly(
            "tables/cultivars.csv:4: formononetin_likely_percent_dm: must be a number; found 'x'",
            "tables/cultivars.csv:5: hard_seed: must be one of: hard, moderate, soft; found 'stone'",
            "tables/districts.csv:4: may_kg_dm_per_ha_day: must be a number; found 'y'");
  }

  @Test
  void load_withFileMissing_isRefused() throws IOException {
    Files.delete(base.resolve("dose-response.csv"));
    assertThat(faults(TablesLoader.from(base)))
        .containsExactly("tables/dose-response.csv: must be there");
  }

  @Test
  void parameters_ofTheFourFiles_areReadByKey() throws IOException {
    Files.writeString(
        base.resolve("dose-response.csv"),
        heading("dose-response.csv")
            + "\ndose.test-share,leaf share,0.5,0.6,0.8,-,inferred,,judged\n");
    assertThat(TablesLoader.from(base).load().parameter("dose.test-share"))
        .satisfies(
            read -> {
              assertThat(read.name()).isEqualTo("leaf share");
              assertThat(read.range()).isEqualTo(Range.of(0.5, 0.6, 0.8));
              assertThat(read.setBy()).isEqualTo(SetBy.DEFAULT);
            });
  }

  @Test
  void parameters_withOneKeyInTwoFiles_areRefused() throws IOException {
    String row = "\nany.key,any,1,1,1,-,inferred,,judged\n";
    for (String file : List.of("dose-response.csv", "farm-defaults.csv")) {
      Files.writeString(base.resolve(file), heading(file) + row);
    }
    assertThat(faults(TablesLoader.from(base)))
        .containsExactly(
            "tables/farm-defaults.csv:2: key: must not stand in two parameter tables;"
                + " found 'any.key'");
  }

  @Test
  void parameter_notThere_isRefusedByName() {
    Tables tables = TablesLoader.standard().load();
    assertThatThrownBy(() -> tables.parameter("no.such"))
        .hasMessage("there is no parameter 'no.such' in the tables");
  }

  @Test
  void rows_inAnyOrder_giveTheSameTables() throws IOException {
    SplittableRandom random = new SplittableRandom(20260101);
    for (TableFile file : TableFile.values()) {
      List<String> lines = new ArrayList<>(Files.readAllLines(base.resolve(file.fileName())));
      lines.removeIf(line -> line.startsWith("#"));
      for (int i = lines.size() - 1; i > 1; i--) {
        int j = 1 + random.nextInt(i);
        lines.set(i, lines.set(j, lines.get(i)));
      }
      Files.writeString(base.resolve(file.fileName()), String.join("\n", lines));
    }
    Tables shuffled = TablesLoader.from(base).load();
    Tables standard = TablesLoader.standard().load();
    assertThat(shuffled.cultivars()).isEqualTo(standard.cultivars());
    assertThat(shuffled.districts()).isEqualTo(standard.districts());
    assertThat(shuffled.pastureQuality()).isEqualTo(standard.pastureQuality());
    assertThat(shuffled.supplements()).isEqualTo(standard.supplements());
    assertThat(shuffled.dryStock()).isEqualTo(standard.dryStock());
    assertThat(shuffled.parameters()).isEqualTo(standard.parameters());
    assertThat(shuffled.sources()).isEqualTo(standard.sources());
    assertThat(shuffled.actions().stream().map(TablesLoaderTest::withSortedCosts))
        .containsExactlyInAnyOrderElementsOf(
            standard.actions().stream().map(TablesLoaderTest::withSortedCosts).toList());
  }

  private static List<Object> withSortedCosts(Action action) {
    List<CostLine> costs =
        action.costs().stream().sorted(Comparator.comparing(CostLine::name)).toList();
    return List.of(
        action.key(),
        action.kind(),
        action.number(ActionNumber.SEED_SET),
        action.number(ActionNumber.SOWN_SEED),
        action.number(ActionNumber.CROP_MARGIN),
        costs);
  }
}
