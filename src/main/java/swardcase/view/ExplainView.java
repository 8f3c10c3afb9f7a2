package swardcase.view;

import java.util.ArrayList;
import java.util.List;
import swardcase.chance.Range;
import swardcase.decision.Decision;
import swardcase.decision.Explanation;
import swardcase.decision.Explanation.Joined;
import swardcase.decision.Explanation.Mover;
import swardcase.evidence.Assumption;
import swardcase.report.OestrogenBuilder;
import swardcase.wording.OestrogenWords;
import swardcase.wording.Words;

/**
 * An explanation as an indented tree: each number with its formula, then its parts; below a number
 * with a range, the inputs that move it most.
 */
public final class ExplainView {

  private static final int MOST_MOVERS = 5;
  private static final String MONEY = "money";

  private final String currency;
  private final int depth;
  private final List<String> lines = new ArrayList<>();

  private ExplainView(String currency, int depth) {
    this.currency = currency;
    this.depth = depth;
  }

  /**
   * The tree as lines.
   *
   * @param currency sign printed before money
   * @param depth levels of parts shown; 0 shows the number alone
   */
  public static List<String> of(Explanation explanation, String currency, int depth) {
    ExplainView view = new ExplainView(currency, depth);
    view.add(explanation, 0);
    return view.lines;
  }

  /** The oestrogen rating of a paddock and how it comes from the dose, in two sentences. */
  public static List<String> rating(Decision decision, int paddock) {
    OestrogenBuilder rated = new OestrogenBuilder(decision.model().tables());
    return List.of(
        "Oestrogen: " + OestrogenWords.rating(rated.rating(decision, paddock)) + ".",
        OestrogenWords.rule(rated.rule()));
  }

  private void add(Explanation of, int level) {
    String indent = "  ".repeat(level);
    lines.add(indent + of.name() + ": " + amount(of.value(), of.unit()));
    if (of.joined() == Joined.INPUT) {
      lines.add(indent + "  " + origin(of.movers().get(0).input()));
      return;
    }
    if (!of.formula().isEmpty()) {
      lines.add(indent + "  = " + of.formula());
    }
    if (level == 0 && !of.movers().isEmpty()) {
      movers(of);
    }
    if (level < depth) {
      of.parts().forEach(part -> add(part, level + 1));
    }
  }

  private void movers(Explanation of) {
    lines.add("  moved most by, each alone from its low to its high end:");
    for (Mover mover : of.movers().stream().limit(MOST_MOVERS).toList()) {
      Assumption input = mover.input();
      String from = number(mover.atLow(), of.value());
      String to = number(mover.atHigh(), of.value());
      lines.add(
          "  - "
              + input.name()
              + " "
              + amount(input.range(), input.unit())
              + ": "
              + from
              + " to "
              + to);
      lines.add("    " + origin(input));
    }
    int more = of.movers().size() - MOST_MOVERS;
    if (more > 0) {
      lines.add(
          "  - and " + more + (more == 1 ? " more that moves" : " more that move") + " it less");
    }
  }

  private static String number(double value, Range like) {
    return Words.rounded(value, Words.step(like));
  }

  private static String origin(Assumption input) {
    String source = input.source().isBlank() ? "no source" : "source " + input.source();
    return "["
        + input.evidence().label()
        + "; "
        + source
        + "; set by "
        + input.setBy().label()
        + "]";
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
