package swardcase.report;

import swardcase.decision.Explanation;

/**
 * Where a number comes from, as it is printed.
 *
 * @param currency sign printed before money
 * @param number the number with its parts and movers
 */
public record ExplanationReport(String currency, Explanation number) {}
