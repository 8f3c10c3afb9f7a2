package swardcase.wording;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.stream.IntStream;
import swardcase.chance.Drawn;
import swardcase.chance.Range;
import swardcase.decision.Amount;
import swardcase.decision.Explanation;
import swardcase.decision.Explanation.Joined;
import swardcase.decision.Quantity;
import swardcase.evidence.Assumption;
import swardcase.report.ExplanationReport;

/**
 * An explained number in words: its name and value, its formula, its movers, its parts.
 *
 * <p>A mean is printed so that a reader can reckon with it, money to the whole and all else to four
 * significant digits, while the ends beside it have the digits they deserve. Means that add up do
 * so as printed ({@link RoundedSums}).
 */
public final class ExplanationWords {

  private static final String MONEY = "money";
  private static final double FINEST = 1e-6;
  private static final Set<Joined> SUMS = Set.of(Joined.SUM, Joined.DIFFERENCE, Joined.EXCESS);

  private final Explanation of;
  private final String currency;
  private final boolean workedAtLikely;
  private final double step;
  private final double mean;

  /** The words of the explained number. */
  public ExplanationWords(ExplanationReport report) {
    this(report.number(), report.currency(), false);
  }

  private ExplanationWords(Explanation of, String currency, boolean workedAtLikely) {
    this(of, currency, workedAtLikely, step(of), mean(of));
  }

  private ExplanationWords(
      Explanation of, String currency, boolean workedAtLikely, double step, double mean) {
    this.of = of;
    this.currency = currency;
    this.workedAtLikely = workedAtLikely;
    this.step = step;
    this.mean = RoundedSums.total(mean, step);
  }

  private static double mean(Explanation of) {
    return of.amount().mean().orElse(0);
  }

  private static double step(Explanation of) {
    double size = mean(of);
    return of.unit().equals(MONEY) ? 1 : Math.max(FINEST, Words.step(size, size) / 100);
  }

  /** What the numbers are, for the head of an explanation. */
  public static String head(ExplanationReport report) {
    return Texts.get("explain.head", Words.exact(report.draws()), Long.toString(report.seed()));
  }

  /** What it is and how much: {@code ewes joined: 500 ewes}. */
  public String amount() {
    String name = Texts.of("explain", of.what(), of.names().toArray());
    Amount amount = of.amount();
    if (amount.given().isPresent()) {
      return name + ": " + given(amount.given().get());
    }
    List<String> told = new ArrayList<>();
    amount.mean().ifPresent(any -> told.add(overDraws(amount.drawn())));
    likely().ifPresent(likely -> told.add(Texts.get("explain.atLikely", reckoned(likely))));
    return name + ": " + String.join("; ", told);
  }

  /** Where means make the mean, nobody needs to know more. */
  private OptionalDouble likely() {
    boolean needed = workedAtLikely || !of.isOfMeans() || of.amount().mean().isEmpty();
    return needed ? of.amount().atLikely() : OptionalDouble.empty();
  }

  private String overDraws(Optional<Drawn> drawn) {
    String middle = unit(mean == 0 ? Words.exact(mean) : Words.rounded(mean, step));
    return drawn
        .filter(ends -> !Words.readsAsOne(ends))
        .map(ends -> Texts.get("explain.drawn", middle, Words.ends(ends)))
        .orElseGet(
            () ->
                drawn.map(Drawn::isExact).orElse(false)
                    ? middle
                    : Texts.get("explain.mean", middle));
  }

  /** How it is put together; empty for an input and for what is merely counted. */
  public Optional<String> formula() {
    Quantity what = of.what();
    if (!Texts.has("explain.how." + what.name())) {
      return Optional.empty();
    }
    String how = Texts.of("explain.how", what, of.names().toArray());
    boolean once = of.joined() != Joined.MODEL && !of.isOfMeans() && of.amount().given().isEmpty();
    return Optional.of(once ? Texts.get("explain.once", how) : how);
  }

  /** Mark, source and who set it; of an input only. */
  public Optional<String> origin() {
    return of.input().map(ExplanationWords::origin);
  }

  /** Its parts in order; those of a sum of means are rounded as it is, so that they add up. */
  public List<ExplanationWords> parts() {
    List<Explanation> all = of.parts();
    if (!of.isOfMeans() || !SUMS.contains(of.joined())) {
      boolean atLikely = !of.isOfMeans() && of.joined() != Joined.MODEL;
      return all.stream().map(part -> new ExplanationWords(part, currency, atLikely)).toList();
    }
    double[] means =
        IntStream.range(0, all.size()).mapToDouble(k -> sign(k) * mean(all.get(k))).toArray();
    double[] rounded = RoundedSums.parts(mean, means, step);
    return IntStream.range(0, all.size())
        .mapToObj(
            k -> new ExplanationWords(all.get(k), currency, false, step, sign(k) * rounded[k]))
        .toList();
  }

  private int sign(int part) {
    return of.joined() == Joined.DIFFERENCE && part > 0 ? -1 : 1;
  }

  /** The inputs that move it, most first; the head of that list is {@link #moversHead}. */
  public List<Moved> movers() {
    return of.movers().stream().map(this::mover).toList();
  }

  /**
   * An input that moves the number.
   *
   * @param by the input, and what the number is with it at its low and at its high end
   * @param origin its mark, source and who set it
   */
  public record Moved(String by, String origin) {}

  private Moved mover(Explanation.Mover mover) {
    Assumption input = mover.input();
    double digits = of.amount().drawn().map(Words::step).orElse(step);
    return new Moved(
        Texts.get(
            "explain.mover",
            mover.name(),
            unit(Words.range(input.range()), input.unit()),
            Words.rounded(mover.atLow(), digits),
            Words.rounded(mover.atHigh(), digits)),
        origin(input));
  }

  /** What stands above the movers. */
  public static String moversHead() {
    return Texts.get("explain.movers");
  }

  /** That so many movers are not named. */
  public static String moreMovers(int more) {
    return more == 1 ? Texts.get("explain.oneMore") : Texts.get("explain.more", more);
  }

  private static String origin(Assumption input) {
    String mark = input.evidence().label();
    String setBy = input.setBy().label();
    return input.source().isBlank()
        ? Texts.get("explain.noOrigin", mark, setBy)
        : Texts.get("explain.origin", mark, input.source(), setBy);
  }

  private String given(Range range) {
    return range.isExact() ? reckoned(range.likely()) : unit(Words.range(range));
  }

  private String reckoned(double value) {
    if (of.unit().equals(MONEY)) {
      return unit(Words.whole(value));
    }
    return unit(value == Math.rint(value) ? Words.exact(value) : Words.figures(value));
  }

  private String unit(String number) {
    return unit(number, of.unit());
  }

  private String unit(String number, String unit) {
    if (unit.equals(MONEY)) {
      return currency + " " + number;
    }
    boolean none = unit.isEmpty() || unit.equals("-");
    return none ? number : number + " " + unit.replace(MONEY, currency);
  }
}
