package swardcase.page;

import java.util.List;
import java.util.Optional;
import swardcase.report.JoiningReport;
import swardcase.report.JoiningReport.MobRow;
import swardcase.wording.JoiningWords;
import swardcase.wording.Texts;
import swardcase.wording.Words;

/**
 * Before joining: what is shut to each mob and where it is, what an early or late break changes.
 */
public final class JoiningView {

  private final JoiningReport report;
  private final Html html = new Html();

  private JoiningView(JoiningReport report) {
    this.report = report;
  }

  /** The view as HTML. */
  public static String of(Optional<JoiningReport> report) {
    Html head = new Html().open("section");
    head.element("h1 tabindex=-1", Texts.get("page.view.JOINING"));
    if (report.isEmpty()) {
      return head.element("p", Texts.get("oestrogen.NO_EWES")).close().toString();
    }
    JoiningView view = new JoiningView(report.get());
    view.html.element("p class=lead", String.join(" ", JoiningWords.answer(report.get())));
    if (!report.get().shut().isEmpty()) {
      report.get().mobs().forEach(view::mob);
      view.html.each("p", List.of(Texts.get("joining.note")));
      view.html.each("p", JoiningWords.others(report.get()));
      view.seasons();
      view.shut();
    }
    view.last();
    return head.add(view.html).close().toString();
  }

  private void mob(MobRow mob) {
    html.element("h2", JoiningWords.who(mob) + ", " + JoiningWords.joining(mob));
    html.each("p", List.of(Texts.get("joining.off", String.join("; ", JoiningWords.off(mob)))));
    html.list(
        mob.stays().stream()
            .map(stay -> JoiningWords.when(stay) + ": " + JoiningWords.where(stay, report))
            .toList());
  }

  private void seasons() {
    html.element("h2", Texts.get("joining.break"));
    Optional<String> same = JoiningWords.sameInAllSeasons(report);
    if (same.isPresent()) {
      html.each("p", List.of(same.get()));
    } else {
      html.table(
          Texts.get("joining.break"),
          Html.words(
              "joining.break.column",
              "joining.break.years",
              "joining.break.do",
              "joining.break.lost"),
          report.seasons().stream()
              .map(
                  season ->
                      List.of(
                          Texts.of("joining.break", season.comes()),
                          Words.rounded(10 * season.chance(), 0.1),
                          JoiningWords.out(season),
                          JoiningWords.lost(season)))
              .toList());
    }
    html.each("p", List.of(Texts.get("joining.break.rule")));
  }

  private void shut() {
    html.table(
        Texts.get("joining.behind"),
        List.of(
            Texts.get("column.paddock"),
            Texts.get("joining.column.shutTo"),
            Texts.get("joining.column.why"),
            Texts.get("joining.column.lost"),
            JoiningWords.sureHeading(report)),
        report.shut().stream()
            .map(
                shut ->
                    List.of(
                        shut.paddock(),
                        JoiningWords.shutTo(shut),
                        JoiningWords.reason(shut),
                        JoiningWords.lost(shut),
                        JoiningWords.sure(shut)))
            .toList());
    String note = Texts.get("joining.behind.note", Words.exact(report.answer().tellable()));
    html.element("p class=note", note);
  }

  private void last() {
    if (!report.youngEwes().isEmpty()) {
      html.element("h2", Texts.get("joining.young")).each("p", List.of(JoiningWords.young(report)));
    }
    html.element("h2", Texts.get("joining.before")).list(report.cautions());
  }
}
