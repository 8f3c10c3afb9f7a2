/**
 * Tagged PDF: canvas, flow of text, tables, type. The only user of PDFBox; knows nothing of farms.
 */
package swardcase.paper;
