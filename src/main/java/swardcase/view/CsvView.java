package swardcase.view;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import swardcase.chance.Drawn;
import swardcase.chance.Range;
import swardcase.evidence.Assumption;
import swardcase.report.Credit;
import swardcase.report.FeedMonth;
import swardcase.report.HowSureReport;
import swardcase.report.PaddockResult;
import swardcase.report.PlanResult;
import swardcase.report.Report;
import swardcase.wording.MoneyFaces;
import swardcase.wording.OestrogenWords;
import swardcase.wording.PaddockWords;
import swardcase.wording.PlanWords;
import swardcase.wording.ReturnsWords;
import swardcase.wording.SafeText;
import swardcase.wording.Texts;
import swardcase.wording.Words;

/**
 * The report as files for a spreadsheet: comma separated, UTF-8, line feeds, numbers with a decimal
 * point. A cell that a spreadsheet would run as a formula starts with an apostrophe.
 */
public final class CsvView {

  private CsvView() {}

  /** File names with their texts, in the order they are written. */
  public static Map<String, String> of(Report report) {
    Map<String, String> files = new LinkedHashMap<>();
    files.put("paddocks.csv", paddocks(report));
    files.put("plan.csv", plan(report));
    files.put("options.csv", options(report));
    files.put("credit.csv", credit(report));
    files.put("old-share.csv", oldShare(report));
    files.put("years.csv", years(report));
    report.howSure().ifPresent(sure -> files.put("stories.csv", stories(sure)));
    files.put("feed.csv", feed(report));
    files.put("assumptions.csv", assumptions(report));
    return files;
  }

  private static String paddocks(Report report) {
    List<List<Object>> rows = new ArrayList<>();
    rows.add(
        List.of(
            "paddock",
            "area_ha",
            "call",
            "sure",
            "action",
            "start",
            "last_change_year",
            "cost",
            "gain_mean",
            "gain_low",
            "gain_high",
            "chance_pays",
            "old_share_low",
            "old_share_likely",
            "old_share_high",
            "winter_growth_lost_kg_dm_per_ha",
            "nitrogen_fixed_kg_per_ha",
            "nitrogen_planned_kg_per_ha",
            "lost_to_cultivar_kg_dm_per_ha",
            "lost_to_thin_stand_kg_dm_per_ha",
            "supplement_tonnes",
            "supplement_cost",
            "formononetin_percent_of_leaf",
            "oestrogen_rating",
            "reason"));
    PaddockWords words = new PaddockWords(report, new MoneyFaces(report));
    for (int i = 0; i < report.paddocks().size(); i++) {
      PaddockResult p = report.paddocks().get(i);
      rows.add(
          List.of(
              p.name(),
              p.areaHa(),
              JsonView.word(p.call()),
              p.sure().map(CsvView::yesNo).orElse(""),
              p.actionName(),
              PaddockWords.year(p.start(), ""),
              PaddockWords.year(p.lastChangeYear(), ""),
              p.cost().mean(),
              p.gain().mean(),
              p.gain().low(),
              p.gain().high(),
              p.gain().chancePays(),
              p.clover().oldShare().<Object>map(Range::low).orElse(""),
              p.clover().oldShare().<Object>map(Range::likely).orElse(""),
              p.clover().oldShare().<Object>map(Range::high).orElse(""),
              p.dryMatterLostKgPerHa().mean(),
              p.nitrogenFixedKgPerHa().mean(),
              p.nitrogenPlannedKgPerHa().mean(),
              p.lostToCultivarKgPerHa().mean(),
              p.lostToThinStandKgPerHa().mean(),
              p.supplementTonnes().mean(),
              p.supplementCost().mean(),
              p.formononetinPercentOfLeaf().<Object>map(Drawn::mean).orElse(""),
              OestrogenWords.rating(p.oestrogenRating()),
              words.reason(i)));
    }
    return text(rows);
  }

  /** The rows of the changes add up to the total; so do those of the parts. */
  private static String plan(Report report) {
    PlanResult plan = report.plan();
    List<List<Object>> rows = new ArrayList<>();
    rows.add(List.of("row", "what", "gain_mean"));
    report.paddocks().stream()
        .filter(PaddockResult::isInPlan)
        .forEach(p -> rows.add(List.of("paddock", p.name(), p.gain().mean())));
    plan.farmWide()
        .forEach(
            rule ->
                rows.add(List.of("farm-wide", PlanWords.rule(rule.what()), rule.gain().mean())));
    rows.add(List.of("shared", PlanWords.shared(plan.shared().mean()), plan.shared().mean()));
    rows.add(List.of("total", Texts.get("plan.total"), plan.gain().mean()));
    plan.parts()
        .forEach(part -> rows.add(List.of("part", JsonView.word(part.what()), part.mean())));
    return text(rows);
  }

  /** What the plan gains by how ewes respond to oestrogen. */
  private static String stories(HowSureReport sure) {
    List<List<Object>> rows = new ArrayList<>();
    rows.add(
        List.of("story", "chance", "draws", "gain_mean", "gain_low", "gain_high", "chance_pays"));
    sure.stories()
        .forEach(
            of ->
                rows.add(
                    List.of(
                        JsonView.word(of.story()),
                        of.chance(),
                        of.draws(),
                        of.gain().mean(),
                        of.gain().low(),
                        of.gain().high(),
                        of.chanceItPays())));
    return text(rows);
  }

