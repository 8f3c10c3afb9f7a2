package swardcase.report;

import java.time.LocalDate;
import java.time.MonthDay;
import java.time.format.TextStyle;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.IntStream;
import swardcase.farm.Farm;
import swardcase.farm.HalfMonths;
import swardcase.farm.Mob;
import swardcase.joining.JoiningPlan;
import swardcase.joining.JoiningPlan.Policy;
import swardcase.report.JoiningReport.Cell;
import swardcase.report.JoiningReport.DatePoint;
import swardcase.report.JoiningReport.Gate;
import swardcase.report.JoiningReport.GroupMoves;
import swardcase.report.JoiningReport.MobCalendar;
import swardcase.report.JoiningReport.Move;
import swardcase.report.JoiningReport.PaddockRow;
import swardcase.report.JoiningReport.PolicyResult;
import swardcase.report.JoiningReport.Rating;
import swardcase.report.JoiningReport.YoungRow;
import swardcase.wording.Texts;
import swardcase.wording.Words;

/** Turns a joining plan into the tree of records that is printed and saved. */
public final class JoiningReportBuilder {

  /** Version of the layout of the result document. */
  public static final String SCHEMA_VERSION = "1.0";

  private static final double FEWEST_YOUNG_DAYS = 14;

  private final JoiningPlan plan;
  private final Farm farm;
  private final JoiningWords words;

  private JoiningReportBuilder(JoiningPlan plan) {
    this.plan = plan;
    farm = plan.farm();
    words = new JoiningWords(plan);
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
    return new JoiningReport(
        SCHEMA_VERSION,
        program,
        ReportBuilder.head(farm, date),
        headline(),
        plan.halfMonths().stream().map(words::halfMonth).toList(),
        IntStream.range(0, farm.mobs().size()).mapToObj(this::calendar).toList(),
        IntStream.range(0, farm.paddocks().size()).mapToObj(this::young).toList(),
        policies(),
        moves(),
        gates(),
        new SafeFeedWords(plan, words).safeFeed(),
        IntStream.range(0, HalfMonths.COUNT).mapToObj(this::datePoint).toList(),
        Texts.get("joining.notModelled"),
        Cautions.JOINING,
        notices,
        plan.model().inputs().all());
  }

  private String headline() {
    long shut = IntStream.range(0, farm.paddocks().size()).filter(this::isEverKeptOff).count();
    double worst = 0;
    boolean dry = true;
    for (int g = 0; g < farm.mobs().size(); g++) {
      double lost = plan.ewesNotInLamb(Policy.AS_NOW, g) / farm.mobs().get(g).ewes();
      worst = Math.max(worst, 100 * lost);
      for (int p : plan.halfMonths()) {
        dry &= !plan.isRated(g, p) || words.isAnywhere(g, p);
      }
    }
    if (shut == 0 && worst >= plan.tellablePoints()) {
      return Texts.get("joining.headline.fewDays");
    }
    if (shut == 0) {
      return dry
          ? Texts.get("joining.headline.dry")
          : Texts.get("joining.headline.none", Words.exact(plan.tellablePoints()));
    }
    return Texts.get("joining.headline.keepOff", shut, farm.paddocks().size())
        + " "
        + gain(worst < plan.tellablePoints());
  }

  private String gain(boolean untold) {
    double spared = plan.lambs(Policy.AS_NOW).likely() - plan.lambs(Policy.PLAN).likely();
    if (spared < 1) {
      return Texts.get("joining.headline.noLambs");
    }
    String saved =
        Texts.get(
            "joining.headline.saves",
            Words.about(spared),
            Words.money(farm.currency(), plan.saved(Policy.PLAN)));
    return untold ? saved + " " + Texts.get("joining.headline.untold") : saved;
  }

  private boolean isEverKeptOff(int paddock) {
    for (int g = 0; g < farm.mobs().size(); g++) {
      for (int p : plan.halfMonths()) {
        if (plan.isRated(g, p) && plan.daysAllowed(g, p, paddock) == 0) {
          return true;
        }
      }
    }
    return false;
  }

