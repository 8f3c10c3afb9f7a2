package swardcase.decision;

/**
 * What the plan is worth for certain to somebody with a given tolerance of risk.
 *
 * @param tolerance in money; infinite for somebody who looks at the mean alone
 * @param worth certainty equivalent of the plan's net present value
 */
public record Certainty(double tolerance, double worth) {}
