package swardcase.wording;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import swardcase.report.RecordsReport;
import swardcase.report.RecordsReport.GainMoved;
import swardcase.report.RecordsReport.GainOf;
import swardcase.report.RecordsReport.MovedLine;
import swardcase.report.RecordsReport.RecordedYear;
import swardcase.report.RecordsReport.StoryChance;
import swardcase.report.RecordsReport.WithoutRecords;

/** What a farm's own records say, in sentences. */
public final class RecordsWords {

  /** A smaller share of draws is said to be few: the records are against what was expected. */
  private static final double FEW = 0.02;

  private final RecordsReport records;
  private final MoneyFaces faces;

  /** Words of the records of a report. */
  public RecordsWords(RecordsReport records, MoneyFaces faces) {
    this.records = records;
    this.faces = faces;
  }

  /** The sentences, what is wrong first. */
  public List<String> sentences() {
    List<String> lines = new ArrayList<>();
    if (!records.unexplainedMobs().isEmpty()) {
      lines.add(Texts.get("records.vet", String.join(", ", records.unexplainedMobs())));
    }
    lines.addAll(plan());
    List<String> chances = records.stories().stream().flatMap(RecordsWords::chances).toList();
    lines.add(Texts.get("records.stories", chances.toArray()));
    lines.add(
        Texts.get(
            "records.draws",
            Words.exact(records.drawsMade()),
            Words.whole(records.effectiveDraws()),
            Words.percent(records.effectiveShare())));
    if (records.growthStopped()) {
      lines.add(Texts.get("records.stopped"));
    } else if (records.effectiveShare() < FEW) {
      lines.add(Texts.get("records.misfit"));
    }
    return lines;
  }

  private static Stream<String> chances(StoryChance of) {
    return Stream.of(Words.percent(of.before()), Words.percent(of.after()));
  }

  private List<String> plan() {
    WithoutRecords other = records.withoutRecords();
    List<String> lines = new ArrayList<>();
    if (other.isThePlan()) {
      lines.add(Texts.get("records.plan.same"));
    } else if (other.keepsAll()) {
      lines.add(Texts.get("records.plan.keeps"));
    } else {
      lines.add(
          Texts.get(
              "records.plan.other",
              differences(other),
              money(other.gain().before().mean()),
              money(other.gain().after().mean())));
    }
    GainMoved gain = records.gainOfPlan();
    if (gain.after().mean() != 0 || gain.before().mean() != 0) {
      lines.add(
          Texts.get(
              "records.plan.otherGain", money(gain.after().mean()), money(gain.before().mean())));
    }
    return lines;
  }

  private static String differences(WithoutRecords other) {
    return Stream.of(
            other.changes().isEmpty()
                ? Stream.<String>empty()
                : Stream.of(PlanWords.choices("plan.other", other.changes())),
            other.rulesMore().stream()
                .map(rule -> Texts.get("records.rule.more", lower(PlanWords.shortRule(rule)))),
            other.rulesFewer().stream()
                .map(rule -> Texts.get("records.rule.fewer", lower(PlanWords.shortRule(rule)))))
        .flatMap(each -> each)
        .collect(Collectors.joining("; "));
  }

  private static String lower(String text) {
    return text.substring(0, 1).toLowerCase(Locale.ROOT) + text.substring(1);
  }

  private String money(double mean) {
    return faces.money(faces.rounded(mean));
  }

  /** What the parts of the gain are parts of. */
  public String note() {
    return Texts.get(
        "records.moved.note",
        Texts.of("records.gainOf", records.gainOf()),
        money(told().before().mean()),
        money(told().after().mean()));
  }

  private GainMoved told() {
    return records.gainOf() == GainOf.PLAN ? records.gainOfPlan() : records.withoutRecords().gain();
  }

  /** The name of a number. */
  public static String name(MovedLine line) {
    return Texts.of("records.number", line.what(), line.mob().orElse(""));
  }

  /** What of the change of the gain comes from a number, or from none. */
  public String gainPart(double part) {
    return faces.number(faces.rounded(part));
  }

  /** The change of the gain in all. */
  public String gainChange() {
    return gainPart(told().after().mean() - told().before().mean());
  }

  /** What was recorded in a year. */
  public static String recorded(RecordedYear year) {
    if (year.inLambPercent().isPresent()) {
      return Words.whole(year.inLambPercent().getAsDouble());
    }
    return year.markedPercent().isPresent()
        ? Texts.get(
            "records.column.recordedMarked", Words.whole(year.markedPercent().getAsDouble()))
        : Texts.get("records.none");
  }
}
