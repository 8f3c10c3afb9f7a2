/**
 * The decision sheet as a tagged A4 PDF. Formats and draws what {@code report} holds; computes no
 * number of its own. The only room that uses PDFBox.
 */
package swardcase.sheet;
