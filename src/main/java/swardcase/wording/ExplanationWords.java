package swardcase.wording;

import java.util.List;
import java.util.Optional;
import swardcase.chance.Range;
import swardcase.decision.Explanation;
import swardcase.decision.Explanation.Joined;
import swardcase.decision.Quantity;
import swardcase.evidence.Assumption;
import swardcase.report.ExplanationReport;

/** An explained number in words: its name and value, its formula, its movers, its parts. */
public final class ExplanationWords {

  private static final String MONEY = "money";

  private final Explanation of;
  private final String currency;

  /** The words of the explained number. */
  public ExplanationWords(ExplanationReport report) {
    this(report.number(), report.currency());
  }

  private ExplanationWords(Explanation of, String currency) {
    this.of = of;
    this.currency = currency;
  }

  /** What it is and how much: {@code ewes joined: 500 ewes}. */
  public String amount() {
    String name = Texts.of("explain", of.what(), of.names().toArray());
    return name + ": " + amount(of.value(), of.unit());
  }

  /** How it is put together; empty for an input and for what is merely counted. */
  public Optional<String> formula() {
    Quantity what = of.what();
    return Texts.has("explain.how." + what.name())
        ? Optional.of(Texts.of("explain.how", what, of.names().toArray()))
        : Optional.empty();
  }

  /** Mark, source and who set it; of an input only. */
  public Optional<String> origin() {
    return of.joined() == Joined.INPUT
        ? Optional.of(origin(of.movers().get(0).input()))
        : Optional.empty();
  }

  /** Its parts in order. */
  public List<ExplanationWords> parts() {
    return of.parts().stream().map(part -> new ExplanationWords(part, currency)).toList();
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
    double step = Words.step(of.value());
    return new Moved(
        Texts.get(
            "explain.mover",
            input.name(),
            amount(input.range(), input.unit()),
            Words.rounded(mover.atLow(), step),
            Words.rounded(mover.atHigh(), step)),
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

  private String amount(Range value, String unit) {
    if (unit.equals(MONEY)) {
      return Words.money(currency, value);
    }
    String number = value.isExact() ? exact(value.likely()) : Words.range(value);
    return unit.isEmpty() || unit.equals("-") ? number : number + " " + unit;
  }

  /** Parts are shown so that a reader can reckon with them: four significant digits. */
  private static String exact(double value) {
    return value == Math.rint(value)
        ? Words.exact(value)
        : Words.rounded(value, Words.step(value, value) / 100);
  }
}
