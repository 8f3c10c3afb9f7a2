package swardcase.wording;

import java.util.List;
import swardcase.report.ExplanationReport.RatedOestrogen;
import swardcase.report.PaddockResult.OestrogenRating;
import swardcase.report.Reproduction;
import swardcase.report.Reproduction.Finding;
import swardcase.report.Reproduction.Joining;
import swardcase.report.Reproduction.MobResult;
import swardcase.report.Reproduction.OtherDate;

/** What the oestrogen of a paddock or a flock means, in plain words. */
public final class OestrogenWords {

  private OestrogenWords() {}

  /** The rating of a paddock. */
  public static String rating(OestrogenRating rating) {
    return Texts.of("oestrogen", rating);
  }

  /** The rating of a paddock and how it comes from the dose, in two sentences. */
  public static List<String> explained(RatedOestrogen rated) {
    return List.of(
        Texts.get("explain.rating", rating(rated.rating())),
        Texts.get(
            "oestrogen.rule",
            Words.exact(rated.severeDose()),
            Words.exact(rated.markedDose()),
            Words.percent(rated.unknownShare())));
  }

  /** The finding for the whole flock. */
  public static String flock(Reproduction flock) {
    String hardest =
        flock
            .hardestHit()
            .map(
                hit ->
                    " " + Texts.get("oestrogen.hardestHit", hit.mob(), Words.whole(hit.points())))
            .orElse("");
    String dry = flock.dryJoining() ? " " + Texts.get("oestrogen.dry") : "";
    return finding(flock.statement(), flock.tellablePoints()) + hardest + dry;
  }

  /** The finding for a mob of a flock. */
  public static String mob(MobResult mob, Reproduction flock) {
    return finding(mob.statement(), flock.tellablePoints());
  }

  private static String finding(Finding finding, double tellablePoints) {
    boolean told = finding.kind() != Finding.Kind.NOT_TOLD;
    return Texts.of(
        "oestrogen",
        finding.kind(),
        told ? Words.whole(finding.points()) : Words.exact(tellablePoints));
  }

  /** What a mob would gain on another joining date, which the plan never counts. */
  static String otherDate(OtherDate date, String currency) {
    return Texts.get(
        "oestrogen.otherDate",
        date.mob(),
        date.joining().day(),
        Words.shortName(date.joining().month()),
        Words.count(date.lambsSavedPerYear()),
        Words.money(currency, date.worthPerYear()));
  }

  /** When the rams are in: {@code 30 Jan, 6 weeks}. */
  public static String joining(Joining joining) {
    return Texts.get(
        "ewes.joining",
        joining.day(),
        Words.shortName(joining.month()),
        Words.exact(joining.weeks()));
  }
}
