package swardcase.outcome;

import java.util.Arrays;

/**
 * What is drawn of a farm at once. A workspace that is filled again and again.
 *
 * <p>Shares of the clover are drawn as a whole and not each from a range of its own; seasons and
 * the luck of sowings belong to years.
 */
public final class Draw {

  /** Every uncertain number in the order of {@link FarmModel#inputs()}, each in its own unit. */
  public final double[] numbers;

  /** For each paddock the share of each name in its clover, 0 to 1; they add up to 1. */
  public final double[][] shares;

  /** For each year the place of its season type; the number of types stands for their mean. */
  public final int[] seasons;

  /** For each paddock and year how well a sowing does, 0 to 1: it takes below its chance. */
  public final double[][] luck;

  /** A workspace with every number at its likely value, the first season type and the best luck. */
  public Draw(FarmModel model) {
    numbers = model.inputs().likely();
    shares = new double[model.farm().paddocks().size()][];
    Arrays.setAll(shares, i -> new double[model.compositions().get(i).size()]);
    seasons = new int[model.years()];
    luck = new double[shares.length][model.years()];
  }
}
