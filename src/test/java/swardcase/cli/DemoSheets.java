package swardcase.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** Sheets and cases of the demo farms, each decided about once for all tests that read them. */
final class DemoSheets {

  static final List<String> FARMS =
      List.of(
          "current-farm",
          "large-farm",
          "mixed-farm",
          "northern-farm",
          "one-mob-farm",
          "recorded-farm",
          "risky-farm");

  private static final Map<String, byte[]> MADE = new HashMap<>();

  private DemoSheets() {}

  /** The short sheet. */
  static byte[] sheet(String farm) throws IOException {
    return made(farm, "sheet");
  }

  /** The budget case. */
  static byte[] budget(String farm) throws IOException {
    return made(farm, "case");
  }

  private static synchronized byte[] made(String farm, String kind) throws IOException {
    if (!MADE.containsKey(farm + kind)) {
      Path folder = Files.createTempDirectory(Path.of("target"), "sheets");
      Path sheet = folder.resolve("sheet.pdf");
      Path budget = folder.resolve("case.pdf");
      Ran ran =
          Ran.command(
              "decide",
              "demo-data/" + farm,
              "--date",
              "2026-11-25",
              "--pdf",
              sheet,
              "--case",
              budget,
              "--prepared-by",
              "A. Nobody");
      assertThat(ran.code()).isZero();
      MADE.put(farm + "sheet", Files.readAllBytes(sheet));
      MADE.put(farm + "case", Files.readAllBytes(budget));
    }
    return MADE.get(farm + kind);
  }
}
