package swardcase.report;

/**
 * How far the gain moves with one input, by the straight line through the draws.
 *
 * @param input name of the assumption
 * @param low the input at its low end
 * @param high the input at its high end
 * @param unit unit of the input
 * @param gainAtLow mean gain with the input at its low end
 * @param gainAtHigh the same at its high end
 */
public record Swing(
    String input, double low, double high, String unit, double gainAtLow, double gainAtHigh) {}
