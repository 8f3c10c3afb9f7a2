package swardcase.sheet;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import swardcase.chance.Drawn;
import swardcase.chance.Range;
import swardcase.chance.Spread;
import swardcase.decision.NotSure;
import swardcase.farm.UseRule;
import swardcase.outcome.Cause;
import swardcase.outcome.MoneyKind;
import swardcase.report.Call;
import swardcase.report.Credit;
import swardcase.report.GainPart;
import swardcase.report.KnownClover;
import swardcase.report.KnownClover.FormononetinFrom;
import swardcase.report.KnownClover.NamedShare;
import swardcase.report.PaddockResult;
import swardcase.report.PaddockResult.KeptOff;
import swardcase.report.PaddockResult.OestrogenRating;
import swardcase.report.PaddockResult.OptionResult;
import swardcase.report.Reason;
import swardcase.report.Returns;
import swardcase.report.Step;
import swardcase.report.WhyNot;
import swardcase.search.PlanLimit;
import swardcase.sward.LeafAgreement;

/** Invented paddock results: a third resown, a third kept with ewes off, a third kept. */
final class SamplePaddocks {

  private SamplePaddocks() {}

  /**
   * @param factor every sum of the plan times this
   */
  static PaddockResult paddock(int i, String name, double factor) {
    boolean sow = i % 3 == 0;
    boolean hold = i % 3 == 1;
    double area = 18 + (i * 7) % 23 + (i % 4 == 0 ? 0.5 : 0);
    boolean close = !sow && !hold && i % 4 != 3;
    OptionalInt start = sow || hold ? OptionalInt.of(2027 + i % 2) : OptionalInt.empty();
    Spread gain =
        sow
            ? gain(
                factor,
                11_400 + 900 * (i % 7),
                -4_300 - 200 * (i % 5),
                31_800 + 1_000 * (i % 6),
                i % 2 == 0 ? 0.82 : 0.58)
            : hold ? gain(factor, 2_100, -300, 9_800, 0.88) : gain(factor, 0, 0, 0, 0);
    return new PaddockResult(
        name,
        area,
        clover(sow, i % 5 != 4),
        sow ? Optional.of(Drawn.of(0.94, 0.5, 1.4)) : Optional.empty(),
        sow ? OestrogenRating.SEVERE : hold ? OestrogenRating.MARKED : OestrogenRating.LITTLE,
        Drawn.of(132, 0, 310),
        Drawn.of(41, 19, 74),
        Drawn.of(36, 15, 68),
        Drawn.of(110, 0, 280),
        Drawn.of(22, 0, 60),
        Drawn.of(18_000, 0, 41_000),
        Drawn.of(1.9, 0, 4.4),
        Drawn.of(610, 0, 1_500),
        sow ? Call.ACT : hold ? Call.KEEP_OFF : close ? Call.UNDECIDED : Call.KEEP,
        sow || hold ? Optional.of(i % 2 == 0) : Optional.empty(),
        (sow || hold) && i % 2 == 1 ? Optional.of(NotSure.REGRET) : Optional.empty(),
        List.of(),
        i == 3,
        sow ? "crop-resow" : hold ? "hold-off" : "keep",
        sow ? "crop, then resow" : hold ? "keep, ewes off" : "keep",
        start,
        start.isPresent() ? OptionalInt.of(start.getAsInt() + 3) : start,
        hold
            ? Optional.of(new KeptOff(UseRule.ALL_EWES, UseRule.When.BEFORE_JOINING))
            : Optional.empty(),
        new Reason(
            sow || hold
                ? Reason.Kind.GAINS
                : close ? Reason.Kind.CLOSE : Reason.Kind.NOTHING_TO_GAIN,
            Optional.of(sow ? "crop-resow" : hold ? "hold-off" : "oversow"),
            OptionalDouble.of(185 * area)),
        sow && i % 2 == 1 ? Optional.of("hold-off") : Optional.empty(),
        sow ? Drawn.of(9_300, 7_100, 12_200).times(factor) : Drawn.exactly(0),
        gain,
        sow ? parts(gain.mean(), factor) : List.of(new GainPart(MoneyKind.LAMBS, gain.mean())),
        credit(gain),
        options(sow, hold, gain, start, factor),
        List.of());
  }

  /** Forty plants and, where it is sown, a leaf test; or nothing at all. */
  static KnownClover clover(boolean tested, boolean looked) {
    return new KnownClover(
        looked ? 40 : 0,
        looked
            ? List.of(
                new NamedShare("Dwalganup or Geraldton", Range.of(0.31, 0.46, 0.61)),
                new NamedShare("Mount Barker", Range.of(0.15, 0.28, 0.43)),
                new NamedShare("unidentified old", Range.of(0.05, 0.15, 0.28)),
                new NamedShare("other", Range.of(0.02, 0.11, 0.24)))
            : List.of(),
        looked ? 0.11 : 1,
        Optional.of(Range.of(0.61, 0.78, 0.9)).filter(share -> looked),
        Optional.of(Range.of(0.3, 0.55, 0.74)).filter(share -> looked),
        Optional.of(Range.of(0.08, 0.23, 0.39)).filter(share -> looked),
        0.2,
        looked ? OptionalDouble.of(63.4) : OptionalDouble.empty(),
        tested ? FormononetinFrom.LEAF_TEST : FormononetinFrom.UNKNOWN,
        tested ? OptionalDouble.of(0.94) : OptionalDouble.empty(),
        tested
            ? Optional.of(
                new LeafAgreement(
                    Range.of(0.5, 0.94, 1.4), Range.of(0.02, 0.12, 0.31), LeafAgreement.Side.ABOVE))
            : Optional.empty());
  }

