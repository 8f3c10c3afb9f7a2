package swardcase.wording;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import swardcase.decision.NotSure;
import swardcase.report.Call;
import swardcase.report.Credit;
import swardcase.report.PaddockResult;
import swardcase.report.PaddockResult.OptionResult;
import swardcase.report.Reason;
import swardcase.report.Report;
import swardcase.report.WhyNot;
import swardcase.sward.StandGate.LookFirst;
import swardcase.sward.StandGate.State;

/** What is done with a paddock and why, in sentences with the deciding number in them. */
public final class PaddockWords {

  /** A share of old clover below this is printed as none. */
  private static final double HALF_PER_CENT = 0.005;

  /** Reasons that begin with what is known of the clover. */
  private static final Set<Reason.Kind> OF_CLOVER =
      Set.of(Reason.Kind.NOT_ARABLE, Reason.Kind.YEARS_COUNTED, Reason.Kind.WOULD_LOSE);

  private final Report report;
  private final MoneyFaces faces;

  /** Words of the paddocks of a report. */
  public PaddockWords(Report report, MoneyFaces faces) {
    this.report = report;
    this.faces = faces;
  }

  /** A paddock's name behind its number, which is its place in the user's file counted from 1. */
  public static String numbered(int place, String name) {
    return Texts.get("decision.name", place + 1, name);
  }

  /** What to do with a paddock in a few words: the action where the plan has one. */
  public static String verdict(Call call, String actionName) {
    return call == Call.ACT || call == Call.KEEP_OFF
        ? Texts.capital(actionName)
        : Texts.of("reason", call);
  }

  /** The same of a paddock; that a change is not sure is said. */
  public static String verdict(PaddockResult paddock) {
    return verdict(paddock.call(), paddock.actionName(), paddock.sure());
  }

  static String verdict(Call call, String actionName, Optional<Boolean> sure) {
    String verdict = verdict(call, actionName);
    return sure.orElse(true) ? verdict : Texts.get("reason.notSure", verdict);
  }

  /** A calendar year; {@code none} where there is none. */
  public static String year(OptionalInt year, String none) {
    return year.isPresent() ? Integer.toString(year.getAsInt()) : none;
  }

  /** The reason in a sentence or more: why, how sure, what would settle it, what to look at. */
  public String reason(int place) {
    List<LookFirst> first = report.paddocks().get(place).lookFirst();
    return because(place) + LookFirstWords.names("reason.lookFirst", first);
  }

  /** The same with all that is known of what to look at first. */
  public String fullReason(int place) {
    return because(place) + LookFirstWords.list(report.paddocks().get(place).lookFirst());
  }

  private String because(int place) {
    PaddockResult paddock = report.paddocks().get(place);
    List<String> sentences = new ArrayList<>();
    if (!paddock.clover().isLookedAt() && !OF_CLOVER.contains(paddock.reason().kind())) {
      sentences.add(Texts.get("reason.notLooked") + ".");
    }
    sentences.add(why(place, paddock).strip());
    if (faces.gain(place) > 0) {
      Credit.most(paddock.credit())
          .ifPresent(cause -> sentences.add(Texts.of("reason.most", cause)));
    }
    if (paddock.sure().isPresent()) {
      step(place, paddock, sentences);
    }
    if (!paddock.sure().orElse(true)) {
      notSure(place, paddock, sentences);
    } else if (paddock.sure().isPresent() && Chances.isSeldom(paddock.gain().chancePays())) {
      sentences.add(Texts.get("reason.sureThoughSeldom"));
    } else if (paddock.nearLine()) {
      sentences.add(Texts.get("reason.nearKeeping"));
    }
    new FindOutWords(report).settles(paddock).ifPresent(sentences::add);
    return String.join(" ", sentences);
  }

