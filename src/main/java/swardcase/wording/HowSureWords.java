package swardcase.wording;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import swardcase.chance.Spread;
import swardcase.report.HowSureReport;
import swardcase.report.HowSureReport.BreakEvenLine;
import swardcase.report.HowSureReport.BreakEvenLine.Place;
import swardcase.report.HowSureReport.OtherChancesLine;
import swardcase.report.HowSureReport.StoryLine.Story;
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
      Spread gain = report.plan().gain();
      lines.add(
          Texts.get(
              gain.drawn().isExact() ? "howSure.paysExactly" : "howSure.pays",
              Chances.outOfTen(gain.chancePays()),
              faces.money(faces.gain()),
              faces.end(gain.low()),
              faces.end(gain.high())));
      lines.add(
          Texts.get(
              sure.lossLimit() > 0 ? "howSure.loses" : "howSure.losesAny",
              Chances.outOfTen(sure.chanceOfUnbearableLoss()),
              faces.about(sure.lossLimit())));
    }
    lines.addAll(stories());
    lines.add(
        Texts.get(
            report.plan().keepsAll() ? "howSure.drawsAlone" : "howSure.draws",
            Words.exact(sure.draws()),
            sure.seed(),
            faces.about(2 * sure.npvStandardError())));
    return lines;
  }

  /** What hangs on how ewes respond; nothing where they hardly meet oestrogen. */
  private List<String> stories() {
    List<String> lines = new ArrayList<>();
    if (sure.thrownAway() > 0) {
      lines.add(Texts.get("howSure.thrownAway", Words.exact(sure.thrownAway())));
    }
    if (sure.unexplained() > 0) {
      lines.add(
          Texts.get(
              "howSure.unexplained", Words.exact(sure.unexplained()), Words.exact(sure.draws())));
    }
    if (sure.stories().isEmpty() || report.reproduction().lambsLostPerYear().mean() < 1) {
      return lines;
    }
    if (!report.plan().keepsAll()) {
      List<String> each =
          sure.stories().stream()
              .map(
                  of ->
                      Texts.of(
                          "story",
                          of.story(),
                          Words.percent((double) of.draws() / sure.draws()),
                          faces.signed("reason.gains", faces.rounded(of.gain().mean()))))
              .toList();
      lines.add(Texts.get("howSure.stories", String.join(" ", each)));
    }
    if (sure.stories().stream().anyMatch(of -> of.story() == Story.OUTBREAKS)) {
      lines.add(Texts.get("howSure.notCounted"));
    }
    List<String> changed =
        sure.otherChances().stream().flatMap(of -> changed(of).stream()).toList();
    lines.addAll(changed.isEmpty() ? List.of(Texts.get("howSure.sameCalls")) : changed);
    return lines;
  }

  private static Optional<String> changed(OtherChancesLine other) {
    if (other.changed().isEmpty()) {
      return Optional.empty();
    }
    List<String> calls =
        other.changed().stream()
            .map(
                of ->
                    of.sure().isEmpty()
                        ? Texts.of("otherCall", of.verdict(), of.paddock())
                        : Texts.get(
                            of.sure().get() ? "otherCall.sure" : "otherCall.unsure", of.paddock()))
            .toList();
    return Optional.of(
        Texts.get(
            "howSure.otherCalls",
            Words.percent(other.chanceOfNone()),
            Words.percent(other.chanceOfTrial()),
            Words.percent(other.chanceOfOutbreaks()),
            String.join(" ", calls)));
  }
}
