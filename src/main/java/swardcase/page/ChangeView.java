package swardcase.page;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import swardcase.chance.Range;
import swardcase.chance.Spread;
import swardcase.decision.FarmDifference;
import swardcase.report.PaddockResult;
import swardcase.report.Report;
import swardcase.wording.ComparisonWords;
import swardcase.wording.MoneyFaces;
import swardcase.wording.Texts;
import swardcase.wording.Words;

/** Change and see: numbers that can be moved, choices made beforehand, and what that does. */
public final class ChangeView {

  private ChangeView() {}

  /**
   * The view as HTML.
   *
   * @param levers the numbers that can be moved
   * @param fixes choices made beforehand, by paddock
   * @param years calendar years in which work may start
   * @param difference what the changes bring; empty without changes or of a rough answer
   */
  public static String of(
      Change change,
      List<Lever> levers,
      Map<String, String> fixes,
      List<Integer> years,
      Optional<FarmDifference> difference) {
    Html html = new Html().open("section data-id=?", change.id());
    html.element("h1 tabindex=-1", Texts.get("page.view.CHANGE"));
    html.element("p class=note", Texts.get("page.change"));
    html.open("div class=levers");
    levers.forEach(lever -> lever(html, lever));
    html.close();
    Report farm = change.before().orElse(change.now());
    html.open("details").element("summary", Texts.get("page.fixes"));
    html.element("p class=note", Texts.get("page.fixes.note"));
    farm.paddocks()
        .forEach(paddock -> fix(html, paddock, fixes.getOrDefault(paddock.name(), ""), years));
    html.close();
    html.open("p class=tools");
    button(html, "page.undo", "data-undo");
    button(html, "page.back", "data-back");
    html.close();
    html.open("div id=hand role=status").close();
    html.open("div id=result").add(result(change, difference)).close();
    return html.close().toString();
  }

  /** What the changes do, alone. */
  public static String part(Change change, Optional<FarmDifference> difference) {
    return result(change, difference).toString();
  }

  private static Html result(Change change, Optional<FarmDifference> difference) {
    Html html = new Html();
    difference.ifPresent(brought -> brought(html, change.now(), brought));
    return html.element("h2", Texts.get("page.view.ANSWER")).add(AnswerView.part(change));
  }

  private static void button(Html html, String key, String data) {
    html.element("button type=button " + data, Texts.get(key)).text(" ");
  }

  private static void lever(Html html, Lever lever) {
    String id = "lever-" + lever.key();
    html.open("div class=lever").open("label for=?", id);
    html.text(lever.text());
    html.element("small", " " + Texts.get("page.now", now(lever.now(), lever.unit()))).close();
    html.open(
        "input type=range id=? data-lever=? data-unit=? data-base=? min=? max=? step=? value=?",
        id,
        lever.key(),
        lever.inPercent() ? "%" : lever.unit(),
        base(lever),
        lever.low(),
        lever.high(),
        lever.step(),
        lever.to().map(String::valueOf).orElse(base(lever)));
    html.element("output for=?", "", id).close();
  }

  /** Where a lever stands that was not moved. */
  private static String base(Lever lever) {
    return lever.inPercent()
        ? "0"
        : String.valueOf(lever.now().map(Range::likely).orElse(lever.high()));
  }

  private static String now(Optional<Range> range, String unit) {
    return range.map(found -> Words.range(found, unit)).orElse(Texts.get("page.noLimit"));
  }

  private static void fix(Html html, PaddockResult paddock, String choice, List<Integer> years) {
    String name = paddock.name();
    Map<String, String> actions = new LinkedHashMap<>();
    actions.put("", Texts.get("page.fix.free"));
    actions.put("keep", Texts.get("reason.KEEP"));
    paddock.options().forEach(option -> actions.put(option.action(), option.name()));
    Map<String, String> starts = new LinkedHashMap<>();
    starts.put("", Texts.get("page.fix.anyYear"));
    years.forEach(year -> starts.put(year.toString(), year.toString()));
    html.open("div class=fix").element("span", name);
    html.open("select data-fix=? aria-label=?", name, Texts.get("page.fix.what", name));
    options(html, actions, choice.replaceFirst("@.*", ""));
    html.open("select data-year=? aria-label=?", name, Texts.get("page.fix.year", name));
    options(html, starts, choice.contains("@") ? choice.replaceFirst(".*@", "") : "");
    html.close();
  }

  /** The options of a selection by their values, which ends with them. */
  private static void options(Html html, Map<String, String> all, String chosen) {
    all.forEach(
        (value, text) ->
            html.element(
                value.equals(chosen) ? "option value=? selected" : "option value=?", text, value));
    html.close();
  }

  private static void brought(Html html, Report now, FarmDifference difference) {
    if (ComparisonWords.isNothing(difference)) {
      html.element("p", ComparisonWords.nothing());
      return;
    }
    html.table(
        Texts.get("page.brings", now.farm().currency()),
        Html.words("page.brings.what", "column.value", "page.brings.error"),
        ComparisonWords.rows(difference));
  }

  /**
   * The plan in hand at the numbers as they are being moved.
   *
   * @param report of the plan, by whose unit money is told
   * @param before the plan at the numbers it was found with, in the same few draws
   * @param now the same at the moved numbers; empty if the plan cannot be done there
   * @param within whether it still keeps within the limits of the farm
   * @param moved the numbers that were moved, as they are now
   */
  public static String inHand(
      Report report, Spread before, Optional<Spread> now, boolean within, List<Lever> moved) {
    Html html = new Html();
    html.element(
        "p class=moved",
        now.map(found -> Texts.get("page.hand", gain(report, found), gain(report, before)))
            .orElse(Texts.get("page.hand.cannot")));
    if (!within) {
      html.element("p", Texts.get("page.hand.limits"));
    }
    return html.list(
            moved.stream()
                .map(lever -> Texts.get("page.moved", lever.text(), now(lever.now(), lever.unit())))
                .toList())
        .toString();
  }

  private static String gain(Report report, Spread plan) {
    MoneyFaces faces = new MoneyFaces(report);
    return faces.moneyWithEnds(faces.rounded(plan.mean()), plan.drawn());
  }
}