  private String why(int place, PaddockResult paddock) {
    Reason reason = paddock.reason();
    return switch (reason.kind()) {
      case GAINS -> gains(place, paddock);
      case CROPS ->
          String.join(
              " ", gains(place, paddock), Texts.get("reason.CROPS"), afterCrops(place, paddock));
      case NOTHING_ELSE, NOTHING_TO_GAIN -> Texts.of("reason", reason.kind());
      case SELDOM, CLOSE, LIMIT -> {
        OptionResult option = option(paddock);
        yield Texts.of(
            "reason",
            reason.kind(),
            option.name(),
            faces.signed("reason.gains", faces.option(place, option)),
            faces.end(option.gain().low()),
            faces.end(option.gain().high()),
            option
                .whyNot()
                .flatMap(WhyNot::limit)
                .map(limit -> Texts.of("plan.limit", limit))
                .orElse(Texts.get("reason.theLimits")));
      }
      case NOT_ARABLE, YEARS_COUNTED ->
          Texts.of("reason", reason.kind(), found(paddock), report.farm().horizonYears());
      case WOULD_LOSE -> {
        OptionResult sowing = option(paddock);
        yield Texts.of(
            "reason",
            reason.kind(),
            found(paddock),
            sowing.name(),
            faces.money(faces.rounded(reason.cost().orElseThrow())),
            faces.signed("reason.wouldGain", faces.option(place, sowing)));
      }
    };
  }

  /** The actions that take longer than the years counted; blank if none does. */
  public String tooLong(PaddockResult paddock) {
    return paddock.tooLong().isEmpty()
        ? ""
        : Texts.get(
            "cards.tooLong",
            report.farm().horizonYears(),
            paddock.tooLong().stream()
                .map(each -> Texts.get("cards.takes", each.name(), each.years()))
                .collect(Collectors.joining("; ")));
  }

  /** The two best of what was not chosen; blank if nothing else was looked at. */
  public String nextBest(int place) {
    String best =
        report.paddocks().get(place).options().stream()
            .filter(option -> !option.chosen())
            .sorted(Comparator.comparingDouble(option -> -option.gain().mean()))
            .limit(2)
            .map(
                option ->
                    Texts.get(
                        "cards.next.one",
                        option.name(),
                        year(option.start(), ""),
                        faces.withEnds(faces.option(place, option), option.gain())))
            .collect(Collectors.joining("; "));
    return best.isEmpty() ? "" : Texts.get("cards.next", best);
  }

  /** Where a paddock's gain comes from, by the causes that print as something: its gain in all. */
  public String credit(int place) {
    double[] rounded = faces.credit(place);
    List<Credit> causes = report.paddocks().get(place).credit();
    return IntStream.range(0, rounded.length)
        .filter(k -> rounded[k] != 0)
        .mapToObj(
            k ->
                Texts.get(
                    "credit.cause",
                    Texts.of("credit", causes.get(k).what()),
                    faces.number(rounded[k])))
        .collect(Collectors.joining(", "));
  }

  private static OptionResult option(PaddockResult paddock) {
    return paddock.option(paddock.reason().action().orElseThrow()).orElseThrow();
  }

  private static String found(PaddockResult paddock) {
    return paddock
        .clover()
        .oldShare()
        .map(
            old ->
                old.likely() < HALF_PER_CENT
                    ? Texts.get("reason.noOld")
                    : Texts.get("reason.old", Words.percent(old.likely())))
        .orElse(Texts.get("reason.notLooked"));
  }

  /** What the choice brings, part by part; together the parts are its gain. */
  private String gains(int place, PaddockResult paddock) {
    double[] rounded = faces.parts(place);
    List<String> more = new ArrayList<>();
    List<String> less = new ArrayList<>();
    for (int k = 0; k < rounded.length; k++) {
      if (rounded[k] != 0) {
        String key = rounded[k] < 0 ? "reason.less" : "reason.more";
        String part =
            Texts.of(key, paddock.parts().get(k).what(), faces.money(Math.abs(rounded[k])));
        (rounded[k] < 0 ? less : more).add(part);
      }
    }
    if (more.isEmpty()) {
      more.add(Texts.get("reason.noMore"));
    }
    return Texts.get(
        less.isEmpty() ? "reason.parts" : "reason.partsLess",
        report.farm().horizonYears(),
        String.join(", ", more),
        faces.signed("reason.gains", faces.gain(place)),
        Chances.outOfTen(paddock.gain().chancePays()),
        String.join(", ", less));
  }

