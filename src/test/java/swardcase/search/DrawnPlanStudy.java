package swardcase.search;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.stream.IntStream;
import swardcase.chance.CertaintyGain;
import swardcase.chance.Sample;
import swardcase.draws.Draws;
import swardcase.outcome.Course;
import swardcase.search.DrawnClimb.Gain;
import swardcase.search.DrawnFound.BestStart;
import swardcase.search.DrawnFound.NearEqual;
import swardcase.search.DrawnFound.StillToFind;
import swardcase.search.DrawnFound.Worth;
import swardcase.search.DrawnSample.Trial;

/**
 * What is told of a plan that was searched for: its worth by draws that the search never saw, what
 * the search could still find, plans as good, and the best year of every action beside it.
 */
final class DrawnPlanStudy {

  /** Errors, from blocks of draws, by which the careful plan must be better to be named. */
  private static final double ERRORS = 2;

  private static final int BATCHES = 5;
  private static final int NONE = -1;

  private final PlanTable table;
  private final PlanTable every;
  private final double tolerance;
  private final double least;
  private final Draws unseen;

  /**
   * A study of plans of a table.
   *
   * @param every the choices there are, those aside that are made beforehand
   * @param tolerance tolerance of risk, in money
   * @param least gain that is worth a change, in money
   */
  DrawnPlanStudy(PlanTable table, PlanTable every, double tolerance, double least, Draws unseen) {
    this.table = table;
    this.every = every;
    this.tolerance = tolerance;
    this.least = least;
    this.unseen = unseen;
  }

  /**
   * Studies a pick.
   *
   * @param others where other starts ended
   * @param careful the pick of less tolerance
   * @param carefulTolerance that tolerance
   * @param beside draws by which all choices there are are judged beside the pick
   * @param pairs changes of two paddocks that may gain
   */
  DrawnFound of(
      int[] pick,
      List<int[]> others,
      int[] careful,
      double carefulTolerance,
      DrawnSample beside,
      List<Change> pairs) {
    List<Gain> gains =
        DrawnClimb.gains(
            beside.of(every), tolerance, every.pick(table.plan(pick)), Change.each(every));
    boolean[] fits = fitting(pick);
    List<Gain> inReach = inReach(pick, gains, fits);
    DrawnSample sample = DrawnSample.setAnew(table, unseen);
    List<Trial> trials = new ArrayList<>();
    List<Change> mayGain = new ArrayList<>(DrawnClimb.mayGain(inReach));
    mayGain.addAll(pairs);
    trials.add(new Trial(pick, mayGain));
    others.forEach(other -> trials.add(new Trial(other)));
    trials.add(new Trial(careful));
    double[][][] values = sample.values(trials);
    double[] ofPlan = values[0][0];
    StillToFind still = stillToFind(sample, trials, values);
    return new DrawnFound(
        worth(pick, ofPlan, ofPlan, tolerance),
        IntStream.range(0, others.size())
            .mapToObj(k -> worth(others.get(k), values[k + 1][0], ofPlan, tolerance))
            .toList(),
        still,
        nearEqual(sample, trials.get(0), values[0], inReach, still.mean()),
        Optional.of(worth(careful, values[values.length - 1][0], ofPlan, carefulTolerance))
            .filter(worth -> worth.behind() < -Math.max(least, ERRORS * worth.behindError())),
        bestStarts(gains, fits));
  }

  private Worth worth(int[] pick, double[] values, double[] ofPlan, double atTolerance) {
    CertaintyGain overKeeping = new CertaintyGain(new double[values.length], atTolerance);
    CertaintyGain overPlan = new CertaintyGain(ofPlan, atTolerance);
    return new Worth(
        table.plan(pick),
        Sample.mean(values),
        unseen.uniforms().standardError(values),
        overKeeping.of(values),
        unseen.uniforms().standardError(overKeeping.influence(values)),
        0 - overPlan.of(values),
        unseen.uniforms().standardError(overPlan.influence(values)));
  }

  /** Which choices keep within the limits beside the rest of a pick. */
  private boolean[] fitting(int[] pick) {
    Position at = new Position(every);
    at.set(every.pick(table.plan(pick)));
    boolean[] fits = new boolean[every.choices()];
    for (int c = 0; c < fits.length; c++) {
      fits[c] = at.fits(Change.of(c));
    }
    return fits;
  }

