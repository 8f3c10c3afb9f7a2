package swardcase.intake;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.fail;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import swardcase.Damage;
import swardcase.check.FaultsException;
import swardcase.tables.Tables;
import swardcase.tables.TablesLoader;

/** Damages a farm document at random places: it must be read, or refused under its name. */
class FarmDocumentMutationTest {

  private static final Tables TABLES = TablesLoader.standard().load();
  private static final String SOUND =
      """
      {"farm": {"name": "A", "growth": "Katanning", "price_date": "2026-10-01",
       "mobs": [{"name": "ewes", "ewes": 300, "joining_start": "30 January"}],
       "prices": {"net_value_per_lamb": [60, 105, 170]},
       "actions": {"crop-1": {"considered": false}}, "sow": "Narrikup"},
       "paddocks": [{"paddock": "Hill", "area_ha": 30.5, "clover_percent": 40, "arable": true},
        {"paddock": "Flat", "area_ha": 2e1, "clover_percent": null, "use": "ewes"}],
       "plants": [{"paddock": "Hill", "cultivar": "Geraldton", "plants": 40}]}""";

  /** {@code -Dmutants=10000} for a long run. */
  private static final int MUTANTS = Integer.getInteger("mutants", 1000);

  @Test
  void document_soundOne_isRead() {
    assertThat(FarmDocument.read("line 3", SOUND, TABLES).farm().areaHa()).isEqualTo(50.5);
  }

  @Test
  void document_damagedAnywhere_isReadOrRefusedUnderItsName() throws IOException {
    SplittableRandom random = new SplittableRandom(20260103);
    byte[] sound = SOUND.getBytes(StandardCharsets.UTF_8);
    int refused = 0;
    for (int mutant = 0; mutant < MUTANTS; mutant++) {
      String damaged = new String(Damage.to(sound, random), StandardCharsets.UTF_8);
      try {
        assertThat(FarmDocument.read("line 3", damaged, TABLES).farm().paddocks()).isNotEmpty();
      } catch (FaultsException faults) {
        refused++;
        assertThat(faults.faults()).allMatch(fault -> fault.file().startsWith("line 3"));
      } catch (RuntimeException other) {
        fail("mutant " + mutant + ": " + damaged, other);
      }
    }
    assertThat(refused).isBetween(MUTANTS / 5, MUTANTS - 1);
  }
}
