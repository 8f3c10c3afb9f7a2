package swardcase.decision;

import java.util.Arrays;
import java.util.Comparator;
import java.util.DoubleSummaryStatistics;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.IntStream;
import swardcase.chance.Learnt;
import swardcase.chance.Payoffs;
import swardcase.chance.Range;
import swardcase.chance.Sample;
import swardcase.chance.SideBySide;
import swardcase.chance.StraightLine;
import swardcase.decision.Explanation.Mover;
import swardcase.draws.Simulation;
import swardcase.evidence.Assumption;
import swardcase.evidence.UncertainNumbers;
import swardcase.tables.ResponseStory;

/**
 * The uncertain numbers that draws move, one for all that move together, with what each is worth
 * and what it moves.
 */
final class Unknowns {

  /** Numbers looked at for one paddock. */
  private static final int SETTLING = 8;

  /** Draws that a straight line needs at least. */
  private static final int LEAST_OF_A_LINE = 3;

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
    Map<Integer, StraightLine> lines = spokesmen(gain);
    return SideBySide.of(lines.keySet().stream())
        .map(j -> of(j, lines, payoffs, gain))
        .sorted(MOST_WORTH_KNOWING)
        .toList();
  }

  /**
   * The one most worth knowing of the few that move the gain of a paddock most, if that is more
   * than luck.
   *
   * @param beside places of numbers that have nothing to do with the paddock
   */
  Optional<Unknown> settling(int paddock, Payoffs payoffs, double[] gain, Set<Integer> beside) {
    Map<Integer, StraightLine> lines = spokesmen(gain);
    return lines.keySet().stream()
        .filter(j -> !beside.contains(j))
        .filter(j -> inputs.isOf(paddock, j) || inputs.isOf(UncertainNumbers.WHOLE_FARM, j))
        .sorted(Comparator.comparingDouble(j -> -lines.get(j).varianceShare()))
        .limit(SETTLING)
        .map(j -> of(j, lines, payoffs, gain))
        .filter(Unknown::counts)
        .min(MOST_WORTH_KNOWING);
  }

  /**
   * Those that move a number of the draws, given in each draw, by more than luck would; the one
   * that moves it most first.
   */
  List<Mover> moving(double[] number) {
    DoubleSummaryStatistics reach = Arrays.stream(number).summaryStatistics();
    Map<Integer, StraightLine> lines = spokesmen(number);
    return lines.keySet().stream()
        .filter(j -> lines.get(j).differsFromNothing(lines.size()))
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

  private Unknown of(int j, Map<Integer, StraightLine> lines, Payoffs payoffs, double[] gain) {
    boolean tellsStory = inputs.find(ResponseStory.KEY).equals(OptionalInt.of(j));
    Learnt learnt = payoffs.learnt(tellsStory ? withinStories(gain) : simulation.drawn(j));
    return new Unknown(
        inputs.doubt(j),
        j,
        inputs.get(j),
        learnt,
        learnt.worth().countsAmong(lines.size()),
        lines.get(j),
        lines.get(j).differsFromNothing(lines.size()));
  }

  /**
   * The gain that follows from the story of the response and its numbers alone: in each story its
   * mean, and straight lines in the numbers, which are drawn independently. Which story holds is
   * not known without them, so they are one unknown.
   */
  private double[] withinStories(double[] gain) {
    ResponseStory[] ofDraw = simulation.stories();
    double[] expected = new double[gain.length];
    for (ResponseStory story : ResponseStory.values()) {
      int[] draws = IntStream.range(0, gain.length).filter(d -> ofDraw[d] == story).toArray();
      if (draws.length < LEAST_OF_A_LINE) {
        continue;
      }
      double[] gainThere = at(draws, gain);
      double mean = Sample.mean(gainThere);
      List<double[]> numbers = ResponseStory.NUMBERS.stream().map(this::drawn).toList();
      List<StraightLine> lines =
          numbers.stream().map(number -> StraightLine.of(at(draws, number), gainThere)).toList();
      for (int d : draws) {
        expected[d] = mean;
        for (int k = 0; k < lines.size(); k++) {
          expected[d] += lines.get(k).at(numbers.get(k)[d]) - mean;
        }
      }
    }
    return expected;
  }

  private double[] drawn(String key) {
    return simulation.drawn(inputs.place(key));
  }

  private static double[] at(int[] draws, double[] values) {
    return Arrays.stream(draws).mapToDouble(d -> values[d]).toArray();
  }

  /**
   * Inputs that move together are one unknown; the one that moves the gain most stands for it, with
   * the gain over it.
   */
  private Map<Integer, StraightLine> spokesmen(double[] gain) {
    StraightLine[] lines = new StraightLine[inputs.size()];
    Arrays.setAll(lines, j -> StraightLine.of(simulation.drawn(j), gain));
    int[] spokesman = new int[lines.length];
    for (int j = 0; j < lines.length; j++) {
      int first = simulation.draws().dimension(j);
      if (j == first || lines[j].varianceShare() > lines[spokesman[first]].varianceShare()) {
        spokesman[first] = j;
      }
    }
    Map<Integer, StraightLine> told = new LinkedHashMap<>();
    for (int j = 0; j < lines.length; j++) {
      boolean ofStories =
          ResponseStory.NUMBERS.stream()
              .map(inputs::find)
              .anyMatch(Predicate.isEqual(OptionalInt.of(j)));
      if (spokesman[simulation.draws().dimension(j)] == j
          && !inputs.get(j).range().isExact()
          && !ofStories) {
        told.put(j, lines[j]);
      }
    }
    return told;
  }
}