  private MobCalendar calendar(int mob) {
    Mob of = farm.mobs().get(mob);
    return new MobCalendar(
        of.name(),
        of.ewes(),
        words.joining(of),
        IntStream.range(0, farm.paddocks().size()).mapToObj(i -> row(mob, i)).toList());
  }

  private PaddockRow row(int mob, int paddock) {
    return new PaddockRow(
        farm.paddocks().get(paddock).name(),
        plan.greenDose(paddock),
        plan.isUnknown(paddock),
        words.reason(paddock),
        plan.halfMonths().stream().map(p -> cell(mob, p, paddock)).toList());
  }

  private Cell cell(int mob, int p, int paddock) {
    int in = plan.daysIn(p);
    int days = plan.daysAllowed(mob, p, paddock);
    Rating rating =
        !plan.isRated(mob, p)
            ? Rating.NOT_RATED
            : days == in ? Rating.OPEN : days == 0 ? Rating.KEEP_OFF : Rating.LIMITED;
    String label =
        switch (rating) {
          case OPEN -> Texts.get("joining.open");
          case LIMITED -> Texts.get("joining.days", days);
          case KEEP_OFF -> Texts.get("joining.keepOff");
          case NOT_RATED -> Texts.get("none");
        };
    return new Cell(
        rating,
        days,
        in,
        plan.points(mob, p, paddock),
        rating == Rating.NOT_RATED ? 0 : 100 * plan.chanceRight(mob, p, paddock),
        label);
  }

  private YoungRow young(int paddock) {
    double days = plan.youngDaysAllowed(paddock);
    String label =
        plan.isUnknown(paddock) && plan.barrenPercent(paddock).high() >= plan.tellablePoints()
            ? Texts.get("joining.young.test")
            : days >= plan.greenDays()
                ? Texts.get("joining.open")
                : days < FEWEST_YOUNG_DAYS
                    ? Texts.get("joining.young.keepOff")
                    : Texts.get("joining.young.upTo", Words.whole(days));
    return new YoungRow(
        farm.paddocks().get(paddock).name(), plan.barrenPercent(paddock), days, label);
  }

  private List<PolicyResult> policies() {
    List<PolicyResult> results = new ArrayList<>();
    String[] names = {"joining.policy.asNow", "joining.policy.avoid", "joining.policy.plan"};
    for (Policy policy : Policy.values()) {
      double mj = plan.boughtMj(policy);
      results.add(
          new PolicyResult(
              Texts.get(names[policy.ordinal()]),
              plan.lambs(policy),
              plan.lambMoney(policy),
              negligible(mj * plan.likely().tonnesPerMj()),
              negligible(mj * plan.likely().pricePerMj()),
              plan.saved(policy)));
    }
    return results;
  }

  /** What is left by rounding is nothing. */
  private static double negligible(double value) {
    return Math.abs(value) < 1e-6 ? 0 : value;
  }

  private List<GroupMoves> moves() {
    List<GroupMoves> all = new ArrayList<>();
    for (int group = 0; group < plan.groups(); group++) {
      boolean ewes = group < farm.mobs().size();
      String name =
          ewes
              ? farm.mobs().get(group).name()
              : farm.otherStock().get(group - farm.mobs().size()).name();
      List<Move> moves = new ArrayList<>();
      for (int k = 0; k < plan.halfMonths().size(); k++) {
        double tonnes = plan.boughtMj(group, k) * plan.likely().tonnesPerMj();
        moves.add(new Move(words.where(group, k), negligible(tonnes)));
      }
      all.add(new GroupMoves(name, ewes, moves));
    }
    return all;
  }

  private List<Gate> gates() {
    return IntStream.range(0, farm.paddocks().size())
        .filter(this::isEverKeptOff)
        .mapToObj(
            i ->
                new Gate(
                    farm.paddocks().get(i).name(),
                    plan.halfMonths().stream().map(p -> words.shutTo(i, p)).toList()))
        .toList();
  }

  private DatePoint datePoint(int k) {
    MonthDay date = plan.date(k);
    String label =
        date.getDayOfMonth()
            + " "
            + date.getMonth().getDisplayName(TextStyle.SHORT, Locale.ENGLISH);
    return new DatePoint(
        label,
        IntStream.range(0, farm.mobs().size()).mapToObj(g -> plan.pointsAtDate(g, k)).toList());
  }
}
