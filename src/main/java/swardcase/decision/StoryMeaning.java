package swardcase.decision;

import swardcase.chance.Drawn;
import swardcase.tables.ResponseStory;

/**
 * What a story of the response would mean for the plan.
 *
 * @param story which
 * @param chance that a draw takes it, 0 to 1, before any draw is thrown away
 * @param draws that took it and were not
 * @param gain of the plan in these
 * @param gainError standard error of its mean, the draws taken as independent
 * @param chanceItPays share of these in which the plan gains
 */
public record StoryMeaning(
    ResponseStory story,
    double chance,
    int draws,
    Drawn gain,
    double gainError,
    double chanceItPays) {}
