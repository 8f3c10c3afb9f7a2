package swardcase.draws;

import swardcase.outcome.OutcomeFunction;

/**
 * Numbers read from a run whose ranges are wanted. The same numbers are read again under other
 * assumptions.
 */
public interface Measures {

  /** How many numbers. */
  int size();

  /** Reads them from a run that has just been set into {@code into}. */
  void read(OutcomeFunction run, double[] into);

  /** How many of them, the first ones, are to be kept as they are at each end of each input. */
  int kept();
}
