package swardcase.search;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import swardcase.chance.CertaintyGain;
import swardcase.chance.CountedRandom;
import swardcase.draws.Draws;
import swardcase.outcome.FarmModel;
import swardcase.outcome.Plan;
import swardcase.search.Aim.Gain;
import swardcase.search.Climb.Climbed;
import swardcase.search.DrawnSample.Trial;

/**
 * Finds the plan of highest certainty equivalent of the gain over keeping everything, over common
 * draws of the farm's uncertain numbers, at the farm's risk tolerance. The limits of the farm are
 * judged at likely inputs.
 *
 * <p>Four starts are improved on 64 draws: keeping everything, the same with the rules of the farm,
 * the plan at likely inputs, and what that becomes if only the mean counts. Each goes on to 256
 * draws of another seed with the changes that may yet gain there, and the best to 500 of a third.
 * Then pairs of changes are tried. What the plan is worth is told from draws that the search never
 * saw.
 */
public final class PlanSearch {

  /** Tolerance of the careful plan, as a part of the tolerance given. */
  private static final double CAREFUL = 0.5;

  /** What a change must add to be made, as a part of a mean paddock's part of the tolerance. */
  private static final double LEAST_PER_CHANGE = 1e-3;

  /** The least gain that is worth another step of the search, likewise. */
  private static final double LEAST_STEP = 1e-4;

  /** The same on the first samples, which are too small for gains that are nearly nothing. */
  private static final double LEAST_AT_FIRST = 1e-3;

  /** Plain errors behind the best from which on an end is not improved any more. */
  private static final double FAR_BEHIND = 1;

  private static final int MOST_PAIRS = 100;

  /** Pairs that the study of what could still be found begins with. */
  private static final int PAIRS_STUDIED = 15;

  /** Years in which an action on a paddock is looked at on more than few draws. */
  private static final int MOST_YEARS = 2;

  private record PaddockAction(int paddock, int action) {}

  /** A pick with the changes that may yet gain there. */
  private record End(int[] pick, List<Change> open) {}

  private final LikelySearch likely;
  private final PlanTable table;
  private final PlanTable every;
  private final Aim aim;
  private final Aim careful;
  private final double paddockTolerance;
  private final Draws unseen;
  private final List<Change> singles;

  /** Changes that may gain at one of the first starts; found once a search. */
  private List<Change> promising = List.of();

  private final DrawnSample few;
  private final DrawnSample some;
  private final DrawnSample many;

  /**
   * A search among the plans in which these choices are made beforehand.
   *
   * @param unseen draws of the farm from which the worth of the plan is told; those that the search
   *     looks at come from other seeds, which follow from theirs
   */
  public PlanSearch(Draws unseen, List<FixedChoice> fixed) {
    this(unseen, fixed, false);
  }

  /**
   * The same, or a rough search, which looks at a fifth of the draws: to be shown while the whole
   * one is waited for.
   */
  public PlanSearch(Draws unseen, List<FixedChoice> fixed, boolean rough) {
    FarmModel model = unseen.model();
    this.unseen = unseen;
    likely = new LikelySearch(model, fixed);
    table = likely.table();
    every = fixed.isEmpty() ? table : new PlanTable(model, model.newRun(), List.of());
    double tolerance = model.farm().finance().riskTolerance().likely();
    paddockTolerance = tolerance / table.paddocks();
    aim = new Aim(table, tolerance, LEAST_PER_CHANGE * paddockTolerance);
    careful = aim.at(CAREFUL * tolerance);
    singles = Change.each(table);
    few = DrawnSample.kept(table, anew(1, 8, rough ? 2 : 8));
    some = DrawnSample.setAnew(table, anew(2, 16, rough ? 3 : 16));
    many = DrawnSample.setAnew(table, anew(3, 20, rough ? 5 : 25));
  }

  private Draws anew(int stage, int blocks, int perBlock) {
    CountedRandom random = new CountedRandom(unseen.seed());
    random.restart(unseen.seed(), stage, 0);
    return unseen.anew(random.nextLong(), blocks, perBlock);
  }

  /** Whether a plan keeps within the limits of the farm, whatever was chosen beforehand. */
  public boolean feasible(Plan plan) {
    return every.fits(plan);
  }

  /** The best plan found; empty if no plan keeps within the limits. */
  public Optional<Found> find() {
    return likely.find().map(found -> find(table.pick(found.plan())));
  }

