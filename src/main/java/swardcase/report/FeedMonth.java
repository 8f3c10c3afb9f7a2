package swardcase.report;

import java.time.Month;

/**
 * A month of the feed budget, per hectare, mean over season types and draws.
 *
 * @param month 1 is January
 * @param winter whether it is one of the winter months
 * @param demandMjPerHa energy the stock need, MJ/ha
 * @param eatenMjPerHa energy they find, MJ/ha, as the stands are
 * @param boughtMjPerHa energy to be bought, MJ/ha, as the stands are
 * @param boughtWithCurrentMjPerHa the same with current cultivars in the same paddocks
 * @param boughtAfrcMjPerHa the same as the stands are, with the second energy method
 * @param growthKgDmPerHaPerDay pasture growth as the stands are
 * @param growthWithCurrentKgDmPerHaPerDay the same with current cultivars
 * @param greenKgDmPerHa green feed on offer at the end of the month
 * @param dryKgDmPerHa dry feed on offer at the end of the month
 */
public record FeedMonth(
    Month month,
    boolean winter,
    double demandMjPerHa,
    double eatenMjPerHa,
    double boughtMjPerHa,
    double boughtWithCurrentMjPerHa,
    double boughtAfrcMjPerHa,
    double growthKgDmPerHaPerDay,
    double growthWithCurrentKgDmPerHaPerDay,
    double greenKgDmPerHa,
    double dryKgDmPerHa) {}
