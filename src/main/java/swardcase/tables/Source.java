package swardcase.tables;

/**
 * Where a number was read.
 *
 * @param key short key used in the tables
 * @param citation authors, year, title, place of publication, restated
 * @param url address, or blank
 * @param read what of it was read, such as {@code abstract}
 */
public record Source(String key, String citation, String url, String read) {}
