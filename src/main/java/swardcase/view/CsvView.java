package swardcase.view;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import swardcase.chance.Drawn;
import swardcase.chance.Range;
import swardcase.evidence.Assumption;
import swardcase.report.Credit;
import swardcase.report.FeedMonth;
import swardcase.report.HowSureReport.StoryLine;
import swardcase.report.PaddockResult;
import swardcase.report.PaddockResult.OptionResult;
import swardcase.report.PlanResult;
import swardcase.report.PlanResult.PlanYear;
import swardcase.report.Report;
import swardcase.wording.MoneyFaces;
import swardcase.wording.OestrogenWords;
import swardcase.wording.PaddockWords;
import swardcase.wording.PlanWords;
import swardcase.wording.ReturnsWords;
import swardcase.wording.Texts;
import swardcase.wording.Words;

/** The report as files for a spreadsheet, UTF-8. */
public final class CsvView {

  private final Report report;

  /** An action on a paddock, with one part of what is told of it. */
  private record Part<T>(PaddockResult paddock, OptionResult option, T of) {}

  private CsvView(Report report) {
    this.report = report;
  }

  /** File names with their texts, in the order they are written. */
  public static Map<String, String> of(Report report) {
    CsvView view = new CsvView(report);
    Map<String, String> files = new LinkedHashMap<>();
    files.put("paddocks.csv", view.paddocks());
    files.put("plan.csv", view.plan());
    files.put("options.csv", view.options());
    files.put("credit.csv", view.credit());
    files.put("old-share.csv", view.oldShare());
    files.put("years.csv", view.years());
    report.howSure().ifPresent(sure -> files.put("stories.csv", stories(sure.stories())));
    files.put("feed.csv", view.feed());
    files.put("assumptions.csv", view.assumptions());
    return files;
  }

  private String paddocks() {
    PaddockWords words = new PaddockWords(report, new MoneyFaces(report));
    List<PaddockResult> all = report.paddocks();
    return new CsvTable<PaddockResult>()
        .column("paddock", PaddockResult::name)
        .column("area_ha", PaddockResult::areaHa)
        .column("call", PaddockResult::call)
        .column("sure", PaddockResult::sure)
        .column("action", PaddockResult::actionName)
        .column("start", PaddockResult::start)
        .column("last_change_year", PaddockResult::lastChangeYear)
        .column("cost", p -> p.cost().mean())
        .gain(PaddockResult::gain)
        .column("old_share_low", p -> p.clover().oldShare().map(Range::low))
        .column("old_share_likely", p -> p.clover().oldShare().map(Range::likely))
        .column("old_share_high", p -> p.clover().oldShare().map(Range::high))
        .column("winter_growth_lost_kg_dm_per_ha", p -> p.dryMatterLostKgPerHa().mean())
        .column("nitrogen_fixed_kg_per_ha", p -> p.nitrogenFixedKgPerHa().mean())
        .column("nitrogen_planned_kg_per_ha", p -> p.nitrogenPlannedKgPerHa().mean())
        .column("lost_to_cultivar_kg_dm_per_ha", p -> p.lostToCultivarKgPerHa().mean())
        .column("lost_to_thin_stand_kg_dm_per_ha", p -> p.lostToThinStandKgPerHa().mean())
        .column("supplement_tonnes", p -> p.supplementTonnes().mean())
        .column("supplement_cost", p -> p.supplementCost().mean())
        .column("formononetin_percent_of_leaf", p -> p.formononetinPercentOfLeaf().map(Drawn::mean))
        .column("oestrogen_rating", p -> OestrogenWords.rating(p.oestrogenRating()))
        .column("reason", p -> words.reason(all.indexOf(p)))
        .text(all);
  }

  /** A row of {@code plan.csv}. */
  private record Gained(String row, String what, double mean) {}

  /** The rows of the changes add up to the total; so do those of the parts. */
  private String plan() {
    PlanResult plan = report.plan();
    List<Gained> rows = new ArrayList<>();
    report.paddocks().stream()
        .filter(PaddockResult::isInPlan)
        .forEach(p -> rows.add(new Gained("paddock", p.name(), p.gain().mean())));
    plan.farmWide()
        .forEach(
            rule ->
                rows.add(new Gained("farm-wide", PlanWords.rule(rule.what()), rule.gain().mean())));
    double shared = plan.shared().mean();
    rows.add(new Gained("shared", PlanWords.shared(shared), shared));
    rows.add(new Gained("total", Texts.get("plan.total"), plan.gain().mean()));
    plan.parts()
        .forEach(part -> rows.add(new Gained("part", JsonView.word(part.what()), part.mean())));
    return new CsvTable<Gained>()
        .column("row", Gained::row)
        .column("what", Gained::what)
        .column("gain_mean", Gained::mean)
        .text(rows);
  }

  /** Every option of every paddock, once for each of its parts. */
  private <T> List<Part<T>> parts(Function<OptionResult, Stream<T>> parts) {
    return report.paddocks().stream()
        .flatMap(
            paddock ->
                paddock.options().stream()
                    .flatMap(
                        option -> parts.apply(option).map(of -> new Part<>(paddock, option, of))))
        .toList();
  }

