package swardcase.report;

import java.time.LocalDate;
import java.time.Month;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.ToDoubleFunction;
import java.util.stream.IntStream;
import swardcase.chance.Range;
import swardcase.decision.Decision;
import swardcase.decision.FeedMonths;
import swardcase.decision.HowSure;
import swardcase.evidence.Assumption;
import swardcase.farm.Farm;
import swardcase.farm.Mob;
import swardcase.report.Reproduction.DoseMonth;
import swardcase.tables.Source;
import swardcase.tables.Tables;

/** Turns a decision into the tree of records that is printed and saved. */
public final class ReportBuilder {

  /** Version of the layout of the result document. */
  public static final String SCHEMA_VERSION = "2.0";

  private static final int SWINGS = 10;

  private final Decision decision;
  private final HowSure howSure;
  private final Farm farm;
  private final Tables tables;
  private final LocalDate date;
  private final OestrogenBuilder oestrogen;
  private final PaddockBuilder paddocks;
  private final PlanBuilder plan;

  private ReportBuilder(Decision decision, HowSure howSure, LocalDate date) {
    this.decision = decision;
    this.howSure = howSure;
    this.date = date;
    farm = decision.model().farm();
    tables = decision.model().tables();
    oestrogen = new OestrogenBuilder(tables);
    paddocks = new PaddockBuilder(decision, howSure, oestrogen, date);
    plan = new PlanBuilder(decision, howSure, date);
  }

  /**
   * The report.
   *
   * @param decision the answer as numbers
   * @param howSure how sure it is
   * @param program name and version of the program
   * @param date the date of the sheet, which also says which calendar year the coming one is
   * @param notices what was odd or missing in the farm folder
   */
  public static Report build(
      Decision decision, HowSure howSure, String program, LocalDate date, List<String> notices) {
    return new ReportBuilder(decision, howSure, date).build(program, notices);
  }

  /** The calendar year that is called the coming one: the one after the sheet's date. */
  public static int firstYear(LocalDate date) {
    return PlanBuilder.firstYear(date);
  }

  private Report build(String program, List<String> notices) {
    List<Assumption> assumptions = decision.model().inputs().all();
    List<FeedMonth> months = feedYear();
    List<HeldFixed> fixed = HeldFixed.of(decision.model());
    List<String> allNotices = new ArrayList<>(notices);
    if (!tables.overridden().isEmpty()) {
      allNotices.add("Rows of your own tables are used: " + String.join("; ", tables.overridden()));
    }
    List<PaddockResult> results = paddocks.all();
    return new Report(
        SCHEMA_VERSION,
        program,
        head(farm, date),
        winterFeed(months),
        months,
        reproduction(),
        results,
        plan.result(results),
        swings(),
        Cautions.DECISION,
        allNotices,
        assumptions,
        fixed,
        sources(assumptions, fixed),
        Optional.of(HowSureBuilder.build(decision.model(), howSure)));
  }

  /** A farm's facts, as they stand at the head of every report. */
  static Report.FarmHead head(Farm farm, LocalDate date) {
    return new Report.FarmHead(
        farm.name(),
        date,
        farm.currency(),
        farm.areaHa(),
        farm.ewesJoined(),
        farm.finance().horizonYears(),
        100 * farm.finance().discountRate().likely(),
        farm.feedYear().growthName(),
        farm.supplement().name(),
        List.copyOf(farm.feedYear().winterMonths()),
        farm.extraFeedUse());
  }

  private WinterFeed winterFeed(List<FeedMonth> months) {
    Range tonnes = decision.winterSupplementTonnes();
    WinterFeed.Finding finding;
    if (decision.winterLossKgDm().high() < 1) {
      finding = WinterFeed.Finding.NONE_LOST;
    } else if (decision.supplementTonnesNow().likely() * 0.01 > tonnes.likely()) {
      finding = WinterFeed.Finding.HARDLY_SHORT;
    } else {
      finding = WinterFeed.Finding.UNSURE;
    }
    return new WinterFeed(
        decision.winterLossKgDm(),
        decision.winterShortfallMj(),
        tonnes,
        decision.winterSupplementCost(),
        decision.yearSupplementCost(),
        decision.supplementTonnesNow(),
        decision.supplementKgPerEweNow(),
        decision.moreEwesGain(),
        decision.extraEwes(),
        first(months, FeedMonth::boughtMjPerHa).month(),
        finding);
  }

  private List<FeedMonth> feedYear() {
    FeedMonths months = FeedMonths.of(decision.model());
    return IntStream.range(0, 12)
        .mapToObj(
            m -> {
              Month month = Month.of(m + 1);
              double days = month.minLength();
              return new FeedMonth(
                  month,
                  farm.feedYear().winterMonths().contains(month),
                  months.demandMj(m),
                  months.eatenMj(m),
                  months.boughtMj(m),
                  months.boughtWithCurrentMj(m),
                  months.boughtAfrcMj(m),
                  months.growthKgDm(m) / days,
                  months.growthWithCurrentKgDm(m) / days,
                  months.greenKgDm(m),
                  months.dryKgDm(m));
            })
        .toList();
  }

  private Reproduction reproduction() {
    List<Reproduction.MobResult> mobs = new ArrayList<>();
    for (int g = 0; g < farm.mobs().size(); g++) {
      Mob mob = farm.mobs().get(g);
      mobs.add(
          new Reproduction.MobResult(
              mob.name(),
              mob.ewes(),
              new Reproduction.Joining(
                  mob.joiningStart().getMonth(),
                  mob.joiningStart().getDayOfMonth(),
                  mob.joiningWeeks().likely()),
              decision.doseAtJoining(g),
              decision.unaffectedPercent(g),
              decision.pregnantPercent(g),
              oestrogen.mob(decision, g)));
    }
    List<DoseMonth> dose =
        IntStream.range(0, 12)
            .mapToObj(m -> new DoseMonth(Month.of(m + 1), decision.doseOfMonth(m)))
            .toList();
    return new Reproduction(
        farm.ewesJoined(),
        decision.unaffectedPercent(),
        decision.pregnantPercent(),
        decision.sterilePercent(),
        decision.lambsLost(),
        decision.lambCost(),
        oestrogen.flock(decision),
        oestrogen.tellablePoints(),
        oestrogen.isDry(decision),
        oestrogen.hardestHit(decision),
        mobs,
        dose,
        first(dose, month -> month.formononetinPercentOfIntake().likely()).month());
  }

  /** The first of the largest. */
  private static <T> T first(List<T> of, ToDoubleFunction<T> size) {
    T largest = of.get(0);
    for (T each : of) {
      largest = size.applyAsDouble(each) > size.applyAsDouble(largest) ? each : largest;
    }
    return largest;
  }

  private List<Swing> swings() {
    return decision.movingInputs().stream()
        .limit(SWINGS)
        .map(
            j -> {
              Assumption input = decision.model().inputs().get(j);
              return new Swing(
                  input.name(),
                  input.range().low(),
                  input.range().high(),
                  input.unit(),
                  decision.planNpvAtLow(j),
                  decision.planNpvAtHigh(j));
            })
        .toList();
  }

  private List<Source> sources(List<Assumption> assumptions, List<HeldFixed> fixed) {
    Set<String> keys = new TreeSet<>();
    assumptions.forEach(assumption -> addKeys(keys, assumption.source()));
    fixed.forEach(number -> addKeys(keys, number.source()));
    return keys.stream().map(tables.sources()::get).filter(source -> source != null).toList();
  }

  private static void addKeys(Set<String> keys, String source) {
    for (String key : source.split(";")) {
      keys.add(key.strip());
    }
  }
}
