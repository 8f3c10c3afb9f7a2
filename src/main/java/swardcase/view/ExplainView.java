package swardcase.view;

import java.util.ArrayList;
import java.util.List;
import swardcase.report.ExplanationReport;
import swardcase.wording.ExplanationWords;
import swardcase.wording.ExplanationWords.Moved;
import swardcase.wording.OestrogenWords;

/**
 * An explanation as an indented tree: each number with its formula, then its parts; below the one
 * that is asked for, the inputs that move it most.
 */
public final class ExplainView {

  private static final int MOST_MOVERS = 5;

  private final int depth;
  private final List<String> lines = new ArrayList<>();

  private ExplainView(int depth) {
    this.depth = depth;
  }

  /**
   * The tree as lines.
   *
   * @param depth levels of parts shown; 0 shows the number alone
   */
  public static List<String> of(ExplanationReport report, int depth) {
    ExplainView view = new ExplainView(depth);
    report.oestrogen().ifPresent(rated -> view.lines.addAll(OestrogenWords.explained(rated)));
    view.lines.add(ExplanationWords.head(report));
    view.add(new ExplanationWords(report), 0);
    return view.lines;
  }

  private void add(ExplanationWords of, int level) {
    String indent = "  ".repeat(level);
    lines.add(indent + of.amount());
    if (of.origin().isPresent()) {
      lines.add(indent + "  " + of.origin().get());
      return;
    }
    of.formula().ifPresent(formula -> lines.add(indent + "  = " + formula));
    if (level == 0 && !of.movers().isEmpty()) {
      movers(of.movers());
    }
    if (level < depth) {
      of.parts().forEach(part -> add(part, level + 1));
    }
  }

  private void movers(List<Moved> movers) {
    lines.add("  " + ExplanationWords.moversHead());
    for (Moved mover : movers.stream().limit(MOST_MOVERS).toList()) {
      lines.add("  - " + mover.by());
      lines.add("    " + mover.origin());
    }
    if (movers.size() > MOST_MOVERS) {
      lines.add("  - " + ExplanationWords.moreMovers(movers.size() - MOST_MOVERS));
    }
  }
}
