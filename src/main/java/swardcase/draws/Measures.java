package swardcase.draws;

import swardcase.outcome.OutcomeFunction;

/**
 * Numbers that are read from a run in each draw, beside what the plans bring: the workspace of one
 * thread.
 */
public interface Measures {

  /** How many numbers. */
  int size();

  /**
   * Reads them from a run that has just been set to numbers, in the order of the register, into
   * {@code into}.
   */
  void read(OutcomeFunction run, double[] numbers, double[] into);
}