  /** Lambs and feed gained, costs and labour paid: together the gain. */
  private static List<GainPart> parts(double gain, double factor) {
    return List.of(
        new GainPart(MoneyKind.LAMBS, gain + 1_300 * factor),
        new GainPart(MoneyKind.FEED, 6_500 * factor),
        new GainPart(MoneyKind.CROPS, 0),
        new GainPart(MoneyKind.COSTS, -7_100 * factor),
        new GainPart(MoneyKind.LABOUR, -700 * factor),
        new GainPart(MoneyKind.END_VALUE, 0));
  }

  private static List<OptionResult> options(
      boolean sow, boolean hold, Spread gain, OptionalInt start, double factor) {
    Spread ofHolding = hold ? gain : gain(factor, 2_100, -300, 9_800, 0.88);
    Spread ofOversowing = gain(factor, -3_900, -8_400, 900, 0.12);
    Spread ofCropping = sow ? gain : gain(factor, hold ? 1_200 : 2_300, -11_000, 7_400, 0.46);
    return List.of(
        new OptionResult(
            "hold-off",
            "keep, hold joining ewes off",
            OptionalInt.of(2027),
            2027,
            Drawn.exactly(0),
            ofHolding,
            credit(ofHolding),
            Drawn.of(8, -1, 36),
            step("keep", "keep", ofHolding),
            returns(0, 0, 1, 0),
            List.of(),
            List.of(),
            List.of(),
            false,
            false,
            hold,
            false,
            hold ? Optional.empty() : Optional.of(why(sow, ofHolding.mean(), gain))),
        new OptionResult(
            "oversow",
            "oversow into the stand",
            OptionalInt.of(2027),
            2028,
            Drawn.of(185, 130, 260),
            ofOversowing,
            credit(ofOversowing),
            Drawn.of(-14, -29, 3),
            step("hold-off", "keep, hold joining ewes off", ofOversowing),
            returns(0, 1.4, 0, 0.4),
            List.of(),
            List.of(0.8, 0.78, 0.8, 0.79, 0.8, 0.81),
            List.of(0.5, 0.5, 0.5, 0.5, 0.49, 0.49),
            true,
            false,
            false,
            true,
            Optional.of(why(WhyNot.Kind.LOSES, ofOversowing.mean(), Optional.empty()))),
        new OptionResult(
            "crop-resow",
            "crop for two seasons, then resow",
            sow ? start : OptionalInt.of(2028),
            sow ? start.getAsInt() + 3 : 2031,
            Drawn.of(385, 290, 510),
            ofCropping,
            credit(ofCropping),
            Drawn.of(48, -20, 133),
            step("hold-off", "keep, hold joining ewes off", ofCropping),
            sow ? returns(17.2, 9.6, 7, 1.8) : returns(3.1, 4, 14, 0.8),
            List.of(),
            List.of(0.78, 0.7, 0.5, 0.12, 0.13, 0.15, 0.19, 0.24),
            List.of(0.5, 0.5, 0.5, 0.3, 0.43, 0.48, 0.49, 0.5),
            true,
            false,
            sow,
            false,
            sow ? Optional.empty() : Optional.of(why(hold, ofCropping.mean(), gain))));
  }

  private static List<Credit> credit(Spread gain) {
    return Arrays.stream(Cause.values())
        .map(cause -> new Credit(cause, cause == Cause.WHO_GRAZES_IT ? gain.mean() : 0))
        .toList();
  }

  private static Spread gain(double factor, double mean, double low, double high, double pays) {
    return new Spread(mean * factor, low * factor, high * factor, pays, 0);
  }

  private static Step step(String over, String name, Spread gain) {
    Spread more =
        new Spread(gain.mean() - 500, gain.low() - 500, gain.high(), gain.chancePays() / 2, 0);
    return new Step(over, name, more, 0.3, true);
  }

  /** It gains less than what is done, or keeps not within a limit where nothing is. */
  private static WhyNot why(boolean acts, double gain, Spread planned) {
    return acts
        ? why(WhyNot.Kind.LESS, gain, Optional.of(planned))
        : why(WhyNot.Kind.LIMIT, gain, Optional.empty());
  }

  private static WhyNot why(WhyNot.Kind kind, double gain, Optional<Spread> than) {
    return new WhyNot(
        kind,
        gain,
        than.map(planned -> "the action chosen"),
        than.map(planned -> OptionalDouble.of(planned.mean())).orElse(OptionalDouble.empty()),
        kind == WhyNot.Kind.LIMIT ? Optional.of(PlanLimit.MONEY) : Optional.empty());
  }

  /** Returns in which nothing stands for none. */
  static Returns returns(double irr, double mirr, double payback, double benefitCost) {
    return new Returns(
        new Returns.Rate(irr > 0 ? Returns.Status.VALUE : Returns.Status.NONE, orNone(irr)),
        orNone(mirr),
        orNone(payback),
        orNone(benefitCost));
  }

  private static OptionalDouble orNone(double value) {
    return value > 0 ? OptionalDouble.of(value) : OptionalDouble.empty();
  }
}
