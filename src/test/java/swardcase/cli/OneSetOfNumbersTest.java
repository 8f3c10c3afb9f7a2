package swardcase.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.offset;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.function.Predicate;
import java.util.function.ToDoubleFunction;
import java.util.stream.IntStream;
import java.util.stream.StreamSupport;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.usermodel.Sheet;
import org.apache.poi.xssf.usermodel.XSSFFormulaEvaluator;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.assertj.core.data.Offset;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import swardcase.reading.Faults;
import swardcase.reading.Fields;
import swardcase.reading.Table;

/**
 * Result document, tables and workbook of one run hold one set of numbers, whose sums are true to a
 * millionth of a unit of money: they are worked out again from the files alone.
 */
class OneSetOfNumbersTest {

  private static final Offset<Double> EXACT = offset(1e-6);

  private JsonNode result;
  private JsonNode plan;

  @ParameterizedTest
  @ValueSource(
      strings = {
        "mixed-farm",
        "current-farm",
        "northern-farm",
        "risky-farm",
        "one-mob-farm",
        "large-farm"
      })
  void files_ofADemoFarm_holdOneSetOfNumbersThatAddUp(String farm) throws IOException {
    Path made = DemoSheets.decided(farm);
    result = new ObjectMapper().readTree(made.resolve("result.json").toFile());
    plan = result.get("plan");

    documentAddsUp();
    documentHasTheKeysOthersRelyOn();
    tablesHoldTheSame(made.resolve("tables"));
    workbookHoldsTheSame(made.resolve("budget.xlsx"));
  }

  private void documentAddsUp() {
    double gain = gain(plan);
    assertThat(sum(plan.get("parts"), part -> part.get("mean").asDouble())).isCloseTo(gain, EXACT);
    assertThat(sum(plan.get("years"), year -> year.get("mean").asDouble())).isCloseTo(gain, EXACT);
    double changes =
        sum(result.get("paddocks"), paddock -> isInPlan(paddock) ? gain(paddock) : 0)
            + sum(plan.get("farmWide"), OneSetOfNumbersTest::gain);
    assertThat(changes + plan.at("/shared/mean").asDouble()).isCloseTo(gain, EXACT);
    assertThat(
            sum(
                plan.get("years"),
                year -> year.get("cost").asDouble() + year.get("labour").asDouble()))
        .isCloseTo(plan.at("/cost/mean").asDouble(), EXACT);
    for (JsonNode paddock : result.get("paddocks")) {
      assertThat(sum(paddock.get("parts"), part -> part.get("mean").asDouble()))
          .as(paddock.get("name").asText())
          .isCloseTo(gain(paddock), EXACT);
    }
    double cumulative = 0;
    for (JsonNode year : plan.get("years")) {
      double net = year.get("net").asDouble();
      cumulative += net;
      assertThat(
              year.get("supplementSaved").asDouble()
                  + year.get("lambsSaved").asDouble()
                  + year.get("other").asDouble()
                  - year.get("cost").asDouble()
                  - year.get("labour").asDouble())
          .isCloseTo(net, EXACT);
      assertThat(year.get("cumulative").asDouble()).isCloseTo(cumulative, EXACT);
      assertThat(year.get("with").asDouble() - year.get("without").asDouble())
          .isCloseTo(net, EXACT);
    }
  }

  private void documentHasTheKeysOthersRelyOn() {
    assertThat(result.get("schemaVersion").asText()).isEqualTo("2.0");
    assertThat(names(plan.get("gain")))
        .containsExactly("mean", "low", "high", "chancePays", "standardError");
    assertThat(plan.get("certaintyEquivalent").isNumber()).isTrue();
    assertThat(names(plan.get("sureGain"))).contains("mean", "low", "high");
    assertThat(plan.get("farmWide").isArray()).isTrue();
    plan.get("parts").forEach(part -> assertThat(names(part)).containsExactly("what", "mean"));
    plan.get("years").forEach(year -> assertThat(names(year)).contains("year", "mean"));
    assertThat(plan.path("careful").isNull()).as("the careful plan, or absent").isFalse();
    for (JsonNode paddock : result.get("paddocks")) {
      assertThat(names(paddock)).contains("name", "call", "action", "start", "gain", "options");
      assertThat(names(paddock.get("gain"))).contains("mean", "low", "high");
      assertThat(paddock.get("call").asText()).isIn("act", "keep off", "keep", "undecided");
      assertThat(paddock.has("sure")).as("sure, or absent").isEqualTo(isInPlan(paddock));
      assertThat(paddock.path("sure").isBoolean()).isEqualTo(isInPlan(paddock));
      for (JsonNode option : paddock.get("options")) {
        assertThat(names(option)).contains("action", "start", "gain");
        assertThat(names(option.get("gain"))).contains("mean", "low", "high");
      }
    }
    assertThat(names(result.at("/assumptions/0"))).contains("low", "likely", "high");
    assertThat(names(result.at("/winterFeed/supplementTonnes")))
        .containsExactly("mean", "low", "high");
  }

