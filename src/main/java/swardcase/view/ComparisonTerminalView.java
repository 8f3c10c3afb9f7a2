package swardcase.view;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.BiFunction;
import java.util.stream.Stream;
import swardcase.report.ComparisonReport;
import swardcase.report.ComparisonReport.Other;
import swardcase.report.ComparisonReport.PaddockPair;
import swardcase.report.ComparisonReport.PaddockSide;
import swardcase.report.ComparisonReport.Side;
import swardcase.wording.ComparisonWords;
import swardcase.wording.MoneyFaces;
import swardcase.wording.Words;

/**
 * A comparison for a terminal: the farm and the others one row each, the paddocks whose answer
 * changes, or all of them where there is one other, and what each brings more.
 */
public final class ComparisonTerminalView {

  private final ComparisonReport report;
  private final List<MoneyFaces> faces;
  private final String currency;
  private final String first;
  private final TerminalLines lines;

  private ComparisonTerminalView(ComparisonReport report, List<MoneyFaces> faces, int width) {
    this.report = report;
    this.faces = faces;
    lines = new TerminalLines(width);
    currency = report.first().farm().currency();
    boolean scenarios = report.others().stream().allMatch(it -> it.side().scenario().isPresent());
    first = scenarios ? "the farm as it is" : "the first farm";
  }

  /**
   * The comparison as lines for a terminal of so many columns.
   *
   * @param faces how the money of each farm is printed, the first farm's first
   */
  public static List<String> of(ComparisonReport report, List<MoneyFaces> faces, int width) {
    return new ComparisonTerminalView(report, faces, width).all();
  }

  private List<String> all() {
    Side farm = report.first();
    lines.heading(farm.farm().name() + " (" + farm.folder() + "), " + farm.farm().date()).blank();
    sides(
        List.of("The plan", ">Sows ha", ">Costs " + currency, ">Gains (range)", ">Sure alone"),
        (side, of) ->
            List.of(
                Words.exact(side.hectaresSown()),
                of.withEnds(of.cost(), side.planCost()),
                of.withEnds(of.gain(), side.gain()),
                of.number(of.rounded(side.sureGain().mean()))));
    sides(
        List.of("Paddocks", ">To change", ">Ewes off", ">Not sure", ">Keep", ">Too close"),
        (side, of) ->
            Stream.of(
                    side.calls().act(),
                    side.calls().keepOff(),
                    side.calls().unsure(),
                    side.calls().keep(),
                    side.calls().undecided())
                .map(Words::exact)
                .toList());
    sides(
        List.of(
            "Lost in a year",
            ">Winter feed t",
            ">in money " + currency,
            ">Lambs not marked",
            ">in money " + currency),
        (side, of) ->
            List.of(
                Words.range(side.winterFeedTonnes()),
                Words.count(side.winterFeedCost()),
                Words.count(side.lambsLost()),
                Words.count(side.lambCost())));
    paddocks();
    lines.heading("What each brings more than " + first);
    report.others().forEach(this::difference);
    return lines
        .each("", ComparisonWords.notes(farm, first, report.others()))
        .blank()
        .text(report.cautions().get(0) + " " + report.cautions().get(1))
        .all();
  }

  /** A row for each farm. */
  private void sides(List<String> heading, BiFunction<Side, MoneyFaces, List<String>> numbers) {
    TextTable table = TextTable.of(heading.toArray(String[]::new));
    for (int k = 0; k < faces.size(); k++) {
      Side side = k == 0 ? report.first() : report.others().get(k - 1).side();
      List<String> row = new ArrayList<>(List.of(k == 0 ? first : side.called()));
      row.addAll(numbers.apply(side, faces.get(k)));
      table.row(row.toArray(String[]::new));
    }
    lines.table(table).blank();
  }

  private void paddocks() {
    boolean all = report.others().size() == 1;
    List<String> heading = new ArrayList<>(List.of("Paddock"));
    if (!all) {
      heading.add("Compared with");
    }
    String gain = ">Gain " + currency;
    heading.addAll(List.of("What to do there", gain, "On " + first, gain));
    TextTable table = TextTable.of(heading.toArray(String[]::new));
    boolean any = false;
    for (int k = 0; k < report.others().size(); k++) {
      Other other = report.others().get(k);
      for (PaddockPair pair : other.paddocks()) {
        any |= pair.answerChanges();
        if (all || pair.answerChanges()) {
          List<String> row = new ArrayList<>(List.of(pair.name()));
          if (!all) {
            row.add(other.side().called());
          }
          row.add(verdict(pair.second()));
          row.add(gain(faces.get(k + 1), pair.second()));
          row.add(verdict(pair.first()));
          row.add(gain(faces.get(0), pair.first()));
          table.row(row.toArray(String[]::new));
        }
      }
    }
    lines.heading(
        any
            ? "Paddocks" + (all ? "" : " where the answer changes")
            : "The answer is the same for every paddock.");
    if (any || all) {
      lines.table(table);
    }
    lines.blank();
  }

  /** What to do, where the paddock is on that farm. */
  private static String verdict(Optional<PaddockSide> paddock) {
    return paddock.map(ComparisonWords::verdict).orElse("not on this farm");
  }

  private static String gain(MoneyFaces of, Optional<PaddockSide> paddock) {
    return paddock
        .filter(side -> side.sure().isPresent())
        .map(side -> of.number(of.gain(side.number() - 1)))
        .orElse("");
  }

  private void difference(Other other) {
    String called = other.side().called();
    if (ComparisonWords.isNothing(other.difference())) {
      lines.heading(called).heading(ComparisonWords.nothing()).blank();
    } else {
      TextTable table = TextTable.of(called, ">" + currency + " (range)", ">Known to within");
      ComparisonWords.rows(other.difference())
          .forEach(row -> table.row(row.toArray(String[]::new)));
      lines.table(table).blank();
    }
  }
}
