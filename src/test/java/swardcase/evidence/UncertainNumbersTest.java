package swardcase.evidence;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import swardcase.chance.Range;

/** One doubt, one input: what two actions share is entered once, and its name says so. */
class UncertainNumbersTest {

  private static final Assumption SEED = dollars(40);

  private static Assumption dollars(double likely) {
    return Assumption.ofFarm("cost", Range.of(likely - 10, likely, likely + 10), "A$/ha");
  }

  @Test
  void addShared_sameNumberOfTwoActions_isOneInputThatNamesOneAndOthers() {
    UncertainNumbers inputs = new UncertainNumbers();
    int first = inputs.addShared(SEED, "cost of seed", "spray-fallow");
    int second = inputs.addShared(SEED, "cost of seed", "crop");
    int third = inputs.addShared(dollars(90), "cost of seed", "oversow");
    assertThat(second).isEqualTo(first).isNotEqualTo(third);
    assertThat(inputs.withShortNames().all())
        .extracting(Assumption::name)
        .containsExactly("cost of seed: spray-fallow, and others", "cost of seed: oversow");
  }

  @Test
  void addShared_sameNumberOfEveryAction_isNamedWithoutThem() {
    UncertainNumbers inputs = new UncertainNumbers();
    inputs.addShared(SEED, "cost of seed", "spray-fallow");
    inputs.addShared(SEED, "cost of seed", "crop");
    assertThat(inputs.withShortNames().get(0).name()).isEqualTo("cost of seed");
  }

  @Test
  void addOf_numberOfOnePaddock_belongsToItUntilItIsEnteredElsewhere() {
    UncertainNumbers inputs = new UncertainNumbers();
    int own = inputs.addOf(3, SEED);
    int farms = inputs.add(dollars(90));
    assertThat(inputs.addOf(3, SEED)).isEqualTo(own);
    assertThat(inputs.paddock(own)).isEqualTo(3);
    assertThat(inputs.paddock(farms)).isEqualTo(UncertainNumbers.WHOLE_FARM);
    assertThat(inputs.addOf(5, SEED)).isEqualTo(own);
    assertThat(inputs.paddock(own)).isEqualTo(UncertainNumbers.WHOLE_FARM);
  }

  @Test
  void addShared_nameThatHoldsAColon_isFoundByEachOfItsBeginnings() {
    UncertainNumbers inputs = new UncertainNumbers();
    int place = inputs.addShared(SEED, "cost of seed: clover", "crop");
    assertThat(inputs.addShared(SEED, "cost of seed: clover", "oversow")).isEqualTo(place);
    assertThat(inputs.addShared(SEED, "cost of seed", "oversow")).isEqualTo(place);
    assertThat(inputs.addShared(SEED, "cost", "oversow")).isNotEqualTo(place);
  }
}
