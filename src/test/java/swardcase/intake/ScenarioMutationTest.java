package swardcase.intake;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.fail;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import swardcase.Damage;
import swardcase.check.FaultsException;
import swardcase.tables.Tables;
import swardcase.tables.TablesLoader;

/** Damages a scenario file at random places: it must be read, or refused with a place in it. */
class ScenarioMutationTest {

  private static final Tables TABLES = TablesLoader.standard().load();
  private static final Path FARM = Path.of("demo-data/mixed-farm");
  private static final Path SOUND = Path.of("demo-data/mixed-scenarios.yaml");

  /** {@code -Dmutants=10000} for a long run. */
  private static final int MUTANTS = Integer.getInteger("mutants", 500);

  @TempDir private Path folder;

  @Test
  void file_damagedAnywhere_isReadOrRefusedWithItsPlace() throws IOException {
    SplittableRandom random = new SplittableRandom(20260102);
    byte[] sound = Files.readAllBytes(SOUND);
    Path file = folder.resolve("what-if.yaml");
    int refused = 0;
    for (int mutant = 0; mutant < MUTANTS; mutant++) {
      Files.write(file, Damage.to(sound, random));
      try {
        for (Scenario scenario : ScenarioFile.read(file)) {
          assertThat(FarmFolder.read(FARM, TABLES, scenario).farm().paddocks()).hasSize(12);
        }
      } catch (FaultsException faults) {
        refused++;
        assertThat(faults.faults())
            .allMatch(fault -> fault.file().equals(file.toString()))
            .allMatch(fault -> fault.line() >= 0 && fault.line() < 1000);
      } catch (RuntimeException other) {
        fail("mutant " + mutant, other);
      }
    }
    assertThat(refused).isBetween(MUTANTS / 5, MUTANTS - 1);
  }
}
