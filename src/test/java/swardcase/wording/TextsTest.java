package swardcase.wording;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Collection;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Properties;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import swardcase.decision.Enquiry;
import swardcase.decision.Quantity;
import swardcase.decision.RecordsStudy;
import swardcase.farm.UseRule;
import swardcase.joining.Stay;
import swardcase.outcome.Cause;
import swardcase.outcome.MoneyKind;
import swardcase.page.Shell;
import swardcase.report.BudgetCase;
import swardcase.report.Call;
import swardcase.report.HowSureReport.BreakEvenLine;
import swardcase.report.HowSureReport.StoryLine;
import swardcase.report.JoiningReport;
import swardcase.report.KnownClover;
import swardcase.report.PaddockResult.OestrogenRating;
import swardcase.report.PlanResult;
import swardcase.report.Reason;
import swardcase.report.RecordsReport;
import swardcase.report.Reproduction.Finding;
import swardcase.report.WhyNot;
import swardcase.report.WinterFeed;
import swardcase.search.PlanLimit;
import swardcase.sward.LeafAgreement;
import swardcase.sward.StandGate;

class TextsTest {

  /** Constants of the records that have words of their own, by the prefix of their keys. */
  private static final Map<String, Collection<? extends Enum<?>>> OF_CONSTANTS =
      Map.ofEntries(
          Map.entry("advice", EnumSet.allOf(Enquiry.Advice.class)),
          Map.entry("breakEven", EnumSet.allOf(BreakEvenLine.Place.class)),
          Map.entry("records.gainOf", EnumSet.allOf(RecordsReport.GainOf.class)),
          Map.entry("records.number", EnumSet.allOf(RecordsStudy.Number.class)),
          Map.entry("buy", EnumSet.complementOf(EnumSet.of(Enquiry.Kind.NUMBER))),
          Map.entry("explain", EnumSet.allOf(Quantity.class)),
          Map.entry("leafTest", EnumSet.allOf(LeafAgreement.Side.class)),
          Map.entry("rule", EnumSet.allOf(PlanResult.Rule.class)),
          Map.entry("rule.short", EnumSet.allOf(PlanResult.Rule.class)),
          Map.entry("lookFirst", EnumSet.allOf(StandGate.What.class)),
          Map.entry("lookFirst.state", EnumSet.complementOf(EnumSet.of(StandGate.State.GOOD))),
          Map.entry(
              "lookFirst.unit",
              EnumSet.range(StandGate.What.SOIL_PHOSPHORUS, StandGate.What.NODULES)),
          Map.entry(
              "before.walk", EnumSet.of(Enquiry.Advice.ABOUT_EVEN, Enquiry.Advice.NOT_WORTH_DOING)),
          Map.entry("joining.where", EnumSet.allOf(Stay.Where.class)),
          Map.entry("joining.break", EnumSet.allOf(JoiningReport.Break.class)),
          Map.entry("joining.shut", EnumSet.allOf(JoiningReport.When.class)),
          Map.entry("plants", EnumSet.allOf(Enquiry.Advice.class)),
          Map.entry("settles", EnumSet.allOf(Enquiry.Kind.class)),
          Map.entry("result.high", EnumSet.allOf(Enquiry.Kind.class)),
          Map.entry("result.low", EnumSet.allOf(Enquiry.Kind.class)),
          Map.entry("formononetin", EnumSet.allOf(KnownClover.FormononetinFrom.class)),
          Map.entry("oestrogen", with(OestrogenRating.values(), Finding.Kind.values())),
          Map.entry("otherCall", EnumSet.of(Call.KEEP, Call.UNDECIDED)),
          Map.entry("page.view", EnumSet.allOf(Shell.View.class)),
          Map.entry("plan.limit", EnumSet.allOf(PlanLimit.class)),
          Map.entry(
              "reason",
              with(
                  new Call[] {Call.KEEP, Call.UNDECIDED},
                  EnumSet.complementOf(EnumSet.of(Reason.Kind.GAINS)).toArray(Reason.Kind[]::new))),
          Map.entry("reason.most", EnumSet.allOf(Cause.class)),
          Map.entry("credit", EnumSet.allOf(Cause.class)),
          Map.entry("reason.more", EnumSet.allOf(MoneyKind.class)),
          Map.entry("reason.less", EnumSet.allOf(MoneyKind.class)),
          Map.entry("gainPart", EnumSet.allOf(MoneyKind.class)),
          Map.entry("story", EnumSet.allOf(StoryLine.Story.class)),
          Map.entry("whyNot", EnumSet.allOf(WhyNot.Kind.class)),
          Map.entry("costItem", EnumSet.complementOf(EnumSet.of(BudgetCase.Kind.LINE))),
          Map.entry("todo.keepOff", EnumSet.allOf(UseRule.When.class)),
          Map.entry("todo.until", EnumSet.allOf(UseRule.When.class)),
          Map.entry("work.short", EnumSet.allOf(PlanResult.Work.Kind.class)),
          Map.entry("winter", EnumSet.allOf(WinterFeed.Finding.class)),
          Map.entry("map.call", EnumSet.allOf(Call.class)),
          Map.entry("work", EnumSet.allOf(PlanResult.Work.Kind.class)));