  /** Those of the gains that belong to open choices which fit and are not the pick's own. */
  private List<Gain> inReach(int[] pick, List<Gain> beside, boolean[] fits) {
    List<Gain> open = new ArrayList<>();
    for (Gain gain : beside) {
      int c = gain.change().one();
      OptionalInt choice = table.find(every.paddock(c), every.action(c), every.start(c));
      if (fits[c] && choice.isPresent() && choice.getAsInt() != pick[every.paddock(c)]) {
        open.add(new Gain(Change.of(choice.getAsInt()), gain.gain(), gain.plainError()));
      }
    }
    return open;
  }

  /**
   * Parts of the unseen draws, each searched from the same ends: what its best has more than the
   * plan there.
   */
  private StillToFind stillToFind(DrawnSample sample, List<Trial> trials, double[][][] values) {
    double[] more = new double[BATCHES];
    int draws = sample.size() / BATCHES;
    for (int b = 0; b < BATCHES; b++) {
      int from = b * draws;
      double[][] ofPick = part(values[0], from, from + draws);
      List<Gain> gains = DrawnClimb.gains(ofPick, tolerance, trials.get(0).changes());
      CertaintyGain gain = new CertaintyGain(ofPick[0], tolerance);
      int best = 0;
      for (int k = 1; k < values.length; k++) {
        double gained = gain.of(part(values[k], from, from + draws)[0]);
        if (gained > more[b]) {
          more[b] = gained;
          best = k;
        }
      }
      if (best > 0 || gains.stream().anyMatch(of -> of.gain() > least)) {
        int[] pick = trials.get(best).pick().clone();
        DrawnSample batch = sample.part(from, from + draws);
        DrawnClimb climb = new DrawnClimb(table, batch, tolerance, least);
        more[b] +=
            (best == 0
                    ? climb.improveFrom(pick, gains)
                    : climb.improve(pick, trials.get(0).changes()))
                .gained();
      }
    }
    double error = Sample.standardDeviation(more) / Math.sqrt(BATCHES);
    return new StillToFind(Sample.mean(more), error, BATCHES, draws);
  }

  private static double[][] part(double[][] values, int from, int to) {
    return Arrays.stream(values)
        .map(of -> Arrays.copyOfRange(of, from, to))
        .toArray(double[][]::new);
  }

  private List<NearEqual> nearEqual(
      DrawnSample sample, Trial looked, double[][] values, List<Gain> inReach, double within) {
    List<NearEqual> near = new ArrayList<>(nearEqual(looked, values, within));
    List<Change> others =
        inReach.stream()
            .filter(gain -> gain.mayGain(within) && !gain.mayGain())
            .map(Gain::change)
            .toList();
    if (!others.isEmpty()) {
      Trial trial = new Trial(looked.pick(), others);
      near.addAll(nearEqual(trial, sample.values(List.of(trial))[0], within));
    }
    near.sort(Comparator.comparingDouble(NearEqual::behind));
    return near;
  }

  private List<NearEqual> nearEqual(Trial trial, double[][] values, double within) {
    CertaintyGain gain = new CertaintyGain(values[0], tolerance);
    List<NearEqual> near = new ArrayList<>();
    for (int k = 0; k < trial.changes().size(); k++) {
      double behind = 0 - gain.of(values[k + 1]);
      int c = trial.changes().get(k).one();
      if (behind <= within && !trial.changes().get(k).isPair()) {
        near.add(
            new NearEqual(
                table.paddock(c),
                new Course(table.action(c), table.start(c)),
                behind,
                unseen.uniforms().standardError(gain.influence(values[k + 1]))));
      }
    }
    return near;
  }

  private List<List<BestStart>> bestStarts(List<Gain> beside, boolean[] fits) {
    List<List<BestStart>> starts = new ArrayList<>();
    for (int i = 0; i < every.paddocks(); i++) {
      double keeping = beside.get(every.first(i)).gain();
      Map<Integer, Integer> best = new LinkedHashMap<>();
      for (int c = every.first(i) + 1; c < every.first(i + 1); c++) {
        int first = best.computeIfAbsent(every.action(c), action -> NONE);
        if (first == NONE || beside.get(c).gain() > Math.max(keeping, beside.get(first).gain())) {
          best.put(every.action(c), c);
        }
      }
      starts.add(
          best.values().stream()
              .map(
                  c ->
                      new BestStart(
                          new Course(every.action(c), every.start(c)),
                          beside.get(c).gain() - keeping,
                          fits[c]))
              .toList());
    }
    return starts;
  }
}
