/**
 * The result: one tree of records, produced once. Terminal, JSON, CSV and PDF are views of it, and
 * no view computes a number.
 */
package swardcase.report;
