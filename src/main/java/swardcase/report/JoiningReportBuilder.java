package swardcase.report;

import java.time.LocalDate;
import java.time.MonthDay;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.IntStream;
import swardcase.evidence.Assumption;
import swardcase.farm.Farm;
import swardcase.farm.HalfMonths;
import swardcase.farm.Mob;
import swardcase.farm.OtherStock;
import swardcase.farm.Paddock;
import swardcase.farm.SeasonGrowth;
import swardcase.farm.SeasonType;
import swardcase.farm.UseRule;
import swardcase.joining.ComingYear.Instruction;
import swardcase.joining.JoiningPlan;
import swardcase.joining.Stay;
import swardcase.report.JoiningReport.Answer;
import swardcase.report.JoiningReport.Break;
import swardcase.report.JoiningReport.MobRow;
import swardcase.report.JoiningReport.OtherRow;
import swardcase.report.JoiningReport.Reason;
import swardcase.report.JoiningReport.SeasonRow;
import swardcase.report.JoiningReport.Shut;
import swardcase.report.JoiningReport.StayRow;
import swardcase.report.JoiningReport.When;
import swardcase.report.JoiningReport.YoungRow;
import swardcase.report.KnownClover.FormononetinFrom;
import swardcase.sward.Composition;

/** Turns a joining plan into the tree of records that is printed and saved. */
public final class JoiningReportBuilder {

  /** Version of the layout of the result document. */
  public static final String SCHEMA_VERSION = "4.0";

  /** Feed bought for a stay that is not worth speaking of, tonnes. */
  private static final double LITTLE_FEED_TONNES = 0.5;

  private final JoiningPlan plan;
  private final Farm farm;

  private JoiningReportBuilder(JoiningPlan plan) {
    this.plan = plan;
    farm = plan.farm();
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
    boolean any = !plan.instructions().isEmpty();
    return new JoiningReport(
        SCHEMA_VERSION,
        program,
        ReportBuilder.head(farm, date),
        answer(),
        mobs().mapToObj(this::mob).toList(),
        plan.instructions().stream().map(this::shut).toList(),
        any ? seasons() : List.of(),
        youngEwes(),
        farm.otherStock().stream()
            .filter(OtherStock::mayMove)
            .map(stock -> new OtherRow(stock.name(), stock.head(), mostRiskyDays(stock)))
            .toList(),
        Cautions.JOINING,
        notices);
  }

  private static OptionalDouble mostRiskyDays(OtherStock stock) {
    return stock.mostRiskyDays().isPresent()
        ? OptionalDouble.of(stock.mostRiskyDays().get().likely())
        : OptionalDouble.empty();
  }

  private IntStream mobs() {
    return IntStream.range(0, farm.mobs().size());
  }

  private Answer answer() {
    return new Answer(
        (int) plan.instructions().stream().filter(of -> !of.isShut()).count(),
        farm.paddocks().size(),
        plan.lambsSaved(),
        plan.moneySaved(),
        mobs().mapToDouble(g -> 100 * plan.likely().shareLost(g)).max().orElse(0),
        plan.tellablePoints());
  }

  private static MonthDay lastDay(int p) {
    return p % 2 == 0
        ? MonthDay.of(HalfMonths.month(p), HalfMonths.start(p + 1).getDayOfMonth() - 1)
        : MonthDay.of(HalfMonths.month(p), HalfMonths.month(p).minLength());
  }

  private String paddock(int i) {
    return farm.paddocks().get(i).name();
  }

  private MobRow mob(int g) {
    Mob of = farm.mobs().get(g);
    List<Integer> weeks = plan.weeks(g);
    return new MobRow(
        of.name(),
        of.ewes(),
        of.joiningStart(),
        of.joiningWeeks().likely(),
        HalfMonths.start(weeks.get(0)),
        lastDay(weeks.get(weeks.size() - 1)),
        off(g, UseRule.When.BEFORE_JOINING),
        off(g, UseRule.When.WHILE_GREEN),
        plan.stays(g).stream().map(this::stay).toList());
  }

