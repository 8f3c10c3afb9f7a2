/**
 * The result: one tree of records, produced once. Terminal, JSON, CSV and PDF are views of it, and
 * no view computes a number. The builders of this room make the lists in it and keep no hold of
 * them.
 */
package swardcase.report;
