package swardcase.report;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Comparator;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import swardcase.Answers;
import swardcase.FarmCopy;
import swardcase.RandomFarms;
import swardcase.decision.Enquiry.Advice;
import swardcase.decision.Enquiry.Kind;
import swardcase.farm.Farm;
import swardcase.farm.Paddock;
import swardcase.wording.FindOutWords;

/** What must hold for the one list of what can be found out, on any farm. */
class FindOutLawsTest {

  private static final String FORMONONETIN = "formononetin of ";

  @Test
  void tests_areAdvised_onlyWhereTheyAreWorthMoreThanTheyCost() {
    Set<Advice> seen = EnumSet.noneOf(Advice.class);
    Answers.forAll(
        answer ->
            answer.report().findOut().stream()
                .filter(FindOut::isTest)
                .forEach(
                    row -> {
                      seen.add(row.advice());
                      assertThat(row.price()).as(answer.name()).isPresent();
                      if (row.isWorthKnowing()) {
                        assertThat(row.worth())
                            .as(answer.name())
                            .isGreaterThan(row.price().getAsDouble());
                        assertThat(row.changes()).as(answer.name()).isNotEmpty();
                      }
                    }));
    assertThat(seen).contains(Advice.WORTH_DOING, Advice.NOT_WORTH_DOING);
  }

  @Test
  void paddocks_haveOneRowForTheirPlantsAndOneForTheirLeaf_aWalkWhereNobodyLooked() {
    Answers.forAll(
        answer -> {
          Report report = answer.report();
          for (PaddockResult paddock : report.paddocks()) {
            List<Kind> kinds =
                report.findOut().stream()
                    .filter(row -> row.paddock().stream().anyMatch(paddock.name()::equals))
                    .map(FindOut::kind)
                    .toList();
            assertThat(kinds)
                .as(answer.name())
                .containsExactlyInAnyOrder(
                    Kind.LEAF_TEST, paddock.clover().isLookedAt() ? Kind.PLANTS : Kind.WALK);
          }
        });
  }

  @Test
  void rows_fallInWorth_soThatThePaddockToWalkFirstStandsFirst() {
    Answers.forAll(
        answer ->
            assertThat(answer.report().findOut())
                .as(answer.name())
                .isSortedAccordingTo(Comparator.comparingDouble(row -> -row.worth())));
  }

  /**
   * Mixed-farm with three paddocks more unwalked: the terminal gives the order, all are in the
   * list.
   */
  @Test
  void walks_ofSeveralUnwalkedPaddocks_areRankedByWorth() {
    Farm farm = RandomFarms.demo("mixed-farm");
    Set<String> unwalked = Set.of("Long", "Far East", "House", "Corner");
    List<Paddock> paddocks =
        farm.paddocks().stream()
            .map(paddock -> unwalked.contains(paddock.name()) ? unwalked(paddock) : paddock)
            .toList();

    Report report =
        Answers.of("unwalked", FarmCopy.of(farm).paddocks(paddocks).build(), 1, 200).report();

    List<FindOut> walks = report.findOut().stream().filter(row -> row.kind() == Kind.WALK).toList();
    assertThat(walks)
        .extracting(row -> row.paddock().orElseThrow())
        .containsExactlyInAnyOrderElementsOf(unwalked);
    assertThat(walks)
        .isSortedAccordingTo(Comparator.comparingDouble(row -> -row.worth()))
        .first()
        .extracting(FindOut::worth)
        .isNotEqualTo(walks.get(3).worth());
    String said = String.join(" ", new FindOutWords(report).before());
    unwalked.forEach(name -> assertThat(said).contains(name));
  }

  private static Paddock unwalked(Paddock of) {
    return new Paddock(
        of.name(),
        of.areaHa(),
        of.cloverShare(),
        of.growthIndex(),
        of.waterlogged(),
        of.arable(),
        of.leafTest(),
        of.use(),
        of.mob(),
        of.seedlingsPerM2(),
        of.signs(),
        List.of());
  }

