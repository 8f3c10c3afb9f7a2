package swardcase.wording;

import static java.util.stream.Collectors.toCollection;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.function.Function;
import java.util.function.Predicate;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import swardcase.decision.Enquiry;
import swardcase.report.Call;
import swardcase.report.FindOut;
import swardcase.report.PaddockResult;
import swardcase.report.PaddockResult.KeptOff;
import swardcase.report.PlanResult.PlanYear;
import swardcase.report.PlanResult.Rule;
import swardcase.report.PlanResult.Work;
import swardcase.report.Reason;
import swardcase.report.Report;
import swardcase.report.WinterFeed;

/**
 * The first page in sentences that name paddocks and years: what to do, first what costs no money,
 * what to find out, what not to do. A list of names is cut where its sentence would have more than
 * {@value #MOST_WORDS} words.
 */
public final class SheetWords {

  /** Words of a sentence, at most. */
  public static final int MOST_WORDS = 20;

  private static final int MOST_TO_FIND_OUT = 4;

  private final Report report;
  private final MoneyFaces faces;
  private final int mostSentences;

  /**
   * Words of a report.
   *
   * @param mostSentences about what to do, for no money and for money, at most; the rest is told in
   *     one
   */
  public SheetWords(Report report, MoneyFaces faces, int mostSentences) {
    this.report = report;
    this.faces = faces;
    this.mostSentences = mostSentences;
  }

  /** A sentence about some paddocks, by their places; a rule for the whole farm has none. */
  private record Said(String words, List<Integer> places) {}

  /** What the plan does for no money: who grazes where. */
  public List<String> free() {
    Stream<Said> until =
        said(
            paddock -> paddock.call() == Call.ACT ? paddock.keptOff() : Optional.empty(),
            (off, list) -> Texts.of("todo.until", off.when(), off.who(), list));
    List<String> all =
        cut(
            "todo.more",
            Stream.of(rules(rule -> rule == Rule.IN_ORDER), doings(Call.KEEP_OFF), until));
    report.reproduction().otherDates().stream()
        .map(date -> OestrogenWords.otherDate(date, report.farm().currency()))
        .forEach(all::add);
    return orElse(all, "todo.free.none");
  }

  /** What the plan does for money, by year. */
  public List<String> paid() {
    return orElse(
        cut("todo.more.paid", Stream.of(rules(rule -> rule != Rule.IN_ORDER), doings(Call.ACT))),
        "todo.paid.none");
  }

  private static List<String> orElse(List<String> lines, String key) {
    return lines.isEmpty() ? List.of(Texts.get(key)) : lines;
  }

  /** As many sentences as there may be, and one of what the others say, its years and its cost. */
  private List<String> cut(String more, Stream<Stream<Said>> sentences) {
    List<Said> all = sentences.flatMap(each -> each).toList();
    List<String> lines =
        all.stream().limit(mostSentences).map(Said::words).collect(toCollection(ArrayList::new));
    List<Integer> rest =
        all.stream().skip(mostSentences).flatMap(said -> said.places().stream()).toList();
    if (!rest.isEmpty()) {
      int from = rest.stream().mapToInt(i -> paddock(i).start().orElseThrow()).min().getAsInt();
      double cost = rest.stream().mapToDouble(faces::cost).sum();
      lines.add(named(rest, list -> Texts.get(more, list, from, faces.money(cost))));
    }
    return lines;
  }

  private Stream<Said> rules(Predicate<Rule> which) {
    return report.plan().farmWide().stream()
        .filter(rule -> which.test(rule.what()))
        .map(
            rule ->
                new Said(
                    sure(Texts.capital(PlanWords.rule(rule.what())) + ".", rule.sure()),
                    List.of()));
  }

  /** How a change goes on over the years; paddocks with the same share a sentence. */
  private record Doing(
      String key, int from, int next, Optional<KeptOff> keptOff, String action, boolean sure) {}

  private Stream<Said> doings(Call call) {
    return said(
        paddock -> paddock.call() == call ? Optional.of(doing(paddock)) : Optional.empty(),
        SheetWords::sentence);
  }

  private interface Sentence<T> {
    String of(T common, String names);
  }

  /** A sentence for all paddocks that have something in common, in the order of the plan. */
  private <T> Stream<Said> said(Function<PaddockResult, Optional<T>> common, Sentence<T> sentence) {
    Map<T, List<Integer>> groups = new LinkedHashMap<>();
    places()
        .forEach(
            i ->
                common
                    .apply(paddock(i))
                    .ifPresent(of -> groups.computeIfAbsent(of, k -> new ArrayList<>()).add(i)));
    return groups.entrySet().stream()
        .map(
            of ->
                new Said(
                    named(of.getValue(), list -> sentence.of(of.getKey(), list)), of.getValue()));
  }

  private Stream<Integer> places() {
    return report.plan().order().stream().map(number -> number - 1);
  }

  private PaddockResult paddock(int place) {
    return report.paddocks().get(place);
  }

  private Doing doing(PaddockResult paddock) {
    int from = paddock.start().orElseThrow();
    boolean sure = paddock.sure().orElse(true);
    if (paddock.call() == Call.KEEP_OFF && paddock.keptOff().isPresent()) {
      return new Doing("todo.keepOff", from, 0, paddock.keptOff(), "", sure);
    }
    OptionalInt sown = year(paddock, Work.Kind.SOW);
    boolean crops = year(paddock, Work.Kind.CROP).isPresent();
    boolean runsDown = crops || year(paddock, Work.Kind.STOP_SEED_SET).isPresent();
    String key =
        sown.isEmpty()
            ? crops ? "todo.crop" : "todo.begin"
            : crops ? "todo.cropSow" : runsDown ? "todo.stopSow" : "todo.sow";
    return new Doing(key, from, sown.orElse(0), Optional.empty(), paddock.actionName(), sure);
  }

