package swardcase.view;

import swardcase.report.RecordsReport;
import swardcase.report.RecordsReport.MovedLine;
import swardcase.report.RecordsReport.RecordedYear;
import swardcase.wording.RecordsWords;
import swardcase.wording.Texts;
import swardcase.wording.Words;

/** The tables of a farm's own records for a terminal. */
final class RecordsTables {

  private RecordsTables() {}

  /** The numbers that the records move. */
  static TextTable moved(RecordsWords words, RecordsReport records, String currency) {
    TextTable table =
        TextTable.of(
            Texts.get("records.column.number"),
            ">" + Texts.get("records.column.before"),
            ">" + Texts.get("records.column.after"),
            ">" + Texts.get("records.column.gain", currency));
    for (MovedLine line : records.moved()) {
      table.row(
          RecordsWords.name(line),
          Words.range(line.before()),
          Words.range(line.after()),
          words.gainPart(line.gainPart()));
    }
    table.row(Texts.get("records.number.rest"), "", "", words.gainPart(records.gainPartsRest()));
    table.row(Texts.get("records.number.gain"), "", "", words.gainChange());
    return table;
  }

  /** The recorded years. */
  static TextTable years(RecordsReport records) {
    TextTable table =
        TextTable.of(
            Texts.get("records.column.year"),
            Texts.get("records.column.mob"),
            ">" + Texts.get("records.column.recorded"),
            ">" + Texts.get("records.column.before"),
            ">" + Texts.get("records.column.after"));
    for (RecordedYear year : records.years()) {
      table.row(
          String.valueOf(year.year()),
          year.mob(),
          RecordsWords.recorded(year),
          Words.range(year.expectedBefore()),
          Words.range(year.expectedAfter()));
    }
    return table;
  }
}
