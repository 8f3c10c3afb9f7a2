package swardcase.wording;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.function.Function;
import java.util.function.Predicate;
import swardcase.decision.Enquiry;
import swardcase.report.Call;
import swardcase.report.FindOut;
import swardcase.report.PaddockResult;
import swardcase.report.PaddockResult.KeptOff;
import swardcase.report.PlanResult.FarmRule;
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
   * @param mostSentences about what to do, and of each other list, at most; the rest is counted
   */
  public SheetWords(Report report, MoneyFaces faces, int mostSentences) {
    this.report = report;
    this.faces = faces;
    this.mostSentences = mostSentences;
  }

  /** How a change goes on over the years; paddocks with the same share a sentence. */
  private record Doing(
      String key, int from, int next, Optional<KeptOff> keptOff, String action, boolean sure) {}

  /** What the plan does for no money: who grazes where. */
  public List<String> free() {
    List<String> all = new ArrayList<>();
    report.plan().farmWide().stream()
        .filter(rule -> rule.what() == Rule.IN_ORDER)
        .forEach(rule -> all.add(rule(rule)));
    all.addAll(doings(paddock -> paddock.call() == Call.KEEP_OFF));
    grouped(paddock -> paddock.call() == Call.ACT ? paddock.keptOff() : Optional.empty())
        .forEach(
            (off, names) ->
                all.add(named(names, list -> Texts.of("todo.until", off.when(), off.who(), list))));
    List<String> most = cut(all);
    report
        .reproduction()
        .otherDates()
        .forEach(date -> most.add(OestrogenWords.otherDate(date, report.farm().currency())));
    return most;
  }

  /** What the plan does for money, by year. */
  public List<String> paid() {
    List<String> all = new ArrayList<>();
    report.plan().farmWide().stream()
        .filter(rule -> rule.what() != Rule.IN_ORDER)
        .forEach(rule -> all.add(rule(rule)));
    all.addAll(doings(paddock -> paddock.call() == Call.ACT));
    return cut(all);
  }

  private static String rule(FarmRule rule) {
    return sure(Texts.capital(PlanWords.rule(rule.what())) + ".", rule.sure());
  }

  private List<String> cut(List<String> all) {
    List<String> most = new ArrayList<>(all.subList(0, Math.min(mostSentences, all.size())));
    if (all.size() > most.size()) {
      most.add(Texts.get("todo.more"));
    }
    return most;
  }

  private List<String> doings(Predicate<PaddockResult> which) {
    List<String> sentences = new ArrayList<>();
    grouped(paddock -> which.test(paddock) ? Optional.of(doing(paddock)) : Optional.empty())
        .forEach((doing, names) -> sentences.add(sentence(doing, names)));
    return sentences;
  }

  /** Names of the paddocks by what they have in common, in the order of the plan. */
  private <T> Map<T, List<String>> grouped(Function<PaddockResult, Optional<T>> by) {
    Map<T, List<String>> groups = new LinkedHashMap<>();
    for (int number : report.plan().order()) {
      PaddockResult paddock = report.paddocks().get(number - 1);
      by.apply(paddock)
          .ifPresent(
              of -> groups.computeIfAbsent(of, each -> new ArrayList<>()).add(paddock.name()));
    }
    return groups;
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

  private static String sentence(Doing doing, List<String> names) {
    return named(
        names,
        list -> {
          String words =
              doing.keptOff().isPresent()
                  ? Texts.of(
                      "todo.keepOff",
                      doing.keptOff().get().when(),
                      doing.keptOff().get().who(),
                      list,
                      doing.from())
                  : Texts.get(
                      doing.key(), list, doing.from(), doing.next(), Texts.capital(doing.action()));
          return sure(words, doing.sure());
        });
  }

  private static String sure(String sentence, boolean sure) {
    return sure ? sentence : Texts.get("todo.notSure", sentence);
  }

  /** A sentence with as many of these names as leave it short; the others are counted. */
  private static String named(List<String> names, Function<String, String> sentence) {
    for (int shown = names.size(); shown > 1; shown--) {
      String words = sentence.apply(list(names, shown));
      if (isShort(words)) {
        return words;
      }
    }
    return sentence.apply(list(names, 1));
  }

  private static boolean isShort(String words) {
    for (String sentence : words.split("(?<=[.?!]) ")) {
      if (sentence.split(" ").length > MOST_WORDS) {
        return false;
      }
    }
    return true;
  }

  private static String list(List<String> names, int shown) {
    if (shown == names.size()) {
      String last = names.get(shown - 1);
      return shown == 1
          ? last
          : Texts.get("list.and", String.join(", ", names.subList(0, shown - 1)), last);
    }
    return Texts.get("list.more", String.join(", ", names.subList(0, shown)), names.size() - shown);
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
    List<String> lines = new ArrayList<>();
    report.worthFindingOut().stream()
        .filter(row -> row.advice() != Enquiry.Advice.RESEARCH)
        .limit(MOST_TO_FIND_OUT)
        .forEach(row -> lines.add(findOut(row)));
    List<String> sown =
        report.paddocks().stream()
            .filter(paddock -> !paddock.lookFirst().isEmpty())
            .map(PaddockResult::name)
            .toList();
    if (!sown.isEmpty()) {
      lines.add(named(sown, list -> Texts.get("find.ground", list)));
    }
    if (lines.isEmpty()) {
      lines.add(Texts.get("before.nothing"));
    }
    return lines;
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
    List<String> lines = new ArrayList<>();
    add(lines, "not.resow", paddock -> kept(paddock) && isResown(paddock));
    add(lines, "not.change", paddock -> kept(paddock) && !isResown(paddock));
    add(lines, "not.limit", paddock -> open(paddock) && isHemmedIn(paddock));
    add(lines, "not.yet", paddock -> open(paddock) && !isHemmedIn(paddock));
    if (report.farm().ewesJoined() > 0) {
      lines.add(Texts.get("not.feed"));
    }
    return lines;
  }

  private void add(List<String> lines, String key, Predicate<PaddockResult> which) {
    List<String> names =
        report.plan().order().stream()
            .map(number -> report.paddocks().get(number - 1))
            .filter(which)
            .map(PaddockResult::name)
            .toList();
    if (!names.isEmpty()) {
      lines.add(named(names, list -> Texts.get(key, list)));
    }
  }

  private static boolean kept(PaddockResult paddock) {
    return paddock.call() == Call.KEEP;
  }

  private static boolean open(PaddockResult paddock) {
    return paddock.call() == Call.UNDECIDED;
  }

  private static boolean isResown(PaddockResult paddock) {
    return paddock.reason().kind() == Reason.Kind.WOULD_LOSE;
  }

  private static boolean isHemmedIn(PaddockResult paddock) {
    return paddock.reason().kind() == Reason.Kind.LIMIT;
  }

  /** Whether a paddock gets a card: something is to be done there, or found out. */
  public static boolean hasCard(Report report, PaddockResult paddock) {
    return paddock.isInPlan()
        || report.findOut().stream()
            .anyMatch(
                row -> row.isWorthKnowing() && row.paddock().equals(Optional.of(paddock.name())));
  }
}
