package swardcase.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
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
    "decide, mixed-farm, 6",
    "decide, current-farm, 6",
    "decide, northern-farm, 6",
    "decide, one-mob-farm, 6",
    "decide, recorded-farm, 6",
    "decide, risky-farm, 6",
    "decide, large-farm, 10",
    "case, one-mob-farm, 40",
    "joining, mixed-farm, 2",
    "joining, current-farm, 2",
    "joining, northern-farm, 2",
    "joining, one-mob-farm, 2",
    "joining, risky-farm, 2",
    "joining, large-farm, 2"
  })
  void sheet_ofADemoFarm_readsAsBeforeAndKeepsToBothStandards(
      String kind, String farm, int mostPages) throws Exception {
    byte[] bytes =
        switch (kind) {
          case "decide" -> DemoSheets.sheet(farm);
          case "case" -> DemoSheets.budget(farm);
          default -> joining(farm);
        };
    Standards.assertKept(farm, bytes);
    assertThat(PdfText.pages(bytes)).isLessThanOrEqualTo(mostPages);
    List<String> lines = PdfText.of(bytes).lines().map(String::stripTrailing).toList();
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

  private byte[] joining(String farm) throws IOException {
    Path pdf = folder.resolve("joining.pdf");
    Ran ran = Ran.command("joining", "demo-data/" + farm, "--date", "2026-11-25", "--pdf", pdf);
    assertThat(ran.code()).isZero();
    return Files.readAllBytes(pdf);
  }
}
