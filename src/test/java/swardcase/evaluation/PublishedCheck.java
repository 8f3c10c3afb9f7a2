package swardcase.evaluation;

import java.math.BigDecimal;
import java.util.Locale;
import java.util.Map;

/**
 * A value that a source prints, beside ours.
 *
 * @param what the quantity and its arguments, in words
 * @param source key of tables/sources.csv, or words where the source has no key; blank if none
 * @param printed the value as the source prints it, or a range: {@code 70 to 90}, {@code at least
 *     4.2}, {@code at most 8}, {@code above 0}
 * @param ours the value of the program
 * @param tolerance the largest difference that counts as agreement, in the unit of the value
 * @param reason why the tolerance is what it is
 * @param part what agreement would prove
 * @param effect what a miss would change on the demo farms: the name of a {@link Lever}, or why
 *     none tells
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
  private static final double NEXT_TO_NOTHING = 1e-12;

  /** What agreement proves. */
  public enum Part {
    /** That an equation is calculated as it is written. */
    EQUATION,
    /** That a value of the tables follows what it was set with. */
    FIT,
    /** Something about sheep, seed or feed: the source set no row of the tables and no equation. */
    OUTSIDE,
    /** Nothing more: a result that stands in another part, read in another way. */
    READING;

    /** The part named in a row's column {@code part}. */
    static Part of(Map<String, String> row) {
      return valueOf(row.get("part").toUpperCase(Locale.ROOT));
    }
  }

  /** A check whose miss changes nothing, because it is met or is arithmetic. */
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

  /** The same with another effect, if it has none. */
  PublishedCheck orEffect(String other) {
    return effect.isEmpty()
        ? new PublishedCheck(what, source, printed, ours, tolerance, reason, part, other)
        : this;
  }

  /** Half of the last digit of a number as printed. */
  static double halfOfTheLastDigit(String printed) {
    return 0.5 * Math.pow(10, -new BigDecimal(printed).scale());
  }

  /** Ours less the printed value, or less the nearer end of the printed range; 0 within it. */
  public double difference() {
    return ours < low() ? ours - low() : Math.max(0, ours - high());
  }

  private double low() {
    if (printed.startsWith("at most ")) {
      return Double.NEGATIVE_INFINITY;
    }
    return first();
  }

  private double high() {
    if (printed.startsWith("at least ") || printed.startsWith("above ")) {
      return Double.POSITIVE_INFINITY;
    }
    int to = printed.indexOf(" to ");
    return to < 0 ? first() : Double.parseDouble(printed.substring(to + " to ".length()));
  }

  private double first() {
    return Double.parseDouble(firstNumber());
  }

  private String firstNumber() {
    return printed.replaceFirst("^(at least|at most|above) ", "").replaceFirst(" to .*", "");
  }

  /** True if the difference is within the tolerance, the last binary digits aside. */
  public boolean agrees() {
    if (printed.startsWith("above ")) {
      return ours > first() + NEXT_TO_NOTHING;
    }
    return Math.abs(difference()) <= tolerance + NEXT_TO_NOTHING * Math.max(1, Math.abs(ours));
  }

  /** The row of the Markdown table. */
  String markdown() {
    return "| %s | %s | %s | %s | %s | %s | %s | %s |"
        .formatted(
            what,
            source,
            printed,
            decimals(ours),
            signed(difference()),
            reason,
            agrees() ? "agrees" : "**differs**",
            agrees() ? "" : Lever.inWords(effect));
  }

  private String signed(double value) {
    String text = decimals(value);
    return value > 0 && !text.equals("0") ? "+" + text : text;
  }

  /** One digit more than the source prints. */
  private String decimals(double value) {
    int scale = Math.max(0, new BigDecimal(firstNumber()).scale());
    int places = Math.min(scale + 1, MOST_DECIMALS);
    String text = String.format(Locale.ROOT, "%." + places + "f", value);
    boolean isZero = new BigDecimal(text).signum() == 0;
    return isZero ? "0" : text.replace('-', '−');
  }
}
