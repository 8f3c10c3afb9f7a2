/**
 * The page in the browser: HTML and SVG from the report, in the words of {@code wording}. Opens no
 * file and works out no number.
 */
package swardcase.page;
