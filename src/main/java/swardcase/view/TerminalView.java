package swardcase.view;

import java.util.ArrayList;
import java.util.List;
import swardcase.chance.Drawn;
import swardcase.report.PaddockResult;
import swardcase.report.PlanResult;
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

  /** Longer lines of prose are hard to read. */
  private static final int MOST_WIDTH = 100;

  private TerminalView() {}

  /** The summary as lines for a terminal of so many columns. */
  public static List<String> of(Report report, int width) {
    MoneyFaces faces = new MoneyFaces(report);
    String currency = report.farm().currency();
    List<String> lines = new ArrayList<>();
    lines.add(report.farm().name() + ", " + report.farm().date());
    lines.add("");
    lines.addAll(wrap(PlanWords.headline(report), width));
    lines.add("");
    lines.addAll(threeNumbers(report, faces, width));
    lines.add("");
    lines.addAll(paddocks(report, faces, width));
    lines.add("");
    PaddockWords ofPaddocks = new PaddockWords(report, faces);
    for (int i = 0; i < report.paddocks().size(); i++) {
      lines.addAll(wrap(report.paddocks().get(i).name() + ": " + ofPaddocks.reason(i), width));
    }
    report
        .howSure()
        .ifPresent(
            found -> {
              HowSureWords sure = new HowSureWords(report, found, faces);
              lines.add("");
              lines.add("How sure?");
              sure.howSure().forEach(line -> lines.addAll(wrap("- " + line, width)));
              lines.add("");
              lines.add("What should you find out before you spend?");
              new FindOutWords(report)
                  .before()
                  .forEach(line -> lines.addAll(wrap("- " + line, width)));
            });
    report
        .records()
        .ifPresent(
            found -> {
              RecordsWords words = new RecordsWords(found, faces);
              lines.add("");
              lines.add(Texts.get("records.heading"));
              words.sentences().forEach(line -> lines.addAll(wrap("- " + line, width)));
              lines.add("");
              lines.addAll(RecordsTables.moved(words, found, currency).lines(width));
              lines.add("");
              lines.addAll(RecordsTables.years(found).lines(width));
            });
    lines.add("");
    lines.add("The plan");
    PlanWords.notes(report, faces).forEach(note -> lines.addAll(wrap("- " + note, width)));
    if (!report.notices().isEmpty()) {
      lines.add("");
      lines.add("Please note");
      report.notices().forEach(notice -> lines.addAll(wrap("- " + notice, width)));
    }
    lines.add("");
    lines.addAll(wrap(report.cautions().get(0) + " " + report.cautions().get(1), width));
    return lines;
  }

  private static List<String> threeNumbers(Report report, MoneyFaces faces, int width) {
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
            : "costs " + currency + " " + faces.withEnds(faces.cost(), plan.cost()),
        plan.keepsAll()
            ? "gains nothing"
            : "gains " + currency + " " + faces.withEnds(faces.gain(), plan.gain()));
    if (plan.calls().unsure() > 0) {
      table.row(
          "Its sure changes alone",
          "",
          "gain "
              + currency
              + " "
              + faces.withEnds(faces.rounded(plan.sureGain().mean()), plan.sureGain()));
    }
    return table.lines(width);
  }

  private static List<String> paddocks(Report report, MoneyFaces faces, int width) {
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
    return table.lines(width);
  }

  private static String amount(Drawn of) {
    return of.high() == 0 ? "0" : Words.range(of);
  }

  /** Text broken into lines of a terminal's width, later lines set in. */
  static List<String> wrap(String text, int width) {
    return TextLines.broken(text, Math.min(width, MOST_WIDTH), "", "  ");
  }
}
