/**
 * Ranges, distributions and draws, and the arithmetic on them. Knows only {@code check}: nothing of
 * paddocks, sheep or money.
 */
package swardcase.chance;
