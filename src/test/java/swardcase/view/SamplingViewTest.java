package swardcase.view;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import swardcase.Answers;
import swardcase.RandomFarms;
import swardcase.decision.Enquiry;
import swardcase.report.Call;
import swardcase.report.FindOut;
import swardcase.report.Report;
import swardcase.wording.CardFacts;
import swardcase.wording.FindOutWords;
import swardcase.wording.MoneyFaces;
import swardcase.wording.PaddockWords;

class SamplingViewTest {

  private static Report report;
  private static List<String> lines;

  /** Not while the class is being loaded: other threads would wait for it for ever. */
  @BeforeAll
  static void decide() {
    report = Answers.of("mixed-farm", RandomFarms.demo("mixed-farm"), 1, 200).report();
    lines = SamplingView.of(report, 130);
  }

  private static String line(String start) {
    return lines.stream().filter(each -> each.startsWith(start)).findFirst().orElseThrow();
  }

  @Test
  void of_paddocks_saysTheCallAndHowOftenItIsWrong() {
    assertThat(line("House")).contains("yes");
    assertThat(line("Creek")).contains("no").contains("under 1");
  }

  /** A paddock without plants is never called safe, and a first walk has its number. */
  @Test
  void of_paddockNobodyWalked_callsNothingAndSaysHowManyPlantsToWalkFor() {
    FindOut walk = report.plantsOf("Corner").orElseThrow();

    assertThat(walk.kind()).isEqualTo(Enquiry.Kind.WALK);
    assertThat(walk.advice()).isEqualTo(Enquiry.Advice.WORTH_DOING);
    assertThat(line("Corner"))
        .contains("nobody looked")
        .contains("?")
        .endsWith(" " + walk.plants());
    assertThat(String.join(" ", lines)).contains("A first walk through Corner, " + walk.plants());
  }

  /** It is too close to call, and the walk is what would settle it. */
  @Test
  void reason_ofThePaddockNobodyWalked_saysThatWalkingItWouldSettleIt() {
    int corner = 11;

    assertThat(report.paddocks().get(corner).call()).isEqualTo(Call.UNDECIDED);
    assertThat(new PaddockWords(report, new MoneyFaces(report)).reason(corner))
        .startsWith("Nobody has looked at its clover.")
        .contains(
            "To walk it and identify "
                + report.plantsOf("Corner").orElseThrow().plants()
                + " plants would settle it soonest.");
  }

  @Test
  void lines_ofAnyFarm_areNotLongerThanTheTerminal() {
    Answers.forAll(
        answer ->
            assertThat(SamplingView.of(answer.report(), 80))
                .as(answer.name())
                .allMatch(line -> line.codePointCount(0, line.length()) <= 80)
                .anyMatch(line -> line.length() >= 60));
  }

  /** One number of plants a paddock, from the one list: here, on the card and in its words. */
  @Test
  void of_everyPaddock_printsTheNumberOfTheOneList() {
    FindOutWords words = new FindOutWords(report);
    report
        .paddocks()
        .forEach(
            paddock -> {
              FindOut row = report.plantsOf(paddock.name()).orElseThrow();
              assertThat(line(paddock.name())).endsWith(words.plants(paddock.name()));
              assertThat(CardFacts.of(report, paddock, ""))
                  .filteredOn(fact -> fact.key().equals("fact.plants"))
                  .extracting(CardFacts.Fact::value)
                  .containsExactly(words.plants(paddock.name()));
              assertThat(words.plants(paddock.name()))
                  .satisfiesAnyOf(
                      said -> assertThat(said).startsWith(String.valueOf(row.plants())),
                      said -> assertThat(row.isWorthKnowing()).isFalse());
            });
  }
}
