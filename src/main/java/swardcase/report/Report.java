package swardcase.report;

import java.time.LocalDate;
import java.time.Month;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import swardcase.decision.Enquiry;
import swardcase.evidence.Assumption;
import swardcase.farm.ExtraFeedUse;
import swardcase.tables.Source;

/**
 * Everything the program has to say about a farm.
 *
 * @param schemaVersion version of this layout
 * @param program name and version of the program
 * @param farm what was looked at
 * @param winterFeed winter feed the farm is short of because of outdated cultivars
 * @param feedYear the feed budget month by month, as the stands are and with current cultivars
 * @param reproduction effect of oestrogenic clover on the flock
 * @param paddocks one entry a paddock, in the order of the user's file
 * @param plan the whole farm's answer
 * @param swings which inputs move the answer most, largest first
 * @param cautions printed on every sheet
 * @param notices what is odd, missing or overridden in this farm's folder
 * @param assumptions every number the answer rests on and draws move
 * @param heldFixed the numbers it rests on that no draw moves
 * @param sources those of the sources table that are named by one of these
 * @param findOut what can be found out before money is spent, the most worth first: the one list
 *     that every word on it comes from, a row for the plants and the leaf of each paddock among
 *     them
 * @param howSure how sure the answer is; empty if it was not drawn
 * @param records what the farm's own records say; left out if it has none
 */
public record Report(
    String schemaVersion,
    String program,
    FarmHead farm,
    WinterFeed winterFeed,
    List<FeedMonth> feedYear,
    Reproduction reproduction,
    List<PaddockResult> paddocks,
    PlanResult plan,
    List<Swing> swings,
    List<String> cautions,
    List<String> notices,
    List<Assumption> assumptions,
    List<HeldFixed> heldFixed,
    List<Source> sources,
    List<FindOut> findOut,
    Optional<HowSureReport> howSure,
    Optional<RecordsReport> records) {

  private static final int MOST_TO_FIND_OUT = 6;

  /**
   * What is worth finding out: what can be bought for less than it is worth, asked or measured, and
   * last what only research can tell.
   */
  public List<FindOut> worthFindingOut() {
    return findOut.stream()
        .filter(FindOut::isWorthKnowing)
        .sorted(Comparator.comparing(each -> each.advice() == Enquiry.Advice.RESEARCH))
        .limit(MOST_TO_FIND_OUT)
        .toList();
  }

  /** The row for the plants of a paddock, or for its first walk. */
  public Optional<FindOut> plantsOf(String paddock) {
    return findOut.stream()
        .filter(each -> each.plants() > 0 && each.paddock().equals(Optional.of(paddock)))
        .findFirst();
  }

  /** What would settle the answer of a paddock soonest; empty if it is settled or nothing would. */
  public Optional<FindOut> settling(String paddock) {
    return findOut.stream().filter(each -> each.settles().contains(paddock)).findFirst();
  }

  /**
   * What was looked at.
   *
   * @param name the farm
   * @param date the date given for the sheet
   * @param currency sign printed before money
   * @param areaHa area of all paddocks
   * @param ewesJoined ewes joined
   * @param horizonYears years counted
   * @param discountRatePercent real, per year
   * @param growthProfile district or the user's own name
   * @param supplement what is bought when feed is short
   * @param winterMonths the months counted as winter, 1 is January
   * @param extraFeedUse what extra feed is for
   */
  public record FarmHead(
      String name,
      LocalDate date,
      String currency,
      double areaHa,
      int ewesJoined,
      int horizonYears,
      double discountRatePercent,
      String growthProfile,
      String supplement,
      List<Month> winterMonths,
      ExtraFeedUse extraFeedUse) {}
}
