package swardcase.wording;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.EnumSet;
import java.util.List;
import java.util.OptionalDouble;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import swardcase.Answers;
import swardcase.RandomFarms;
import swardcase.report.Call;
import swardcase.report.PaddockResult;
import swardcase.report.PaddockResult.OptionResult;
import swardcase.report.Reason;
import swardcase.report.Report;
import swardcase.report.Returns;

/** Sentences of a paddock say what its record says. */
class PaddockWordsTest {

  private static Report report(String farm) {
    return Answers.of(farm, RandomFarms.demo(farm), 1, 100).report();
  }

  @Test
  void reasons_ofDemoFarms_nameTheOptionAndFitTheCall() {
    Set<Reason.Kind> seen = EnumSet.noneOf(Reason.Kind.class);
    for (String farm : List.of("mixed-farm", "risky-farm", "current-farm")) {
      Report report = report(farm);
      PaddockWords words = new PaddockWords(report, new MoneyFaces(report));
      for (int i = 0; i < report.paddocks().size(); i++) {
        PaddockResult paddock = report.paddocks().get(i);
        Reason reason = paddock.reason();
        seen.add(reason.kind());
        String sentence = words.reason(i);
        assertThat(sentence).as(paddock.name()).endsWith(".").doesNotContain("{", "null");
        if (reason.kind() == Reason.Kind.GAINS) {
          assertThat(paddock.call()).isIn(Call.ACT, Call.KEEP_OFF);
        } else {
          reason
              .action()
              .flatMap(paddock::option)
              .ifPresent(option -> assertThat(sentence).contains(option.name()));
        }
        boolean close = reason.kind() == Reason.Kind.CLOSE || reason.kind() == Reason.Kind.LIMIT;
        assertThat(paddock.call() == Call.UNDECIDED).as(paddock.name()).isEqualTo(close);
        for (OptionResult option : paddock.options()) {
          assertThat(words.whyNot(i, option).isEmpty()).isEqualTo(option.whyNot().isEmpty());
          assertThat(words.whyNot(i, option)).doesNotContain("{");
        }
      }
      assertThat(report.plan().order()).hasSameSizeAs(report.paddocks()).doesNotHaveDuplicates();
      var calls = report.plan().calls();
      assertThat(calls.act() + calls.keepOff() + calls.keep() + calls.undecided())
          .isEqualTo(report.paddocks().size());
    }
    assertThat(seen).contains(Reason.Kind.GAINS, Reason.Kind.CLOSE, Reason.Kind.WOULD_LOSE);
  }

  @ParameterizedTest
  @CsvSource({"NONE, , not earned back", "VALUE, 16.4, 16 %", "SEVERAL, , several"})
  void rateOfReturn_ofEachStatus_isANumberOrAWord(
      Returns.Status status, Double percent, String words) {
    OptionalDouble rate = percent == null ? OptionalDouble.empty() : OptionalDouble.of(percent);
    Returns returns =
        new Returns(
            new Returns.Rate(status, rate),
            OptionalDouble.empty(),
            OptionalDouble.empty(),
            OptionalDouble.of(1.26));
    assertThat(ReturnsWords.of(returns, 15))
        .isEqualTo(new ReturnsWords(words, "not earned back", "over 15", "1.3"));
  }
}
