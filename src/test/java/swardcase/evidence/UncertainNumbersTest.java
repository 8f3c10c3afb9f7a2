package swardcase.evidence;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.junit.jupiter.api.Test;
import swardcase.chance.Range;

/** One doubt, one number: what two actions share is entered once, and its name says so. */
class UncertainNumbersTest {

  private static final String DOUBT = "cost of seed";
  private static final Assumption SEED = dollars(40);

  private static Assumption dollars(double likely) {
    return Assumption.ofFarm("cost", Range.of(likely - 10, likely, likely + 10), "A$/ha")
        .withDoubt(DOUBT);
  }

  private final UncertainNumbers.Builder builder = new UncertainNumbers.Builder();

  @Test
  void addOfAction_sameNumberOfTwoActions_isOnePlaceThatNamesOneAndOthers() {
    builder.addOfAction("action.a.seed", "spray-fallow", SEED.named("one name"));
    builder.addOfAction("action.b.seed", "crop", SEED.named("another name"));
    builder.addOfAction("action.c.seed", "oversow", dollars(90));
    UncertainNumbers numbers = builder.build();
    int first = numbers.place("action.a.seed");
    assertThat(numbers.place("action.b.seed")).isEqualTo(first);
    assertThat(numbers.place("action.c.seed")).isNotEqualTo(first);
    assertThat(numbers.all())
        .extracting(Assumption::name)
        .containsExactly("cost of seed: spray-fallow, and others", "cost of seed: oversow");
    assertThat(numbers.doubt(0)).isEqualTo(numbers.doubt(1)).isEqualTo(DOUBT);
  }

  @Test
  void addOfAction_sameNumberOfEveryAction_isNamedWithoutThem() {
    builder.addOfAction("action.a.seed", "spray-fallow", SEED);
    builder.addOfAction("action.b.seed", "crop", SEED);
    assertThat(builder.build().all()).extracting(Assumption::name).containsExactly(DOUBT);
  }

  @Test
  void addOfAction_equalNumbersOfTwoDoubts_areTwo() {
    builder.addOfAction("action.a.seed", "crop", SEED);
    builder.addOfAction("action.a.lime", "crop", SEED.withDoubt("cost of lime"));
    assertThat(builder.build().size()).isEqualTo(2);
  }

  @Test
  void addOfAction_numberWithoutADoubt_standsUnderItsOwnName() {
    UncertainNumbers numbers =
        builder.addOfAction("action.a.seed", "crop", SEED.withDoubt("")).build();
    assertThat(numbers.doubt(0)).isEqualTo(SEED.name());
  }

  @Test
  void add_keyThatIsThere_isNotEnteredAgain() {
    builder.addOf(3, "paddock.Long.clover-share", SEED.named("clover"));
    builder.add("price.lamb", dollars(90));
    builder.addOf(3, "paddock.Long.clover-share", dollars(1));
    UncertainNumbers numbers = builder.build();
    assertThat(numbers.size()).isEqualTo(2);
    int own = numbers.place("paddock.Long.clover-share");
    assertThat(numbers.get(own).likely()).isEqualTo(40);
    assertThat(numbers.isOf(3, own)).isTrue();
    assertThat(numbers.paddock(numbers.place("price.lamb"))).isEqualTo(UncertainNumbers.WHOLE_FARM);
    assertThat(numbers.doubt(own)).isEqualTo("clover");
    assertThat(numbers.likely()).containsExactly(40, 90);
  }

  @Test
  void place_ofAnUnknownKey_isRefusedWithTheKey() {
    UncertainNumbers numbers = builder.add("price.lamb", SEED).build();
    assertThat(numbers.find("price.lambs")).isEmpty();
    assertThatThrownBy(() -> numbers.place("price.lambs"))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessage("no uncertain number has the key price.lambs");
  }
}
