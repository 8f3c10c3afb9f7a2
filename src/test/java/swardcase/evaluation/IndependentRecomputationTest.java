package swardcase.evaluation;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static swardcase.evaluation.PublishedRows.independent;
import static swardcase.evaluation.PublishedRows.number;

import java.util.Arrays;
import java.util.Map;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import swardcase.chance.Pert;
import swardcase.chance.Range;
import swardcase.farm.HalfMonths;
import swardcase.feed.EnergyMethod;
import swardcase.feed.EweEnergy;
import swardcase.money.InternalRate;
import swardcase.money.ModifiedRate;
import swardcase.money.NetPresentValue;
import swardcase.money.Payback;
import swardcase.reproduction.ByFormula;
import swardcase.reproduction.DoseResponse;
import swardcase.reproduction.JoiningWalk;
import swardcase.reproduction.Pregnancy;
import swardcase.sward.SeedBank;
import swardcase.sward.SeedBankSettings;
import swardcase.tables.Tables;
import swardcase.tables.TablesLoader;

/**
 * The calculators against the scripts of src/test/scripts, which work the same equations from the
 * method pages in another language. The files hold twelve significant digits.
 */
class IndependentRecomputationTest {

  private static final int SEED_YEARS = 12;

  private static final double[] PERT_PROBABILITIES = {0.01, 0.05, 0.25, 0.5, 0.75, 0.95, 0.99};

  /** Tolerance 1e-9 MJ: twelve digits, and a slope taken by differences. */
  @Test
  void eweEnergy_bothMethods_isAsRecomputed() {
    Tables tables = TablesLoader.standard().load();
    for (Map<String, String> row : independent("energy.csv")) {
      EweEnergy ewe = new EweEnergy(tables, EnergyMethod.valueOf(row.get("method")));
      double weight = number(row, "weight_kg");
      double kg = number(row, "kg");
      double ours =
          switch (row.get("state")) {
            case "dry" -> ewe.dryMjPerDay(weight);
            case "pregnant" -> ewe.pregnantMjPerDay(weight, number(row, "day"), kg);
            case "milk" -> ewe.lactatingMjPerDay(weight, kg);
            default -> throw new IllegalArgumentException(row.toString());
          };
      assertThat(ours).as(row.toString()).isCloseTo(number(row, "mj_per_day"), within(1e-9));
    }
  }

  @Test
  void doseAndSterility_gridOfDoses_areAsRecomputed() {
    for (Map<String, String> row : independent("dose.csv")) {
      double dose = number(row, "dose");
      double d50 = number(row, "d50");
      double n = number(row, "n");
      double[] year = new double[HalfMonths.COUNT];
      Arrays.fill(year, 8, 20, dose);
      double barren =
          ByFormula.sterileShare(3 * ByFormula.seasonExposure(year, d50, n, 0.5), number(row, "q"));
      assertThat(DoseResponse.conceptionMultiplier(dose, d50, n))
          .isCloseTo(number(row, "multiplier"), within(1e-11));
      assertThat(barren).as(row.toString()).isCloseTo(number(row, "barren"), within(1e-11));
    }
  }

  /** The unaffected share is solved twice: tolerance 1e-9. */
  @Test
  void joining_randomYears_isAsRecomputed() {
    for (Map<String, String> row : independent("joining.csv")) {
      double weeks = number(row, "weeks");
      double[] expected = numbers(row, "multipliers");
      double[] multipliers = new double[JoiningWalk.cycles(weeks)];
      ByFormula.multipliers(
          numbers(row, "doses"),
          (int) number(row, "start"),
          weeks,
          number(row, "d50"),
          number(row, "n"),
          14,
          number(row, "lag"),
          number(row, "half_life"),
          multipliers);
      assertThat(multipliers).as(row.toString()).containsExactly(expected, within(1e-11));
      double barren = number(row, "barren");
      double perCycle = Pregnancy.perCycleConception(number(row, "unaffected"), weeks);
      assertThat(Pregnancy.pregnantShare(perCycle, weeks, multipliers, barren))
          .as(row.toString())
          .isCloseTo(number(row, "in_lamb"), within(1e-10));
      assertThat(Pregnancy.unaffectedShare(number(row, "seen"), weeks, multipliers, barren))
          .as(row.toString())
          .isCloseTo(number(row, "unaffected_from_seen"), within(1e-9));
    }
  }