  /** First year of a kind of work on a paddock. */
  private OptionalInt year(PaddockResult paddock, Work.Kind kind) {
    return report.plan().years().stream()
        .filter(
            year ->
                year.work().stream()
                    .anyMatch(work -> work.kind() == kind && work.paddock().equals(paddock.name())))
        .mapToInt(PlanYear::year)
        .findFirst();
  }

  private static String sentence(Doing doing, String list) {
    String words =
        doing
            .keptOff()
            .map(off -> Texts.of(doing.key(), off.when(), off.who(), list, doing.from()))
            .orElseGet(
                () ->
                    Texts.get(
                        doing.key(),
                        list,
                        doing.from(),
                        doing.next(),
                        Texts.capital(doing.action())));
    return sure(words, doing.sure());
  }

  private static String sure(String sentence, boolean sure) {
    return sure ? sentence : Texts.get("todo.notSure", sentence);
  }

  /** A sentence with as many of these names as leave it short; the others are counted. */
  private String named(List<Integer> places, Function<String, String> sentence) {
    List<String> names = places.stream().map(i -> paddock(i).name()).toList();
    return IntStream.iterate(names.size(), shown -> shown > 1, shown -> shown - 1)
        .mapToObj(shown -> sentence.apply(list(names, shown)))
        .filter(SheetWords::isShort)
        .findFirst()
        .orElseGet(() -> sentence.apply(list(names, 1)));
  }

  private static boolean isShort(String words) {
    return Stream.of(words.split("(?<=[.?!]) "))
        .allMatch(sentence -> sentence.split(" ").length <= MOST_WORDS);
  }

  private static String list(List<String> names, int shown) {
    boolean isWhole = shown == names.size();
    String first = String.join(", ", names.subList(0, isWhole ? shown - 1 : shown));
    return !isWhole
        ? Texts.get("list.more", first, names.size() - shown)
        : shown == 1 ? names.get(0) : Texts.get("list.and", first, names.get(shown - 1));
  }

  /** What is short and lost a year with everything kept. */
  public List<String> asThingsStand() {
    String currency = report.farm().currency();
    WinterFeed feed = report.winterFeed();
    List<String> lines = new ArrayList<>();
    lines.add(
        feed.supplementTonnes().high() < 1
            ? Texts.get("stand.feed.little")
            : Texts.get(
                "stand.feed",
                Words.range(feed.supplementTonnes(), "t"),
                report.farm().supplement(),
                Words.aboutMoney(currency, feed.supplementCost().mean())));
    if (report.farm().ewesJoined() > 0) {
      lines.add(
          report.reproduction().lambsLostPerYear().mean() < 1
              ? Texts.get("stand.lambs.none")
              : Texts.get(
                  "stand.lambs",
                  Words.count(report.reproduction().lambsLostPerYear()),
                  Words.aboutMoney(currency, report.reproduction().costPerYear().mean())));
    }
    return lines;
  }

  /** What to find out before money is spent: what is worth more than it costs, or can be asked. */
  public List<String> findOut() {
    List<String> lines =
        report.worthFindingOut().stream()
            .filter(row -> row.advice() != Enquiry.Advice.RESEARCH)
            .limit(MOST_TO_FIND_OUT)
            .map(this::findOut)
            .collect(toCollection(ArrayList::new));
    if (report.paddocks().stream().anyMatch(paddock -> !paddock.lookFirst().isEmpty())) {
      lines.add(Texts.get("find.ground"));
    }
    return orElse(lines, "before.nothing");
  }

  private String findOut(FindOut row) {
    String worth = faces.about(row.worth());
    return row.price().isEmpty()
        ? Texts.get("find.ask", FindOutWords.what(row), worth)
        : Texts.get(
            "before.buy",
            Texts.capital(FindOutWords.what(row)),
            worth,
            faces.about(row.price().getAsDouble()));
  }

  /** What to leave alone: where the best change would lose, and where it is too close to call. */
  public List<String> notToDo() {
    List<String> lines =
        said(SheetWords::leftAlone, (key, list) -> Texts.get(key, list))
            .map(Said::words)
            .collect(toCollection(ArrayList::new));
    if (report.farm().ewesJoined() > 0) {
      lines.add(Texts.get("not.feed"));
    }
    return lines;
  }

  private static Optional<String> leftAlone(PaddockResult paddock) {
    Reason.Kind reason = paddock.reason().kind();
    return switch (paddock.call()) {
      case KEEP -> Optional.of(reason == Reason.Kind.WOULD_LOSE ? "not.resow" : "not.change");
      case UNDECIDED -> Optional.of(reason == Reason.Kind.LIMIT ? "not.limit" : "not.yet");
      case ACT, KEEP_OFF -> Optional.empty();
    };
  }

  /** Every paddock in a line: what to do with it, and its oestrogen. */
  public List<String> paddocks() {
    return places()
        .map(
            i ->
                Texts.get(
                    "paddocks.line",
                    PaddockWords.numbered(i, paddock(i).name()),
                    Words.exact(paddock(i).areaHa()),
                    PaddockWords.verdict(paddock(i)),
                    OestrogenWords.rating(paddock(i).oestrogenRating())))
        .toList();
  }

  /** Whether a paddock gets a card: something is to be done there, or found out. */
  public static boolean hasCard(Report report, PaddockResult paddock) {
    return paddock.isInPlan()
        || report.findOut().stream()
            .anyMatch(
                row -> row.isWorthKnowing() && row.paddock().equals(Optional.of(paddock.name())));
  }
}
