package swardcase.farm;

import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.DoubleStream;
import swardcase.check.Check;

/**
 * What is known of a paddock's soil and plants that holds clover back whatever its cultivar. What
 * nobody looked at is empty, which is neither good nor poor.
 *
 * @param colwellPMgPerKg Colwell phosphorus, 0 to 10 cm, mg/kg
 * @param phosphorusBufferingIndex of the same sample, 0 to 1,000 or more; only with Colwell
 * @param olsenPMgPerKg Olsen phosphorus, 0 to 10 cm, mg/kg; not beside Colwell
 * @param phCaCl2 of the topsoil, in calcium chloride
 * @param nodulesPerPlant pink nodules a plant, mean of the plants that were dug up
 * @param mitesGood whether mites and fleas are few; false if they do harm
 * @param rootsGood whether the roots are white and whole; false if they are rotten or short
 * @param wetGroundGood of ground that stands in water: whether what is to be sown there stands
 *     that; false if it does not
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

  /** Nobody has looked. */
  public static final StandSigns NONE =
      new StandSigns(
          OptionalDouble.empty(),
          OptionalDouble.empty(),
          OptionalDouble.empty(),
          OptionalDouble.empty(),
          OptionalDouble.empty(),
          Optional.empty(),
          Optional.empty(),
          Optional.empty());

  /** Checks that no number is below nothing, and which go together. */
  public StandSigns {
    DoubleStream.of(
            colwellPMgPerKg.orElse(0),
            phosphorusBufferingIndex.orElse(0),
            olsenPMgPerKg.orElse(0),
            phCaCl2.orElse(0),
            nodulesPerPlant.orElse(0))
        .forEach(value -> Check.that(value >= 0, "a sign of the stand must not be below 0"));
    Check.that(
        olsenPMgPerKg.isEmpty() || colwellPMgPerKg.isEmpty(), "soil phosphorus must be one test");
    Check.that(
        phosphorusBufferingIndex.isEmpty() || colwellPMgPerKg.isPresent(),
        "the phosphorus buffering index must come with Colwell phosphorus");
  }
}
