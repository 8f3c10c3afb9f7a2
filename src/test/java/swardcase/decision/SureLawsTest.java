package swardcase.decision;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;
import org.apache.commons.math3.distribution.NormalDistribution;
import org.junit.jupiter.api.Test;
import swardcase.Answers;
import swardcase.Answers.Answer;
import swardcase.chance.Sample;
import swardcase.chance.Spread;
import swardcase.draws.Alternatives;
import swardcase.draws.Simulation;
import swardcase.farm.ActionKind;
import swardcase.outcome.Outcome;

/** What must hold for what is called sure, kept or open, on any farm. */
class SureLawsTest {

  private interface Law {
    void check(Answer answer, int paddock, PaddockFindings findings);
  }

  private static void forAnyPaddock(Law law) {
    Answers.forAll(
        answer -> {
          for (int i = 0; i < answer.paddocks(); i++) {
            law.check(answer, i, answer.howSure().paddock(i));
          }
        });
  }

  /** A correlation of a thousand pairs is known to about so much in double numbers. */
  private static final double ROUNDING_OF_CORRELATION = 1e-11;

  private static double rounding(double of) {
    return 1e-6 + 1e-9 * Math.abs(of);
  }

  @Test
  void sure_isToldOfChangesAlone() {
    int[] count = new int[2];
    forAnyPaddock(
        (answer, i, findings) -> {
          boolean acts = answer.decision().isActedOn(i);
          assertThat(findings.sure().isPresent()).isEqualTo(acts);
          CourseFindings planned = findings.planned();
          assertThat(planned.choice()).isEqualTo(answer.decision().plan().course(i));
          if (acts) {
            ActionKind kind = answer.model().actions().get(planned.choice().action()).kind();
            assertThat(findings.verdict())
                .isEqualTo(kind == ActionKind.KEEP_OFF ? Verdict.KEEP_OFF : Verdict.ACT);
            assertThat(findings.sure()).contains(planned.isSure());
            assertThat(findings.notSure().isPresent()).isNotEqualTo(planned.isSure());
            assertThat(planned.fits()).isTrue();
            count[findings.sure().get() ? 1 : 0]++;
          } else {
            assertThat(findings.verdict()).isIn(Verdict.KEEP, Verdict.TOO_CLOSE);
          }
        });
    assertThat(count[0]).isGreaterThan(10);
    assertThat(count[1]).isGreaterThan(10);
  }

  @Test
  void keep_isSaidWhereNoChoiceIsOpenOverKeeping() {
    int[] count = new int[2];
    forAnyPaddock(
        (answer, i, findings) -> {
          if (findings.sure().isEmpty()) {
            boolean open =
                findings.courses().stream()
                    .skip(1)
                    .anyMatch(course -> course.overKeeping().isOpen());
            assertThat(findings.verdict())
                .as("%s, paddock %s", answer.name(), i)
                .isEqualTo(open ? Verdict.TOO_CLOSE : Verdict.KEEP);
            count[open ? 1 : 0]++;
          }
        });
    assertThat(count[0]).isGreaterThan(10);
    assertThat(count[1]).isGreaterThan(10);
  }

  /** By hand: half of the distance from the gain to its size is lost, half of the sum is missed. */
  @Test
  void judgement_ofAnyChoice_isThatOfItsGainsOverTheOther() {
    forAnyPaddock(
        (answer, i, findings) -> {
          Simulation simulation = answer.decision().simulation();
          List<CourseFindings> courses = findings.courses();
          for (CourseFindings course : courses) {
            double[] npv = simulation.npv(course.place());
            check(
                course.overKeeping(),
                Sample.difference(npv, simulation.npv(courses.get(0).place())));
            double[] step =
                Sample.difference(npv, simulation.npv(courses.get(course.over()).place()));
            check(course.judgement(), step);
            assertThat(course.step().mean())
                .isCloseTo(Sample.mean(step), within(rounding(course.step().mean())));
          }
        });
  }

