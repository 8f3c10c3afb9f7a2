package swardcase.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Whatever {@code check} passes, every other command answers. {@code -Dodd.farms=1000} tries more.
 */
class EveryCommandAnswersTest {

  private static final int FARMS = Integer.getInteger("odd.farms", 12);

  @TempDir private Path folder;

  @Test
  void farms_thatCheckPasses_areAnsweredByEveryCommand() throws IOException {
    SplittableRandom random = new SplittableRandom(Integer.getInteger("odd.seed", 14));
    Path passed = SmallFarm.write(folder.resolve("first"));
    int refused = 0;
    for (int farm = 0; farm < FARMS; farm++) {
      Path odd = OddFarms.write(folder.resolve("farm-" + farm), random);
      Ran check = Ran.command("check", odd);
      if (check.code() == ExitCodes.BAD_INPUT) {
        assertThat(check.err()).as(texts(odd)).contains("Nothing was written.");
        refused++;
        continue;
      }
      assertAnswers(odd, "check");
      assertAnswers(odd, "sampling", "--draws", 100);
      assertAnswers(odd, "joining", "--draws", 100);
      assertAnswers(odd, "explain", "plan-gain", "--draws", 100);
      assertAnswers(odd, "explain", "oestrogen", "--paddock", "P0", "--draws", 100);
      assertAnswers(odd, "decide", "--draws", 100, "--pdf", folder.resolve("sheet.pdf"));
      assertAnswers(odd, "compare", passed, "--draws", 100);
      passed = odd;
    }
    assertThat(refused).isLessThan(FARMS / 2);
  }

  private static void assertAnswers(Path farm, String command, Object... more) throws IOException {
    Object[] arguments = new Object[more.length + 2];
    arguments[0] = command;
    arguments[1] = farm;
    System.arraycopy(more, 0, arguments, 2, more.length);
    Ran ran = Ran.command(arguments);
    assertThat(ran.code()).as("%s: %s%n%s", command, ran.err(), texts(farm)).isZero();
    assertThat(ran.out()).isNotBlank();
  }

  private static String texts(Path farm) throws IOException {
    return Files.readString(farm.resolve("farm.yaml"))
        + Files.readString(farm.resolve("paddocks.csv"))
        + Files.readString(farm.resolve("plants.csv"));
  }
}
