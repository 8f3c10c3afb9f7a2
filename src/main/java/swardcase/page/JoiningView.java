package swardcase.page;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import swardcase.report.JoiningReport;
import swardcase.report.JoiningReport.Cell;
import swardcase.report.JoiningReport.MobCalendar;
import swardcase.report.JoiningReport.Move;
import swardcase.report.JoiningReport.PaddockRow;
import swardcase.report.JoiningReport.YoungRow;
import swardcase.wording.JoiningWords;
import swardcase.wording.SafeFeedWords;
import swardcase.wording.Texts;
import swardcase.wording.Words;

/** Before joining: where each mob goes, which gates stay shut, and the calendar behind it. */
public final class JoiningView {

  private final JoiningReport report;
  private final Html html = new Html();

  private JoiningView(JoiningReport report) {
    this.report = report;
  }

  /** The view as HTML. */
  public static String of(Optional<JoiningReport> report) {
    Html head = new Html().open("section");
    head.element("h1", Texts.get("page.view.JOINING"), "tabindex", "-1");
    if (report.isEmpty()) {
      return head.element("p", Texts.get("oestrogen.NO_EWES")).close().toString();
    }
    JoiningView view = new JoiningView(report.get());
    view.moves();
    view.gates();
    report.get().mobs().forEach(view::calendar);
    view.young();
    view.safe();
    return head.add(view.html).close().toString();
  }

  private List<String> headings(String first) {
    List<String> headings = new ArrayList<>(List.of(Texts.get(first)));
    report
        .halfMonths()
        .forEach(
            half ->
                headings.add(
                    Texts.get(
                        "joining.from",
                        JoiningWords.day(half.from()),
                        JoiningWords.day(half.to()))));
    return headings;
  }

  private void moves() {
    html.element("p", JoiningWords.answer(report), "class", "lead");
    html.table(Texts.get("joining.heading"), headings("joining.mob"));
    report
        .moves()
        .forEach(
            group -> {
              List<String> cells = new ArrayList<>(List.of(group.group()));
              group.moves().forEach(move -> cells.add(where(move)));
              html.row(cells);
            });
    html.tableEnd().element("p", Texts.get("joining.moves.note"), "class", "note");
  }

  private String where(Move move) {
    List<String> stays = new ArrayList<>(JoiningWords.where(move));
    if (move.feedTonnes() > 0) {
      stays.add(
          Texts.get("joining.feed", Words.about(move.feedTonnes()), report.farm().supplement()));
    }
    return String.join(", ", stays);
  }

  private void gates() {
    if (report.gates().isEmpty()) {
      html.element("p", Texts.get("joining.gates.none"));
      return;
    }
    html.table(Texts.get("joining.gates"), headings("column.paddock"));
    report
        .gates()
        .forEach(
            gate -> {
              List<String> cells = new ArrayList<>(List.of(gate.paddock()));
              gate.shutTo().forEach(mobs -> cells.add(shut(mobs)));
              html.row(cells);
            });
    html.tableEnd().element("p", Texts.get("page.gates.note"), "class", "note");
  }

  private String shut(List<String> mobs) {
    String who = JoiningWords.shutTo(mobs, report);
    return who.isBlank() ? Texts.get("none") : who;
  }

  private void calendar(MobCalendar mob) {
    String caption =
        Texts.get(
            "joining.calendar.mob", mob.name(), Words.exact(mob.ewes()), JoiningWords.joining(mob));
    List<String> headings = headings("column.paddock");
    headings.add(Texts.get("joining.why"));
    html.table(caption, headings);
    for (PaddockRow row : mob.paddocks()) {
      html.open("tr").element("th", row.paddock(), "scope", "row");
      row.cells().forEach(cell -> rating(cell, row));
      html.element("td", JoiningWords.reason(row)).close();
    }
    html.tableEnd();
  }

  private void rating(Cell cell, PaddockRow row) {
    html.open("td", "class", "rating " + cell.rating().name().toLowerCase(Locale.ROOT));
    html.element("span", JoiningWords.rating(cell));
    if (cell.rating() != JoiningReport.Rating.NOT_RATED) {
      html.element("small", JoiningWords.sure(cell, row));
    }
    html.close();
  }

  private void young() {
    html.element("h2", Texts.get("joining.young"));
    html.element("p", Texts.get("joining.young.note"), "class", "note");
    html.table(
        Texts.get("joining.young"),
        List.of(
            Texts.get("column.paddock"),
            Texts.get("joining.young.rating"),
            Texts.get("joining.young.barren")));
    for (YoungRow row : report.youngEwes()) {
      html.row(List.of(row.paddock(), JoiningWords.young(row), Words.count(row.barrenPercent())));
    }
    html.tableEnd();
  }

  private void safe() {
    SafeFeedWords safe = new SafeFeedWords(report);
    html.element("h2", Texts.get("joining.safe")).each("p", List.of(safe.statement()));
    html.list(safe.waysOut()).each("p", List.of(safe.worth()));
    html.element("h2", Texts.get("joining.before")).list(report.cautions());
  }
}
