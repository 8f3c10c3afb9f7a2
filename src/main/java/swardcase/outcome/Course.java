package swardcase.outcome;

/**
 * What may be done with a paddock.
 *
 * @param action place of the action
 * @param start year it starts, 0 for the coming one
 */
public record Course(int action, int start) {}
