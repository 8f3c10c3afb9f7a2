package swardcase.report;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import swardcase.decision.Decision;
import swardcase.decision.RecordsStudy;
import swardcase.outcome.FarmRule;
import swardcase.outcome.Plan;
import swardcase.report.HowSureReport.StoryLine.Story;
import swardcase.report.RecordsReport.GainMoved;
import swardcase.report.RecordsReport.GainOf;
import swardcase.report.RecordsReport.MovedLine;
import swardcase.report.RecordsReport.RecordedYear;
import swardcase.report.RecordsReport.StoryChance;
import swardcase.report.RecordsReport.WithoutRecords;

/** Turns the study of a farm's records into records of the report. */
final class RecordsBuilder {

  private final Decision decision;
  private final RecordsStudy study;
  private final int firstYear;

  private RecordsBuilder(Decision decision, RecordsStudy study, int firstYear) {
    this.decision = decision;
    this.study = study;
    this.firstYear = firstYear;
  }

  /** What the records of a farm say; empty if it has none. */
  static Optional<RecordsReport> build(Decision decision, int firstYear) {
    return RecordsStudy.of(decision)
        .map(study -> new RecordsBuilder(decision, study, firstYear).report());
  }

  private RecordsReport report() {
    GainMoved ofPlan = new GainMoved(study.gainOfPlanBefore(), study.gainOfPlanAfter());
    GainMoved ofWithout = new GainMoved(study.gainOfWithoutBefore(), study.gainOfWithoutAfter());
    List<MovedLine> moved = study.moved().stream().map(this::moved).toList();
    GainMoved told = study.isOfPlanWithout() ? ofWithout : ofPlan;
    double parts = moved.stream().mapToDouble(MovedLine::gainPart).sum();
    return new RecordsReport(
        study.weighing().effective(),
        study.weighing().made(),
        study.weighing().effective() / study.weighing().made(),
        study.weighing().stopped(),
        study.unexplained().stream().map(this::mob).toList(),
        stories(),
        moved,
        study.isOfPlanWithout() ? GainOf.PLAN_WITHOUT_RECORDS : GainOf.PLAN,
        told.after().mean() - told.before().mean() - parts,
        ofPlan,
        without(ofWithout),
        study.years().stream().map(RecordsBuilder::year).toList());
  }

  private String mob(int place) {
    return decision.model().farm().mobs().get(place).name();
  }

  private List<StoryChance> stories() {
    double[][] chances = study.stories();
    return Arrays.stream(Story.values())
        .map(of -> new StoryChance(of, chances[0][of.ordinal()], chances[1][of.ordinal()]))
        .toList();
  }

  private MovedLine moved(RecordsStudy.Moved of) {
    return new MovedLine(
        of.what(), of.mob().map(this::mob), of.before(), of.after(), of.gainPart());
  }

  private WithoutRecords without(GainMoved gain) {
    Plan plan = decision.plan();
    Plan other = study.planWithout();
    return new WithoutRecords(
        other.equals(plan),
        other.equals(decision.model().keepAll()),
        HowFound.changes(decision, other, firstYear),
        rules(other, plan),
        rules(plan, other),
        gain);
  }

  /** Rules that a plan makes and another does not make so. */
  private static List<PlanResult.Rule> rules(Plan of, Plan than) {
    return Stream.of(FarmRule.values())
        .filter(rule -> of.choice(rule) > 0 && of.choice(rule) != than.choice(rule))
        .map(rule -> PlanResult.Rule.of(rule, of.choice(rule)))
        .toList();
  }

  private static RecordedYear year(RecordsStudy.Year of) {
    return new RecordedYear(
        of.record().year(),
        of.record().mob(),
        of.record().ewesJoined(),
        of.ofLambs() ? OptionalDouble.empty() : of.recorded(),
        of.ofLambs() ? of.recorded() : OptionalDouble.empty(),
        of.before(),
        of.after(),
        of.record().supplementTonnes(),
        of.record().season());
  }
}