  /** What would change is what is planned, and it changes into something else. */
  @Test
  void changes_leadFromThePlanToSomethingElse_withinTheResultsThereAre() {
    Answers.forAll(
        answer ->
            answer
                .report()
                .findOut()
                .forEach(
                    row -> {
                      for (FindOut.Change to : row.changes()) {
                        assertThat(to.chance()).isBetween(0.05, 1.0);
                        to.paddock()
                            .ifPresent(
                                name -> {
                                  PaddockResult paddock =
                                      answer.report().paddocks().stream()
                                          .filter(each -> each.name().equals(name))
                                          .findFirst()
                                          .orElseThrow();
                                  assertThat(to.from()).contains(paddock.actionName());
                                  assertThat(to.to()).isNotEqualTo(to.from());
                                });
                      }
                    }));
  }

  /** Only what is open is settled, once, and never by a cultivar that does not stand there. */
  @Test
  void paddock_isSettledOnce_neverByTheFormononetinOfACultivarItDoesNotHave() {
    int[] settled = new int[2];
    Answers.forAll(
        answer -> {
          Report report = answer.report();
          for (PaddockResult paddock : report.paddocks()) {
            List<FindOut> rows =
                report.findOut().stream()
                    .filter(row -> row.settles().contains(paddock.name()))
                    .toList();
            assertThat(rows).as(answer.name()).hasSizeLessThan(2);
            boolean open = paddock.call() == Call.UNDECIDED || !paddock.sure().orElse(true);
            assertThat(open || rows.isEmpty()).as(answer.name()).isTrue();
            for (FindOut row : rows) {
              settled[row.isTest() ? 0 : 1]++;
              assertThat(row.isWorthKnowing()).as(answer.name()).isTrue();
              assertThat(row.paddock().map(paddock.name()::equals).orElse(true)).isTrue();
              String input = row.input().orElse("");
              if (input.startsWith(FORMONONETIN)) {
                assertThat(paddock.clover().found())
                    .as(answer.name() + ", " + paddock.name())
                    .filteredOn(share -> share.share().likely() > 0)
                    .extracting(share -> FORMONONETIN + share.name())
                    .contains(input);
              }
            }
          }
        });
    assertThat(settled[0]).isPositive();
    assertThat(settled[1]).isPositive();
  }

  /** Of a paddock nobody walked nothing is said to have been found. */
  @Test
  void clover_ofAPaddockNobodyWalked_hasNoSharesAndNoRatingUnlessItsLeafWasTested() {
    boolean[] seen = new boolean[1];
    Answers.forAll(
        answer ->
            answer
                .report()
                .paddocks()
                .forEach(
                    paddock -> {
                      KnownClover clover = paddock.clover();
                      boolean looked = clover.isLookedAt();
                      seen[0] |= !looked;
                      assertThat(clover.oldShare().isPresent()).isEqualTo(looked);
                      assertThat(clover.outdatedShare().isPresent()).isEqualTo(looked);
                      assertThat(clover.highOestrogenShareOfSward().isPresent()).isEqualTo(looked);
                      assertThat(clover.chanceAboveRiskSharePercent().isPresent())
                          .isEqualTo(looked);
                      assertThat(clover.found().isEmpty()).isEqualTo(!looked);
                      assertThat(looked || clover.assumedShare() == 1).isTrue();
                      assertThat(
                              looked
                                  || clover.leafTestPercentOfLeaf().isPresent()
                                  || paddock.oestrogenRating()
                                      == PaddockResult.OestrogenRating.UNKNOWN)
                          .isTrue();
                      assertThat(paddock.formononetinPercentOfLeaf().isPresent())
                          .isEqualTo(clover.isOestrogenKnown());
                    }));
    assertThat(seen[0]).isTrue();
  }
}