  private static List<Enum<?>> with(Enum<?>[] some, Enum<?>[] others) {
    return Stream.concat(Stream.of(some), Stream.of(others)).toList();
  }

  @Test
  void get_putsArgumentsInTheirPlaces_onceOnly() {
    assertThat(Texts.get("cards.name", 3, "{0} and {9}", "12", "keep"))
        .isEqualTo("3. {0} and {9}, 12 ha: keep");
  }

  @Test
  void get_ofUnknownKey_saysWhich() {
    assertThatThrownBy(() -> Texts.get("no.such.key"))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("no.such.key");
  }

  @Test
  void bundle_holdsNoKeyThatNothingUses() throws IOException {
    Properties words = new Properties();
    for (String file : List.of("words.properties", "page.properties")) {
      words.load(
          new InputStreamReader(TextsTest.class.getResourceAsStream(file), StandardCharsets.UTF_8));
    }
    String code;
    try (Stream<Path> files = Files.walk(Path.of("src/main/java/swardcase"))) {
      code =
          files
              .filter(
                  file ->
                      file.toString()
                          .matches(
                              ".*(folder|report|wording|view|paper|sheet|page|serve).[A-Za-z]+\\.java"))
              .map(TextsTest::read)
              .collect(Collectors.joining());
    }
    TreeSet<String> unused = new TreeSet<>(words.stringPropertyNames());
    unused.removeIf(key -> code.contains("\"" + key + "\""));
    unused.removeIf(key -> key.matches("reason.+\\.(less|none)") && code.contains(beforeSign(key)));
    unused.removeIf(
        key -> {
          String asked = key.replaceAll("\\.(help|unit)$", "");
          String ofFile = asked.replaceAll("^key\\.", "");
          String inList = ofFile.replaceAll("^(mobs|other_stock)\\.", "");
          return !key.equals(ofFile)
              && Stream.of(asked, ofFile, inList)
                  .anyMatch(used -> code.contains("\"" + used + "\""));
        });
    unused.removeIf(key -> key.matches("glossary\\.\\d+\\.(term|text)"));
    OF_CONSTANTS.forEach(
        (prefix, constants) ->
            constants.forEach(constant -> unused.remove(prefix + "." + constant.name())));
    EnumSet.allOf(Quantity.class).forEach(what -> unused.remove("explain.how." + what.name()));
    unused.removeIf(
        key -> {
          String total = key.replaceAll("^total\\.|\\.means$", "");
          return key.startsWith("total.") && code.contains("\"" + total + "\"");
        });
    assertThat(words.size()).isGreaterThan(100);
    assertThat(unused).isEmpty();
  }

  @Test
  void bundle_ofEveryConstantThatIsPrinted_hasItsWords() {
    OF_CONSTANTS.forEach(
        (prefix, constants) ->
            assertThat(constants)
                .isNotEmpty()
                .allSatisfy(
                    constant ->
                        assertThat(Texts.has(prefix + "." + constant.name()))
                            .as(prefix + "." + constant.name())
                            .isTrue()));
  }

  /** The key in the code of words that are chosen by the sign of a sum. */
  private static String beforeSign(String key) {
    return "\"" + key.replaceAll("\\.(less|none)$", "") + "\"";
  }

  private static String read(Path file) {
    try {
      return Files.readString(file);
    } catch (IOException failure) {
      throw new UncheckedIOException(failure);
    }
  }
}
