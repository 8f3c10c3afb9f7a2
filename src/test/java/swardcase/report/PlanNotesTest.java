package swardcase.report;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;
import swardcase.farm.Farm;
import swardcase.farm.Loan;
import swardcase.findings.HowSure;
import swardcase.intake.FarmFolder;
import swardcase.money.NetPresentValue;
import swardcase.plan.Choice;
import swardcase.plan.Decision;
import swardcase.plan.FarmModel;
import swardcase.tables.Tables;
import swardcase.tables.TablesLoader;

/** What is said of how the plan was found, and the account of a loan. */
class PlanNotesTest {

  private static final Tables TABLES = TablesLoader.from(Path.of("tables")).load();
  private static final LocalDate DATE = LocalDate.of(2026, 11, 25);

  private static Report report(String name, List<Choice> fixed) {
    Farm farm = FarmFolder.read(Path.of("demo-data", name), TABLES).farm();
    Decision decision = Decision.of(new FarmModel(farm, TABLES), fixed);
    return ReportBuilder.build(
        decision, HowSure.of(decision, 1, 100, done -> {}), "test", DATE, List.of());
  }

  @Test
  void notes_farmWithNothingToGain_sayThatNothingBetterWasFound() {
    Report report = report("current-farm", List.of());
    assertThat(report.plan().headline()).startsWith("Keep");
    assertThat(report.plan().notes())
        .anyMatch(note -> note.contains("found none that gains more than keeping everything"))
        .anyMatch(note -> note.contains("never sown in this plan: Sandplain"))
        .anyMatch(note -> note.startsWith("Next best: "));
    assertThat(report.plan().loan()).isEmpty();
  }

  @Test
  void notes_choiceMadeBeforehand_sayWhatItCosts() {
    List<Choice> sow = List.of(new Choice(0, 3, OptionalInt.of(1)));
    Report report = report("current-farm", sow);
    assertThat(report.plan().notes())
        .anyMatch(
            note ->
                note.matches(
                    "Fixing Homestead to spray-fallow and resow from 2028 costs A\\$ [0-9,]+ .*"));
    String files = CsvView.of(report).get("old-share.csv");
    assertThat(files).startsWith("paddock,action,start_year,chosen,cheapest,year,old_share\n");
    assertThat(files.lines().filter(line -> line.startsWith("Homestead,spray-fallow")))
        .hasSize(report.farm().horizonYears());
  }

  @Test
  void loanAccount_atTheDiscountRate_endsWhereThePlanWithoutLoanEnds() {
    Farm farm = FarmFolder.read(Path.of("demo-data", "mixed-farm"), TABLES).farm();
    Decision decision = Decision.of(new FarmModel(farm, TABLES));
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
