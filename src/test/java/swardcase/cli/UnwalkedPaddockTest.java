package swardcase.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Of a paddock nobody walked nothing is said to have been found. */
class UnwalkedPaddockTest {

  private static final Path FARM = Path.of("demo-data/current-farm");

  @TempDir private Path folder;

  @Test
  void reason_ofAnUnwalkedPaddock_saysThatNobodyLooked() throws IOException {
    for (String file : List.of("farm.yaml", "paddocks.csv")) {
      Files.copy(FARM.resolve(file), folder.resolve(file));
    }
    Files.write(
        folder.resolve("plants.csv"),
        Files.readAllLines(FARM.resolve("plants.csv")).stream()
            .filter(line -> !line.startsWith("Ridge,"))
            .toList());
    String said = decide(folder);
    String reasonsAsWalked = decide(FARM);
    assertThat(count(reasonsAsWalked, "No old clover is known in it")).isEqualTo(5);
    assertThat(count(reasonsAsWalked, "Nobody has looked at its clover")).isZero();
    assertThat(count(said, "No old clover is known in it")).isEqualTo(4);
    assertThat(count(said, "Nobody has looked at its clover")).isEqualTo(1);
    assertThat(said).doesNotContain("% of its clover is old");
  }

  @Test
  void explanation_ofItsOldShare_isSaidToBeAssumed() {
    Ran ran =
        Ran.command(
            "explain",
            Path.of("demo-data/mixed-farm"),
            "old-share",
            "--paddock=Corner",
            "--draws=100");

    assertThat(ran.out())
        .contains("old cultivars, share of the clover, Corner, assumed")
        .contains("nobody has looked");
  }

  private static int count(String text, String words) {
    return text.split(words, -1).length - 1;
  }

  private static String decide(Path farm) {
    Ran ran = Ran.command("decide", farm, "--date=2026-11-25", "--draws=100");
    assertThat(ran.code()).as(ran.err()).isZero();
    return ran.out().replaceAll("\\s+", " ");
  }
}
