package swardcase.intake;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import swardcase.check.FaultsException;
import swardcase.tables.TablesLoader;

class FarmFolderFaultsTest {

  @Test
  void folder_withFaultsInAllFiles_listsEachWithItsPlace() {
    Path folder = Path.of("src/test/resources/farms/faulty");

    FaultsException thrown =
        catchThrowableOfType(
            FaultsException.class, () -> FarmFolder.read(folder, TablesLoader.standard().load()));

    assertThat(thrown.getMessage().lines())
        .containsExactly(
            "farm.yaml:3: climate: must be one of: cool, hot dry summer; found 'warm'",
            "farm.yaml:4: growth: must be a district of the tables; found 'Kataning'; did you mean 'Katanning'?",
            "farm.yaml:7: mobs[1].ewes: must be a number without quotation marks; found '1200'",
            "farm.yaml:8: mobs[1].joining_start: must be a day such as 30 January or 2027-01-30; found '31 April'",
            "farm.yaml:9: mobs[1]: must be one of the known keys; found 'joining_weks'; did you mean 'joining_weeks'?",
            "farm.yaml:10: mobs[2].figures: must say whether these percentages are 'unaffected' or 'observed on these paddocks'",
            "farm.yaml:16: supplement.waste_percent: must be one number or three rising ones: [low, likely, high]; found '[20, 10, 5]'",
            "farm.yaml:18: finance.horizon_years: must be a number such as 1250 or 0.5; found '010'",
            "farm.yaml:19: finance.discount_rate_percent: must be from 0 to 100; found '700'",
            "farm.yaml:20: sow: must be a cultivar of the tables; found 'Narikup'; did you mean 'Narrikup'?",
            "farm.yaml:21: name: must be given once; found 'name'",
            "paddocks.csv:2: area_ha: must be more than zero and not above 100000; found '-4'",
            "paddocks.csv:3: clover_percent: must be from 0 to 100; found '130'",
            "paddocks.csv:4: waterlogged: must be one of: no, yes; found 'maybe'",
            "paddocks.csv:5: paddock: must not be given twice; it stands in line 2 already; found 'house'",
            "plants.csv:2: cultivar: must be in the table of cultivars; found 'Yarlop'; did you mean 'Yarloop'?",
            "plants.csv:3: paddock: must be a paddock of paddocks.csv; found 'Creak'; did you mean 'Creek'?",
            "plants.csv:4: plants: must be given, or percent in its place, but not both; found '10'",
            "plants.csv:6: percent: must not bring the paddock above 100 in all; found '40'");
  }
}
