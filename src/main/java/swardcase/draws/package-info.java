/**
 * The common draws of a farm's uncertain numbers and what each plan brings in each of them. Knows
 * the outcome function; knows nothing of how a plan is found, nor of words or pages.
 */
package swardcase.draws;
