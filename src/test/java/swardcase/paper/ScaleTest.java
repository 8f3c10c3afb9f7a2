package swardcase.paper;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import swardcase.chance.Drawn;

class ScaleTest {

  @Test
  void ticks_areRoundAndWithinTheScale() {
    assertThat(new Scale(-42_100, 108_600, 0, 100).ticks(5))
        .containsExactly(0.0, 50_000.0, 100_000.0);
    assertThat(new Scale(0, 4_100, 0, 100).ticks(5))
        .containsExactly(0.0, 1_000.0, 2_000.0, 3_000.0, 4_000.0);
  }

  @Test
  void scale_overRanges_holdsZeroAndEveryEnd() {
    Scale scale = Scale.over(Stream.of(Drawn.of(6, 5, 7), Drawn.of(2, 1, 3)), 10, 80);
    assertThat(scale.at(0)).isEqualTo(10);
    assertThat(scale.at(7)).isEqualTo(80);
    assertThat(scale.at(3.5)).isEqualTo(45);
  }

  @Test
  void scale_ofNothing_stillHasPlaces() {
    Scale scale = Scale.over(Stream.empty(), 10, 80);
    assertThat(scale.at(0)).isEqualTo(10);
    assertThat(scale.ticks(5)).isNotEmpty();
  }
}
