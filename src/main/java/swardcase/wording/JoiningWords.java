package swardcase.wording;

import java.time.MonthDay;
import java.time.format.TextStyle;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import swardcase.joining.JoiningPlan.Policy;
import swardcase.report.JoiningReport;
import swardcase.report.JoiningReport.Answer;
import swardcase.report.JoiningReport.Cell;
import swardcase.report.JoiningReport.DateEnds;
import swardcase.report.JoiningReport.MobCalendar;
import swardcase.report.JoiningReport.Move;
import swardcase.report.JoiningReport.PaddockRow;
import swardcase.report.JoiningReport.PolicyResult;
import swardcase.report.JoiningReport.Rating;
import swardcase.report.JoiningReport.Reason;
import swardcase.report.JoiningReport.Stay;
import swardcase.report.JoiningReport.YoungRow;

/** The words of a joining plan: its answer, ratings, reasons, moves and gates. */
public final class JoiningWords {

  /** Paddocks of the farm's plan that are named. */
  private static final int MOST_NAMED = 8;

  private JoiningWords() {}

  /** The answer in a sentence or three. */
  public static String answer(JoiningReport report) {
    return fromPlan(report) + found(report);
  }

  /** What the plan of the farm says of this year, first. */
  private static String fromPlan(JoiningReport report) {
    if (report.fromPlan().isEmpty()) {
      return "";
    }
    List<String> said =
        report.fromPlan().stream()
            .limit(MOST_NAMED)
            .map(of -> of.paddock() + ": " + of.actionName())
            .collect(Collectors.toCollection(ArrayList::new));
    int more = report.fromPlan().size() - said.size();
    if (more > 0) {
      said.add(Texts.get("joining.fromPlan.more", more));
    }
    return Texts.get("joining.fromPlan", String.join("; ", said)) + " ";
  }

  private static String found(JoiningReport report) {
    Answer answer = report.answer();
    return switch (answer.finding()) {
      case FEW_DAYS -> Texts.get("joining.headline.fewDays");
      case NOTHING_GREEN -> Texts.get("joining.headline.dry");
      case NOTHING_TO_SHUT -> Texts.get("joining.headline.none", Words.exact(answer.tellable()));
      case KEEP_OFF ->
          Texts.get("joining.headline.keepOff", answer.paddocksKeptOff(), answer.paddocks())
              + " "
              + gain(report);
    };
  }

  private static String gain(JoiningReport report) {
    Answer answer = report.answer();
    if (answer.lambsSpared() < 1) {
      return Texts.get("joining.headline.noLambs");
    }
    String saved =
        Texts.get(
            "joining.headline.saves",
            Words.about(answer.lambsSpared()),
            Words.money(report.farm().currency(), planned(report).saved()));
    return answer.mostLostNow() < answer.tellable()
        ? saved + " " + Texts.get("joining.headline.untold")
        : saved;
  }

  private static PolicyResult planned(JoiningReport report) {
    return report.policies().stream()
        .filter(result -> result.policy() == Policy.PLAN)
        .findFirst()
        .orElseThrow();
  }

  /** A day without its year: {@code 16 May}. */
  public static String day(MonthDay day) {
    return day.getDayOfMonth()
        + " "
        + day.getMonth().getDisplayName(TextStyle.SHORT, Locale.ENGLISH);
  }

  /** When a mob is joined: {@code rams in 1 May for 6 weeks}. */
  public static String joining(MobCalendar mob) {
    return Texts.get(
        "joining.ramsIn",
        mob.ramsIn().getDayOfMonth(),
        mob.ramsIn().getMonth().getDisplayName(TextStyle.FULL, Locale.ENGLISH),
        Words.exact(mob.weeks()));
  }

  /** What makes a paddock what it is: leaf test or cultivar, clover share, wet ground. */
  public static String reason(PaddockRow row) {
    Reason reason = row.reason();
    String why =
        switch (row.clover().formononetinFrom()) {
          case LEAF_TEST ->
              Texts.get(
                  "joining.why.leafTest",
                  Words.exact(row.clover().leafTestPercentOfLeaf().orElseThrow()));
          case UNKNOWN ->
              Texts.get(
                  row.clover().isLookedAt() ? "joining.why.unknown" : "joining.why.notLooked");
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

  /** What is allowed: {@code open}, {@code 9 days}, {@code keep off} or a dash. */
  public static String rating(Cell cell) {
    return switch (cell.rating()) {
      case OPEN -> Texts.get("joining.open");
      case LIMITED -> Texts.get("joining.days", cell.days());
      case KEEP_OFF -> Texts.get("joining.keepOff");
      case NOT_RATED -> Texts.get("none");
    };
  }

  /** How sure a rating is, or that it rests on clover nobody knows. */
  public static String sure(Cell cell, PaddockRow row) {
    return !row.clover().isOestrogenKnown() && cell.rating() != Rating.OPEN
        ? Texts.get("joining.notKnown")
        : Texts.get("joining.sure", Words.whole(cell.chanceRight()));
  }

  /** What is allowed to young ewes through a green season. */
  public static String young(YoungRow row) {
    return switch (row.rating()) {
      case UNKNOWN -> Texts.get("joining.young.notKnown");
      case OPEN -> Texts.get("joining.open");
      case KEEP_OFF -> Texts.get("joining.young.keepOff");
      case LIMITED -> Texts.get("joining.young.upTo", Words.whole(row.days()));
    };
  }

  /** The name of a way of grazing. */
  public static String policy(Policy policy) {
    return Texts.of("joining.policy", policy);
  }

  /** Where a group can be, one entry for each paddock: {@code Home 9 d}. */
  public static List<String> where(Move move) {
    return switch (move.where()) {
      case NOT_HERE -> List.of(Texts.get("joining.notHere"));
      case ANY_PADDOCK -> List.of(Texts.get("joining.any"));
      case ANY_DRY_PADDOCK -> List.of(Texts.get("joining.anyDry"));
      case BARE_GROUND -> List.of(Texts.get("joining.bareGround"));
      case PADDOCKS ->
          move.stays().stream().map(stay -> stay(stay, move.stays().size() == 1)).toList();
    };
  }

  private static String stay(Stay stay, boolean alone) {
    String words = alone ? stay.paddock() : Texts.get("joining.stay", stay.paddock(), stay.days());
    return stay.keptOff() ? Texts.get("joining.stay.keptOff", words) : words;
  }

  /** To whom a gate is shut: all ewes, names of mobs, or nothing. */
  public static String shutTo(List<String> mobs, JoiningReport report) {
    return mobs.size() == report.mobs().size()
        ? Texts.get("joining.allEwes")
        : String.join(", ", mobs);
  }

  /** The best and the worst date of a mob in a sentence. */
  public static String dates(DateEnds mob) {
    return Texts.get(
        "joining.dates.alt",
        mob.mob(),
        day(mob.best()),
        Words.rounded(mob.least(), 1),
        day(mob.worst()),
        Words.rounded(mob.most(), 1));
  }

  /** What another date of joining would change too, and is not counted. */
  public static String notModelled() {
    return Texts.get("joining.notModelled");
  }
}
