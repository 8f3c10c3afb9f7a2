package swardcase.sheet;

import java.time.Month;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.stream.IntStream;
import swardcase.chance.Range;
import swardcase.evidence.Assumption;
import swardcase.evidence.Evidence;
import swardcase.evidence.SetBy;
import swardcase.report.Call;
import swardcase.report.FeedMonth;
import swardcase.report.HeldFixed;
import swardcase.report.HowFound;
import swardcase.report.HowFound.Choice;
import swardcase.report.HowFound.LiftedLimit;
import swardcase.report.HowFound.Limit;
import swardcase.report.PaddockResult;
import swardcase.report.PlanResult;
import swardcase.report.PlanResult.Calls;
import swardcase.report.PlanResult.PlanYear;
import swardcase.report.PlanResult.Work;
import swardcase.report.Reproduction;
import swardcase.report.Reproduction.DoseMonth;
import swardcase.report.Reproduction.Finding;
import swardcase.report.Reproduction.HardestHit;
import swardcase.report.Reproduction.Joining;
import swardcase.report.Reproduction.MobResult;
import swardcase.report.Swing;
import swardcase.report.WinterFeed;

/** Parts of invented reports that do not depend on the paddocks. */
final class SampleParts {

  private SampleParts() {}

  static WinterFeed winterFeed() {
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
        Month.APRIL,
        WinterFeed.Finding.UNSURE);
  }

  static List<FeedMonth> feedYear() {
    double[] need = {1900, 1850, 1900, 2050, 2400, 2900, 3600, 4100, 3900, 3000, 2300, 2000};
    double[] bought = {40, 190, 420, 610, 480, 520, 610, 260, 0, 0, 0, 0};
    double[] current = {38, 180, 400, 585, 440, 330, 370, 120, 0, 0, 0, 0};
    double[] growth = {2, 2, 3, 10, 18, 15, 14, 27, 48, 55, 22, 5};
    List<FeedMonth> months = new ArrayList<>();
    for (int i = 0; i < 12; i++) {
      boolean winter = i >= 5 && i <= 7;
      months.add(
          new FeedMonth(
              Month.of(i + 1),
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

  static Reproduction reproduction(String paddock) {
    return new Reproduction(
        2400,
        Range.of(88, 92, 95),
        Range.of(74, 86, 92),
        Range.of(0.5, 2.4, 6),
        Range.of(20, 140, 390),
        Range.of(1_700, 13_000, 39_000),
        new Finding(Finding.Kind.ABOUT, 6),
        3,
        false,
        Optional.of(new HardestHit("Crossbred ewes, joined late on " + paddock, 12)),
        List.of(
            new MobResult(
                "Merino ewes",
                1500,
                new Joining(Month.JANUARY, 30, 6),
                Range.of(0.01, 0.05, 0.12),
                Range.of(88, 92, 95),
                Range.of(86, 90, 94),
                new Finding(Finding.Kind.NOT_TOLD, 2)),
            new MobResult(
                "Crossbred ewes, joined late on " + paddock,
                900,
                new Joining(Month.APRIL, 10, 7),
                Range.of(0.1, 0.34, 0.81),
                Range.of(89, 93, 96),
                Range.of(58, 81, 92),
                new Finding(Finding.Kind.AT_LEAST, 12))),
        IntStream.range(0, 12)
            .mapToObj(
                i ->
                    new DoseMonth(
                        Month.of(i + 1),
                        i < 3
                            ? Range.of(0, 0.01, 0.05)
                            : Range.of(0.08 + i * 0.005, 0.2 + i * 0.01, 0.55 + i * 0.01)))
            .toList(),
        Month.DECEMBER);
  }

  private static Work work(Work.Kind kind, String paddock) {
    return new Work(kind, paddock, "crop-resow", "crop for two seasons, then resow");
  }

  /** Paddocks with work first, then what is undecided, then what is kept. */
  private static List<Integer> order(List<PaddockResult> paddocks) {
    return IntStream.range(0, paddocks.size())
        .boxed()
        .sorted(
            Comparator.comparing((Integer i) -> paddocks.get(i).start().isEmpty())
                .thenComparing(i -> paddocks.get(i).call() != Call.UNDECIDED))
        .map(i -> i + 1)
        .toList();
  }

  private static int count(List<PaddockResult> paddocks, Call call) {
    return (int) paddocks.stream().filter(paddock -> paddock.call() == call).count();
  }

  static PlanResult plan(List<PaddockResult> paddocks) {
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
                  ? List.of(
                      work(Work.Kind.CROP, "Creek Flat"), work(Work.Kind.STOP_SEED_SET, "Woolshed"))
                  : i == 1
                      ? List.of(work(Work.Kind.SOW, "Creek Flat"), work(Work.Kind.BEGIN, "Red Gum"))
                      : List.of(),
              cost,
              feed,
              lambs,
              300,
              net,
              running,
              0.74 - 0.03 * Math.min(i, 10)));
    }
    return new PlanResult(
        new Calls(
            count(paddocks, Call.ACT),
            count(paddocks, Call.KEEP_OFF),
            count(paddocks, Call.KEEP),
            count(paddocks, Call.UNDECIDED)),
        false,
        order(paddocks),
        84.5,
        Range.of(31_000, 40_500, 53_000),
        Range.of(-18_000, 51_200, 138_000),
        51_200,
        Range.of(-1_900, 5_300, 14_200),
        SamplePaddocks.returns(16.1, 9.9, 8, 39_300, 1.9),
        years,
        2028,
        howFound(),
        Optional.empty());
  }

  static HowFound howFound() {
    Choice choice =
        new Choice(
            "Red Gum", "crop-resow", "crop for two seasons, then resow", OptionalInt.of(2028));
    return new HowFound(
        2,
        3,
        51_000,
        400,
        List.of(),
        Optional.empty(),
        120,
        List.of(),
        List.of(new LiftedLimit(Limit.MONEY, 3_000)),
        Optional.of(new HowFound.NextBest(List.of(choice), 2_000)),
        List.of(),
        0);
  }

  static List<Swing> swings() {
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
    for (int i = 0; i < 3; i++) {
      swings.add(new Swing("input " + (i + 6), 1, 2, "kg/ha", 44_000 + i * 500, 58_000 - i * 700));
    }
    return swings;
  }

  static List<Assumption> assumptions() {
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

  static List<HeldFixed> heldFixed() {
    return List.of(
        new HeldFixed("length of pregnancy", 150, 150, "d", Evidence.MEMORY, "", SetBy.DEFAULT),
        new HeldFixed(
            "digestibility of green feed, by month",
            0.5,
            0.77,
            "fraction",
            Evidence.INFERRED,
            "",
            SetBy.USER));
  }
}
