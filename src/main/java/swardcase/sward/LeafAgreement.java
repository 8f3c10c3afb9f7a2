package swardcase.sward;

import java.util.Optional;
import swardcase.chance.Range;
import swardcase.farm.LeafTest;
import swardcase.farm.Paddock;
import swardcase.tables.Tables;

/**
 * A laboratory's leaf test beside what the cultivars named in the same paddock can have.
 *
 * <p>The numbers of the program follow the test. But where the whole range of the test lies outside
 * what the names allow, one of the two is wrong: the names, the sample, or the unit of the result.
 *
 * @param testedPercentOfLeaf formononetin by the test, % of leaf dry matter; the ends are those of
 *     its 90 % interval
 * @param namesPercentOfLeaf what the names can have ({@link Composition#formononetinOfNames}); on
 *     waterlogged ground its high end is raised by the factor for waterlogging
 * @param side where the test lies
 */
public record LeafAgreement(Range testedPercentOfLeaf, Range namesPercentOfLeaf, Side side) {

  /** Where a leaf test lies against what the names can have. */
  public enum Side {
    /** Its whole range is below all that they can have. */
    BELOW,
    /** The ranges meet. */
    WITHIN,
    /** Its whole range is above all that they can have. */
    ABOVE
  }

  private static final String UNKNOWN = "dose.unknown-formononetin";
  private static final String WATERLOGGED = "dose.waterlogged-factor";
  private static final double NORMAL_90 = 1.645;

  /** Whether names and test cannot both be right. */
  public boolean isContrary() {
    return side != Side.WITHIN;
  }

  /** The test beside the names; empty without a test, or where nobody looked at the clover. */
  public static Optional<LeafAgreement> of(Paddock paddock, Composition clover, Tables tables) {
    if (!clover.lookedAt()) {
      return Optional.empty();
    }
    return paddock
        .leafTest()
        .map(test -> of(interval(test), names(paddock.waterlogged(), clover, tables)));
  }

  private static LeafAgreement of(Range tested, Range ofNames) {
    Side side =
        tested.high() < ofNames.low()
            ? Side.BELOW
            : tested.low() > ofNames.high() ? Side.ABOVE : Side.WITHIN;
    return new LeafAgreement(tested, ofNames, side);
  }

  /** The 5 % end, the result and the 95 % end of a test, % of leaf dry matter, never below 0. */
  public static Range interval(LeafTest test) {
    double half = NORMAL_90 * test.standardErrorPercent();
    double mean = test.formononetinPercentOfLeaf();
    return Range.of(Math.max(0, mean - half), mean, mean + half);
  }

  private static Range names(boolean waterlogged, Composition clover, Tables tables) {
    Range dry = clover.formononetinOfNames(tables.parameter(UNKNOWN).range());
    double stress = waterlogged ? tables.parameter(WATERLOGGED).range().high() : 1;
    return Range.of(dry.low(), dry.likely(), dry.high() * stress);
  }
}
