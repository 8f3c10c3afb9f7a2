/**
 * What the user tells us about a farm, with every default filled in and marked as a default.
 * Records only; knows nothing of files or of calculation.
 */
package swardcase.farm;
