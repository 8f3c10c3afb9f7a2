package swardcase.decision;

/**
 * Something that can be bought to know more about a paddock before acting on it.
 *
 * @param plants plants to identify; 0 for a leaf test
 * @param value what it is worth on average, present value
 * @param valueError standard error of {@code value}
 * @param price what it costs
 */
public record Purchase(int plants, double value, double valueError, double price) {

  private static final double ERRORS = 2;

  /** Whether it is worth its price. */
  public enum Advice {
    /** It is, beyond the error of the draws. */
    WORTH_DOING,
    /** It is not, beyond the error of the draws. */
    NOT_WORTH_DOING,
    /** Value and price are too near to each other to say. */
    ABOUT_EVEN
  }

  /** Value less price. */
  public double net() {
    return value - price;
  }

  /** Whether it is worth its price. */
  public Advice advice() {
    double margin = ERRORS * valueError;
    if (net() > margin) {
      return Advice.WORTH_DOING;
    }
    return net() < -margin || value == 0 ? Advice.NOT_WORTH_DOING : Advice.ABOUT_EVEN;
  }
}
