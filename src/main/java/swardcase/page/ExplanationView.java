package swardcase.page;

import java.util.Optional;
import swardcase.report.ExplanationReport;
import swardcase.wording.ExplanationWords;
import swardcase.wording.OestrogenWords;
import swardcase.wording.Texts;

/** How a number was made: its formula, its parts within one another, and what moves it. */
public final class ExplanationView {

  private static final int DEEPEST = 12;

  private ExplanationView() {}

  /** The content of the dialogue as HTML. */
  public static String of(ExplanationReport report) {
    Html html = new Html();
    html.element("h2 id=how-head tabindex=-1", Texts.get("page.how"));
    report.oestrogen().ifPresent(rated -> html.each("p", OestrogenWords.explained(rated)));
    html.element("p class=note", ExplanationWords.head(report));
    number(html, new ExplanationWords(report), 0);
    return html.element("button type=button data-close", Texts.get("page.close")).toString();
  }

  private static void number(Html html, ExplanationWords of, int depth) {
    Optional<String> origin = of.origin();
    if (origin.isPresent()) {
      html.open("p class=input").text(of.amount()).text(" ");
      html.element("small", origin.get()).close();
      return;
    }
    if (depth == 0) {
      html.open("details open");
    } else {
      html.open("details");
    }
    html.element("summary", of.amount());
    html.each("p", of.formula().map(how -> "= " + how).stream().toList());
    if (depth == 0 && !of.movers().isEmpty()) {
      html.element("p", ExplanationWords.moversHead()).open("ul");
      for (ExplanationWords.Moved moved : of.movers()) {
        html.open("li").text(moved.by()).text(" ").element("small", moved.origin()).close();
      }
      html.close();
    }
    if (depth < DEEPEST) {
      for (ExplanationWords part : of.parts()) {
        number(html, part, depth + 1);
      }
    }
    html.close();
  }
}
