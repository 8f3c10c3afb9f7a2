/**
 * Reference rows with their sources and evidence marks, and the loader that refuses a whole table
 * for one bad row. Reads {@code tables/*.csv}; knows {@code farm} for the records that rows become,
 * and {@code reading} for their cells.
 */
package swardcase.tables;
