/**
 * How sure the answer is, and what should be found out first: the decision run again under drawn
 * assumptions. Knows the calculators and {@code plan}; knows nothing of words, sheets or files.
 */
package swardcase.findings;
