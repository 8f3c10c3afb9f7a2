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
  private static final String CHEAP = "(costs less|costs no less, but later,)";
  private static final Pattern LESS =
      Pattern.compile("It " + SUM + " on average, less than the " + MONEY + " of the chosen.*");
  private static final Pattern ABOUT_AS_MUCH =
      Pattern.compile("It " + SUM + " on average, about as much as the chosen action\\.");
  private static final Pattern CHEAPER =
      Pattern.compile(
          "It " + SUM + " on average; ‘(.+)’ " + CHEAP + " and gains (as much|" + MONEY + ")\\.");
  private static final Pattern RISK =
      Pattern.compile("It " + SUM + " on average, but .*, (.+), which gains " + MONEY + "\\.");
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
          step.group(4).startsWith("adds")
              ? number(step.group(4))
              : step.group(4).endsWith("less") ? -number(step.group(4)) : 0;
      note("adds");
      assertThat(signed(step.group(3)) + more).as(reason).isEqualTo(faces.gain(place));
      assertThat(signed(step.group(3))).as(reason).isEqualTo(faces.option(place, over));
      costsLess(step.group(2), over, paddock.option(paddock.action()).orElseThrow());
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
          .isLessThan(number(less.group(2)));
      assertThat(number(less.group(2))).as(why).isEqualTo(faces.gain(place));
    } else if (ABOUT_AS_MUCH.matcher(why).matches()) {
      note("as much");
      assertThat(printed).as(why).isEqualTo(faces.gain(place));
    } else if (cheaper.matches()) {
      note("cheaper");
      OptionResult than = named(paddock, cheaper.group(2));
      double gain = faces.option(place, than);
      boolean alike = cheaper.group(4).equals("as much");
      assertThat(signed(cheaper.group(1))).as(why).isEqualTo(printed);
      assertThat(alike ? printed : number(cheaper.group(5))).as(why).isEqualTo(gain);
      assertThat(gain).as(why).isGreaterThanOrEqualTo(printed);
      assertThat(alike).as(why).isEqualTo(gain == printed);
      costsLess(cheaper.group(3), than, option);
    } else if (risk.matches()) {
      note("risk");
      assertThat(signed(risk.group(1)))
          .as(why)
          .isEqualTo(printed)
          .isGreaterThan(number(risk.group(3)));
      assertThat(number(risk.group(3))).as(why).isEqualTo(faces.gain(place));
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

  /** The cards print the cost a hectare of both; where it is no less, it comes later. */
  private void costsLess(String how, OptionResult than, OptionResult option) {
    double cost = number("A$ " + Words.mean(than.costPerHa()));
    double other = number("A$ " + Words.mean(option.costPerHa()));
    if (how.equals("costs less")) {
      assertThat(cost).as(than.name() + " beside " + option.name()).isLessThan(other);
    } else {
      note("later");
      assertThat(cost).as(than.name() + " beside " + option.name()).isGreaterThanOrEqualTo(other);
    }
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
