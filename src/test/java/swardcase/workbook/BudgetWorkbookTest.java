package swardcase.workbook;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.offset;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.zip.ZipEntry;
import java.util.zip.ZipInputStream;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.usermodel.Sheet;
import org.apache.poi.xssf.usermodel.XSSFFormulaEvaluator;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import swardcase.chance.Range;
import swardcase.decision.Decision;
import swardcase.decision.FarmMeasures.OfFarm;
import swardcase.decision.HowSure;
import swardcase.draws.Draws;
import swardcase.evidence.Assumption;
import swardcase.farm.Action;
import swardcase.farm.Farm;
import swardcase.intake.FarmFolder;
import swardcase.money.BenefitCost;
import swardcase.money.InternalRate;
import swardcase.money.ModifiedRate;
import swardcase.money.NetPresentValue;
import swardcase.outcome.FarmModel;
import swardcase.outcome.Outcome;
import swardcase.report.Budget;
import swardcase.report.Report;
import swardcase.report.ReportBuilder;
import swardcase.tables.Tables;
import swardcase.tables.TablesLoader;

/**
 * The workbook is worked out again by the formula evaluator of Apache POI, which shares no code
 * with its writer. Money agrees within a millionth of a unit: both reckon in doubles, in another
 * order.
 */
class BudgetWorkbookTest {

  private static final Tables TABLES = TablesLoader.standard().load();
  private static final LocalDate DATE = LocalDate.of(2026, 5, 1);
  private static final Pattern TIME = Pattern.compile("\\d{4}-\\d\\d-\\d\\dT[\\d:.]+Z?");

  private static Decision decide(String farm) {
    Farm read = FarmFolder.read(Path.of("demo-data", farm), TABLES).farm();
    return decide(read);
  }

  private static Decision decide(Farm farm) {
    return Decision.rough(new Draws(new FarmModel(farm, TABLES), 1, 20, 5), List.of(), done -> {});
  }

  private static Report report(Decision decision) {
    return ReportBuilder.build(
        decision, HowSure.of(decision), "Swardcase test", DATE, List.of("=1+1", "odd"));
  }

  private static byte[] write(Decision decision) throws IOException {
    Report report = report(decision);
    return write(report, Budget.of(decision.model().farm()));
  }

  private static byte[] write(Report report, Budget budget) throws IOException {
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    BudgetWorkbook.write(report, budget, bytes);
    return bytes.toByteArray();
  }

  private static Row row(Sheet sheet, String label) {
    for (Row row : sheet) {
      Cell cell = row.getCell(0);
      if (cell != null
          && cell.getCellType() == CellType.STRING
          && cell.getStringCellValue().equals(label)) {
        return row;
      }
    }
    throw new AssertionError("no row " + label);
  }

  private static double result(XSSFWorkbook book, String label) {
    XSSFFormulaEvaluator evaluator = new XSSFFormulaEvaluator(book);
    return evaluator.evaluate(row(book.getSheet("Budget"), label).getCell(1)).getNumberValue();
  }

  private static void isOrNone(XSSFWorkbook book, String label, OptionalDouble expected) {
    XSSFFormulaEvaluator evaluator = new XSSFFormulaEvaluator(book);
    var value = evaluator.evaluate(row(book.getSheet("Budget"), label).getCell(1));
    if (expected.isEmpty()) {
      assertThat(value.getStringValue()).as(label).isEqualTo("none");
    } else {
      assertThat(value.getNumberValue()).as(label).isCloseTo(expected.getAsDouble(), offset(1e-6));
    }
  }

  private static XSSFWorkbook open(byte[] bytes) throws IOException {
    return new XSSFWorkbook(new ByteArrayInputStream(bytes));
  }

  private static void set(XSSFWorkbook book, Assumption input, double value) {
    row(book.getSheet("Budget"), input.name()).getCell(1).setCellValue(value);
  }

  @ParameterizedTest
  @ValueSource(strings = {"mixed-farm", "risky-farm", "northern-farm"})
  void results_workedOutAgain_areThoseOfTheProgram(String name) throws IOException {
    Decision decision = decide(name);
    Outcome outcome = decision.outcome();
    double rate = decision.model().farm().finance().discountRate().likely();
    double[] flows = outcome.cashFlow();
    double[] costs = new double[flows.length];
    double[] gains = new double[flows.length];
    for (int t = 0; t < flows.length; t++) {
      costs[t] = outcome.cost(t);
      gains[t] = flows[t] + costs[t];
    }
    double money = 1e-6;

    try (XSSFWorkbook book = open(write(decision))) {
      assertThat(result(book, "net present value"))
          .isCloseTo(decision.gain().mean(), offset(money));
      assertThat(result(book, "the same as an equal yearly sum"))
          .isCloseTo(NetPresentValue.annuity(outcome.npv(), rate, flows.length), offset(money));
      var rates = InternalRate.of(flows);
      if (rates.size() < 2) {
        isOrNone(
            book,
            "internal rate of return",
            rates.isEmpty() ? OptionalDouble.empty() : OptionalDouble.of(rates.get(0)));
      }
      isOrNone(book, "modified internal rate of return", ModifiedRate.of(flows, rate, rate));
      isOrNone(book, "benefit : cost", BenefitCost.ratio(rate, gains, costs));
      assertThat(result(book, "cost, not discounted"))
          .isCloseTo(decision.of(OfFarm.PLAN_COST).mean(), offset(money));
    }
  }

