package swardcase.page;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import swardcase.evidence.Assumption;
import swardcase.folder.Question;
import swardcase.reading.CsvEdit;
import swardcase.reading.Table;
import swardcase.wording.KeyWords;
import swardcase.wording.Texts;
import swardcase.wording.Words;

/** The views in which the files of the farm are changed: tables, keys, and a new farm. */
public final class EditViews {

  /** Units of numbers that the file holds in per cent. */
  private static final Set<String> AS_PER_CENT = Set.of("-", "per year");

  private EditViews() {}

  /**
   * A key of {@code farm.yaml} to be changed.
   *
   * @param id names it in requests
   * @param words its name, its unit and its help
   * @param typed as it stands in the file; blank if it does not
   * @param now the number it stands for now; empty for what is no uncertain number
   * @param path from the top of the file
   */
  public record Key(
      String id, KeyWords words, String typed, Optional<Assumption> now, List<String> path) {}

  private static Html head(Shell.View view, String note, String print) {
    Html html = new Html().open("section data-print=?", print);
    html.element("h1 tabindex=-1", Texts.of("page.view", view));
    return html.element("p class=note", Texts.get(note));
  }

  private static String end(Html html) {
    html.open("p class=tools");
    html.element("button type=button data-check", Texts.get("page.check"));
    html.text(" ");
    html.element("button type=button data-save class=main", Texts.get("page.save"));
    html.close().open("div id=told role=status tabindex=-1").close();
    return html.close().toString();
  }

  /**
   * Tables to be changed.
   *
   * @param tables by their names
   * @param print of the files as they were read
   * @param names of clover, offered where one is typed
   */
  public static String tables(Map<String, CsvEdit> tables, String print, List<String> names) {
    Html html = head(Shell.View.PADDOCKS, "page.tables", print);
    html.open("datalist id=cultivars");
    names.forEach(name -> html.element("option value=?", "", name));
    html.close();
    tables.forEach((name, table) -> table(html, name, table));
    return end(html);
  }

  private static void table(Html html, String name, CsvEdit table) {
    List<String> headings = new ArrayList<>(table.columns());
    headings.add(Texts.get("page.row"));
    html.element("h2", Texts.get("page.table", name));
    html.open("div data-table=? class=cells", name).openTable(name, headings);
    table.rows().forEach(row -> row(html, table.columns(), row));
    if (table.rows().isEmpty()) {
      row(html, table.columns(), new Table.Line(0, List.of()));
    }
    html.closeTable();
    html.element("button type=button data-add", Texts.get("page.addRow")).close();
  }

  private static void row(Html html, List<String> columns, Table.Line row) {
    html.open("tr data-line=?", row.line());
    for (int k = 0; k < columns.size(); k++) {
      String column = columns.get(k);
      html.open("td class=?", column);
      String names = column.equals("cultivar") ? " list=cultivars" : "";
      String cell = k < row.cells().size() ? row.cells().get(k) : "";
      html.open(
          "input autocomplete=off value=? data-column=? aria-label=?" + names,
          cell,
          column,
          column);
      if (column.equals("plants")) {
        String more = Texts.get("page.tally");
        html.element("button type=button data-tally aria-label=?", "+", more);
      }
      html.close();
    }
    html.open("td");
    html.element("button type=button data-remove", Texts.get("page.remove"));
    html.close().close();
  }

  /** Keys to be changed. */
  public static String keys(List<Key> keys, String print) {
    Html html = head(Shell.View.FLOCK, "page.keys", print);
    for (Key key : keys) {
      html.open("div class=ask").open("label for=?", key.id());
      html.text(key.words().whole()).element("small", " " + now(key)).close();
      field(html, "key", key.id(), key.id(), key.typed(), key.words().help());
    }
    return end(html);
  }

  /** A field to type in with its help; ends what is asked. */
  private static void field(
      Html html, String data, String id, String key, String value, String help) {
    String tag = "input id=? data-" + data + "=? value=? aria-describedby=? autocomplete=off";
    html.open(tag, id, key, value, id + "-help");
    html.element("small id=?", help, id + "-help").close();
  }

  private static String now(Key key) {
    return key.now()
        .map(
            number ->
                Texts.get(
                    "page.key.now",
                    AS_PER_CENT.contains(number.unit())
                        ? Words.percent(number.range())
                        : Words.range(number.range(), number.unit()),
                    number.setBy().label(),
                    number.evidence().label()))
        .orElse("");
  }

  /** The questions about a new farm, with what was typed so far. */
  public static String begin(List<Question> questions, Map<String, String> typed) {
    Html html = new Html().open("section data-begin data-print");
    html.element("h1 tabindex=-1", Texts.get("page.begin"));
    html.element("p class=note", Texts.get("page.begin.note"));
    for (Question asked : questions) {
      String id = "answer-" + asked.key();
      html.open("div class=ask").element("label for=?", asked.words().whole(), id);
      String typedOrUsual = typed.getOrDefault(asked.key(), asked.usual());
      field(html, "answer", id, asked.key(), typedOrUsual, asked.help());
    }
    return end(html);
  }

  /** What saving would change in a file, line by line. */
  public static String difference(String file, List<String> before, List<String> after) {
    List<String> gone = new ArrayList<>(before);
    List<String> came = new ArrayList<>(after);
    after.forEach(gone::remove);
    before.forEach(came::remove);
    Html html = new Html();
    if (gone.isEmpty() && came.isEmpty()) {
      return "";
    }
    html.element("h2", Texts.get("page.difference", file)).open("pre");
    gone.forEach(line -> html.element("span class=gone", "− " + line + "\n"));
    came.forEach(line -> html.element("span class=came", "+ " + line + "\n"));
    return html.close().toString();
  }

  /** That nothing would be changed by saving, that it was, or that it may not be. */
  public static String told(String key) {
    return new Html().element("p class=moved", Texts.get(key)).toString();
  }
}
