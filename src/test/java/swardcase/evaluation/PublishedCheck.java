package swardcase.evaluation;

import java.math.BigDecimal;
import java.util.Locale;
import java.util.Map;

/**
 * A value that a source prints, beside ours.
 *
 * @param what the quantity and its arguments, in words
 * @param source key of tables/sources.csv, or words where the source has no key; blank if none
 * @param printed the value as the source prints it
 * @param ours the value of the program
 * @param tolerance the largest difference that counts as agreement, in the unit of the value
 * @param reason why the tolerance is what it is
 */
public record PublishedCheck(
    String what, String source, String printed, double ours, double tolerance, String reason) {

  private static final int MOST_DECIMALS = 6;

  /** A check from a row with columns source, printed, tolerance and reason. */
  public static PublishedCheck ofRow(String what, Map<String, String> row, double ours) {
    return new PublishedCheck(
        what,
        row.get("source"),
        row.get("printed"),
        ours,
        PublishedRows.number(row, "tolerance"),
        row.get("reason"));
  }

  /** Ours less the printed value. */
  public double difference() {
    return ours - Double.parseDouble(printed);
  }

  /** True if the difference is within the tolerance, the last binary digits aside. */
  public boolean agrees() {
    return Math.abs(difference()) <= tolerance + 1e-12 * Math.max(1, Math.abs(ours));
  }

  /** The row of the Markdown table. */
  String markdown() {
    return "| %s | %s | %s | %s | %s | %s | %s |"
        .formatted(
            what,
            source,
            printed,
            decimals(ours),
            signed(difference()),
            reason,
            agrees() ? "agrees" : "**differs**");
  }

  private String signed(double value) {
    String text = decimals(value);
    return value > 0 && !text.equals("0") ? "+" + text : text;
  }

  /** One digit more than the source prints. */
  private String decimals(double value) {
    int places = Math.min(Math.max(0, new BigDecimal(printed).scale()) + 1, MOST_DECIMALS);
    String text = String.format(Locale.ROOT, "%." + places + "f", value);
    boolean isZero = new BigDecimal(text).signum() == 0;
    return isZero ? "0" : text.replace('-', '−');
  }
}
