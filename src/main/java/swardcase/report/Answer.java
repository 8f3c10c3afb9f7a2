package swardcase.report;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.ForkJoinTask;
import swardcase.decision.Decision;
import swardcase.decision.HowSure;
import swardcase.joining.JoiningPlan;

/**
 * The whole job: a decision with all that is printed and saved of it.
 *
 * @param decision the answer as numbers
 * @param report what is printed of it
 * @param budget prices and rate for a workbook
 * @param joining the weeks before joining under this plan; empty if they were not asked for, or if
 *     no ewes are joined
 */
public record Answer(
    Decision decision, Report report, Budget budget, Optional<JoiningPlan> joining) {

  /**
   * Reports a decision.
   *
   * @param program name and version of the program
   * @param day the date of the sheet
   * @param remarks what was odd or missing in the farm folder
   * @param withJoining whether the weeks before joining are planned too
   */
  public static Answer of(
      Decision decision, String program, LocalDate day, List<String> remarks, boolean withJoining) {
    ForkJoinTask<Optional<JoiningPlan>> joining =
        ForkJoinTask.adapt(
                () ->
                    withJoining
                        ? JoiningPlan.of(decision.simulation().draws(), decision.plan())
                        : Optional.<JoiningPlan>empty())
            .fork();
    HowSure howSure = HowSure.of(decision);
    Report report = ReportBuilder.build(decision, howSure, program, day, remarks);
    return new Answer(decision, report, Budget.of(decision.model().farm()), joining.join());
  }

  /** The joining plan as it is printed, with these remarks about the farm folder. */
  public Optional<JoiningReport> joiningReport(List<String> remarks) {
    return joining.map(
        plan -> JoiningReportBuilder.build(plan, report.program(), report.farm().date(), remarks));
  }
}
