package swardcase.page;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import swardcase.check.Check;
import swardcase.check.VisibleText;
import swardcase.wording.Texts;

/**
 * HTML as it grows. Every text and every value of an attribute is escaped and has nothing hidden in
 * it: a name of the user's can neither become a tag nor turn the line about.
 */
final class Html {

  private static final Set<String> VOID = Set.of("input", "meta", "link", "line", "path");

  private final StringBuilder html = new StringBuilder();
  private final Deque<String> open = new ArrayDeque<>();

  /** Opens a tag, such as {@code input type=range id=? hidden}; each ? takes a value in turn. */
  Html open(String tag, Object... values) {
    String[] parts = tag.split(" ");
    html.append('<').append(parts[0]);
    int next = 0;
    for (int k = 1; k < parts.length; k++) {
      String[] part = parts[k].split("=", 2);
      String value = part.length == 1 ? "" : part[1];
      String given = value.equals("?") ? String.valueOf(values[next++]) : value;
      html.append(' ').append(part[0]).append("=\"").append(escaped(given)).append('"');
    }
    Check.that(next == values.length, "%s must take %s values", tag, values.length);
    if (VOID.contains(parts[0])) {
      html.append("/>");
    } else {
      html.append('>');
      open.push(parts[0]);
    }
    return this;
  }

  /** Closes the tag that was opened last. */
  Html close() {
    html.append("</").append(open.pop()).append('>');
    return this;
  }

  /** Text within the tag that is open. */
  Html text(String text) {
    html.append(escaped(text));
    return this;
  }

  /** A tag with text in it. */
  Html element(String tag, String text, Object... values) {
    return open(tag, values).text(text).close();
  }

  /** Paragraphs, or items of a list, one a text; blank ones are left out. */
  Html each(String tag, List<String> texts) {
    texts.stream().filter(text -> !text.isBlank()).forEach(text -> element(tag, text));
    return this;
  }

  /** A bulleted list; nothing if it is empty. */
  Html list(List<String> items) {
    return items.isEmpty() ? this : open("ul").each("li", items).close();
  }

  /** The words under some keys, for the headings of a table. */
  static List<String> words(String... keys) {
    return Stream.of(keys).map(Texts::get).toList();
  }

  /** A table; a cell is a text or a picture, and the first heads its row. */
  Html table(String caption, List<String> headings, List<? extends List<?>> rows) {
    openTable(caption, headings);
    for (List<?> cells : rows) {
      open("tr");
      for (int k = 0; k < cells.size(); k++) {
        open(k == 0 ? "th scope=row" : "td");
        Html cell = cells.get(k) instanceof Html html ? html : new Html().text("" + cells.get(k));
        add(cell).close();
      }
      close();
    }
    return closeTable();
  }

  /** Opens a table that can be scrolled where it is wider than the window. */
  Html openTable(String caption, List<String> headings) {
    open("div class=wide tabindex=0 role=region aria-label=?", caption);
    open("table").element("caption", caption).open("thead").open("tr");
    headings.forEach(heading -> element("th scope=col", heading));
    return close().close().open("tbody");
  }

  /** Closes a table. */
  Html closeTable() {
    return close().close().close();
  }

  /** What was written by another. */
  Html add(Html other) {
    html.append(other);
    return this;
  }

  private static String escaped(String text) {
    return VisibleText.of(text)
        .replace("&", "&amp;")
        .replace("<", "&lt;")
        .replace(">", "&gt;")
        .replace("\"", "&quot;")
        .replace("'", "&#39;");
  }

  /** What was written; every tag has to be closed. */
  @Override
  public String toString() {
    if (!open.isEmpty()) {
      throw new IllegalStateException("open tags: " + open);
    }
    return html.toString();
  }
}