  private Found find(int[] atLikely) {
    List<End> ends = climbedOnSome(climbedOnFew(atLikely));
    List<Trial> trials = ends.stream().map(end -> new Trial(end.pick(), end.open())).toList();
    double[][][] values = many.values(trials);
    int best = best(aim.gains(trials, values));
    int bestCareful = best(careful.gains(trials, values));

    int[] pick = ends.get(best).pick().clone();
    climbOnMany().improveFrom(pick, aim.gains(trials.get(best), values[best]));
    List<Change> pairs = improveInPairs(pick);
    dropWhatMayBeLuck(pick);
    int[] ofCareful = bestCareful == best ? pick.clone() : ends.get(bestCareful).pick().clone();
    Climbed climbed = climb(few, careful).improve(ofCareful, promising);
    climb(some, careful).improve(ofCareful, open(climbed.left()));

    List<int[]> others =
        ends.stream().map(End::pick).filter(end -> !Arrays.equals(end, pick)).toList();
    return new PlanStudy(aim, every, LEAST_STEP * paddockTolerance, unseen)
        .of(pick, others, ofCareful, careful.tolerance(), few, pairs);
  }

  private Climb climb(DrawnSample sample, Aim to) {
    return new Climb(to, sample, LEAST_AT_FIRST * paddockTolerance);
  }

  private Climb climbOnMany() {
    return new Climb(aim, many, LEAST_STEP * paddockTolerance);
  }

  /** Where the starts end on few draws, each with the changes that are open. */
  private List<End> climbedOnFew(int[] atLikely) {
    List<int[]> starts = new ArrayList<>(List.of(atLikely));
    Position keeping = new Position(table);
    keeping.set(likely.first());
    if (keeping.excess() == 0) {
      starts.add(likely.first());
      starts.add(table.withRules(likely.first()));
    }
    List<Change> first = singles.stream().filter(this::isLookedAtFirst).toList();
    List<Trial> trials = starts.stream().map(start -> new Trial(start, first)).toList();
    double[][][] values = few.values(trials);
    List<List<Gain>> gains =
        IntStream.range(0, starts.size())
            .mapToObj(k -> aim.gains(trials.get(k), values[k]))
            .toList();
    List<List<Gain>> atCareful =
        IntStream.range(0, starts.size())
            .mapToObj(k -> careful.gains(trials.get(k), values[k]))
            .toList();
    Set<PaddockAction> mayGain =
        Stream.of(gains, atCareful)
            .flatMap(List::stream)
            .flatMap(List::stream)
            .filter(Gain::mayGain)
            .map(gain -> paddockAction(gain.change()))
            .collect(Collectors.toSet());
    Set<Integer> ruled =
        first.stream()
            .filter(change -> table.isRuleAlone(change.one()))
            .map(this::paddockAction)
            .filter(mayGain::contains)
            .map(PaddockAction::paddock)
            .collect(Collectors.toSet());
    promising =
        singles.stream()
            .filter(
                change ->
                    isOfAny(starts, change.one())
                        || mayGain.contains(paddockAction(change))
                        || isRuleBefore(change) && ruled.contains(table.paddock(change.one())))
            .toList();
    Map<Plan, End> ends = new LinkedHashMap<>();
    Climb climb = climb(few, aim);
    for (int k = 0; k < starts.size(); k++) {
      int[] pick = starts.get(k).clone();
      add(ends, pick, climb.improve(pick, promising, gains.get(k)));
    }
    Aim mean = aim.at(Double.POSITIVE_INFINITY);
    int[] ofMean = atLikely.clone();
    climb(few, mean)
        .improveFrom(
            ofMean, mean.gains(trials.get(0), values[0]).stream().filter(Gain::mayGain).toList());
    if (!Arrays.equals(ofMean, atLikely)) {
      add(ends, ofMean, climb.improve(ofMean, promising));
    }
    return List.copyOf(ends.values());
  }

  private PaddockAction paddockAction(Change change) {
    return new PaddockAction(table.paddock(change.one()), table.action(change.one()));
  }

  /**
   * Every other year of an action tells whether it may gain in any; a rule before it may where the
   * rule alone may.
   */
  private boolean isLookedAtFirst(Change change) {
    return !isRuleBefore(change) && table.start(change.one()) % 2 == 0;
  }

  private boolean isRuleBefore(Change change) {
    return table.isRuleBefore(change.one());
  }

