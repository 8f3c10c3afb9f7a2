/**
 * What one plan brings at one array of numbers, part by part: {@code outcome = f(farm, plan,
 * assumptions)}, one pure function that every answer is a call of. Knows the calculators; knows
 * nothing of chance, files, words or pages.
 */
package swardcase.outcome;
