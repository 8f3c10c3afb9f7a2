package swardcase.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import swardcase.chance.Range;
import swardcase.evidence.Assumption;
import swardcase.evidence.Evidence;
import swardcase.evidence.SetBy;
import swardcase.report.FeedMonth;
import swardcase.report.HeldFixed;
import swardcase.report.PlanResult;
import swardcase.report.PlanResult.PlanYear;
import swardcase.report.Reproduction;
import swardcase.report.Reproduction.DoseMonth;
import swardcase.report.Reproduction.MobResult;
import swardcase.report.Swing;
import swardcase.report.WinterFeed;

/** Parts of invented reports that do not depend on the paddocks. */
final class SampleParts {

  private static final List<String> MONTHS =
      List.of("Jan", "Feb", "Mar", "Apr", "May", "Jun", "Jul", "Aug", "Sep", "Oct", "Nov", "Dec");

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
        "Outdated clover costs this farm about 26 t of oats each winter, but the range is wide"
            + " because the winter growth of old cultivars is poorly known.");
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

  static Reproduction reproduction(String paddock) {
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

  static PlanResult plan() {
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
        51_200,
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
            "Next best: leave Red Gum out, A$ 2,000 less."),
        Optional.empty());
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
    for (int i = 0; i < 8; i++) {
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
        new HeldFixed("length of pregnancy", "150", "d", Evidence.MEMORY, "", SetBy.DEFAULT),
        new HeldFixed(
            "digestibility of green feed, by month",
            "0.5 to 0.77",
            "fraction",
            Evidence.INFERRED,
            "",
            SetBy.USER));
  }
}
