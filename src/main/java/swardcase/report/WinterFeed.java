package swardcase.report;

import java.time.Month;
import swardcase.chance.Drawn;

/**
 * Winter feed lost to outdated cultivars, whole farm, per year.
 *
 * @param dryMatterLostKg pasture not grown in the winter months, kg dry matter
 * @param shortfallMj energy to be bought because of it in the winter months, MJ
 * @param supplementTonnes the same as supplement, t as fed
 * @param supplementCost the same as money, in the winter months
 * @param wholeYearSupplementCost supplement bought because of it in the whole year: feed not grown
 *     in winter is missing later too
 * @param supplementTonnesNow supplement the farm needs in a whole year as the stands are, t
 * @param supplementKgPerEweNow the same per ewe, kg
 * @param runMoreEwesGain yearly gain if extra feed carried more ewes instead of replacing
 *     supplement
 * @param extraEwes how many more
 * @param mostBoughtIn month of the feed budget in which most is bought as the stands are
 * @param statement the finding
 */
public record WinterFeed(
    Drawn dryMatterLostKg,
    Drawn shortfallMj,
    Drawn supplementTonnes,
    Drawn supplementCost,
    Drawn wholeYearSupplementCost,
    Drawn supplementTonnesNow,
    Drawn supplementKgPerEweNow,
    Drawn runMoreEwesGain,
    Drawn extraEwes,
    Month mostBoughtIn,
    Finding statement) {

  /** What the lost winter growth means. */
  public enum Finding {
    /** No outdated cultivars are known. */
    NONE_LOST,
    /** Growth is lost, but feed is hardly short in winter. */
    HARDLY_SHORT,
    /** The loss may be nothing: field trials differ. */
    UNSURE
  }
}
