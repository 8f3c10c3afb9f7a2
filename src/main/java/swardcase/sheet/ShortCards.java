package swardcase.sheet;

import java.util.List;
import java.util.stream.IntStream;
import swardcase.paper.Cell;
import swardcase.paper.Column;
import swardcase.paper.Flow;
import swardcase.paper.Style;
import swardcase.paper.Table;
import swardcase.paper.Tint;
import swardcase.report.PaddockResult;
import swardcase.report.Report;
import swardcase.wording.CardFacts;
import swardcase.wording.MoneyFaces;
import swardcase.wording.PaddockWords;
import swardcase.wording.SheetWords;
import swardcase.wording.Texts;

/** Short cards of the paddocks where something is to be done or found out. */
final class ShortCards {

  private static final int MOST_CLOVERS = 4;
  private static final double HEAD = 60;
  private static final double MOST_GAP = 60;
  private static final double FIGURE_WIDTH = 170;
  private static final double RIGHT_SIDE = Flow.LEFT + FIGURE_WIDTH + 20;
  private static final double WIDTH = Flow.RIGHT - RIGHT_SIDE;

  private final Flow flow;
  private final Report report;
  private final MoneyFaces faces;
  private final PaddockWords words;

  ShortCards(Flow flow, Report report, MoneyFaces faces) {
    this.flow = flow;
    this.report = report;
    this.faces = faces;
    words = new PaddockWords(report, faces);
  }

  /** Draws the cards and gives the page of the first. */
  int draw() {
    List<Integer> places =
        IntStream.range(0, report.paddocks().size())
            .boxed()
            .filter(i -> SheetWords.hasCard(report, report.paddocks().get(i)))
            .toList();
    if (places.isEmpty()) {
      return flow.page();
    }
    List<Card> cards = places.stream().map(this::card).toList();
    flow.need(HEAD + cards.get(0).height());
    flow.section(Texts.get("cards.heading"));
    int first = flow.page();
    flow.paragraph(Texts.get("cards.short", report.farm().currency()), Style.NOTE);
    for (int next = 0; next < cards.size(); ) {
      int onPage = fitting(cards, next);
      boolean isFull = next + onPage < cards.size();
      double taken = 0;
      for (Card card : cards.subList(next, next + onPage)) {
        taken += card.height();
      }
      double gap = isFull ? Math.min(MOST_GAP, (Flow.BOTTOM - flow.y() - taken) / onPage) : 0;
      for (Card card : cards.subList(next, next + onPage)) {
        flow.need(Math.min(card.height(), Flow.BOTTOM - Flow.TOP));
        card.drawing().run();
        flow.gap(Math.max(0, gap));
      }
      next += onPage;
      if (isFull) {
        flow.newPage();
      }
    }
    return first;
  }

  /** How many of the cards from one on fit below each other; one at least. */
  private int fitting(List<Card> cards, int from) {
    double y = flow.y();
    int fits = 0;
    while (from + fits < cards.size() && y + cards.get(from + fits).height() <= Flow.BOTTOM) {
      y += cards.get(from + fits).height();
      fits++;
    }
    return Math.max(1, fits);
  }

  /** A card and the points it takes. */
  private record Card(double height, Runnable drawing) {}

  private Card card(int place) {
    PaddockResult paddock = report.paddocks().get(place);
    CloverFigure figure = new CloverFigure(paddock, MOST_CLOVERS, FIGURE_WIDTH, flow.lettering());
    List<List<Cell>> facts =
        CardFacts.inShort(report, paddock, words.credit(place)).stream()
            .map(fact -> List.of(Cell.of(fact.name(), Style.NOTE), Cell.of(fact.value())))
            .toList();
    Table factTable =
        new Table(
            flow, List.of(Column.words("", 128), Column.words("", WIDTH - 128)), RIGHT_SIDE, 3);
    String heading = PaddockCards.heading(place + 1, paddock);
    String reason = words.reason(place);
    String nextBest = words.nextBest(place);
    double ofFacts = facts.stream().mapToDouble(factTable::height).sum();
    double height =
        25
            + height(heading, Flow.CARD)
            + height(reason, Style.CELL)
            + height(nextBest, Style.NOTE)
            + Math.max(figure.height(), ofFacts);
    return new Card(
        height,
        () -> {
          flow.canvas()
              .artifact(() -> flow.canvas().box(Flow.LEFT, flow.y(), Flow.WIDTH, 1.2, Tint.DEEP));
          flow.gap(6);
          flow.markedPart(heading);
          flow.paragraph(reason, Style.CELL);
          double top = flow.y();
          flow.figureAt(
              Flow.LEFT, FIGURE_WIDTH, figure.height(), figure.alternative(), figure::paint);
          factTable.start();
          facts.forEach(factTable::row);
          flow.moveTo(Math.max(flow.y(), top + figure.height()) + 2);
          flow.paragraph(nextBest, Style.NOTE);
          flow.gap(4);
        });
  }

  private double height(String text, Style style) {
    return flow.lettering().wrap(text, style, Flow.WIDTH).size() * style.leading();
  }
}
