package swardcase.sheet;

import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import swardcase.chance.Range;
import swardcase.report.LeafTestResult;
import swardcase.report.PaddockResult;
import swardcase.report.PaddockResult.NamedShare;
import swardcase.report.PaddockResult.OptionResult;
import swardcase.sward.LeafAgreement;

/** Invented paddock results: a third resown, a third kept with ewes off, a third kept. */
final class SamplePaddocks {

  private SamplePaddocks() {}

  static PaddockResult paddock(int i, String name) {
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
        sow
            ? Optional.of(
                new LeafTestResult(
                    Range.of(0.5, 0.94, 1.4), Range.of(0.02, 0.12, 0.31), LeafAgreement.Side.ABOVE))
            : Optional.empty(),
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
            "over 15",
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
}
