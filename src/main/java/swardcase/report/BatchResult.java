package swardcase.report;

import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import swardcase.chance.Spread;

/**
 * What came of one farm of many.
 *
 * @param line number of the line it was read from, from 1
 * @param farm the farm's name; empty after a fault
 * @param folder where its files are, as it was given; empty for a document
 * @param faults why there is no answer; none if there is one
 * @param answer the main numbers; empty after a fault
 * @param paddocks what to do with each paddock
 * @param result the whole result document, where it was asked for
 */
public record BatchResult(
    long line,
    Optional<String> farm,
    Optional<String> folder,
    List<String> faults,
    Optional<ComparisonReport.Side> answer,
    List<PaddockAnswer> paddocks,
    Optional<Report> result) {

  /**
   * What to do with a paddock.
   *
   * @param name the paddock
   * @param areaHa hectares
   * @param call what to do
   * @param action key of the chosen action
   * @param start calendar year it starts; empty for keeping
   * @param gain net present value of the chosen action against keeping, within the plan
   */
  public record PaddockAnswer(
      String name, double areaHa, Call call, String action, OptionalInt start, Spread gain) {}

  /** A farm that was decided about. */
  public static BatchResult of(
      long line, Optional<String> folder, ComparisonReport.Decided decided, boolean whole) {
    Report report = decided.report();
    return new BatchResult(
        line,
        Optional.of(report.farm().name()),
        folder,
        List.of(),
        Optional.of(ComparisonReport.Side.of(decided)),
        report.paddocks().stream()
            .map(
                paddock ->
                    new PaddockAnswer(
                        paddock.name(),
                        paddock.areaHa(),
                        paddock.call(),
                        paddock.action(),
                        paddock.start(),
                        paddock.gain()))
            .toList(),
        whole ? Optional.of(report) : Optional.empty());
  }

  /** A line without an answer. */
  public static BatchResult failed(long line, Optional<String> folder, List<String> faults) {
    return new BatchResult(
        line, Optional.empty(), folder, faults, Optional.empty(), List.of(), Optional.empty());
  }
}
