/** The budget case as a spreadsheet with live formulas; the only user of the workbook writer. */
package swardcase.workbook;
