package swardcase.page;

import java.util.List;
import swardcase.check.Fault;
import swardcase.wording.Texts;

/** What stands in the way of an answer, in the words of {@code check}. */
public final class FaultsView {

  private FaultsView() {}

  /** The view as HTML. */
  public static String of(List<Fault> faults) {
    Html html = new Html().open("section class=faults");
    html.element("h1 tabindex=-1", Texts.get("page.faults"));
    html.element("p", Texts.get("page.faults.note"));
    return html.list(faults.stream().map(Fault::message).toList()).close().toString();
  }
}
