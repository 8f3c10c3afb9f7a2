package swardcase.search;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.stream.IntStream;
import swardcase.chance.CertaintyGain;
import swardcase.chance.Sample;
import swardcase.draws.Draws;
import swardcase.outcome.Course;
import swardcase.search.Aim.Gain;
import swardcase.search.DrawnSample.Trial;
import swardcase.search.Found.BestStart;
import swardcase.search.Found.NearEqual;
import swardcase.search.Found.StillToFind;
import swardcase.search.Found.Worth;

/**
 * What is told of a plan that was searched for: its worth by draws that the search never saw, what
 * the search could still find, plans as good, and the best year of every action beside it.
 */
final class PlanStudy {

  /** Errors, from blocks of draws, by which the careful plan must be better to be named. */
  private static final double ERRORS = 2;

  private static final int BATCHES = 5;

  /** Changes of one paddock that are looked at for whether they are as good. */
  private static final int MOST_NEAR = 20;

  private static final int NONE = -1;

  private final Aim aim;
  private final PlanTable table;
  private final PlanTable every;
  private final double least;
  private final Draws unseen;

  /**
   * A study of plans of a table.
   *
   * @param every the choices there are, those aside that are made beforehand
   * @param least gain that is worth another step, in money
   */
  PlanStudy(Aim aim, PlanTable every, double least, Draws unseen) {
    this.aim = aim;
    table = aim.table();
    this.every = every;
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
  Found of(
      int[] pick,
      List<int[]> others,
      int[] careful,
      double carefulTolerance,
      DrawnSample beside,
      List<Change> pairs) {
    List<Gain> gains =
        aim.of(every).gains(beside.of(every), every.pick(table.plan(pick)), Change.each(every));
    List<Set<PlanLimit>> passed = passed(pick);
    List<Gain> inReach = inReach(pick, gains, passed);
    List<List<BestStart>> starts = bestStarts(gains, passed);
    Map<PlanLimit, int[]> lifted = lifted(pick, open(pick, gains), starts, beside);
    DrawnSample sample = DrawnSample.setAnew(table, unseen);
    List<Trial> trials = new ArrayList<>();
    List<Change> mayGain = new ArrayList<>(Climb.mayGain(inReach));
    mayGain.addAll(pairs);
    trials.add(new Trial(pick, mayGain));
    others.forEach(other -> trials.add(new Trial(other)));
    trials.add(new Trial(careful));
    int searched = trials.size();
    trials.add(new Trial(pick, mayBeNear(inReach)));
    lifted.values().forEach(more -> trials.add(new Trial(more)));
    double[][][] all = sample.values(trials);
    double[][][] values = Arrays.copyOf(all, searched);
    double[] ofPlan = values[0][0];
    StillToFind still = stillToFind(sample, trials, values);
    return new Found(
        worth(pick, ofPlan, ofPlan, aim.tolerance()),
        IntStream.range(0, others.size())
            .mapToObj(k -> worth(others.get(k), values[k + 1][0], ofPlan, aim.tolerance()))
            .toList(),
        still,
        nearEqual(trials, all, searched, still.mean()),
        Optional.of(worth(careful, values[values.length - 1][0], ofPlan, carefulTolerance))
            .filter(worth -> worth.behind() < -Math.max(least, ERRORS * worth.behindError())),
        starts,
        worthOfLifting(lifted, ofPlan, Arrays.copyOfRange(all, searched + 1, all.length)));
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

  /** The limits that each choice passes beside the rest of a pick. */
  private List<Set<PlanLimit>> passed(int[] pick) {
    Position at = new Position(every);
    at.set(every.pick(table.plan(pick)));
    return IntStream.range(0, every.choices()).mapToObj(at::passed).toList();
  }

  /**
   * Where a pick goes without a limit, for each limit that stops an action which would pay: by
   * changes that may gain beside it.
   */
  private Map<PlanLimit, int[]> lifted(
      int[] pick, List<Gain> open, List<List<BestStart>> starts, DrawnSample beside) {
    EnumSet<PlanLimit> stopping = EnumSet.noneOf(PlanLimit.class);
    starts.stream()
        .flatMap(List::stream)
        .filter(start -> start.gain() > 0)
        .forEach(start -> stopping.addAll(start.passes()));
    Map<PlanLimit, int[]> lifted = new EnumMap<>(PlanLimit.class);
    List<Gain> mayGain = open.stream().filter(Gain::mayGain).toList();
    for (PlanLimit limit : stopping) {
      table.lift(limit);
      int[] more = pick.clone();
      new Climb(aim, beside, aim.leastPerChange()).improveFrom(more, mayGain);
      table.restoreLimits();
      lifted.put(limit, more);
    }
    return lifted;
  }

  private Map<PlanLimit, Double> worthOfLifting(
      Map<PlanLimit, int[]> lifted, double[] ofPlan, double[][][] values) {
    CertaintyGain gain = aim.over(ofPlan);
    Map<PlanLimit, Double> worth = new EnumMap<>(PlanLimit.class);
    int k = 0;
    for (PlanLimit limit : lifted.keySet()) {
      worth.put(limit, Math.max(0, gain.of(values[k++][0])));
    }
    return worth;
  }

  /** Those of the gains that belong to open choices which fit and are not the pick's own. */
  private List<Gain> inReach(int[] pick, List<Gain> beside, List<Set<PlanLimit>> passed) {
    return open(
        pick, beside.stream().filter(gain -> passed.get(gain.change().one()).isEmpty()).toList());
  }

  /** The same whether or not they fit. */
  private List<Gain> open(int[] pick, List<Gain> beside) {
    List<Gain> open = new ArrayList<>();
    for (Gain gain : beside) {
      int c = gain.change().one();
      OptionalInt choice = table.find(every.paddock(c), every.action(c), every.start(c));
      if (choice.isPresent() && choice.getAsInt() != pick[every.paddock(c)]) {
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
      double[][][] here =
          Arrays.stream(values).map(of -> part(of, from, from + draws)).toArray(double[][][]::new);
      List<Gain> gains = aim.gains(trials.get(0), here[0]);
      double[] ofOthers = aim.gains(trials.subList(0, here.length), here);
      int best = 0;
      for (int k = 1; k < here.length; k++) {
        if (ofOthers[k] > more[b]) {
          more[b] = ofOthers[k];
          best = k;
        }
      }
      if (best > 0 || gains.stream().anyMatch(of -> of.gain() > least)) {
        int[] pick = trials.get(best).pick().clone();
        DrawnSample batch = sample.part(from, from + draws);
        Climb climb = new Climb(aim, batch, least);
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

  /** The best of the changes that cost something by the draws beside the plan. */
  private static List<Change> mayBeNear(List<Gain> inReach) {
    return inReach.stream()
        .filter(gain -> !gain.mayGain())
        .sorted(Climb.BEST_FIRST)
        .limit(MOST_NEAR)
        .map(Gain::change)
        .toList();
  }

  private List<NearEqual> nearEqual(
      List<Trial> trials, double[][][] values, int others, double within) {
    List<NearEqual> near = new ArrayList<>(nearEqual(trials.get(0), values[0], within));
    near.addAll(nearEqual(trials.get(others), values[others], within));
    near.sort(Comparator.comparingDouble(NearEqual::behind));
    return near;
  }

  private List<NearEqual> nearEqual(Trial trial, double[][] values, double within) {
    CertaintyGain gain = aim.over(values[0]);
    List<NearEqual> near = new ArrayList<>();
    for (int k = 0; k < trial.changes().size(); k++) {
      double behind = 0 - gain.of(values[k + 1]);
      int c = trial.changes().get(k).one();
      boolean isOfPaddock = table.paddock(c) < table.paddocks();
      if (behind <= within && !trial.changes().get(k).isPair() && isOfPaddock) {
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

  private List<List<BestStart>> bestStarts(List<Gain> beside, List<Set<PlanLimit>> passed) {
    List<List<BestStart>> starts = new ArrayList<>();
    for (int i = 0; i < every.places(); i++) {
      double keeping = beside.get(every.first(i)).gain();
      Map<Integer, Integer> best = new LinkedHashMap<>();
      for (int c = every.first(i) + 1; c < every.first(i + 1); c++) {
        int first = best.computeIfAbsent(every.group(c), group -> NONE);
        if (first == NONE || beside.get(c).gain() > Math.max(keeping, beside.get(first).gain())) {
          best.put(every.group(c), c);
        }
      }
      starts.add(
          best.values().stream()
              .map(
                  c ->
                      new BestStart(
                          new Course(every.action(c), every.start(c)),
                          beside.get(c).gain() - keeping,
                          passed.get(c)))
              .toList());
    }
    return starts;
  }
}
