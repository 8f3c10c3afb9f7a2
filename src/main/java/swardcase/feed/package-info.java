/**
 * What stock need and what pasture gives: ewe energy, stock demand and the half-monthly feed budget
 * of the whole farm. Knows {@code farm} and {@code tables}; nothing of cultivars, plans or money
 * beyond the price of a supplement.
 */
package swardcase.feed;
