package swardcase.intake;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.text.Normalizer;
import java.util.function.UnaryOperator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import swardcase.farm.Farm;
import swardcase.tables.TablesLoader;

class FarmFolderVariantsTest {

  private static final Path DEMO = Path.of("demo-data");

  @TempDir private Path folder;

  @ParameterizedTest
  @ValueSource(strings = {"mixed-farm", "current-farm", "northern-farm"})
  void folder_withWindowsLineEndsAndByteOrderMarks_givesTheSameFarm(String demo)
      throws IOException {
    assertSame(demo, text -> "\uFEFF" + text.replace("\n", "\r\n"), UnaryOperator.identity());
  }

  @ParameterizedTest
  @ValueSource(strings = {"mixed-farm", "current-farm", "northern-farm"})
  void folder_withBlankLinesAtTheEnd_givesTheSameFarm(String demo) throws IOException {
    assertSame(demo, text -> text + "\n\n", text -> text + "\n \n\n");
  }

  @ParameterizedTest
  @ValueSource(strings = {"mixed-farm", "current-farm"})
  void tables_withSemicolonsAndDecimalCommas_giveTheSameFarm(String demo) throws IOException {
    assertSame(demo, UnaryOperator.identity(), text -> text.replace(',', ';').replace('.', ','));
  }

  @Test
  void tables_withCommasAndDecimalPoints_giveTheSameFarm() throws IOException {
    assertSame(
        "northern-farm",
        UnaryOperator.identity(),
        text -> text.replace(',', '.').replace(';', ','));
  }

  @Test
  void accents_storedAsLetterAndMark_giveTheSameFarm() throws IOException {
    assertSame(
        "northern-farm",
        UnaryOperator.identity(),
        text -> Normalizer.normalize(text, Normalizer.Form.NFD));
  }

  private void assertSame(
      String demo, UnaryOperator<String> changeAll, UnaryOperator<String> changeTables)
      throws IOException {
    for (String name : new String[] {"farm.yaml", "paddocks.csv", "plants.csv"}) {
      String text = Files.readString(DEMO.resolve(demo).resolve(name));
      String changed = name.endsWith(".csv") ? changeTables.apply(text) : text;
      Files.write(folder.resolve(name), changeAll.apply(changed).getBytes(StandardCharsets.UTF_8));
    }
    Farm expected = FarmFolder.read(DEMO.resolve(demo), TablesLoader.standard().load()).farm();

    assertThat(FarmFolder.read(folder, TablesLoader.standard().load()).farm()).isEqualTo(expected);
  }
}