  @Test
  void cells_changed_scaleTheirLineAndDiscountAnew() throws IOException {
    Decision decision = decideWithEndValue();
    Farm farm = decision.model().farm();
    Assumption lamb = farm.prices().netValuePerLamb();
    Assumption supplement = farm.supplement().pricePerTonne();
    Outcome outcome = decision.outcome();
    assertThat(outcome.endValue(outcome.years() - 1)).isPositive();
    double[] flows = outcome.cashFlow();
    double rate = farm.finance().discountRate().likely();

    try (XSSFWorkbook book = open(write(decision))) {
      set(book, lamb, 1.25 * lamb.likely());
      for (int t = 0; t < flows.length; t++) {
        flows[t] += 0.25 * outcome.lambsSaved(t);
      }
      assertNpv(book, rate, flows);
      set(book, supplement, 0);
      for (int t = 0; t < flows.length; t++) {
        flows[t] -= outcome.supplementSaved(t);
      }
      assertNpv(book, rate, flows);
      set(book, farm.finance().discountRate(), 0.03);
      assertNpv(book, 0.03, flows);
    }
  }

  private static void assertNpv(XSSFWorkbook book, double rate, double[] flows) {
    assertThat(result(book, "net present value"))
        .isCloseTo(NetPresentValue.of(rate, flows), offset(1e-6));
  }

  @Test
  void lineWhosePriceWasNothing_isNotScaled() throws IOException {
    Decision decision = decideWithEndValue();
    Report report = report(decision);
    Budget budget = Budget.of(decision.model().farm());
    Assumption free = Assumption.ofFarm("free grain", Range.of(0, 0, 9), "A$/t");
    Budget given = new Budget(budget.lambPrice(), free, budget.discountRate());

    try (XSSFWorkbook book = open(write(report, given))) {
      set(book, free, 300);
      assertThat(result(book, "net present value"))
          .isCloseTo(report.plan().gain().mean(), offset(1e-6));
      assertThat(row(book.getSheet("Budget"), "free grain").getCell(9).getStringCellValue())
          .contains("cannot be scaled");
    }
  }

  @Test
  void priceCell_besideIt_saysThatItIsApproximate() throws IOException {
    Decision decision = decideWithEndValue();
    String lamb = decision.model().farm().prices().netValuePerLamb().name();

    try (XSSFWorkbook book = open(write(decision))) {
      assertThat(row(book.getSheet("Budget"), lamb).getCell(9).getStringCellValue())
          .startsWith("Approximate");
    }
  }

  /** A plan that sows, with a price on every quantity, so that no cell is without effect. */
  private static Decision decideWithEndValue() {
    Farm read = FarmFolder.read(Path.of("src/test/resources/farms/sowing"), TABLES).farm();
    Decision decision = decide(read);
    boolean sows = false;
    for (int i = 0; i < decision.plan().paddocks(); i++) {
      Action action = decision.model().actions().get(decision.plan().action(i));
      sows |= action.sows();
    }
    assertThat(sows).as("the plan sows").isTrue();
    return decision;
  }

  @Test
  void workbook_writtenTwice_isTheSameByteForByte() throws Exception {
    Decision decision = decide("northern-farm");
    byte[] first = write(decision);

    assertThat(write(decision)).isEqualTo(first);
    // Written at another moment it is the same too: no time in it is that of the writing.
    try (ZipInputStream zip = new ZipInputStream(new ByteArrayInputStream(first))) {
      for (ZipEntry entry = zip.getNextEntry(); entry != null; entry = zip.getNextEntry()) {
        assertThat(entry.getTimeLocal()).isEqualTo(LocalDateTime.of(1980, 1, 1, 0, 0));
        String text = new String(zip.readAllBytes(), StandardCharsets.UTF_8);
        assertThat(TIME.matcher(text).results().map(MatchResult::group))
            .as(entry.getName())
            .allMatch(time -> time.equals(DATE + "T00:00:00Z"));
      }
    }
  }

  @Test
  void text_thatLooksLikeAFormula_staysText() throws IOException {
    try (XSSFWorkbook book = open(write(decide("northern-farm")))) {
      List<String> cells = new ArrayList<>();
      for (Sheet sheet : book) {
        for (Row row : sheet) {
          for (Cell cell : row) {
            if (cell.getCellType() == CellType.FORMULA) {
              assertThat(sheet.getSheetName()).isIn("Budget", "Plan");
            } else if (cell.getCellType() == CellType.STRING) {
              cells.add(cell.getStringCellValue());
            }
          }
        }
      }
      assertThat(cells).contains("'=1+1").noneMatch(text -> text.matches("[=+@-].*"));
    }
  }
}
