package swardcase.sheet;

import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import swardcase.chance.Drawn;
import swardcase.paper.Column;
import swardcase.paper.Flow;
import swardcase.paper.Scale;
import swardcase.paper.Style;
import swardcase.paper.Table;
import swardcase.report.KnownClover;
import swardcase.report.KnownClover.NamedShare;
import swardcase.report.PaddockResult;
import swardcase.report.PaddockResult.OptionResult;
import swardcase.report.Report;
import swardcase.wording.CardFacts;
import swardcase.wording.CardFacts.Fact;
import swardcase.wording.MoneyFaces;
import swardcase.wording.PaddockWords;
import swardcase.wording.ReturnsWords;
import swardcase.wording.SheetWords;
import swardcase.wording.Texts;
import swardcase.wording.Words;

/**
 * One card a paddock: what is done and why, what grows there and what follows from it; on the sheet
 * where something is to be done or found out, in the case of every paddock with every action.
 */
final class PaddockCards {

  private static final int LEAST_CLOVERS = 4;
  private static final double MOST_GAP = 60;
  private static final double FIGURE_WIDTH = 180;
  private static final double FACTS_LEFT = Flow.LEFT + FIGURE_WIDTH + 20;
  private static final double NAME_OF_FACT = 128;

  private final Flow flow;
  private final Report report;
  private final MoneyFaces faces;
  private final PaddockWords words;

  PaddockCards(Flow flow, Report report, MoneyFaces faces) {
    this.flow = flow;
    this.report = report;
    this.faces = faces;
    words = new PaddockWords(report, faces);
  }

  /** The cards of the sheet, spread over their pages. */
  void drawShort() {
    List<Runnable> cards =
        IntStream.range(0, report.paddocks().size())
            .filter(place -> SheetWords.hasCard(report, report.paddocks().get(place)))
            .<Runnable>mapToObj(place -> () -> shortCard(place))
            .toList();
    if (cards.isEmpty()) {
      return;
    }
    double[] heights = cards.stream().mapToDouble(flow::height).toArray();
    Runnable heading = () -> heading("cards.short");
    flow.need(flow.height(heading) + heights[0]);
    heading.run();
    for (int next = 0; next < cards.size(); ) {
      double free = flow.room();
      int end = next;
      while (end < cards.size() && (end == next || heights[end] <= free)) {
        free -= heights[end++];
      }
      boolean isLast = end == cards.size();
      double gap = isLast ? 0 : Math.max(0, Math.min(MOST_GAP, free / (end - next)));
      for (; next < end; next++) {
        cards.get(next).run();
        flow.gap(gap);
      }
      if (!isLast) {
        flow.newPage();
      }
    }
  }

  private void shortCard(int place) {
    PaddockResult paddock = report.paddocks().get(place);
    card(place, words.reason(place), CardFacts.inShort(report, paddock, words.credit(place)));
    flow.paragraph(words.nextBest(place), Style.NOTE);
    flow.gap(4);
  }

  /** The cards of the case. */
  void drawAll() {
    for (int i = 0; i < report.paddocks().size(); i++) {
      int place = i;
      PaddockResult paddock = report.paddocks().get(i);
      List<Fact> facts = CardFacts.of(report, paddock, words.credit(i));
      flow.together(
          () -> {
            if (place == 0) {
              heading("cards.intro");
            }
            card(place, words.fullReason(place), facts);
          });
      options(place);
      flow.paragraph(words.tooLong(paddock), Style.NOTE);
      flow.gap(10);
    }
  }

  private void heading(String note) {
    flow.section(Texts.get("cards.heading"));
    flow.paragraph(Texts.get(note, report.farm().currency()), Style.NOTE);
  }

  /** What both have. */
  private void card(int place, String reason, List<Fact> facts) {
    PaddockResult paddock = report.paddocks().get(place);
    flow.card(heading(place + 1, paddock));
    flow.paragraph(reason, Style.CELL);
    double top = flow.y();
    clover(paddock.clover(), Math.max(LEAST_CLOVERS, facts.size() / 2));
    double bottom = flow.y();
    flow.moveTo(top);
    Table table =
        new Table(
            flow,
            FACTS_LEFT,
            Column.words("", NAME_OF_FACT).in(Style.NOTE),
            Column.words("", Flow.RIGHT - FACTS_LEFT - NAME_OF_FACT));
    facts.forEach(fact -> table.row(fact.name(), fact.value()));
    flow.moveTo(Math.max(flow.y(), bottom) + 2);
  }

