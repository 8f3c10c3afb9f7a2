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
 * @param part what agreement would prove
 * @param effect what a miss would change on the demo farms; blank if that was not worked out
 */
public record PublishedCheck(
    String what,
    String source,
    String printed,
    double ours,
    double tolerance,
    String reason,
    Part part,
    String effect) {

  private static final int MOST_DECIMALS = 6;

  /** What agreement proves. */
  public enum Part {
    /** That an equation is calculated as it is written. */
    EQUATION,
    /** That a value of the tables follows what it was set with. */
    FIT,
    /** Something about sheep, seed or feed: the source set no row of the tables and no equation. */
    OUTSIDE;

    /** The part named in a row's column {@code part}. */
    static Part of(Map<String, String> row) {
      return valueOf(row.get("part").toUpperCase(Locale.ROOT));
    }
  }

  /** A check whose miss changes nothing that was worked out. */
  public PublishedCheck(
      String what,
      String source,
      String printed,
      double ours,
      double tolerance,
      String reason,
      Part part) {
    this(what, source, printed, ours, tolerance, reason, part, "");
  }

  /** A check from a row with columns source, printed, tolerance, reason and perhaps effect. */
  public static PublishedCheck ofRow(String what, Map<String, String> row, double ours, Part part) {
    return new PublishedCheck(
        what,
        row.get("source"),
        row.get("printed"),
        ours,
        PublishedRows.number(row, "tolerance"),
        row.get("reason"),
        part,
        row.getOrDefault("effect", ""));
  }

  /** Half of the last digit of a number as printed. */
  static double halfOfTheLastDigit(String printed) {
    return 0.5 * Math.pow(10, -new BigDecimal(printed).scale());
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
    String missed = effect.isEmpty() ? "not worked out" : effect;
    return "| %s | %s | %s | %s | %s | %s | %s | %s |"
        .formatted(
            what,
            source,
            printed,
            decimals(ours),
            signed(difference()),
            reason,
            agrees() ? "agrees" : "**differs**",
            agrees() ? "" : missed);
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
