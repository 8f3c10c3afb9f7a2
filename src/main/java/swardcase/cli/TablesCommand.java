package swardcase.cli;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import swardcase.check.NearestName;
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
      throw new ParameterException(spec.commandLine(), unknown(names));
    }
    print(TablesOption.loader(overrides).list(name), out);
    return ExitCodes.DONE;
  }

  private String unknown(List<String> names) {
    String hint =
        NearestName.find(name, names).map(near -> "; did you mean '" + near + "'?").orElse("");
    return "There is no table '" + name + "'" + hint;
  }

  private static void print(TableListing table, PrintWriter out) {
    CommandLine.Help.Ansi ansi = CommandLine.Help.Ansi.AUTO;
    for (TableListing.Row row : table.rows()) {
      out.println(ansi.new Text("@|bold " + row.title() + "|@") + (row.ofUser() ? " (yours)" : ""));
      row.cells().forEach(cell -> out.println("  " + label(cell.heading()) + ": " + cell.text()));
    }
    if (!table.sources().isEmpty()) {
      out.println();
      out.println("Sources");
      table
          .sources()
          .forEach(
              source ->
                  out.println(
                      "  " + source.key() + ": " + source.citation() + " [" + source.read() + "]"));
    }
  }

  private static String label(String heading) {
    return heading.replace('_', ' ');
  }
}
