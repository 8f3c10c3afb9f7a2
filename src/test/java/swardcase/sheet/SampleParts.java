package swardcase.sheet;

import java.time.Month;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.stream.IntStream;
import swardcase.chance.Drawn;
import swardcase.chance.Range;
import swardcase.chance.Spread;
import swardcase.evidence.Assumption;
import swardcase.evidence.Evidence;
import swardcase.evidence.SetBy;
import swardcase.outcome.MoneyKind;
import swardcase.report.Call;
import swardcase.report.FeedMonth;
import swardcase.report.GainPart;
import swardcase.report.HeldFixed;
import swardcase.report.HowFound;
import swardcase.report.HowFound.Choice;
import swardcase.report.HowFound.LiftedLimit;
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
import swardcase.report.Reproduction.OtherDate;
import swardcase.report.Swing;
import swardcase.report.WinterFeed;
import swardcase.search.PlanLimit;

/** Parts of invented reports that do not depend on the paddocks. */
final class SampleParts {

  private SampleParts() {}

  static WinterFeed winterFeed() {
    return new WinterFeed(
        Drawn.of(41_300, 9_000, 88_000),
        Drawn.of(251_000, 60_000, 560_000),
        Drawn.of(25.6, 6.2, 58),
        Drawn.of(8_200, 1_900, 20_100),
        Drawn.of(9_900, 2_300, 24_000),
        Drawn.of(102, 60, 160),
        Drawn.of(43, 25, 67),
        Drawn.of(14_000, -1_200, 37_000),
        Drawn.of(140, 0, 320),
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
        Drawn.of(92, 88, 95),
        Drawn.of(86, 74, 92),
        Drawn.of(2.4, 0.5, 6),
        Drawn.of(140, 20, 390),
        Drawn.of(13_000, 1_700, 39_000),
        new Finding(Finding.Kind.ABOUT, 6),
        3,
        false,
        Optional.of(new HardestHit("Crossbred ewes, joined late on " + paddock, 12)),
        List.of(
            new MobResult(
                "Merino ewes",
                1500,
                new Joining(Month.JANUARY, 30, 6),
                Drawn.of(0.05, 0.01, 0.12),
                Drawn.of(92, 88, 95),
                Drawn.of(90, 86, 94),
                new Finding(Finding.Kind.NOT_TOLD, 2)),
            new MobResult(
                "Crossbred ewes, joined late on " + paddock,
                900,
                new Joining(Month.APRIL, 10, 7),
                Drawn.of(0.34, 0.1, 0.81),
                Drawn.of(93, 89, 96),
                Drawn.of(81, 58, 92),
                new Finding(Finding.Kind.AT_LEAST, 12))),
        List.of(
            new OtherDate(
                "Crossbred ewes, joined late on " + paddock,
                new Joining(Month.FEBRUARY, 16, 7),
                Drawn.of(90, 5, 240),
                Drawn.of(8_000, 500, 21_000))),
        IntStream.range(0, 12)
            .mapToObj(
                i ->
                    new DoseMonth(
                        Month.of(i + 1),
                        i < 3
                            ? Drawn.of(0.01, 0, 0.05)
                            : Drawn.of(0.2 + i * 0.01, 0.08 + i * 0.005, 0.55 + i * 0.01)))
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

  /**
   * @param factor every sum but those of the paddocks times this
   */
  static PlanResult plan(List<PaddockResult> paddocks, double factor) {
    List<PlanYear> years = new ArrayList<>();
    double running = 0;
    for (int i = 0; i < 15; i++) {
      double cost = i == 0 ? 21_300 : i == 1 ? 16_800 : i == 6 ? 2_400 : 0;
      cost *= factor;
      double labour = cost / 10;
      double feed = factor * (i < 2 ? -2_900 : Math.min(6_900, 1_400 * i));
      double lambs = factor * (i < 2 ? 600 : 5_200);
      double other = factor * 300;
      double net = feed + lambs + other - cost;
      running += net;
      years.add(
          new PlanYear(
              2027 + i,
              net * Math.pow(1.06, -i),
              i == 0
                  ? List.of(
                      work(Work.Kind.CROP, "Creek Flat"), work(Work.Kind.STOP_SEED_SET, "Woolshed"))
                  : i == 1
                      ? List.of(work(Work.Kind.SOW, "Creek Flat"), work(Work.Kind.BEGIN, "Red Gum"))
                      : List.of(),
              cost - labour,
              labour,
              feed,
              lambs,
              0,
              other,
              0,
              other,
              net,
              running,
              -9_000 * factor,
              net - 9_000 * factor,
              40 * factor,
              30 * factor,
              0.74 - 0.03 * Math.min(i, 10)));
    }
    double gain = years.stream().mapToDouble(PlanYear::mean).sum();
    double ofPaddocks = paddocks.stream().mapToDouble(paddock -> paddock.gain().mean()).sum();
    double cost = paddocks.stream().mapToDouble(paddock -> paddock.cost().mean()).sum();
    return new PlanResult(
        new Calls(
            count(paddocks, Call.ACT),
            count(paddocks, Call.KEEP_OFF),
            count(paddocks, Call.KEEP),
            count(paddocks, Call.UNDECIDED),
            (int) paddocks.stream().filter(paddock -> !paddock.sure().orElse(true)).count(),
            0),
        false,
        order(paddocks),
        84.5,
        Drawn.of(cost, 0.8 * cost, 1.3 * cost),
        new Spread(gain, -18_000 * factor, 138_000 * factor, 0.84, 0),
        1_400 * factor,
        0.9 * gain,
        160_000 * factor,
        List.of(
            new GainPart(MoneyKind.LAMBS, gain + 21_000 * factor),
            new GainPart(MoneyKind.FEED, 14_000 * factor),
            new GainPart(MoneyKind.CROPS, 0),
            new GainPart(MoneyKind.COSTS, -31_000 * factor),
            new GainPart(MoneyKind.LABOUR, -4_000 * factor),
            new GainPart(MoneyKind.END_VALUE, 0)),
        years,
        List.of(),
        List.of(),
        new PlanResult.Shared(gain - ofPaddocks),
        new Spread(0.7 * gain, -9_000, 92_000, 0.86, 0),
        Optional.of(
            new PlanResult.Careful(
                80_000,
                List.of(choice()),
                new Spread(0.8 * gain, -7_000, 88_000, 0.9, 0),
                0.75 * gain,
                900)),
        new PlanResult.RateEnds(4, 1.2 * gain, 9, 0.7 * gain),
        Drawn.of(5_300, -1_900, 14_200).times(factor),
        SamplePaddocks.returns(16.1, 9.9, 8, 1.9),
        Drawn.of(39_300, 21_000, 58_000).times(factor),
        2028,
        howFound(),
        Optional.empty());
  }

  private static Choice choice() {
    return new Choice(
        "Red Gum", "crop-resow", "crop for two seasons, then resow", OptionalInt.of(2028));
  }

  static HowFound howFound() {
    return new HowFound(
        3,
        1_250,
        260,
        List.of(new HowFound.NearEqual(choice(), 20)),
        120,
        List.of(),
        List.of(new LiftedLimit(PlanLimit.MONEY, 3_000)),
        List.of(),
        OptionalDouble.empty());
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
        new HeldFixed("length of pregnancy", 150, 150, "d", Evidence.MEMORY, "", SetBy.DEFAULT, ""),
        new HeldFixed(
            "digestibility of green feed, by month",
            0.5,
            0.77,
            "fraction",
            Evidence.INFERRED,
            "",
            SetBy.USER,
            "digestibility of green feed above that of the table"));
  }
}
