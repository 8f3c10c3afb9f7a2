package swardcase.decision;

import java.util.Arrays;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import swardcase.chance.CountedRandom;
import swardcase.chance.Learnt;
import swardcase.chance.Payoffs;
import swardcase.decision.Enquiry.Advice;
import swardcase.decision.Enquiry.Change;
import swardcase.decision.Enquiry.Kind;
import swardcase.decision.FarmMeasures.OfMob;
import swardcase.draws.RecordsFit;
import swardcase.draws.Simulation;
import swardcase.farm.Mob;
import swardcase.outcome.FarmModel;
import swardcase.sward.Composition;
import swardcase.sward.StandingClover;
import swardcase.tables.Cultivar;
import swardcase.tables.Tables;

/**
 * What can be found out before choosing. The result of a test is drawn together with everything
 * else, and the choice is then picked by the result ({@link Payoffs#learnt}).
 *
 * <p>A leaf test gives the mean formononetin of the paddock's clover times 1 + e, e normal with the
 * relative standard error of the tables. Identifying n plants gives counts of old and of
 * high-oestrogen plants among n divided by the design effect; the choice is picked by whichever of
 * the two counts tells more. Where nobody walked, the shares of such plants follow from what is
 * drawn of the unknown clover (inferred): its formononetin is that of a mixture of plants known to
 * be low and plants known to be high in it, at their likely values in the tables (0.12 and 1.0 %:
 * drawn at 0.56, half are high), and its winter growth that of a mixture of old and current plants.
 * Only this paddock's choice is picked anew, so that what a test says of the same cultivar
 * elsewhere is left out.
 */
final class Enquiries {

  /** Key of the relative standard error of a leaf test. */
  static final String LEAF_TEST_ERROR = "default.leaf-test-relative-error";

  private static final int[] PLANTS = {20, 50, 100, 200, 400};
  private static final String LOW = "unnamed low oestrogen";
  private static final String HIGH = "unnamed high oestrogen";
  private static final String OLD = "unnamed old low oestrogen";
  private static final String FARM_ROW = "default.";
  private static final String WINTER_GROWTH = "winter growth against current cultivars";

  private static final Comparator<Enquiry> MOST_WORTH_KNOWING =
      Comparator.<Enquiry>comparingDouble(each -> -each.worth().value())
          .thenComparing(Enquiry::kind)
          .thenComparing(Enquiry::place)
          .thenComparing(each -> each.number().map(Unknown::place).orElse(0));

  private final Decision decision;
  private final Simulation simulation;
  private final FarmModel model;
  private final double leafError;
  private final long seed;
  private final int draws;

  Enquiries(Decision decision) {
    this.decision = decision;
    simulation = decision.simulation();
    model = decision.model();
    leafError = model.tables().likely(LEAF_TEST_ERROR);
    seed = simulation.draws().seed();
    draws = simulation.draws().count();
  }

  /**
   * The tests of a paddock: the number of plants that leaves most beyond its price, and a leaf
   * test.
   *
   * @param payoffs of the choices that can be made there
   * @param change what a pick among them changes; empty if nothing
   */
  List<Enquiry> tests(
      int paddock, Payoffs payoffs, Function<Learnt.Pick, Optional<Change>> change) {
    Learnt leaf = payoffs.learnt(leafTest(paddock));
    double price = model.farm().prices().leafTest().likely();
    return List.of(
        plants(paddock, payoffs, change), bought(Kind.LEAF_TEST, paddock, 0, leaf, price, change));
  }

  /** One more scan of each mob, and the numbers that count. */
  Stream<Enquiry> ofFarm(
      Payoffs payoffs, List<Unknown> numbers, Function<Learnt.Pick, Optional<Change>> change) {
    double scan = model.farm().management().scanPerEwe().likely();
    List<Mob> mobs = model.farm().mobs();
    Stream<Enquiry> scans =
        IntStream.range(0, mobs.size())
            .mapToObj(
                g ->
                    bought(
                        Kind.SCAN,
                        g,
                        0,
                        payoffs.learnt(scan(g)),
                        mobs.get(g).ewes() * scan,
                        change));
    return Stream.concat(
        scans, numbers.stream().filter(Unknown::counts).map(number -> of(number, change)));
  }

  /** A number, and what knowing it would change. */
  Enquiry of(Unknown number, Function<Learnt.Pick, Optional<Change>> change) {
    return new Enquiry(
        Kind.NUMBER,
        0,
        Optional.of(number),
        0,
        number.value(),
        OptionalDouble.empty(),
        isOfTheFarm(number) ? Advice.ASK : Advice.RESEARCH,
        changes(number.learnt(), change),
        List.of());
  }

  /** All of them, the most worth first; a number that is known for several reasons stands once. */
  static List<Enquiry> inOrder(Stream<Enquiry> all) {
    Map<Object, Enquiry> one = new LinkedHashMap<>();
    all.forEach(
        each ->
            one.merge(each.number().<Object>map(Unknown::name).orElse(each), each, Enquiry::and));
    return one.values().stream().sorted(MOST_WORTH_KNOWING).toList();
  }

  private static Enquiry bought(
      Kind kind,
      int place,
      int plants,
      Learnt learnt,
      double price,
      Function<Learnt.Pick, Optional<Change>> change) {
    return new Enquiry(
        kind,
        place,
        Optional.empty(),
        plants,
        learnt.worth(),
        OptionalDouble.of(price),
        Enquiry.advice(learnt.worth(), price),
        changes(learnt, change),
        List.of());
  }

