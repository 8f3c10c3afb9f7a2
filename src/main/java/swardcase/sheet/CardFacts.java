package swardcase.sheet;

import java.util.ArrayList;
import java.util.List;
import swardcase.paper.Cell;
import swardcase.paper.Style;
import swardcase.report.KnownClover;
import swardcase.report.LeafTestResult;
import swardcase.report.PaddockResult;
import swardcase.report.Report;
import swardcase.wording.FindOutWords;
import swardcase.wording.LeafTestWords;
import swardcase.wording.OestrogenWords;
import swardcase.wording.Texts;
import swardcase.wording.Words;

/** The facts on a paddock's card. */
final class CardFacts {

  private final Report report;
  private final PaddockResult paddock;
  private final List<List<Cell>> rows = new ArrayList<>();

  CardFacts(Report report, PaddockResult paddock) {
    this.report = report;
    this.paddock = paddock;
  }

  List<List<Cell>> rows(String credit) {
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
            Words.money(report.farm().currency(), paddock.supplementCost())));
    if (!credit.isEmpty()) {
      add("fact.credit", credit);
    }
    return rows;
  }

  private void add(String key, String value) {
    rows.add(List.of(Cell.of(Texts.get(key), Style.NOTE), Cell.of(value)));
  }

  private String formononetin() {
    String from = Texts.of("formononetin", paddock.clover().formononetinFrom());
    return paddock
        .formononetinPercentOfLeaf()
        .map(range -> Words.range(range) + ", " + from)
        .orElse(from);
  }
}
