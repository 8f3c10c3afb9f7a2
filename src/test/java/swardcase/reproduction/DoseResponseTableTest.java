package swardcase.reproduction;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.MappingIterator;
import com.fasterxml.jackson.dataformat.csv.CsvMapper;
import com.fasterxml.jackson.dataformat.csv.CsvSchema;
import java.io.IOException;
import java.io.InputStream;
import java.util.Map;
import java.util.TreeMap;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import swardcase.chance.Range;

/** The rows of the table give what the trials behind them showed. */
class DoseResponseTableTest {

  private static final Map<String, Range> ROWS = new TreeMap<>();

  @BeforeAll
  static void readTable() throws IOException {
    CsvSchema header = CsvSchema.emptySchema().withHeader();
    try (InputStream file =
            DoseResponseTableTest.class.getResourceAsStream("/tables/dose-response.csv");
        MappingIterator<Map<String, String>> rows =
            new CsvMapper().readerForMapOf(String.class).with(header).readValues(file)) {
      rows.forEachRemaining(
          row ->
              ROWS.put(
                  row.get("key"),
                  Range.of(
                      Double.parseDouble(row.get("low")),
                      Double.parseDouble(row.get("likely")),
                      Double.parseDouble(row.get("high")))));
    }
  }

  /** McDonald, Anwar and Keogh 1994: 95 % intervals of the ewes that held (Wilson, inferred). */
  @Test
  void curve_likelyRows_fallWithinTheTrialsIntervals() {
    Range d50 = ROWS.get("oestrogen.d50");
    Range steepness = ROWS.get("oestrogen.steepness");
    double control = 57 / 63.0;
    double pawera =
        control * DoseResponse.conceptionMultiplier(0.55, d50.likely(), steepness.likely());
    double g27 =
        control * DoseResponse.conceptionMultiplier(0.26, d50.likely(), steepness.likely());
    assertThat(pawera).isBetween(0.13, 0.48);
    assertThat(g27).isBetween(0.55, 0.83);
  }

  /**
   * At steepness 2 a diet at the breeders' limit (0.12 %) costs about 4 points, as the note says.
   */
  @Test
  void curve_lowSteepness_costsFourPointsAtTheBreedersLimit() {
    double t =
        DoseResponse.conceptionMultiplier(
            0.12, ROWS.get("oestrogen.d50").likely(), ROWS.get("oestrogen.steepness").low());
    double perCycle = Pregnancy.perCycleConception(0.89, 34 / 7.0);
    double share = Pregnancy.pregnantShare(perCycle, 34 / 7.0, new double[] {t, t}, 0);
    assertThat(100 * (0.89 - share)).isCloseTo(4, within(0.5));
  }

  /** Refshauge et al. 2024, mobs scanned for litter size: mean 0.84, standard deviation 0.15. */
  @Test
  void pregnantPercent_lowAndHigh_areAStandardDeviationFromTheMean() {
    Range pregnant = ROWS.get("flock.pregnant-percent");
    assertThat(pregnant).isEqualTo(Range.of(84 - 15, 89, 84 + 15));
  }

  /** Hutchison et al. 2022: scanning, survival and marking agree within rounding. */
  @Test
  void markingPercent_ofMatureMerinos_isScanningTimesSurvival() {
    double survival = 0.78;
    assertThat(ROWS.get("flock.scanning-percent").likely() * survival)
        .isCloseTo(ROWS.get("flock.marking-percent").likely(), within(1.5));
  }
}