  private static List<Change> changes(
      Learnt learnt, Function<Learnt.Pick, Optional<Change>> change) {
    return learnt.worth().value() == 0
        ? List.of()
        : learnt.picks().stream().flatMap(pick -> change.apply(pick).stream()).toList();
  }

  /** Whether somebody on the farm could find it out: prices, costs and what stands in a paddock. */
  private boolean isOfTheFarm(Unknown number) {
    return !number.name().startsWith(WINTER_GROWTH)
        && model.tables().parameters().entrySet().stream()
            .noneMatch(
                row -> !row.getKey().startsWith(FARM_ROW) && row.getValue().equals(number.input()));
  }

  private double[] leafTest(int paddock) {
    double[] leaf = simulation.leaf(paddock);
    return drawn(
        "leaf test of " + name(paddock),
        (d, random) -> leaf[d] * (1 + leafError * random.nextGaussian()));
  }

  /**
   * Share of a mob's ewes that a scan after the coming joining would find in lamb in each draw, the
   * farm grazed as now, chance of the year counted in.
   */
  double[] scan(int mob) {
    RecordsFit fit = new RecordsFit(model);
    Mob of = model.farm().mobs().get(mob);
    double[] expected = decision.drawn(mob, OfMob.PREGNANT_PERCENT);
    return drawn(
        "one more scan of " + of.name(),
        (d, random) -> fit.seen(of.ewes(), expected[d] / 100, random));
  }

  /** What one draw brings, with random numbers of its own. */
  private interface Result {
    double of(int draw, CountedRandom random);
  }

  private double[] drawn(String what, Result result) {
    CountedRandom random = new CountedRandom(seed);
    double[] results = new double[draws];
    Arrays.setAll(
        results,
        d -> {
          random.restart(seed, d, CountedRandom.part(what));
          return result.of(d, random);
        });
    return results;
  }

  private String name(int paddock) {
    return model.farm().paddocks().get(paddock).name();
  }

  private Enquiry plants(
      int paddock, Payoffs payoffs, Function<Learnt.Pick, Optional<Change>> change) {
    Composition clover = simulation.draws().composition(paddock);
    double[][] shares = clover.lookedAt() ? counted(paddock) : assumed(paddock, clover);
    double[][] old = new double[PLANTS.length][draws];
    double[][] high = new double[PLANTS.length][draws];
    count(paddock, clover.designEffect(), shares, old, high);
    Enquiry best = null;
    for (int k = 0; k < PLANTS.length; k++) {
      Learnt ofOld = payoffs.learnt(old[k]);
      Learnt ofHigh = payoffs.learnt(high[k]);
      Enquiry each =
          bought(
              clover.lookedAt() ? Kind.PLANTS : Kind.WALK,
              paddock,
              PLANTS[k],
              ofHigh.worth().value() > ofOld.worth().value() ? ofHigh : ofOld,
              PLANTS[k] * model.farm().prices().plantIdentification().likely(),
              change);
      best = best == null || each.net() > best.net() ? each : best;
    }
    return best;
  }

  /** Shares of old and high, old and low, current and high plants in each draw. */
  private double[][] counted(int paddock) {
    return new double[][] {
      simulation.share(paddock, Simulation.Kind.OLD_HIGH),
      simulation.share(paddock, Simulation.Kind.OLD_LOW),
      simulation.share(paddock, Simulation.Kind.CURRENT_HIGH)
    };
  }

  /** The same of clover nobody looked at, old and high being independent of one another. */
  private double[][] assumed(int paddock, Composition clover) {
    Tables tables = model.tables();
    int yield = model.inputs().place(StandingClover.keyOfYield(clover.cultivar(0)));
    double least = formononetin(tables.cultivar(LOW));
    double most = formononetin(tables.cultivar(HIGH));
    double slowest = tables.cultivar(OLD).relativeWinterYield().likely();
    double[] leaf = simulation.leaf(paddock);
    double[] growth = simulation.drawn(yield);
    double[][] shares = new double[3][draws];
    for (int d = 0; d < draws; d++) {
      double high = share((leaf[d] - least) / (most - least));
      double old = share((1 - growth[d]) / (1 - slowest));
      shares[0][d] = old * high;
      shares[1][d] = old * (1 - high);
      shares[2][d] = (1 - old) * high;
    }
    return shares;
  }

  private static double formononetin(Cultivar cultivar) {
    return cultivar.formononetin().orElseThrow().likely();
  }

  private static double share(double value) {
    return Math.max(0, Math.min(1, value));
  }

  /** Counts among the first plants of one long walk in each draw. */
  private void count(
      int paddock, double designEffect, double[][] shares, double[][] old, double[][] high) {
    CountedRandom random = new CountedRandom(seed);
    long stream = CountedRandom.part("plants of " + name(paddock));
    for (int d = 0; d < draws; d++) {
      random.restart(seed, d, stream);
      double oldHigh = shares[0][d];
      double allOld = oldHigh + shares[1][d];
      double currentHigh = shares[2][d];
      int oldSeen = 0;
      int highSeen = 0;
      int seen = 0;
      for (int k = 0; k < PLANTS.length; k++) {
        int counted = (int) Math.round(PLANTS[k] / designEffect);
        for (; seen < counted; seen++) {
          double u = random.nextDouble();
          oldSeen += u < allOld ? 1 : 0;
          highSeen += u < oldHigh || u >= allOld && u < allOld + currentHigh ? 1 : 0;
        }
        old[k][d] = oldSeen;
        high[k][d] = highSeen;
      }
    }
  }
}
