package swardcase.report;

import swardcase.chance.Range;

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
 * @param statement the finding in a sentence
 */
public record WinterFeed(
    Range dryMatterLostKg,
    Range shortfallMj,
    Range supplementTonnes,
    Range supplementCost,
    Range wholeYearSupplementCost,
    Range supplementTonnesNow,
    Range supplementKgPerEweNow,
    Range runMoreEwesGain,
    Range extraEwes,
    String statement) {}
