package swardcase.chance;

/**
 * What the plan is worth for certain.
 *
 * @param tolerance risk tolerance in money: the larger, the less one minds risk
 * @param worth in money
 */
public record Certainty(double tolerance, double worth) {}
