package swardcase.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import swardcase.tables.TablesLoader;

class TablesCommandTest {

  @TempDir private Path folder;

  @Test
  void tables_withoutAName_areListed() {
    Ran ran = Ran.command("tables");

    assertThat(ran.code()).isZero();
    assertThat(ran.out().lines()).containsExactlyElementsOf(TablesLoader.names());
  }

  @Test
  void table_eachByItsName_isPrintedWithItsSources() {
    for (String name : TablesLoader.names()) {
      Ran ran = Ran.command("tables", name);

      assertThat(ran.code()).as(name).isZero();
      assertThat(ran.err()).isEmpty();
      assertThat(ran.out().lines()).as(name).hasSizeGreaterThan(3);
    }
    assertThat(Ran.command("tables", "cultivars").out()).contains("Yarloop").contains("\nSources");
  }

  @Test
  void table_withRowsOfTheUser_marksThem() throws IOException {
    overrides("Katanning");

    Ran ran = Ran.command("tables", "districts", "--tables", folder);

    assertThat(ran.code()).isZero();
    assertThat(ran.out()).contains("Katanning (yours)").doesNotContain("Esperance (yours)");
  }

  @Test
  void table_withControlCharactersOfTheUser_printsNone() throws IOException {
    overrides("Rid\u001b[2Jge \u0007@|red x|@");

    Ran ran = Ran.command("tables", "districts", "--tables", folder);

    assertThat(ran.out().replaceAll("\\R", "")).doesNotContainPattern("\\p{Cntrl}");
    if (ran.code() == ExitCodes.DONE) {
      assertThat(ran.out()).contains("@|red x|@ (yours)");
    }
  }

  @Test
  void tables_numberThatNoCalculatorCanBear_isTheUsersAndIsSaidSo() throws IOException {
    Files.writeString(
        folder.resolve("feed-parameters.csv"),
        """
        key,name,low,likely,high,unit,evidence,source,doubt,note
        feed.grazing-terrain,terrain,0.9,0.9,0.9,-,inferred,,,mine
        """);

    Ran ran = Ran.command("decide", "demo-data/current-farm", "--tables", folder);

    assertThat(ran.code()).isEqualTo(ExitCodes.BAD_INPUT);
    assertThat(ran.err())
        .contains("own tables", "terrain must be from 1 to 2", "Nothing was written.")
        .doesNotContain("fault of its own");
  }

  @Test
  void tables_folderThatIsNotThere_isAFault() {
    Ran ran = Ran.command("tables", "districts", "--tables", folder.resolve("none"));

    assertThat(ran.code()).isEqualTo(ExitCodes.BAD_INPUT);
    assertThat(ran.err()).contains("none").contains("Nothing was written.");
  }

  private void overrides(String district) throws IOException {
    String row =
        Files.readAllLines(Path.of("tables/districts.csv")).stream()
            .filter(line -> line.startsWith("Katanning,"))
            .findFirst()
            .orElseThrow();
    String heading =
        Files.readAllLines(Path.of("tables/districts.csv")).stream()
            .filter(line -> line.startsWith("name,"))
            .findFirst()
            .orElseThrow();
    Files.writeString(
        folder.resolve("districts.csv"), heading + "\n" + row.replace("Katanning", district));
  }
}
