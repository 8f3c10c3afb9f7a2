package swardcase.cli;

import java.util.List;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Parameters;
import swardcase.tables.Source;
import swardcase.tables.TableListing;
import swardcase.tables.TablesLoader;

/** Prints a reference table with the sources its rows name. */
@Command(
    name = "tables",
    description =
        "Prints a reference table with its evidence marks and sources, or the names of all.")
final class TablesCommand extends Task {

  @Parameters(
      index = "0",
      arity = "0..1",
      paramLabel = "NAME",
      description = "Name of a table; without one, the names are printed.")
  private String name;

  @Mixin private TablesOption tables;

  @Override
  public Integer call() {
    List<String> names = TablesLoader.names();
    if (name == null) {
      print(names);
      return ExitCodes.DONE;
    }
    if (!names.contains(name)) {
      throw unknown("table", name, names);
    }
    TableListing table = tables.loader().list(name);
    table.rows().forEach(this::row);
    if (!table.sources().isEmpty()) {
      out().println();
      print("Sources");
      table.sources().forEach(this::source);
    }
    return ExitCodes.DONE;
  }

  private void row(TableListing.Row row) {
    print(row.title() + (row.ofUser() ? " (yours)" : ""));
    row.cells().forEach((column, text) -> print("  " + column.replace('_', ' ') + ": " + text));
  }

  private void source(Source source) {
    print("  " + source.key() + ": " + source.citation() + " [" + source.read() + "]");
  }
}
