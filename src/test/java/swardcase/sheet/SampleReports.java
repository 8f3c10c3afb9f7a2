package swardcase.sheet;

import java.time.LocalDate;
import java.time.Month;
import java.util.List;
import java.util.Optional;
import java.util.function.IntFunction;
import java.util.stream.IntStream;
import swardcase.chance.Drawn;
import swardcase.chance.Spread;
import swardcase.farm.ExtraFeedUse;
import swardcase.report.PaddockResult;
import swardcase.report.PlanResult;
import swardcase.report.Report;
import swardcase.report.Reproduction;
import swardcase.report.Swing;
import swardcase.tables.Source;

/** Reports to draw. Every number in them is invented. */
final class SampleReports {

  static final List<String> CAUTIONS =
      List.of(
          "A screening estimate from tables with wide ranges; not veterinary or agronomic advice.",
          "Poor scanning, prolapse, difficult births or dry ewes: see a vet first. Infections,"
              + " nutrition, trace elements, rams, heat and weather must be ruled out.",
          "Cultivar choice, herbicide and seed-bank plan: see an agronomist who knows the paddock.",
          "Follow labels, permits, withholding and grazing intervals and local rules.",
          "An identification by eye is not proof: get a laboratory leaf test before money is"
              + " spent.",
          "New pasture rich in clover brings bloat and other stock-health risks.",
          "Do not take feed away from late-pregnant ewes in order to avoid a paddock.");

  private static final List<String> NAMES =
      List.of(
          "Creek Flat",
          "House",
          "Top Dam",
          "Woolshed",
          "Long Gully",
          "Stony Rise",
          "Windmill",
          "North Road",
          "Lambing",
          "Red Gum",
          "The Hundred Acre",
          "Far Corner");

  private SampleReports() {}

  /** Twelve paddocks of a middling farm. */
  static Report twelvePaddocks() {
    return withPaddocks("Karradale", NAMES.size(), NAMES::get);
  }

  static Report onePaddock() {
    return withPaddocks("Karradale", 1, NAMES::get);
  }

  static Report fourHundredPaddocks() {
    return withPaddocks("Great Plain Pastoral", 400, i -> "Paddock " + (i + 1));
  }

  /** A farm whose money runs to hundreds of millions. */
  static Report greatSums() {
    double factor = 10_000;
    Report full = withPaddocks("Karradale", NAMES.size(), NAMES::get, factor);
    Reproduction flock = full.reproduction();
    return new Report(
        full.schemaVersion(),
        full.program(),
        full.farm(),
        full.winterFeed(),
        full.feedYear(),
        new Reproduction(
            flock.ewesJoined(),
            flock.pregnantPercentUnaffected(),
            flock.pregnantPercent(),
            flock.sterilePercent(),
            flock.lambsLostPerYear().times(factor),
            flock.costPerYear().times(factor),
            flock.statement(),
            flock.tellablePoints(),
            flock.dryJoining(),
            flock.hardestHit(),
            flock.mobs(),
            flock.otherDates(),
            flock.dose(),
            flock.highestDoseIn()),
        full.paddocks(),
        full.plan(),
        full.swings().stream()
            .map(
                swing ->
                    new Swing(
                        swing.input(),
                        swing.low(),
                        swing.high(),
                        swing.unit(),
                        swing.gainAtLow() * factor,
                        swing.gainAtHigh() * factor))
            .toList(),
        full.cautions(),
        full.notices(),
        full.assumptions(),
        full.heldFixed(),
        full.sources(),
        List.of(),
        Optional.empty(),
        Optional.empty());
  }

