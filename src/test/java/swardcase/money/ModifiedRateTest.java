package swardcase.money;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.util.SplittableRandom;
import org.apache.poi.hssf.usermodel.HSSFCell;
import org.apache.poi.hssf.usermodel.HSSFRow;
import org.apache.poi.hssf.usermodel.HSSFWorkbook;
import org.apache.poi.ss.formula.functions.FinanceLib;
import org.apache.poi.ss.usermodel.FormulaEvaluator;
import org.apache.poi.ss.util.CellReference;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ModifiedRateTest {

  @ParameterizedTest
  @CsvSource({"100 50", "-100 -50", "0 0", "-100"})
  void of_flowsOfOneSign_isEmpty(String flows) {
    assertThat(ModifiedRate.of(Flows.parse(flows), 0.08, 0.08)).isEmpty();
  }

  @Test
  void of_ratesOfMinusOne_areRefused() {
    double[] flows = Flows.parse("-100 150");
    assertThatThrownBy(() -> ModifiedRate.of(flows, -1, 0.08))
        .hasMessage("finance rate must be above -1, but was -1.0");
    assertThatThrownBy(() -> ModifiedRate.of(flows, 0.08, Double.NaN))
        .hasMessage("reinvestment rate must be above -1, but was NaN");
    assertThatThrownBy(() -> ModifiedRate.of(flows, 0.08, -1)).hasMessageContaining("above -1");
  }

  /** Identity: with one outlay now and one rate, MIRR = BCR^(1/n) (1 + r) - 1. */
  @Test
  void of_oneOutlayAndOneRate_isTiedToTheBenefitCostRatio() {
    SplittableRandom random = new SplittableRandom(6);
    for (int i = 0; i < 500; i++) {
      double[] flows = Flows.outlayThenInflows(random);
      double rate = random.nextDouble(0.3);
      double[] benefits = flows.clone();
      benefits[0] = 0;
      double ratio = BenefitCost.ratio(rate, benefits, new double[] {-flows[0]}).orElseThrow();
      double expected = Math.pow(ratio, 1.0 / (flows.length - 1)) * (1 + rate) - 1;
      assertThat(ModifiedRate.of(flows, rate, rate).orElseThrow())
          .isCloseTo(expected, within(1e-12));
    }
  }

  @Test
  void ofAndYearly_randomInputs_agreeWithASpreadsheet() throws IOException {
    SplittableRandom random = new SplittableRandom(8);
    try (HSSFWorkbook workbook = new HSSFWorkbook()) {
      HSSFRow row = workbook.createSheet().createRow(0);
      FormulaEvaluator evaluator = workbook.getCreationHelper().createFormulaEvaluator();
      HSSFCell formula = workbook.getSheetAt(0).createRow(1).createCell(0);
      for (int i = 0; i < 100; i++) {
        double[] flows = random.doubles(random.nextLong(3, 20), -1e4, 1e4).toArray();
        flows[0] = -1000;
        flows[1] = 500;
        for (int t = 0; t < flows.length; t++) {
          row.createCell(t).setCellValue(flows[t]);
        }
        double finance = random.nextDouble(0.2);
        double reinvest = random.nextDouble(0.2);
        String last = CellReference.convertNumToColString(flows.length - 1);
        formula.setCellFormula("MIRR(A1:" + last + "1," + finance + "," + reinvest + ")");
        evaluator.clearAllCachedResultValues();
        assertThat(ModifiedRate.of(flows, finance, reinvest).orElseThrow())
            .as("case %s", i)
            .isCloseTo(evaluator.evaluate(formula).getNumberValue(), within(1e-10));
        formula.setCellFormula("PMT(" + finance + "," + flows.length + ",10000)");
        evaluator.clearAllCachedResultValues();
        assertThat(NetPresentValue.annuity(10000, finance, flows.length))
            .isCloseTo(-evaluator.evaluate(formula).getNumberValue(), within(1e-7));
        assertThat(-FinanceLib.pmt(finance, flows.length, 10000, 0, false))
            .isCloseTo(NetPresentValue.annuity(10000, finance, flows.length), within(1e-7));
      }
    }
  }
}
