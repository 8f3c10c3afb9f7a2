package swardcase.workbook;

import static swardcase.workbook.Grid.cell;
import static swardcase.workbook.Grid.column;
import static swardcase.workbook.Grid.fixed;

import java.util.List;
import java.util.Locale;
import org.dhatim.fastexcel.Worksheet;
import swardcase.evidence.Assumption;
import swardcase.report.Budget;
import swardcase.report.PlanResult;
import swardcase.report.Report;
import swardcase.wording.PlanWords;
import swardcase.wording.ReturnsWords;

/**
 * Prices and rate in cells that may be changed, and every sum as a formula on them:
 *
 * <pre>
 * net = tonnes x price + lambs x value + ewes in lamb x cost of a dry ewe + other - cost
 * NPV = sum of (net + end value) / (1 + rate)^k, k = 0 for the first year
 * </pre>
 */
final class BudgetSheet {

  private static final int LAMB = 4;
  private static final int DRY_EWE = 5;
  private static final int SUPPLEMENT = 6;
  private static final int RATE = 7;
  private static final int END_VALUE = 8;
  private static final int SOWN = 9;

  private static final int RESULTS = 11;
  private static final int HEAD = 20;
  private static final int FIRST = HEAD + 1;

  private static final int YEAR = 0;
  private static final int WORK = 1;
  private static final int COST = 2;
  private static final int TONNES = 3;
  private static final int LAMBS = 4;
  private static final int IN_LAMB = 5;
  private static final int SUPPLEMENT_SAVED = 6;
  private static final int LAMBS_SAVED = 7;
  private static final int OTHER = 8;
  private static final int END = 9;
  private static final int NET = 10;
  private static final int CUMULATIVE = 11;
  private static final int FACTOR = 12;
  private static final int DISCOUNTED = 13;
  private static final int SIGN = 14;
  private static final int TURN = 15;

  private static final int VALUE = 1;

  private final Grid grid;
  private final Report report;
  private final Budget budget;
  private final int last;

  private BudgetSheet(Worksheet sheet, Report report, Budget budget) {
    grid = new Grid(sheet, 54, 36, 13, 13, 11, 11, 12, 12, 12, 11, 12, 12, 11, 12, 9, 7);
    this.report = report;
    this.budget = budget;
    last = FIRST + budget.years().size() - 1;
  }

  static void fill(Worksheet sheet, Report report, Budget budget) {
    BudgetSheet filled = new BudgetSheet(sheet, report, budget);
    filled.inputs();
    filled.results();
    filled.years();
  }

  private void inputs() {
    grid.bold(0, 0, report.farm().name() + ": budget of the plan");
    grid.text(
        1,
        0,
        "Change the shaded cells; all sums follow. The plan stays the one that was best at the"
            + " numbers first given. See the sheet 'Read me'.");
    grid.head(
        LAMB - 1,
        List.of("Price or rate", ">value", ">low", ">high", "unit", "evidence", "set by"));
    input(LAMB, budget.lambValue(), Grid.AMOUNT);
    input(DRY_EWE, budget.dryEweCost(), Grid.AMOUNT);
    input(SUPPLEMENT, budget.supplementPrice(), Grid.AMOUNT);
    input(RATE, budget.discountRate(), Grid.PERCENT);
    input(END_VALUE, budget.endValuePerHa(), Grid.AMOUNT);
    grid.text(SOWN, 0, "hectares sown");
    grid.number(SOWN, VALUE, budget.sownHa(), Grid.AMOUNT);
  }

  private void input(int row, Assumption input, String format) {
    grid.text(row, 0, input.name());
    grid.input(row, VALUE, input.likely(), format);
    grid.number(row, 2, input.range().low(), format);
    grid.number(row, 3, input.range().high(), format);
    grid.text(row, 4, input.unit());
    grid.text(row, 5, input.evidence().label());
    grid.text(row, 6, input.setBy().label());
  }