  private StayRow stay(Stay stay) {
    return new StayRow(
        HalfMonths.start(stay.from()),
        lastDay(stay.to()),
        stay.where(),
        stay.paddocks().stream().map(this::paddock).toList(),
        feed(stay.boughtMj() * plan.likely().tonnesPerMj()));
  }

  private static double feed(double tonnes) {
    return tonnes < LITTLE_FEED_TONNES ? 0 : tonnes;
  }

  private List<String> off(int mob, UseRule.When when) {
    return plan.instructions().stream()
        .filter(of -> !of.isShut())
        .filter(of -> rule(of).when() == when && rule(of).keepsOff(mob))
        .map(of -> paddock(of.paddock()))
        .toList();
  }

  private static UseRule rule(Instruction of) {
    return of.action().use().orElseThrow();
  }

  private Shut shut(Instruction of) {
    int i = of.paddock();
    Optional<UseRule> rule = of.isShut() ? Optional.empty() : of.action().use();
    Optional<Integer> most =
        rule.flatMap(
            keepsOff ->
                keepsOff.mobs().stream()
                    .max(Comparator.comparingDouble(g -> plan.lostThere(g, i).mean())));
    KnownClover clover = KnownClover.of(plan.model(), plan.likely(), i);
    return new Shut(
        paddock(i),
        of.action().key(),
        of.action().name(),
        rule.map(UseRule::who).orElse(""),
        rule.map(keepsOff -> keepsOff.mobs().size() == farm.mobs().size()).orElse(true),
        rule.map(keepsOff -> When.valueOf(keepsOff.when().name())).orElse(When.OUT),
        clover,
        reason(i, clover),
        most.map(g -> farm.mobs().get(g).name()),
        most.map(g -> plan.lostThere(g, i)),
        most.map(g -> OptionalDouble.of(100 * plan.chanceOfLoss(g, i)))
            .orElse(OptionalDouble.empty()));
  }

  private Reason reason(int paddock, KnownClover clover) {
    Paddock place = farm.paddocks().get(paddock);
    Composition composition = plan.likely().composition(paddock);
    Optional<Integer> strongest =
        IntStream.range(0, composition.size())
            .boxed()
            .max(Comparator.comparingDouble(c -> brought(composition, c)))
            .filter(c -> clover.formononetinFrom() == FormononetinFrom.CULTIVAR_TABLE);
    return new Reason(
        strongest.map(c -> composition.cultivar(c).name()),
        strongest
            .map(c -> OptionalDouble.of(composition.likelyShare(c)))
            .orElse(OptionalDouble.empty()),
        place.cloverShare().likely(),
        place.waterlogged());
  }

  /** What a cultivar brings to the formononetin of the leaf. */
  private static double brought(Composition composition, int c) {
    double leaf = composition.cultivar(c).formononetin().map(Assumption::likely).orElse(0.0);
    return leaf * composition.likelyShare(c);
  }

  private List<SeasonRow> seasons() {
    return IntStream.range(0, plan.seasons())
        .mapToObj(this::season)
        .sorted(Comparator.comparing(SeasonRow::comes))
        .toList();
  }

  private SeasonRow season(int s) {
    SeasonGrowth growth = farm.feedYear().seasons().get(s);
    int most =
        mobs().boxed().max(Comparator.comparingDouble(g -> plan.lostNow(s, g))).orElseThrow();
    return new SeasonRow(
        growth.type() == SeasonType.GOOD
            ? Break.EARLY
            : growth.type() == SeasonType.POOR ? Break.LATE : Break.USUAL,
        growth.chance().likely(),
        plan.isGreenAtStart(s),
        plan.turns(s).stream().map(HalfMonths::start).toList(),
        farm.mobs().get(most).name(),
        plan.lostNow(s, most),
        plan.lostByPlan(s, most));
  }

  private List<YoungRow> youngEwes() {
    return IntStream.range(0, farm.paddocks().size())
        .mapToObj(i -> new YoungRow(paddock(i), plan.barrenPercent(i)))
        .filter(row -> row.barrenPercent().mean() > plan.tellablePoints())
        .sorted(Comparator.comparingDouble(row -> -row.barrenPercent().mean()))
        .toList();
  }
}
