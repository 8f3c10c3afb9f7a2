package swardcase.report;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.List;
import java.util.function.Function;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import swardcase.Answers;
import swardcase.Answers.Answer;
import swardcase.chance.Drawn;
import swardcase.chance.Spread;
import swardcase.farm.Finance;
import swardcase.money.NetPresentValue;
import swardcase.outcome.Cause;
import swardcase.outcome.MoneyKind;

/** Every sum that is printed, added up again from the parts that are printed. */
class SumsTest {

  private static void assertSum(Answer answer, String what, DoubleStream parts, double sum) {
    double[] all = parts.toArray();
    double size = Math.abs(sum) + Arrays.stream(all).map(Math::abs).sum();
    assertThat(Arrays.stream(all).sum())
        .as("%s of %s", what, answer.name())
        .isCloseTo(sum, within(1e-6 + 1e-9 * size));
  }

  private static void assertSum(Answer answer, String what, double part, double sum) {
    assertSum(answer, what, DoubleStream.of(part), sum);
  }

  private static DoubleStream parts(List<GainPart> parts) {
    assertThat(parts).extracting(GainPart::what).containsExactly(MoneyKind.values());
    return parts.stream().mapToDouble(GainPart::mean);
  }

  @Test
  void gainOfThePlan_isThatOfItsPartsItsYearsAndItsPaddocks() {
    int[] acting = new int[1];
    Answers.forAll(
        answer -> {
          PlanResult plan = answer.report().plan();
          double gain = plan.gain().mean();
          assertSum(answer, "parts", parts(plan.parts()), gain);
          assertSum(
              answer, "years", plan.years().stream().mapToDouble(PlanResult.PlanYear::mean), gain);
          double paddocks =
              answer.report().paddocks().stream().mapToDouble(p -> p.gain().mean()).sum();
          double rules = plan.farmWide().stream().mapToDouble(r -> r.gain().mean()).sum();
          assertSum(
              answer, "paddocks", DoubleStream.of(paddocks, rules, plan.shared().mean()), gain);
          acting[0] += answer.acts() ? 1 : 0;
          assertThat(plan.keepsAll()).isEqualTo(!answer.acts());
          if (!answer.acts()) {
            assertThat(plan.gain()).isEqualTo(Spread.NOTHING);
          }
        });
    assertThat(acting[0]).isGreaterThan(50);
  }

  @Test
  void gainOfAPaddock_isThatOfItsParts() {
    Answers.forAll(
        answer -> {
          for (PaddockResult paddock : answer.report().paddocks()) {
            if (paddock.isInPlan()) {
              assertSum(answer, paddock.name(), parts(paddock.parts()), paddock.gain().mean());
            } else {
              assertThat(paddock.parts()).isEmpty();
              assertThat(paddock.gain()).isEqualTo(Spread.NOTHING);
            }
          }
        });
  }

  /** Of crops and of costs the causes are sums that the parts know too. */
  @Test
  void gainOfEveryChoice_isThatOfItsCauses() {
    Answers.forAll(
        answer -> {
          for (PaddockResult paddock : answer.report().paddocks()) {
            assertThat(paddock.credit()).extracting(Credit::what).containsExactly(Cause.values());
            assertSum(answer, paddock.name(), causes(paddock.credit()), paddock.gain().mean());
            for (PaddockResult.OptionResult option : paddock.options()) {
              assertThat(option.credit()).extracting(Credit::what).containsExactly(Cause.values());
              assertSum(answer, option.action(), causes(option.credit()), option.gain().mean());
            }
            if (paddock.isInPlan()) {
              assertThat(paddock.credit())
                  .isEqualTo(paddock.option(paddock.action()).orElseThrow().credit());
              assertSum(
                  answer,
                  "crops",
                  parts(paddock, MoneyKind.CROPS),
                  paddock.credit().get(Cause.CROPS.ordinal()).mean());
              assertSum(
                  answer,
                  "costs",
                  parts(paddock, MoneyKind.COSTS, MoneyKind.LABOUR, MoneyKind.END_VALUE),
                  paddock.credit().get(Cause.COSTS.ordinal()).mean());
            }
          }
        });
  }

  private static DoubleStream causes(List<Credit> credit) {
    return credit.stream().mapToDouble(Credit::mean);
  }

