/**
 * What grows in a paddock: the shares of its cultivars, the winter growth they give, the
 * formononetin they carry and how their seed banks move. Knows the farm and the tables; nothing of
 * sheep, feed budgets or money.
 */
package swardcase.sward;
