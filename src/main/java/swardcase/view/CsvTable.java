package swardcase.view;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.function.Function;
import java.util.stream.Collectors;
import swardcase.chance.Spread;
import swardcase.wording.SafeText;
import swardcase.wording.Words;

/**
 * A table for a spreadsheet: comma separated, line feeds, numbers with a decimal point and fifteen
 * digits. A cell that a spreadsheet would run as a formula starts with an apostrophe.
 *
 * @param <T> what a row tells of
 */
final class CsvTable<T> {

  private final List<String> heads = new ArrayList<>();
  private final List<Function<T, ?>> cells = new ArrayList<>();

  /** Adds a column; what is empty makes a blank cell, a constant its words. */
  CsvTable<T> column(String head, Function<T, ?> cell) {
    heads.add(head);
    cells.add(cell);
    return this;
  }

  /** Adds the four columns of a gain. */
  CsvTable<T> gain(Function<T, Spread> of) {
    return column("gain_mean", of.andThen(Spread::mean))
        .column("gain_low", of.andThen(Spread::low))
        .column("gain_high", of.andThen(Spread::high))
        .column("chance_pays", of.andThen(Spread::chancePays));
  }

  /** The text of the file. */
  String text(List<T> rows) {
    return rows.stream()
        .map(row -> line(cells.stream().map(cell -> cell.apply(row)).toList()))
        .collect(Collectors.joining("", line(heads), ""));
  }

  private static String line(List<?> cells) {
    return cells.stream().map(CsvTable::cell).collect(Collectors.joining(",", "", "\n"));
  }

  private static String cell(Object value) {
    if (value instanceof Optional<?> any) {
      return any.map(CsvTable::cell).orElse("");
    }
    if (value instanceof OptionalInt any) {
      return any.isPresent() ? cell(any.getAsInt()) : "";
    }
    if (value instanceof OptionalDouble any) {
      return any.isPresent() ? cell(any.getAsDouble()) : "";
    }
    if (value instanceof Double number) {
      return Words.fifteenDigits(number);
    }
    if (value instanceof Boolean yes) {
      return yes ? "yes" : "no";
    }
    String text =
        SafeText.of(value instanceof Enum<?> of ? JsonView.word(of) : String.valueOf(value));
    return text.matches("[^\",;]*") ? text : '"' + text.replace("\"", "\"\"") + '"';
  }
}
