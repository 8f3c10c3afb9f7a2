package swardcase.evaluation;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.EnabledIfSystemProperty;
import org.junit.jupiter.api.io.TempDir;
import swardcase.decision.Decision;
import swardcase.intake.FarmFolder;
import swardcase.outcome.FarmModel;
import swardcase.tables.Tables;
import swardcase.tables.TablesLoader;

/**
 * What each lever moves: the demonstration farms are decided again with its change of the tables.
 * Takes some minutes; {@code mvn -q test -Dtest=MovesTest -Dmoves=true} writes the file that the
 * published checks read.
 */
class MovesTest {

  @TempDir private Path work;

  @Test
  @EnabledIfSystemProperty(named = "moves", matches = "true")
  void levers_onTheDemonstrationFarms_areWrittenDown() throws IOException {
    StringBuilder text =
        new StringBuilder(
            """
            # Written by mvn -q test -Dtest=MovesTest -Dmoves=true. 'planned_otherwise': paddocks for which something else is planned than with the tables as they are.
            # 'gain': mean gain of the plan in the draws, money, to two digits; the lever without a name is the tables as they are.
            lever,farm,planned_otherwise,gain
            """);
    for (String farm : Lever.FARMS) {
      Decision base = decide(farm, TablesLoader.standard().load());
      append(text, "", farm, 0, base);
      for (Lever lever : Lever.all()) {
        Path folder = work.resolve(farm + "-" + lever.name());
        lever.write(folder);
        Decision then = decide(farm, TablesLoader.standard().with(folder).load());
        append(text, lever.name(), farm, otherwise(base, then), then);
      }
    }
    Files.writeString(Lever.MOVES, text, StandardCharsets.UTF_8);
  }

  private static Decision decide(String farm, Tables tables) {
    return Decision.of(
        new FarmModel(FarmFolder.read(Path.of("demo-data", farm), tables).farm(), tables));
  }

  private static long otherwise(Decision base, Decision then) {
    return IntStream.range(0, base.plan().paddocks())
        .filter(i -> base.plan().action(i) != then.plan().action(i))
        .count();
  }

  private static void append(
      StringBuilder text, String lever, String farm, long otherwise, Decision decision) {
    double gain = decision.gain().drawn().mean();
    text.append("%s,%s,%d,%s\n".formatted(lever, farm, otherwise, twoDigits(gain)));
  }

  private static String twoDigits(double money) {
    double unit = Math.pow(10, Math.max(0, Math.floor(Math.log10(Math.abs(money) + 1)) - 1));
    return String.format(Locale.ROOT, "%.0f", Math.rint(money / unit) * unit + 0d);
  }

  /** Rows that levers name are in the tables, which take the changed values. */
  @Test
  void levers_ofTheFile_areTakenByTheTables() throws IOException {
    for (Lever lever : Lever.all()) {
      Path folder = Files.createDirectory(work.resolve(lever.name()));
      lever.write(folder);
      assertThat(TablesLoader.standard().with(folder).load().overridden())
          .as(lever.name())
          .hasSizeGreaterThanOrEqualTo(lever.changes().size());
    }
  }

  /** Every lever was tried on every farm, so that no check is left without what it would change. */
  @Test
  void levers_ofTheFile_haveBeenTriedOnEveryFarm() {
    for (Lever lever : Lever.all()) {
      assertThat(
              PublishedRows.rows(Lever.MOVES).stream()
                  .filter(move -> move.get("lever").equals(lever.name()))
                  .map(move -> move.get("farm")))
          .as(lever.name())
          .containsExactlyElementsOf(Lever.FARMS);
    }
  }
}
