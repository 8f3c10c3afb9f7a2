package swardcase.report;

import java.time.LocalDate;
import java.time.MonthDay;
import java.util.ArrayList;
import java.util.DoubleSummaryStatistics;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.IntStream;
import swardcase.farm.Farm;
import swardcase.farm.HalfMonths;
import swardcase.farm.Mob;
import swardcase.farm.Paddock;
import swardcase.joining.JoiningPlan;
import swardcase.joining.JoiningPlan.Policy;
import swardcase.report.JoiningReport.Answer;
import swardcase.report.JoiningReport.Cell;
import swardcase.report.JoiningReport.DateEnds;
import swardcase.report.JoiningReport.DatePoint;
import swardcase.report.JoiningReport.Finding;
import swardcase.report.JoiningReport.Gate;
import swardcase.report.JoiningReport.HalfMonth;
import swardcase.report.JoiningReport.MobCalendar;
import swardcase.report.JoiningReport.PaddockRow;
import swardcase.report.JoiningReport.PolicyResult;
import swardcase.report.JoiningReport.Rating;
import swardcase.report.JoiningReport.Reason;
import swardcase.report.JoiningReport.YoungRating;
import swardcase.report.JoiningReport.YoungRow;
import swardcase.sward.Composition;
import swardcase.tables.Cultivar;

/** Turns a joining plan into the tree of records that is printed and saved. */
public final class JoiningReportBuilder {

  /** Version of the layout of the result document. */
  public static final String SCHEMA_VERSION = "2.0";

  private static final double FEWEST_YOUNG_DAYS = 14;

  private final JoiningPlan plan;
  private final Farm farm;
  private final JoiningMovesBuilder moves;

  private JoiningReportBuilder(JoiningPlan plan) {
    this.plan = plan;
    farm = plan.farm();
    moves = new JoiningMovesBuilder(plan);
  }

  /**
   * The report.
   *
   * @param plan the plan as numbers
   * @param program name and version of the program
   * @param date the date of the sheet
   * @param notices what was odd or missing in the farm folder
   */
  public static JoiningReport build(
      JoiningPlan plan, String program, LocalDate date, List<String> notices) {
    return new JoiningReportBuilder(plan).build(program, date, notices);
  }

  private JoiningReport build(String program, LocalDate date, List<String> notices) {
    List<DatePoint> dates = IntStream.range(0, HalfMonths.COUNT).mapToObj(this::datePoint).toList();
    return new JoiningReport(
        SCHEMA_VERSION,
        program,
        ReportBuilder.head(farm, date),
        answer(),
        plan.instructions().stream()
            .map(
                of ->
                    new JoiningReport.FromPlan(
                        farm.paddocks().get(of.paddock()).name(),
                        of.action().key(),
                        of.action().name(),
                        of.isShut()))
            .toList(),
        plan.halfMonths().stream().map(p -> halfMonth(plan, p)).toList(),
        IntStream.range(0, farm.mobs().size()).mapToObj(this::calendar).toList(),
        IntStream.range(0, farm.paddocks().size()).mapToObj(this::young).toList(),
        policies(),
        moves.all(),
        gates(),
        SafeFeedBuilder.build(plan),
        dates,
        IntStream.range(0, farm.mobs().size()).mapToObj(g -> dateEnds(g, dates)).toList(),
        Cautions.JOINING,
        notices,
        plan.model().inputs().all());
  }

  /** First and last day of half-month {@code p}. */
  static HalfMonth halfMonth(JoiningPlan plan, int p) {
    boolean firstHalf = p % 2 == 0;
    int half = plan.daysIn(firstHalf ? p : p - 1);
    int from = firstHalf ? 1 : 1 + half;
    int to = firstHalf ? half : half + plan.daysIn(p);
    return new HalfMonth(
        MonthDay.of(HalfMonths.month(p), from), MonthDay.of(HalfMonths.month(p), to));
  }

  private Answer answer() {
    int shut = (int) IntStream.range(0, farm.paddocks().size()).filter(this::isEverKeptOff).count();
    double worst = 0;
    boolean nothingGreen = true;
    for (int g = 0; g < farm.mobs().size(); g++) {
      double lost = plan.ewesNotInLamb(Policy.AS_NOW, g) / farm.mobs().get(g).ewes();
      worst = Math.max(worst, 100 * lost);
      for (int p : plan.halfMonths()) {
        nothingGreen &= !plan.isRated(g, p) || moves.isAnywhere(g, p);
      }
    }
    Finding finding =
        shut > 0
            ? Finding.KEEP_OFF
            : worst >= plan.tellablePoints()
                ? Finding.FEW_DAYS
                : nothingGreen ? Finding.NOTHING_GREEN : Finding.NOTHING_TO_SHUT;
    return new Answer(
        finding,
        shut,
        farm.paddocks().size(),
        plan.lambs(Policy.AS_NOW).mean() - plan.lambs(Policy.PLAN).mean(),
        worst,
        plan.tellablePoints());
  }

  private boolean isEverKeptOff(int paddock) {
    return IntStream.range(0, farm.mobs().size())
        .anyMatch(g -> plan.halfMonths().stream().anyMatch(p -> isKeptOff(g, p, paddock)));
  }

  private boolean isKeptOff(int mob, int p, int paddock) {
    return plan.isRated(mob, p) && plan.daysAllowed(mob, p, paddock) == 0;
  }

  private MobCalendar calendar(int mob) {
    Mob of = farm.mobs().get(mob);
    return new MobCalendar(
        of.name(),
        of.ewes(),
        of.joiningStart(),
        of.joiningWeeks().likely(),
        IntStream.range(0, farm.paddocks().size()).mapToObj(i -> row(mob, i)).toList());
  }

