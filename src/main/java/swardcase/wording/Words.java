package swardcase.wording;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.time.Month;
import java.time.format.TextStyle;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import swardcase.chance.Range;

/**
 * Numbers in words, the same in every view.
 *
 * <p>An uncertain number is printed with the digits it deserves and no more: about two significant
 * figures of its largest end, and never so few that a narrow range looks like one value. {@code
 * Range.of(4321, 12345, 21234)} reads {@code 12,000 (4,000 to 21,000)}. An exact number, such as
 * one the user wrote, is printed as it is.
 */
public final class Words {

  private static final String UNDER_ONE = "under 1";
  private static final char MINUS = '\u2212';
  private static final MathContext EXACT_DIGITS = new MathContext(9, RoundingMode.HALF_UP);

  private static final MathContext FOUR_DIGITS = new MathContext(4, RoundingMode.HALF_UP);
  private static final MathContext SIX_DIGITS = new MathContext(6, RoundingMode.HALF_UP);

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

  /** A number for a file that programs read: six significant digits, plain, {@code 0.00123457}. */
  public static String sixDigits(double value) {
    BigDecimal rounded = BigDecimal.valueOf(value).round(SIX_DIGITS).stripTrailingZeros();
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
    return range.isExact() || readsAsOne(range)
        ? likely(range)
        : likely(range) + " (" + ends(range) + ")";
  }

  /** A number of animals or of money: below one it is not told in digits. */
  public static String count(Range range) {
    return isUnderOne(range) ? UNDER_ONE : range(range);
  }

  /** The likely number of animals alone. */
  public static String likelyCount(Range range) {
    return isUnderOne(range) ? UNDER_ONE : likely(range);
  }

  private static boolean isUnderOne(Range range) {
    return range.low() >= 0 && range.high() < 1 && range.high() > 0;
  }

  /** The same with a unit behind it: {@code 38 (10 to 70) t}. */
  public static String range(Range range, String unit) {
    return range(range) + " " + unit;
  }

  /** The likely value alone, with the digits its range deserves. */
  public static String likely(Range range) {
    return range.isExact() ? exactOf(range) : rounded(range.likely(), step(range));
  }

  /** The two ends: {@code 4,000 to 21,000}, or one number if exact or as good as. */
  public static String ends(Range range) {
    return range.isExact() || readsAsOne(range)
        ? likely(range)
        : rounded(range.low(), step(range)) + " to " + rounded(range.high(), step(range));
  }

  /** Money with its ends: {@code A$ 12,000 (4,000 to 21,000)}. */
  public static String money(String currency, Range range) {
    return currency + " " + range(range);
  }

  /** The likely value of money: {@code A$ 12,000}. */
  public static String likelyMoney(String currency, Range range) {
    return currency + " " + likely(range);
  }

  /** An uncertain sum of money to two significant figures: {@code A$ 12,000}. */
  public static String aboutMoney(String currency, double value) {
    return currency + " " + about(value);
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
    Range percent = fraction.times(100);
    return percent.isExact()
        ? likely(percent) + " %"
        : likely(percent) + " % (" + ends(percent) + " %)";
  }

  /** A fraction as whole per cent: 0.354 reads {@code 35 %}. */
  public static String percent(double fraction) {
    return whole(fraction * 100) + " %";
  }

  /**
   * The step a range is rounded to: two significant figures of its end farthest from zero, but no
   * coarser than the leading digit of half its width; and never finer than four significant
   * figures, so that a range too narrow for that reads as one value.
   */
  public static double step(Range range) {
    double ofEnds = step(range.low(), range.high());
    double width = range.high() - range.low();
    return width > 0 ? Math.max(ofEnds / 100, Math.min(ofEnds, powerOfTen(width / 2))) : ofEnds;
  }

  /** The step that leaves two significant figures of the number farther from zero. */
  public static double step(double low, double high) {
    return powerOfTen(Math.max(Math.abs(low), Math.abs(high))) / 10;
  }

  /** Whether both ends print alike, or differ by less than a thousandth: no range worth naming. */
  private static boolean readsAsOne(Range range) {
    double step = step(range);
    double size = Math.max(Math.abs(range.low()), Math.abs(range.high()));
    return range.high() - range.low() < size / 1000
        || rounded(range.low(), step).equals(rounded(range.high(), step));
  }

  /** Results that carry no range are sums and products: they never deserve nine digits. */
  private static String exactOf(Range range) {
    double size = Math.abs(range.likely());
    return size >= 100 ? whole(range.likely()) : exact(Math.rint(range.likely() * 1e4) / 1e4);
  }

  private static double powerOfTen(double size) {
    return size > 0 ? Math.pow(10, Math.floor(Math.log10(size) + 1e-12)) : 10;
  }

  private static String grouped(BigDecimal number, int decimals) {
    String plain = number.abs().setScale(decimals, RoundingMode.HALF_UP).toPlainString();
    StringBuilder digits = new StringBuilder(plain);
    int wholes = decimals == 0 ? plain.length() : plain.length() - decimals - 1;
    for (int comma = wholes - 3; comma > 0; comma -= 3) {
      digits.insert(comma, ',');
    }
    return number.signum() < 0 ? MINUS + digits.toString() : digits.toString();
  }
}