  private static String options(Report report) {
    List<List<Object>> rows = new ArrayList<>();
    rows.add(
        List.of(
            "paddock",
            "action",
            "start",
            "last_change_year",
            "cost_per_ha",
            "gain_mean",
            "gain_low",
            "gain_high",
            "chance_pays",
            "annuity_per_ha",
            "step_over",
            "step_gain",
            "sure",
            "irr",
            "mirr",
            "payback_years",
            "benefit_cost",
            "chosen",
            "why_not"));
    PaddockWords words = new PaddockWords(report, new MoneyFaces(report));
    for (int i = 0; i < report.paddocks().size(); i++) {
      PaddockResult p = report.paddocks().get(i);
      for (PaddockResult.OptionResult o : p.options()) {
        ReturnsWords returns = ReturnsWords.of(o.returns(), report.farm().horizonYears());
        rows.add(
            List.of(
                p.name(),
                o.name(),
                PaddockWords.year(o.start(), ""),
                o.lastChangeYear(),
                o.costPerHa().mean(),
                o.gain().mean(),
                o.gain().low(),
                o.gain().high(),
                o.gain().chancePays(),
                o.annuityPerHa().mean(),
                o.step().overName(),
                o.step().gain().mean(),
                yesNo(o.step().sure()),
                returns.irr(),
                returns.mirr(),
                returns.payback(),
                returns.benefitCost(),
                yesNo(o.chosen()),
                words.whyNot(i, o)));
      }
    }
    return text(rows);
  }

  /** Where the gain of every option comes from; the rows of an option add up to its gain. */
  private static String credit(Report report) {
    List<List<Object>> rows = new ArrayList<>();
    rows.add(List.of("paddock", "action", "start", "chosen", "what", "gain_mean"));
    for (PaddockResult p : report.paddocks()) {
      for (PaddockResult.OptionResult o : p.options()) {
        for (Credit cause : o.credit()) {
          rows.add(
              List.of(
                  p.name(),
                  o.name(),
                  PaddockWords.year(o.start(), ""),
                  yesNo(o.chosen()),
                  JsonView.word(cause.what()),
                  cause.mean()));
        }
      }
    }
    return text(rows);
  }

  /** Shares of old cultivars and of clover by year, for every option of every paddock. */
  private static String oldShare(Report report) {
    List<List<Object>> rows = new ArrayList<>();
    rows.add(
        List.of(
            "paddock",
            "action",
            "start",
            "chosen",
            "cheapest",
            "year",
            "old_share",
            "clover_share"));
    for (PaddockResult p : report.paddocks()) {
      for (PaddockResult.OptionResult o : p.options()) {
        for (int t = 0; t < o.oldShareByYear().size(); t++) {
          rows.add(
              List.of(
                  p.name(),
                  o.name(),
                  PaddockWords.year(o.start(), ""),
                  yesNo(o.chosen()),
                  yesNo(o.cheapest()),
                  report.plan().years().get(t).year(),
                  o.oldShareByYear().get(t),
                  o.cloverShareByYear().get(t)));
        }
      }
    }
    return text(rows);
  }

  private static String years(Report report) {
    List<List<Object>> rows = new ArrayList<>();
    rows.add(
        List.of(
            "year",
            "work",
            "discounted",
            "cost",
            "labour",
            "supplement_saved",
            "lambs_saved",
            "other",
            "net",
            "cumulative",
            "without",
            "with",
            "old_share"));
    for (PlanResult.PlanYear y : report.plan().years()) {
      rows.add(
          List.of(
              y.year(),
              PlanWords.work(y.work()),
              y.mean(),
              y.cost(),
              y.labour(),
              y.supplementSaved(),
              y.lambsSaved(),
              y.other(),
              y.net(),
              y.cumulative(),
              y.without(),
              y.with(),
              y.oldShare()));
    }
    return text(rows);
  }

  private static String feed(Report report) {
    List<List<Object>> rows = new ArrayList<>();
    rows.add(
        List.of(
            "month",
            "winter",
            "demand_mj_per_ha",
            "eaten_mj_per_ha",
            "bought_mj_per_ha",
            "bought_with_current_mj_per_ha",
            "bought_afrc_mj_per_ha",
            "growth_kg_dm_per_ha_per_day",
            "growth_with_current_kg_dm_per_ha_per_day",
            "green_kg_dm_per_ha",
            "dry_kg_dm_per_ha"));
    for (FeedMonth m : report.feedYear()) {
      rows.add(
          List.of(
              Words.shortName(m.month()),
              yesNo(m.winter()),
              m.demandMjPerHa(),
              m.eatenMjPerHa(),
              m.boughtMjPerHa(),
              m.boughtWithCurrentMjPerHa(),
              m.boughtAfrcMjPerHa(),
              m.growthKgDmPerHaPerDay(),
              m.growthWithCurrentKgDmPerHaPerDay(),
              m.greenKgDmPerHa(),
              m.dryKgDmPerHa()));
    }
    return text(rows);
  }

  private static String assumptions(Report report) {
    List<List<Object>> rows = new ArrayList<>();
    rows.add(List.of("name", "low", "likely", "high", "unit", "evidence", "source", "set_by"));
    for (Assumption a : report.assumptions()) {
      rows.add(
          List.of(
              a.name(),
              a.range().low(),
              a.range().likely(),
              a.range().high(),
              a.unit(),
              a.evidence().label(),
              a.source(),
              a.setBy().label()));
    }
    return text(rows);
  }

  private static String yesNo(boolean yes) {
    return yes ? "yes" : "no";
  }

  /** Rows as the text of a file. */
  static String text(List<List<Object>> rows) {
    return rows.stream()
        .map(row -> row.stream().map(CsvView::cell).collect(Collectors.joining(",")))
        .collect(Collectors.joining("\n", "", "\n"));
  }

  private static String cell(Object value) {
    if (value instanceof Double number) {
      return Words.fifteenDigits(number);
    }
    String text = SafeText.of(String.valueOf(value));
    return text.matches("[^\",;]*") ? text : '"' + text.replace("\"", "\"\"") + '"';
  }
}