  @Test
  void seedBank_randomSettings_isAsRecomputed() {
    for (Map<String, String> row : independent("seed-bank.csv")) {
      double[] initial = numbers(row, "initial");
      int cultivars = initial.length;
      SeedBankSettings settings = new SeedBankSettings(cultivars);
      System.arraycopy(initial, 0, settings.initialShare, 0, cultivars);
      System.arraycopy(numbers(row, "retention"), 0, settings.retention, 0, 4 * cultivars);
      System.arraycopy(numbers(row, "crowding"), 0, settings.crowding, 0, cultivars);
      settings.initialBankKgPerHa = number(row, "bank");
      settings.seedYieldKgPerHa = number(row, "yield");
      settings.runDownYears = (int) number(row, "run_down");
      settings.seedSet = number(row, "seed_set");
      settings.seedlingKill = number(row, "kill");
      settings.sownKgPerHa = number(row, "sown");
      settings.sownSpecies = (int) number(row, "sown_cultivar");
      settings.emergence = number(row, "emergence");
      settings.goodSeedShare = number(row, "good");
      settings.sowingYearYield = number(row, "first_year");
      settings.buriedShare = number(row, "buried");
      settings.buriedRetention = number(row, "buried_kept");
      SeedBank bank = new SeedBank(cultivars, SEED_YEARS);
      double[] shares = new double[cultivars * SEED_YEARS];
      bank.run(settings, shares);
      assertThat(shares).containsExactly(numbers(row, "shares"), within(1e-10));
      double[] lying = numbers(row, "lying");
      for (int i = 0; i < lying.length; i++) {
        assertThat(bank.bankKgPerHa(i / cultivars, i % cultivars))
            .as(row.toString())
            .isCloseTo(lying[i], within(1e-8));
      }
    }
  }

  /** Money to a millionth of a unit; rates to 1e-9, the polynomial's roots being that good. */
  @Test
  void money_randomFlows_isAsRecomputed() {
    for (Map<String, String> row : independent("money.csv")) {
      double[] flows = numbers(row, "flows");
      double rate = number(row, "rate");
      double npv = NetPresentValue.of(rate, flows);
      assertThat(npv).isCloseTo(number(row, "npv"), within(1e-6));
      assertThat(NetPresentValue.annuity(npv, rate, flows.length - 1))
          .isCloseTo(number(row, "annuity"), within(1e-6));
      double[] rates = InternalRate.of(flows).stream().mapToDouble(Double::doubleValue).toArray();
      assertThat(rates)
          .as(row.toString())
          .containsExactly(numbers(row, "internal_rates"), within(1e-9));
      assertThat(ModifiedRate.of(flows, rate, number(row, "reinvest")).orElseThrow())
          .isCloseTo(number(row, "modified_rate"), within(1e-10));
      OptionalDouble payback = Payback.discountedYears(rate, flows);
      assertThat(payback.orElse(-1))
          .as(row.toString())
          .isCloseTo(number(row, "payback_years"), within(1e-9));
    }
  }

  /** Quantiles to the hundred-thousandth of the width that the table of the class promises. */
  @Test
  void pert_quantiles_areAsRecomputed() {
    for (Map<String, String> row : independent("pert.csv")) {
      Range range = Range.of(number(row, "low"), number(row, "likely"), number(row, "high"));
      Pert pert = Pert.of(range);
      double width = range.high() - range.low();
      double[] quantiles = numbers(row, "quantiles");
      for (int i = 0; i < quantiles.length; i++) {
        assertThat(pert.quantile(PERT_PROBABILITIES[i]))
            .as("%s at %s", row, PERT_PROBABILITIES[i])
            .isCloseTo(quantiles[i], within(1e-5 * width));
      }
    }
  }

  private static double[] numbers(Map<String, String> row, String column) {
    String cell = row.get(column);
    return cell.isEmpty()
        ? new double[0]
        : Arrays.stream(cell.split(" ")).mapToDouble(Double::parseDouble).toArray();
  }
}