  private void results() {
    PlanResult plan = report.plan();
    ReturnsWords returns = ReturnsWords.of(plan.returns(), report.farm().horizonYears());
    String rate = fixed(RATE, VALUE);
    String net = column(NET, FIRST, last);
    int years = budget.years().size();
    grid.head(RESULTS, List.of("Result", ">from the cells", ">at likely values"));
    int row = RESULTS + 1;
    grid.text(row, 0, "net present value");
    grid.formula(row, VALUE, "SUM(" + column(DISCOUNTED, FIRST, last) + ")", Grid.MONEY);
    grid.number(row, 2, plan.npvAtLikely(), Grid.MONEY);
    String npv = fixed(row, VALUE);
    row++;
    grid.text(row, 0, "the same as an equal yearly sum");
    grid.formula(row, VALUE, "-PMT(" + rate + "," + years + "," + npv + ")", Grid.MONEY);
    grid.text(row, 3, "The decision sheet prints the middle of its draws instead.");
    row++;
    grid.text(row, 0, "internal rate of return");
    grid.formula(
        row,
        VALUE,
        "IF(" + turns() + "=0,\"none\",IFERROR(IRR(" + net + "," + rate + "),\"none\"))",
        Grid.PERCENT);
    grid.right(row, 2, returns.irr());
    row++;
    grid.text(row, 0, "modified internal rate of return");
    grid.formula(
        row,
        VALUE,
        String.format(
            Locale.ROOT,
            "IF(AND(MIN(%1$s)<0,MAX(%1$s)>0),MIRR(%1$s,%2$s,%2$s),\"none\")",
            net,
            rate),
        Grid.PERCENT);
    grid.right(row, 2, returns.mirr());
    row++;
    grid.text(row, 0, "benefit : cost");
    grid.formula(row, VALUE, benefitCost(), "0.00");
    grid.right(row, 2, returns.benefitCost());
    row++;
    grid.text(row, 0, "cost, not discounted");
    grid.formula(row, VALUE, "SUM(" + column(COST, FIRST, last) + ")", Grid.MONEY);
    grid.number(row, 2, plan.cost().likely(), Grid.MONEY);
    row++;
    grid.text(row, 0, "times the yearly sum changes sign");
    grid.formula(row, VALUE, turns(), "0");
    grid.text(row, 3, "More than once: several internal rates may fit, so use the modified one.");
  }

  /** How often a sum has another sign than the last one before it that was not nothing. */
  private String turns() {
    return "SUM(" + column(TURN, FIRST, last) + ")";
  }

  private String benefitCost() {
    String factor = column(FACTOR, FIRST, last);
    String spent = "SUMPRODUCT(" + column(COST, FIRST, last) + "," + factor + ")";
    String net = "SUMPRODUCT(" + column(NET, FIRST, last) + "," + factor + ")";
    return "IF(" + spent + ">0,(" + net + "+" + spent + ")/" + spent + ",\"none\")";
  }

  private void years() {
    grid.head(
        HEAD,
        List.of(
            "Year",
            "Work",
            ">Cost",
            ">Supplement not bought, t",
            ">Lambs more",
            ">Ewes in lamb more",
            ">Supplement saved",
            ">Lambs saved",
            ">Other gains",
            ">End value",
            ">Net",
            ">Cumulative",
            ">Discount factor",
            ">Discounted",
            ">Sign carried",
            ">Turn"));
    for (int t = 0; t < budget.years().size(); t++) {
      year(FIRST + t, t, budget.years().get(t));
    }
  }

  private void year(int row, int t, Budget.Year year) {
    grid.year(row, YEAR, year.year());
    grid.wrapped(row, WORK, PlanWords.work(year.work()));
    grid.number(row, COST, year.cost(), Grid.MONEY);
    grid.number(row, TONNES, year.supplementTonnes(), Grid.AMOUNT);
    grid.number(row, LAMBS, year.lambs(), Grid.AMOUNT);
    grid.number(row, IN_LAMB, year.ewesInLamb(), Grid.AMOUNT);
    grid.formula(
        row, SUPPLEMENT_SAVED, cell(row, TONNES) + "*" + fixed(SUPPLEMENT, VALUE), Grid.MONEY);
    grid.formula(
        row,
        LAMBS_SAVED,
        cell(row, LAMBS)
            + "*"
            + fixed(LAMB, VALUE)
            + "+"
            + cell(row, IN_LAMB)
            + "*"
            + fixed(DRY_EWE, VALUE),
        Grid.MONEY);
    grid.number(row, OTHER, year.other(), Grid.MONEY);
    grid.formula(
        row,
        END,
        row == last ? fixed(SOWN, VALUE) + "*" + fixed(END_VALUE, VALUE) : "0",
        Grid.MONEY);
    grid.formula(
        row,
        NET,
        cell(row, SUPPLEMENT_SAVED)
            + "+"
            + cell(row, LAMBS_SAVED)
            + "+"
            + cell(row, OTHER)
            + "-"
            + cell(row, COST),
        Grid.MONEY);
    String before = t == 0 ? "" : cell(row - 1, CUMULATIVE) + "+";
    grid.formula(row, CUMULATIVE, before + cell(row, NET), Grid.MONEY);
    grid.formula(row, FACTOR, "1/(1+" + fixed(RATE, VALUE) + ")^" + t, Grid.FINE);
    grid.formula(
        row,
        DISCOUNTED,
        "(" + cell(row, NET) + "+" + cell(row, END) + ")*" + cell(row, FACTOR),
        Grid.MONEY);
    String carried = t == 0 ? "0" : cell(row - 1, SIGN);
    grid.formula(
        row,
        SIGN,
        "IF(" + cell(row, NET) + "=0," + carried + ",SIGN(" + cell(row, NET) + "))",
        "0");
    grid.formula(
        row, TURN, t == 0 ? "0" : "IF(" + cell(row, SIGN) + "*" + carried + "<0,1,0)", "0");
  }
}
