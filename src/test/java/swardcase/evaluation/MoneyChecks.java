package swardcase.evaluation;

import static swardcase.evaluation.PublishedRows.number;

import java.util.Arrays;
import java.util.List;
import java.util.Map;
import swardcase.money.BenefitCost;
import swardcase.money.InternalRate;
import swardcase.money.ModifiedRate;
import swardcase.money.NetPresentValue;
import swardcase.money.Payback;

/** The rows of money.csv beside the calculators of money. */
public final class MoneyChecks {

  private MoneyChecks() {}

  /** Every row. */
  public static List<PublishedCheck> all() {
    return PublishedRows.published("money.csv").stream().map(MoneyChecks::check).toList();
  }

  private static PublishedCheck check(Map<String, String> row) {
    StringBuilder what = new StringBuilder(row.get("what")).append(" of ").append(row.get("flows"));
    for (String column : List.of("rate", "second_rate", "years")) {
      if (!row.get(column).isEmpty()) {
        what.append(", ").append(column.replace('_', ' ')).append(' ').append(row.get(column));
      }
    }
    double tolerance = number(row, "tolerance");
    String reason =
        switch (row.get("kind")) {
          case "published" -> tolerance == 0 ? "exact" : "half of the last digit";
          case "worked" -> "worked separately; half of the last digit";
          case "memory" -> "from memory; half of the last digit";
          default -> throw new IllegalArgumentException(row.toString());
        };
    return new PublishedCheck(
        what.toString(),
        row.get("source"),
        row.get("printed"),
        value(row),
        tolerance,
        reason,
        PublishedCheck.Part.EQUATION);
  }

  private static double value(Map<String, String> row) {
    double[] flows =
        Arrays.stream(row.get("flows").split(" ")).mapToDouble(Double::valueOf).toArray();
    return switch (row.get("what")) {
      case "npv" -> NetPresentValue.of(number(row, "rate"), flows);
      case "annuity" ->
          NetPresentValue.annuity(
              NetPresentValue.of(number(row, "rate"), flows), number(row, "rate"), years(row));
      case "factor" -> NetPresentValue.ofSingle(flows[0], number(row, "rate"), years(row));
      case "irr percent" -> 100 * InternalRate.of(flows).get(0);
      case "mirr" ->
          ModifiedRate.of(flows, number(row, "rate"), number(row, "second_rate")).orElseThrow();
      case "payback" -> Payback.discountedYears(number(row, "rate"), flows).orElseThrow();
      case "profitability index" -> index(number(row, "rate"), flows);
      case "loan payment" -> NetPresentValue.annuity(flows[0], number(row, "rate"), years(row));
      default -> throw new IllegalArgumentException(row.toString());
    };
  }

  private static int years(Map<String, String> row) {
    return Integer.parseInt(row.get("years"));
  }

  /** Net present value over the outlay: the benefit-cost ratio less 1. */
  private static double index(double rate, double[] flows) {
    double[] benefits = flows.clone();
    benefits[0] = 0;
    return BenefitCost.ratio(rate, benefits, new double[] {-flows[0]}).orElseThrow() - 1;
  }
}
