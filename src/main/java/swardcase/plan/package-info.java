/**
 * The decision: what each action does to a paddock over the years, and one pure function {@code
 * outcome = f(farm, plan, assumptions)} that every answer is a call of. Knows the calculators;
 * knows nothing of files, words or pages.
 */
package swardcase.plan;
