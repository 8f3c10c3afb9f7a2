package swardcase.wording;

import java.time.MonthDay;
import java.time.format.TextStyle;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;
import swardcase.joining.Stay.Where;
import swardcase.report.JoiningReport;
import swardcase.report.JoiningReport.Answer;
import swardcase.report.JoiningReport.MobRow;
import swardcase.report.JoiningReport.Reason;
import swardcase.report.JoiningReport.SeasonRow;
import swardcase.report.JoiningReport.Shut;
import swardcase.report.JoiningReport.StayRow;
import swardcase.report.JoiningReport.When;
import swardcase.report.JoiningReport.YoungRow;

/** The words of a joining plan: its answer, places, reasons, breaks and moves. */
public final class JoiningWords {

  /** Characters of a list of names; beyond them the rest are counted. */
  private static final int MOST_CHARACTERS = 130;

  /** Own paddocks that are named one by one. */
  private static final int MOST_OWN = 8;

  private JoiningWords() {}

  /** The answer, a sentence each. */
  public static List<String> answer(JoiningReport report) {
    Answer answer = report.answer();
    List<String> said = new ArrayList<>();
    if (answer.paddocksShut() == 0) {
      said.add(Texts.get("joining.none"));
      said.add(
          Texts.get(
              "joining.none.lost",
              answer.mostLostNow() < 0.1 ? "0" : Words.about(answer.mostLostNow()),
              Words.exact(answer.tellable())));
      if (answer.mostLostNow() >= answer.tellable()) {
        said.add(Texts.get("joining.none.noPay"));
      }
    } else {
      said.add(Texts.get("joining.shut", answer.paddocksShut(), answer.paddocks()));
      if (answer.lambsSaved().mean() < 1) {
        said.add(Texts.get("joining.savesNone"));
      } else {
        said.add(
            Texts.get(
                "joining.saves",
                Words.count(answer.lambsSaved()),
                Words.money(report.farm().currency(), answer.moneySaved())));
      }
      if (answer.mostLostNow() < answer.tellable()) {
        said.add(Texts.get("joining.untold"));
      }
    }
    List<String> out = paddocks(report, When.OUT);
    if (!out.isEmpty()) {
      said.add(Texts.get("joining.out", names(out)));
    }
    return said;
  }

  private static List<String> paddocks(JoiningReport report, When when) {
    return report.shut().stream().filter(of -> of.when() == when).map(Shut::paddock).toList();
  }

  /** Names in a list, the rest of a long one counted. */
  public static String names(List<String> names) {
    int named = 0;
    int characters = 0;
    while (named < names.size() && characters + names.get(named).length() <= MOST_CHARACTERS) {
      characters += names.get(named++).length() + 2;
    }
    int more = names.size() - named;
    return more > 1 && named > 0
        ? Texts.get("joining.more", String.join(", ", names.subList(0, named)), more)
        : String.join(", ", names);
  }

  /** A day without its year: {@code 16 May}. */
  public static String day(MonthDay day) {
    return day.getDayOfMonth()
        + " "
        + day.getMonth().getDisplayName(TextStyle.SHORT, Locale.ENGLISH);
  }

  /** A mob with its ewes. */
  public static String who(MobRow mob) {
    return Texts.get("joining.who", mob.name(), Words.exact(mob.ewes()));
  }

  /** When a mob is joined: {@code rams in 1 May for 6 weeks}. */
  public static String joining(MobRow mob) {
    return Texts.get(
        "joining.ramsIn",
        mob.ramsIn().getDayOfMonth(),
        mob.ramsIn().getMonth().getDisplayName(TextStyle.FULL, Locale.ENGLISH),
        Words.exact(mob.weeks()));
  }

  /** First and last day of a stay. */
  public static String when(StayRow stay) {
    return Texts.get("joining.fromTo", day(stay.from()), day(stay.to()));
  }

  /** Where a mob is in a stay. */
  public static String where(StayRow stay, JoiningReport report) {
    boolean manyOwn = stay.where() == Where.OWN && stay.paddocks().size() > MOST_OWN;
    String where =
        manyOwn
            ? Texts.get("joining.where.ownRest")
            : Texts.of("joining.where", stay.where(), names(stay.paddocks()));
    if (stay.where() == Where.NAMED && stay.paddocks().size() > 1) {
      where = Texts.get("joining.where.turn", where);
    }
    return stay.feedTonnes() > 0
        ? Texts.get(
            "joining.feed", where, Words.about(stay.feedTonnes()), report.farm().supplement())
        : where;
  }

  /** What a mob is kept out of, one entry for each time. */
  public static List<String> off(MobRow mob) {
    List<String> off = new ArrayList<>();
    if (!mob.offBefore().isEmpty()) {
      off.add(names(mob.offBefore()));
    }
    if (!mob.offGreen().isEmpty()) {
      off.add(Texts.get("joining.off.green", names(mob.offGreen())));
    }
    return off.isEmpty() ? List.of(Texts.get("joining.off.none")) : off;
  }

