package swardcase.decision;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.BiFunction;
import java.util.function.Function;

/** What can be explained; the numbers of the first page. */
public enum ExplainTopic {
  WINTER_FEED("winter feed short, t", Explanations::winterFeed),
  WINTER_FEED_COST("winter feed short, money", Explanations::winterFeedCost),
  WINTER_GROWTH_LOST("winter growth lost, whole farm", Explanations::winterGrowthLost),
  LAMBS("lambs not marked", Explanations::lambs),
  LAMB_COST("what they cost", Explanations::lambCost),
  PLAN_COST("cost of the plan", Explanations::planCost),
  PLAN_GAIN("gain of the plan", Explanations::planGain),
  COST("cost of the planned action", PaddockExplanations::cost),
  GAIN("gain of the planned action", PaddockExplanations::gain),
  CREDIT("where that gain comes from", PaddockExplanations::credit),
  GROWTH_LOST("winter growth lost, kg DM/ha", PaddockExplanations::growthLost),
  SUPPLEMENT("its part of the winter feed", PaddockExplanations::supplement),
  SUPPLEMENT_COST("the same, money", PaddockExplanations::supplementCost),
  NITROGEN("nitrogen fixed, kg N/ha", PaddockExplanations::nitrogen),
  OESTROGEN("oestrogen rating and the dose behind it", PaddockExplanations::dose),
  FORMONONETIN("formononetin in the leaf", PaddockExplanations::formononetin),
  OLD_SHARE("share of old cultivars", PaddockExplanations::oldShare);

  private final String says;
  private final boolean ofPaddock;
  private final BiFunction<Explanations, Integer, Explanation> explain;

  ExplainTopic(String says, Function<Explanations, Explanation> explain) {
    this.says = says;
    this.ofPaddock = false;
    this.explain = (all, none) -> explain.apply(all);
  }

  ExplainTopic(String says, BiFunction<PaddockExplanations, Integer, Explanation> explain) {
    this.says = says;
    this.ofPaddock = true;
    this.explain = (all, paddock) -> explain.apply(all.paddocks(), paddock);
  }

  /** The topic of a key, capitals or not. */
  public static Optional<ExplainTopic> find(String key) {
    return Arrays.stream(values()).filter(topic -> topic.key().equalsIgnoreCase(key)).findFirst();
  }

  /** All keys. */
  public static List<String> keys() {
    return Arrays.stream(values()).map(ExplainTopic::key).toList();
  }

  /** How it is called on the command line. */
  public String key() {
    return name().toLowerCase(Locale.ROOT).replace('_', '-');
  }

  /** What it is. */
  public String says() {
    return says;
  }

  /** Whether it is a number of a paddock. */
  public boolean isOfPaddock() {
    return ofPaddock;
  }

  /**
   * The explanation, with the inputs that move it; the place of the paddock counts only for a
   * number of a paddock.
   */
  public Explanation explain(Explanations all, int paddock) {
    return all.moved(explain.apply(all, paddock));
  }
}
