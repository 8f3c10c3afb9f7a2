package swardcase.cli;

import static java.nio.file.StandardOpenOption.CREATE;
import static java.nio.file.StandardOpenOption.WRITE;
import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.UUID;

/** What the program makes of the demo farms, once a build for all tests that read it. */
public final class DemoSheets {

  static final List<String> FARMS =
      List.of(
          "current-farm",
          "large-farm",
          "mixed-farm",
          "northern-farm",
          "one-mob-farm",
          "recorded-farm",
          "risky-farm");

  /** The build these tests belong to: its processes share what one of them has made. */
  private static final String BUILD =
      System.getProperty("build.time", UUID.randomUUID().toString());

  private DemoSheets() {}

  /** The short sheet. */
  static byte[] sheet(String farm) throws IOException {
    return Files.readAllBytes(decided(farm).resolve("sheet.pdf"));
  }

  /** The budget case. */
  static byte[] budget(String farm) throws IOException {
    return Files.readAllBytes(decided(farm).resolve("case.pdf"));
  }

  /**
   * Where what {@code decide} makes of a farm by its usual draws stands: sheet.pdf, case.pdf,
   * result.json, budget.xlsx, tables, and said.txt as printed.
   */
  public static Path decided(String farm) throws IOException {
    Path to = Path.of("target/demo-farms/decide", farm);
    return made(
        to,
        "decide",
        "demo-data/" + farm,
        "--date",
        "2026-11-25",
        "--pdf",
        to.resolve("sheet.pdf"),
        "--case",
        to.resolve("case.pdf"),
        "--prepared-by",
        "A. Nobody",
        "--json",
        to.resolve("result.json"),
        "--xlsx",
        to.resolve("budget.xlsx"),
        "--csv",
        to.resolve("tables"));
  }

  /** The same of {@code joining}: sheet.pdf, result.json and said.txt. */
  static Path joined(String farm) throws IOException {
    Path to = Path.of("target/demo-farms/joining", farm);
    return made(
        to,
        "joining",
        "demo-data/" + farm,
        "--date",
        "2026-11-25",
        "--pdf",
        to.resolve("sheet.pdf"),
        "--json",
        to.resolve("result.json"));
  }

  private static synchronized Path made(Path to, Object... command) throws IOException {
    Path build = Files.createDirectories(to).resolve("build.txt");
    try (FileChannel one = FileChannel.open(to.resolve("lock"), CREATE, WRITE)) {
      one.lock();
      if (!Files.exists(build) || !Files.readString(build).equals(BUILD)) {
        Ran ran = Ran.command(command);
        assertThat(ran.code()).as(ran.err()).isZero();
        Files.writeString(to.resolve("said.txt"), ran.out());
        Files.writeString(build, BUILD);
      }
    }
    return to;
  }
}
