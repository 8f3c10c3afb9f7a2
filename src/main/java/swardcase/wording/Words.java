package swardcase.wording;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.time.Month;
import java.time.format.TextStyle;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import swardcase.chance.Drawn;
import swardcase.chance.Range;

/**
 * Numbers in words, the same in every view.
 *
 * <p>An uncertain number is printed with the digits it deserves and no more: about two significant
 * figures of its largest end, and never so few that a narrow range looks like one value. {@code
 * Range.of(4321, 12345, 21234)} reads {@code 12,000 (4,000 to 21,000)}. A result over the draws
 * reads alike, its mean first, which may lie outside the ends. An exact number, such as one the
 * user wrote, is printed as it is.
 */
public final class Words {

  private static final String UNDER_ONE = "under 1";
  private static final char MINUS = '\u2212';
  private static final MathContext EXACT_DIGITS = new MathContext(9, RoundingMode.HALF_UP);

  private static final MathContext FOUR_DIGITS = new MathContext(4, RoundingMode.HALF_UP);
  private static final MathContext FIFTEEN_DIGITS = new MathContext(15, RoundingMode.HALF_UP);

  private Words() {}

  /** A number as it was written: {@code 1234.5} reads {@code 1,234.5}. */
  public static String exact(double value) {
    BigDecimal number = BigDecimal.valueOf(value).round(EXACT_DIGITS).stripTrailingZeros();
    return grouped(number, Math.max(0, number.scale()));
  }

  /** A number of a table of inputs, four significant figures at most: 0.62174 reads 0.6217. */
  public static String figures(double value) {
    return exact(BigDecimal.valueOf(value).round(FOUR_DIGITS).doubleValue());
  }

  /**
   * A number for a file that programs read: plain, with fifteen significant digits, as many as
   * every number can have, so that sums stay true: 0.1 + 0.2 reads {@code 0.3}.
   */
  public static String fifteenDigits(double value) {
    BigDecimal rounded = BigDecimal.valueOf(value).round(FIFTEEN_DIGITS).stripTrailingZeros();
    return rounded.signum() == 0 ? "0" : rounded.toPlainString();
  }

  /** A number rounded to two significant figures: 12,345 reads {@code 12,000}. */
  public static String about(double value) {
    return rounded(value, step(value, value));
  }

  /** A number rounded to a whole: 1234.5 reads {@code 1,235}. */
  public static String whole(double value) {
    return rounded(value, 1);
  }

  /** A number rounded to the nearest {@code step}, a power of ten: 1,234 by 100 is 1,200. */
  public static String rounded(double value, double step) {
    int decimals = (int) -Math.floor(Math.log10(step) + 1e-9);
    BigDecimal number = BigDecimal.valueOf(value).setScale(decimals, RoundingMode.HALF_UP);
    return grouped(number, Math.max(0, decimals));
  }

  /** Likely value with its ends: {@code 12,000 (4,000 to 21,000)}, or one number if exact. */
  public static String range(Range range) {
    return range(drawn(range));
  }

  /** Mean with its ends: {@code 24,000 (8,000 to 41,000)}, or one number if exact. */
  public static String range(Drawn drawn) {
    return withEnds(mean(drawn), ends(drawn));
  }

  /** The same with a unit behind it: {@code 38 (10 to 70) t}. */
  public static String range(Range range, String unit) {
    return range(range) + " " + unit;
  }

  /** The same with every number rounded to {@code step}, a power of ten. */
  public static String range(Drawn drawn, double step) {
    return withEnds(rounded(drawn.mean(), step), ends(drawn, step));
  }

  /** The same with a unit behind it: {@code 38 (10 to 70) t}. */
  public static String range(Drawn drawn, String unit) {
    return range(drawn) + " " + unit;
  }

  /** A number of animals or of money: below one it is not told in digits. */
  public static String count(Drawn drawn) {
    double most = Math.max(drawn.high(), drawn.mean());
    boolean isUnderOne = Math.min(drawn.low(), drawn.mean()) >= 0 && most < 1 && most > 0;
    return isUnderOne ? UNDER_ONE : range(drawn);
  }

  /** The same in a narrow column, with its ends on the line below. */
  public static String inTwoLines(Drawn drawn) {
    return inTwoLines(range(drawn));
  }

  /** A number and its ends, these on the line below. */
  public static String inTwoLines(String range) {
    return range.replace(" (", "\n(");
  }

  /** The mean alone, with the digits its ends deserve. */
  public static String mean(Drawn drawn) {
    return drawn.isExact()
        ? exactly(drawn)
        : isOne(drawn) ? one(drawn) : rounded(drawn.mean(), step(drawn));
  }

  /** The two ends: {@code 4,000 to 21,000}, or one number if exact or as good as. */
  public static String ends(Range range) {
    return ends(drawn(range));
  }

