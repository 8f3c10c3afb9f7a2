package swardcase.view;

import java.util.List;
import swardcase.chance.Drawn;
import swardcase.report.PaddockResult;
import swardcase.report.PlanResult;
import swardcase.report.RecordsReport;
import swardcase.report.RecordsReport.MovedLine;
import swardcase.report.RecordsReport.RecordedYear;
import swardcase.report.Report;
import swardcase.report.Reproduction;
import swardcase.report.WinterFeed;
import swardcase.wording.FindOutWords;
import swardcase.wording.HowSureWords;
import swardcase.wording.MoneyFaces;
import swardcase.wording.OestrogenWords;
import swardcase.wording.PaddockWords;
import swardcase.wording.PlanSum;
import swardcase.wording.PlanWords;
import swardcase.wording.RecordsWords;
import swardcase.wording.Texts;
import swardcase.wording.Words;

/** The report as a summary for a terminal: the answer, the three numbers, a line a paddock. */
public final class TerminalView {

  private TerminalView() {}

  /** The summary as lines for a terminal of so many columns. */
  public static List<String> of(Report report, int width) {
    MoneyFaces faces = new MoneyFaces(report);
    PaddockWords ofPaddocks = new PaddockWords(report, faces);
    TerminalLines lines =
        new TerminalLines(width)
            .heading(report.farm().name() + ", " + report.farm().date())
            .blank()
            .text(PlanWords.headline(report))
            .blank()
            .table(threeNumbers(report, faces))
            .blank()
            .table(paddocks(report, faces))
            .blank();
    for (int i = 0; i < report.paddocks().size(); i++) {
      lines.text(report.paddocks().get(i).name() + ": " + ofPaddocks.reason(i));
    }
    report
        .howSure()
        .ifPresent(
            sure ->
                lines
                    .blank()
                    .heading("How sure?")
                    .each("- ", new HowSureWords(report, sure, faces).howSure())
                    .blank()
                    .heading("What should you find out before you spend?")
                    .each("- ", new FindOutWords(report).before()));
    report.records().ifPresent(found -> records(report, found, faces, lines));
    lines.blank().heading("The plan").each("- ", PlanWords.notes(report, faces));
    if (!report.notices().isEmpty()) {
      lines.blank().heading("Please note").each("- ", report.notices());
    }
    return lines.blank().text(report.cautions().get(0) + " " + report.cautions().get(1)).all();
  }

  private static void records(
      Report report, RecordsReport found, MoneyFaces faces, TerminalLines lines) {
    RecordsWords words = new RecordsWords(found, faces);
    lines
        .blank()
        .heading(Texts.get("records.heading"))
        .each("- ", words.sentences())
        .blank()
        .table(moved(words, found, report.farm().currency()))
        .blank()
        .table(recordedYears(found));
  }

  private static TextTable threeNumbers(Report report, MoneyFaces faces) {
    WinterFeed feed = report.winterFeed();
    Reproduction ewes = report.reproduction();
    PlanResult plan = report.plan();
    String currency = report.farm().currency();
    TextTable table = TextTable.of("A year, as things stand", "mean (range)", "in money");
    table.row(
        "Winter feed short, outdated clover",
        Words.range(feed.supplementTonnes()) + " t " + report.farm().supplement(),
        Words.money(currency, feed.supplementCost()));
    table.row(
        "Lambs not marked, oestrogen",
        Words.count(ewes.lambsLostPerYear()),
        Words.money(currency, ewes.costPerYear()));
    table.row(
        "Plan over " + report.farm().horizonYears() + " years",
        plan.keepsAll()
            ? "costs nothing"
            : "costs " + faces.moneyWithEnds(faces.cost(), plan.cost()),
        plan.keepsAll()
            ? "gains nothing"
            : "gains " + faces.moneyWithEnds(faces.gain(), plan.gain().drawn()));
    if (plan.calls().unsure() > 0) {
      Drawn sure = plan.sureGain().drawn();
      String gain = faces.moneyWithEnds(faces.rounded(sure.mean()), sure);
      table.row("Its sure changes alone", "", "gain " + gain);
    }
    return table;
  }

  private static TextTable paddocks(Report report, MoneyFaces faces) {
    String currency = report.farm().currency();
    TextTable table =
        TextTable.of(
            "Paddock",
            ">ha",
            "What to do",
            "Start",
            ">Cost " + currency,
            ">Gain " + currency + " (range)",
            ">Winter feed lost kg/ha",
            "Oestrogen");
    for (int i = 0; i < report.paddocks().size(); i++) {
      PaddockResult paddock = report.paddocks().get(i);
      boolean acts = paddock.start().isPresent();
      table.row(
          paddock.name(),
          Words.exact(paddock.areaHa()),
          PaddockWords.verdict(paddock),
          PaddockWords.year(paddock.start(), ""),
          acts ? faces.number(faces.cost(i)) : "",
          acts ? faces.withEnds(faces.gain(i), paddock.gain()) : "",
          amount(paddock.dryMatterLostKgPerHa()),
          OestrogenWords.rating(paddock.oestrogenRating()));
    }
    for (PlanSum sum : PlanSum.of(report, faces)) {
      table.row(sum.what(), "", "", "", sum.cost(), sum.gain(), "", "");
    }
    return table;
  }

  private static String amount(Drawn of) {
    return of.high() == 0 ? "0" : Words.range(of);
  }

  /** The numbers that the records move. */
  private static TextTable moved(RecordsWords words, RecordsReport records, String currency) {
    TextTable table =
        TextTable.of(
            Texts.get("records.column.number"),
            ">" + Texts.get("records.column.before"),
            ">" + Texts.get("records.column.after"),
            ">" + Texts.get("records.column.gain", currency));
    for (MovedLine line : records.moved()) {
      table.row(
          RecordsWords.name(line),
          Words.range(line.before()),
          Words.range(line.after()),
          words.gainPart(line.gainPart()));
    }
    table.row(Texts.get("records.number.rest"), "", "", words.gainPart(records.gainPartsRest()));
    table.row(Texts.get("records.number.gain"), "", "", words.gainChange());
    return table;
  }

  /** The recorded years. */
  private static TextTable recordedYears(RecordsReport records) {
    TextTable table =
        TextTable.of(
            Texts.get("records.column.year"),
            Texts.get("records.column.mob"),
            ">" + Texts.get("records.column.recorded"),
            ">" + Texts.get("records.column.before"),
            ">" + Texts.get("records.column.after"));
    for (RecordedYear year : records.years()) {
      table.row(
          String.valueOf(year.year()),
          year.mob(),
          RecordsWords.recorded(year),
          Words.range(year.expectedBefore()),
          Words.range(year.expectedAfter()));
    }
    return table;
  }
}
