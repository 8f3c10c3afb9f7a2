package swardcase.report;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;
import swardcase.RandomFarms;
import swardcase.decision.Decision;
import swardcase.decision.HowSure;
import swardcase.farm.Farm;
import swardcase.farm.Loan;
import swardcase.intake.FarmFolder;
import swardcase.money.NetPresentValue;
import swardcase.outcome.FarmModel;
import swardcase.search.FixedChoice;
import swardcase.tables.Tables;
import swardcase.tables.TablesLoader;
import swardcase.view.CsvView;
import swardcase.wording.MoneyFaces;
import swardcase.wording.PaddockWords;
import swardcase.wording.PlanWords;

/** What is said of how the plan was found, and the account of a loan. */
class PlanNotesTest {

  private static final Tables TABLES = TablesLoader.from(Path.of("tables")).load();
  private static final LocalDate DATE = LocalDate.of(2026, 11, 25);

  private static Report report(String name, List<FixedChoice> fixed) {
    return report(FarmFolder.read(Path.of("demo-data", name), TABLES).farm(), fixed);
  }

  private static Report report(Farm farm, List<FixedChoice> fixed) {
    Decision decision =
        Decision.of(Decision.draws(new FarmModel(farm, TABLES), 1, 100), fixed, done -> {});
    return ReportBuilder.build(decision, HowSure.of(decision), "test", DATE, List.of());
  }

  @Test
  void notes_farmWithNothingToGain_sayThatNothingBeatsKeeping() {
    Report report = report("current-farm", List.of());
    assertThat(PlanWords.headline(report)).startsWith("Keep");
    assertThat(PlanWords.notes(report, new MoneyFaces(report)))
        .anyMatch(note -> note.contains("the search found no better plan"))
        .anyMatch(note -> note.contains("never sown in this plan: Sandplain"))
        .noneMatch(note -> note.contains("sure changes alone"));
    assertThat(report.plan().loan()).isEmpty();
  }

  @Test
  void notes_choiceMadeBeforehand_sayWhatItCosts() {
    List<FixedChoice> sow =
        List.of(
            new FixedChoice(
                0,
                RandomFarms.place(RandomFarms.demo("current-farm"), "spray-fallow"),
                OptionalInt.of(1)));
    Report report = report("current-farm", sow);
    assertThat(PlanWords.notes(report, new MoneyFaces(report)))
        .anyMatch(
            note ->
                note.matches(
                    "Fixing Homestead to spray-fallow and resow from 2028 makes the plan worth "
                        + "A\\$ [0-9,]+ less .*"));
    String files = CsvView.of(report).get("old-share.csv");
    assertThat(files)
        .startsWith("paddock,action,start,chosen,cheapest,year,old_share,clover_share\n");
    assertThat(files.lines().filter(line -> line.startsWith("Homestead,spray-fallow")))
        .hasSize(report.farm().horizonYears());
  }

  /** Crop years only: what crops bring without sowing, and what sowing adds to that. */
  @Test
  void reason_whereCropsAreOpen_saysWhatCropsBringAndWhatSowingAdds() {
    Report report = report(RandomFarms.withCropOnly(RandomFarms.demo("mixed-farm")), List.of());
    PaddockWords words = new PaddockWords(report, new MoneyFaces(report));
    int cropping = 0;
    for (int i = 0; i < report.paddocks().size(); i++) {
      PaddockResult paddock = report.paddocks().get(i);
      assertThat(paddock.reason().kind() == Reason.Kind.CROPS)
          .isEqualTo(paddock.action().startsWith("crop-only"));
      for (PaddockResult.OptionResult option : paddock.options()) {
        assertThat(option.landUse()).isEqualTo(option.action().startsWith("crop-only"));
        assertThat(PaddockWords.landUse(option).isEmpty()).isNotEqualTo(option.landUse());
        if (option.landUse()) {
          assertThat(option.costPerHa().mean() == 0 || option.action().contains("+")).isTrue();
        }
      }
      if (paddock.reason().kind() == Reason.Kind.CROPS) {
        cropping++;
        assertThat(words.reason(i))
            .contains("a cropping gain, a matter of land use: the old clover comes back.")
            .containsPattern("‘(oversow|spray|crop .* then) .*(adds|brings) .*; it does better in");
      }
    }
    assertThat(cropping).isPositive();
  }

  @Test
  void yearsCounted_fewerThanASowingTakes_areTheReasonAndNamedOnTheCard() {
    Farm farm = FarmFolder.read(Path.of("demo-data", "mixed-farm"), TABLES).farm();
    for (int years : List.of(1, 4)) {
      Report report = report(farm.withFinance(farm.finance().withHorizonYears(years)), List.of());
      PaddockWords words = new PaddockWords(report, new MoneyFaces(report));
      int reasons = 0;
      for (int i = 0; i < report.paddocks().size(); i++) {
        PaddockResult paddock = report.paddocks().get(i);
        paddock.options().forEach(o -> assertThat(o.lastChangeYear()).isLessThan(2027 + years));
        assertThat(paddock.lastChangeYear().isPresent()).isEqualTo(paddock.isInPlan());
        assertThat(paddock.tooLong()).allMatch(each -> each.years() > years);
        assertThat(words.tooLong(paddock).contains("crop three seasons, then resow (5 years)"))
            .isEqualTo(farm.paddocks().get(i).arable());
        if (paddock.reason().kind() == Reason.Kind.YEARS_COUNTED) {
          assertThat(words.reason(i)).contains("the years counted (1) are too few");
          reasons++;
        }
      }
      assertThat(reasons > 0).isEqualTo(years == 1);
    }
  }

  @Test
  void loanAccount_atTheDiscountRate_endsWhereThePlanWithoutLoanEnds() {
    Farm farm = FarmFolder.read(Path.of("demo-data", "mixed-farm"), TABLES).farm();
    FarmModel model = new FarmModel(farm, TABLES);
    Decision decision = Decision.rough(Decision.draws(model, 1, 100), List.of(), done -> {});
    double rate = farm.finance().discountRate().likely();
    LoanAccount account = LoanAccount.of(decision.outcome(), new Loan(rate, 3), rate, 2027);
    int n = decision.outcome().years();
    // Borrowing at the rate at which one discounts changes nothing in the end.
    assertThat(account.owedAfter()).isZero();
    assertThat(account.balance().get(n - 1) / Math.pow(1 + rate, n - 1))
        .isCloseTo(NetPresentValue.of(rate, decision.outcome().cashFlow()), within(1e-6));
    double costs = 0;
    for (int t = 0; t < n; t++) {
      costs += decision.outcome().actionCost(t);
    }
    assertThat(account.borrowed()).isCloseTo(costs, within(1e-9));
    assertThat(account.repayments().get(0)).isZero();
  }
}
