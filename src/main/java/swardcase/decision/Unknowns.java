package swardcase.decision;

import java.util.Arrays;
import java.util.Comparator;
import java.util.DoubleSummaryStatistics;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;
import swardcase.chance.DrawnInformation;
import swardcase.chance.Payoffs;
import swardcase.chance.Range;
import swardcase.chance.Sample;
import swardcase.chance.SideBySide;
import swardcase.chance.StraightLine;
import swardcase.decision.Explanation.Mover;
import swardcase.draws.Simulation;
import swardcase.evidence.Assumption;
import swardcase.evidence.UncertainNumbers;

/**
 * The uncertain numbers that draws move, one for all that move together, with what each is worth
 * and what it moves.
 */
final class Unknowns {

  /** Numbers looked at for one paddock. */
  private static final int SETTLING = 8;

  private static final Comparator<Unknown> MOST_WORTH_KNOWING =
      Comparator.<Unknown>comparingDouble(unknown -> -unknown.value().value())
          .thenComparing(unknown -> -unknown.varianceShare())
          .thenComparing(Unknown::place);

  private final Simulation simulation;
  private final UncertainNumbers inputs;

  Unknowns(Simulation simulation) {
    this.simulation = simulation;
    inputs = simulation.draws().model().inputs();
  }

  /**
   * All of them, the one most worth knowing first.
   *
   * @param payoffs of the choices among which a known number would choose
   * @param gain the gain that they move, in each draw
   */
  List<Unknown> of(Payoffs payoffs, double[] gain) {
    List<Integer> places = spokesmen(gain);
    return SideBySide.of(places.stream())
        .map(j -> of(j, places.size(), payoffs, gain))
        .sorted(MOST_WORTH_KNOWING)
        .toList();
  }

  /** The one most worth knowing of the few that move the gain most, if that is more than luck. */
  Optional<Unknown> settling(Payoffs payoffs, double[] gain) {
    List<Integer> places = spokesmen(gain);
    return places.stream()
        .sorted(Comparator.comparingDouble(j -> -Sample.varianceShare(simulation.drawn(j), gain)))
        .limit(SETTLING)
        .map(j -> of(j, places.size(), payoffs, gain))
        .filter(Unknown::counts)
        .min(MOST_WORTH_KNOWING);
  }

  /**
   * Those that move a number of the draws, given in each draw, by more than luck would; the one
   * that moves it most first.
   */
  List<Mover> moving(double[] number) {
    DoubleSummaryStatistics reach = Arrays.stream(number).summaryStatistics();
    List<Integer> places = spokesmen(number);
    Map<Integer, StraightLine> lines = new LinkedHashMap<>();
    places.forEach(j -> lines.put(j, StraightLine.of(simulation.drawn(j), number)));
    return places.stream()
        .filter(j -> lines.get(j).differsFromNothing(places.size()))
        .sorted(Comparator.comparingDouble(j -> -lines.get(j).varianceShare()))
        .map(
            j -> {
              Assumption input = inputs.get(j);
              Range range = input.range();
              return new Mover(
                  inputs.doubt(j),
                  input,
                  within(reach, lines.get(j).at(range.low())),
                  within(reach, lines.get(j).at(range.high())));
            })
        .toList();
  }

  /** A line may lead to fewer lambs than none; no draw does. */
  private static double within(DoubleSummaryStatistics reach, double value) {
    return Math.max(reach.getMin(), Math.min(reach.getMax(), value));
  }

  private Unknown of(int j, int tried, Payoffs payoffs, double[] gain) {
    DrawnInformation value = payoffs.partial(simulation.drawn(j));
    StraightLine line = StraightLine.of(simulation.drawn(j), gain);
    return new Unknown(
        inputs.doubt(j),
        j,
        inputs.get(j),
        value,
        value.countsAmong(tried),
        line,
        line.differsFromNothing(tried));
  }

  /** Inputs that move together are one unknown; the one that moves the gain most stands for it. */
  private List<Integer> spokesmen(double[] gain) {
    double[] explained = new double[inputs.size()];
    int[] spokesman = new int[inputs.size()];
    for (int j = 0; j < explained.length; j++) {
      explained[j] = Sample.varianceShare(simulation.drawn(j), gain);
      int first = simulation.draws().dimension(j);
      if (j == first || explained[j] > explained[spokesman[first]]) {
        spokesman[first] = j;
      }
    }
    return IntStream.range(0, explained.length)
        .filter(j -> spokesman[simulation.draws().dimension(j)] == j)
        .filter(j -> !inputs.get(j).range().isExact())
        .boxed()
        .toList();
  }
}