  /** A table whose first columns say which option is told of. */
  private static <T> CsvTable<Part<T>> ofOptions() {
    return new CsvTable<Part<T>>()
        .column("paddock", row -> row.paddock().name())
        .column("action", row -> row.option().name())
        .column("start", row -> row.option().start());
  }

  private String options() {
    PaddockWords words = new PaddockWords(report, new MoneyFaces(report));
    int years = report.farm().horizonYears();
    return CsvView.<ReturnsWords>ofOptions()
        .column("last_change_year", row -> row.option().lastChangeYear())
        .column("cost_per_ha", row -> row.option().costPerHa().mean())
        .gain(row -> row.option().gain())
        .column("annuity_per_ha", row -> row.option().annuityPerHa().mean())
        .column("step_over", row -> row.option().step().overName())
        .column("step_gain", row -> row.option().step().gain().mean())
        .column("sure", row -> row.option().step().sure())
        .column("irr", row -> row.of().irr())
        .column("mirr", row -> row.of().mirr())
        .column("payback_years", row -> row.of().payback())
        .column("benefit_cost", row -> row.of().benefitCost())
        .column("chosen", row -> row.option().chosen())
        .column(
            "why_not", row -> words.whyNot(report.paddocks().indexOf(row.paddock()), row.option()))
        .text(parts(option -> Stream.of(ReturnsWords.of(option.returns(), years))));
  }

  /** Where the gain of every option comes from; the rows of an option add up to its gain. */
  private String credit() {
    return CsvView.<Credit>ofOptions()
        .column("chosen", row -> row.option().chosen())
        .column("what", row -> row.of().what())
        .column("gain_mean", row -> row.of().mean())
        .text(parts(option -> option.credit().stream()));
  }

  /** Shares of old cultivars and of clover by year, for every option of every paddock. */
  private String oldShare() {
    List<PlanYear> years = report.plan().years();
    return CsvView.<Integer>ofOptions()
        .column("chosen", row -> row.option().chosen())
        .column("cheapest", row -> row.option().cheapest())
        .column("year", row -> years.get(row.of()).year())
        .column("old_share", row -> row.option().oldShareByYear().get(row.of()))
        .column("clover_share", row -> row.option().cloverShareByYear().get(row.of()))
        .text(parts(option -> IntStream.range(0, option.oldShareByYear().size()).boxed()));
  }

  private String years() {
    return new CsvTable<PlanYear>()
        .column("year", PlanYear::year)
        .column("work", year -> PlanWords.work(year.work()))
        .column("discounted", PlanYear::mean)
        .column("cost", PlanYear::cost)
        .column("labour", PlanYear::labour)
        .column("supplement_saved", PlanYear::supplementSaved)
        .column("lambs_saved", PlanYear::lambsSaved)
        .column("other", PlanYear::other)
        .column("net", PlanYear::net)
        .column("cumulative", PlanYear::cumulative)
        .column("without", PlanYear::without)
        .column("with", PlanYear::with)
        .column("old_share", PlanYear::oldShare)
        .text(report.plan().years());
  }

  /** What the plan gains by how ewes respond to oestrogen. */
  private static String stories(List<StoryLine> stories) {
    return new CsvTable<StoryLine>()
        .column("story", StoryLine::story)
        .column("chance", StoryLine::chance)
        .column("draws", StoryLine::draws)
        .column("gain_mean", story -> story.gain().mean())
        .column("gain_low", story -> story.gain().low())
        .column("gain_high", story -> story.gain().high())
        .column("chance_pays", StoryLine::chanceItPays)
        .text(stories);
  }

  private String feed() {
    return new CsvTable<FeedMonth>()
        .column("month", month -> Words.shortName(month.month()))
        .column("winter", FeedMonth::winter)
        .column("demand_mj_per_ha", FeedMonth::demandMjPerHa)
        .column("eaten_mj_per_ha", FeedMonth::eatenMjPerHa)
        .column("bought_mj_per_ha", FeedMonth::boughtMjPerHa)
        .column("bought_with_current_mj_per_ha", FeedMonth::boughtWithCurrentMjPerHa)
        .column("bought_afrc_mj_per_ha", FeedMonth::boughtAfrcMjPerHa)
        .column("growth_kg_dm_per_ha_per_day", FeedMonth::growthKgDmPerHaPerDay)
        .column(
            "growth_with_current_kg_dm_per_ha_per_day", FeedMonth::growthWithCurrentKgDmPerHaPerDay)
        .column("green_kg_dm_per_ha", FeedMonth::greenKgDmPerHa)
        .column("dry_kg_dm_per_ha", FeedMonth::dryKgDmPerHa)
        .text(report.feedYear());
  }

  private String assumptions() {
    return new CsvTable<Assumption>()
        .column("name", Assumption::name)
        .column("low", number -> number.range().low())
        .column("likely", Assumption::likely)
        .column("high", number -> number.range().high())
        .column("unit", Assumption::unit)
        .column("evidence", number -> number.evidence().label())
        .column("source", Assumption::source)
        .column("set_by", number -> number.setBy().label())
        .text(report.assumptions());
  }
}
