package swardcase.report;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import swardcase.Answers;
import swardcase.Answers.Answer;
import swardcase.decision.CourseFindings;
import swardcase.decision.PaddockFindings;
import swardcase.report.PaddockResult.OptionResult;
import swardcase.report.WhyNot.Kind;

/** What is said of a choice that was not made is true, on any farm. */
class WhyNotTest {

  private static CourseFindings course(Answer answer, PaddockFindings findings, String key) {
    return findings.courses().stream()
        .filter(c -> answer.model().actions().get(c.choice().action()).key().equals(key))
        .findFirst()
        .orElseThrow();
  }

  private static void check(
      Answer answer, PaddockResult paddock, OptionResult option, PaddockFindings findings) {
    WhyNot why = option.whyNot().orElseThrow();
    CourseFindings course = course(answer, findings, option.action());
    CourseFindings chosen = course(answer, findings, paddock.action());
    double gain = option.gain().mean();
    assertThat(why.gain()).isEqualTo(gain);
    assertThat(why.than().isPresent()).isEqualTo(why.thanGain().isPresent());
    assertThat(why.limit().isPresent()).isEqualTo(why.kind() == Kind.LIMIT);
    switch (why.kind()) {
      case LOSES -> {
        assertThat(gain).isNotPositive();
        assertThat(why.than()).isEmpty();
      }
      case CHEAPER -> {
        OptionResult than =
            paddock.options().stream()
                .filter(o -> o.name().equals(why.than().orElseThrow()))
                .findFirst()
                .orElseThrow();
        CourseFindings cheaper = course(answer, findings, than.action());
        assertThat(than.gain().mean()).isEqualTo(why.thanGain().orElseThrow());
        assertThat(why.thanGain().orElseThrow()).isGreaterThanOrEqualTo(gain);
        assertThat(cheaper.costNow()).isLessThan(course.costNow());
        assertThat(cheaper.fits()).isTrue();
      }
      case LESS -> {
        assertThat(paddock.isInPlan()).isTrue();
        assertThat(why.than()).contains(paddock.actionName());
        assertThat(why.thanGain()).hasValue(paddock.gain().mean());
        assertThat(gain).isLessThanOrEqualTo(paddock.gain().mean());
      }
      case RISK -> {
        assertThat(why.than()).contains(paddock.actionName());
        assertThat(why.thanGain()).hasValue(paddock.gain().mean());
        assertThat(gain).isGreaterThan(paddock.gain().mean());
        assertThat(course.certaintyGain()).isLessThan(chosen.certaintyGain());
        assertThat(course.fits()).isTrue();
      }
      case LIMIT -> {
        assertThat(gain).isPositive();
        assertThat(course.passes().stream().map(Enum::name))
            .contains(why.limit().orElseThrow().name());
      }
      case LITTLE -> {
        assertThat(gain).isGreaterThan(paddock.gain().mean());
        assertThat(course.fits()).isTrue();
      }
    }
  }

  @Test
  void whyNot_ofAnyOption_saysWhatIsTrue() {
    Map<Kind, Integer> seen = new EnumMap<>(Kind.class);
    Answers.forAll(
        answer -> {
          for (int i = 0; i < answer.paddocks(); i++) {
            PaddockResult paddock = answer.report().paddocks().get(i);
            for (OptionResult option : paddock.options()) {
              assertThat(option.whyNot().isEmpty()).isEqualTo(option.chosen());
              if (!option.chosen()) {
                check(answer, paddock, option, answer.howSure().paddock(i));
                seen.merge(option.whyNot().get().kind(), 1, Integer::sum);
              }
            }
          }
        });
    assertThat(seen).containsOnlyKeys(Kind.values());
  }

  @Test
  void reason_ofAnyPaddock_fitsItsCall() {
    Answers.forAll(
        answer -> {
          for (PaddockResult paddock : answer.report().paddocks()) {
            Reason reason = paddock.reason();
            List<Reason.Kind> may =
                switch (paddock.call()) {
                  case ACT, KEEP_OFF -> List.of(Reason.Kind.GAINS, Reason.Kind.CROPS);
                  case UNDECIDED -> List.of(Reason.Kind.CLOSE, Reason.Kind.LIMIT);
                  case KEEP ->
                      List.of(
                          Reason.Kind.NOTHING_ELSE,
                          Reason.Kind.SELDOM,
                          Reason.Kind.NOTHING_TO_GAIN,
                          Reason.Kind.NOT_ARABLE,
                          Reason.Kind.YEARS_COUNTED,
                          Reason.Kind.WOULD_LOSE);
                };
            assertThat(reason.kind()).isIn(may);
            if (reason.kind() == Reason.Kind.GAINS) {
              assertThat(reason.action()).contains(paddock.action());
            }
            reason.action().ifPresent(key -> assertThat(paddock.option(key)).isPresent());
          }
        });
  }
}
