package swardcase.page;

import java.util.Optional;
import swardcase.report.Report;
import swardcase.wording.MoneyFaces;
import swardcase.wording.Texts;

/**
 * A report, and the one before the user's changes; its figures are told with what they were.
 *
 * @param id names the answer in requests
 * @param now the report
 * @param before that of the farm as its files have it; empty if nothing was changed
 * @param rough whether it was made with few draws, so that it is shown and not saved
 */
public record Change(String id, Report now, Optional<Report> before, boolean rough) {

  /** A figure as a button that takes it apart, and what it was before if that reads otherwise. */
  void figure(Html html, Figure figure, String what, int paddock) {
    String text = figure.of(now, new MoneyFaces(now));
    html.element("button type=button class=number data-what=? data-paddock=?", text, what, paddock);
    was(html, figure);
  }

  /** What a figure was before, if that reads otherwise. */
  void was(Html html, Figure figure) {
    String text = figure.of(now, new MoneyFaces(now));
    before
        .map(report -> figure.of(report, new MoneyFaces(report)))
        .filter(was -> !was.equals(text))
        .ifPresent(
            was ->
                html.text(" ")
                    .element(
                        "span class=was",
                        was.isBlank() ? Texts.get("page.new") : Texts.get("page.was", was)));
  }

  /** A figure of a report in words. */
  interface Figure {
    String of(Report report, MoneyFaces faces);
  }
}
