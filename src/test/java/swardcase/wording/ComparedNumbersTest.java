package swardcase.wording;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Map;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import swardcase.Answers;
import swardcase.report.PaddockResult;
import swardcase.report.PaddockResult.OptionResult;
import swardcase.report.Report;

/** Sentences that compare sums are true of the sums as they are printed. */
class ComparedNumbersTest {

  private static final String SUM = "(gains \\S+ [\\d,]+|loses \\S+ [\\d,]+|about breaks even)";
  private static final String MONEY = "\\S+ (\u2212?[\\d,]+)";
  private static final String CHEAP = "is cheaper in money of today";
  private static final Pattern LESS =
      Pattern.compile("It " + SUM + " on average; the chosen action gains " + MONEY + "\\.");
  private static final Pattern CHEAPER =
      Pattern.compile("It " + SUM + " on average; ‘(.+)’ " + CHEAP + " and gains " + MONEY + "\\.");
  private static final Pattern RISK =
      Pattern.compile("It " + SUM + " on average, but its bad cases weigh more than .*");
  private static final Pattern LOSES =
      Pattern.compile("On average it " + SUM + " against keeping\\.");
  private static final Pattern STEP =
      Pattern.compile(
          "‘(.+)’ "
              + CHEAP
              + " and "
              + SUM
              + "; this (adds \\S+ [\\d,]+|brings \\S+ [\\d,]+ less|brings about as much), and does");
  private static final Pattern INSTEAD = Pattern.compile("Sure instead: ‘(.+)’, which " + SUM);

  private final Map<String, Integer> seen = new TreeMap<>();

  @Test
  void comparisons_ofAnyFarm_areTrueOfThePrintedSums() {
    Answers.forAll(
        answer -> {
          Report report = answer.report();
          MoneyFaces faces = new MoneyFaces(report);
          PaddockWords words = new PaddockWords(report, faces);
          for (int i = 0; i < report.paddocks().size(); i++) {
            PaddockResult paddock = report.paddocks().get(i);
            ofReason(words.reason(i), faces, i, paddock);
            for (OptionResult option : paddock.options()) {
              ofWhyNot(words.whyNot(i, option), faces, i, paddock, option);
            }
          }
        });
    assertThat(seen.keySet()).contains("adds", "instead", "loses", "less", "cheaper");
  }

  private void ofReason(String reason, MoneyFaces faces, int place, PaddockResult paddock) {
    Matcher step = STEP.matcher(reason);
    if (step.find()) {
      OptionResult over = named(paddock, step.group(1));
      double more =
          step.group(3).startsWith("adds")
              ? number(step.group(3))
              : step.group(3).endsWith("less") ? -number(step.group(3)) : 0;
      note("adds");
      assertThat(signed(step.group(2)) + more).as(reason).isEqualTo(faces.gain(place));
      assertThat(signed(step.group(2))).as(reason).isEqualTo(faces.option(place, over));
      assertThat(Math.signum(more))
          .as(reason)
          .isIn(0.0, Math.signum(paddock.gain().mean() - over.gain().mean()));
    }
    Matcher instead = INSTEAD.matcher(reason);
    if (instead.find()) {
      note("instead");
      assertThat(signed(instead.group(2)))
          .as(reason)
          .isEqualTo(faces.option(place, named(paddock, instead.group(1))));
    }
  }

  private void ofWhyNot(
      String why, MoneyFaces faces, int place, PaddockResult paddock, OptionResult option) {
    double printed = faces.option(place, option);
    Matcher less = LESS.matcher(why);
    Matcher cheaper = CHEAPER.matcher(why);
    Matcher risk = RISK.matcher(why);
    Matcher loses = LOSES.matcher(why);
    if (less.matches()) {
      note("less");
      assertThat(signed(less.group(1)))
          .as(why)
          .isEqualTo(printed)
          .isLessThanOrEqualTo(number(less.group(2)));
      assertThat(number(less.group(2))).as(why).isEqualTo(faces.gain(place));
    } else if (cheaper.matches()) {
      note("cheaper");
      double gain = faces.option(place, named(paddock, cheaper.group(2)));
      assertThat(signed(cheaper.group(1))).as(why).isEqualTo(printed).isLessThanOrEqualTo(gain);
      assertThat(number(cheaper.group(3))).as(why).isEqualTo(gain);
    } else if (risk.matches()) {
      note("risk");
      assertThat(signed(risk.group(1))).as(why).isEqualTo(printed);
    } else if (loses.matches()) {
      note("loses");
      assertThat(signed(loses.group(1))).as(why).isEqualTo(printed).isLessThanOrEqualTo(0);
    } else {
      assertThat(why)
          .matches("|.*(leaves no room for it|too little to be told|cases weigh more).*");
    }
  }

  private void note(String kind) {
    seen.merge(kind, 1, Integer::sum);
  }

  private static OptionResult named(PaddockResult paddock, String name) {
    return paddock.options().stream()
        .filter(option -> option.name().equals(name))
        .findFirst()
        .orElseThrow();
  }

  private static double signed(String sum) {
    if (sum.equals("about breaks even")) {
      return 0;
    }
    return sum.startsWith("loses") ? -number(sum) : number(sum);
  }

  /** The last number of a few words. */
  private static double number(String words) {
    Matcher found = Pattern.compile("(\u2212?[\\d,.]+)(?: less)?$").matcher(words);
    assertThat(found.find()).as(words).isTrue();
    return Double.parseDouble(found.group(1).replace(",", "").replace('\u2212', '-'));
  }
}
