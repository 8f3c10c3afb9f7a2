package swardcase.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.TreeMap;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.DisabledOnOs;
import org.junit.jupiter.api.condition.EnabledIfSystemProperty;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;
import swardcase.folder.Inputs;
import swardcase.folder.WholeFiles;

/**
 * Kills runs while they write, and lets runs write the same files at a time. Takes minutes, so it
 * is asked for: {@code mvn test -Dtest=CrashTrialTest -Dkills=200}. What came of it is printed.
 */
@EnabledIfSystemProperty(named = "kills", matches = "[0-9]+")
@DisabledOnOs(OS.WINDOWS)
class CrashTrialTest {

  private static final int KILLS = Integer.getInteger("kills", 0);
  private static final int ROUNDS = 16;
  private static final int FILES = 3;
  private static final int SIZE = 100_000;
  private static final int MOST_WAIT_MILLIS = 1000;

  private final Random random = new Random(14);
  @TempDir private Path folder;
  private Path farm;

  @BeforeEach
  void writeFarm() throws IOException {
    farm = SmallFarm.write(folder.resolve("farm"));
  }

  /** Writes the same files again and again, every time with the next letter, until it is killed. */
  static final class Writer {

    private Writer() {}

    /** Takes the folder; prints a letter when the files are there for the first time. */
    public static void main(String[] arguments) throws IOException {
      for (int round = 0; ; round++) {
        String text = Character.toString('a' + round % 26).repeat(SIZE);
        try (WholeFiles files = new WholeFiles(Inputs.NONE)) {
          for (int i = 0; i < FILES; i++) {
            files.add(Path.of(arguments[0], "file-" + i), () -> text);
          }
          files.commit();
        }
        if (round == 0) {
          System.out.print("w");
          System.out.flush();
        }
      }
    }
  }

  @Test
  void files_ofARunKilledAtAnyMoment_areOldOrNewAndWhole() throws Exception {
    Path to = Files.createDirectory(folder.resolve("to"));
    Map<String, Integer> seen = new TreeMap<>();
    for (int kill = 0; kill < KILLS; kill++) {
      Process writer = OwnProcess.of(Writer.class, List.of(), List.of(to.toString())).start();
      assertThat(writer.getInputStream().read()).isEqualTo('w');
      TimeUnit.MICROSECONDS.sleep(random.nextInt(20_000));
      writer.destroyForcibly().waitFor();

      String letters = "";
      for (int i = 0; i < FILES; i++) {
        String text = Files.readString(to.resolve("file-" + i));
        assertThat(text).hasSize(SIZE).matches("(.)\\1*");
        letters += text.charAt(0);
      }
      int ahead = Math.floorMod(letters.charAt(0) - letters.charAt(FILES - 1), 26);
      assertThat(ahead).as("rounds between %s", letters).isBetween(0, 1);
      long left = temporaries(to);
      assertThat(left).isLessThanOrEqualTo(FILES);
      seen.merge(
          ahead == 1 ? "between two moves" : left > 0 ? "while writing" : "elsewhere",
          1,
          Integer::sum);
    }

    assertThat(Ran.command("decide", farm, "--json", to.resolve("r.json")).code()).isZero();

    assertThat(temporaries(to)).isZero();
    System.out.println(KILLS + " kills of a run that does nothing but write: " + seen);
  }

  @Test
  void sheets_ofTheProgramKilledAtAnyMoment_areOldOrNewAndWhole() throws Exception {
    Path old = decide("old", "2025-03-01");
    Path now = decide("new", "2026-03-01");
    List<String> names = new ArrayList<>();
    for (String name : Ran.below(now)) {
      if (name.contains(".") && Files.mismatch(old.resolve(name), now.resolve(name)) >= 0) {
        names.add(name);
      }
    }
    assertThat(names).contains("sheet.pdf", "result.json", "budget.xlsx", "csv/years.csv");
    Map<String, Integer> seen = new TreeMap<>();
    for (int kill = 0; kill < KILLS; kill++) {
      Path to = folder.resolve("to-" + kill);
      for (String name : names) {
        Files.createDirectories(to.resolve(name).getParent());
        Files.copy(old.resolve(name), to.resolve(name));
      }
      Process run = OwnProcess.of(List.of(), arguments(to, "2026-03-01")).start();
      while (run.isAlive() && temporaries(to) == 0) {
        TimeUnit.MICROSECONDS.sleep(200);
      }
      TimeUnit.MICROSECONDS.sleep(random.nextInt(1000 * MOST_WAIT_MILLIS));
      run.destroyForcibly().waitFor();

      int moved = 0;
      for (String name : names) {
        byte[] bytes = Files.readAllBytes(to.resolve(name));
        boolean isNew = Arrays.equals(bytes, Files.readAllBytes(now.resolve(name)));
        assertThat(isNew || Arrays.equals(bytes, Files.readAllBytes(old.resolve(name))))
            .as(name)
            .isTrue();
        moved += isNew ? 1 : 0;
      }
      String what = moved == 0 ? "all old" : moved == names.size() ? "all new" : "some new";
      seen.merge(what, 1, Integer::sum);
    }
    System.out.println(KILLS + " kills of decide, " + names.size() + " files: " + seen);
  }

  @Test
  void sheets_ofTwoRunsAtATime_areThoseOfOneOfThem() throws Exception {
    List<String> days = List.of("2025-03-01", "2026-03-01");
    List<Path> alone = List.of(decide("first", days.get(0)), decide("second", days.get(1)));
    List<String> names =
        Ran.below(alone.get(0)).stream().filter(name -> name.contains(".")).toList();
    int[] won = new int[2];
    for (int round = 0; round < ROUNDS; round++) {
      Path to = folder.resolve("round-" + round);
      List<Process> runs = new ArrayList<>();
      for (String day : days) {
        runs.add(OwnProcess.of(List.of(), arguments(to, day)).start());
      }
      for (Process run : runs) {
        try (InputStream out = run.getInputStream()) {
          out.readAllBytes();
        }
        assertThat(run.waitFor()).isZero();
      }
      for (String name : names) {
        byte[] bytes = Files.readAllBytes(to.resolve(name));
        boolean first = Arrays.equals(bytes, Files.readAllBytes(alone.get(0).resolve(name)));
        assertThat(first || Arrays.equals(bytes, Files.readAllBytes(alone.get(1).resolve(name))))
            .as(name)
            .isTrue();
        won[first ? 0 : 1]++;
      }
      assertThat(Ran.below(to)).filteredOn(name -> name.contains(".")).isEqualTo(names);
    }
    System.out.printf(
        "%d rounds of two runs, %d files each: %d of the first, %d of the second%n",
        ROUNDS, names.size(), won[0], won[1]);
  }

  private Path decide(String name, String day) throws Exception {
    Path to = folder.resolve(name);
    Ran ran = Ran.command(arguments(to, day).toArray());
    assertThat(ran.err()).isEmpty();
    return to;
  }

  private List<String> arguments(Path to, String day) {
    return List.of(
        "decide",
        farm.toString(),
        "--draws=100",
        "--date=" + day,
        "--pdf=" + to.resolve("sheet.pdf"),
        "--json=" + to.resolve("result.json"),
        "--xlsx=" + to.resolve("budget.xlsx"),
        "--csv=" + to.resolve("csv"));
  }

  /** How many files of runs stand in a folder or in those below it, their moves not yet made. */
  private static long temporaries(Path folder) {
    return Ran.below(folder).stream().filter(name -> name.endsWith(".part")).count();
  }
}