  private void tablesHoldTheSame(Path tables) throws IOException {
    List<Fields> rows = rows(tables.resolve("plan.csv"));
    double total = gain(plan);
    assertThat(only(rows, row -> row.text("row").equals("total"))).containsExactly(total);
    assertThat(
            only(rows, row -> List.of("paddock", "farm-wide", "shared").contains(row.text("row")))
                .stream()
                .mapToDouble(Double::doubleValue)
                .sum())
        .isCloseTo(total, EXACT);
    assertThat(only(rows, row -> row.text("row").equals("part")))
        .isEqualTo(list(plan.get("parts"), part -> part.get("mean").asDouble()));

    assertThat(column(rows(tables.resolve("paddocks.csv")), "gain_mean"))
        .isEqualTo(list(result.get("paddocks"), OneSetOfNumbersTest::gain));
    List<Double> options = new ArrayList<>();
    for (JsonNode paddock : result.get("paddocks")) {
      options.addAll(list(paddock.get("options"), OneSetOfNumbersTest::gain));
    }
    assertThat(column(rows(tables.resolve("options.csv")), "gain_mean")).isEqualTo(options);
    List<Fields> years = rows(tables.resolve("years.csv"));
    Map.of("discounted", "mean", "net", "net", "without", "without", "with", "with")
        .forEach(
            (column, key) ->
                assertThat(column(years, column))
                    .isEqualTo(list(plan.get("years"), year -> year.get(key).asDouble())));
  }

  private void workbookHoldsTheSame(Path file) throws IOException {
    try (XSSFWorkbook book = new XSSFWorkbook(Files.newInputStream(file))) {
      XSSFFormulaEvaluator evaluator = new XSSFFormulaEvaluator(book);
      double total = gain(plan);
      assertThat(numbers(book.getSheet("Budget"), "net present value", 1, evaluator))
          .singleElement()
          .satisfies(npv -> assertThat(npv).isCloseTo(total, EXACT));
      assertThat(numbers(book.getSheet("Plan"), "the plan", 3, evaluator))
          .hasSize(2)
          .allSatisfy(sum -> assertThat(sum).isCloseTo(total, EXACT));
    }
  }

  /** Numbers in a column of the rows that begin with a text. */
  private static List<Double> numbers(
      Sheet sheet, String first, int column, XSSFFormulaEvaluator evaluator) {
    return StreamSupport.stream(sheet.spliterator(), false)
        .filter(row -> begins(row, first))
        .map(row -> evaluator.evaluate(row.getCell(column)).getNumberValue())
        .toList();
  }

  private static boolean begins(Row row, String text) {
    Cell cell = row.getCell(0);
    return cell != null
        && cell.getCellType() == CellType.STRING
        && cell.getStringCellValue().equals(text);
  }

  private static boolean isInPlan(JsonNode paddock) {
    return List.of("act", "keep off").contains(paddock.get("call").asText());
  }

  private static double gain(JsonNode of) {
    return of.at("/gain/mean").asDouble();
  }

  private static double sum(JsonNode each, ToDoubleFunction<JsonNode> number) {
    return list(each, number).stream().mapToDouble(Double::doubleValue).sum();
  }

  private static List<Double> list(JsonNode each, ToDoubleFunction<JsonNode> number) {
    return IntStream.range(0, each.size())
        .mapToObj(i -> number.applyAsDouble(each.get(i)))
        .toList();
  }

  private static List<String> names(JsonNode of) {
    List<String> names = new ArrayList<>();
    of.fieldNames().forEachRemaining(names::add);
    return names;
  }

  private static List<Fields> rows(Path file) throws IOException {
    Faults faults = new Faults();
    List<Fields> rows = Table.of(file.toString(), Files.readString(file), faults).rows();
    assertThat(faults.all()).isEmpty();
    return rows;
  }

  private static List<Double> only(List<Fields> rows, Predicate<Fields> wanted) {
    return column(rows.stream().filter(wanted).toList(), "gain_mean");
  }

  private static List<Double> column(List<Fields> rows, String name) {
    return rows.stream().map(row -> Double.valueOf(row.text(name))).toList();
  }
}
