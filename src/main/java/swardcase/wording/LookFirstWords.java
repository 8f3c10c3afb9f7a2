package swardcase.wording;

import java.util.List;
import java.util.function.Function;
import java.util.stream.Collectors;
import swardcase.sward.StandGate.Critical;
import swardcase.sward.StandGate.LookFirst;
import swardcase.sward.StandGate.State;
import swardcase.sward.StandGate.What;

/** What to look at in a paddock before it is sown, as whatever its cultivar it may be at fault. */
final class LookFirstWords {

  private LookFirstWords() {}

  /** The names, in the sentence of this key behind a space; blank if there are none. */
  static String names(String key, List<LookFirst> all) {
    return sentence(key, all, ", ", each -> Texts.of("lookFirst", each.what()));
  }

  /** Each with its state, its number against the critical one, and what a look costs. */
  static String list(List<LookFirst> all) {
    boolean poorNodules =
        all.stream().anyMatch(each -> each.what() == What.NODULES && each.state() == State.POOR);
    return sentence("lookFirst.all", all, "; ", LookFirstWords::item)
        + (poorNodules ? " " + Texts.get("lookFirst.nodules") : "");
  }

  private static String sentence(
      String key, List<LookFirst> all, String between, Function<LookFirst, String> word) {
    String words = all.stream().map(word).collect(Collectors.joining(between));
    return all.isEmpty() ? "" : " " + Texts.get(key, words);
  }

  private static String item(LookFirst each) {
    return Texts.get(
        "lookFirst.item",
        Texts.of("lookFirst", each.what()),
        Texts.of("lookFirst.state", each.state()),
        each.value().isPresent() ? against(each, each.critical().orElseThrow()) : "",
        each.costCurrency(),
        Words.ends(each.cost()));
  }

  private static String against(LookFirst each, Critical critical) {
    double from = critical.goodFrom().orElse(critical.poorBelow());
    return Texts.get(
        from > critical.poorBelow() ? "lookFirst.against" : "lookFirst.againstLeast",
        Words.exact(each.value().getAsDouble()),
        LeafTestWords.hundredths(critical.poorBelow()),
        LeafTestWords.hundredths(from),
        Texts.of("lookFirst.unit", each.what()));
  }
}
