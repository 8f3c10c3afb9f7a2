package swardcase.report;

import swardcase.chance.Spread;

/**
 * What a choice gains over the best cheaper choice of the same paddock.
 *
 * @param over key of the action of that choice; of keeping if no other cheaper one is better
 * @param overName its name
 * @param gain over it
 * @param regretShare share of acting in the regret of the step, 0 to 1
 * @param sure whether the step is sure
 */
public record Step(String over, String overName, Spread gain, double regretShare, boolean sure) {}
