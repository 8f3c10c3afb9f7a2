package swardcase.report;

import java.util.Optional;
import swardcase.chance.Drawn;
import swardcase.decision.Decision;
import swardcase.decision.FarmMeasures.OfFarm;
import swardcase.decision.FarmMeasures.OfMob;
import swardcase.decision.FarmMeasures.OfPaddock;
import swardcase.farm.Farm;
import swardcase.report.PaddockResult.OestrogenRating;
import swardcase.report.Reproduction.Finding;
import swardcase.report.Reproduction.HardestHit;
import swardcase.sward.Composition;
import swardcase.tables.Tables;

/**
 * What the oestrogen of a paddock or a flock means.
 *
 * <p>A paddock is rated by the dose of a ewe that eats nothing but its green feed: below 0.15 % of
 * intake nothing could be told from normal variation, and at the dose that halves conception in a
 * cycle the effect is called severe (both inferred; see the dose-response table).
 */
public final class OestrogenBuilder {

  private static final double TELLABLE_DOSE = 0.15;
  private static final double DRY_FEED_DOSE = 0.02;

  private final Tables tables;
  private final double severeDose;
  private final double reportLimitDose;
  private final double tellablePoints;

  /** Reads the limits of the ratings from the tables. */
  public OestrogenBuilder(Tables tables) {
    this.tables = tables;
    severeDose = tables.parameter("oestrogen.d50").likely();
    reportLimitDose = tables.parameter("oestrogen.report-limit-dose").likely();
    tellablePoints = tables.parameter("oestrogen.distinguishable-points").likely();
  }

  /**
   * How a rating comes from the dose.
   *
   * @param severeDose dose, % of intake, from which it is severe
   * @param markedDose dose from which it is marked
   * @param unknownShare share of the clover, 0 to 1, beyond which an unknown formononetin makes the
   *     rating unknown
   */
  public record Rule(double severeDose, double markedDose, double unknownShare) {}

  /** The rule of the ratings. */
  public Rule rule() {
    return new Rule(severeDose, TELLABLE_DOSE, Composition.MUCH_UNKNOWN);
  }

  /** The rating of a paddock. */
  public OestrogenRating rating(Decision decision, int paddock) {
    Drawn dose = decision.of(paddock, OfPaddock.GREEN_DOSE);
    if (!clover(decision, paddock).isOestrogenKnown()) {
      return OestrogenRating.UNKNOWN;
    }
    if (dose.mean() >= severeDose) {
      return OestrogenRating.SEVERE;
    }
    if (dose.mean() >= TELLABLE_DOSE) {
      return OestrogenRating.MARKED;
    }
    return dose.high() >= TELLABLE_DOSE ? OestrogenRating.SLIGHT : OestrogenRating.LITTLE;
  }

  /** What is known of a paddock's clover. */
  KnownClover clover(Decision decision, int paddock) {
    return KnownClover.of(
        decision.model().farm().paddocks().get(paddock),
        decision.likely().composition(paddock),
        tables);
  }

  /** The finding for the whole flock. */
  Finding flock(Decision decision) {
    return decision.model().farm().ewesJoined() == 0
        ? new Finding(Finding.Kind.NO_EWES, 0)
        : finding(
            decision.of(OfFarm.UNAFFECTED_PERCENT),
            decision.of(OfFarm.PREGNANT_PERCENT),
            highestJoiningDose(decision));
  }

  /** Whether every mob is joined on dry feed. */
  boolean isDry(Decision decision) {
    return decision.model().farm().ewesJoined() > 0 && highestJoiningDose(decision) < DRY_FEED_DOSE;
  }

  private static double highestJoiningDose(Decision decision) {
    double dose = 0;
    for (int g = 0; g < decision.model().farm().mobs().size(); g++) {
      dose = Math.max(dose, decision.of(g, OfMob.DOSE_AT_JOINING).mean());
    }
    return dose;
  }

  /** A mob that loses what can be told though the flock as a whole does not. */
  Optional<HardestHit> hardestHit(Decision decision) {
    Farm farm = decision.model().farm();
    Optional<HardestHit> hardest = Optional.empty();
    double most = tellablePoints;
    for (int g = 0; g < farm.mobs().size(); g++) {
      double points =
          points(decision.of(g, OfMob.UNAFFECTED_PERCENT), decision.of(g, OfMob.PREGNANT_PERCENT));
      if (points >= most) {
        most = points;
        hardest = Optional.of(new HardestHit(farm.mobs().get(g).name(), points));
      }
    }
    double ofFlock =
        points(decision.of(OfFarm.UNAFFECTED_PERCENT), decision.of(OfFarm.PREGNANT_PERCENT));
    return ofFlock >= tellablePoints ? Optional.empty() : hardest;
  }

  /** The finding for one mob. */
  Finding mob(Decision decision, int mob) {
    return finding(
        decision.of(mob, OfMob.UNAFFECTED_PERCENT),
        decision.of(mob, OfMob.PREGNANT_PERCENT),
        decision.of(mob, OfMob.DOSE_AT_JOINING).mean());
  }

  private Finding finding(Drawn unaffected, Drawn pregnant, double dose) {
    double points = points(unaffected, pregnant);
    if (points < tellablePoints) {
      return new Finding(Finding.Kind.NOT_TOLD, points);
    }
    boolean beyondTrials = dose > reportLimitDose;
    return new Finding(beyondTrials ? Finding.Kind.AT_LEAST : Finding.Kind.ABOUT, points);
  }

  private static double points(Drawn unaffected, Drawn pregnant) {
    return unaffected.mean() - pregnant.mean();
  }

  /** Ewes in lamb per 100 joined that can be told from normal variation. */
  double tellablePoints() {
    return tellablePoints;
  }
}
