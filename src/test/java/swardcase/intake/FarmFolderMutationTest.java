package swardcase.intake;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.fail;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.SplittableRandom;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import swardcase.Damage;
import swardcase.check.FaultsException;
import swardcase.tables.Tables;
import swardcase.tables.TablesLoader;

/** Damages the demo farms at random places: the reader must read them or say what is wrong. */
class FarmFolderMutationTest {

  private static final Tables TABLES = TablesLoader.standard().load();

  /** A farm; {@code -Dmutants=10000} for a long run. */
  private static final int MUTANTS = Integer.getInteger("mutants", 1000);

  private static final String[] FILES = {"farm.yaml", "paddocks.csv", "plants.csv"};
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
      Files.write(folder.resolve(damaged), Damage.to(sound, random));
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
}
