package swardcase.report;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import swardcase.chance.Range;

/**
 * What the count of each paddock says, how easily that is wrong, and how many more plants to look
 * at.
 *
 * <p>The call is whether high-oestrogen clover makes up more than the table's share of the green
 * feed (20 %). It is made on the likelier side, so the chance of a wrong call is that of the other
 * side. Where a leaf was tested there is no call to make: the test tells the formononetin, and says
 * whether the names can be right.
 *
 * @param farm the farm's name
 * @param riskShare the share of the green feed that is asked about, fraction
 * @param designEffect how many times as many plants a walked line needs as a random pick
 * @param plantsNearRiskShare plants picked at random that tell a share near it to within 10 points,
 *     19 times in 20
 * @param plantsToSeeOne plants picked at random that show a cultivar that is one plant in twenty,
 *     19 times in 20
 * @param paddocks a row for each paddock
 */
public record SamplingReport(
    String farm,
    double riskShare,
    double designEffect,
    int plantsNearRiskShare,
    int plantsToSeeOne,
    List<PaddockCount> paddocks) {

  /** Copies the list. */
  public SamplingReport {
    paddocks = List.copyOf(paddocks);
  }

  /** Whether high-oestrogen clover makes up more of the green feed than is asked about. */
  public enum CountCall {
    /** Likelier above. */
    ABOVE,
    /** Likelier not above. */
    NOT_ABOVE,
    /** No plant was looked at, so nothing is called. */
    NOBODY_LOOKED,
    /** A leaf test tells the formononetin, so there is no call to make. */
    LEAF_TESTED
  }

  /** What further plants would do. */
  public enum Further {
    /** So many more would probably settle the call. */
    WOULD_SETTLE,
    /** It is settled. */
    SETTLED,
    /** They would not: the doubt is in the clover share or in plants that cannot be named. */
    WILL_NOT_SETTLE,
    /** None are needed for formononetin: a leaf was tested. */
    LEAF_TESTED,
    /** The leaf test and the names cannot both be right: the plants should be named again. */
    NAME_AGAIN
  }

  /**
   * The count of a paddock.
   *
   * @param paddock its name
   * @param plants plants looked at
   * @param oldPercent old cultivars, % of the clover; empty if nobody looked
   * @param highOestrogenPercent high-oestrogen clover, % of the green feed; empty if nobody looked
   * @param call the call
   * @param wrong chance that it is wrong, per cent; empty where nothing is called after a leaf test
   * @param further what more plants would do
   * @param morePlants how many more to look at; empty unless they would settle it
   * @param leafTest the leaf test beside the names; empty without a test, or if nobody looked
   */
  public record PaddockCount(
      String paddock,
      double plants,
      Optional<Range> oldPercent,
      Optional<Range> highOestrogenPercent,
      CountCall call,
      OptionalDouble wrong,
      Further further,
      OptionalInt morePlants,
      Optional<LeafTestResult> leafTest) {}
}
