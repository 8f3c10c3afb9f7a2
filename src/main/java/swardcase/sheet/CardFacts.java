package swardcase.sheet;

import java.util.ArrayList;
import java.util.List;
import swardcase.paper.Cell;
import swardcase.paper.Style;
import swardcase.report.LeafTestResult;
import swardcase.report.PaddockResult;
import swardcase.wording.LeafTestWords;
import swardcase.wording.OestrogenWords;
import swardcase.wording.Texts;
import swardcase.wording.Words;

/** The facts on a paddock's card. */
final class CardFacts {

  private final String currency;
  private final PaddockResult paddock;
  private final List<List<Cell>> rows = new ArrayList<>();

  CardFacts(String currency, PaddockResult paddock) {
    this.currency = currency;
    this.paddock = paddock;
  }

  List<List<Cell>> rows(String credit) {
    add("fact.old", Words.percent(paddock.oldCultivarShare()));
    add("fact.outdated", Words.percent(paddock.outdatedShare()));
    add("fact.highShare", Words.percent(paddock.highOestrogenShareOfSward()));
    add("fact.chance", chance());
    add("fact.rating", OestrogenWords.rating(paddock.oestrogenRating()));
    add("fact.formononetin", formononetin());
    paddock
        .leafTest()
        .filter(LeafTestResult::isContrary)
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
            Words.money(currency, paddock.supplementCost())));
    if (!credit.isEmpty()) {
      add("fact.credit", credit);
    }
    return rows;
  }

  private void add(String key, String value) {
    rows.add(List.of(Cell.of(Texts.get(key), Style.NOTE), Cell.of(value)));
  }

  private String chance() {
    String chance = Texts.get("fact.chance.value", Words.whole(paddock.chanceAboveTwentyPercent()));
    return paddock.morePlantsToSettle().isPresent()
        ? chance
            + " "
            + Texts.get("fact.chance.more", Words.exact(paddock.morePlantsToSettle().getAsInt()))
        : chance;
  }

  private String formononetin() {
    String from = Texts.of("formononetin", paddock.formononetinFrom());
    return paddock
        .formononetinPercentOfLeaf()
        .map(range -> Words.range(range) + ", " + from)
        .orElse(from);
  }
}
