package swardcase;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import java.util.function.Consumer;
import java.util.stream.IntStream;
import swardcase.chance.SideBySide;
import swardcase.decision.Decision;
import swardcase.decision.HowSure;
import swardcase.farm.Farm;
import swardcase.outcome.FarmModel;
import swardcase.report.Report;
import swardcase.report.ReportBuilder;
import swardcase.search.PlanFarms;
import swardcase.tables.Tables;

/** Farms with all that is said of them, by few draws, so that a law can be tried on many. */
public final class Answers {

  public static final List<String> DEMO =
      List.of("mixed-farm", "northern-farm", "current-farm", "risky-farm", "large-farm");

  private static final int DRAWS_OF_DEMO = 100;
  private static final int DRAWS = 40;
  private static final int RANDOM = 120;

  /** Random farms that may crop without sowing. */
  private static final int CROPPING = 20;

  private static List<Answer> all = List.of();

  private Answers() {}

  /**
   * A farm's answer.
   *
   * @param name of the farm, so that a failure repeats
   */
  public record Answer(String name, Decision decision, HowSure howSure, Report report) {

    public FarmModel model() {
      return decision.model();
    }

    public int paddocks() {
      return decision.plan().paddocks();
    }

    /** Whether the plan changes anything. */
    public boolean acts() {
      return !decision.plan().equals(model().keepAll());
    }
  }

  /** The answer for a farm. */
  public static Answer of(String name, Farm farm, long seed, int draws) {
    return of(name, farm, RandomFarms.TABLES, seed, draws);
  }

  /** The same with other tables. */
  public static Answer of(String name, Farm farm, Tables tables, long seed, int draws) {
    FarmModel model = new FarmModel(farm, tables);
    return of(name, Decision.of(Decision.draws(model, seed, draws), List.of(), done -> {}));
  }

  /** By the rough search: the laws are of any plan, whether or not a better one is missed. */
  private static Answer rough(String name, Farm farm, int draws) {
    FarmModel model = new FarmModel(farm, RandomFarms.TABLES);
    return of(name, Decision.rough(Decision.draws(model, 1, draws), List.of(), done -> {}));
  }

  private static Answer of(String name, Decision decision) {
    HowSure howSure = HowSure.of(decision);
    return new Answer(
        name,
        decision,
        howSure,
        ReportBuilder.build(decision, howSure, "test", LocalDate.of(2026, 11, 25), List.of()));
  }

  /** Any small farm; two in three have dear lambs and old clover, so that something is done. */
  public static Farm random(int k) {
    SplittableRandom random = new SplittableRandom(7_000L + k);
    int paddocks = 1 + random.nextInt(4);
    return k % 3 == 0 ? RandomFarms.any(random, paddocks) : PlanFarms.small(random, paddocks);
  }

  /** Checks a law on the demo farms and on 140 random ones, worked out once. */
  public static synchronized void forAll(Consumer<Answer> law) {
    if (all.isEmpty()) {
      List<Answer> answers = new ArrayList<>();
      DEMO.forEach(name -> answers.add(rough(name, RandomFarms.demo(name), DRAWS_OF_DEMO)));
      answers.addAll(
          SideBySide.of(IntStream.range(0, RANDOM))
              .mapToObj(k -> rough("random farm " + k, random(k), DRAWS))
              .toList());
      answers.addAll(
          SideBySide.of(IntStream.range(RANDOM, RANDOM + CROPPING))
              .mapToObj(
                  k -> rough("cropping farm " + k, RandomFarms.withCropOnly(random(k)), DRAWS))
              .toList());
      all = List.copyOf(answers);
    }
    all.forEach(law);
  }
}
