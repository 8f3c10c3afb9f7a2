package swardcase.wording;

import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import swardcase.report.LookFirst;
import swardcase.sward.StandGate.State;
import swardcase.sward.StandGate.What;

/** What to look at in a paddock before it is sown, as whatever its cultivar it may be at fault. */
final class LookFirstWords {

  private LookFirstWords() {}

  /** The names alone; blank if there are none. */
  static String names(List<LookFirst> all) {
    return all.isEmpty() ? "" : Texts.get("reason.lookFirst", joined(all.stream()));
  }

  /** Why the sowing is not sure: the names of what is poor. */
  static String poor(List<LookFirst> all) {
    return Texts.get(
        "reason.poorStand", joined(all.stream().filter(each -> each.state() == State.POOR)));
  }

  /** Each with its state, its number against the critical one, and what a look costs. */
  static String list(List<LookFirst> all) {
    if (all.isEmpty()) {
      return "";
    }
    String list =
        Texts.get(
            "lookFirst.all",
            all.stream().map(LookFirstWords::item).collect(Collectors.joining("; ")));
    boolean poorNodules =
        all.stream().anyMatch(each -> each.what() == What.NODULES && each.state() == State.POOR);
    return poorNodules ? list + " " + Texts.get("lookFirst.nodules") : list;
  }

  private static String joined(Stream<LookFirst> all) {
    return all.map(each -> Texts.of("lookFirst", each.what())).collect(Collectors.joining(", "));
  }

  private static String item(LookFirst each) {
    return Texts.get(
        "lookFirst.item",
        Texts.of("lookFirst", each.what()),
        Texts.of("lookFirst", each.state()),
        each.value().isPresent() ? against(each) : "",
        each.costCurrency(),
        Words.ends(each.cost()));
  }

  private static String against(LookFirst each) {
    LookFirst.Critical critical = each.critical().orElseThrow();
    double from = critical.goodFrom().orElse(critical.poorBelow());
    return Texts.get(
        from > critical.poorBelow() ? "lookFirst.against" : "lookFirst.againstLeast",
        Words.exact(each.value().getAsDouble()),
        rounded(critical.poorBelow()),
        rounded(from),
        Texts.of("lookFirst.unit", each.what()));
  }

  /** To a hundredth, the finest a critical value is given. */
  private static String rounded(double critical) {
    return Words.exact(Math.rint(critical * 100) / 100);
  }
}
