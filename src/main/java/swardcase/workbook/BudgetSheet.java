package swardcase.workbook;

import static swardcase.workbook.Grid.fixed;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import org.dhatim.fastexcel.Worksheet;
import swardcase.evidence.Assumption;
import swardcase.report.Budget;
import swardcase.report.PlanResult;
import swardcase.report.PlanResult.PlanYear;
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

  /** Columns of the years. */
  private enum Column {
    YEAR("Year", 34),
    WORK("Work", 36),
    LAMBS(">Lambs more", 13),
    IN_LAMB(">Ewes in lamb more", 13),
    LAMBS_MEAN(">Lambs saved, likely price", 14),
    SUPPLEMENT_MEAN(">Supplement saved, likely price", 14),
    LAMBS_SAVED(">Lambs saved", 12),
    SUPPLEMENT_SAVED(">Supplement saved", 12),
    CROPS(">Crop margins", 12),
    SPARE_FEED(">Spare feed", 11),
    END(">End value", 11),
    COST(">Costs paid", 12),
    LABOUR(">Own labour", 12),
    NET(">Net", 12),
    CUMULATIVE(">Cumulative", 12),
    FACTOR(">Discount factor", 11),
    DISCOUNTED(">Discounted", 12),
    SIGN(">Sign carried", 9),
    TURN(">Turn", 7);

    private final String heading;
    private final double width;

    Column(String heading, double width) {
      this.heading = heading;
      this.width = width;
    }

    /** Its cell in a row, moving when copied. */
    private String in(int row) {
      return Grid.cell(row, ordinal());
    }
  }

  private final Grid grid;
  private final Report report;
  private final Budget budget;
  private final List<PlanYear> years;
  private int row;

  private BudgetSheet(Worksheet sheet, Report report, Budget budget) {
    grid = new Grid(sheet, Arrays.stream(Column.values()).mapToDouble(of -> of.width).toArray());
    this.report = report;
    this.budget = budget;
    years = report.plan().years();
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

  private void input(int at, Assumption input, String format) {
    grid.text(at, 0, input.name());
    grid.input(at, VALUE, input.likely(), format);
    grid.number(at, 2, input.range().low(), format);
    grid.number(at, LIKELY, input.likely(), format);
    grid.number(at, 4, input.range().high(), format);
    grid.text(at, 5, input.unit());
    grid.text(at, 6, input.evidence().label());
    grid.text(at, 7, input.setBy().label());
  }

  /** A line whose likely price is nothing has no price to be scaled by, so it stays as it is. */
  private void scale(int at, Assumption price, String line) {
    boolean scales = price.likely() > 0;
    grid.formula(at, TIMES, scales ? fixed(at, VALUE) + "/" + fixed(at, LIKELY) : "1", Grid.FINE);
    grid.text(
        at,
        TIMES + 1,
        scales
            ? "Approximate: the whole line of " + line + " is scaled."
            : "The likely price is 0, so " + line + " cannot be scaled by it.");
  }

  private void results() {
    PlanResult plan = report.plan();
    ReturnsWords returns = ReturnsWords.of(plan.returns(), report.farm().horizonYears());
    String rate = fixed(RATE, VALUE);
    String net = all(Column.NET);
    String turns = "SUM(" + all(Column.TURN) + ")";
    grid.head(RESULTS, List.of("Result", ">from the cells", ">of the plan"));
    row = NPV;
    result("net present value", "SUM(" + all(Column.DISCOUNTED) + ")", plan.gain().mean());
    result(
        "the same as an equal yearly sum",
        "-PMT(" + rate + "," + years.size() + "," + fixed(NPV, VALUE) + ")",
        plan.annuity().mean());
    result(
        "internal rate of return",
        "IF(" + turns + "=0,\"none\",IFERROR(IRR(" + net + "," + rate + "),\"none\"))",
        Grid.PERCENT,
        returns.irr());
    result(
        "modified internal rate of return",
        String.format(
            Locale.ROOT,
            "IF(AND(MIN(%1$s)<0,MAX(%1$s)>0),MIRR(%1$s,%2$s,%2$s),\"none\")",
            net,
            rate),
        Grid.PERCENT,
        returns.mirr());
    String spent = "(" + now(Column.COST) + "+" + now(Column.LABOUR) + ")";
    result(
        "benefit : cost",
        "IF(" + spent + "<0,1-" + now(Column.NET) + "/" + spent + ",\"none\")",
        "0.00",
        returns.benefitCost());
    result(
        "cost, not discounted",
        "-SUM(" + all(Column.COST) + "," + all(Column.LABOUR) + ")",
        plan.cost().mean());
    line("times the yearly sum changes sign", turns, "0");
    grid.text(row, 3, "More than once: several internal rates may fit, so use the modified one.");
  }

  /** What follows from the cells, with that of the plan beside. */
  private void result(String what, String formula, double ofPlan) {
    line(what, formula, Grid.MONEY);
    grid.number(row++, 2, ofPlan, Grid.MONEY);
  }

  private void result(String what, String formula, String format, String ofPlan) {
    line(what, formula, format);
    grid.right(row++, 2, ofPlan);
  }

  private void line(String what, String formula, String format) {
    grid.text(row, 0, what);
    grid.formula(row, VALUE, formula, format);
  }

  /** All years of a column. */
  private String all(Column column) {
    return Grid.column(column.ordinal(), FIRST, FIRST + years.size() - 1);
  }

  /** What all years of a column are worth now. */
  private String now(Column column) {
    return "SUMPRODUCT(" + all(column) + "," + all(Column.FACTOR) + ")";
  }

  private void years() {
    grid.head(HEAD, Arrays.stream(Column.values()).map(of -> of.heading).toList());
    for (int t = 0; t < years.size(); t++) {
      row = FIRST + t;
      year(t, years.get(t));
    }
  }

  private void year(int t, PlanYear year) {
    grid.year(row, Column.YEAR.ordinal(), year.year());
    grid.wrapped(row, Column.WORK.ordinal(), PlanWords.work(year.work()));
    number(Column.LAMBS, year.lambs(), Grid.AMOUNT);
    number(Column.IN_LAMB, year.ewesInLamb(), Grid.AMOUNT);
    number(Column.LAMBS_MEAN, year.lambsSaved(), Grid.MONEY);
    number(Column.SUPPLEMENT_MEAN, year.supplementSaved(), Grid.MONEY);
    formula(Column.LAMBS_SAVED, Column.LAMBS_MEAN.in(row) + "*" + fixed(LAMB, TIMES), Grid.MONEY);
    formula(
        Column.SUPPLEMENT_SAVED,
        Column.SUPPLEMENT_MEAN.in(row) + "*" + fixed(SUPPLEMENT, TIMES),
        Grid.MONEY);
    number(Column.CROPS, year.cropMargin(), Grid.MONEY);
    number(Column.SPARE_FEED, year.spareFeed(), Grid.MONEY);
    number(Column.END, year.endValue(), Grid.MONEY);
    number(Column.COST, 0 - year.cost(), Grid.MONEY);
    number(Column.LABOUR, 0 - year.labour(), Grid.MONEY);
    String net = Column.NET.in(row);
    formula(
        Column.NET,
        "SUM(" + Column.LAMBS_SAVED.in(row) + ":" + Column.LABOUR.in(row) + ")",
        Grid.MONEY);
    String before = t == 0 ? "" : Column.CUMULATIVE.in(row - 1) + "+";
    formula(Column.CUMULATIVE, before + net, Grid.MONEY);
    formula(Column.FACTOR, "1/(1+" + fixed(RATE, VALUE) + ")^" + t, Grid.FINE);
    formula(Column.DISCOUNTED, net + "*" + Column.FACTOR.in(row), Grid.MONEY);
    // A sum has the sign of the last one before it that was not nothing; each change is a turn.
    String sign = Column.SIGN.in(row);
    String carried = t == 0 ? "0" : Column.SIGN.in(row - 1);
    formula(Column.SIGN, "IF(" + net + "=0," + carried + ",SIGN(" + net + "))", "0");
    formula(Column.TURN, t == 0 ? "0" : "IF(" + sign + "*" + carried + "<0,1,0)", "0");
  }

  private void number(Column column, double value, String format) {
    grid.number(row, column.ordinal(), value, format);
  }

  private void formula(Column column, String formula, String format) {
    grid.formula(row, column.ordinal(), formula, format);
  }
}
