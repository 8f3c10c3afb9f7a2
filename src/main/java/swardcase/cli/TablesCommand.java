package swardcase.cli;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Help.Ansi;
import picocli.CommandLine.Help.Ansi.Style;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import swardcase.tables.TableListing;
import swardcase.tables.TablesLoader;

/** Prints a reference table with the sources its rows name. */
@Command(
    name = "tables",
    mixinStandardHelpOptions = true,
    versionProvider = Version.class,
    description =
        "Prints a reference table with its evidence marks and sources, or the names of all.",
    exitCodeListHeading = "%nExit codes:%n",
    exitCodeList = {ExitCodes.DONE_LINE, ExitCodes.FAULT_LINE, ExitCodes.INPUT_LINE})
final class TablesCommand implements Callable<Integer> {

  @Spec private CommandSpec spec;

  @Parameters(
      index = "0",
      arity = "0..1",
      paramLabel = "NAME",
      description = "Name of a table; without one, the names are printed.")
  private String name;

  @Option(
      names = "--tables",
      paramLabel = "DIR",
      description = "Folder with rows of your own that replace rows of the program's tables.")
  private Path overrides;

  @Override
  public Integer call() {
    PrintWriter out = spec.commandLine().getOut();
    List<String> names = TablesLoader.names();
    if (name == null) {
      names.forEach(out::println);
      return ExitCodes.DONE;
    }
    if (!names.contains(name)) {
      throw UnknownName.of(spec, "table", name, names);
    }
    print(TablesOption.loader(overrides).list(name), out);
    return ExitCodes.DONE;
  }

  private static void print(TableListing table, PrintWriter out) {
    boolean bold = Ansi.AUTO.enabled();
    for (TableListing.Row row : table.rows()) {
      String title = PlainText.of(row.title());
      String heading = bold ? Style.bold.on() + title + Style.bold.off() : title;
      out.println(heading + (row.ofUser() ? " (yours)" : ""));
      row.cells()
          .forEach(
              cell -> out.println("  " + label(cell.heading()) + ": " + PlainText.of(cell.text())));
    }
    if (!table.sources().isEmpty()) {
      out.println();
      out.println("Sources");
      table
          .sources()
          .forEach(
              source ->
                  out.println(
                      PlainText.of(
                          "  "
                              + source.key()
                              + ": "
                              + source.citation()
                              + " ["
                              + source.read()
                              + "]")));
    }
  }

  private static String label(String heading) {
    return heading.replace('_', ' ');
  }
}