  private static DoubleStream parts(PaddockResult paddock, MoneyKind... kinds) {
    return paddock.parts().stream()
        .filter(part -> List.of(kinds).contains(part.what()))
        .mapToDouble(GainPart::mean);
  }

  @Test
  void year_isThatOfItsLines() {
    Answers.forAll(
        answer -> {
          Finance finance = answer.model().farm().finance();
          PlanResult plan = answer.report().plan();
          assertThat(plan.years()).hasSize(finance.horizonYears());
          double sum = 0;
          double discount = 1;
          double lowest = Double.POSITIVE_INFINITY;
          for (PlanResult.PlanYear year : plan.years()) {
            assertSum(
                answer,
                "year",
                DoubleStream.of(
                    -year.cost(),
                    -year.labour(),
                    year.supplementSaved(),
                    year.lambsSaved(),
                    year.other()),
                year.net());
            assertSum(answer, "year with", year.without() + year.net(), year.with());
            assertSum(answer, "year now", discount * year.net(), year.mean());
            sum += year.net();
            assertSum(answer, "years so far", sum, year.cumulative());
            lowest = Math.min(lowest, year.cumulative());
            discount /= 1 + finance.discountRate().likely();
          }
          double least = lowest;
          assertThat(plan.years())
              .anyMatch(y -> y.year() == plan.lowestYear() && y.cumulative() == least);
        });
  }

  @Test
  void gain_atOtherRatesAndAsAnEqualYearlySum_isThatOfTheYears() {
    Answers.forAll(
        answer -> {
          PlanResult plan = answer.report().plan();
          double rate = answer.model().farm().finance().discountRate().likely();
          double[] net = plan.years().stream().mapToDouble(PlanResult.PlanYear::net).toArray();
          PlanResult.RateEnds rates = plan.rates();
          assertSum(
              answer,
              "low rate",
              NetPresentValue.of(rates.lowPercent() / 100, net),
              rates.gainAtLow());
          assertSum(
              answer,
              "high rate",
              NetPresentValue.of(rates.highPercent() / 100, net),
              rates.gainAtHigh());
          double[] equal = new double[net.length + 1];
          Arrays.fill(equal, 1, equal.length, plan.annuity().mean());
          assertSum(answer, "yearly sum", NetPresentValue.of(rate, equal), plan.gain().mean());
        });
  }

  @Test
  void gainOfAnOption_isThatOfItsFlowsAndOfItsSteps() {
    int[] steps = new int[1];
    Answers.forAll(
        answer -> {
          double rate = answer.model().farm().finance().discountRate().likely();
          for (PaddockResult paddock : answer.report().paddocks()) {
            for (PaddockResult.OptionResult option : paddock.options()) {
              double[] flows =
                  option.cashFlow().stream().mapToDouble(Double::doubleValue).toArray();
              double gain = option.gain().mean();
              assertSum(answer, option.name(), NetPresentValue.of(rate, flows), gain);
              double over =
                  paddock.option(option.step().over()).map(o -> o.gain().mean()).orElse(0.0);
              assertSum(answer, option.name(), over + option.step().gain().mean(), gain);
              steps[0] += over == 0 ? 0 : 1;
              double[] equal = new double[flows.length + 1];
              Arrays.fill(equal, 1, equal.length, option.annuityPerHa().mean() * paddock.areaHa());
              assertSum(answer, option.name(), NetPresentValue.of(rate, equal), gain);
              if (option.chosen()) {
                assertThat(option.gain()).isEqualTo(paddock.gain());
                assertSum(
                    answer,
                    "cost of " + option.name(),
                    option.costPerHa().mean() * paddock.areaHa(),
                    paddock.cost().mean());
              }
            }
            assertThat(paddock.options().stream().filter(PaddockResult.OptionResult::chosen))
                .hasSize(paddock.isInPlan() ? 1 : 0);
          }
        });
    assertThat(steps[0]).isGreaterThan(50);
  }

  private static DoubleStream means(Answer answer, Function<PaddockResult, Drawn> of) {
    return answer.report().paddocks().stream().mapToDouble(paddock -> of.apply(paddock).mean());
  }