  private static void check(Judgement judgement, double[] gains) {
    double mean = Sample.mean(gains);
    double size = DoubleStream.of(gains).map(Math::abs).average().orElseThrow();
    assertThat(judgement.regretOfActing()).isCloseTo((size - mean) / 2, within(rounding(size)));
    assertThat(judgement.regretOfKeeping()).isCloseTo((size + mean) / 2, within(rounding(size)));
    if (size > 1e-3) {
      assertThat(judgement.regretShare()).isCloseTo((size - mean) / 2 / size, within(1e-6));
      assertThat(judgement.isSure()).isEqualTo(isSure(judgement));
    }
    assertThat(judgement.regretShare()).isBetween(0.0, 1.0);
    assertThat(judgement.isSure() && !judgement.isOpen()).isFalse();
  }

  private static boolean isSure(Judgement judgement) {
    return judgement.regretShare() + 2 * judgement.regretShareError() <= 1.0 / 3;
  }

  @Test
  void over_isTheBestOfTheChoicesThatCostLessAndFit() {
    int[] others = new int[1];
    forAnyPaddock(
        (answer, i, findings) -> {
          List<CourseFindings> courses = findings.courses();
          for (int c = 0; c < courses.size(); c++) {
            CourseFindings course = courses.get(c);
            int itself = c;
            Optional<Integer> best =
                IntStream.range(1, courses.size())
                    .boxed()
                    .filter(o -> o != itself && courses.get(o).fits())
                    .filter(o -> courses.get(o).costNow() < course.costNow())
                    .filter(o -> courses.get(o).certaintyGain() > 0)
                    .max(Comparator.comparingDouble(o -> courses.get(o).certaintyGain()));
            assertThat(course.over()).isEqualTo(best.orElse(0));
            others[0] += best.isPresent() ? 1 : 0;
          }
        });
    assertThat(others[0]).isGreaterThan(50);
  }

  @Test
  void costNow_isThatOfTheMeanYearsOverKeeping() {
    forAnyPaddock(
        (answer, i, findings) -> {
          Simulation simulation = answer.decision().simulation();
          double rate = answer.model().farm().finance().discountRate().likely();
          for (CourseFindings course : findings.courses()) {
            Outcome with = simulation.mean(course.place());
            Outcome kept = simulation.mean(findings.courses().get(0).place());
            double cost = 0;
            for (int t = 0; t < with.years(); t++) {
              cost += (with.cost(t) - kept.cost(t)) / Math.pow(1 + rate, t);
            }
            assertThat(course.costNow()).isCloseTo(cost, within(rounding(cost)));
          }
        });
  }

  @Test
  void sureInstead_isASureChoiceThatFitsWhereTheChangeIsNotSure() {
    int[] found = new int[1];
    forAnyPaddock(
        (answer, i, findings) -> {
          if (findings.sure().orElse(true)) {
            assertThat(findings.sureInstead()).isEmpty();
            return;
          }
          List<CourseFindings> sure =
              findings.courses().stream()
                  .skip(1)
                  .filter(course -> course.fits() && course.isSure())
                  .toList();
          assertThat(findings.sureInstead().isPresent()).isEqualTo(!sure.isEmpty());
          findings
              .sureInstead()
              .map(findings.courses()::get)
              .ifPresent(
                  instead -> {
                    assertThat(sure).contains(instead);
                    assertThat(sure)
                        .allMatch(course -> course.certaintyGain() <= instead.certaintyGain());
                    found[0]++;
                  });
        });
    assertThat(found[0]).isPositive();
  }

  @Test
  void sureGain_isThePlansWhereAllIsSureAndNothingWhereNothingIs() {
    int[] count = new int[3];
    Answers.forAll(
        answer -> {
          HowSure found = answer.howSure();
          List<Boolean> sure =
              IntStream.range(0, answer.paddocks())
                  .mapToObj(i -> found.paddock(i).sure())
                  .flatMap(Optional::stream)
                  .collect(Collectors.toCollection(ArrayList::new));
          found.rules().stream()
              .filter(RuleFindings::isPlanned)
              .forEach(rule -> sure.add(rule.isSure()));
          if (!sure.contains(false)) {
            assertThat(found.sureGain()).isEqualTo(found.gain());
            count[0] += sure.isEmpty() ? 0 : 1;
          } else if (!sure.contains(true)) {
            assertThat(found.sureGain()).isEqualTo(Spread.NOTHING);
            count[1]++;
          } else {
            assertThat(found.sureGain()).isNotEqualTo(found.gain());
            count[2]++;
          }
        });
    assertThat(count).doesNotContain(0);
  }

