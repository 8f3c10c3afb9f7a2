package swardcase.decision;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import swardcase.Answers;
import swardcase.RandomFarms;
import swardcase.chance.Sample;
import swardcase.draws.Alternatives;

/**
 * Swings and break-evens, which are read from a straight line through the draws, against plain
 * means of some of the draws. Four standard errors of these means are allowed.
 */
class CountedDrawsTest {

  private static final int DRAWS = 1000;
  private static final int NEAREST = 200;
  private static final double ERRORS = 4;

  private static List<Answers.Answer> answers;

  @BeforeAll
  static void decide() {
    answers =
        Stream.of("risky-farm", "northern-farm")
            .map(name -> Answers.of(name, RandomFarms.demo(name), 1, DRAWS))
            .toList();
  }

  private static double mean(double[] values, int[] draws) {
    return Sample.mean(IntStream.of(draws).mapToDouble(d -> values[d]).toArray());
  }

  private static double error(double[] values, int[] draws) {
    double[] of = IntStream.of(draws).mapToDouble(d -> values[d]).toArray();
    return Sample.standardDeviation(of) / Math.sqrt(of.length);
  }

  private static int[] inOrder(Comparator<Integer> order) {
    return IntStream.range(0, DRAWS).boxed().sorted(order).mapToInt(d -> d).toArray();
  }

  /** What the gain rises from the lower half of an input's draws to the upper half. */
  @Test
  void swings_areTheRiseFromTheLowerHalfOfTheDrawsToTheUpper() {
    for (Answers.Answer answer : answers) {
      double[] gain = answer.decision().simulation().npv(Alternatives.PLAN);
      assertThat(answer.howSure().byVarianceShare()).isNotEmpty();
      for (Unknown unknown : answer.howSure().byVarianceShare()) {
        double[] drawn = answer.decision().simulation().drawn(unknown.place());
        int[] order = inOrder(Comparator.comparingDouble(d -> drawn[d]));
        int[] low = Arrays.copyOf(order, DRAWS / 2);
        int[] high = Arrays.copyOfRange(order, DRAWS / 2, DRAWS);
        double byLine = unknown.line().at(mean(drawn, high)) - unknown.line().at(mean(drawn, low));
        double error = Math.hypot(error(gain, low), error(gain, high));
        assertThat(mean(gain, high) - mean(gain, low))
            .as(unknown.name())
            .isCloseTo(byLine, within(ERRORS * error));
      }
    }
  }

  /**
   * Among the draws nearest to a break-even value the gain is what the line says: about nothing.
   */
  @Test
  void breakEvens_areWhereTheGainOfTheDrawsNearByIsAboutNothing() {
    int checked = 0;
    for (Answers.Answer answer : answers) {
      for (BreakEvenValue of : answer.howSure().breakEvens()) {
        if (of.value().isEmpty()) {
          continue;
        }
        double value = of.value().getAsDouble();
        int place = answer.model().inputs().all().indexOf(of.input());
        double[] drawn = answer.decision().simulation().drawn(place);
        double[] gain =
            of.paddock() < 0
                ? answer.decision().simulation().npv(Alternatives.PLAN)
                : answer.decision().gain(of.paddock());
        int[] order = inOrder(Comparator.comparingDouble(d -> Math.abs(drawn[d] - value)));
        int[] near = Arrays.copyOf(order, NEAREST);
        double perUnit = Sample.mean(gain) / (Sample.mean(drawn) - value);
        double byLine = perUnit * (mean(drawn, near) - value);
        assertThat(mean(gain, near))
            .as(answer.name() + ", " + of.input().name() + " at " + value)
            .isCloseTo(byLine, within(ERRORS * error(gain, near)));
        checked++;
      }
    }
    assertThat(checked).isGreaterThan(1);
  }
}
