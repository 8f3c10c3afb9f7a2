package swardcase.intake;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.fail;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.SplittableRandom;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import swardcase.check.FaultsException;
import swardcase.tables.Tables;
import swardcase.tables.TablesLoader;

/** Damages the demo farms at random places: the reader must read them or say what is wrong. */
class FarmFolderMutationTest {

  private static final Tables TABLES = TablesLoader.standard().load();
  private static final int MUTANTS = 250;
  private static final String[] FILES = {"farm.yaml", "paddocks.csv", "plants.csv"};
  private static final String[] PIECES = {
    "",
    "\n",
    "\"",
    "'",
    ":",
    "- ",
    "[",
    "]",
    "{",
    "}",
    "&a ",
    "*a",
    "!!int ",
    "---\n",
    "#",
    ",",
    ";",
    "\t",
    "-1",
    "1e400",
    "NaN",
    "null",
    "~",
    "yes",
    "0",
    "|",
    ">",
    "%",
    "@",
    "\u0000",
    "\u0085",
    "\uFEFF",
    "\uD83D\uDC11",
    "? ",
    "<<",
    "unidentified",
    "9999999999999999999"
  };

  @TempDir private Path folder;

  @ParameterizedTest
  @ValueSource(strings = {"mixed-farm", "current-farm", "northern-farm"})
  void folder_damagedAnywhere_isReadOrRefusedWithPlaces(String demo) throws IOException {
    SplittableRandom random = new SplittableRandom(20260101);
    for (String file : FILES) {
      Files.copy(Path.of("demo-data", demo, file), folder.resolve(file));
    }
    int refused = 0;
    for (int mutant = 0; mutant < MUTANTS; mutant++) {
      String damaged = FILES[random.nextInt(FILES.length)];
      byte[] sound = Files.readAllBytes(Path.of("demo-data", demo, damaged));
      Files.write(folder.resolve(damaged), damage(sound, random));
      try {
        assertThat(FarmFolder.read(folder, TABLES).farm().paddocks()).isNotEmpty();
      } catch (FaultsException faults) {
        refused++;
        assertThat(faults.faults()).allMatch(fault -> fault.line() >= 0 && fault.line() < 1000);
      } catch (RuntimeException other) {
        fail("mutant " + mutant + " of " + demo + "/" + damaged, other);
      }
      Files.write(folder.resolve(damaged), sound);
    }
    assertThat(refused).isBetween(MUTANTS / 5, MUTANTS - 1);
  }

  private static byte[] damage(byte[] bytes, SplittableRandom random) throws IOException {
    byte[] changed = bytes;
    for (int times = 1 + random.nextInt(3); times > 0; times--) {
      int at = random.nextInt(changed.length + 1);
      int to = Math.min(changed.length, at + random.nextInt(8));
      ByteArrayOutputStream out = new ByteArrayOutputStream();
      out.write(changed, 0, at);
      switch (random.nextInt(6)) {
        case 0 -> out.write(random.nextInt(256));
        case 1 -> out.write(changed, Math.max(0, at - 40), Math.min(40, at));
        case 2 -> to = random.nextInt(4) == 0 ? changed.length : to;
        default ->
            out.write(PIECES[random.nextInt(PIECES.length)].getBytes(StandardCharsets.UTF_8));
      }
      out.write(changed, to, changed.length - to);
      changed = Arrays.copyOf(out.toByteArray(), out.size());
    }
    return changed;
  }
}
