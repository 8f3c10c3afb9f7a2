package swardcase.report;

/**
 * How far one input moves the net present value of the plan when it goes from low to high alone.
 *
 * @param input name of the assumption
 * @param low the input at its low end
 * @param high the input at its high end
 * @param unit unit of the input
 * @param npvAtLow net present value with the input at its low end
 * @param npvAtHigh the same at its high end
 */
public record Swing(
    String input, double low, double high, String unit, double npvAtLow, double npvAtHigh) {}
