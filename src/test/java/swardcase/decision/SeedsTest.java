package swardcase.decision;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.EnabledIfSystemProperty;
import swardcase.Answers;
import swardcase.RandomFarms;
import swardcase.farm.Farm;
import swardcase.outcome.FarmModel;

/**
 * Other draws may leave open what was sure or what was kept for good, but may not turn the one into
 * the other: no paddock whose change is sure by one seed is to be kept by another. The search looks
 * at other draws with each seed too, so the plans themselves may differ.
 */
class SeedsTest {

  private static final int RANDOM_FARMS = 50;
  private static final int SEEDS = 20;
  private static final int FEW_FARMS = 10;
  private static final int FEW_SEEDS = 4;

  /** What one seed says of a paddock. */
  private record Said(long seed, Verdict verdict, boolean sure, double regretShare) {

    static Said of(HowSure found, int paddock) {
      PaddockFindings of = found.paddock(paddock);
      CourseFindings weighed = of.courses().get(of.weighed());
      boolean acts = of.sure().isPresent();
      return new Said(
          found.seed(),
          of.verdict(),
          of.sure().orElse(false),
          (acts ? weighed.judgement() : weighed.overKeeping()).regretShare());
    }
  }

  /** Pairs of seeds compared, and where one contradicts the other. */
  private static final class Comparison {

    private final List<String> contradictions = new ArrayList<>();
    private long compared;
    private int bothSides;
    private int paddocks;

    void add(String name, Farm farm, int seeds, int draws) {
      FarmModel model = new FarmModel(farm, RandomFarms.TABLES);
      List<HowSure> found =
          IntStream.rangeClosed(1, seeds)
              .mapToObj(
                  seed ->
                      HowSure.of(
                          Decision.of(Decision.draws(model, seed, draws), List.of(), done -> {})))
              .toList();
      for (int i = 0; i < farm.paddocks().size(); i++) {
        int paddock = i;
        List<Said> said = found.stream().map(of -> Said.of(of, paddock)).toList();
        paddocks++;
        bothSides += said.stream().anyMatch(Said::sure) ? 1 : 0;
        for (Said one : said) {
          for (Said other : said) {
            compared += one.seed() < other.seed() ? 1 : 0;
            if (one.sure() && other.verdict() == Verdict.KEEP) {
              contradictions.add(name + ", paddock " + i + ": " + one + ", " + other);
            }
          }
        }
      }
    }

    void check() {
      System.out.printf(
          "%d paddocks, %d of them sure by some seed, %d pairs of seeds compared%n",
          paddocks, bothSides, compared);
      assertThat(bothSides).isPositive();
      assertThat(contradictions).isEmpty();
    }
  }

  @Test
  void sure_byOneOfAFewSeeds_isNeverToBeKeptByAnother() {
    Comparison comparison = new Comparison();
    comparison.add("mixed-farm", RandomFarms.demo("mixed-farm"), FEW_SEEDS, 200);
    for (int k = 0; k < FEW_FARMS; k++) {
      comparison.add("random farm " + k, Answers.random(k), FEW_SEEDS, 200);
    }
    comparison.check();
  }

  /** Minutes long: {@code mvn -q test -Dtest=SeedsTest -Dseeds=true}. */
  @Test
  @EnabledIfSystemProperty(named = "seeds", matches = "true")
  void sure_byOneOfTwentySeeds_isNeverToBeKeptByAnother() {
    Comparison comparison = new Comparison();
    Stream<String> demo = Answers.DEMO.stream();
    demo.forEach(name -> comparison.add(name, RandomFarms.demo(name), SEEDS, Decision.USUAL_DRAWS));
    for (int k = 0; k < RANDOM_FARMS; k++) {
      comparison.add("random farm " + k, Answers.random(k), SEEDS, Decision.USUAL_DRAWS);
    }
    comparison.check();
  }
}
