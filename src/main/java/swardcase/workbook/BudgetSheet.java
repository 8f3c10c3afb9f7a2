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
 * The plan's mean flows, with prices and rate in cells that may be changed, and every sum as a
 * formula on them:
 *
 * <pre>
 * line = its mean over the draws x new price / likely price
 * net = sum of the lines
 * NPV = sum of net / (1 + rate)^k, k = 0 for the first year
 * </pre>
 *
 * <p>With no cell changed the net present value is the plan's mean gain.
 */
final class BudgetSheet {

  private static final int LAMB = 4;
  private static final int SUPPLEMENT = 5;
  private static final int RATE = 6;

  private static final int VALUE = 1;
  private static final int LIKELY = 3;
  private static final int TIMES = 8;

  private static final int RESULTS = 8;
  private static final int NPV = RESULTS + 1;
  private static final int HEAD = 17;
  private static final int FIRST = HEAD + 1;

  private static final int YEAR = 0;
  private static final int WORK = 1;
  private static final int LAMBS = 2;
  private static final int IN_LAMB = 3;
  private static final int LAMBS_MEAN = 4;
  private static final int SUPPLEMENT_MEAN = 5;
  private static final int LAMBS_SAVED = 6;
  private static final int SUPPLEMENT_SAVED = 7;
  private static final int CROPS = 8;
  private static final int SPARE_FEED = 9;
  private static final int END = 10;
  private static final int COST = 11;
  private static final int LABOUR = 12;
  private static final int NET = 13;
  private static final int CUMULATIVE = 14;
  private static final int FACTOR = 15;
  private static final int DISCOUNTED = 16;
  private static final int SIGN = 17;
  private static final int TURN = 18;

  private final Grid grid;
  private final Report report;
  private final Budget budget;
  private final int last;

  private BudgetSheet(Worksheet sheet, Report report, Budget budget) {
    grid =
        new Grid(sheet, 34, 36, 13, 13, 14, 14, 12, 12, 12, 11, 11, 12, 12, 12, 12, 11, 12, 9, 7);
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
        "Mean flows over the draws. Change the shaded cells; all sums follow. The plan stays the"
            + " one that was best at the numbers first given. See the sheet 'Read me'.");
    grid.head(
        LAMB - 1,
        List.of(
            "Price or rate",
            ">value",
            ">low",
            ">likely",
            ">high",
            "unit",
            "evidence",
            "set by",
            ">line times"));
    input(LAMB, budget.lambPrice(), Grid.AMOUNT);
    input(SUPPLEMENT, budget.supplementPrice(), Grid.AMOUNT);
    input(RATE, budget.discountRate(), Grid.PERCENT);
    scale(LAMB, budget.lambPrice(), "lambs saved");
    scale(SUPPLEMENT, budget.supplementPrice(), "supplement saved");
  }

  private void input(int row, Assumption input, String format) {
    grid.text(row, 0, input.name());
    grid.input(row, VALUE, input.likely(), format);
    grid.number(row, 2, input.range().low(), format);
    grid.number(row, LIKELY, input.likely(), format);
    grid.number(row, 4, input.range().high(), format);
    grid.text(row, 5, input.unit());
    grid.text(row, 6, input.evidence().label());
    grid.text(row, 7, input.setBy().label());
  }

  /** A line whose likely price is nothing has no price to be scaled by, so it stays as it is. */
  private void scale(int row, Assumption price, String line) {
    boolean scales = price.likely() > 0;
    grid.formula(
        row, TIMES, scales ? fixed(row, VALUE) + "/" + fixed(row, LIKELY) : "1", Grid.FINE);
    grid.text(
        row,
        TIMES + 1,
        scales
            ? "Approximate: the whole line of " + line + " is scaled."
            : "The likely price is 0, so " + line + " cannot be scaled by it.");
  }

  private void results() {
    PlanResult plan = report.plan();
    ReturnsWords returns = ReturnsWords.of(plan.returns(), report.farm().horizonYears());
    String rate = fixed(RATE, VALUE);
    String net = column(NET, FIRST, last);
    int years = budget.years().size();
    grid.head(RESULTS, List.of("Result", ">from the cells", ">of the plan"));
    int row = NPV;
    grid.text(row, 0, "net present value");
    grid.formula(row, VALUE, "SUM(" + column(DISCOUNTED, FIRST, last) + ")", Grid.MONEY);
    grid.number(row, 2, plan.gain().mean(), Grid.MONEY);
    row++;
    grid.text(row, 0, "the same as an equal yearly sum");
    grid.formula(
        row, VALUE, "-PMT(" + rate + "," + years + "," + fixed(NPV, VALUE) + ")", Grid.MONEY);
    grid.number(row, 2, plan.annuity().mean(), Grid.MONEY);
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
    grid.formula(
        row,
        VALUE,
        "-SUM(" + column(COST, FIRST, last) + "," + column(LABOUR, FIRST, last) + ")",
        Grid.MONEY);
    grid.number(row, 2, plan.cost().mean(), Grid.MONEY);
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
    String cost = "SUMPRODUCT(" + column(COST, FIRST, last) + "," + factor + ")";
    String labour = "SUMPRODUCT(" + column(LABOUR, FIRST, last) + "," + factor + ")";
    String net = "SUMPRODUCT(" + column(NET, FIRST, last) + "," + factor + ")";
    String spent = "(" + cost + "+" + labour + ")";
    return "IF(" + spent + "<0,1-" + net + "/" + spent + ",\"none\")";
  }

  private void years() {
    grid.head(
        HEAD,
        List.of(
            "Year",
            "Work",
            ">Lambs more",
            ">Ewes in lamb more",
            ">Lambs saved, likely price",
            ">Supplement saved, likely price",
            ">Lambs saved",
            ">Supplement saved",
            ">Crop margins",
            ">Spare feed",
            ">End value",
            ">Costs paid",
            ">Own labour",
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
    grid.number(row, LAMBS, year.lambs(), Grid.AMOUNT);
    grid.number(row, IN_LAMB, year.ewesInLamb(), Grid.AMOUNT);
    grid.number(row, LAMBS_MEAN, year.lambsSaved(), Grid.MONEY);
    grid.number(row, SUPPLEMENT_MEAN, year.supplementSaved(), Grid.MONEY);
    grid.formula(row, LAMBS_SAVED, cell(row, LAMBS_MEAN) + "*" + fixed(LAMB, TIMES), Grid.MONEY);
    grid.formula(
        row,
        SUPPLEMENT_SAVED,
        cell(row, SUPPLEMENT_MEAN) + "*" + fixed(SUPPLEMENT, TIMES),
        Grid.MONEY);
    grid.number(row, CROPS, year.cropMargin(), Grid.MONEY);
    grid.number(row, SPARE_FEED, year.spareFeed(), Grid.MONEY);
    grid.number(row, END, year.endValue(), Grid.MONEY);
    grid.number(row, COST, 0 - year.cost(), Grid.MONEY);
    grid.number(row, LABOUR, 0 - year.labour(), Grid.MONEY);
    grid.formula(
        row, NET, "SUM(" + cell(row, LAMBS_SAVED) + ":" + cell(row, LABOUR) + ")", Grid.MONEY);
    String before = t == 0 ? "" : cell(row - 1, CUMULATIVE) + "+";
    grid.formula(row, CUMULATIVE, before + cell(row, NET), Grid.MONEY);
    grid.formula(row, FACTOR, "1/(1+" + fixed(RATE, VALUE) + ")^" + t, Grid.FINE);
    grid.formula(row, DISCOUNTED, cell(row, NET) + "*" + cell(row, FACTOR), Grid.MONEY);
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
