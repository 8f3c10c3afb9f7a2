package swardcase.sheet;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import swardcase.chance.Range;
import swardcase.report.Call;
import swardcase.report.LeafTestResult;
import swardcase.report.PaddockResult;
import swardcase.report.PaddockResult.FormononetinFrom;
import swardcase.report.PaddockResult.GainParts;
import swardcase.report.PaddockResult.NamedShare;
import swardcase.report.PaddockResult.OestrogenRating;
import swardcase.report.PaddockResult.OptionResult;
import swardcase.report.PaddockResult.WhyNot;
import swardcase.report.Reason;
import swardcase.report.Returns;
import swardcase.sward.LeafAgreement;

/** Invented paddock results: a third resown, a third kept with ewes off, a third kept. */
final class SamplePaddocks {

  private SamplePaddocks() {}

  static PaddockResult paddock(int i, String name) {
    boolean sow = i % 3 == 0;
    boolean hold = i % 3 == 1;
    double area = 18 + (i * 7) % 23 + (i % 4 == 0 ? 0.5 : 0);
    boolean close = !sow && !hold && i % 4 != 3;
    OptionalInt start = sow || hold ? OptionalInt.of(2027 + i % 2) : OptionalInt.empty();
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
        sow ? FormononetinFrom.LEAF_TEST : FormononetinFrom.UNKNOWN,
        sow
            ? Optional.of(
                new LeafTestResult(
                    Range.of(0.5, 0.94, 1.4), Range.of(0.02, 0.12, 0.31), LeafAgreement.Side.ABOVE))
            : Optional.empty(),
        sow ? OestrogenRating.SEVERE : hold ? OestrogenRating.MARKED : OestrogenRating.LITTLE,
        Range.of(0, 132, 310),
        Range.of(0, 18_000, 41_000),
        Range.of(0, 1.9, 4.4),
        Range.of(0, 610, 1_500),
        sow ? Call.ACT : hold ? Call.KEEP_OFF : close ? Call.UNDECIDED : Call.KEEP,
        sow ? "crop-resow" : hold ? "hold-off" : "keep",
        sow ? "crop, then resow" : hold ? "keep, ewes off" : "keep",
        start,
        new Reason(
            sow || hold
                ? Reason.Kind.PAYS
                : close ? Reason.Kind.CLOSE : Reason.Kind.NOTHING_TO_GAIN,
            Optional.of(sow ? "crop-resow" : hold ? "hold-off" : "oversow"),
            OptionalDouble.of(0.78),
            OptionalDouble.of(185 * area)),
        close ? Optional.of("price of oats above A$ 410/t") : Optional.empty(),
        sow ? Range.of(7_100, 9_300, 12_200) : Range.exactly(0),
        npv,
        npv,
        sow || hold
            ? Optional.of(new GainParts(i == 0 ? 9_000 : 0, 0, sow ? 26_000 : 0))
            : Optional.empty(),
        900,
        List.of(0.0, -9_300.0, 1_200.0, 2_900.0),
        options(sow, hold, npv, start));
  }

  private static List<OptionResult> options(
      boolean sow, boolean hold, Range npv, OptionalInt start) {
    OptionalDouble planned = sow || hold ? OptionalDouble.of(npv.likely()) : OptionalDouble.empty();
    WhyNot.Kind kind = sow || hold ? WhyNot.Kind.LESS : WhyNot.Kind.LIMITS;
    Optional<WhyNot> less = Optional.of(new WhyNot(kind, planned));
    return List.of(
        new OptionResult(
            "hold-off",
            "keep, hold joining ewes off",
            OptionalInt.of(2027),
            Range.exactly(0),
            Range.of(-300, 2_100, 9_800),
            Range.of(-1, 8, 36),
            returns(0, 0, 1, 0, 0),
            List.of(),
            List.of(),
            hold,
            false,
            hold ? Optional.empty() : less),
        new OptionResult(
            "oversow",
            "oversow into the stand",
            OptionalInt.of(2027),
            Range.of(130, 185, 260),
            Range.of(-8_400, -3_900, 900),
            Range.of(-29, -14, 3),
            returns(0, 1.4, 0, 3_900, 0.4),
            List.of(),
            List.of(0.8, 0.78, 0.8, 0.79, 0.8, 0.81),
            false,
            true,
            Optional.of(new WhyNot(WhyNot.Kind.LOSES, planned))),
        new OptionResult(
            "crop-resow",
            "crop for two seasons, then resow",
            sow ? start : OptionalInt.of(2028),
            Range.of(290, 385, 510),
            sow ? npv : Range.of(-11_000, 2_300, 7_400),
            Range.of(-20, 48, 133),
            sow ? returns(17.2, 9.6, 7, 9_300, 1.8) : returns(3.1, 4, 14, 9_300, 0.8),
            List.of(),
            List.of(0.78, 0.7, 0.5, 0.12, 0.13, 0.15, 0.19, 0.24),
            sow,
            false,
            sow ? Optional.empty() : less));
  }

  /** Returns in which nothing stands for none. */
  static Returns returns(
      double irr, double mirr, double payback, double peakDebt, double benefitCost) {
    return new Returns(
        new Returns.Rate(irr > 0 ? Returns.Status.VALUE : Returns.Status.NONE, orNone(irr)),
        orNone(mirr),
        orNone(payback),
        peakDebt,
        orNone(benefitCost));
  }

  private static OptionalDouble orNone(double value) {
    return value > 0 ? OptionalDouble.of(value) : OptionalDouble.empty();
  }
}