  /** What the choice adds to the best cheaper one, where that is not keeping. */
  private void step(int place, PaddockResult paddock, List<String> sentences) {
    OptionResult chosen = paddock.option(paddock.action()).orElseThrow();
    paddock
        .option(chosen.step().over())
        .ifPresent(
            over -> {
              double cheaper = faces.option(place, over);
              sentences.add(
                  Texts.get(
                      "reason.step",
                      over.name(),
                      faces.signed("reason.gains", cheaper),
                      faces.signed("reason.adds", faces.gain(place) - cheaper),
                      Chances.outOfTen(chosen.step().gain().chancePays())));
            });
  }

  /** What a sowing would add to a choice that only crops; blank if none is judged over it. */
  private String afterCrops(int place, PaddockResult paddock) {
    return paddock
        .reason()
        .action()
        .flatMap(paddock::option)
        .map(
            option ->
                Texts.get(
                    "reason.afterCrops",
                    option.name(),
                    faces.signed("reason.adds", faces.option(place, option) - faces.gain(place)),
                    Chances.outOfTen(option.step().gain().chancePays())))
        .orElse("");
  }

  private void notSure(int place, PaddockResult paddock, List<String> sentences) {
    NotSure why = paddock.notSure().orElseThrow();
    if (why != NotSure.REGRET) {
      List<LookFirst> poor =
          paddock.lookFirst().stream().filter(each -> each.state() == State.POOR).toList();
      sentences.add(LookFirstWords.names("reason.poorStand", poor).strip());
    }
    if (why != NotSure.POOR_STAND) {
      sentences.add(Texts.get(paddock.nearLine() ? "reason.nearSure" : "reason.isNotSure"));
    }
    sentences.add(
        paddock
            .sureInstead()
            .flatMap(paddock::option)
            .map(
                sure ->
                    Texts.get(
                        "reason.sureInstead",
                        sure.name(),
                        faces.signed("reason.gains", faces.option(place, sure))))
            .orElse(Texts.get("reason.sureIsKeeping")));
  }

  /** Why an option was not chosen; blank for the chosen one. */
  public String whyNot(int place, OptionResult option) {
    return option.whyNot().map(why -> whyNot(place, option, why)).orElse("");
  }

  private String whyNot(int place, OptionResult option, WhyNot why) {
    double than =
        report.paddocks().get(place).options().stream()
            .filter(each -> each.name().equals(why.than().orElse("")))
            .mapToDouble(each -> faces.option(place, each))
            .findFirst()
            .orElse(0);
    return Texts.of(
        "whyNot",
        why.kind(),
        faces.signed("reason.gains", faces.option(place, option)),
        why.than().orElse(""),
        faces.money(than),
        why.limit().map(limit -> Texts.of("plan.limit", limit)).orElse(""));
  }

  /** Says of an option that only crops what its gain is; blank for any other. */
  public static String landUse(OptionResult option) {
    return option.landUse() ? Texts.get("reason.CROPS") : "";
  }

  /** How old clover, and clover, would move with an option; blank if that is not known. */
  public static String oldClover(OptionResult option) {
    List<Double> old = option.oldShareByYear();
    if (old.size() < 2) {
      return "";
    }
    int last = old.size() - 1;
    return Texts.get(
        "cards.oldShare",
        Words.percent(old.get(0)),
        Words.percent(old.get(last)),
        last,
        Words.percent(option.cloverShareByYear().get(last)));
  }
}
