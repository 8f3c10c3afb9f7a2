package swardcase.report;

import java.time.Month;
import java.time.MonthDay;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import swardcase.chance.Drawn;
import swardcase.decision.Decision;
import swardcase.decision.FarmMeasures.OfFarm;
import swardcase.decision.FarmMeasures.OfMob;
import swardcase.decision.FarmMeasures.OfMonth;
import swardcase.decision.FarmMeasures.OfPaddock;
import swardcase.farm.Farm;
import swardcase.farm.Mob;
import swardcase.report.PaddockResult.OestrogenRating;
import swardcase.report.Reproduction.DoseMonth;
import swardcase.report.Reproduction.Finding;
import swardcase.report.Reproduction.HardestHit;
import swardcase.report.Reproduction.Joining;
import swardcase.report.Reproduction.MobResult;
import swardcase.report.Reproduction.OtherDate;

/**
 * What the oestrogen of a paddock or of the flock means.
 *
 * <p>A paddock is rated by the dose of a ewe that eats nothing but its green feed: below 0.15 % of
 * intake nothing could be told from normal variation, and at the dose that halves conception in a
 * cycle the effect is called severe (both inferred; see the dose-response table).
 */
final class OestrogenBuilder {

  static final double TELLABLE_DOSE = 0.15;
  private static final double DRY_FEED_DOSE = 0.02;

  private final Decision decision;
  private final Farm farm;
  private final double severeDose;
  private final double reportLimitDose;
  private final double tellablePoints;

  /** Reads the limits of the ratings from the tables. */
  OestrogenBuilder(Decision decision) {
    this.decision = decision;
    farm = decision.model().farm();
    severeDose = table("oestrogen.d50");
    reportLimitDose = table("oestrogen.report-limit-dose");
    tellablePoints = table("oestrogen.distinguishable-points");
  }

  private double table(String key) {
    return decision.model().tables().parameter(key).likely();
  }

  /** Dose, % of intake, from which a rating is severe. */
  double severeDose() {
    return severeDose;
  }

  /** The rating of a paddock. */
  OestrogenRating rating(int paddock) {
    if (!clover(paddock).isOestrogenKnown()) {
      return OestrogenRating.UNKNOWN;
    }
    Drawn dose = decision.of(paddock, OfPaddock.GREEN_DOSE);
    if (dose.mean() >= severeDose) {
      return OestrogenRating.SEVERE;
    }
    if (dose.mean() >= TELLABLE_DOSE) {
      return OestrogenRating.MARKED;
    }
    return dose.high() >= TELLABLE_DOSE ? OestrogenRating.SLIGHT : OestrogenRating.LITTLE;
  }

  /** What is known of a paddock's clover. */
  KnownClover clover(int paddock) {
    return KnownClover.of(decision.model(), decision.likely(), paddock);
  }

  /** The effect on the flock. */
  Reproduction flock() {
    List<MobResult> mobs = IntStream.range(0, farm.mobs().size()).mapToObj(this::mob).toList();
    double dose = mobs.stream().mapToDouble(mob -> mob.doseAtJoining().mean()).max().orElse(0);
    Drawn unaffected = decision.of(OfFarm.UNAFFECTED_PERCENT);
    Drawn pregnant = decision.of(OfFarm.PREGNANT_PERCENT);
    Finding finding =
        mobs.isEmpty() ? new Finding(Finding.Kind.NO_EWES, 0) : finding(unaffected, pregnant, dose);
    List<DoseMonth> months =
        IntStream.range(0, 12)
            .mapToObj(m -> new DoseMonth(Month.of(m + 1), decision.of(m, OfMonth.DOSE)))
            .toList();
    return new Reproduction(
        farm.ewesJoined(),
        unaffected,
        pregnant,
        decision.of(OfFarm.STERILE_PERCENT),
        decision.of(OfFarm.LAMBS_LOST),
        decision.of(OfFarm.LAMB_COST),
        finding,
        tellablePoints,
        !mobs.isEmpty() && dose < DRY_FEED_DOSE,
        finding.kind() == Finding.Kind.NOT_TOLD ? hardestHit(mobs) : Optional.empty(),
        mobs,
        otherDates(),
        months,
        months.stream()
            .max(Comparator.comparingDouble(month -> month.formononetinPercentOfIntake().mean()))
            .orElseThrow()
            .month());
  }

  private MobResult mob(int g) {
    Mob mob = farm.mobs().get(g);
    Drawn dose = decision.of(g, OfMob.DOSE_AT_JOINING);
    Drawn unaffected = decision.of(g, OfMob.UNAFFECTED_PERCENT);
    Drawn pregnant = decision.of(g, OfMob.PREGNANT_PERCENT);
    return new MobResult(
        mob.name(),
        mob.ewes(),
        joining(mob, mob.joiningStart()),
        dose,
        unaffected,
        pregnant,
        finding(unaffected, pregnant, dose.mean()));
  }

  private Finding finding(Drawn unaffected, Drawn pregnant, double dose) {
    double points = unaffected.mean() - pregnant.mean();
    if (points < tellablePoints) {
      return new Finding(Finding.Kind.NOT_TOLD, points);
    }
    boolean beyondTrials = dose > reportLimitDose;
    return new Finding(beyondTrials ? Finding.Kind.AT_LEAST : Finding.Kind.ABOUT, points);
  }

  /** The mob that loses most of those that lose what can be told. */
  private static Optional<HardestHit> hardestHit(List<MobResult> mobs) {
    return mobs.stream()
        .filter(mob -> mob.statement().kind() != Finding.Kind.NOT_TOLD)
        .map(mob -> new HardestHit(mob.name(), mob.statement().points()))
        .max(Comparator.comparingDouble(HardestHit::points));
  }

  /** Those that save at least one lamb for 100 ewes, and one in all. */
  private List<OtherDate> otherDates() {
    List<OtherDate> dates = new ArrayList<>();
    for (int g = 0; g < farm.mobs().size(); g++) {
      Mob mob = farm.mobs().get(g);
      Optional<MonthDay> date = decision.otherDate(g);
      Drawn lambs = decision.of(g, OfMob.OTHER_DATE_LAMBS);
      if (date.isPresent() && lambs.mean() >= Math.max(1, mob.ewes() / 100.0)) {
        dates.add(
            new OtherDate(
                mob.name(),
                joining(mob, date.get()),
                lambs,
                decision.of(g, OfMob.OTHER_DATE_WORTH)));
      }
    }
    return dates;
  }

  private static Joining joining(Mob mob, MonthDay from) {
    return new Joining(from.getMonth(), from.getDayOfMonth(), mob.joiningWeeks().likely());
  }
}
