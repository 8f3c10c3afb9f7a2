package swardcase.feed;

/**
 * The uncertain numbers of the feed budget, each with its key and with the limits a run takes. One
 * factor stands for the error of a whole equation: its coefficients were fitted together, so they
 * are not drawn one by one.
 */
public enum FeedNumber {
  /** Share of daily need the stock may take from their backs: 10 % is 0.10. */
  CONDITION_DEFICIT("farm.condition-deficit", "deficit carried by the ewes", 0, 1),
  /** Share of growth lost on bare ground: 0.5 halves it. */
  LEAF_AREA_PENALTY("feed.leaf-area-penalty", "leaf-area penalty", 0, 1),
  /** Green feed at and above which growth is full, kg DM/ha. */
  LEAF_AREA_BOUND("feed.leaf-area-bound", "leaf-area bound", Double.MIN_VALUE, Double.MAX_VALUE),
  /** Factor on energy need, for the disagreement between energy systems. */
  DEMAND("feed.demand-multiplier", "multiplier of demand", 0, 10),
  /** Factor on the monthly loss of dry feed. */
  DRY_LOSS("feed.dry-loss-multiplier", "multiplier of dry loss", 0, 10),
  /** Factor on the growth of every month. */
  GROWTH("feed.growth-multiplier", "multiplier of the growth level", 0, 10),
  /** Factor on what stock can eat. */
  INTAKE("feed.intake-multiplier", "multiplier of intake", 0, 10),
  /** Digestibility of green feed above that of the table: 0.03 is three points. */
  GREEN_DIGESTIBILITY("feed.green-digestibility", "rise of green digestibility", -1, 1),
  /** Digestibility of the dry feed that is eaten above that of what stands. */
  DRY_SELECTION("feed.dry-selection", "selection of dry feed", -1, 1),
  /** How fast green feed dies relative to the table: 1 - 0.1^0.7 = 80 % a month in place of 90. */
  GREEN_DYING("feed.green-dying-multiplier", "multiplier of green dying", 0, 10);

  private final String key;
  private final String words;
  private final double least;
  private final double most;

  FeedNumber(String key, String words, double least, double most) {
    this.key = key;
    this.words = words;
    this.least = least;
    this.most = most;
  }

  /** Key among the uncertain numbers; but for the deficit, of a row of feed-parameters.csv too. */
  public String key() {
    return key;
  }

  String words() {
    return words;
  }

  double least() {
    return least;
  }

  double most() {
    return most;
  }
}
