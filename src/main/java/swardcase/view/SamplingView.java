package swardcase.view;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import swardcase.chance.Range;
import swardcase.chance.SampleSize;
import swardcase.farm.Farm;
import swardcase.farm.Paddock;
import swardcase.report.LeafTestResult;
import swardcase.sward.Composition;
import swardcase.sward.LeafAgreement;
import swardcase.tables.Cultivar;
import swardcase.tables.Tables;
import swardcase.wording.LeafTestWords;
import swardcase.wording.Texts;
import swardcase.wording.Words;

/**
 * What the count of each paddock says, for a terminal.
 *
 * <p>The call is whether high-oestrogen clover makes up more than the table's share of the green
 * feed (20 %). It is made on the likelier side, so the chance of a wrong call is that of the other
 * side. Where a leaf was tested there is no call to make: the test tells the formononetin, and says
 * whether the names can be right.
 */
public final class SamplingView {

  private static final double SETTLED = 0.9;
  private static final int FIRST_WALK = 50;

  private SamplingView() {}

  /** A line a paddock, and what the numbers mean, for a terminal of so many columns. */
  public static List<String> of(Farm farm, Tables tables, int width) {
    double limit = tables.parameter("oestrogen.risk-share").likely();
    double designEffect = tables.parameter("stand.design-effect").likely();
    String percent = Words.percent(limit);
    TextTable table =
        TextTable.of(
            "Paddock",
            ">Plants so far",
            ">Old cultivars %",
            ">High-oestrogen, % of feed",
            "Call: above " + percent + "?",
            ">Wrong in 100",
            ">Look at more");
    List<String> tests = new ArrayList<>();
    for (Paddock paddock : farm.paddocks()) {
      Composition clover = Composition.of(paddock, tables, designEffect);
      Optional<LeafTestResult> test =
          LeafAgreement.of(paddock, clover, tables).map(LeafTestResult::of);
      row(table, paddock, clover, limit, test);
      test.ifPresent(result -> tests.addAll(TerminalView.wrap(sentence(paddock, result), width)));
    }
    List<String> lines = new ArrayList<>();
    lines.add(farm.name());
    lines.add("");
    lines.addAll(table.lines(width));
    lines.add("");
    lines.addAll(tests);
    if (farm.paddocks().stream().anyMatch(paddock -> paddock.leafTest().isPresent())) {
      lines.addAll(
          TerminalView.wrap(
              "Where a leaf was tested, its formononetin stands in place of the names: more plants"
                  + " add nothing to it. They tell only how much of the clover is outdated.",
              width));
    }
    lines.addAll(
        TerminalView.wrap(
            "A call is wrong as often as the last column but one says, clover share and plants"
                + " nobody could name counted in. The last column is how many more plants would"
                + " probably bring that to 10 in 100, if they are found as so far.",
            width));
    lines.addAll(
        TerminalView.wrap(
            "Picked at random, "
                + SampleSize.forOneShare(limit, 0.10, 0.95)
                + " plants tell a share near "
                + percent
                + " to within 10 points, and "
                + SampleSize.toSeeOne(0.05, 0.95)
                + " show a cultivar that is one plant in twenty. Along a walked line take "
                + Words.about(designEffect)
                + " times as many. Cross the slope and the wet ground.",
            width));
    return lines;
  }

  private static String sentence(Paddock paddock, LeafTestResult test) {
    return "%s: leaf test %s %%, %s"
        .formatted(
            paddock.name(), Words.range(test.testedPercentOfLeaf()), LeafTestWords.note(test));
  }

  private static void row(
      TextTable table,
      Paddock paddock,
      Composition composition,
      double limit,
      Optional<LeafTestResult> test) {
    Range clover = paddock.cloverShare().range();
    Range high = composition.estimate(Cultivar::highOestrogen);
    double above = composition.chanceHighOestrogenAbove(limit, clover);
    double wrong = Math.min(above, 1 - above);
    OptionalInt more = composition.morePlantsToSettle(limit, clover, SETTLED);
    table.row(
        paddock.name(),
        Words.whole(paddock.plantsLookedAt()),
        composition.lookedAt()
            ? Words.range(composition.estimate(Cultivar::isOld).times(100))
            : "?",
        composition.lookedAt()
            ? Words.range(
                Range.of(
                    100 * high.low() * clover.low(),
                    100 * high.likely() * clover.likely(),
                    100 * high.high() * clover.high()))
            : "?",
        paddock.leafTest().isPresent()
            ? "leaf tested"
            : composition.lookedAt() ? (above > 0.5 ? "yes" : "no") : "nobody looked",
        paddock.leafTest().isPresent()
            ? Texts.get("none")
            : wrong < 0.005 ? "under 1" : Words.whole(100 * wrong),
        test.map(SamplingView::more).orElseGet(() -> more(composition, more, wrong)));
  }

  private static String more(LeafTestResult test) {
    return test.isContrary() ? "name them again" : "none: leaf tested";
  }

  private static String more(Composition composition, OptionalInt more, double wrong) {
    if (!composition.lookedAt()) {
      return Integer.toString(Math.max(FIRST_WALK, more.orElse(0)));
    }
    if (more.isPresent()) {
      return Integer.toString(more.getAsInt());
    }
    return wrong <= 1 - SETTLED ? "settled" : "more will not settle it";
  }
}