  /** What the clover consists of: a bar from 0 to 100 % for each name, up to so many. */
  private void clover(KnownClover clover, int most) {
    List<NamedShare> found = clover.found();
    String heading =
        clover.plantsLookedAt() > 0
            ? Texts.get("clover.heading", Words.exact(clover.plantsLookedAt()))
            : Texts.get(found.isEmpty() ? "clover.none" : "clover.heading.none");
    flow.paragraph(heading, Style.NOTE_BOLD, Flow.LEFT, FIGURE_WIDTH);
    flow.gap(2);
    if (found.isEmpty()) {
      return;
    }
    RowChart chart =
        new RowChart(
            flow.lettering(),
            found.stream().limit(most).map(PaddockCards::row).toList(),
            new Scale(0, 1, Flow.LEFT, Flow.LEFT + FIGURE_WIDTH));
    String all =
        found.stream()
            .map(each -> each.name() + " " + Words.percent(each.share()))
            .collect(Collectors.joining("; "));
    flow.figureAt(
        Flow.LEFT, FIGURE_WIDTH, chart.height(), Texts.get("clover.alt", all), chart::paint);
    flow.gap(chart.height());
    if (found.size() > most) {
      String more = Texts.get("clover.more", found.size() - most);
      flow.paragraph(more, Style.NOTE, Flow.LEFT, FIGURE_WIDTH);
    }
  }

  private static RowChart.Row row(NamedShare clover) {
    return new RowChart.Row(
        clover.name(),
        Words.percent(clover.share()),
        Drawn.of(clover.share().likely(), clover.share().low(), clover.share().high()));
  }

  private static String heading(int number, PaddockResult paddock) {
    String from =
        paddock.start().isPresent()
            ? Texts.get(
                paddock.start().equals(paddock.lastChangeYear()) ? "cards.from" : "cards.settled",
                PaddockWords.year(paddock.start(), ""),
                PaddockWords.year(paddock.lastChangeYear(), ""))
            : "";
    return Texts.get(
        "cards.name",
        number,
        paddock.name(),
        Words.exact(paddock.areaHa()),
        PaddockWords.verdict(paddock) + from);
  }

  /** Every action looked at. */
  private void options(int place) {
    List<OptionResult> options = report.paddocks().get(place).options();
    if (options.isEmpty()) {
      return;
    }
    Table table =
        new Table(
            flow,
            Stream.of(
                    Column.words(Texts.get("column.option"), 124),
                    Column.numbers(Texts.get("column.when"), 26),
                    Column.numbers(Texts.get("column.costPerHa"), 64),
                    Column.numbers(Texts.get("column.npv"), 112),
                    Column.numbers(Texts.get("column.annuityPerHa"), 40),
                    Column.numbers(Texts.get("column.irr"), 34),
                    Column.numbers(Texts.get("column.mirr"), 34),
                    Column.numbers(Texts.get("column.payback"), 40),
                    Column.numbers(Texts.get("column.benefitCost"), 33),
                    Column.below(Texts.get("column.whyNot")))
                .map(column -> column.in(Style.NOTE))
                .toArray(Column[]::new));
    for (OptionResult option : options) {
      ReturnsWords returns = ReturnsWords.of(option.returns(), report.farm().horizonYears());
      String[] cells = {
        option.chosen() ? Texts.get("cards.chosen", option.name()) : option.name(),
        PaddockWords.year(option.start(), Texts.get("none")),
        Words.range(option.costPerHa()),
        faces.withEnds(faces.option(place, option), option.gain()),
        Words.mean(option.annuityPerHa()),
        returns.irr(),
        returns.mirr(),
        returns.payback(),
        returns.benefitCost(),
        String.join(
                " ",
                words.whyNot(place, option),
                PaddockWords.landUse(option),
                PaddockWords.oldClover(option))
            .strip()
      };
      if (option.chosen()) {
        table.rowInBold(cells);
      } else {
        table.row(cells);
      }
    }
  }
}