  /** Correlation, slope and crossing once more, by other formulas. */
  @Test
  void breakEven_isWhereTheLineThroughTheDrawsCrossesNothing() {
    int[] count = new int[2];
    Answers.forAll(
        answer -> {
          Simulation simulation = answer.decision().simulation();
          List<BreakEvenValue> all = answer.howSure().breakEvens();
          for (BreakEvenValue value : all) {
            int place = answer.model().inputs().all().indexOf(value.input());
            double[] x = simulation.drawn(place);
            assertThat(value.low()).isEqualTo(Arrays.stream(x).min().orElseThrow());
            assertThat(value.high()).isEqualTo(Arrays.stream(x).max().orElseThrow());
            double[] gain = simulation.npv(Alternatives.PLAN);
            if (value.paddock() >= 0) {
              CourseFindings kept = answer.howSure().paddock(value.paddock()).courses().get(0);
              gain = Sample.difference(gain, simulation.npv(kept.place()));
            }
            double slope = slope(x, gain);
            double crossing = Sample.mean(x) - Sample.mean(gain) / slope;
            boolean expected =
                counts(x, gain, all.size()) && crossing >= value.low() && crossing <= value.high();
            assertThat(value.value().isPresent())
                .as("%s, %s", answer.name(), value.input().name())
                .isEqualTo(expected);
            value
                .value()
                .ifPresent(at -> assertThat(at).isCloseTo(crossing, within(rounding(crossing))));
            count[expected ? 1 : 0]++;
          }
        });
    // That neither case went untried; a story of the response leaves few slopes that count.
    assertThat(count[0]).isGreaterThanOrEqualTo(10);
    assertThat(count[1]).isGreaterThanOrEqualTo(5);
  }

  @Test
  void movers_areTheInputsWhoseSlopeCounts() {
    int[] count = new int[2];
    Answers.forAll(
        answer -> {
          HowSure found = answer.howSure();
          List<Unknown> movers = found.byVarianceShare();
          assertThat(movers)
              .isSortedAccordingTo(
                  Comparator.comparingDouble((Unknown unknown) -> -unknown.varianceShare()));
          Simulation simulation = answer.decision().simulation();
          if (!answer.acts()) {
            return;
          }
          double[] gain = simulation.npv(Alternatives.PLAN);
          for (Unknown unknown : found.unknowns()) {
            double[] x = simulation.drawn(unknown.place());
            boolean counts = counts(x, gain, found.unknowns().size());
            assertThat(movers.contains(unknown)).as(unknown.name()).isEqualTo(counts);
            double steepest = Sample.standardDeviation(gain) / Sample.standardDeviation(x);
            assertThat(unknown.line().slope())
                .isCloseTo(slope(x, gain), within(1e-6 + ROUNDING_OF_CORRELATION * steepest));
            count[counts ? 1 : 0]++;
          }
        });
    assertThat(count[0]).isGreaterThan(100);
    assertThat(count[1]).isGreaterThan(50);
  }

  private static double slope(double[] x, double[] y) {
    return correlation(x, y) * Sample.standardDeviation(y) / Sample.standardDeviation(x);
  }

  private static double correlation(double[] x, double[] y) {
    return new org.apache.commons.math3.stat.correlation.PearsonsCorrelation().correlation(x, y);
  }

  /** Two-sided t of a correlation against the normal quantile, the number of tries allowed for. */
  private static boolean counts(double[] x, double[] y, int tried) {
    double r = correlation(x, y);
    double t = Math.abs(r) * Math.sqrt((x.length - 2) / (1 - r * r));
    return t > new NormalDistribution().inverseCumulativeProbability(1 - 0.025 / tried);
  }
}
