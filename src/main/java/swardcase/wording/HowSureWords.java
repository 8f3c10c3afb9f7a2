package swardcase.wording;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import swardcase.report.Gain;
import swardcase.report.HowSureReport;
import swardcase.report.HowSureReport.BreakEvenLine;
import swardcase.report.HowSureReport.BreakEvenLine.Place;
import swardcase.report.HowSureReport.FindOut;
import swardcase.report.Report;

/** The findings in sentences a farmer reads in a minute. */
public final class HowSureWords {

  private static final Set<String> AS_PER_CENT = Set.of("-", "fraction", "per year");

  private final Report report;
  private final HowSureReport sure;
  private final MoneyFaces faces;

  /** Words of the findings of a report. */
  public HowSureWords(Report report, HowSureReport sure, MoneyFaces faces) {
    this.report = report;
    this.sure = sure;
    this.faces = faces;
  }

  /** What could be found out. */
  public static String what(FindOut what) {
    return what.input()
        .orElseGet(() -> Texts.of("buy", what.what(), what.plants(), what.paddock().orElseThrow()));
  }

  /** What to do about it. */
  public static String advice(FindOut what) {
    return Texts.of("advice", what.advice());
  }

  /** Where a gain turns into a loss. */
  public static String breakEven(BreakEvenLine line) {
    boolean share = AS_PER_CENT.contains(line.unit());
    double factor = share ? 100 : 1;
    String unit = share ? " %" : " " + line.unit();
    return line.found() == Place.NOWHERE
        ? Texts.of(
            "breakEven",
            line.found(),
            Words.about(line.low() * factor),
            Words.about(line.high() * factor),
            unit)
        : Texts.of(
            "breakEven", line.found(), Words.about(line.value().orElseThrow() * factor), unit);
  }

  /** Sentences that answer "How sure?" */
  public List<String> howSure() {
    List<String> lines = new ArrayList<>();
    if (report.plan().keepsAll()) {
      lines.add(Texts.get("howSure.keepsAll"));
    } else {
      Gain gain = report.plan().gain();
      lines.add(
          Texts.get(
              gain.drawn().isExact() ? "howSure.paysExactly" : "howSure.pays",
              Chances.outOfTen(gain.chancePays()),
              faces.money(faces.gain()),
              PaddockWords.end(faces, gain.low()),
              PaddockWords.end(faces, gain.high())));
      lines.add(
          Texts.get(
              sure.lossLimit() > 0 ? "howSure.loses" : "howSure.losesAny",
              Chances.outOfTen(sure.chanceOfUnbearableLoss()),
              faces.about(sure.lossLimit())));
    }
    lines.add(
        Texts.get(
            report.plan().keepsAll() ? "howSure.drawsAlone" : "howSure.draws",
            Words.exact(sure.draws()),
            sure.seed(),
            faces.about(2 * sure.npvStandardError())));
    return lines;
  }

  /** Sentences that answer "What should I find out before I spend?" */
  public List<String> before() {
    List<String> lines = new ArrayList<>();
    if (sure.findOut().isEmpty()) {
      lines.add(Texts.get("before.nothing"));
    }
    for (FindOut each : sure.findOut()) {
      String worth = faces.about(each.value());
      lines.add(
          each.price().isPresent()
              ? Texts.get(
                  "before.buy",
                  Texts.capital(what(each)),
                  worth,
                  faces.about(each.price().getAsDouble()),
                  advice(each))
              : Texts.get(
                  "before.know",
                  lowerFirst(what(each)).replace(": ", " of "),
                  worth,
                  advice(each)));
    }
    return lines;
  }

  private static String lowerFirst(String name) {
    return name.substring(0, 1).toLowerCase(Locale.ROOT) + name.substring(1);
  }
}
