package swardcase.tables;

import java.time.Month;
import java.util.List;
import swardcase.evidence.Evidence;

/**
 * Pasture growth of a district in an average season.
 *
 * @param name the key
 * @param growthKgDmPerHaPerDay twelve values, January to December
 * @param winterMonths the months of its winter
 * @param quality key into the pasture quality table
 * @param evidence how well the row is supported
 * @param source key into the sources table
 */
public record District(
    String name,
    List<Double> growthKgDmPerHaPerDay,
    List<Month> winterMonths,
    String quality,
    Evidence evidence,
    String source) {}