  /** What makes a paddock what it is: leaf test or cultivar, clover share, wet ground. */
  public static String reason(Shut shut) {
    Reason reason = shut.reason();
    String why =
        switch (shut.clover().formononetinFrom()) {
          case LEAF_TEST ->
              Texts.get(
                  "joining.why.leafTest",
                  Words.exact(shut.clover().leafTestPercentOfLeaf().orElseThrow()));
          case UNKNOWN ->
              Texts.get(
                  shut.clover().isLookedAt() ? "joining.why.unknown" : "joining.why.notLooked");
          case CULTIVAR_TABLE ->
              Texts.get(
                  "joining.why.cultivar",
                  reason.cultivar().orElseThrow(),
                  Words.percent(reason.cultivarShare().orElseThrow()));
        };
    return Texts.get(
        reason.waterlogged() ? "joining.why.wet" : "joining.why.dry",
        why,
        Words.percent(reason.cloverShare()));
  }

  /** To whom a paddock is shut, and when. */
  public static String shutTo(Shut shut) {
    return Texts.of(
        "joining.shut", shut.when(), shut.when() == When.OUT ? shut.actionName() : shut.shutTo());
  }

  /** What the mob that would lose most there would lose; nothing for a paddock out of grazing. */
  public static String lost(Shut shut) {
    return shut.lost()
        .map(lost -> Texts.get("joining.lost", shut.mob().orElseThrow(), Words.count(lost)))
        .orElse(Texts.get("none"));
  }

  /** How sure it is: in how many of ten cases this can be told from normal variation. */
  public static String sure(Shut shut) {
    return shut.chancePercent().isPresent()
        ? Words.whole(shut.chancePercent().getAsDouble() / 10)
        : Texts.get("none");
  }

  /** When ewes must be out of paddocks that are shut to them: as long as feed is green. */
  public static String out(SeasonRow season) {
    boolean green = season.greenAtStart();
    if (season.turns().isEmpty()) {
      return Texts.get(green ? "joining.break.out.always" : "joining.break.out.never");
    }
    List<String> parts = new ArrayList<>();
    for (MonthDay turn : season.turns()) {
      parts.add(Texts.get(green ? "joining.break.out.until" : "joining.break.out.from", day(turn)));
      green = !green;
    }
    return parts.stream()
        .reduce((one, next) -> Texts.get("joining.break.out.and", one, next))
        .orElseThrow();
  }

  /** That the break changes nothing, if it does not; else empty. */
  public static Optional<String> sameInAllSeasons(JoiningReport report) {
    List<String> rows =
        report.seasons().stream().map(of -> out(of) + ": " + lost(of)).distinct().toList();
    return rows.size() == 1
        ? Optional.of(Texts.get("joining.break.same", out(report.seasons().get(0))))
        : Optional.empty();
  }

  /** Heading of the column of {@link #sure}. */
  public static String sureHeading(JoiningReport report) {
    return Texts.get("joining.column.sure", Words.exact(report.answer().tellable()));
  }

  /** What the mob that loses most loses in a season, as now and by the sheet. */
  public static String lost(SeasonRow season) {
    return Texts.get(
        "joining.break.numbers",
        season.mob(),
        Words.rounded(season.lostNow(), 1),
        Words.rounded(season.lostByPlan(), 1));
  }

  /** What other stock may do; empty where nothing is shut to all ewes, or there is none. */
  public static List<String> others(JoiningReport report) {
    List<String> shut =
        report.shut().stream()
            .filter(of -> of.toAllEwes() && of.when() != When.OUT)
            .map(Shut::paddock)
            .toList();
    if (shut.isEmpty() || report.otherStock().isEmpty()) {
      return List.of();
    }
    String stock =
        report.otherStock().stream()
            .map(
                of ->
                    of.mostRiskyDays().isPresent()
                        ? Texts.get(
                            "joining.others.days",
                            Words.exact(of.head()),
                            of.name(),
                            Words.exact(of.mostRiskyDays().getAsDouble()))
                        : Texts.get("joining.others.one", Words.exact(of.head()), of.name()))
            .collect(Collectors.joining("; "));
    return List.of(Texts.get("joining.others", names(shut), stock));
  }

  /** What a green season does to young ewes, paddock by paddock. */
  public static String young(JoiningReport report) {
    List<String> said = report.youngEwes().stream().map(JoiningWords::young).toList();
    return Texts.get("joining.young.note", names(said));
  }

  private static String young(YoungRow row) {
    return Texts.get("joining.young.one", row.paddock(), Words.whole(row.barrenPercent().mean()));
  }
}