  /** The two ends: {@code 8,000 to 41,000}, or one number if exact or as good as. */
  public static String ends(Drawn drawn) {
    if (drawn.isExact()) {
      return exactly(drawn);
    }
    if (isOne(drawn)) {
      return one(drawn);
    }
    double nearest = Math.max(drawn.low(), Math.min(drawn.high(), drawn.mean()));
    return readsAsOne(drawn) ? rounded(nearest, step(drawn)) : ends(drawn, step(drawn));
  }

  /** The two ends, both rounded to {@code step}, a power of ten. */
  public static String ends(Drawn drawn, double step) {
    String low = rounded(drawn.low(), step);
    String high = rounded(drawn.high(), step);
    return low.equals(high) ? low : low + " to " + high;
  }

  /** Money with its ends, never in parts of one: {@code A$ 24,000 (8,000 to 41,000)}. */
  public static String money(String currency, Drawn drawn) {
    return step(drawn) < 1 ? money(currency, drawn, 1) : currency + " " + range(drawn);
  }

  /**
   * Money with its ends, all rounded to {@code step}, a power of ten such as {@link MoneyUnit}: the
   * same by 100 reads {@code A$ 24,300 (8,500 to 41,200)}.
   */
  public static String money(String currency, Drawn drawn, double step) {
    return currency + " " + range(drawn, step);
  }

  /** An uncertain sum of money to two significant figures: {@code A$ 12,000}. */
  public static String aboutMoney(String currency, double value) {
    return currency + " " + rounded(value, Math.max(1, step(value, value)));
  }

  /** A month in three letters: {@code Jun}. */
  public static String shortName(Month month) {
    return month.getDisplayName(TextStyle.SHORT, Locale.ENGLISH);
  }

  /** Months in full: {@code June, July, August}. */
  public static String months(List<Month> months) {
    return months.stream()
        .map(month -> month.getDisplayName(TextStyle.FULL, Locale.ENGLISH))
        .collect(Collectors.joining(", "));
  }

  /** A number that no draw moves; of one that goes by month the least and the most. */
  public static String figures(double least, double most) {
    return least == most
        ? figures(least)
        : Texts.get("fixed.months", figures(least), figures(most));
  }

  /** A fraction as per cent, with its ends: 0.35 in 0.2 to 0.5 reads {@code 35 % (20 to 50 %)}. */
  public static String percent(Range fraction) {
    Drawn percent = drawn(fraction.times(100));
    return withEnds(mean(percent) + " %", ends(percent) + " %");
  }

  /** A fraction as whole per cent: 0.354 reads {@code 35 %}. */
  public static String percent(double fraction) {
    return whole(fraction * 100) + " %";
  }

  /**
   * The step a result is rounded to: two significant figures of its end farthest from zero, but no
   * coarser than the leading digit of half its width; and never finer than four significant
   * figures, so that a range too narrow for that reads as one value. Its mean counts as an end
   * where it lies beyond them.
   */
  public static double step(Drawn drawn) {
    double ofEnds = step(Math.min(drawn.low(), drawn.mean()), Math.max(drawn.high(), drawn.mean()));
    double width = drawn.high() - drawn.low();
    return width > 0 ? Math.max(ofEnds / 100, Math.min(ofEnds, powerOfTen(width / 2))) : ofEnds;
  }

  /** The step that leaves two significant figures of the number farther from zero. */
  public static double step(double low, double high) {
    return powerOfTen(Math.max(Math.abs(low), Math.abs(high))) / 10;
  }

  private static double powerOfTen(double size) {
    return size > 0 ? Math.pow(10, Math.floor(Math.log10(size) + 1e-12)) : 10;
  }

  private static String grouped(BigDecimal number, int decimals) {
    String digits = String.format(Locale.ROOT, "%,." + decimals + "f", number.abs());
    return number.signum() < 0 ? MINUS + digits : digits;
  }

  private static String withEnds(String middle, String ends) {
    return middle.equals(ends) ? middle : middle + " (" + ends + ")";
  }

  private static Drawn drawn(Range range) {
    return Drawn.of(range.likely(), range.low(), range.high());
  }

  /** Whether both ends print alike, or differ by less than a thousandth: no range worth naming. */
  static boolean readsAsOne(Drawn drawn) {
    double size = Math.max(Math.abs(drawn.low()), Math.abs(drawn.high()));
    double step = step(drawn);
    return drawn.high() - drawn.low() < size / 1000
        || rounded(drawn.low(), step).equals(rounded(drawn.high(), step));
  }

  /** Whether mean and ends are one number, which needs no digits to be told apart. */
  private static boolean isOne(Drawn drawn) {
    return readsAsOne(drawn) && drawn.low() <= drawn.mean() && drawn.mean() <= drawn.high();
  }

  private static String one(Drawn drawn) {
    return exact(Math.rint(drawn.mean() / step(drawn)) * step(drawn));
  }

  /** Results that carry no range are sums and products: they never deserve nine digits. */
  private static String exactly(Drawn drawn) {
    double value = drawn.mean();
    return Math.abs(value) >= 100 ? whole(value) : exact(Math.rint(value * 1e4) / 1e4);
  }
}
