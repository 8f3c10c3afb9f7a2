/**
 * Reads a farm folder and gives either a whole farm or every fault in it with its place. Computes
 * nothing about pasture, sheep or money.
 */
package swardcase.intake;
