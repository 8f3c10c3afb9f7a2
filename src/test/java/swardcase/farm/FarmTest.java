package swardcase.farm;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import swardcase.FarmCopy;
import swardcase.RandomFarms;

class FarmTest {

  private static List<String> allowed(Farm farm, boolean arable) {
    Paddock paddock =
        farm.paddocks().stream().filter(p -> p.arable() == arable).findFirst().orElseThrow();
    return farm.actions().stream()
        .filter(action -> farm.allows(paddock, action))
        .map(Action::key)
        .toList();
  }

  /** Seed is spread only where it cannot be drilled in; what is drilled needs ground for it. */
  @Test
  void actions_onArableGroundAndOther_areThoseThatTheGroundLets() {
    Farm farm = RandomFarms.demo("mixed-farm");
    assertThat(allowed(farm, false)).containsExactly("keep", "broadcast");
    assertThat(allowed(farm, true))
        .containsExactly("keep", "thin", "oversow", "spray-fallow", "crop-1", "crop-2", "crop-3");
    List<Action> noDrill =
        farm.actions().stream().filter(action -> !action.key().equals("oversow")).toList();
    assertThat(allowed(FarmCopy.of(farm).actions(noDrill).build(), true)).contains("broadcast");
  }
}
