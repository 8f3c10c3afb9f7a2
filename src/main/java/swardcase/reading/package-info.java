/**
 * Texts of files (YAML, JSON, CSV) as trees of values that know their place, and the one reader of
 * numbers, words and ranges from them, every fault with its place. Knows {@code check} and {@code
 * chance}.
 */
package swardcase.reading;
