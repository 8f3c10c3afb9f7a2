package swardcase.wording;

import static java.util.stream.Collectors.joining;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import swardcase.decision.Enquiry;
import swardcase.decision.Enquiry.Advice;
import swardcase.report.Call;
import swardcase.report.FindOut;
import swardcase.report.FindOut.Change;
import swardcase.report.KnownClover;
import swardcase.report.KnownClover.FormononetinFrom;
import swardcase.report.PaddockResult;
import swardcase.report.Report;

/** What can be found out before money is spent, in words: always from the one list of a report. */
public final class FindOutWords {

  private static final int MOST_CHANGES = 2;
  private static final double EVEN_CHANCE = 50;

  private final Report report;

  /** Words for the list of a report. */
  public FindOutWords(Report report) {
    this.report = report;
  }

  /** What could be found out. */
  public static String what(FindOut row) {
    return row.input()
        .orElseGet(
            () ->
                Texts.of(
                    "buy", row.kind(), row.plants(), row.paddock().or(row::mob).orElseThrow()));
  }

  /** What to do about it. */
  public static String advice(FindOut row) {
    return Texts.of("advice", row.advice());
  }

  /** Sentences that answer "What should I find out before I spend?" */
  public List<String> before() {
    return told(report.worthFindingOut(), Stream.of(Texts.get("before.nothing")));
  }

  /** The same of tests alone: walks, more plants and leaf tests that are worth their price. */
  public List<String> tests() {
    return told(
        report.findOut().stream().filter(row -> row.isTest() && row.isWorthKnowing()).toList(),
        Stream.empty());
  }

  private List<String> told(List<FindOut> rows, Stream<String> none) {
    Stream<String> worth = rows.isEmpty() ? none : rows.stream().map(this::sentences);
    return Stream.concat(worth, walks().stream()).toList();
  }

  private String sentences(FindOut row) {
    String said =
        row.price().isPresent()
            ? Texts.get(
                "before.buy",
                Texts.capital(what(row)),
                money(row.worth()),
                money(row.price().getAsDouble()))
            : Texts.get("before.know", subject(row), money(row.worth()), advice(row));
    return changes(row).stream()
        .limit(MOST_CHANGES)
        .map(to -> " " + to)
        .collect(joining("", said, again(row)));
  }

  /** What is to be known, behind "to know". */
  private static String subject(FindOut row) {
    String what = what(row);
    return what.startsWith("how ") ? what : Texts.get("before.know.the", what);
  }

  /** Of two tests of one paddock that are both worth it the later tells less than it is worth. */
  private String again(FindOut row) {
    return report.findOut().stream()
            .takeWhile(each -> each != row)
            .anyMatch(
                each ->
                    each.isTest() && each.isWorthKnowing() && each.paddock().equals(row.paddock()))
        ? " " + Texts.get("before.again")
        : "";
  }

  /** What a result would change, a sentence for each paddock or rule, the likeliest first. */
  public static List<String> changes(FindOut row) {
    Map<Object, List<Change>> ofPlace = new LinkedHashMap<>();
    row.changes().stream()
        .filter(to -> to.paddock().isPresent() || to.rule().isPresent())
        .forEach(
            to ->
                ofPlace
                    .computeIfAbsent(List.of(to.paddock(), to.rule()), k -> new ArrayList<>())
                    .add(to));
    return ofPlace.values().stream().map(to -> change(row, to)).toList();
  }

  private static String change(FindOut row, List<Change> all) {
    Change first = all.get(0);
    String result =
        row.advice() == Advice.RESEARCH
            ? Texts.get("result.any")
            : Texts.of(first.ifHigh() ? "result.high" : "result.low", row.kind());
    if (first.rule().isPresent()) {
      return Texts.get(
          "change.rule",
          result,
          Chances.outOfTen(first.chance()),
          PlanWords.rule(first.rule().get()));
    }
    return Texts.get(
        "change.paddock",
        result,
        first.paddock().orElseThrow(),
        first.from().orElseThrow(),
        all.stream()
            .limit(MOST_CHANGES)
            .map(to -> Texts.get("change.to", to.to().orElseThrow(), Chances.outOfTen(to.chance())))
            .collect(joining(" " + Texts.get("change.or") + " ")));
  }

  /** Which of the paddocks that nobody looked at to walk first, and which not to. */
  private List<String> walks() {
    List<String> lines = new ArrayList<>();
    List<FindOut> walks =
        report.findOut().stream().filter(row -> row.kind() == Enquiry.Kind.WALK).toList();
    String first = names(walks, Advice.WORTH_DOING);
    if (walks.stream().filter(FindOut::isWorthKnowing).count() > 1) {
      lines.add(Texts.get("before.walkFirst", first));
    }
    for (Advice advice : List.of(Advice.ABOUT_EVEN, Advice.NOT_WORTH_DOING)) {
      String names = names(walks, advice);
      if (!names.isEmpty()) {
        lines.add(Texts.of("before.walk", advice, names));
      }
    }
    return lines;
  }

  private static String names(List<FindOut> walks, Advice advice) {
    return walks.stream()
        .filter(row -> row.advice() == advice)
        .flatMap(row -> row.paddock().stream())
        .collect(joining(", "));
  }

  /** What would settle soonest what is open about a paddock; empty where nothing is open. */
  public Optional<String> settles(PaddockResult paddock) {
    return report
        .settling(paddock.name())
        .map(row -> Texts.of("settles", row.kind(), row.plants(), what(row)))
        .or(
            () ->
                paddock.call() == Call.UNDECIDED
                    ? Optional.of(
                        Texts.get(
                            paddock.clover().isLookedAt() ? "settles.nothing" : "settles.notWalk"))
                    : Optional.empty());
  }

  /** How many plants more to identify in a paddock, or that it is not worth it. */
  public String plants(String paddock) {
    return report
        .plantsOf(paddock)
        .map(row -> Texts.of("plants", row.advice(), Words.exact(row.plants())))
        .orElse(Texts.get("none"));
  }

  /** Whether high-oestrogen clover is above the share from which ewes are called at risk. */
  public static String call(KnownClover clover) {
    if (clover.formononetinFrom() == FormononetinFrom.LEAF_TEST) {
      return Texts.get("sampling.leafTested");
    }
    return clover.chanceAboveRiskSharePercent().isEmpty()
        ? Texts.get("sampling.notLooked")
        : Texts.get(
            clover.chanceAboveRiskSharePercent().getAsDouble() > EVEN_CHANCE
                ? "sampling.above"
                : "sampling.notAbove");
  }

  /** How many of a hundred such calls are wrong; a dash where nothing is called. */
  public static String wrong(KnownClover clover) {
    if (clover.formononetinFrom() == FormononetinFrom.LEAF_TEST
        || clover.chanceAboveRiskSharePercent().isEmpty()) {
      return Texts.get("none");
    }
    double above = clover.chanceAboveRiskSharePercent().getAsDouble();
    double wrong = Math.min(above, 100 - above);
    return wrong < 0.5 ? Texts.get("sampling.underOne") : Words.whole(wrong);
  }

  private String money(double value) {
    return Words.aboutMoney(report.farm().currency(), value);
  }
}
