package swardcase.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import swardcase.sheet.PdfText;
import swardcase.sheet.Standards;

/**
 * The sheets of the demo farms and one budget case as text, line by line. They pin what is printed
 * today and are no evidence that it is right. After a change that is meant, read the difference and
 * write them anew: {@code mvn test -Dtest=GoldenSheetTest -Dgolden.write=true}.
 */
class GoldenSheetTest {

  private static final Path GOLDEN = Path.of("src/test/resources/golden");

  @TempDir private Path folder;

  @ParameterizedTest
  @CsvSource({
    "decide, mixed-farm, --pdf, 6",
    "decide, current-farm, --pdf, 6",
    "decide, northern-farm, --pdf, 6",
    "decide, one-mob-farm, --pdf, 6",
    "decide, recorded-farm, --pdf, 6",
    "decide, risky-farm, --pdf, 6",
    "decide, large-farm, --pdf, 10",
    "decide, one-mob-farm, --case, 40",
    "joining, mixed-farm, --pdf, 2",
    "joining, current-farm, --pdf, 2",
    "joining, northern-farm, --pdf, 2",
    "joining, one-mob-farm, --pdf, 2",
    "joining, risky-farm, --pdf, 2",
    "joining, large-farm, --pdf, 2"
  })
  void sheet_ofADemoFarm_readsAsBeforeAndKeepsToBothStandards(
      String command, String farm, String option, int mostPages) throws Exception {
    Path pdf = folder.resolve("sheet.pdf");
    Ran ran = Ran.command(command, "demo-data/" + farm, "--date", "2026-11-25", option, pdf);
    assertThat(ran.code()).isZero();
    byte[] bytes = Files.readAllBytes(pdf);
    Standards.assertKept(farm, bytes);
    assertThat(PdfText.pages(bytes)).isLessThanOrEqualTo(mostPages);
    List<String> lines = PdfText.of(bytes).lines().map(String::stripTrailing).toList();
    String kind = option.equals("--case") ? "case" : command;
    Path golden = GOLDEN.resolve(kind + "-" + farm + ".txt");
    if (Boolean.getBoolean("golden.write")) {
      Files.createDirectories(GOLDEN);
      Files.write(golden, lines);
    }
    List<String> before = Files.readAllLines(golden);
    for (int i = 0; i < Math.min(lines.size(), before.size()); i++) {
      assertThat(lines.get(i)).as("%s, line %d", golden, i + 1).isEqualTo(before.get(i));
    }
    assertThat(lines).hasSameSizeAs(before);
  }
}
