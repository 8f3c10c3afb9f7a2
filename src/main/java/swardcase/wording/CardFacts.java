package swardcase.wording;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import swardcase.report.KnownClover;
import swardcase.report.PaddockResult;
import swardcase.report.Report;
import swardcase.sward.LeafAgreement;

/** The facts on a paddock's card: what grows there and what follows from it. */
public final class CardFacts {

  /**
   * A fact.
   *
   * @param key of its name
   * @param name what it is
   * @param value what was found
   */
  public record Fact(String key, String name, String value) {}

  private static final Set<String> DECIDING =
      Set.of(
          "fact.old",
          "fact.rating",
          "fact.formononetin",
          "fact.leafTest",
          "fact.lost",
          "fact.lostToCultivar",
          "fact.credit");

  private final Report report;
  private final PaddockResult paddock;
  private final List<Fact> facts = new ArrayList<>();

  private CardFacts(Report report, PaddockResult paddock) {
    this.report = report;
    this.paddock = paddock;
  }

  /**
   * The facts of a paddock.
   *
   * @param credit where its gain comes from; blank if nothing is gained
   */
  public static List<Fact> of(Report report, PaddockResult paddock, String credit) {
    return new CardFacts(report, paddock).all(credit);
  }

  /** The few that decide. */
  public static List<Fact> inShort(Report report, PaddockResult paddock, String credit) {
    return new CardFacts(report, paddock)
        .all(credit).stream().filter(fact -> DECIDING.contains(fact.key())).toList();
  }

  private List<Fact> all(String credit) {
    KnownClover clover = paddock.clover();
    clover.oldShare().ifPresent(share -> add("fact.old", Words.percent(share)));
    clover.outdatedShare().ifPresent(share -> add("fact.outdated", Words.percent(share)));
    clover
        .highOestrogenShareOfSward()
        .ifPresent(share -> add("fact.highShare", Words.percent(share)));
    clover
        .chanceAboveRiskSharePercent()
        .ifPresent(
            chance -> add("fact.chance", Texts.get("fact.chance.value", Words.whole(chance))));
    add("fact.plants", new FindOutWords(report).plants(paddock.name()));
    add("fact.rating", OestrogenWords.rating(paddock.oestrogenRating()));
    add("fact.formononetin", formononetin());
    clover
        .leafTest()
        .filter(LeafAgreement::isContrary)
        .ifPresent(test -> add("fact.leafTest", LeafTestWords.note(test)));
    boolean isThin = paddock.lostToThinStandKgPerHa().high() > 0;
    add(
        isThin ? "fact.lost" : "fact.lostToCultivar",
        Words.range(paddock.dryMatterLostKgPerHa(), "kg DM/ha"));
    if (isThin) {
      add(
          "fact.lostTo",
          Texts.get(
              "fact.lostTo.value",
              Words.mean(paddock.lostToCultivarKgPerHa()),
              Words.mean(paddock.lostToThinStandKgPerHa())));
    }
    add("fact.nitrogen", Words.range(paddock.nitrogenFixedKgPerHa(), "kg N/ha"));
    if (paddock.isInPlan()) {
      add("fact.nitrogenPlanned", Words.range(paddock.nitrogenPlannedKgPerHa(), "kg N/ha"));
    }
    add(
        "fact.supplement",
        Texts.get(
            "fact.supplement.value",
            Words.range(paddock.supplementTonnes()),
            Words.money(report.farm().currency(), paddock.supplementCost())));
    if (!credit.isEmpty()) {
      add("fact.credit", credit);
    }
    return facts;
  }

  private void add(String key, String value) {
    facts.add(new Fact(key, Texts.get(key), value));
  }

  private String formononetin() {
    String from = Texts.of("formononetin", paddock.clover().formononetinFrom());
    return paddock
        .formononetinPercentOfLeaf()
        .map(range -> Words.range(range) + ", " + from)
        .orElse(from);
  }
}
