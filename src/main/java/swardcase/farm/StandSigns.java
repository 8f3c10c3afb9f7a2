package swardcase.farm;

import java.util.Optional;
import java.util.OptionalDouble;
import swardcase.check.Check;

/**
 * What is known of a paddock that holds clover back whatever its cultivar. What nobody looked at is
 * empty, which is neither good nor poor.
 *
 * @param colwellPMgPerKg Colwell phosphorus, 0 to 10 cm, mg/kg
 * @param phosphorusBufferingIndex of the same sample
 * @param olsenPMgPerKg Olsen phosphorus, 0 to 10 cm, mg/kg; not beside Colwell
 * @param phCaCl2 of the topsoil, in calcium chloride
 * @param nodulesPerPlant pink nodules, mean of the plants that were dug up
 * @param mitesGood whether mites and fleas do no harm
 * @param rootsGood whether the roots are white and whole
 * @param wetGroundGood whether what is to be sown stands the wet ground
 */
public record StandSigns(
    OptionalDouble colwellPMgPerKg,
    OptionalDouble phosphorusBufferingIndex,
    OptionalDouble olsenPMgPerKg,
    OptionalDouble phCaCl2,
    OptionalDouble nodulesPerPlant,
    Optional<Boolean> mitesGood,
    Optional<Boolean> rootsGood,
    Optional<Boolean> wetGroundGood) {

  /** Checks that no number is below nothing, and that phosphorus is one test. */
  public StandSigns {
    Check.notNegative(colwellPMgPerKg.orElse(0), "Colwell phosphorus");
    Check.notNegative(phosphorusBufferingIndex.orElse(0), "phosphorus buffering index");
    Check.notNegative(olsenPMgPerKg.orElse(0), "Olsen phosphorus");
    Check.notNegative(phCaCl2.orElse(0), "pH");
    Check.notNegative(nodulesPerPlant.orElse(0), "nodules");
    Check.that(olsenPMgPerKg.isEmpty() || colwellPMgPerKg.isEmpty(), "phosphorus is one test");
  }
}
