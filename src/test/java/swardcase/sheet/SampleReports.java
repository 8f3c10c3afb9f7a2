package swardcase.sheet;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.function.IntFunction;
import java.util.stream.IntStream;
import swardcase.chance.Range;
import swardcase.evidence.Assumption;
import swardcase.evidence.Evidence;
import swardcase.evidence.SetBy;
import swardcase.report.FeedMonth;
import swardcase.report.PaddockResult;
import swardcase.report.PaddockResult.NamedShare;
import swardcase.report.PaddockResult.OptionResult;
import swardcase.report.PlanResult;
import swardcase.report.PlanResult.PlanYear;
import swardcase.report.Report;
import swardcase.report.Reproduction;
import swardcase.report.Reproduction.DoseMonth;
import swardcase.report.Reproduction.MobResult;
import swardcase.report.Swing;
import swardcase.report.WinterFeed;
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
          "An identification by eye is not proof: get a laboratory leaf test before money is spent.",
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
  private static final List<String> MONTHS =
      List.of("Jan", "Feb", "Mar", "Apr", "May", "Jun", "Jul", "Aug", "Sep", "Oct", "Nov", "Dec");

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

  static Report fortyPaddocks() {
    return withPaddocks("Plain Pastoral", 40, i -> "Paddock " + (i + 1));
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
    Range none = Range.exactly(0);
    return new Report(
        full.schemaVersion(),
        full.program(),
        full.farm(),
        full.winterFeed(),
        List.of(),
        new Reproduction(
            0, none, none, none, none, none, "No ewes are joined.", List.of(), List.of()),
        List.of(),
        new PlanResult(
            "Keep everything as it is.",
            0,
            none,
            none,
            none,
            "none",
            "none",
            "none",
            0,
            "none",
            List.of(),
            List.of()),
        List.of(),
        CAUTIONS,
        List.of(),
        List.of(),
        List.of());
  }

  private static Report withPaddocks(String farm, int count, IntFunction<String> name) {
    List<PaddockResult> paddocks =
        IntStream.range(0, count).mapToObj(i -> paddock(i, name.apply(i))).toList();
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
            "June, July, August",
            "hold numbers; spare feed has no price"),
        winterFeed(),
        feedYear(),
        reproduction(name.apply(0)),
        paddocks,
        plan(),
        swings(),
        CAUTIONS,
        List.of(
            "Paddock " + name.apply(0) + ": 12 of 40 plants are unidentified.",
            "No quote for lime was given: the table's default is used, get a quote.",
            "The scanning figure is taken as observed on these paddocks."),
        assumptions(),
        List.of(
            new Source(
                "invented2001",
                "A. Example and B. Sample 2001, An invented trial of nothing in particular, Journal"
                    + " of Made-up Results 1, pages 1 to 10",
                "https://example.org/a/very/long/address/that/has/no/place/to/break/at/all/and/runs"
                    + "/over/the/edge",
                "abstract"),
            new Source("invented2014", "C. Nobody 2014, Another invented source", "", "")));
  }

  private static WinterFeed winterFeed() {
    return new WinterFeed(
        Range.of(9_000, 41_300, 88_000),
        Range.of(60_000, 251_000, 560_000),
        Range.of(6.2, 25.6, 58),
        Range.of(1_900, 8_200, 20_100),
        Range.of(2_300, 9_900, 24_000),
        Range.of(60, 102, 160),
        Range.of(25, 43, 67),
        Range.of(-1_200, 14_000, 37_000),
        Range.of(0, 140, 320),
        "Outdated clover costs this farm about 26 t of oats each winter, but the range is wide"
            + " because the winter growth of old cultivars is poorly known.");
  }

  private static List<FeedMonth> feedYear() {
    double[] need = {1900, 1850, 1900, 2050, 2400, 2900, 3600, 4100, 3900, 3000, 2300, 2000};
    double[] bought = {40, 190, 420, 610, 480, 520, 610, 260, 0, 0, 0, 0};
    double[] current = {38, 180, 400, 585, 440, 330, 370, 120, 0, 0, 0, 0};
    double[] growth = {2, 2, 3, 10, 18, 15, 14, 27, 48, 55, 22, 5};
    List<FeedMonth> months = new ArrayList<>();
    for (int i = 0; i < 12; i++) {
      boolean winter = i >= 5 && i <= 7;
      months.add(
          new FeedMonth(
              MONTHS.get(i),
              winter,
              need[i],
              need[i] * 0.93 - bought[i],
              bought[i],
              current[i],
              bought[i] * 1.07,
              growth[i],
              winter ? growth[i] * 1.12 : growth[i],
              i < 3 || i > 10 ? 80 : 400 + 120 * i,
              i < 4 || i > 8 ? 2400 - 200 * ((i + 2) % 12) : 150));
    }
    return months;
  }

  private static Reproduction reproduction(String paddock) {
    return new Reproduction(
        2400,
        Range.of(88, 92, 95),
        Range.of(74, 86, 92),
        Range.of(0.5, 2.4, 6),
        Range.of(20, 140, 390),
        Range.of(1_700, 13_000, 39_000),
        "About 6 in 100 more ewes are empty than without oestrogenic clover, perhaps none and"
            + " perhaps 15.",
        List.of(
            new MobResult(
                "Merino ewes",
                1500,
                "30 Jan, 6 weeks",
                Range.of(0.01, 0.05, 0.12),
                Range.of(88, 92, 95),
                Range.of(86, 90, 94),
                "Not distinguishable from normal variation."),
            new MobResult(
                "Crossbred ewes, joined late on " + paddock,
                900,
                "10 Apr, 7 weeks",
                Range.of(0.1, 0.34, 0.81),
                Range.of(89, 93, 96),
                Range.of(58, 81, 92),
                "At least 12 in 100 ewes fewer in lamb is likely; move them before joining.")),
        IntStream.range(0, 12)
            .mapToObj(
                i ->
                    new DoseMonth(
                        MONTHS.get(i),
                        i < 3
                            ? Range.of(0, 0.01, 0.05)
                            : Range.of(0.08 + i * 0.005, 0.2 + i * 0.01, 0.55 + i * 0.01)))
            .toList());
  }

  private static PaddockResult paddock(int i, String name) {
    boolean sow = i % 3 == 0;
    boolean hold = i % 3 == 1;
    double area = 18 + (i * 7) % 23 + (i % 4 == 0 ? 0.5 : 0);
    OptionalInt start = sow ? OptionalInt.of(2027 + i % 2) : OptionalInt.empty();
    Range npv =
        sow
            ? Range.of(-4_300 - 200 * (i % 5), 11_400 + 900 * (i % 7), 31_800 + 1_000 * (i % 6))
            : hold ? Range.of(-300, 2_100, 9_800) : Range.exactly(0);
    return new PaddockResult(
        name,
        area,
        i % 5 == 4 ? 0 : 40,
        i % 5 == 4
            ? List.of()
            : List.of(
                new NamedShare("Dwalganup or Geraldton", Range.of(0.31, 0.46, 0.61)),
                new NamedShare("Mount Barker", Range.of(0.15, 0.28, 0.43)),
                new NamedShare("unidentified old", Range.of(0.05, 0.15, 0.28)),
                new NamedShare("other", Range.of(0.02, 0.11, 0.24))),
        Range.of(0.61, 0.78, 0.9),
        Range.of(0.3, 0.55, 0.74),
        Range.of(0.08, 0.23, 0.39),
        63.4,
        i % 2 == 0 ? OptionalInt.of(60) : OptionalInt.empty(),
        sow ? Optional.of(Range.of(0.5, 0.94, 1.4)) : Optional.empty(),
        sow ? "laboratory test" : "unknown: get a leaf test",
        sow ? "high" : hold ? "may be high: get a leaf test" : "low",
        Range.of(0, 132, 310),
        Range.of(0, 18_000, 41_000),
        Range.of(0, 1.9, 4.4),
        Range.of(0, 610, 1_500),
        sow
            ? "Crop for two seasons, then resow"
            : hold ? "Keep, hold joining ewes off" : "Keep as it is",
        sow ? "crop-resow" : hold ? "hold-off" : "keep",
        sow ? "crop one to three seasons, then resow" : hold ? "keep and hold ewes off" : "keep",
        start,
        sow
            ? "Old clover loses winter feed where the farm is short, and three years without seed"
                + " set would clear most of its seed; lambs saved pay for half of the work."
            : hold
                ? "The clover may be oestrogenic, yet resowing costs more than it returns; other"
                    + " paddocks have room for the ewes at joining."
                : "Nothing that was looked at returns more than it costs.",
        i % 4 == 3 ? "" : "price of oats above A$ 410/t",
        sow ? Range.of(7_100, 9_300, 12_200) : Range.exactly(0),
        npv,
        List.of(0.0, -9_300.0, 1_200.0, 2_900.0),
        options(sow, hold, npv, start));
  }

  private static List<OptionResult> options(
      boolean sow, boolean hold, Range npv, OptionalInt start) {
    Range zero = Range.exactly(0);
    return List.of(
        new OptionResult(
            "keep",
            "Keep as it is",
            OptionalInt.empty(),
            zero,
            zero,
            zero,
            "none",
            "none",
            "none",
            0,
            "none",
            List.of(),
            List.of(),
            !sow && !hold,
            sow || hold ? "Another option is likely to return more." : ""),
        new OptionResult(
            "hold-off",
            "Keep, hold joining ewes off",
            OptionalInt.empty(),
            zero,
            Range.of(-300, 2_100, 9_800),
            Range.of(-1, 8, 36),
            "none",
            "none",
            "1",
            0,
            "none",
            List.of(),
            List.of(),
            hold,
            hold ? "" : "Winter feed stays short."),
        new OptionResult(
            "oversow",
            "Oversow into the stand",
            OptionalInt.of(2027),
            Range.of(130, 185, 260),
            Range.of(-8_400, -3_900, 900),
            Range.of(-29, -14, 3),
            "none",
            "1.4",
            "not within 15 years",
            3_900,
            "0.4",
            List.of(),
            List.of(0.8, 0.78, 0.8, 0.79, 0.8, 0.81),
            false,
            "The old seed bank crowds out what is sown: almost nothing changes."),
        new OptionResult(
            "crop-resow",
            "Crop for two seasons, then resow",
            sow ? start : OptionalInt.of(2028),
            Range.of(290, 385, 510),
            sow ? npv : Range.of(-11_000, -2_300, 7_400),
            Range.of(-20, 48, 133),
            sow ? "17.2" : "3.1",
            sow ? "9.6" : "4.0",
            sow ? "7" : "14",
            9_300,
            sow ? "1.8" : "0.8",
            List.of(),
            List.of(0.78, 0.7, 0.5, 0.12, 0.13, 0.15, 0.19, 0.24),
            sow,
            sow ? "" : "It costs more than the winter feed it returns."));
  }

  private static PlanResult plan() {
    List<PlanYear> years = new ArrayList<>();
    double running = 0;
    for (int i = 0; i < 15; i++) {
      double cost = i == 0 ? 21_300 : i == 1 ? 16_800 : i == 6 ? 2_400 : 0;
      double feed = i < 2 ? -2_900 : Math.min(6_900, 1_400 * i);
      double lambs = i < 2 ? 600 : 5_200;
      double net = feed + lambs + 300 - cost;
      running += net;
      years.add(
          new PlanYear(
              2027 + i,
              i == 0
                  ? "Crop Creek Flat and Woolshed; oversow Windmill"
                  : i == 1 ? "Resow Creek Flat; crop Red Gum" : "",
              cost,
              feed,
              lambs,
              300,
              net,
              running,
              0.74 - 0.03 * Math.min(i, 10)));
    }
    return new PlanResult(
        "Resow 4 of 12 paddocks over two years, hold joining ewes off 4 more and keep the rest: it"
            + " probably pays, by about A$ 50,000 over 15 years.",
        84.5,
        Range.of(31_000, 40_500, 53_000),
        Range.of(-18_000, 51_200, 138_000),
        Range.of(-1_900, 5_300, 14_200),
        "16.1",
        "9.9",
        "8",
        39_300,
        "1.9",
        years,
        List.of(
            "No plan can return more than A$ 55,000; this one is within 7 % of that.",
            "The money limit of A$ 25,000 a year binds in 2027.",
            "Next best: leave Red Gum out, A$ 2,000 less."));
  }

  private static List<Swing> swings() {
    List<Swing> swings = new ArrayList<>();
    swings.add(new Swing("winter growth of old cultivars", 0.7, 1, "-", 102_000, -9_000));
    swings.add(new Swing("price of oats", 220, 460, "A$/t", 21_000, 88_000));
    swings.add(new Swing("net value of a lamb", 70, 140, "A$", 28_000, 77_000));
    swings.add(new Swing("chance of establishment", 0.6, 0.95, "-", 24_000, 63_000));
    swings.add(
        new Swing(
            "share of clover in the green feed of the whole farm in winter",
            0.2,
            0.5,
            "-",
            33_000,
            69_000));
    for (int i = 0; i < 8; i++) {
      swings.add(new Swing("input " + (i + 6), 1, 2, "kg/ha", 44_000 + i * 500, 58_000 - i * 700));
    }
    return swings;
  }

  private static List<Assumption> assumptions() {
    List<Assumption> assumptions = new ArrayList<>();
    assumptions.add(Assumption.ofFarm("price of oats", Range.of(220, 320, 460), "A$/t"));
    assumptions.add(
        new Assumption(
            "cost of lime", Range.of(40, 60, 95), "A$/ha", Evidence.FARM, "", SetBy.OVERRIDE));
    for (int i = 0; i < 48; i++) {
      assumptions.add(
          new Assumption(
              "number " + (i + 1) + " used by the feed budget, spelt out at some length",
              i % 4 == 0 ? Range.exactly(17) : Range.of(0.123 * i, 0.2 * i + 0.05, 0.4 * i + 1),
              i % 2 == 0 ? "kg DM/ha/day" : "-",
              i % 3 == 0 ? Evidence.PUBLISHED : Evidence.INFERRED,
              i % 3 == 0 ? "invented2001" : "",
              SetBy.DEFAULT));
    }
    return assumptions;
  }
}