  private boolean isOfAny(List<int[]> picks, int choice) {
    return table.keeps(choice)
        || picks.stream().anyMatch(pick -> pick[table.paddock(choice)] == choice);
  }

  /** Changes that may gain elsewhere: of each action on a paddock those to its best few years. */
  private List<Change> open(List<Gain> gains) {
    Map<PaddockAction, Integer> years = new HashMap<>();
    return gains.stream()
        .filter(Gain::mayGain)
        .sorted(Climb.BEST_FIRST)
        .map(Gain::change)
        .filter(change -> years.merge(paddockAction(change), 1, Integer::sum) <= MOST_YEARS)
        .toList();
  }

  /** Those that meet are one. */
  private void add(Map<Plan, End> ends, int[] pick, Climbed climbed) {
    ends.putIfAbsent(table.plan(pick), new End(pick, open(climbed.left())));
  }

  /** Where these go on some draws; those that are behind the best by far stay where they are. */
  private List<End> climbedOnSome(List<End> from) {
    List<Trial> trials = from.stream().map(end -> new Trial(end.pick(), end.open())).toList();
    double[][][] values = some.values(trials);
    CertaintyGain over = aim.over(values[best(aim.gains(trials, values))][0]);
    Map<Plan, End> ends = new LinkedHashMap<>();
    for (int k = 0; k < from.size(); k++) {
      End end = from.get(k);
      CertaintyGain.Gained behind = over.gained(values[k][0]);
      if (behind.gain() + FAR_BEHIND * behind.plainError() < 0) {
        ends.putIfAbsent(table.plan(end.pick()), end);
      } else {
        int[] pick = end.pick().clone();
        add(
            ends,
            pick,
            climb(some, aim).improve(pick, end.open(), aim.gains(trials.get(k), values[k])));
      }
    }
    return List.copyOf(ends.values());
  }

  /** Place of the first of the highest. */
  private static int best(double[] gains) {
    int best = 0;
    for (int k = 1; k < gains.length; k++) {
      if (gains[k] > gains[best]) {
        best = k;
      }
    }
    return best;
  }

  /**
   * Improves a pick in place by pairs, which are looked for on few draws, looked at again on some,
   * and taken on many, together with the single changes that may gain. Gives the pairs that may.
   */
  private List<Change> improveInPairs(int[] pick) {
    List<Gain> alone = aim.gains(few, pick, promising);
    List<Change> pairs = new PairSearch(table, pick).withinLimits(alone);
    List<Gain> onFew = mayGain(aim.gains(few, pick, pairs));
    List<Gain> onSome = mayGain(aim.gains(some, pick, onFew.stream().map(Gain::change).toList()));
    List<Gain> gaining = gaining(onSome);
    List<Gain> onMany = gaining(aim.gains(many, pick, gaining.stream().map(Gain::change).toList()));
    if (!onMany.isEmpty()) {
      climbOnMany().improveFrom(pick, onMany);
    }
    return onSome.stream().limit(PAIRS_STUDIED).map(Gain::change).toList();
  }

  /**
   * Keeps paddocks, one after the other, whose change gains no more than its plain error on many
   * draws, the one that gains least first: two or three true errors, as draws are spread evenly.
   */
  private void dropWhatMayBeLuck(int[] pick) {
    Position at = new Position(table);
    Optional<Gain> luck;
    do {
      at.set(pick);
      List<Change> keeping =
          IntStream.range(0, pick.length)
              .filter(i -> !table.keeps(pick[i]) && table.keeps(table.first(i)))
              .mapToObj(i -> Change.of(table.first(i)))
              .filter(at::fits)
              .toList();
      luck =
          aim.gains(many, pick, keeping).stream()
              .filter(gain -> gain.gain() + gain.plainError() > 0)
              .min(Climb.BEST_FIRST);
      luck.ifPresent(gain -> pick[table.paddock(gain.change().one())] = gain.change().one());
    } while (luck.isPresent());
  }

  private static List<Gain> mayGain(List<Gain> gains) {
    return gains.stream().filter(Gain::mayGain).sorted(Climb.BEST_FIRST).limit(MOST_PAIRS).toList();
  }

  private List<Gain> gaining(List<Gain> gains) {
    return gains.stream().filter(gain -> gain.gain() > LEAST_STEP * paddockTolerance).toList();
  }
}
