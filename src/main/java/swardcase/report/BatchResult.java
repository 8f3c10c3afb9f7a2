package swardcase.report;

import java.util.List;
import java.util.Optional;

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

  /** A farm that was decided about. */
  public static BatchResult of(
      long line, Optional<String> folder, ComparisonBuilder.Decided decided, boolean whole) {
    Report report = decided.report();
    return new BatchResult(
        line,
        Optional.of(report.farm().name()),
        folder,
        List.of(),
        Optional.of(ComparisonBuilder.side(decided)),
        PaddockAnswer.of(report),
        whole ? Optional.of(report) : Optional.empty());
  }

  /** A line without an answer. */
  public static BatchResult failed(long line, Optional<String> folder, List<String> faults) {
    return new BatchResult(
        line, Optional.empty(), folder, faults, Optional.empty(), List.of(), Optional.empty());
  }
}
