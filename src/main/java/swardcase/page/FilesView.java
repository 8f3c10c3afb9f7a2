package swardcase.page;

import java.util.Collection;
import swardcase.wording.Texts;

/** The files of an answer, to be saved by the browser. */
public final class FilesView {

  private FilesView() {}

  /**
   * The view as HTML.
   *
   * @param id of the answer
   * @param names of the files
   * @param command what would make them at a terminal
   */
  public static String of(String id, Collection<String> names, String command) {
    Html html = new Html().open("section");
    html.element("h1 tabindex=-1", Texts.get("page.view.FILES"));
    html.element("p", Texts.get("page.files"));
    html.open("ul class=files");
    for (String name : names) {
      html.open("li");
      html.element("a href=? download=?", name, "/file/" + id + "/" + name, name);
      html.close();
    }
    html.close().element("p", Texts.get("page.files.command")).element("pre", command);
    return html.close().toString();
  }
}
