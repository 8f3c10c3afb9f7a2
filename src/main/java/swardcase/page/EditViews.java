package swardcase.page;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import swardcase.evidence.Assumption;
import swardcase.wording.Texts;
import swardcase.wording.Words;

/** The views in which the files of the farm are changed: tables, keys, and a new farm. */
public final class EditViews {

  private EditViews() {}

  /**
   * A table to be changed.
   *
   * @param name such as {@code plants}
   * @param columns its headings
   * @param rows line in its file, and cells
   */
  public record Table(String name, List<String> columns, List<Row> rows) {}

  /** A row with the line of the file it stands in. */
  public record Row(int line, List<String> cells) {}

  /**
   * A key of {@code farm.yaml} to be changed.
   *
   * @param id names it in requests
   * @param words key of its name and its help
   * @param of the user's own name of what it belongs to; blank if there is none
   * @param typed as it stands in the file; blank if it does not
   * @param now the number it stands for now; empty for what is no uncertain number
   */
  public record Key(String id, String words, String of, String typed, Optional<Assumption> now) {}

  /**
   * A question about a new farm.
   *
   * @param key names its answer
   * @param text the question with its unit
   * @param help what is behind it
   * @param answer given so far, or the usual one
   */
  public record Asked(String key, String text, String help, String answer) {}

  private static Html head(Shell.View view, String note, String print) {
    Html html = new Html().open("section", "data-print", print);
    html.element("h1", Texts.of("page.view", view), "tabindex", "-1");
    return html.element("p", Texts.get(note), "class", "note");
  }

  private static String end(Html html) {
    html.open("p", "class", "tools");
    html.element("button", Texts.get("page.check"), "type", "button", "data-check", "");
    html.text(" ");
    html.element(
        "button", Texts.get("page.save"), "type", "button", "data-save", "", "class", "main");
    html.close().open("div", "id", "told", "role", "status", "tabindex", "-1").close();
    return html.close().toString();
  }

  /**
   * Tables to be changed.
   *
   * @param print of the files as they were read
   * @param names of clover, offered where one is typed
   */
  public static String tables(List<Table> tables, String print, List<String> names) {
    Html html = head(Shell.View.PADDOCKS, "page.tables", print);
    html.open("datalist", "id", "cultivars");
    names.forEach(name -> html.element("option", "", "value", name));
    html.close();
    tables.forEach(table -> table(html, table));
    return end(html);
  }

  private static void table(Html html, Table table) {
    List<String> headings = new ArrayList<>(table.columns());
    headings.add(Texts.get("page.row"));
    html.element("h2", Texts.get("page.table", table.name()));
    html.open("div", "data-table", table.name(), "class", "cells").table(table.name(), headings);
    table.rows().forEach(row -> row(html, table, row));
    if (table.rows().isEmpty()) {
      row(html, table, new Row(0, List.of()));
    }
    html.tableEnd();
    html.element("button", Texts.get("page.addRow"), "type", "button", "data-add", "").close();
  }

  private static void row(Html html, Table table, Row row) {
    html.open("tr", "data-line", row.line());
    for (int k = 0; k < table.columns().size(); k++) {
      String column = table.columns().get(k);
      html.open("td", "class", column);
      html.open(
          "input",
          "value",
          k < row.cells().size() ? row.cells().get(k) : "",
          "data-column",
          column,
          "aria-label",
          column,
          "autocomplete",
          "off",
          column.equals("cultivar") ? "list" : "data-plain",
          column.equals("cultivar") ? "cultivars" : "");
      if (column.equals("plants")) {
        String more = Texts.get("page.tally");
        html.element("button", "+", "type", "button", "data-tally", "", "aria-label", more);
      }
      html.close();
    }
    html.open("td");
    html.element("button", Texts.get("page.remove"), "type", "button", "data-remove", "");
    html.close().close();
  }

  /** Keys to be changed. */
  public static String keys(List<Key> keys, String print) {
    Html html = head(Shell.View.FLOCK, "page.keys", print);
    for (Key key : keys) {
      html.open("div", "class", "lever").open("label", "for", key.id());
      html.text(Texts.get(key.words(), key.of()));
      html.element("small", " " + now(key), "id", "now-" + key.id()).close();
      html.open(
          "input",
          "id",
          key.id(),
          "data-key",
          key.id(),
          "value",
          key.typed(),
          "aria-describedby",
          "now-" + key.id(),
          "autocomplete",
          "off");
      html.element("small", Texts.get(key.words() + ".help")).close();
    }
    return end(html);
  }

  private static String now(Key key) {
    return key.now()
        .map(
            number ->
                Texts.get(
                    "page.key.now",
                    Words.range(number.range(), number.unit()),
                    number.setBy().label(),
                    number.evidence().label()))
        .orElse("");
  }

  /** The questions about a new farm. */
  public static String begin(List<Asked> questions) {
    Html html = new Html().open("section", "data-begin", "", "data-print", "");
    html.element("h1", Texts.get("page.begin"), "tabindex", "-1");
    html.element("p", Texts.get("page.begin.note"), "class", "note");
    for (Asked asked : questions) {
      String id = "answer-" + asked.key();
      html.open("div", "class", "lever").element("label", asked.text(), "for", id);
      html.open(
          "input",
          "id",
          id,
          "data-answer",
          asked.key(),
          "value",
          asked.answer(),
          "aria-describedby",
          id + "-help",
          "autocomplete",
          "off");
      html.element("small", asked.help(), "id", id + "-help").close();
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
    gone.forEach(line -> html.element("span", "− " + line + "\n", "class", "gone"));
    came.forEach(line -> html.element("span", "+ " + line + "\n", "class", "came"));
    return html.close().toString();
  }

  /** That nothing would be changed by saving, that it was, or that it may not be. */
  public static String told(String key) {
    return new Html().element("p", Texts.get(key), "class", "moved").toString();
  }
}
