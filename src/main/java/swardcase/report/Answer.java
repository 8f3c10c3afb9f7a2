package swardcase.report;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.ForkJoinTask;
import java.util.function.DoubleConsumer;
import swardcase.decision.Decision;
import swardcase.decision.HowSure;
import swardcase.draws.Draws;
import swardcase.joining.JoiningPlan;
import swardcase.search.FixedChoice;

/**
 * The whole job: a decision with all that is printed and saved of it.
 *
 * @param decision the answer as numbers
 * @param report what is printed of it
 * @param budget the plan's flows for a workbook
 * @param joining the weeks before joining under this plan; empty if they were not asked for, or if
 *     no ewes are joined
 */
public record Answer(
    Decision decision, Report report, Budget budget, Optional<JoiningPlan> joining) {

  /**
   * Decides and reports.
   *
   * @param fixed choices made beforehand
   * @param program name and version of the program
   * @param day the date of the sheet
   * @param remarks what was odd or missing in the farm folder
   * @param withJoining whether the weeks before joining are planned too
   * @param progress told the share of the draws done, from any thread; what it throws ends the work
   */
  public static Answer of(
      Draws draws,
      List<FixedChoice> fixed,
      String program,
      LocalDate day,
      List<String> remarks,
      boolean withJoining,
      DoubleConsumer progress) {
    Decision decision = Decision.of(draws, fixed, progress);
    ForkJoinTask<Optional<JoiningPlan>> joining =
        ForkJoinTask.adapt(
                () ->
                    withJoining
                        ? JoiningPlan.of(draws, decision.plan())
                        : Optional.<JoiningPlan>empty())
            .fork();
    progress.accept(1);
    HowSure howSure = HowSure.of(decision);
    Report report = ReportBuilder.build(decision, howSure, program, day, remarks);
    return new Answer(decision, report, Budget.of(decision, report), joining.join());
  }

  /** The joining plan as it is printed, with these remarks about the farm folder. */
  public Optional<JoiningReport> joiningReport(List<String> remarks) {
    return joining.map(
        plan -> JoiningReportBuilder.build(plan, report.program(), report.farm().date(), remarks));
  }
}
