package swardcase.report;

import java.time.LocalDate;
import java.time.Month;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import swardcase.chance.Drawn;
import swardcase.chance.Range;
import swardcase.decision.Decision;
import swardcase.decision.FarmMeasures.OfFarm;
import swardcase.decision.FarmMeasures.OfMonth;
import swardcase.decision.HowSure;
import swardcase.decision.Unknown;
import swardcase.evidence.Assumption;
import swardcase.farm.Farm;
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
    oestrogen = new OestrogenBuilder(decision);
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
    return date.getYear() + 1;
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
        oestrogen.flock(),
        results,
        plan.result(results),
        swings(),
        Cautions.DECISION,
        allNotices,
        assumptions,
        fixed,
        sources(assumptions, fixed),
        howSure.enquiries().stream().map(of -> FindOut.of(decision, of)).toList(),
        Optional.of(HowSureBuilder.build(decision.model(), howSure)),
        RecordsBuilder.build(decision, firstYear(date)));
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
    Drawn tonnes = decision.of(OfFarm.WINTER_SUPPLEMENT_TONNES);
    WinterFeed.Finding finding;
    if (decision.of(OfFarm.WINTER_LOSS_KG_DM).high() < 1) {
      finding = WinterFeed.Finding.NONE_LOST;
    } else if (decision.of(OfFarm.SUPPLEMENT_TONNES_NOW).mean() * 0.01 > tonnes.mean()) {
      finding = WinterFeed.Finding.HARDLY_SHORT;
    } else {
      finding = WinterFeed.Finding.UNSURE;
    }
    return new WinterFeed(
        decision.of(OfFarm.WINTER_LOSS_KG_DM),
        decision.of(OfFarm.WINTER_SHORTFALL_MJ),
        tonnes,
        decision.of(OfFarm.WINTER_SUPPLEMENT_COST),
        decision.of(OfFarm.YEAR_SUPPLEMENT_COST),
        decision.of(OfFarm.SUPPLEMENT_TONNES_NOW),
        decision.of(OfFarm.SUPPLEMENT_KG_PER_EWE_NOW),
        decision.of(OfFarm.MORE_EWES_GAIN),
        decision.of(OfFarm.EXTRA_EWES),
        months.stream()
            .max(Comparator.comparingDouble(FeedMonth::boughtMjPerHa))
            .orElseThrow()
            .month(),
        finding);
  }

  private List<FeedMonth> feedYear() {
    return IntStream.range(0, 12)
        .mapToObj(
            m -> {
              Month month = Month.of(m + 1);
              double days = month.minLength();
              return new FeedMonth(
                  month,
                  farm.feedYear().winterMonths().contains(month),
                  decision.of(m, OfMonth.DEMAND_MJ).mean(),
                  decision.of(m, OfMonth.EATEN_MJ).mean(),
                  decision.of(m, OfMonth.BOUGHT_MJ).mean(),
                  decision.of(m, OfMonth.BOUGHT_WITH_CURRENT_MJ).mean(),
                  decision.of(m, OfMonth.BOUGHT_AFRC_MJ).mean(),
                  decision.of(m, OfMonth.GROWTH_KG_DM).mean() / days,
                  decision.of(m, OfMonth.GROWTH_WITH_CURRENT_KG_DM).mean() / days,
                  decision.of(m, OfMonth.GREEN_KG_DM).mean(),
                  decision.of(m, OfMonth.DRY_KG_DM).mean());
            })
        .toList();
  }

  private List<Swing> swings() {
    if (decision.plan().equals(decision.model().keepAll())) {
      return List.of();
    }
    return howSure.byVarianceShare().stream().limit(SWINGS).map(ReportBuilder::swing).toList();
  }

  private static Swing swing(Unknown unknown) {
    Range range = unknown.input().range();
    return new Swing(
        unknown.input().name(),
        range.low(),
        range.high(),
        unknown.input().unit(),
        unknown.line().at(range.low()),
        unknown.line().at(range.high()));
  }

  private List<Source> sources(List<Assumption> assumptions, List<HeldFixed> fixed) {
    return Stream.concat(
            assumptions.stream().map(Assumption::source), fixed.stream().map(HeldFixed::source))
        .flatMap(keys -> Stream.of(keys.split(";")))
        .map(String::strip)
        .distinct()
        .sorted()
        .map(tables.sources()::get)
        .filter(Objects::nonNull)
        .toList();
  }
}
