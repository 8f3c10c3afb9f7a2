package swardcase.cli;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import picocli.CommandLine.Option;
import swardcase.chance.Range;
import swardcase.check.Fault;
import swardcase.check.FaultsException;
import swardcase.evidence.Assumption;
import swardcase.farm.Farm;
import swardcase.farm.Finance;
import swardcase.outcome.FarmModel;
import swardcase.search.FixedChoice;
import swardcase.search.FixedChoices;

/** What may be changed for one run without touching the farm folder. */
final class FarmChanges {

  /** Below it a rate is probably a fraction written where per cent is meant (inferred). */
  private static final double LEAST_RATE = 0.5;

  @Option(
      names = "--budget",
      paramLabel = "SUM",
      description = "Most money for resowing in one year, instead of the farm's own.")
  private Double budget;

  @Option(
      names = "--horizon",
      paramLabel = "YEARS",
      description = "Years counted, 1 to 40, instead of the farm's own.")
  private Integer horizon;

  @Option(
      names = "--rate",
      paramLabel = "PERCENT",
      description = "Discount rate, real, per cent a year, instead of the farm's own.")
  private Double rate;

  @Option(
      names = FixedChoices.FIX,
      paramLabel = "PADDOCK=ACTION[@YEAR]",
      description =
          "Make this choice beforehand and see what it costs; may be given several times. The action"
              + " is a name or key of the action table, the year a calendar year.")
  private List<String> fixes = List.of();

  /** The farm with another budget, horizon or rate. */
  Farm change(Farm farm) {
    List<Fault> faults = new ArrayList<>();
    Finance finance = farm.finance();
    if (budget != null && accepts(budget, 0, 1e9, "--budget", faults)) {
      finance = finance.withBudgetPerYear(budget);
    }
    if (horizon != null && accepts(horizon, 1, 40, "--horizon", faults)) {
      finance = finance.withHorizonYears(horizon);
    }
    if (rate != null && rate > 0 && rate < LEAST_RATE) {
      faults.add(fraction(rate));
    } else if (rate != null && accepts(rate, 0, 100, "--rate", faults)) {
      Assumption was = finance.discountRate();
      finance =
          finance.withDiscountRate(
              Assumption.ofFarm(was.name(), Range.exactly(rate / 100), was.unit()));
    }
    FaultsException.throwIfAny(faults);
    return farm.withFinance(finance);
  }

  private static Fault fraction(double rate) {
    String rule = "must be in per cent a year: 0, or from %s to 100".formatted(LEAST_RATE);
    BigDecimal typed = BigDecimal.valueOf(rate);
    String percent = typed.movePointRight(2).stripTrailingZeros().toPlainString();
    return new Fault("--rate", 0, "", rule, typed.toPlainString(), percent);
  }

  private static boolean accepts(
      double value, double low, double high, String option, List<Fault> faults) {
    if (value >= low && value <= high) {
      return true;
    }
    String rule = String.format(Locale.ROOT, "must be from %.0f to %.0f", low, high);
    return !faults.add(new Fault(option, 0, "", rule, Double.toString(value), ""));
  }

  /** The choices made beforehand; {@code firstYear} is the calendar year of the coming one. */
  List<FixedChoice> fixed(FarmModel model, int firstYear) {
    return FixedChoices.read(fixes, model, firstYear);
  }
}
