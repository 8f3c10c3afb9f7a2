package swardcase.report;

import swardcase.chance.Range;
import swardcase.decision.Decision;
import swardcase.farm.Farm;
import swardcase.farm.Paddock;
import swardcase.sward.Composition;
import swardcase.tables.Tables;
import swardcase.wording.Texts;
import swardcase.wording.Words;

/**
 * What the oestrogen of a paddock or a flock means, in plain words.
 *
 * <p>A paddock is rated by the dose of a ewe that eats nothing but its green feed: below 0.15 % of
 * intake nothing could be told from normal variation, and at the dose that halves conception in a
 * cycle the effect is called severe (both inferred; see the dose-response table).
 */
public final class OestrogenWords {

  private static final double TELLABLE_DOSE = 0.15;
  private static final double DRY_FEED_DOSE = 0.02;

  private final Tables tables;
  private final double severeDose;
  private final double reportLimitDose;
  private final double tellablePoints;

  public OestrogenWords(Tables tables) {
    this.tables = tables;
    severeDose = tables.parameter("oestrogen.d50").likely();
    reportLimitDose = tables.parameter("oestrogen.report-limit-dose").likely();
    tellablePoints = tables.parameter("oestrogen.distinguishable-points").likely();
  }

  /** The rating of a paddock. */
  public String rating(Decision decision, int paddock) {
    Range dose = decision.greenDose(paddock);
    Paddock place = decision.model().farm().paddocks().get(paddock);
    if (isUnknown(place, decision.likely().composition(paddock))) {
      return Texts.get("oestrogen.unknown");
    }
    if (dose.likely() >= severeDose) {
      return Texts.get("oestrogen.severe");
    }
    if (dose.likely() >= TELLABLE_DOSE) {
      return Texts.get("oestrogen.marked");
    }
    return dose.high() >= TELLABLE_DOSE
        ? Texts.get("oestrogen.slight")
        : Texts.get("oestrogen.little");
  }

  /** How a rating comes from the dose, in a sentence. */
  public String rule() {
    return Texts.get(
        "oestrogen.rule",
        Words.exact(severeDose),
        Words.exact(TELLABLE_DOSE),
        Words.percent(Composition.MUCH_UNKNOWN));
  }

  /** Where a paddock's formononetin comes from. */
  String note(Paddock paddock, Composition composition) {
    if (paddock.leafTest().isPresent()) {
      return Texts.get("oestrogen.fromTest");
    }
    return isUnknown(paddock, composition)
        ? Texts.get("oestrogen.unknown")
        : Texts.get("oestrogen.fromTable");
  }

  /** Whether more than a fifth of the clover has a formononetin nobody knows. */
  boolean isUnknown(Paddock paddock, Composition composition) {
    return paddock.leafTest().isEmpty() && composition.unknownShare() > Composition.MUCH_UNKNOWN;
  }

  /** The finding for the whole flock. */
  String flock(Decision decision) {
    Farm farm = decision.model().farm();
    if (farm.ewesJoined() == 0) {
      return Texts.get("oestrogen.noEwes");
    }
    double dose = 0;
    for (int g = 0; g < farm.mobs().size(); g++) {
      dose = Math.max(dose, decision.doseAtJoining(g).likely());
    }
    String pasture = dose < DRY_FEED_DOSE ? " " + Texts.get("oestrogen.dry") : "";
    return effect(decision.unaffectedPercent(), decision.pregnantPercent(), dose)
        + hardestHit(decision)
        + pasture;
  }

  /** Names a mob that loses what can be told though the flock as a whole does not. */
  private String hardestHit(Decision decision) {
    double ofFlock = decision.unaffectedPercent().likely() - decision.pregnantPercent().likely();
    double most = tellablePoints;
    String name = "";
    for (int g = 0; g < decision.model().farm().mobs().size(); g++) {
      double points = decision.unaffectedPercent(g).likely() - decision.pregnantPercent(g).likely();
      if (points >= most) {
        most = points;
        name = decision.model().farm().mobs().get(g).name();
      }
    }
    return name.isEmpty() || ofFlock >= tellablePoints
        ? ""
        : " " + Texts.get("oestrogen.hardestHit", name, Words.whole(most));
  }

  /** The finding for one mob. */
  String mob(Decision decision, int mob) {
    return effect(
        decision.unaffectedPercent(mob),
        decision.pregnantPercent(mob),
        decision.doseAtJoining(mob).likely());
  }

  private String effect(Range unaffected, Range pregnant, double dose) {
    double points = unaffected.likely() - pregnant.likely();
    if (points < tellablePoints) {
      return Texts.get("oestrogen.notTold", Words.exact(tellablePoints));
    }
    return Texts.get(
        dose > reportLimitDose ? "oestrogen.atLeast" : "oestrogen.about", Words.whole(points));
  }

  /** The share of the sward at which pastures are called risky. */
  double riskShare() {
    return tables.parameter("oestrogen.risk-share").likely();
  }
}
