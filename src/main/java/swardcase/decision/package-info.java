/**
 * The answer for a farm as numbers: the plan, what it was weighed against, how sure it is, what to
 * find out first, and where each number comes from. Knows the search and the draws; knows nothing
 * of words or pages.
 */
package swardcase.decision;