  /** Names of sixty characters in several scripts, without a place to break and with one. */
  static Report longNames() {
    List<String> names =
        List.of(
            "M".repeat(60),
            "Whāngārei ki te taha o te awa, te pātiki nui o Ōtūmoetai ēēē",
            "Λιβάδι δίπλα στο ποτάμι, κάτω από τον παλιό ανεμόμυλο του χω",
            "Луг у старой мельницы за рекой, где пасутся ярки и валухи все",
            "\u725b\u4e73\u6ce2\u306e\u7267\u8349\u5730".repeat(9).substring(0, 60),
            "Quiet & <bold> \"paddock\" \t\u200b with\nodd {0} {1} characters \uD83D\uDC11 "
                + "x".repeat(12),
            "Mount Misery western slope beyond the second gate by the dam");
    return withPaddocks(
        "Ōtara Λ Ж \u7267 " + "Very Long Farm Name Pastoral Company of the Upper Valley and Plain",
        names.size(),
        names::get);
  }

  /** A farm about which next to nothing was said. */
  static Report empty() {
    Report full = onePaddock();
    Drawn none = Drawn.exactly(0);
    return new Report(
        full.schemaVersion(),
        full.program(),
        full.farm(),
        full.winterFeed(),
        List.of(),
        new Reproduction(
            0,
            none,
            none,
            none,
            none,
            none,
            new Reproduction.Finding(Reproduction.Finding.Kind.NO_EWES, 0),
            3,
            false,
            Optional.empty(),
            List.of(),
            List.of(),
            List.of(),
            Month.JANUARY),
        List.of(),
        nothing(none),
        List.of(),
        CAUTIONS,
        List.of(),
        List.of(),
        List.of(),
        List.of(),
        List.of(),
        Optional.empty(),
        Optional.empty());
  }

  private static PlanResult nothing(Drawn none) {
    Spread noGain = new Spread(0, 0, 0, 0, 0);
    return new PlanResult(
        new PlanResult.Calls(0, 0, 0, 0, 0, 0),
        true,
        List.of(),
        0,
        none,
        noGain,
        0,
        0,
        160_000,
        List.of(),
        List.of(),
        List.of(),
        List.of(),
        new PlanResult.Shared(0),
        noGain,
        Optional.empty(),
        new PlanResult.RateEnds(4, 0, 9, 0),
        none,
        SamplePaddocks.returns(0, 0, 0, 0),
        none,
        2027,
        SampleParts.howFound(),
        Optional.empty());
  }

  private static Report withPaddocks(String farm, int count, IntFunction<String> name) {
    return withPaddocks(farm, count, name, 1);
  }

  private static Report withPaddocks(
      String farm, int count, IntFunction<String> name, double factor) {
    List<PaddockResult> paddocks =
        IntStream.range(0, count)
            .mapToObj(i -> SamplePaddocks.paddock(i, name.apply(i), factor))
            .toList();
    double area = paddocks.stream().mapToDouble(PaddockResult::areaHa).sum();
    return new Report(
        "1",
        "swardcase 0.1.0",
        new Report.FarmHead(
            farm,
            LocalDate.of(2026, 10, 5),
            "A$",
            area,
            2400,
            15,
            6,
            "medium rainfall, south",
            "oats",
            List.of(Month.JUNE, Month.JULY, Month.AUGUST),
            ExtraFeedUse.HOLD_NUMBERS),
        SampleParts.winterFeed(),
        SampleParts.feedYear(),
        SampleParts.reproduction(name.apply(0)),
        paddocks,
        SampleParts.plan(paddocks, factor),
        SampleParts.swings(),
        CAUTIONS,
        List.of(
            "Paddock " + name.apply(0) + ": 12 of 40 plants are unidentified.",
            "No quote for lime was given: the table's default is used, get a quote.",
            "The scanning figure is taken as observed on these paddocks."),
        SampleParts.assumptions(),
        SampleParts.heldFixed(),
        List.of(
            new Source(
                "invented2001",
                "A. Example and B. Sample 2001, An invented trial of nothing in particular, Journal"
                    + " of Made-up Results 1, pages 1 to 10",
                "https://example.org/a/very/long/address/that/has/no/place/to/break/at/all/and/runs"
                    + "/over/the/edge",
                "abstract"),
            new Source("invented2014", "C. Nobody 2014, Another invented source", "", "")),
        List.of(),
        Optional.empty(),
        Optional.empty());
  }
}
