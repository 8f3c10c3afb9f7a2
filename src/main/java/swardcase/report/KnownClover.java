package swardcase.report;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.IntStream;
import swardcase.chance.Range;
import swardcase.farm.Paddock;
import swardcase.outcome.FarmModel;
import swardcase.outcome.OutcomeFunction;
import swardcase.sward.Composition;
import swardcase.sward.LeafAgreement;
import swardcase.tables.Cultivar;
import swardcase.tables.Tables;

/**
 * What is known of a paddock's clover. Whatever is said to stand or to be found in a paddock is
 * said from here, so that nothing is said to be found where nobody looked.
 *
 * @param plantsLookedAt plants identified; 0 if nobody looked
 * @param found share of the clover by name, largest first; none if nobody looked
 * @param assumedShare share of the clover that has no name and counts with the table's row for such
 *     plants, fraction: 1 if nobody looked
 * @param oldShare share of the clover that is old cultivars; empty if nobody looked
 * @param outdatedShare share of the clover that a current cultivar would probably outgrow in
 *     winter; empty if nobody looked
 * @param highOestrogenShareOfSward share of the green feed that is high-oestrogen clover; empty if
 *     nobody looked
 * @param riskShare the share of the green feed from which ewes are called at risk, fraction
 * @param chanceAboveRiskSharePercent chance, in per cent, that high-oestrogen clover passes that;
 *     empty if nobody looked
 * @param formononetinFrom what its formononetin rests on
 * @param leafTestPercentOfLeaf formononetin by a leaf test, % of leaf dry matter; empty without one
 * @param leafTest the leaf test beside the names; empty without a test, or if nobody looked
 */
public record KnownClover(
    double plantsLookedAt,
    List<NamedShare> found,
    double assumedShare,
    Optional<Range> oldShare,
    Optional<Range> outdatedShare,
    Optional<Range> highOestrogenShareOfSward,
    double riskShare,
    OptionalDouble chanceAboveRiskSharePercent,
    FormononetinFrom formononetinFrom,
    OptionalDouble leafTestPercentOfLeaf,
    Optional<LeafAgreement> leafTest) {

  /** Key of the share of the green feed from which ewes are called at risk. */
  private static final String RISK_SHARE = "oestrogen.risk-share";

  /**
   * Share of the clover held by one name.
   *
   * @param name cultivar, or candidates such as {@code Dwalganup or Geraldton}
   * @param share fraction of the clover: 0.35 is 35 %
   */
  public record NamedShare(String name, Range share) {}

  /** Where a formononetin comes from. */
  public enum FormononetinFrom {
    /** A laboratory test of the paddock's leaf. */
    LEAF_TEST,
    /** The cultivar table, by the names found. */
    CULTIVAR_TABLE,
    /** Too much of the clover has a formononetin nobody knows. */
    UNKNOWN
  }

  /** What is known of a paddock by its plants and its leaf test. */
  static KnownClover of(FarmModel model, OutcomeFunction likely, int place) {
    Paddock paddock = model.farm().paddocks().get(place);
    Composition clover = likely.composition(place);
    Tables tables = model.tables();
    boolean looked = clover.lookedAt();
    Range ofFeed = paddock.cloverShare().range();
    Range high = clover.estimate(Cultivar::highOestrogen);
    double riskShare = tables.parameter(RISK_SHARE).likely();
    return new KnownClover(
        paddock.plantsLookedAt(),
        looked ? shares(clover) : List.of(),
        clover.likelyShare(clover.size() - 1),
        Optional.of(clover.estimate(Cultivar::isOld)).filter(share -> looked),
        Optional.of(clover.estimate(Cultivar::isOutdated)).filter(share -> looked),
        Optional.of(
                Range.of(
                    high.low() * ofFeed.low(),
                    high.likely() * ofFeed.likely(),
                    high.high() * ofFeed.high()))
            .filter(share -> looked),
        riskShare,
        looked
            ? OptionalDouble.of(100 * clover.chanceHighOestrogenAbove(riskShare, ofFeed))
            : OptionalDouble.empty(),
        clover.isOestrogenUnknown(paddock)
            ? FormononetinFrom.UNKNOWN
            : paddock.leafTest().isPresent()
                ? FormononetinFrom.LEAF_TEST
                : FormononetinFrom.CULTIVAR_TABLE,
        paddock.leafTest().isPresent()
            ? OptionalDouble.of(paddock.leafTest().get().formononetinPercentOfLeaf())
            : OptionalDouble.empty(),
        LeafAgreement.of(paddock, clover, tables));
  }

  private static List<NamedShare> shares(Composition clover) {
    return IntStream.range(0, clover.size())
        .mapToObj(c -> new NamedShare(clover.cultivar(c).name(), clover.estimate(c)))
        .sorted(
            Comparator.<NamedShare>comparingDouble(share -> -share.share().likely())
                .thenComparing(NamedShare::name))
        .toList();
  }

  /** Whether anybody identified a plant here. */
  public boolean isLookedAt() {
    return plantsLookedAt > 0;
  }

  /** Whether its formononetin is known, by a leaf test or by names. */
  public boolean isOestrogenKnown() {
    return formononetinFrom != FormononetinFrom.UNKNOWN;
  }
}