  @Test
  void farm_isTheSumOfItsPaddocks() {
    Answers.forAll(
        answer -> {
          WinterFeed feed = answer.report().winterFeed();
          assertSum(
              answer,
              "supplement",
              means(answer, PaddockResult::supplementTonnes),
              feed.supplementTonnes().mean());
          assertSum(
              answer,
              "shortfall",
              means(answer, PaddockResult::shortfallMj),
              feed.shortfallMj().mean());
          assertSum(
              answer,
              "cost of supplement",
              means(answer, PaddockResult::supplementCost),
              feed.supplementCost().mean());
          assertSum(
              answer,
              "winter growth",
              answer.report().paddocks().stream()
                  .mapToDouble(p -> p.areaHa() * p.dryMatterLostKgPerHa().mean()),
              feed.dryMatterLostKg().mean());
          PlanResult plan = answer.report().plan();
          assertSum(
              answer,
              "cost",
              DoubleStream.concat(
                  means(answer, PaddockResult::cost),
                  plan.farmWide().stream().mapToDouble(rule -> rule.cost().mean())),
              plan.cost().mean());
          assertSum(
              answer,
              "cost by years",
              plan.years().stream().mapToDouble(year -> year.cost() + year.labour()),
              plan.cost().mean());
        });
  }

  @Test
  void flock_isTheSumOfItsMobs() {
    Answers.forAll(
        answer -> {
          Reproduction flock = answer.report().reproduction();
          assertThat(flock.mobs().stream().mapToInt(Reproduction.MobResult::ewes).sum())
              .isEqualTo(flock.ewesJoined());
          assertSum(
              answer,
              "ewes in lamb",
              flock.mobs().stream().mapToDouble(m -> m.ewes() * m.pregnantPercent().mean()),
              flock.ewesJoined() * flock.pregnantPercent().mean());
          assertSum(
              answer,
              "ewes in lamb without oestrogen",
              flock.mobs().stream()
                  .mapToDouble(m -> m.ewes() * m.pregnantPercentUnaffected().mean()),
              flock.ewesJoined() * flock.pregnantPercentUnaffected().mean());
        });
  }

  @Test
  void callsAndOrder_countEveryPaddockOnce() {
    Answers.forAll(
        answer -> {
          PlanResult plan = answer.report().plan();
          PlanResult.Calls calls = plan.calls();
          int paddocks = answer.paddocks();
          assertThat(calls.act() + calls.keepOff() + calls.keep() + calls.undecided())
              .isEqualTo(paddocks);
          assertThat(plan.order())
              .containsExactlyInAnyOrderElementsOf(
                  IntStream.rangeClosed(1, paddocks).boxed().toList());
          List<PaddockResult> all = answer.report().paddocks();
          assertThat(all.stream().filter(PaddockResult::isInPlan))
              .hasSize(calls.changes() - calls.rules());
          assertThat(plan.farmWide()).hasSize(calls.rules());
          assertThat(
                  all.stream().filter(p -> !p.sure().orElse(true)).count()
                      + plan.farmWide().stream().filter(rule -> !rule.sure()).count())
              .isEqualTo(calls.unsure());
        });
  }

  @Test
  void howSure_tellsTheSameGain() {
    Answers.forAll(
        answer -> {
          Spread gain = answer.report().plan().gain();
          HowSureReport sure = answer.report().howSure().orElseThrow();
          assertThat(sure.npv()).isEqualTo(gain.drawn());
          assertThat(sure.npvMean()).isEqualTo(gain.mean());
          assertThat(sure.chanceItPays()).isEqualTo(gain.chancePays());
          assertThat(sure.annuity()).isEqualTo(answer.report().plan().annuity());
          for (int i = 0; i < answer.paddocks(); i++) {
            PaddockResult paddock = answer.report().paddocks().get(i);
            HowSureReport.PaddockSure of = sure.paddocks().get(i);
            assertThat(of.verdict()).isEqualTo(paddock.call());
            if (paddock.isInPlan()) {
              PaddockResult.OptionResult option = paddock.option(paddock.action()).orElseThrow();
              assertThat(of.gain()).isEqualTo(paddock.gain().drawn());
              assertThat(of.over()).isEqualTo(option.step().over());
              assertThat(of.regretShare()).isEqualTo(option.step().regretShare());
              assertThat(paddock.sure()).contains(option.step().sure());
            }
          }
        });
  }
}
