/**
 * Finds the plan of highest value among actions and start years, within the limits of the farm.
 * Knows the outcome function; knows nothing of words or pages.
 */
package swardcase.search;
