package swardcase.page;

import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;
import swardcase.wording.Texts;

/** The page around the views: its head, the way between the views, and what stands below them. */
public final class Shell {

  /** The views, in the order of the day. */
  public enum View {
    ANSWER,
    CHANGE,
    PADDOCKS,
    FLOCK,
    SURE,
    JOINING,
    FILES;

    /** The view of a name; empty if there is none. */
    public static Optional<View> find(String name) {
      return Arrays.stream(values()).filter(view -> view.key().equals(name)).findFirst();
    }

    String key() {
      return name().toLowerCase(Locale.ROOT);
    }
  }

  private Shell() {}

  /** The whole page, with no view in it yet. */
  public static String of(String farm) {
    Html html = new Html();
    html.open("html lang=en").open("head");
    html.open("meta charset=utf-8");
    html.open("meta name=viewport content=?", "width=device-width, initial-scale=1");
    html.element("title", Texts.get("page.title", farm));
    html.open("link rel=icon href=/icon.svg");
    html.open("link rel=stylesheet href=/page.css");
    html.element("script type=module src=/page.js", "");
    html.element("script type=module src=/change.js", "");
    html.element("script type=module src=/edit.js", "").close();
    html.open("body");
    html.element("a class=skip href=#main data-skip", Texts.get("page.skip"));
    html.open("header").element("p class=farm", farm);
    html.open("nav aria-label=?", Texts.get("page.views")).open("ul");
    for (View view : View.values()) {
      html.open("li").element("a href=?", Texts.of("page.view", view), "#" + view.key()).close();
    }
    html.close().close().close();
    html.open("div id=state role=status");
    html.open("span id=says").close();
    html.element("progress id=done max=1 hidden aria-label=Progress", "");
    html.element("button type=button id=drop hidden", Texts.get("page.drop"));
    html.close();
    html.open("main id=main tabindex=-1");
    html.element("noscript", Texts.get("page.noscript")).close();
    html.open("dialog id=how aria-labelledby=how-head").close();
    html.open("footer").element("p", Texts.get("page.cautions"));
    html.element("button type=button id=stop", Texts.get("page.stop"));
    html.close().close().close();
    return "<!DOCTYPE html>" + html;
  }
}
