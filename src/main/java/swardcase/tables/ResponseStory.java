package swardcase.tables;

import java.util.List;

/**
 * How ewes respond to formononetin at pasture, of which the evidence tells three stories: farmlets
 * grazed at about the dose of a trial lost nothing, the trial lost much, outbreaks lost half of the
 * lambs and more. The number {@value #KEY} of a draw is the place of one of them, from 0; the
 * chances stand in {@code tables/dose-response.csv} (inferred).
 */
public enum ResponseStory {
  /** Doses at pasture do nothing: no conception is lost, no ewe made barren. */
  NONE,
  /** As in the dosed trial on red clover. */
  TRIAL,
  /** As in the outbreaks of the 1940s: half of the dose does as much, and more ewes stay barren. */
  OUTBREAKS;

  /** Key of the number that tells the story. */
  public static final String KEY = "oestrogen.story";

  /** Keys of the numbers that belong to the stories, in whichever they are read. */
  public static final List<String> NUMBERS =
      List.of(
          "oestrogen.d50",
          "oestrogen.steepness",
          "oestrogen.sterility-q",
          "oestrogen.d50-outbreaks",
          "oestrogen.sterility-q-outbreaks");

  private static final String CHANCE_OF_NONE = "oestrogen.chance-none";
  private static final String CHANCE_OF_OUTBREAKS = "oestrogen.chance-outbreaks";

  private static final List<ResponseStory> ALL = List.of(values());

  /** The story nearest to a number, 0 to 2. */
  public static ResponseStory of(double number) {
    return ALL.get((int) Math.round(number));
  }

  /** The story of a uniform number, 0 to below 1, by the chances of the stories in their order. */
  public static ResponseStory of(double uniform, double[] chances) {
    return uniform < chances[0] ? NONE : uniform < chances[0] + chances[1] ? TRIAL : OUTBREAKS;
  }

  /** The chances of the stories in their order; they add up to 1. */
  public static double[] chances(Tables tables) {
    return chances(
        tables.parameter(CHANCE_OF_NONE).likely(), tables.parameter(CHANCE_OF_OUTBREAKS).likely());
  }

  /** Other chances to look at a verdict with: first more of the outbreaks, then more of none. */
  public static List<double[]> otherChances(Tables tables) {
    var none = tables.parameter(CHANCE_OF_NONE).range();
    var outbreaks = tables.parameter(CHANCE_OF_OUTBREAKS).range();
    return List.of(chances(none.low(), outbreaks.high()), chances(none.high(), outbreaks.low()));
  }

  private static double[] chances(double none, double outbreaks) {
    return new double[] {none, Math.max(0, 1 - none - outbreaks), outbreaks};
  }
}