  private PaddockRow row(int mob, int paddock) {
    List<Cell> cells = plan.halfMonths().stream().map(p -> cell(mob, p, paddock)).toList();
    KnownClover clover =
        KnownClover.of(
            farm.paddocks().get(paddock),
            plan.likely().composition(paddock),
            plan.model().tables());
    DoubleSummaryStatistics sure =
        cells.stream()
            .filter(cell -> cell.rating() != Rating.NOT_RATED)
            .mapToDouble(Cell::chanceRight)
            .summaryStatistics();
    return new PaddockRow(
        farm.paddocks().get(paddock).name(),
        plan.greenDose(paddock),
        clover,
        !clover.isOestrogenKnown()
            && cells.stream()
                .map(Cell::rating)
                .anyMatch(rating -> rating == Rating.LIMITED || rating == Rating.KEEP_OFF),
        reason(paddock, clover),
        sure.getMin(),
        sure.getMax(),
        cells);
  }

  private Cell cell(int mob, int p, int paddock) {
    int in = plan.daysIn(p);
    int days = plan.daysAllowed(mob, p, paddock);
    Rating rating =
        !plan.isRated(mob, p)
            ? Rating.NOT_RATED
            : days == in ? Rating.OPEN : days == 0 ? Rating.KEEP_OFF : Rating.LIMITED;
    return new Cell(
        rating,
        days,
        in,
        plan.points(mob, p, paddock),
        rating == Rating.NOT_RATED ? 0 : 100 * plan.chanceRight(mob, p, paddock));
  }

  private Reason reason(int paddock, KnownClover clover) {
    Paddock place = farm.paddocks().get(paddock);
    double cloverShare = place.cloverShare().likely();
    if (clover.formononetinFrom() != KnownClover.FormononetinFrom.CULTIVAR_TABLE) {
      return new Reason(Optional.empty(), OptionalDouble.empty(), cloverShare, place.waterlogged());
    }
    Composition composition = plan.likely().composition(paddock);
    int strongest = strongest(composition);
    return new Reason(
        Optional.of(composition.cultivar(strongest).name()),
        OptionalDouble.of(composition.likelyShare(strongest)),
        cloverShare,
        place.waterlogged());
  }

  /** The place of the cultivar that brings most formononetin. */
  private static int strongest(Composition composition) {
    int most = 0;
    for (int c = 1; c < composition.size(); c++) {
      most = brought(composition, c) > brought(composition, most) ? c : most;
    }
    return most;
  }

  private static double brought(Composition composition, int c) {
    Cultivar cultivar = composition.cultivar(c);
    double leaf = cultivar.formononetin().map(value -> value.likely()).orElse(0.0);
    return leaf * composition.likelyShare(c);
  }

  private YoungRow young(int paddock) {
    double days = plan.youngDaysAllowed(paddock);
    YoungRating rating =
        plan.isUnknown(paddock) && plan.barrenPercent(paddock).high() >= plan.tellablePoints()
            ? YoungRating.UNKNOWN
            : days >= plan.greenDays()
                ? YoungRating.OPEN
                : days < FEWEST_YOUNG_DAYS ? YoungRating.KEEP_OFF : YoungRating.LIMITED;
    return new YoungRow(
        farm.paddocks().get(paddock).name(), plan.barrenPercent(paddock), rating, days);
  }

  private List<PolicyResult> policies() {
    List<PolicyResult> results = new ArrayList<>();
    for (Policy policy : Policy.values()) {
      double mj = plan.boughtMj(policy);
      results.add(
          new PolicyResult(
              policy,
              plan.lambs(policy),
              plan.lambMoney(policy),
              negligible(mj * plan.likely().tonnesPerMj()),
              negligible(mj * plan.likely().pricePerMj()),
              plan.saved(policy)));
    }
    return results;
  }

  /** What is left by rounding is nothing. */
  static double negligible(double value) {
    return Math.abs(value) < 1e-6 ? 0 : value;
  }

  private List<Gate> gates() {
    return IntStream.range(0, farm.paddocks().size())
        .filter(this::isEverKeptOff)
        .mapToObj(
            i ->
                new Gate(
                    farm.paddocks().get(i).name(),
                    plan.halfMonths().stream().map(p -> keptOff(i, p)).toList()))
        .toList();
  }

  private List<String> keptOff(int paddock, int p) {
    return IntStream.range(0, farm.mobs().size())
        .filter(g -> isKeptOff(g, p, paddock))
        .mapToObj(g -> farm.mobs().get(g).name())
        .toList();
  }

  private DatePoint datePoint(int k) {
    List<Double> lost =
        IntStream.range(0, farm.mobs().size()).mapToObj(g -> plan.pointsAtDate(g, k)).toList();
    double most = lost.stream().mapToDouble(Double::doubleValue).max().orElse(0);
    return new DatePoint(plan.date(k), lost, most);
  }

  private DateEnds dateEnds(int mob, List<DatePoint> dates) {
    DatePoint best = dates.get(0);
    DatePoint worst = best;
    for (DatePoint date : dates) {
      worst = date.lost().get(mob) > worst.lost().get(mob) ? date : worst;
      best = date.lost().get(mob) < best.lost().get(mob) ? date : best;
    }
    return new DateEnds(
        farm.mobs().get(mob).name(),
        best.date(),
        best.lost().get(mob),
        worst.date(),
        worst.lost().get(mob));
  }
}
